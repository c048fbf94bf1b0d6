//! Who is named, which marks the law wants, and what only a list elsewhere can tell.

use plugwary::domain::check::plug::print::PLUG_PRINT;
use plugwary::domain::check::what_it_says::identity::IDENTITY;
use plugwary::domain::check::what_it_says::lookup::{APPROVAL_REGISTER, MAKER_AND_TYPE, RECALL_LISTS};
use plugwary::domain::check::what_it_says::marks::{MARK_HEIGHT, MARKS};
use plugwary::domain::check::what_it_says::presentation::BARCODE;
use plugwary::domain::examination::Answer;
use plugwary::domain::facts::{EXTRAS, RATING};
use plugwary::domain::finding::{Basis, Conformity, Severity};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::Unit;
use plugwary::domain::question::{ClaimPlace, Target};
use plugwary::domain::sample::{Equipment, Kind, Market};
use plugwary::domain::verdict::Verdict;
use plugwary::words::lookup;

use crate::bench::Bench;

const EVERYTHING: [&str; 8] = [
    "maker",
    "maker-address",
    "local-address",
    "electronic-address",
    "type-or-batch",
    "instructions",
    "wheeled-bin",
    "seller",
];

const NAMED: [(&str, &str); 4] = [
    ("maker-not-named", "maker"),
    ("importer-not-named", "local-address"),
    ("type-or-batch-missing", "type-or-batch"),
    ("instructions-missing", "instructions"),
];

fn without(missing: &str) -> Vec<&'static str> {
    EVERYTHING.into_iter().filter(|code| *code != missing).collect()
}

fn lead() -> Bench {
    Bench::lead(Equipment::Eyes)
}

fn in_northern_ireland() -> Bench {
    Bench::sample(Kind::ExtensionLead, Market::NorthernIreland, Equipment::Eyes)
}

#[test]
fn names_that_are_all_there_fit_the_claim_and_are_no_evidence() {
    let bench = in_northern_ireland().any(IDENTITY, &EVERYTHING);
    for (code, _) in NAMED {
        let finding = bench.finding(code).expect("it applies");
        assert_eq!((finding.outcome(), finding.judgement.basis), (Conformity::Conforms, Basis::Print), "{code}");
    }
    bench.expect("waste-mark-missing", Conformity::Conforms);
    bench.expect("seller-untraceable", Conformity::Conforms);
}

#[test]
fn a_name_that_is_missing_is_a_bad_sign_on_a_plain_lead_in_great_britain() {
    for (code, name) in NAMED {
        lead().any(IDENTITY, &without(name)).expect_break(code, Severity::BadSign);
    }
}

#[test]
fn it_is_against_the_rules_on_electronics_and_in_northern_ireland() {
    for (code, name) in NAMED {
        lead().any(EXTRAS, &["usb"]).any(IDENTITY, &without(name)).expect_break(code, Severity::Breach);
        in_northern_ireland().any(IDENTITY, &without(name)).expect_break(code, Severity::Breach);
    }
}

#[test]
fn where_nobody_at_all_is_named_it_is_against_the_rules_everywhere() {
    let bench = lead().any(IDENTITY, &["type-or-batch", "seller"]);
    bench.expect_break("maker-not-named", Severity::Breach);
    bench.expect_break("importer-not-named", Severity::Breach);
}

#[test]
fn northern_ireland_wants_a_postal_and_an_electronic_address_of_the_maker() {
    for address in ["maker-address", "electronic-address"] {
        in_northern_ireland().any(IDENTITY, &without(address)).expect_break("maker-not-named", Severity::Breach);
        lead().any(IDENTITY, &without(address)).expect("maker-not-named", Conformity::Conforms);
    }
}

#[test]
fn a_package_that_is_gone_may_have_said_it() {
    let bench = lead().any(EXTRAS, &["usb"]).any(IDENTITY, &["package-gone"]).any(MARKS, &[]);
    for code in NAMED.map(|row| row.0).into_iter().chain(["waste-mark-missing", "conformity-mark-missing"]) {
        bench.expect(code, Conformity::Inconclusive);
    }
    bench.expect_break("seller-untraceable", Severity::BadSign);
}

