//! The native command: judges examinations again with today's rule book, or checks the seals of files; one line of JSON for each.

use std::ffi::{OsStr, OsString};
use std::io::{self, Write};
use std::path::Path;
use std::process::ExitCode;

use crate::report;

mod answers;
mod archive;
mod check;
mod stream;
mod texts;

use answers::{Answers, Unread};
use check::Checks;
use stream::Stream;

const HELP: &str = "\
plugwary judge FILE...     judges files made by the app (HTML), examinations (JSON), or every
                           examination of an archive (zip)
plugwary judge             judges a stream of examinations from standard input, one a line
                           or as the app writes them; a FILE named - does the same
plugwary judge --check FILE...
                           tells of each file whether it is as it was sealed and by which key,
                           what judging it again changes, and whether its custody entries follow
                           from each other
plugwary judge --schema    prints the JSON Schema of an examination
plugwary limits            prints the page of limits and rules

Each examination gives one line of JSON on standard output, in the order they came.
What cannot be read is named on standard error and passed over; with --one-for-one it
leaves {\"unread\":WHICH,\"why\":REASON} in its place. The exit code is then 2.
With --check it is 1 unless every file is untouched and its chain of custody unbroken.
";

/// Exit code where the command makes no sense or something could not be read.
const UNREAD: u8 = 2;

/// What is to be done.
enum Task {
    Help,
    Schema,
    Limits,
    Judge(Vec<OsString>, Unread),
    Check(Vec<OsString>),
}

/// Runs the program with its arguments, the program's own name left out.
pub fn main(arguments: impl Iterator<Item = OsString>) -> ExitCode {
    let done = match task(arguments) {
        Ok(Task::Help) => print(HELP),
        Ok(Task::Schema) => schema(),
        Ok(Task::Limits) => print(&report::limits()),
        Ok(Task::Judge(files, unread)) => judge(&files, unread),
        Ok(Task::Check(files)) => check(&files),
        Err(problem) => Ok(refuse(&problem)),
    };
    match done {
        Ok(code) => code,
        // Whoever reads the verdicts may have read enough.
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(error) => {
            complain(&format!("plugwary: {error}\n"));
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
    let (mut files, mut unread, mut is_check) = (Vec::new(), Unread::Nothing, false);
    while let Some(argument) = arguments.next() {
        match argument.to_str() {
            Some("--help" | "-h") => return Ok(Task::Help),
            Some("--schema") => return Ok(Task::Schema),
            Some("--check") => is_check = true,
            Some("--one-for-one") => unread = Unread::Line,
            Some("--") => files.extend(arguments.by_ref()),
            Some(unknown) if unknown.starts_with('-') && unknown != "-" => {
                return Err(format!("there is no option {unknown}; --help names them all"));
            }
            _ => files.push(argument),
        }
    }
    if is_check {
        let nothing = "--check needs the names of files; --help tells more".to_owned();
        return if files.is_empty() { Err(nothing) } else { Ok(Task::Check(files)) };
    }
    if files.is_empty() {
        files.push("-".into());
    }
    Ok(Task::Judge(files, unread))
}

fn judge(files: &[OsString], unread: Unread) -> io::Result<ExitCode> {
    let mut are_all_read = true;
    for file in files {
        if file == OsStr::new("-") {
            for answers in Stream::of(|| io::stdin().lock(), unread)? {
                are_all_read &= give(&answers?)?;
            }
        } else {
            let mut answers = Answers::new(unread);
            answers.add_file(Path::new(file));
            are_all_read &= give(&answers)?;
        }
    }
    Ok(if are_all_read { ExitCode::SUCCESS } else { ExitCode::from(UNREAD) })
}

/// Looks at the seal of each file. One that cannot be opened counts more than one that was changed.
fn check(files: &[OsString]) -> io::Result<ExitCode> {
    let (mut are_sound, mut are_all_read) = (true, true);
    for file in files {
        let checks = Checks::of(file);
        print(&checks.lines)?;
        complain(&checks.complaints);
        are_sound &= checks.are_sound;
        are_all_read &= checks.complaints.is_empty();
    }
    Ok(match (are_all_read, are_sound) {
        (false, _) => ExitCode::from(UNREAD),
        (true, false) => ExitCode::FAILURE,
        (true, true) => ExitCode::SUCCESS,
    })
}

/// Writes what there is to say; whether everything could be read.
fn give(answers: &Answers) -> io::Result<bool> {
    print(answers.lines())?;
    complain(answers.complaints());
    Ok(answers.complaints().is_empty())
}

#[cfg(feature = "schema")]
fn schema() -> io::Result<ExitCode> {
    print(&crate::record::schema())
}

#[cfg(not(feature = "schema"))]
fn schema() -> io::Result<ExitCode> {
    Ok(refuse("this build has no schema in it; build with --features schema"))
}

fn print(text: &str) -> io::Result<ExitCode> {
    io::stdout().lock().write_all(text.as_bytes())?;
    Ok(ExitCode::SUCCESS)
}

fn complain(complaints: &str) {
    // With standard error gone there is nobody left to tell.
    let _ = io::stderr().write_all(complaints.as_bytes());
}

fn refuse(what: &str) -> ExitCode {
    complain(&format!("plugwary: {what}\n"));
    ExitCode::from(UNREAD)
}
