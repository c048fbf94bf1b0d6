//! Promises, standards, barcodes and signs of carelessness.

use plugwary::domain::check::what_it_says::presentation::{BARCODE, PRESENTATION};
use plugwary::domain::check::what_it_says::promise::OUTDOOR_BUILD;
use plugwary::domain::check::what_it_says::standards::{STANDARDS_NAMED, Standing, standing};
use plugwary::domain::check::{Judge, what_it_says};
use plugwary::domain::examination::Answer;
use plugwary::domain::facts::{FLEX_PRINT, PROMISES};
use plugwary::domain::finding::{Conformity, Severity};
use plugwary::domain::question::Target;
use plugwary::domain::sample::Equipment;
use plugwary::domain::standard::gtin::{gtin_check_digit, last_digit};

use crate::bench::Bench;

fn lead() -> Bench {
    Bench::lead(Equipment::Eyes)
}

fn for_outdoors() -> Bench {
    lead().any(PROMISES, &["outdoor"])
}

#[test]
fn an_outdoor_promise_needs_rubber_and_splash_protection() {
    let built = |codes: &[&str]| for_outdoors().any(OUTDOOR_BUILD, codes);
    built(&["splash-proof", "rubber-flex"]).expect("outdoor-promise-unmet", Conformity::Conforms);
    built(&["splash-proof"]).expect_break("outdoor-promise-unmet", Severity::Breach);
    built(&["rubber-flex"]).expect_break("outdoor-promise-unmet", Severity::Breach);
    built(&["rubber-flex", "used-wet"]).expect_break("outdoor-promise-unmet", Severity::Danger);
}

#[test]
fn the_flex_itself_says_whether_it_is_of_rubber() {
    let printed = |print| for_outdoors().printed(FLEX_PRINT, Target::Sample, print);
    printed("H05VV-F 3G1.5").expect_break("outdoor-promise-unmet", Severity::Breach);
    let claims_rubber = printed("H05VV-F 3G1.5").any(OUTDOOR_BUILD, &["splash-proof", "rubber-flex"]);
    claims_rubber.expect_break("outdoor-promise-unmet", Severity::Breach);
    let rubber = printed("H07RN-F 3G1.5");
    rubber.expect("outdoor-promise-unmet", Conformity::NotExamined);
    rubber.clone().any(OUTDOOR_BUILD, &["splash-proof"]).expect("outdoor-promise-unmet", Conformity::Conforms);
    rubber.any(OUTDOOR_BUILD, &[]).expect_break("outdoor-promise-unmet", Severity::Breach);
}

#[test]
fn without_an_outdoor_promise_none_is_broken() {
    lead().any(PROMISES, &["surge"]).expect("outdoor-promise-unmet", Conformity::NotApplicable);
    lead().expect("outdoor-promise-unmet", Conformity::NotExamined);
    for_outdoors().expect("outdoor-promise-unmet", Conformity::NotExamined);
}

/// GS1's worked answers (read): 629104150021 → 3, 890400021003 → 7, 730001100001 → 7, 03600024145 → 7.
#[test]
fn the_last_digit_follows_from_the_others() {
    for (others, last) in [("629104150021", 3), ("890400021003", 7), ("730001100001", 7), ("03600024145", 7)] {
        let digits: Vec<u8> = others.bytes().map(|byte| byte - b'0').collect();
        assert_eq!(gtin_check_digit(&digits), last, "{others}");
    }
}

#[test]
fn every_other_last_digit_is_wrong() {
    for digit in 0..10 {
        let bench = lead().printed(BARCODE, Target::Sample, &format!("6 291041 50021{digit}"));
        if digit == 3 {
            bench.expect("barcode-invalid", Conformity::Conforms);
        } else {
            bench.expect_break("barcode-invalid", Severity::BadSign);
        }
    }
}

#[test]
fn what_is_no_such_number_cannot_be_told() {
    for printed in ["62910415002", "629104150021345", "X001ABCDEF", ""] {
        assert_eq!(last_digit(printed), None, "{printed}");
        lead().printed(BARCODE, Target::Sample, printed).expect("barcode-invalid", Conformity::Inconclusive);
    }
    lead().answer(BARCODE, Target::Sample, Answer::Nothing).expect("barcode-invalid", Conformity::NotApplicable);
    lead().expect("barcode-invalid", Conformity::NotExamined);
}

#[test]
fn foreign_and_withdrawn_standards_are_bad_signs() {
    let named = |print| lead().printed(STANDARDS_NAMED, Target::Sample, print);
    named("BS 1363/A, BS 5733").expect("standard-misquoted", Conformity::Conforms);
    named("BS 1363, BS 6500").expect_break("standard-misquoted", Severity::BadSign);
    named("GB 2099.7-2015").expect_break("standard-misquoted", Severity::BadSign);
    named("BS 1363; IS 1293").expect_break("standard-misquoted", Severity::BadSign);
    named("BS 1363, BS 99999").expect("standard-misquoted", Conformity::Inconclusive);
    let none = lead().answer(STANDARDS_NAMED, Target::Sample, Answer::Nothing);
    none.expect("standard-misquoted", Conformity::NotApplicable);
}

#[test]
fn a_number_is_known_however_it_is_spaced() {
    for printed in ["BS1363", "bs 1363-1", "BS-1363/A", "BS 1363-1:2016+A1"] {
        assert_eq!(standing(printed), Standing::Fits, "{printed}");
    }
    assert_eq!(standing("AS/NZS 3112"), Standing::Foreign);
    assert_eq!(standing("ISO 9001"), Standing::Unknown);
}

#[test]
fn careless_print_and_package_are_bad_signs() {
    for (code, answer) in [("print-misspelt", "misspelt"), ("packaging-sharp", "sharp-edges")] {
        lead().any(PRESENTATION, &[answer]).expect_break(code, Severity::BadSign);
        lead().any(PRESENTATION, &[]).expect(code, Conformity::Conforms);
        lead().expect(code, Conformity::NotExamined);
    }
}

#[test]
fn every_answer_has_its_ruling() {
    for check in what_it_says::CHECKS {
        if let Judge::Answer(question, table) = check.judge {
            let ruled: Vec<&str> = table.iter().map(|row| row.0).collect();
            assert_eq!(ruled, question.answers(), "{}", check.code);
        }
    }
}
