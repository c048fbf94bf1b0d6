//! Whole examinations: each is read, judged, written, read again and judged to the same bytes, and the verdict is the one that the
//! rules give.

#![expect(clippy::expect_used, reason = "a test that cannot read its cases must stop")]

mod expected;

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use expected::{CASES, Case};
use plugwary::domain::assess::{Assessment, RuleBook, assess};
use plugwary::domain::check;
use plugwary::domain::finding::{Conformity, Finding, Severity};
use plugwary::domain::verdict::Verdict;
use plugwary::record::{Record, judged_line, read, write};

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/examinations/cases")
}

#[track_caller]
fn record(file: &str) -> Record {
    let text = fs::read_to_string(folder().join(file)).expect("the case is there");
    read(&text).unwrap_or_else(|fault| unreachable!("{file}: {fault}. {}", fault.hint()))
}

fn assessed(case: &Case) -> Assessment {
    assess(&record(case.file).examination, &RuleBook::CURRENT)
}

fn broken(assessment: &Assessment) -> impl Iterator<Item = &Finding> {
    assessment.findings.iter().filter(|finding| finding.outcome() == Conformity::Nonconforming)
}

#[test]
fn every_case_gets_the_verdict_that_the_rules_give() {
    for case in CASES {
        let verdict = assessed(case).verdict;
        assert_eq!(verdict, case.verdict, "{}: {}", case.file, case.because);
    }
}

#[test]
fn what_should_break_breaks() {
    for case in CASES {
        let assessment = assessed(case);
        let broken: BTreeSet<_> = broken(&assessment).map(|finding| finding.code).collect();
        for code in case.breaks {
            assert!(broken.contains(code), "{}: {code} does not break; these do: {broken:?}", case.file);
        }
    }
}

#[test]
fn a_sound_sample_breaks_nothing_and_leaves_no_doubt() {
    for case in CASES.iter().filter(|case| case.is_sound) {
        let assessment = assessed(case);
        let doubts = assessment.findings.iter().filter(|finding| finding.outcome() == Conformity::Inconclusive);
        let told: Vec<_> = broken(&assessment).chain(doubts).map(|finding| finding.code).collect();
        assert!(told.is_empty(), "{}: {told:?}", case.file);
    }
}

#[test]
fn what_is_not_to_be_accepted_is_no_danger() {
    for case in CASES.iter().filter(|case| case.verdict == Verdict::DoNotAccept) {
        let assessment = assessed(case);
        let dangers: Vec<_> =
            broken(&assessment).filter(|f| f.judgement.severity == Severity::Danger).map(|f| f.code).collect();
        assert!(dangers.is_empty(), "{}: {dangers:?}", case.file);
    }
}

#[test]
fn written_and_read_again_it_is_judged_to_the_same_bytes() {
    for case in CASES {
        let first = record(case.file);
        let again = read(&write(&first)).expect("what was written can be read");
        assert_eq!(first, again, "{}", case.file);
        assert_eq!(judged_line(&first), judged_line(&again), "{}", case.file);
    }
}

#[test]
fn every_file_is_a_case_and_every_name_its_own() {
    let files: BTreeSet<_> = fs::read_dir(folder())
        .expect("the folder is there")
        .map(|entry| entry.expect("the entry can be read").file_name().to_string_lossy().into_owned())
        .collect();
    let cases: BTreeSet<_> = CASES.iter().map(|case| case.file.to_owned()).collect();
    assert_eq!(files, cases);
    let ids: BTreeSet<_> = CASES.iter().map(|case| record(case.file).id).collect();
    assert_eq!(ids.len(), CASES.len(), "two cases have the same id");
}

#[test]
fn only_the_first_example_is_marked_as_one() {
    let examples: Vec<_> = CASES.iter().map(|case| case.file).filter(|file| record(file).is_example).collect();
    assert_eq!(examples, ["market-stall-lead.json"]);
}

#[test]
fn every_check_is_told_and_every_check_that_can_break_does_in_some_case() {
    let assessments: Vec<_> = CASES.iter().map(assessed).collect();
    let findings = || assessments.iter().flat_map(|assessment| &assessment.findings);
    let told: BTreeSet<_> = findings().filter(|f| check::was_made(f.outcome())).map(|f| f.code).collect();
    let broken: BTreeSet<_> = assessments.iter().flat_map(broken).map(|finding| finding.code).collect();
    let untold: Vec<_> = check::all().map(|check| check.code).filter(|code| !told.contains(code)).collect();
    assert!(untold.is_empty(), "told in no case: {untold:?}");
    let unbroken: Vec<_> = check::all().map(|check| check.code).filter(|code| !broken.contains(code)).collect();
    assert!(unbroken.is_empty(), "broken in no case: {unbroken:?}");
}