#[test]
fn no_answer_is_not_looked_at() {
    for code in NAMED.map(|row| row.0).into_iter().chain(["waste-mark-missing", "seller-untraceable"]) {
        lead().expect(code, Conformity::NotExamined);
        lead().answer(IDENTITY, Target::Sample, Answer::Later).expect(code, Conformity::NotExamined);
        lead().answer(IDENTITY, Target::Sample, Answer::Refused).expect(code, Conformity::Inconclusive);
    }
}

#[test]
fn a_plain_lead_needs_no_conformity_mark_and_bears_none() {
    let plain = lead().any(EXTRAS, &["switch", "neon"]);
    plain.clone().any(MARKS, &[]).expect("conformity-mark-missing", Conformity::NotApplicable);
    plain.clone().any(MARKS, &[]).expect("mark-not-applicable", Conformity::Conforms);
    for mark in ["ce", "ukca"] {
        plain.clone().any(MARKS, &[mark]).expect_break("mark-not-applicable", Severity::BadSign);
    }
}

#[test]
fn electronics_need_ce_or_ukca_in_great_britain() {
    for extra in ["usb", "timer", "rcd", "electronics"] {
        let bench = lead().any(EXTRAS, &[extra]);
        bench.clone().any(MARKS, &[]).expect_break("conformity-mark-missing", Severity::Breach);
        for mark in ["ce", "ukca"] {
            bench.clone().any(MARKS, &[mark]).expect("conformity-mark-missing", Conformity::Conforms);
            bench.clone().any(MARKS, &[mark]).expect("mark-not-applicable", Conformity::NotExamined);
        }
    }
}

#[test]
fn ukca_alone_is_no_mark_in_northern_ireland() {
    let bench = in_northern_ireland().any(EXTRAS, &["usb"]);
    bench.clone().any(MARKS, &["ukca"]).expect_break("conformity-mark-missing", Severity::Breach);
    bench.any(MARKS, &["ce"]).expect("conformity-mark-missing", Conformity::Conforms);
}

#[test]
fn a_stated_output_is_electronics_too() {
    let bench = lead().printed(RATING, Target::Claim(ClaimPlace::Body), "13A 250V~ USB output 5V 2.4A").any(MARKS, &[]);
    bench.expect_break("conformity-mark-missing", Severity::Breach);
}

#[test]
fn while_nobody_knows_of_electronics_no_mark_is_judged() {
    let bench = lead().any(MARKS, &["ce"]);
    bench.expect("conformity-mark-missing", Conformity::NotExamined);
    bench.expect("mark-not-applicable", Conformity::NotExamined);
}

#[test]
fn a_plug_never_bears_ce() {
    let usb = lead().any(EXTRAS, &["usb"]).any(MARKS, &["ce"]);
    usb.clone().any(PLUG_PRINT, &["ce-or-ukca"]).expect_break("mark-not-applicable", Severity::BadSign);
    usb.any(PLUG_PRINT, &["maker"]).expect("mark-not-applicable", Conformity::Conforms);
}

#[test]
fn a_double_square_on_a_lead_is_a_danger_whatever_else_is_found() {
    let bench = lead().any(MARKS, &["double-square"]);
    bench.expect_break("class-mark-contradicted", Severity::Danger);
    assert_eq!(bench.assessed().verdict, Verdict::KeepAway);
    Bench::cord_set(Equipment::Eyes)
        .any(MARKS, &["double-square"])
        .expect_break("class-mark-contradicted", Severity::Danger);
    lead().any(MARKS, &["ce"]).expect("class-mark-contradicted", Conformity::Conforms);
}

#[test]
fn a_double_square_closes_no_earth_check() {
    let earth_checks = ["earth-pin-plastic", "earth-contact-absent", "socket-without-earth"];
    let marked = lead().any(MARKS, &["double-square"]);
    for code in earth_checks {
        assert_eq!(marked.outcome(code), lead().outcome(code), "{code}");
        marked.expect(code, Conformity::NotExamined);
    }
}

