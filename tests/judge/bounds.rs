//! What a stream must not do: fill the memory, keep answers back, or keep the command alive when nobody listens.

use std::io::{BufRead, BufReader, Read, Write};
use std::process::{Child, ChildStdin, ChildStdout};
use std::thread;
use std::time::Duration;

use plugwary::record::LARGEST;

use super::many::{numbered, padded};
use super::{EMPTY_HOLDER, NOTHING_ANSWERED, plugwary, verdict};

/// The command while it judges a stream.
fn judge() -> (Child, ChildStdin, BufReader<ChildStdout>) {
    let mut child = plugwary(&["judge"]).spawn().expect("the command starts");
    let input = child.stdin.take().expect("standard input is a pipe");
    let output = BufReader::new(child.stdout.take().expect("standard output is a pipe"));
    (child, input, output)
}

/// A good line that is this long, its end left out.
fn long(length: usize) -> String {
    // With an id of its own it is not digested, which takes long without optimisation.
    let text = numbered(EMPTY_HOLDER, length);
    padded(&text, length - text.len())
}

#[track_caller]
fn answers(output: &mut impl BufRead, expected: &str) {
    let mut answer = String::new();
    output.read_line(&mut answer).expect("the command answers");
    assert_eq!(answer, expected);
}

/// Asserts that the process never had this many bytes of memory.
#[cfg(target_os = "linux")]
#[track_caller]
fn never_had(child: &Child, bytes: usize) {
    let status = std::fs::read_to_string(format!("/proc/{}/status", child.id())).expect("the process is there");
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:")).expect("its memory is on record");
    let peak = 1024 * line.trim_matches([' ', '\t', 'k', 'B']).parse::<usize>().expect("it is a number of kibibytes");
    assert!(peak < bytes, "{peak} bytes");
}

#[cfg(target_os = "linux")]
#[test]
fn a_stream_of_two_hundred_megabytes_takes_less_than_a_third_of_that() {
    const LENGTH: usize = 25_000;
    const COUNT: usize = 8_000;
    let (mut child, mut input, mut output) = judge();
    let line = long(LENGTH);
    let expected = verdict(&line);
    let feeding = thread::spawn(move || {
        for _ in 0..COUNT {
            writeln!(input, "{line}").expect("the command reads");
        }
        input
    });
    for _ in 0..COUNT {
        answers(&mut output, &expected);
    }
    never_had(&child, LENGTH * COUNT / 3);
    drop(feeding.join().expect("everything was read"));
    assert!(child.wait().expect("the command ends").success());
}

#[cfg(target_os = "linux")]
#[test]
fn no_two_of_the_largest_lines_are_in_memory_at_once() {
    let (mut child, mut input, mut output) = judge();
    let mut complaints = BufReader::new(child.stderr.take().expect("standard error is a pipe"));
    let line = long(LARGEST);
    let expected = verdict(&line);
    let feeding = thread::spawn(move || {
        // The first is long in judging, so that there is time to read the others.
        writeln!(input, "{line}").expect("the command reads");
        for _ in 0..2 {
            writeln!(input, "{}", "x".repeat(LARGEST)).expect("the command reads");
        }
        input
    });
    answers(&mut output, &expected);
    for number in 2..=3 {
        answers(&mut complaints, &format!("line {number}: this is not a Plugwary examination\n"));
    }
    never_had(&child, 2 * LARGEST);
    drop(feeding.join().expect("everything was read"));
    assert_eq!(child.wait().expect("the command ends").code(), Some(2));
}

#[test]
fn a_line_that_is_too_long_is_refused_before_it_has_ended() {
    let (mut child, mut input, mut output) = judge();
    let mut complaints = BufReader::new(child.stderr.take().expect("standard error is a pipe"));
    input.write_all(long(LARGEST + 1).as_bytes()).expect("the command reads");
    answers(&mut complaints, "line 1: the file is larger than 64 MiB\n");
    for _ in 0..3 {
        input.write_all(long(LARGEST).as_bytes()).expect("the command reads on");
    }
    writeln!(input, "\n{NOTHING_ANSWERED}").expect("the command reads on");
    answers(&mut output, &verdict(NOTHING_ANSWERED));
    #[cfg(target_os = "linux")]
    never_had(&child, 2 * LARGEST);
    drop(input);
    answers(&mut complaints, "");
    assert_eq!(child.wait().expect("the command ends").code(), Some(2));
}

#[test]
fn what_has_come_is_answered_while_the_next_is_half_there() {
    let (mut child, mut input, mut output) = judge();
    let (half, other_half) = NOTHING_ANSWERED.split_at(50);
    write!(input, "{EMPTY_HOLDER}\n{EMPTY_HOLDER}\n{half}").expect("the command reads");
    answers(&mut output, &verdict(EMPTY_HOLDER));
    answers(&mut output, &verdict(EMPTY_HOLDER));
    writeln!(input, "{other_half}").expect("the command reads on");
    answers(&mut output, &verdict(NOTHING_ANSWERED));
    drop(input);
    assert!(child.wait().expect("the command ends").success());
}

/// Asserts that the command ends by itself, and says nothing about it.
#[track_caller]
fn leaves_quietly(mut child: Child) {
    let has_ended = (0..6000).any(|_| {
        thread::sleep(Duration::from_millis(10));
        child.try_wait().expect("the command can be asked").is_some()
    });
    if !has_ended {
        child.kill().expect("the command can be ended");
    }
    let mut complaints = String::new();
    child.stderr.take().expect("standard error is a pipe").read_to_string(&mut complaints).expect("it is text");
    assert_eq!((complaints.as_str(), child.wait().expect("the command has ended").code()), ("", Some(0)));
}

#[test]
fn with_nobody_listening_an_endless_stream_ends() {
    let (child, mut input, output) = judge();
    drop(output);
    let line = format!("{EMPTY_HOLDER}\n");
    while input.write_all(line.as_bytes()).is_ok() {}
    leaves_quietly(child);
}

#[test]
fn with_nobody_listening_more_input_is_not_waited_for() {
    let (child, mut input, output) = judge();
    drop(output);
    writeln!(input, "{EMPTY_HOLDER}").expect("the command reads");
    leaves_quietly(child);
}
