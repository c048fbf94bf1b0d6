//! Insulation at, inside and outside its limits, and the voltage that decides.

use plugwary::domain::check::inside::{opening, parts};
use plugwary::domain::check::readings::insulation::{INSULATION, INSULATION_TEST, OUTPUT_INSULATION};
use plugwary::domain::facts;
use plugwary::domain::finding::Conformity::{Conforms, Inconclusive, NotApplicable, NotExamined};
use plugwary::domain::finding::Severity::{Breach, Danger};
use plugwary::domain::finding::{Needed, Reason};
use plugwary::domain::instrument::Instrument::{HandMeter, InsulationTester};
use plugwary::domain::quantity::Amount;
use plugwary::domain::quantity::Unit::Megohm;
use plugwary::domain::question::Target;
use plugwary::domain::reading::Shown;
use plugwary::domain::sample::Equipment::Meters;

use super::{PREPARED, ready, reason, shows, with_extras};
use crate::bench::Bench;

fn reads(bench: &Bench, test: &str, megohms: f64) -> Bench {
    bench.clone().one(INSULATION_TEST, test).reads(
        INSULATION,
        Target::Sample,
        (megohms, 0.01, Megohm),
        InsulationTester,
    )
}

fn surge() -> Bench {
    ready(Meters).any(facts::PROMISES, &["surge"])
}

/// IET Code of Practice, class I (read): 1 MΩ at 500 V d.c.
#[test]
fn under_one_megohm_is_a_danger() {
    let reads = |megohms| reads(&ready(Meters), "500-v", megohms);
    reads(0.90).expect_break("insulation-low", Danger);
    reads(1.00).expect("insulation-low", Inconclusive);
    reads(1.10).expect_break("insulation-low", Breach);
}

/// BS 1363 clause 15 (memory-high): 5 MΩ at 500 V d.c. for a new accessory.
#[test]
fn under_five_megohms_is_a_breach() {
    let reads = |megohms| reads(&ready(Meters), "500-v", megohms);
    reads(4.6).expect_break("insulation-low", Breach);
    reads(5.0).expect("insulation-low", Inconclusive);
    reads(5.4).expect("insulation-low", Conforms);
    ready(Meters).expect("insulation-low", NotExamined);
}

#[test]
fn more_than_the_display_can_show_is_enough() {
    let shown = |shown| {
        let lead = ready(Meters).one(INSULATION_TEST, "500-v");
        lead.answer(INSULATION, Target::Sample, shows(shown, InsulationTester))
    };
    let megohms = |value| Amount::new(value, Megohm);
    shown(Shown::Above(megohms(999.0))).expect("insulation-low", Conforms);
    shown(Shown::Open).expect("insulation-low", Conforms);
    shown(Shown::Above(megohms(2.0))).expect("insulation-low", Inconclusive);
    shown(Shown::Below(megohms(0.05))).expect_break("insulation-low", Danger);
    shown(Shown::Below(megohms(2.0))).expect("insulation-low", Inconclusive);
}

#[test]
fn the_wrong_voltage_never_clears() {
    for test in ["250-v", "less-than-250-v"] {
        let high = reads(&ready(Meters), test, 100.0);
        high.expect("insulation-low", Inconclusive);
        assert_eq!(reason(&high, "insulation-low"), Some(Reason::WrongTestVoltage));
        reads(&ready(Meters), test, 0.2).expect_break("insulation-low", Danger);
    }
    let not_joined = reads(&ready(Meters), "not-joined", 100.0);
    not_joined.expect("insulation-low", Inconclusive);
    assert_eq!(reason(&not_joined, "insulation-low"), Some(Reason::Needs(Needed::ReadingsPrepared)));
    reads(&ready(Meters), "not-joined", 0.2).expect_break("insulation-low", Danger);
    let unsaid = ready(Meters).reads(INSULATION, Target::Sample, (100.0, 0.01, Megohm), InsulationTester);
    unsaid.expect("insulation-low", Inconclusive);
    let by_hand = ready(Meters).one(INSULATION_TEST, "500-v");
    by_hand.reads(INSULATION, Target::Sample, (20.0, 0.01, Megohm), HandMeter).expect("insulation-low", Inconclusive);
}

/// IET Code of Practice (read): leads with surge protection at 250 V.
#[test]
fn surge_parts_are_tested_at_250_volts() {
    reads(&surge(), "250-v", 100.0).expect("insulation-low", Conforms);
    reads(&surge(), "250-v", 0.2).expect_break("insulation-low", Danger);
    reads(&surge(), "500-v", 0.2).expect("insulation-low", Inconclusive);
    reads(&surge(), "500-v", 100.0).expect("insulation-low", Conforms);
    let without = surge().one(opening::OPENED, "opened").any(parts::PARTS_INSIDE, &[]);
    reads(&without, "500-v", 0.2).expect_break("insulation-low", Danger);
}

#[test]
fn insulation_behind_open_poles_is_not_cleared() {
    let rcd = with_extras(Meters, &["rcd"]).any(facts::READINGS_PREPARED, &PREPARED);
    reads(&rcd, "500-v", 100.0).expect("insulation-low", Inconclusive);
    reads(&rcd, "500-v", 0.2).expect_break("insulation-low", Danger);
}

/// IET Code of Practice, class II (read): 2 MΩ.
#[test]
fn a_usb_output_is_kept_two_megohms_from_the_mains() {
    let lead = with_extras(Meters, &["usb"]).any(facts::READINGS_PREPARED, &PREPARED);
    let reads = |megohms, instrument| {
        lead.clone().reads(OUTPUT_INSULATION, Target::Sample, (megohms, 0.01, Megohm), instrument)
    };
    reads(1.8, InsulationTester).expect_break("output-not-isolated", Danger);
    reads(2.0, InsulationTester).expect("output-not-isolated", Inconclusive);
    reads(2.2, InsulationTester).expect("output-not-isolated", Conforms);
    reads(0.5, HandMeter).expect_break("output-not-isolated", Danger);
    reads(50.0, HandMeter).expect("output-not-isolated", Inconclusive);
    lead.expect("output-not-isolated", NotExamined);
    ready(Meters).expect("output-not-isolated", NotApplicable);
    Bench::lead(Meters).expect("output-not-isolated", NotExamined);
}
