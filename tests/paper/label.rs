//! The label says which sample it is on, and nothing of what was found.

use plugwary::record::fingerprint;
use plugwary::report::label;
use plugwary::words::verdict;

use plugwary::domain::assess::{RuleBook, assess};

use crate::reader::{about, code, file, text};
use crate::{record, records};

#[test]
fn label_names_number_date_and_fingerprint_on_a_card() {
    let record = record("market-stall-lead");
    let made = file("label", "label.pdf", &label(&record));
    assert_eq!(about(&made, "Pages"), "1");
    // 85.60 mm by 53.98 mm, at 72 points to the inch.
    assert_eq!(about(&made, "Page size"), "242.65 x 153.01 pts");
    let said = text(&made);
    let sha256 = fingerprint(&record);
    assert!(said.contains("0000-E0A1") && said.contains("Examined 2026-03-14"), "{said}");
    let digits: String = said.chars().filter(|c| !c.is_whitespace()).collect();
    assert!(digits.contains(&sha256), "{said}");
    assert!(code(&made).ends_with(&sha256));
}

#[test]
fn label_tells_no_verdict() {
    for (name, record) in records() {
        let made = file("verdict", &format!("{name}.pdf"), &label(&record));
        let verdict = verdict::headline(&assess(&record.examination, &RuleBook::CURRENT));
        let said = text(&made);
        assert!(!said.contains(&verdict) && !said.to_lowercase().contains("danger"), "{name}: {said}");
    }
}
