//! The native command, run as a process: files and lines in, one verdict a line out, byte for byte those of the library.

#![cfg(not(target_arch = "wasm32"))]
#![expect(clippy::expect_used, reason = "a test that cannot start the command must stop")]

use std::fs;
use std::io::{BufRead, BufReader, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Output, Stdio};
use std::thread;

use plugwary::record::{judged_line, read, write};
use plugwary::report::page;

mod archive;
mod bounds;
mod check;
mod many;

const EMPTY_HOLDER: &str = r#"{"format":"plugwary-examination","version":1,"sample":{"kind":"extension-lead","market":"great-britain"},"equipment":"eyes","answers":[{"question":"fuse-in-the-holder","one":"empty"}]}"#;
const NOTHING_ANSWERED: &str = r#"{"format":"plugwary-examination","version":1,"sample":{"kind":"cord-set","market":"northern-ireland"},"equipment":"hand-tools"}"#;

fn plugwary(arguments: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_plugwary"));
    command.args(arguments).stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    command
}

/// Runs the command with this on its standard input.
fn run(arguments: &[&str], input: &[u8]) -> Output {
    let mut child = plugwary(arguments).spawn().expect("the command starts");
    let mut pipe = child.stdin.take().expect("standard input is a pipe");
    thread::scope(|scope| {
        // The command answers before it has read everything. One that reads no input may be gone already.
        scope.spawn(move || pipe.write_all(input));
        child.wait_with_output().expect("the command ends")
    })
}

fn printed(output: &Output) -> (&str, &str, Option<i32>) {
    let text = |bytes| str::from_utf8(bytes).expect("what is printed is text");
    (text(&output.stdout), text(&output.stderr), output.status.code())
}

/// The line that the library makes of an examination, with its newline.
fn verdict(text: &str) -> String {
    judged_line(&read(text).expect("it is an examination")) + "\n"
}

/// A file with this in it, in a folder of the test's own.
fn file(test: &str, name: &str, bytes: &[u8]) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(test);
    fs::create_dir_all(&folder).expect("a folder can be made");
    let path = folder.join(name);
    fs::write(&path, bytes).expect("a file can be written");
    path
}

fn name(path: &Path) -> &str {
    path.to_str().expect("the path is text")
}

