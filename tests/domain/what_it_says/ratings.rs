//! What is stated of volts, amperes, watts and metres.

use plugwary::domain::check::plug::fuse::IN_THE_HOLDER;
use plugwary::domain::check::plug::print::PLUG_PRINT;
use plugwary::domain::examination::Answer;
use plugwary::domain::facts::{FLEX_LENGTH, FLEX_PRINT, FUSE_RATING, RATING};
use plugwary::domain::finding::{Basis, Conformity, Reason, Severity};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{Measurand, Unit, amperes};
use plugwary::domain::question::{ClaimPlace, Target};
use plugwary::domain::sample::Equipment;

use crate::bench::Bench;

fn lead() -> Bench {
    Bench::lead(Equipment::Eyes)
}

trait Claiming: Sized {
    fn claims(self, place: ClaimPlace, print: &str) -> Self;
    fn bears_nothing(self, place: ClaimPlace) -> Self;
}

impl Claiming for Bench {
    fn claims(self, place: ClaimPlace, print: &str) -> Self {
        self.printed(RATING, Target::Claim(place), print)
    }

    fn bears_nothing(self, place: ClaimPlace) -> Self {
        self.answer(RATING, Target::Claim(place), Answer::Nothing)
    }
}

fn nowhere() -> Bench {
    ClaimPlace::ALL.into_iter().fold(lead(), Bench::bears_nothing)
}

/// 250 V × 10 A = 2500 W (common practice). Read as coarsely as may be, 250 V stands for 255 V and 10 A for 10.5 A: 2677.5 W, and
/// 2677 W for 2676.5 W.
#[test]
fn watts_may_not_exceed_volts_times_amperes() {
    let body = |print| lead().claims(ClaimPlace::Body, print);
    body("10 A 250V~ 2500W MAX").expect("rating-impossible", Conformity::Conforms);
    body("10 A 250V~ 2677W MAX").expect("rating-impossible", Conformity::Conforms);
    body("10 A 250V~ 2679W MAX").expect_break("rating-impossible", Severity::Breach);
    body("10 A 250V~ 4000W MAX").expect_break("rating-impossible", Severity::Breach);
    body("13A 220-240V 3120W").expect("rating-impossible", Conformity::Conforms);
}

#[test]
fn without_all_three_there_is_nothing_impossible() {
    lead().expect("rating-impossible", Conformity::NotExamined);
    lead().claims(ClaimPlace::Body, "4000W MAX").expect("rating-impossible", Conformity::NotExamined);
    nowhere().claims(ClaimPlace::Body, "4000W MAX").expect("rating-impossible", Conformity::NotApplicable);
    let unsure = nowhere().answer(RATING, Target::Claim(ClaimPlace::Package), Answer::CannotTell);
    unsure.expect("rating-impossible", Conformity::Inconclusive);
}

#[test]
fn a_listing_that_promises_more_than_the_body_is_against_the_rules() {
    let bench = lead().claims(ClaimPlace::Listing, "13A 250V~").claims(ClaimPlace::Body, "10A 250V~");
    bench.expect_break("ratings-disagree", Severity::Breach);
    let reason = bench.finding("ratings-disagree").map(|finding| finding.judgement.reason);
    let (higher, lower) = ((ClaimPlace::Listing, amperes(13.0).amount()), (ClaimPlace::Body, amperes(10.0).amount()));
    assert_eq!(reason, Some(Reason::ClaimsDisagree { higher, lower }));
}

#[test]
fn a_package_that_promises_less_is_a_bad_sign_only() {
    let bench = lead().claims(ClaimPlace::Package, "10A 250V~").claims(ClaimPlace::Body, "13A 250V~");
    bench.expect_break("ratings-disagree", Severity::BadSign);
}

#[test]
fn the_gravest_of_several_contradictions_is_told() {
    let bench = lead()
        .claims(ClaimPlace::Package, "10A 250V~ 5m")
        .claims(ClaimPlace::Listing, "10A 250V~ 8m")
        .claims(ClaimPlace::Body, "13A 250V~");
    bench.expect_break("ratings-disagree", Severity::Breach);
}

