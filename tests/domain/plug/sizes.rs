//! Sizes of pins and fuse: at the limit, one step inside, one step outside.

use plugwary::domain::check::plug::{fuse_link, pin_size, pins};
use plugwary::domain::finding::Conformity::{self, Conforms, Inconclusive, NotExamined};
use plugwary::domain::finding::Severity::{BadSign, Breach, Danger};
use plugwary::domain::finding::{Bearing, Reason};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::Unit;
use plugwary::domain::question::{Question, Target};
use plugwary::domain::sample::Equipment::HandTools;

use crate::bench::Bench;

fn read(bench: Bench, question: &'static Question, millimetres: f64) -> Bench {
    let shown = (millimetres, 0.01, Unit::Millimetre);
    bench.reads(question, Target::Sample, shown, Instrument::DigitalCalliper)
}

fn reads(question: &'static Question, millimetres: f64) -> Bench {
    read(Bench::lead(HandTools), question, millimetres)
}

#[track_caller]
fn expect_told(bench: &Bench, code: &str) {
    let judged = bench.finding(code).map(|finding| (finding.outcome(), finding.judgement.bearing));
    assert_eq!(judged, Some((Inconclusive, Bearing::IsOnlyTold)), "{code} is told and decides nothing");
}

fn weighed(grams: f64) -> Bench {
    Bench::lead(HandTools).reads(fuse_link::FUSE_MASS, Target::Sample, (grams, 0.01, Unit::Gram), Instrument::Scale)
}

/// BS 1363-1 (read): at least 9.5 mm. A calliper to ± 0.02 mm leaves 0.03 mm either side of the limit open.
#[test]
fn line_and_neutral_stay_nine_and_a_half_millimetres_from_the_edge() {
    let at = |millimetres| reads(pin_size::TO_EDGE, millimetres);
    at(9.53).expect("pin-near-edge", Conforms);
    at(9.50).expect("pin-near-edge", Inconclusive);
    at(9.47).expect_break("pin-near-edge", Breach);
    at(7.03).expect_break("pin-near-edge", Breach);
    at(6.97).expect_break("pin-near-edge", Danger);
    at(9.47).any(pins::PINS_AND_SLEEVES, &["no-sleeves"]).expect_break("pin-near-edge", Danger);
    at(9.47).any(pins::PINS_AND_SLEEVES, &[]).expect_break("pin-near-edge", Breach);
    Bench::lead(HandTools).expect("pin-near-edge", NotExamined);
}

/// BS 1363-1, Figure 4a (memory-high): a calliper to ± 0.02 mm in steps of 0.01 mm has an expanded uncertainty of 0.024 mm, so that
/// a size breaks from 0.23 mm outside on.
#[test]
fn recalled_tolerances_break_only_beyond_doubt_and_a_fifth_of_a_millimetre() {
    let width = |live, earth| read(reads(pin_size::LIVE_WIDTH, live), pin_size::EARTH_WIDTH, earth);
    width(6.35, 7.92).expect("pin-width-off", Conforms);
    expect_told(&width(6.48, 7.92), "pin-width-off");
    expect_told(&width(6.70, 7.92), "pin-width-off");
    width(6.71, 7.92).expect_break("pin-width-off", Breach);
    expect_told(&width(6.00, 7.92), "pin-width-off");
    width(5.99, 7.92).expect_break("pin-width-off", Breach);
    expect_told(&width(6.35, 8.27), "pin-width-off");
    width(6.35, 8.28).expect_break("pin-width-off", Breach);
    width(6.35, 7.57).expect_break("pin-width-off", Breach);

    let thickness = |millimetres| reads(pin_size::THICKNESS, millimetres);
    thickness(3.97).expect("pin-thickness-off", Conforms);
    expect_told(&thickness(4.10), "pin-thickness-off");
    expect_told(&thickness(4.27), "pin-thickness-off");
    thickness(4.28).expect_break("pin-thickness-off", Breach);
    expect_told(&thickness(3.68), "pin-thickness-off");
    thickness(3.67).expect_break("pin-thickness-off", Breach);

    let length = |live, earth| read(reads(pin_size::LIVE_LENGTH, live), pin_size::EARTH_LENGTH, earth);
    length(17.7, 22.7).expect("pin-length-off", Conforms);
    length(17.7, 22.3).expect("pin-length-off", Conforms);
    expect_told(&length(18.42, 22.7), "pin-length-off");
    length(18.43, 22.7).expect_break("pin-length-off", Breach);
    length(16.97, 22.7).expect_break("pin-length-off", Breach);
    expect_told(&length(17.7, 23.45), "pin-length-off");
    length(17.7, 23.46).expect_break("pin-length-off", Breach);
}