#[test]
fn a_page_and_a_bare_examination_are_judged_alike_and_like_the_library() {
    let record = read(EMPTY_HOLDER).expect("it is an examination");
    let json = file("alike", "lead.json", write(&record).as_bytes());
    let html = file("alike", "lead.html", page(&record, &[]).as_bytes());
    let output = run(&["judge", name(&json), name(&html)], b"");
    let line = verdict(EMPTY_HOLDER);
    assert_eq!(printed(&output), (format!("{line}{line}").as_str(), "", Some(0)));
    assert!(line.contains(r#""verdict":"keep-away""#), "{line}");
}

#[test]
fn lines_from_standard_input_are_judged_in_their_order() {
    let input = format!("{EMPTY_HOLDER}\n\n  {NOTHING_ANSWERED}\r\n{EMPTY_HOLDER}");
    let (empty, nothing) = (verdict(EMPTY_HOLDER), verdict(NOTHING_ANSWERED));
    for arguments in [&["judge"][..], &["judge", "-"]] {
        let expected = format!("{empty}{nothing}{empty}");
        assert_eq!(printed(&run(arguments, input.as_bytes())), (expected.as_str(), "", Some(0)));
    }
}

#[test]
fn what_the_app_writes_can_be_piped_in_as_it_is() {
    let written = [EMPTY_HOLDER, NOTHING_ANSWERED].map(|text| write(&read(text).expect("it is an examination")));
    let output = run(&["judge"], written.join("\n").as_bytes());
    let expected = verdict(&written[0]) + &verdict(&written[1]);
    assert_eq!(printed(&output), (expected.as_str(), "", Some(0)));
}

#[test]
fn what_cannot_be_read_is_named_and_passed_over() {
    let good = file("passed-over", "good.json", EMPTY_HOLDER.as_bytes());
    let newer = EMPTY_HOLDER.replace("\"version\":1", "\"version\":7");
    let newer = file("passed-over", "newer.json", newer.as_bytes());
    let no_text = file("passed-over", "photo.jpg", &[0xff, 0xd8, 0xff, 0xe0]);
    let absent = good.with_file_name("absent.json");
    let output = run(&["judge", name(&newer), name(&absent), name(&no_text), name(&good)], b"");
    let (lines, complaints, code) = printed(&output);
    assert_eq!((lines, code), (verdict(EMPTY_HOLDER).as_str(), Some(2)));
    let complaints: Vec<&str> = complaints.lines().collect();
    assert_eq!(complaints.len(), 3, "{complaints:?}");
    let made_by = format!("{}: made by a newer edition (version 7); this one reads up to 1", name(&newer));
    assert!(complaints[0].starts_with(&made_by), "{complaints:?}");
    assert!(complaints[1].starts_with(&format!("{}: ", name(&absent))), "{complaints:?}");
    assert!(complaints[2].contains("this is not a Plugwary examination"), "{complaints:?}");
}

#[test]
fn a_bad_line_is_named_by_its_number_and_the_rest_is_judged() {
    let cut = EMPTY_HOLDER.get(..60).expect("the cut is in plain text");
    let written = write(&read(EMPTY_HOLDER).expect("it is an examination"));
    let input = format!("{cut}\n{EMPTY_HOLDER}\n\nnonsense\n{written}\n[]\n");
    let output = run(&["judge"], &[input.as_bytes(), b"\xff\xfe\n"].concat());
    let (lines, complaints, code) = printed(&output);
    assert_eq!((lines, code), ((verdict(EMPTY_HOLDER) + &verdict(&written)).as_str(), Some(2)));
    let after = 5 + written.lines().count();
    let named: Vec<&str> = complaints.lines().map(|line| line.split(": ").next().unwrap_or_default()).collect();
    assert_eq!(named, ["line 1", "line 4", &format!("line {after}"), &format!("line {}", after + 1)]);
}

#[test]
fn a_verdict_is_out_before_the_next_examination_is_in() {
    let mut child: Child = plugwary(&["judge"]).spawn().expect("the command starts");
    let mut input = child.stdin.take().expect("standard input is a pipe");
    let mut output = BufReader::new(child.stdout.take().expect("standard output is a pipe"));
    for text in [EMPTY_HOLDER, NOTHING_ANSWERED] {
        writeln!(input, "{text}").expect("the command reads");
        let mut line = String::new();
        output.read_line(&mut line).expect("the command answers");
        assert_eq!(line, verdict(text));
    }
    drop(input);
    assert!(child.wait().expect("the command ends").success());
}

#[test]
fn help_names_every_way_to_use_it() {
    for arguments in [&[][..], &["--help"], &["-h"], &["help"], &["judge", "--help"]] {
        let output = run(arguments, b"");
        let (help, complaints, code) = printed(&output);
        assert_eq!((complaints, code), ("", Some(0)));
        for way in
            ["plugwary judge FILE...", "plugwary judge ", "plugwary judge --schema", "--check FILE...", "--one-for-one"]
        {
            assert!(help.contains(way), "{help}");
        }
    }
}

#[test]
fn what_it_does_not_know_is_said_in_one_sentence() {
    for (arguments, sentence) in [
        (&["mend"][..], "plugwary: there is no command mend; --help names them all\n"),
        (&["judge", "--loud"], "plugwary: there is no option --loud; --help names them all\n"),
    ] {
        assert_eq!(printed(&run(arguments, b"")), ("", sentence, Some(2)));
    }
}

#[test]
fn a_file_may_be_named_like_an_option() {
    let path = file("like-an-option", "--schema", EMPTY_HOLDER.as_bytes());
    let mut command = plugwary(&["judge", "--", "--schema"]);
    let output = command.current_dir(path.parent().expect("it lies in a folder")).output().expect("the command ends");
    assert_eq!(printed(&output), (verdict(EMPTY_HOLDER).as_str(), "", Some(0)));
}

#[cfg(feature = "schema")]
#[test]
fn the_schema_is_printed_as_it_is_published() {
    assert_eq!(printed(&run(&["judge", "--schema"], b"")), (plugwary::record::schema().as_str(), "", Some(0)));
}

#[cfg(not(feature = "schema"))]
#[test]
fn a_build_without_the_schema_says_so() {
    let sentence = "plugwary: this build has no schema in it; build with --features schema\n";
    assert_eq!(printed(&run(&["judge", "--schema"], b"")), ("", sentence, Some(2)));
}
