//! What print may not settle, and what is no contradiction.

use plugwary::domain::check::plug::pins::PINS_AND_SLEEVES;
use plugwary::domain::check::plug::print::PLUG_PRINT;
use plugwary::domain::check::sockets::connector::PATTERN;
use plugwary::domain::check::what_it_says::marks;
use plugwary::domain::examination::Answer;
use plugwary::domain::facts::{FLEX_PRINT, PROMISES, RATING};
use plugwary::domain::finding::ClaimPlace::{Body, Listing, Package, Plug};
use plugwary::domain::finding::Conformity::{Conforms, Inconclusive, NotApplicable};
use plugwary::domain::finding::Severity::{BadSign, Breach, Danger};
use plugwary::domain::finding::{ClaimPlace, Reason};
use plugwary::domain::question::Target;
use plugwary::domain::sample::Equipment::{Eyes, HandTools};
use plugwary::domain::sample::Kind;
use plugwary::words;

use crate::bench::Bench;

/// A lead that was looked at everywhere and bears only what is said here.
fn bearing(prints: &[(ClaimPlace, &str)]) -> Bench {
    let nowhere = ClaimPlace::ALL
        .into_iter()
        .fold(Bench::lead(HandTools), |bench, place| bench.answer(RATING, Target::Claim(place), Answer::Nothing));
    prints.iter().fold(nowhere, |bench, (place, print)| bench.printed(RATING, Target::Claim(*place), print))
}

#[test]
fn a_rating_that_cannot_be_read_is_not_a_missing_one() {
    let bench = bearing(&[(Body, "thirteen amps no more")]);
    bench.expect("rating-missing", Inconclusive);
    let reason = bench.finding("rating-missing").map(|finding| finding.judgement.reason);
    assert_eq!(reason, Some(Reason::PrintNotUnderstood { place: Body }));
    bearing(&[(Body, "thirteen amps no more"), (Plug, "13A")]).expect("rating-missing", Conforms);
    bearing(&[(Body, "5m")]).expect_break("rating-missing", Breach);
    bearing(&[]).any(PLUG_PRINT, &["maker"]).expect_break("rating-missing", Breach);
}

#[test]
fn a_load_that_cannot_be_read_may_be_any_load() {
    bearing(&[(Body, "twenty amps"), (Listing, "13A 250V~")]).expect("rating-above-plug", Inconclusive);
    bearing(&[(Body, "13A 250V~ qwxz"), (Listing, "13A 250V~")]).expect("rating-above-plug", Conforms);
    bearing(&[(Body, "twenty amps"), (Listing, "16A 250V~")]).expect_break("rating-above-plug", Breach);
    bearing(&[]).expect("rating-above-plug", NotApplicable);
}

/// 250 V on an accessory and 230 V or 220-240 V of the supply stand side by side on sound goods (common practice).
#[test]
fn what_an_accessory_bears_may_stand_beside_what_the_supply_has() {
    let beside = |print| bearing(&[(Package, print), (Body, "13A 250V~")]);
    for print in ["13A 230V", "13A 220-240V", "13A 240V~ 50Hz"] {
        beside(print).expect("ratings-disagree", Conforms);
    }
    beside("13A 127V").expect_break("ratings-disagree", BadSign);
    let reversed = bearing(&[(Package, "13A 250V~"), (Body, "13A 120V~")]);
    reversed.expect_break("ratings-disagree", BadSign);
}

#[test]
fn a_13_ampere_plug_on_a_lead_for_less_is_no_contradiction() {
    bearing(&[(Plug, "13A 250V~"), (Body, "10A 250V~")]).expect("ratings-disagree", Conforms);
    bearing(&[(Plug, "10A 250V~"), (Body, "13A 250V~")]).expect_break("ratings-disagree", Breach);
    bearing(&[(Package, "10A 250V~"), (Body, "13A 250V~")]).expect_break("ratings-disagree", BadSign);
    bearing(&[(Package, "13A 250V~"), (Body, "10A 250V~")]).expect_break("ratings-disagree", Breach);
}

#[test]
fn the_sign_of_a_functional_earth_leaves_the_double_square_open() {
    let bears = |codes: &[&str]| Bench::lead(Eyes).any(marks::SEEN, codes);
    bears(&["double-square"]).expect_break("class-mark-contradicted", Danger);
    bears(&["double-square", "functional-earth"]).expect("class-mark-contradicted", Inconclusive);
    bears(&["functional-earth"]).expect("class-mark-contradicted", Inconclusive);
    bears(&["ce"]).expect("class-mark-contradicted", Conforms);
}

#[test]
fn no_mark_but_the_connector_alone_says_that_no_earth_is_taken() {
    let bench = |connector| Bench::cord_set(Eyes).one(PATTERN, connector);
    let pins = |connector| bench(connector).any(PINS_AND_SLEEVES, &["plastic-earth-pin", "sleeve-on-earth"]);
    pins("c13").expect_break("earth-pin-plastic", Danger);
    pins("c13").any(marks::SEEN, &["double-square"]).expect_break("earth-pin-plastic", Danger);
    pins("two-holes").expect("earth-pin-plastic", Inconclusive);
    pins("c5").expect_break("sleeve-on-earth", Danger);
    pins("two-holes").expect_break("sleeve-on-earth", Breach);
    bench("two-holes").any(PINS_AND_SLEEVES, &[]).expect("earth-pin-plastic", Conforms);
}

#[test]
fn a_pvc_flex_breaks_the_outdoor_promise_by_itself() {
    let promised = Bench::lead(Eyes).any(PROMISES, &["outdoor"]);
    promised.clone().printed(FLEX_PRINT, Target::Sample, "H05VV-F 3G1.5").expect_break("outdoor-promise-unmet", Breach);
    let rubber = promised.printed(FLEX_PRINT, Target::Sample, "H07RN-F 3G1.5");
    rubber.expect("outdoor-promise-unmet", plugwary::domain::finding::Conformity::NotExamined);
}

#[test]
fn a_flex_too_thin_is_told_what_it_should_at_least_be() {
    let bench = Bench::lead(Eyes).printed(FLEX_PRINT, Target::Sample, "H03VV-F 3G0.4");
    let finding = bench.finding("flex-thin-for-rating").expect("it applies to leads");
    let said = words::reason::reason(&finding, Kind::ExtensionLead);
    assert!(said.contains("should be at least 0.5"), "{said}");
}
