//! Seals checked by the command: one line of JSON a file, and an exit code that says whether all of them are sound.

use std::path::Path;

use plugwary::domain::custody::Handling;
use plugwary::record::{Record, append, read, write};
use plugwary::report::{page, page_sealed_by};
use plugwary::seal::{PublicKey, attach, fingerprint, sign, statement};
use serde_json::Value;

use crate::{EMPTY_HOLDER, file, name, printed, run};

const SECRET: [u8; 32] = [7; 32];

fn record() -> Record {
    let mut record = read(EMPTY_HOLDER).expect("it is an examination");
    for done in ["Bought it", "Put it away", "Took it out"] {
        append(&mut record, Handling { done: done.to_owned(), ..Handling::default() }).expect("it can be saved");
    }
    record
}

fn sealed(record: &Record) -> String {
    let key = PublicKey::of(&SECRET);
    let page = page_sealed_by(record, &[], &key);
    let said = statement(&page, &key, "2026-11-24T10:30:00Z").expect("the page is made for the key");
    attach(&page, &said, &sign(&SECRET, &said)).expect("they belong together")
}

/// What the command says of one file, and its exit code.
fn checked(path: &Path) -> (Value, Option<i32>) {
    let output = run(&["judge", "--check", name(path)], b"");
    let (lines, complaints, code) = printed(&output);
    assert_eq!(complaints, "");
    assert_eq!(lines.lines().count(), 1, "{lines}");
    (serde_json::from_str(lines).expect("the line is JSON"), code)
}

#[test]
fn an_untouched_file_is_told_to_be_so() {
    let record = record();
    let path = file("check", "sealed.html", sealed(&record).as_bytes());
    let (line, code) = checked(&path);
    assert_eq!(code, Some(0));
    assert_eq!(line["file"], name(&path));
    assert_eq!(line["state"], "untouched");
    assert_eq!(line["key"], fingerprint(&PublicKey::of(&SECRET)));
    assert_eq!(line["sealed"], "2026-11-24T10:30:00Z");
    assert_eq!(line["altered"], serde_json::json!([]));
    assert_eq!(line["id"], record.id);
    assert_eq!((&line["judged_again"], &line["chain"]), (&"same".into(), &"unbroken".into()));
}

#[test]
fn a_changed_file_is_told_by_what_was_changed() {
    let changed = sealed(&record()).replacen("Keep away", "Fine to use", 1);
    let (line, code) = checked(&file("check", "changed.html", changed.as_bytes()));
    assert_eq!(code, Some(1));
    assert_eq!((&line["state"], &line["altered"]), (&"altered".into(), &serde_json::json!(["text"])));
}

#[test]
fn a_file_without_a_seal_is_not_sound() {
    let record = record();
    let cut = sealed(&record);
    let cut = cut.split("<script type=\"application/json\" id=\"plugwary-seal\">").next().expect("there is a page");
    for (name, text, state) in [
        ("never.html", page(&record, &[]), "not-sealed"),
        ("never.json", write(&record), "not-sealed"),
        ("cut.html", cut.to_owned(), "seal-missing"),
        ("foreign.txt", "Hello".to_owned(), "not-sealed"),
    ] {
        let (line, code) = checked(&file("check", name, text.as_bytes()));
        assert_eq!((&line["state"], code), (&state.into(), Some(1)), "{name}");
    }
}

#[test]
fn a_sealed_file_with_a_broken_chain_is_not_sound() {
    let mut record = record();
    record.custody.entries.remove(1);
    let (line, code) = checked(&file("check", "chain.html", sealed(&record).as_bytes()));
    assert_eq!((&line["state"], &line["chain"], code), (&"untouched".into(), &"broken".into(), Some(1)));
    assert_eq!(line["breaks"][0], "Entry 2 is missing. So it cannot be told whether entry 3 is as it was written.");
}

#[test]
fn one_bad_file_among_good_ones_decides_the_exit_code() {
    let good = file("check-many", "good.html", sealed(&record()).as_bytes());
    let bad = file("check-many", "bad.html", page(&record(), &[]).as_bytes());
    let absent = good.with_file_name("absent.html");
    let output = run(&["judge", "--check", name(&bad), name(&good)], b"");
    let (lines, complaints, code) = printed(&output);
    assert_eq!((lines.lines().count(), complaints, code), (2, "", Some(1)));
    let output = run(&["judge", name(&good), "--check", name(&absent), name(&good)], b"");
    let (lines, complaints, code) = printed(&output);
    assert_eq!((lines.lines().count(), code), (2, Some(2)));
    assert!(complaints.starts_with(&format!("{}: ", name(&absent))), "{complaints}");
}

#[test]
fn nothing_is_checked_without_a_file() {
    let sentence = "plugwary: --check needs the names of files; --help tells more\n";
    assert_eq!(printed(&run(&["judge", "--check"], b"")), ("", sentence, Some(2)));
}

#[test]
fn a_sealed_page_is_judged_as_any_other() {
    let record = record();
    let path = file("check", "judged.html", sealed(&record).as_bytes());
    let line = plugwary::record::judged_line(&record) + "\n";
    assert_eq!(printed(&run(&["judge", name(&path)], b"")), (line.as_str(), "", Some(0)));
}