#[test]
fn the_sign_of_a_functional_earth_leaves_the_double_square_open() {
    lead()
        .any(MARKS, &["double-square", "functional-earth"])
        .expect("class-mark-contradicted", Conformity::Inconclusive);
    lead().any(MARKS, &["functional-earth"]).expect("class-mark-contradicted", Conformity::Inconclusive);
}

#[test]
fn a_connector_that_takes_no_earth_leaves_the_double_square_open() {
    use plugwary::domain::check::sockets::connector::PATTERN;
    let bench = Bench::cord_set(Equipment::Eyes).any(MARKS, &["double-square"]);
    bench.clone().one(PATTERN, "two-holes").expect("class-mark-contradicted", Conformity::Inconclusive);
    bench.one(PATTERN, "c13").expect_break("class-mark-contradicted", Severity::Danger);
}

/// Regulation 765/2008, Annex II: at least 5 mm (read). A digital calliper has u of about 0.012 mm, so 5.00 mm cannot be told.
#[test]
fn a_mark_is_five_millimetres_high_at_least() {
    let high = |mm| {
        Bench::lead(Equipment::HandTools).any(MARKS, &["ce"]).reads(
            MARK_HEIGHT,
            Target::Sample,
            (mm, 0.01, Unit::Millimetre),
            Instrument::DigitalCalliper,
        )
    };
    high(5.03).expect("conformity-mark-malformed", Conformity::Conforms);
    high(5.00).expect("conformity-mark-malformed", Conformity::Inconclusive);
    high(4.97).expect_break("conformity-mark-malformed", Severity::BadSign);
}

#[test]
fn a_mark_oddly_drawn_is_a_bad_sign_however_high() {
    let bench = Bench::lead(Equipment::HandTools).any(MARKS, &["ce", "odd-ce-or-ukca"]);
    bench.expect_break("conformity-mark-malformed", Severity::BadSign);
    bench
        .reads(MARK_HEIGHT, Target::Sample, (9.0, 0.01, Unit::Millimetre), Instrument::DigitalCalliper)
        .expect_break("conformity-mark-malformed", Severity::BadSign);
    lead().any(MARKS, &[]).expect("conformity-mark-malformed", Conformity::NotApplicable);
}

#[test]
fn iso_9001_certifies_no_product() {
    lead().any(MARKS, &["iso-9001"]).expect_break("management-mark-as-product-mark", Severity::BadSign);
    lead().any(MARKS, &["ce"]).expect("management-mark-as-product-mark", Conformity::Conforms);
}

#[test]
fn a_recall_is_a_danger_and_not_found_stays_on_the_list() {
    lead().expect("recalled-product", Conformity::NotExamined);
    lead().one(RECALL_LISTS, "found").expect_break("recalled-product", Severity::Danger);
    let not_found = lead().one(RECALL_LISTS, "not-found");
    not_found.expect("recalled-product", Conformity::Conforms);
    assert!(not_found.assessed().dangers_not_tested.contains(&"recalled-product"));
}

#[test]
fn an_approval_number_is_false_when_its_body_does_not_know_it() {
    let approved = lead().any(PLUG_PRINT, &["approval-mark"]);
    approved.expect("approval-number-false", Conformity::NotExamined);
    for answer in ["not-listed", "listed-for-another"] {
        approved.clone().one(APPROVAL_REGISTER, answer).expect_break("approval-number-false", Severity::Breach);
    }
    let listed = approved.one(APPROVAL_REGISTER, "listed").finding("approval-number-false").expect("it applies");
    assert_eq!((listed.outcome(), listed.judgement.basis), (Conformity::Conforms, Basis::Print));
    lead().any(PLUG_PRINT, &["maker"]).expect("approval-number-false", Conformity::NotApplicable);
}

#[test]
fn the_search_is_ready_before_there_is_a_network() {
    assert_eq!(lookup::recall(&lead().0), "extension lead recall");
    let named = lead().printed(MAKER_AND_TYPE, Target::Sample, "Umbral KX-4 ").printed(
        BARCODE,
        Target::Sample,
        "6291041500213",
    );
    assert_eq!(lookup::recall(&named.0), "Umbral KX-4 6291041500213 recall");
    assert_eq!(lookup::approval(&named.0), None);
}
