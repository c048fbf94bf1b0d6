//! Many samples: two beside each other, all of them sorted out and in tables, and the archive, out and back.

#![expect(clippy::expect_used, reason = "a test that cannot lay out its samples must stop")]

mod beside;
mod filter;
mod hostile;
mod out;
mod product;
mod table;
mod taking;
mod zip;

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use plugwary::collection::Seen;
use plugwary::domain::assess::{Assessment, RuleBook, assess};
use plugwary::domain::check;
use plugwary::domain::examination::Answer;
use plugwary::domain::question::{Question, Target};
use plugwary::record::{Record, read};

/// Every case of whole examinations by name.
fn cases() -> BTreeMap<String, Record> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/examinations/cases");
    let cases: BTreeMap<String, Record> = fs::read_dir(folder)
        .expect("the cases are there")
        .map(|file| {
            let path = file.expect("the entry can be read").path();
            let name = path.file_stem().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
            (name, read(&fs::read_to_string(path).expect("the case is text")).expect("the case is an examination"))
        })
        .collect();
    assert!(cases.len() > 15, "the cases were found");
    cases
}

/// A case by name.
#[track_caller]
fn case(name: &str) -> Record {
    cases().remove(name).expect("the case is there")
}

/// Records with what was made of them.
struct Shelf(Vec<(Record, Assessment)>);

impl Shelf {
    fn of(records: impl IntoIterator<Item = Record>) -> Self {
        let assessed = |record: Record| {
            let assessment = assess(&record.examination, &RuleBook::CURRENT);
            (record, assessment)
        };
        Self(records.into_iter().map(assessed).collect())
    }

    fn seen(&self) -> Vec<Seen<'_>> {
        self.0.iter().map(|(record, assessment)| Seen { record, assessment }).collect()
    }
}

#[track_caller]
fn question(id: &str) -> &'static Question {
    check::question(id).expect("the question is asked")
}

/// A small record, with an answer or more.
fn record(number: u8, title: &str, answers: &[(&str, Answer)]) -> Record {
    let text = r#"{"format":"plugwary-examination","version":1,"equipment":"eyes","sample":{"kind":"extension-lead","market":"great-britain"}}"#;
    let mut record = read(text).expect("it is an examination");
    record.id = format!("{number:032x}");
    title.clone_into(&mut record.examination.sample.title);
    "2026-11-24T10:00:00Z".clone_into(&mut record.begun);
    "2026-11-24T10:30:00Z".clone_into(&mut record.changed);
    for (id, answer) in answers {
        record.examination.record(question(id), Target::Sample, answer.clone());
    }
    record
}
