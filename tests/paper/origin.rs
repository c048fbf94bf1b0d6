//! On paper: where a sample came from, and the key that its files are sealed with.

use plugwary::domain::custody::{Acquisition, Handling};
use plugwary::record::{append, fingerprint};
use plugwary::report::{label_sealed_by, page_sealed_by, pdf, pdf_sealed_by};
use plugwary::seal::{self, PublicKey};

use crate::reader::{about, code, file, text};
use crate::record;

/// Any key: nothing here is sealed.
const KEY: PublicKey = PublicKey::new([7; 32]);

#[test]
fn what_somebody_wrote_of_the_origin_stays_text() {
    let mut record = record("market-stall-lead");
    let hostile = "(Tj) ET <script> \\) %%EOF \u{202e}gpj";
    record.custody.acquisition = Acquisition { seller: hostile.to_owned(), ..Acquisition::default() };
    let handling = Handling { done: hostile.to_owned(), seal: "B-0041".to_owned(), ..Handling::default() };
    append(&mut record, handling).expect("it can be saved");
    let made = file("origin", "origin.pdf", &pdf(&record, &[]));
    let said = text(&made).split_whitespace().collect::<Vec<_>>().join(" ");
    assert_eq!(said.matches("(Tj) ET <script> \\) %%EOF [U+202E]gpj").count(), 2, "{said}");
    assert!(said.contains("[seal or bag number: B-0041]") && said.contains("The chain is unbroken"), "{said}");
}

#[test]
fn paper_and_label_name_the_key_in_words_and_in_the_square_code() {
    let record = record("market-stall-lead");
    let key = seal::fingerprint(&KEY);
    let (sheets, label) = (pdf_sealed_by(&record, &[], &KEY), label_sealed_by(&record, &KEY));
    for (name, bytes) in [("sheets.pdf", sheets), ("label.pdf", label)] {
        let made = file("key", name, &bytes);
        let said: String = text(&made).chars().filter(|c| !c.is_whitespace()).collect();
        assert!(said.contains(&key), "{said}");
        let sample = format!("Plugwary sample 0000-E0A1, SHA-256 of the examination {}", fingerprint(&record));
        assert_eq!(code(&made), format!("{sample}, key of the seal {key}"));
    }
    assert_eq!(about(&file("key", "label.pdf", &label_sealed_by(&record, &KEY)), "Pages"), "1");
    assert!(page_sealed_by(&record, &[], &KEY).contains(&key));
}