#[test]
fn a_pin_that_nobody_measured_leaves_the_check_unsettled() {
    let judgement = reads(pin_size::LIVE_WIDTH, 6.35).finding("pin-width-off").map(|finding| finding.judgement);
    let judged = judgement.map(|j| (j.outcome, j.bearing, j.reason));
    let expected = (Inconclusive, Bearing::Decides, Reason::OnlySomeRead { read: 1, of: 2 });
    assert_eq!(judged, Some(expected));
    for code in ["pin-width-off", "pin-thickness-off", "pin-length-off", "pin-spacing-off"] {
        Bench::lead(HandTools).expect(code, NotExamined);
    }
}

/// A pin that nobody measured is as the standard has it (memory-high), with its whole tolerance as doubt: 6.35 ± 0.13, 7.925 ± 0.125 and
/// 3.975 ± 0.075 mm. 28.58 mm over line and neutral are then 22.23 mm, √(0.0119² + 0.0751²) = 0.0760 mm; 28.20 mm from earth to the far
/// side 28.20 - 3.9625 - 1.9875 = 22.25 mm, √(0.0119² + 0.0361² + 0.0217²) = 0.0437 mm.
#[test]
fn pins_nobody_measured_count_as_made() {
    let bench = read(reads(pin_size::ACROSS, 28.58), pin_size::EARTH_TO_FAR_SIDE, 28.20);
    let evidence = bench.finding("pin-spacing-off").expect("it applies").judgement.evidence;
    let found: Vec<(f64, f64)> = evidence
        .iter()
        .filter_map(|evidence| evidence.value.in_unit(Unit::Millimetre).zip(evidence.u.difference_in(Unit::Millimetre)))
        .collect();
    let is_near =
        |found: (f64, f64), wanted: (f64, f64)| (found.0 - wanted.0).abs() < 1e-9 && (found.1 - wanted.1).abs() < 5e-5;
    assert!(
        matches!(found[..], [live, earth] if is_near(live, (22.23, 0.0760)) && is_near(earth, (22.25, 0.0437))),
        "{found:?}"
    );
}

/// Pins of nominal size 22.23 mm apart (BS 1363-1, Figure 4a, read) measure 28.58 mm over line and neutral, and 28.18 mm from the far
/// side of the earth pin to theirs.
#[test]
fn spacings_follow_from_readings_over_the_outer_sides() {
    let spaced = |across, far| {
        let pins = read(reads(pin_size::LIVE_WIDTH, 6.35), pin_size::EARTH_WIDTH, 7.92);
        let pins = read(pins, pin_size::THICKNESS, 3.97);
        read(read(pins, pin_size::ACROSS, across), pin_size::EARTH_TO_FAR_SIDE, far)
    };
    spaced(28.58, 28.18).expect("pin-spacing-off", Conforms);
    expect_told(&spaced(28.80, 28.18), "pin-spacing-off");
    spaced(29.10, 28.18).expect_break("pin-spacing-off", Breach);
    spaced(28.58, 28.70).expect_break("pin-spacing-off", Breach);
    spaced(28.58, 27.60).expect_break("pin-spacing-off", Breach);
}

/// BS 1362 (read): 25.4 mm, 0.8 mm more or 0.4 mm less; a specimen of 24.91 mm is too short.
#[test]
fn the_length_of_a_fuse_decides_and_its_diameter_does_not() {
    let long = |millimetres| reads(fuse_link::FUSE_LENGTH, millimetres);
    for (millimetres, outcome) in [
        (25.03, Conforms),
        (25.00, Inconclusive),
        (24.97, Conformity::Nonconforming),
        (24.91, Conformity::Nonconforming),
        (26.17, Conforms),
        (26.20, Inconclusive),
        (26.23, Conformity::Nonconforming),
    ] {
        long(millimetres).expect("fuse-size-off", outcome);
    }
    long(24.91).expect_break("fuse-size-off", Breach);
    read(long(25.4), fuse_link::FUSE_DIAMETER, 6.35).expect("fuse-size-off", Conforms);
    expect_told(&read(long(25.4), fuse_link::FUSE_DIAMETER, 5.0), "fuse-size-off");
    read(long(24.91), fuse_link::FUSE_DIAMETER, 6.35).expect_break("fuse-size-off", Breach);
    read(Bench::lead(HandTools), fuse_link::FUSE_DIAMETER, 6.35).expect("fuse-size-off", NotExamined);
}

/// One genuine link weighed about 2.3 g and one fake about 1.6 g (read): a hint and no limit.
#[test]
fn a_light_fuse_is_a_bad_sign_that_decides_nothing() {
    weighed(2.3).expect("fuse-underweight", Conforms);
    weighed(1.6).expect_break("fuse-underweight", BadSign);
    let bearing = weighed(1.6).finding("fuse-underweight").map(|finding| finding.judgement.bearing);
    assert_eq!(bearing, Some(Bearing::IsOnlyTold));
    let coarse = (2.0, 1.0, Unit::Gram);
    let kitchen = Bench::lead(HandTools).reads(fuse_link::FUSE_MASS, Target::Sample, coarse, Instrument::Scale);
    kitchen.expect("fuse-underweight", Inconclusive);
}
