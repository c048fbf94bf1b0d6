//! An archive given to the command: every examination of it, in the order of its list.

use std::fs;

use plugwary::archive::Packer;
use plugwary::collection::Seen;
use plugwary::domain::assess::{RuleBook, assess};
use plugwary::record::{judged_line, read};

use crate::{EMPTY_HOLDER, NOTHING_ANSWERED, file, name, printed, run, verdict};

fn archive(texts: &[&str]) -> Vec<u8> {
    let mut packer = Packer::new();
    let mut bytes = Vec::new();
    for text in texts {
        let record = read(text).expect("it is an examination");
        let assessment = assess(&record.examination, &RuleBook::CURRENT);
        bytes.extend(packer.examination(Seen { record: &record, assessment: &assessment }).expect("there is room"));
    }
    bytes.extend(packer.finish().expect("there is room"));
    bytes
}

#[test]
fn every_examination_of_an_archive_is_judged_in_its_order() {
    let archive = file("archive", "all.zip", &archive(&[NOTHING_ANSWERED, EMPTY_HOLDER]));
    let json = file("archive", "one.json", EMPTY_HOLDER.as_bytes());
    let output = run(&["judge", name(&archive), name(&json)], b"");
    let line = |text: &str| judged_line(&read(text).expect("it is an examination")) + "\n";
    let expected = line(NOTHING_ANSWERED) + &line(EMPTY_HOLDER) + &verdict(EMPTY_HOLDER);
    assert_eq!(printed(&output), (expected.as_str(), "", Some(0)));
}

#[test]
fn an_archive_without_examinations_or_cut_short_is_named() {
    let bytes = archive(&[EMPTY_HOLDER]);
    for (spoilt, why) in [
        (archive(&[]), "there is no examination in the archive"),
        (bytes[..bytes.len() - 1].to_vec(), "this is no zip archive, or it is cut short"),
    ] {
        let path = file("archive", "spoilt.zip", &spoilt);
        let output = run(&["judge", name(&path)], b"");
        let (lines, complaints, code) = printed(&output);
        assert_eq!((lines, code), ("", Some(2)));
        assert!(complaints.starts_with(&format!("{}: {why}. ", name(&path))), "{complaints}");
        fs::remove_file(path).expect("the file is there");
    }
}

#[test]
fn a_damaged_examination_is_named_and_the_rest_is_judged() {
    let mut bytes = archive(&[NOTHING_ANSWERED, EMPTY_HOLDER]);
    // Inside the first examination, behind its header and name.
    bytes[100] ^= 0xff;
    let path = file("archive", "damaged.zip", &bytes);
    let output = run(&["judge", name(&path)], b"");
    let (lines, complaints, code) = printed(&output);
    assert_eq!((lines, code), (verdict(EMPTY_HOLDER).as_str(), Some(2)));
    let id = read(NOTHING_ANSWERED).expect("it is an examination").id;
    assert!(complaints.starts_with(&format!("{}: examinations/{id}.json: ", name(&path))), "{complaints}");
}
