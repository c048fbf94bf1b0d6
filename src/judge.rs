//! The native command: judges examinations again with today's rule book and prints one line of JSON for each.

use std::ffi::OsString;
use std::fs;
use std::io::{self, BufRead, Write};
use std::process::ExitCode;

use crate::record::{self, RecordFault};

const HELP: &str = "\
plugwary judge FILE...     judges files made by the app (HTML) or examinations (JSON)
plugwary judge             judges examinations from standard input, one a line
plugwary judge --schema    prints the JSON Schema of an examination

Each judged examination gives one line of JSON on standard output. What cannot be
read is named on standard error and skipped; the exit code is then 2.
";

/// Exit code where something could not be read.
const UNREAD: u8 = 2;

/// Runs the program with its arguments, the program's own name left out.
pub fn main(arguments: impl Iterator<Item = OsString>) -> ExitCode {
    let arguments: Vec<String> = arguments.map(|argument| argument.to_string_lossy().into_owned()).collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let done = match words.as_slice() {
        ["judge", "--schema"] => schema(),
        [] | ["--help" | "-h" | "help"] | ["judge", "--help" | "-h"] => print(HELP).map(|()| ExitCode::SUCCESS),
        ["judge"] | ["judge", "-"] => judge_lines(&mut io::stdin().lock()),
        ["judge", files @ ..] => match files.iter().find(|file| file.starts_with('-')) {
            Some(unknown) => Ok(refuse(&format!("there is no option {unknown}; --help names them all"))),
            None => judge_files(files),
        },
        [unknown, ..] => Ok(refuse(&format!("there is no command {unknown}; --help names them all"))),
    };
    match done {
        Ok(code) => code,
        // Whoever reads our output may have read enough.
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(error) => refuse(&error.to_string()),
    }
}

fn judge_files(files: &[&str]) -> io::Result<ExitCode> {
    let mut are_all_read = true;
    for file in files {
        match fs::read(file) {
            Ok(bytes) => are_all_read &= judge_text(file, &String::from_utf8_lossy(&bytes))?,
            Err(error) => {
                complain(file, &error.to_string());
                are_all_read = false;
            }
        }
    }
    Ok(code(are_all_read))
}

fn judge_lines(input: &mut impl BufRead) -> io::Result<ExitCode> {
    let mut are_all_read = true;
    for (n, line) in input.split(b'\n').enumerate() {
        let line = line?;
        let line = String::from_utf8_lossy(&line);
        if !line.trim().is_empty() {
            are_all_read &= judge_text(&format!("line {}", n + 1), &line)?;
        }
    }
    Ok(code(are_all_read))
}

/// Judges one text; whether it could be read.
fn judge_text(name: &str, text: &str) -> io::Result<bool> {
    match record::from_file(text) {
        Ok(carried) => {
            print(&(record::judged_line(&carried.record) + "\n"))?;
            Ok(true)
        }
        Err(fault) => {
            complain(name, &said(&fault));
            Ok(false)
        }
    }
}

fn said(fault: &RecordFault) -> String {
    format!("{fault}. {}", fault.hint())
}

#[cfg(feature = "schema")]
fn schema() -> io::Result<ExitCode> {
    print(&record::schema()).map(|()| ExitCode::SUCCESS)
}

#[cfg(not(feature = "schema"))]
fn schema() -> io::Result<ExitCode> {
    Ok(refuse("this build has no schema in it; build with --features schema"))
}

fn print(text: &str) -> io::Result<()> {
    io::stdout().lock().write_all(text.as_bytes())
}

fn complain(name: &str, what: &str) {
    // With standard error gone there is nobody left to tell.
    let _ = writeln!(io::stderr(), "{name}: {what}");
}

fn refuse(what: &str) -> ExitCode {
    complain("plugwary", what);
    ExitCode::from(UNREAD)
}

fn code(are_all_read: bool) -> ExitCode {
    if are_all_read { ExitCode::SUCCESS } else { ExitCode::from(UNREAD) }
}