#[test]
fn a_13_ampere_plug_on_a_lead_for_less_is_no_contradiction() {
    let bench = lead().claims(ClaimPlace::Plug, "13A 250V~").claims(ClaimPlace::Body, "10A 250V~");
    bench.expect("ratings-disagree", Conformity::Conforms);
    let weaker_plug = lead().claims(ClaimPlace::Plug, "10A 250V~").claims(ClaimPlace::Body, "13A 250V~");
    weaker_plug.expect_break("ratings-disagree", Severity::Breach);
}

#[test]
fn what_an_accessory_bears_may_stand_beside_what_the_supply_has() {
    let at = |volts| lead().claims(ClaimPlace::Package, volts).claims(ClaimPlace::Body, "13A 250V~");
    at("13A 220-240V").expect("ratings-disagree", Conformity::Conforms);
    at("13A 120V").expect_break("ratings-disagree", Severity::BadSign);
}

#[test]
fn the_print_of_the_flex_is_one_more_claim() {
    let bench = lead().claims(ClaimPlace::Package, "3 x 1.5mm² 13A 250V~").printed(
        FLEX_PRINT,
        Target::Sample,
        "H05VV-F 3G0.75",
    );
    bench.expect_break("ratings-disagree", Severity::Breach);
}

#[test]
fn one_place_alone_contradicts_nobody() {
    lead().claims(ClaimPlace::Body, "13A 250V~").expect("ratings-disagree", Conformity::NotExamined);
    nowhere().claims(ClaimPlace::Body, "13A 250V~").expect("ratings-disagree", Conformity::NotApplicable);
}

/// BS 1363-1 and BS 1362: 13 A at the most (read).
#[test]
fn the_total_claim_is_held_to_13_amperes() {
    let body = |print| lead().one(IN_THE_HOLDER, "marked-bs-1362").claims(ClaimPlace::Body, print);
    body("13A 250V~").expect("rating-above-plug", Conformity::Conforms);
    body("14A 250V~").expect_break("rating-above-plug", Severity::Breach);
    body("16A 250V~").expect_break("rating-above-plug", Severity::Breach);
    body("12A 250V~").expect("rating-above-plug", Conformity::Conforms);
}

/// 250 V × 13 A = 3250 W. Read as coarsely as may be, 250 V stands for 255 V: 3315 W, and 3315 W for 3314.5 W.
#[test]
fn watts_are_held_to_13_amperes_at_the_labels_own_volts() {
    let body = |print| lead().claims(ClaimPlace::Body, print);
    body("250V~ 3250W").expect("rating-above-plug", Conformity::Conforms);
    body("250V~ 3315W").expect("rating-above-plug", Conformity::Conforms);
    body("250V~ 3316W").expect_break("rating-above-plug", Severity::Breach);
    body("3000W MAX").expect("rating-above-plug", Conformity::Conforms);
    body("4000W MAX").expect_break("rating-above-plug", Severity::Breach);
}

#[test]
fn a_claim_above_the_plug_is_a_danger_where_no_right_fuse_stands_between() {
    let claiming = || lead().claims(ClaimPlace::Package, "16A 250V~");
    for holder in ["empty", "bridged", "no-holder"] {
        claiming().one(IN_THE_HOLDER, holder).expect_break("rating-above-plug", Severity::Danger);
    }
    let fused = || claiming().one(IN_THE_HOLDER, "marked-bs-1362");
    fused().one(FUSE_RATING, "above-13").expect_break("rating-above-plug", Severity::Danger);
    fused().one(FUSE_RATING, "13").expect_break("rating-above-plug", Severity::Breach);
    fused()
        .one(FUSE_RATING, "13")
        .printed(FLEX_PRINT, Target::Sample, "H03VV-F 3G0.5")
        .expect_break("rating-above-plug", Severity::Danger);
}

