//! The native command: judges examinations again with today's rule book and prints one line of JSON for each.

use std::ffi::{OsStr, OsString};
use std::fs::File;
use std::io::{self, BufRead, Read, Write};
use std::path::Path;
use std::process::ExitCode;

use crate::record::{self, LARGEST, RecordFault};
use crate::report;

const HELP: &str = "\
plugwary judge FILE...     judges files made by the app (HTML) or examinations (JSON)
plugwary judge             judges examinations from standard input, one a line or as the
                           app writes them; a FILE named - does the same
plugwary judge --schema    prints the JSON Schema of an examination
plugwary limits            prints the page of limits and rules

Each examination gives one line of JSON on standard output. What cannot be read is
named on standard error and passed over; the exit code is then 2.
";

/// Exit code where the command makes no sense or something could not be read.
const UNREAD: u8 = 2;

/// What is to be done.
enum Task {
    Help,
    Schema,
    Limits,
    Judge(Vec<OsString>),
}

/// Runs the program with its arguments, the program's own name left out.
pub fn main(arguments: impl Iterator<Item = OsString>) -> ExitCode {
    let done = match task(arguments) {
        Ok(Task::Help) => print(HELP),
        Ok(Task::Schema) => schema(),
        Ok(Task::Limits) => print(&report::limits()),
        Ok(Task::Judge(files)) => judge(&files),
        Err(problem) => Ok(refuse(&problem)),
    };
    match done {
        Ok(code) => code,
        // Whoever reads the verdicts may have read enough.
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(error) => {
            complain("plugwary", &error.to_string());
            ExitCode::FAILURE
        }
    }
}

fn task(mut arguments: impl Iterator<Item = OsString>) -> Result<Task, String> {
    let Some(command) = arguments.next() else { return Ok(Task::Help) };
    match command.to_str() {
        Some("judge") => {}
        Some("limits") => return Ok(Task::Limits),
        Some("--help" | "-h" | "help") => return Ok(Task::Help),
        _ => return Err(format!("there is no command {}; --help names them all", command.display())),
    }
    let mut files = Vec::new();
    while let Some(argument) = arguments.next() {
        match argument.to_str() {
            Some("--help" | "-h") => return Ok(Task::Help),
            Some("--schema") => return Ok(Task::Schema),
            Some("--") => files.extend(arguments.by_ref()),
            Some(unknown) if unknown.starts_with('-') && unknown != "-" => {
                return Err(format!("there is no option {unknown}; --help names them all"));
            }
            _ => files.push(argument),
        }
    }
    if files.is_empty() {
        files.push("-".into());
    }
    Ok(Task::Judge(files))
}

fn judge(files: &[OsString]) -> io::Result<ExitCode> {
    let mut are_all_read = true;
    for file in files {
        are_all_read &=
            if file == OsStr::new("-") { judge_lines(&mut io::stdin().lock())? } else { judge_file(Path::new(file))? };
    }
    Ok(if are_all_read { ExitCode::SUCCESS } else { ExitCode::from(UNREAD) })
}

/// Judges one file; whether it could be read.
fn judge_file(path: &Path) -> io::Result<bool> {
    let name = path.display().to_string();
    let mut bytes = Vec::new();
    match File::open(path).and_then(|file| file.take(one_too_many()).read_to_end(&mut bytes)) {
        Ok(_) => judge_text(&name, bytes),
        Err(error) => {
            complain(&name, &error.to_string());
            Ok(false)
        }
    }
}

/// Judges what comes, each examination as soon as it is there; whether all of it could be read.
fn judge_lines(input: &mut impl BufRead) -> io::Result<bool> {
    let (mut are_all_read, mut number) = (true, 0_u64);
    while let Some(mut text) = line(input)? {
        number += 1;
        let first = number;
        // What the app writes begins with a brace that stands alone and ends with one that is not indented.
        let mut is_whole = text.trim_ascii_end() != b"{";
        while !is_whole && let Some(more) = line(input)? {
            number += 1;
            is_whole = more.trim_ascii_end() == b"}";
            if text.len() <= LARGEST {
                text.extend(more);
            }
        }
        if !text.trim_ascii().is_empty() {
            are_all_read &= judge_text(&format!("line {first}"), text)?;
        }
    }
    Ok(are_all_read)
}

/// The next line with its end, or as much of it as shows that it is too long; the rest is passed over.
fn line(input: &mut impl BufRead) -> io::Result<Option<Vec<u8>>> {
    let mut line = Vec::new();
    if input.by_ref().take(one_too_many()).read_until(b'\n', &mut line)? == 0 {
        return Ok(None);
    }
    if !line.ends_with(b"\n") {
        input.skip_until(b'\n')?;
    }
    Ok(Some(line))
}

/// One byte more than any examination has.
fn one_too_many() -> u64 {
    u64::try_from(LARGEST).unwrap_or(u64::MAX).saturating_add(1)
}

/// Judges one text; whether it could be read.
fn judge_text(name: &str, bytes: Vec<u8>) -> io::Result<bool> {
    if bytes.len() > LARGEST {
        complain(name, &said(&RecordFault::TooLarge));
        return Ok(false);
    }
    let problem = match String::from_utf8(bytes).as_deref().map(record::from_file) {
        Ok(Ok(carried)) => {
            print(&(record::judged_line(&carried.record) + "\n"))?;
            return Ok(true);
        }
        Ok(Err(fault)) => said(&fault),
        Err(_) => said(&RecordFault::Foreign),
    };
    complain(name, &problem);
    Ok(false)
}

fn said(fault: &RecordFault) -> String {
    format!("{fault}. {}", fault.hint())
}

#[cfg(feature = "schema")]
fn schema() -> io::Result<ExitCode> {
    print(&record::schema())
}

#[cfg(not(feature = "schema"))]
fn schema() -> io::Result<ExitCode> {
    Ok(refuse("this build has no schema in it; build with --features schema"))
}

fn print(text: &str) -> io::Result<ExitCode> {
    io::stdout().lock().write_all(text.as_bytes())?;
    Ok(ExitCode::SUCCESS)
}

fn complain(name: &str, what: &str) {
    // With standard error gone there is nobody left to tell.
    let _ = writeln!(io::stderr(), "{name}: {what}");
}

fn refuse(what: &str) -> ExitCode {
    complain("plugwary", what);
    ExitCode::from(UNREAD)
}
