//! The verdict as one line.

use plugwary::domain::assess::{RuleBook, assess};
use plugwary::record::judged_line;
use proptest::prelude::*;
use serde_json::Value;

use crate::by_hand::case;
use crate::generated;

/// The fields in the order in which they stand.
const FIELDS: [&str; 10] = [
    "id",
    "number",
    "rule_book",
    "verdict",
    "looked",
    "outside_only",
    "findings",
    "not_looked_at",
    "dangers_not_tested",
    "next",
];

fn parsed(line: &str) -> Value {
    serde_json::from_str(line).expect("the line is JSON")
}

#[test]
fn an_empty_fuse_holder_reads_keep_away() {
    let mut record = case("cut-open-lead.json");
    let line = judged_line(&record);
    assert!(line.starts_with(r#"{"id":"5eed00000000000000000000000000a1","number":"2026-014","rule_book":"#), "{line}");
    record = plugwary::record::read(&plugwary::record::write(&record).replace("marked-bs-1362", "empty"))
        .expect("it is read");
    let verdict = parsed(&judged_line(&record));
    assert_eq!(verdict["verdict"], "keep-away");
    let findings = verdict["findings"].as_array().expect("findings are a list");
    let fuse = findings.iter().find(|finding| finding["code"] == "fuse-missing").expect("the fuse was looked at");
    assert_eq!(fuse["outcome"], "nonconforming");
    assert_eq!(fuse["severity"], "danger");
    assert_eq!(fuse["basis"], "sight");
    assert_eq!(fuse["decides"], true);
    assert_eq!(fuse["probability"], Value::Null);
    assert_eq!(fuse["evidence"], Value::Array(Vec::new()));
}

#[test]
fn a_stored_verdict_edition_is_not_what_judges() {
    let mut record = case("smallest.json");
    record.edition = "1999-01".to_owned();
    assert_eq!(parsed(&judged_line(&record))["rule_book"], RuleBook::CURRENT.edition);
}

/// Every number that stands behind a field, as it is written; null is none.
fn numbers(line: &str, field: &str) -> Vec<String> {
    let opening = format!("\"{field}\":");
    let behind = line.split(opening.as_str()).skip(1);
    behind
        .filter_map(|rest| rest.split([',', '}']).next())
        .filter(|written| *written != "null")
        .map(str::to_owned)
        .collect()
}

/// How many significant digits a number is written with.
fn digits(written: &str) -> usize {
    let mantissa = written.split('e').next().unwrap_or_default();
    let digits: String = mantissa.chars().filter(char::is_ascii_digit).collect();
    digits.trim_matches('0').len()
}

proptest! {
    #[test]
    fn a_line_says_what_the_assessment_says(record in generated::record()) {
        let line = judged_line(&record);
        let is_one_line = !line.contains(['\n', '\r', '\u{1b}']);
        prop_assert!(is_one_line);
        let assessment = assess(&record.examination, &RuleBook::CURRENT);
        let said = parsed(&line);
        prop_assert_eq!(&said["verdict"], assessment.verdict.code());
        prop_assert_eq!(&said["looked"]["made"], assessment.looked.made);
        prop_assert_eq!(&said["looked"]["of"], assessment.looked.of);
        let codes = |list: &str| -> Vec<String> {
            let entries = said[list].as_array().expect("it is a list").iter();
            entries.map(|entry| entry["code"].as_str().or(entry.as_str()).expect("it has a code").to_owned()).collect()
        };
        let (found, not_looked_at) = (codes("findings"), codes("not_looked_at"));
        let all: Vec<&str> = assessment.findings.iter().map(|finding| finding.code).collect();
        let mut told: Vec<&str> = found.iter().chain(&not_looked_at).map(String::as_str).collect();
        prop_assert_eq!(told.len(), all.len());
        told.sort_by_key(|code| all.iter().position(|known| known == code));
        prop_assert_eq!(told, all);
        prop_assert_eq!(codes("dangers_not_tested"), assessment.dangers_not_tested);
        prop_assert!(codes("next").len() <= 5);
    }

    #[test]
    fn fields_stand_in_order_and_numbers_are_cut(record in generated::record()) {
        let line = judged_line(&record);
        // A quote inside a text is escaped, so that no text looks like a field.
        let mut rest = line.clone();
        for field in FIELDS {
            let (_, after) = rest.split_once(&format!("\"{field}\":")).expect("every field stands behind the one before");
            rest = after.to_owned();
        }
        for (field, most) in [("probability", 4), ("u", 4), ("value", 6), ("at_least", 6), ("at_most", 6)] {
            for written in numbers(&line, field) {
                prop_assert!(written.parse::<f64>().is_ok() && digits(&written) <= most, "{field} {written}");
            }
        }
        for finding in parsed(&line)["findings"].as_array().expect("findings are a list") {
            for evidence in finding["evidence"].as_array().expect("evidence is a list") {
                prop_assert!(evidence["unit"].is_string() && evidence["value"].is_number(), "{}", evidence);
            }
        }
    }
}
