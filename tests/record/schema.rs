//! The published schema: that of the code, and true of what is read, written and refused.

use std::fs;
use std::path::Path;

use plugwary::domain::check;
use plugwary::record::{schema, write};
use proptest::prelude::*;
use serde_json::{Value, json};

use crate::by_hand::cases;
use crate::generated;
use crate::validator::problem;

fn published() -> Value {
    serde_json::from_str(&schema()).expect("the schema is JSON")
}

#[test]
fn the_published_schema_is_that_of_the_code() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("public/examination.schema.json");
    let published = fs::read_to_string(path).expect("the schema is published");
    let how = "cargo run --no-default-features --features schema -- judge --schema > public/examination.schema.json";
    assert!(published == schema(), "the schema has changed; publish it with: {how}");
}

#[test]
fn every_examination_written_by_hand_fits_the_schema() {
    let schema = published();
    for (name, text) in cases() {
        let value = serde_json::from_str(&text).expect("a case is JSON");
        assert_eq!(problem(&schema, &value), None, "{name}");
    }
}

#[test]
fn every_question_and_every_answer_is_named() {
    let branches = published()["$defs"]["Answer"]["anyOf"].as_array().expect("there are branches").clone();
    for question in check::questions() {
        let mut own = branches.iter().filter(|branch| branch["properties"]["question"]["const"] == question.id);
        let branch = own.next().expect("every question has a branch").to_string();
        assert!(own.next().is_none(), "{} has one branch", question.id);
        for answer in question.answers() {
            assert!(branch.contains(&format!("\"{answer}\"")), "{answer} in {branch}");
        }
    }
}

#[test]
fn what_is_refused_for_its_words_does_not_fit_the_schema() {
    let schema = published();
    let examination = |answer: Value| {
        json!({
            "format": "plugwary-examination", "version": 1, "equipment": "eyes", "answers": [answer],
            "sample": { "kind": "extension-lead", "market": "great-britain" }
        })
    };
    let right = json!({ "question": "fuse-in-the-holder", "one": "empty" });
    assert_eq!(problem(&schema, &examination(right)), None);
    for wrong in [
        json!({ "question": "fuse", "one": "empty" }),
        json!({ "question": "fuse-in-the-holder" }),
        json!({ "question": "fuse-in-the-holder", "one": "maybe" }),
        json!({ "question": "fuse-in-the-holder", "of": "socket-1", "one": "empty" }),
        json!({ "question": "fuse-in-the-holder", "one": "empty", "later": true }),
        json!({ "question": "fuse-in-the-holder", "later": false }),
        json!({ "question": "fuse-in-the-holder", "cant_tell": true }),
        json!({ "question": "socket-count", "count": 0 }),
        json!({ "question": "socket-count", "count": 21 }),
        json!({ "question": "core-resistance", "reading": { "value": 1, "unit": "ohm" } }),
        json!({ "question": "core-resistance", "of": "socket-1", "reading": { "value": 1, "unit": "ohm" } }),
        json!({ "question": "core-resistance", "of": "earth", "reading": { "value": 1, "unit": "volt" } }),
        json!({ "question": "core-resistance", "of": "earth", "reading": { "value": 1 } }),
        json!({ "question": "core-resistance", "of": "earth", "reading": { "value": -1, "unit": "ohm" } }),
        json!({ "question": "core-resistance", "of": "earth", "reading": { "value": 1, "open": true, "unit": "ohm" } }),
        json!({ "question": "core-resistance", "of": "earth", "reading": { "value": 1, "unit": "ohm", "step": 0 } }),
        json!({ "question": "core-resistance", "of": "earth", "reading": { "value": 1, "unit": "ohm", "instrument": "scale" } }),
    ] {
        let examination = examination(wrong);
        assert!(problem(&schema, &examination).is_some(), "{examination}");
        assert!(plugwary::record::read(&examination.to_string()).is_err(), "{examination}");
    }
}

proptest! {
    // Every answer is held against the branch of every question, which takes long.
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn what_is_written_fits_the_schema(record in generated::record()) {
        let value = serde_json::from_str(&write(&record)).expect("what is written is JSON");
        prop_assert_eq!(problem(&published(), &value), None);
    }
}
