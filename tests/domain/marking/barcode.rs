//! Numbers under barcodes: worked answers of GS1 and of shelves (check digit, GS1 General Specifications).

use plugwary::domain::marking::{Gtin, gtin};

/// GS1's own worked example: 629104150021 has the weighted sum 57 and so the check digit 3. The others are worked answers in print.
#[test]
fn worked_answers_are_valid() {
    for number in ["6291041500213", "8904000210037", "7300011000017", "036000241457"] {
        assert_eq!(gtin(number), Gtin::Valid, "{number}");
    }
}

#[test]
fn every_other_last_digit_is_wrong() {
    for printed in (0..=9_u8).filter(|digit| *digit != 3) {
        assert_eq!(gtin(&format!("629104150021{printed}")), Gtin::WrongDigit { printed, expected: 3 });
    }
}

#[test]
fn spaces_and_dashes_do_not_count() {
    assert_eq!(gtin(" 6 291041-500213 "), Gtin::Valid);
}

#[test]
fn other_lengths_and_letters_are_no_gtin() {
    for print in ["", "1", "62910415002", "629104150021312", "629104150021X", "６２９"] {
        assert_eq!(gtin(print), Gtin::NotAGtin, "{print}");
    }
}
