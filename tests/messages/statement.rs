//! The statement of the first example, whole, and one of every reason over all cases.

use core::fmt::Write as _;
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use plugwary::domain::assess::{RuleBook, assess};
use plugwary::domain::check::question;
use plugwary::domain::examination::Answer;
use plugwary::domain::finding::{Conformity, Finding};
use plugwary::domain::question::Target;
use plugwary::domain::sample::Kind;
use plugwary::record::{Record, read};
use plugwary::words::statement::Bar;
use plugwary::words::{favour, reason, statement, verdict};

use crate::accepted;

/// Every case by name.
pub fn records() -> BTreeMap<String, Record> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/examinations/cases");
    let files = fs::read_dir(folder).expect("the cases are there");
    files
        .map(|file| {
            let path = file.expect("the entry can be read").path();
            let name = path.file_stem().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
            (name, read(&fs::read_to_string(path).expect("the case is text")).expect("the case is an examination"))
        })
        .collect()
}

/// A finding with everything that stands under its sentence.
fn told(finding: &Finding, kind: Kind) -> String {
    let mut told = format!("    {}: {}\n", finding.code, reason::reason(finding, kind));
    let parts = [
        reason::bearing(finding).to_owned(),
        favour::in_its_favour(finding, kind),
        reason::settles(finding).to_owned(),
    ];
    for part in reason::numbers(finding, kind).into_iter().chain(parts).filter(|part| !part.is_empty()) {
        writeln!(told, "      {part}").expect("a text takes any line");
    }
    told
}

#[test]
fn every_case_reads_as_accepted() {
    for name in [
        "market-stall-lead",
        "lethal-lead-good-print",
        "undecided-lead",
        "lead-with-usb-ni",
        "cord-set-foreign-plug",
        "hair-thin-lead",
    ] {
        let records = records();
        let record = records.get(name).expect("the case is there");
        let assessment = assess(&record.examination, &RuleBook::CURRENT);
        let kind = record.examination.sample.kind;
        let mut text = format!("{}\n{}\n", verdict::headline(&assessment), verdict::reach(&assessment));
        for sentence in statement::sentences(&record.examination, &assessment) {
            writeln!(text, "  [{}] {}", sentence.bar.code(), sentence.text).expect("a text takes any line");
            text.extend(sentence.findings.iter().map(|finding| self::told(finding, kind)));
        }
        accepted(&format!("statement-{name}"), &text);
    }
}

/// The bars of a case, by question.
fn bars(record: &Record) -> Vec<(&'static str, Bar)> {
    let assessment = assess(&record.examination, &RuleBook::CURRENT);
    let sentences = statement::sentences(&record.examination, &assessment);
    sentences.into_iter().map(|sentence| (sentence.question.id, sentence.bar)).collect()
}

#[test]
fn an_answer_that_was_given_is_not_called_not_looked_at() {
    let records = records();
    let sound = records.get("sound-lead-eyes").expect("the case is there");
    let empty: Vec<_> = bars(sound).into_iter().filter(|(_, bar)| *bar == Bar::Empty).collect();
    assert!(empty.is_empty(), "{empty:?}");
    let mut covered = sound.clone();
    let holder = question("fuse-in-the-holder").expect("the holder is asked about");
    covered.examination.record(holder, Target::Sample, Answer::One("under-the-cover"));
    assert!(bars(&covered).contains(&("fuse-in-the-holder", Bar::Empty)));
}

#[test]
fn print_is_quoted_once() {
    for (name, record) in records() {
        let assessment = assess(&record.examination, &RuleBook::CURRENT);
        for sentence in statement::sentences(&record.examination, &assessment) {
            assert!(!sentence.text.contains("““"), "{name}: {}", sentence.text);
        }
    }
}

#[test]
fn every_reason_reads_as_accepted() {
    let mut reasons = BTreeMap::new();
    for record in records().values() {
        let assessment = assess(&record.examination, &RuleBook::CURRENT);
        for finding in assessment.findings {
            let sort = format!("{:?}", finding.judgement.reason);
            let sort = sort.split([' ', '(', '{']).next().unwrap_or_default().to_owned();
            let grave = matches!(finding.outcome(), Conformity::Nonconforming | Conformity::Inconclusive);
            let words = told(&finding, record.examination.sample.kind);
            if grave {
                reasons.insert((sort, finding.outcome().code()), words);
            } else {
                reasons.entry((sort, finding.outcome().code())).or_insert(words);
            }
        }
    }
    let paragraphs: Vec<String> =
        reasons.iter().map(|((sort, outcome), words)| format!("{sort}, {outcome}\n{words}")).collect();
    let text = paragraphs.concat();
    accepted("reasons", &text);
}
