//! The same record makes the same file, whatever stands in it.

use plugwary::report::{label, pdf};
use proptest::prelude::*;

use crate::{record, records};

#[test]
fn the_same_record_makes_the_same_bytes() {
    for (name, record) in records() {
        assert!(pdf(&record, &[]) == pdf(&record, &[]), "{name}");
        assert!(label(&record) == label(&record), "{name}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn any_text_can_be_set(title in "\\PC{0,400}", origin in ".{0,200}", id in "[0-9a-f]{0,32}") {
        let mut record = record("market-stall-lead");
        record.examination.sample.title = title;
        record.origin = origin;
        record.id = id;
        for made in [pdf(&record, &[]), label(&record)] {
            prop_assert!(made.starts_with(b"%PDF-1.") && made.ends_with(b"%%EOF"));
        }
    }
}
