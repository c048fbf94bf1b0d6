//! Many examinations in one stream: all answered, in their order, each as if it had come alone.

use std::fs;
use std::path::Path;

use super::{EMPTY_HOLDER, NOTHING_ANSWERED, printed, run, verdict};

/// Every whole examination of the tests, each on one line.
fn cases() -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/examinations/cases");
    let files = fs::read_dir(folder).expect("the cases are there").map(|file| file.expect("a case is there").path());
    let mut files: Vec<_> = files.collect();
    files.sort();
    // A newline in JSON stands between words only, where a space does as well.
    files.iter().map(|file| fs::read_to_string(file).expect("a case is text").replace('\n', " ")).collect()
}

/// An examination that can be told from all others.
pub fn numbered(text: &str, number: usize) -> String {
    let id = format!("\"id\":\"{number:032x}\",");
    match text.split_once("\"id\"") {
        Some((before, after)) => {
            let (_, after) = after.split_once(',').expect("more comes after the id");
            format!("{before}{id}{after}")
        }
        None => text.replacen('{', &format!("{{{id}"), 1),
    }
}

/// The same examination with this much white space in it.
pub fn padded(text: &str, length: usize) -> String {
    text.replacen('{', &format!("{{{}", " ".repeat(length)), 1)
}

/// Lines of very different length and cost.
fn uneven(count: usize) -> Vec<String> {
    let cases = cases();
    (0..count)
        .zip(cases.iter().cycle())
        .map(|(number, case)| match number % 8 {
            0 => numbered(case, number),
            3 if number % 100 == 3 => padded(&numbered(EMPTY_HOLDER, number), 100_000),
            5 if number % 500 == 5 => padded(&numbered(NOTHING_ANSWERED, number), 3_000_000),
            1 | 3 | 5 => numbered(EMPTY_HOLDER, number),
            _ => numbered(NOTHING_ANSWERED, number),
        })
        .collect()
}

fn lines(texts: &[String]) -> Vec<u8> {
    texts.iter().flat_map(|text| [text.as_str(), "\n"]).collect::<String>().into_bytes()
}

#[test]
fn thousands_of_uneven_lines_are_answered_in_their_order_as_if_each_had_come_alone() {
    let texts = uneven(3000);
    assert!(texts.iter().any(|text| text.len() > 2_000_000), "some are large");
    let output = run(&["judge"], &lines(&texts));
    let (answers, complaints, code) = printed(&output);
    assert_eq!((complaints, code), ("", Some(0)));
    assert_eq!(answers.lines().count(), texts.len());
    for (number, (answer, text)) in answers.lines().zip(&texts).enumerate() {
        assert_eq!(answer.to_owned() + "\n", verdict(text), "line {}", number + 1);
        assert!(answer.contains(&format!("{number:032x}")), "{answer}");
    }
}

#[test]
fn every_case_is_answered_in_a_stream_with_the_bytes_it_is_answered_with_alone() {
    let cases = cases();
    let alone: Vec<u8> = cases.iter().flat_map(|case| run(&["judge"], case.as_bytes()).stdout).collect();
    assert_eq!(run(&["judge"], &lines(&cases)).stdout, alone);
}

/// Good lines with a bad one after each six, and the numbers of the bad ones.
fn mixed(count: usize) -> (Vec<String>, Vec<usize>) {
    let bad = ["nonsense", "{", "[1, 2]", r#"{"format":"plugwary-examination","version":1"#, r#"{"a":}"#, "}"];
    let mut bad = bad.into_iter().cycle();
    let is_bad = |line: &usize| line.is_multiple_of(7);
    let good = |line| numbered(EMPTY_HOLDER, line);
    let text = |line| bad.next().filter(|_| is_bad(&line)).map_or_else(|| good(line), str::to_owned);
    ((1..=count).map(text).collect(), (1..=count).filter(is_bad).collect())
}

#[test]
fn bad_lines_among_good_ones_are_named_in_order_and_passed_over() {
    let (texts, bad) = mixed(3000);
    let output = run(&["judge"], &lines(&texts));
    let (answers, complaints, code) = printed(&output);
    assert_eq!(code, Some(2));
    let good = (1..).zip(&texts).filter(|(line, _)| !bad.contains(line));
    assert_eq!(answers, good.map(|(_, text)| verdict(text)).collect::<String>());
    let named: Vec<_> = complaints.lines().map(|complaint| complaint.split_once(": ").unwrap_or_default().0).collect();
    assert_eq!(named, bad.iter().map(|line| format!("line {line}")).collect::<Vec<_>>());
}

#[test]
fn one_for_one_leaves_a_line_where_there_is_no_verdict() {
    let (texts, bad) = mixed(1000);
    let output = run(&["judge", "--one-for-one"], &lines(&texts));
    let (answers, complaints, code) = printed(&output);
    assert_eq!((answers.lines().count(), code), (texts.len(), Some(2)));
    let mut complaints = complaints.lines();
    for (line, (answer, text)) in (1..).zip(answers.lines().zip(&texts)) {
        if bad.contains(&line) {
            let (name, why) = complaints.next().and_then(|said| said.split_once(": ")).expect("it is named");
            let left: serde_json::Value = serde_json::from_str(answer).expect("what is left is JSON");
            assert_eq!(left, serde_json::json!({ "unread": name, "why": why }));
            assert_eq!(name, format!("line {line}"));
        } else {
            assert_eq!(answer.to_owned() + "\n", verdict(text));
        }
    }
    assert_eq!(complaints.next(), None);
}

#[test]
fn a_brace_that_stands_alone_takes_nothing_of_the_next_examination() {
    let output = run(&["judge"], format!("{{\n  \"format\":\n{EMPTY_HOLDER}\n{{\n").as_bytes());
    let expected = "line 1: the file is cut short\nline 4: the file is cut short\n";
    assert_eq!(printed(&output), (verdict(EMPTY_HOLDER).as_str(), expected, Some(2)));
}

#[test]
fn a_place_in_a_stream_is_named_by_the_line_of_the_stream() {
    let output = run(&["judge"], format!("{EMPTY_HOLDER}\n{{\"a\":}}\n{{\n  \"a\": 1,\n  b\n}}\n").as_bytes());
    let expected = "line 2: the file is damaged at line 2, column 6\nline 3: the file is damaged at line 5, column 3\n";
    assert_eq!(printed(&output), (verdict(EMPTY_HOLDER).as_str(), expected, Some(2)));
}