#[test]
fn a_fitting_claim_is_no_evidence_and_its_danger_stays_untested() {
    let bench = lead().claims(ClaimPlace::Body, "13A 250V~");
    assert_eq!(bench.finding("rating-above-plug").map(|finding| finding.judgement.basis), Some(Basis::Print));
    assert!(bench.assessed().dangers_not_tested.contains(&"rating-above-plug"));
}

#[test]
fn the_body_must_have_been_looked_at_before_its_claim_fits() {
    lead().claims(ClaimPlace::Listing, "13A 250V~").expect("rating-above-plug", Conformity::NotExamined);
    lead().claims(ClaimPlace::Body, "xyzzy").expect("rating-above-plug", Conformity::Inconclusive);
    nowhere().expect("rating-above-plug", Conformity::Conforms);
    let unsure = lead().answer(RATING, Target::Claim(ClaimPlace::Body), Answer::CannotTell);
    unsure.expect("rating-above-plug", Conformity::Inconclusive);
}

#[test]
fn a_product_must_itself_state_a_rating() {
    nowhere().expect_break("rating-missing", Severity::Breach);
    nowhere().claims(ClaimPlace::Package, "13A 250V~").expect_break("rating-missing", Severity::Breach);
    nowhere().claims(ClaimPlace::Plug, "13A").expect("rating-missing", Conformity::Conforms);
    nowhere().claims(ClaimPlace::Body, "13A 250V~").expect("rating-missing", Conformity::Conforms);
}

#[test]
fn a_rating_is_missing_only_when_body_and_plug_were_looked_at() {
    lead().expect("rating-missing", Conformity::NotExamined);
    lead().bears_nothing(ClaimPlace::Body).expect("rating-missing", Conformity::NotExamined);
    lead().bears_nothing(ClaimPlace::Plug).expect("rating-missing", Conformity::NotExamined);
    let unread = lead().bears_nothing(ClaimPlace::Plug).claims(ClaimPlace::Body, "xyzzy");
    unread.expect("rating-missing", Conformity::Inconclusive);
}

#[test]
fn taps_elsewhere_tell_of_ratings_too() {
    use plugwary::domain::check::sockets::body::TOTAL_RATING;
    let untyped = || lead().one(TOTAL_RATING, "not-marked");
    untyped().any(PLUG_PRINT, &["rating"]).expect("rating-missing", Conformity::Conforms);
    untyped().any(PLUG_PRINT, &["maker"]).expect_break("rating-missing", Severity::Breach);
    lead().one(TOTAL_RATING, "marked").expect("rating-missing", Conformity::Conforms);
}

/// A tape at 2 m is known to ± 9 mm and half a step: u is about 5.2 mm, and 1.645 u about 8.6 mm.
#[test]
fn a_flex_may_not_be_shorter_than_claimed() {
    let measured = |metres| {
        Bench::lead(Equipment::HandTools).claims(ClaimPlace::Package, "13A 250V~ 2m").reads(
            FLEX_LENGTH,
            Target::Sample,
            (metres, 0.001, Unit::Metre),
            Instrument::Tape,
        )
    };
    measured(2.012).expect("length-overstated", Conformity::Conforms);
    measured(2.0).expect("length-overstated", Conformity::Inconclusive);
    measured(1.98).expect_break("length-overstated", Severity::Breach);
}

#[test]
fn no_claimed_length_is_no_promise() {
    let measured =
        |bench: Bench| bench.reads(FLEX_LENGTH, Target::Sample, (1.98, 0.001, Unit::Metre), Instrument::Tape);
    measured(nowhere()).expect("length-overstated", Conformity::NotApplicable);
    measured(Bench::lead(Equipment::HandTools)).expect("length-overstated", Conformity::NotExamined);
    let unread = Bench::lead(Equipment::HandTools).claims(ClaimPlace::Package, "2m");
    unread.expect("length-overstated", Conformity::NotExamined);
}
