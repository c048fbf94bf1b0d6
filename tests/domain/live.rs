//! Checks of the live place.

use plugwary::domain::check::live;
use plugwary::domain::check::live::{competence::LIVE_COMPETENT, in_use, withstand};
use plugwary::domain::facts;
use plugwary::domain::finding::Conformity::{Conforms, Inconclusive, NotApplicable, NotExamined};
use plugwary::domain::finding::Severity::{BadSign, Danger};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::Unit;
use plugwary::domain::question::Target;
use plugwary::domain::sample::Equipment::Meters;
use plugwary::domain::sample::Place;
use plugwary::domain::view::View;
use plugwary::domain::walk;
use plugwary::words;

use crate::bench::Bench;

const SURE: [&str; 4] = ["competent", "place-isolated", "rcd", "not-alone"];

fn lead(extras: &[&str]) -> Bench {
    Bench::lead(Meters).any(facts::EXTRAS, extras).any(facts::PROMISES, &[]).any(LIVE_COMPETENT, &SURE)
}

fn asked_live(bench: &Bench) -> Vec<&'static str> {
    let asked = walk::asked(&View::new(&bench.0));
    asked.into_iter().filter(|(question, _)| question.place == Place::Live).map(|(question, _)| question.id).collect()
}

#[test]
fn nothing_live_is_asked_before_everything_was_made_sure_of() {
    let fresh = lead(&["rcd", "neon"]);
    assert!(asked_live(&fresh).len() > 1);
    for left_out in SURE {
        let sure: Vec<&str> = SURE.into_iter().filter(|code| *code != left_out).collect();
        assert_eq!(asked_live(&fresh.clone().any(LIVE_COMPETENT, &sure)), [LIVE_COMPETENT.id]);
    }
    assert_eq!(live::QUESTIONS.first().map(|question| question.id), Some(LIVE_COMPETENT.id));
}

/// Common practice: portable-appliance testers apply 1250 V between earth and both poles of a class I sample. The IET Code of Practice
/// names 1500 V for it (read); the check holds a sample to 1250 V.
#[test]
fn insulation_holds_1250_volts() {
    let tested = |answer| lead(&[]).one(withstand::WITHSTAND, answer);
    tested("held-1250-v").expect("withstand-broke-down", Conforms);
    tested("held-less").expect("withstand-broke-down", Inconclusive);
    tested("broke-down").expect_break("withstand-broke-down", Danger);
    tested("broke-down-above-1250-v").expect("withstand-broke-down", Inconclusive);
    lead(&[]).expect("withstand-broke-down", NotExamined);
    assert!(words::question::of(withstand::WITHSTAND).asks.starts_with("1250 V between earth and both poles"));
}

#[test]
fn high_voltage_spares_what_it_would_destroy() {
    for delicate in ["usb", "timer", "rcd", "electronics"] {
        lead(&[delicate]).expect("withstand-broke-down", NotApplicable);
        assert!(!asked_live(&lead(&[delicate])).contains(&withstand::WITHSTAND.id));
    }
    lead(&[]).any(facts::PROMISES, &["surge"]).expect("withstand-broke-down", NotApplicable);
    let unknown = Bench::lead(Meters).any(LIVE_COMPETENT, &SURE);
    assert!(!asked_live(&unknown).contains(&withstand::WITHSTAND.id));
    assert!(asked_live(&lead(&["switch", "neon"])).contains(&withstand::WITHSTAND.id));
    let set = Bench::cord_set(Meters).any(LIVE_COMPETENT, &SURE);
    assert!(asked_live(&set).contains(&withstand::WITHSTAND.id));
}

fn touches(extras: &[&str], milliamperes: f64) -> Bench {
    let reading = (milliamperes, 0.001, Unit::Milliampere);
    lead(extras).reads(in_use::TOUCH_CURRENT, Target::Sample, reading, Instrument::LeakageMeter)
}

/// IEC 60479-1, line a (read): 0.5 mA.
#[test]
fn half_a_milliampere_is_the_line_for_what_is_touched() {
    touches(&[], 0.47).expect("leakage-high", Conforms);
    touches(&[], 0.50).expect("leakage-high", Inconclusive);
    touches(&[], 0.53).expect_break("leakage-high", Danger);
    lead(&[]).expect("leakage-high", NotExamined);
}

/// IET Code of Practice, 4th edition, class II (read): 0.25 mA.
#[test]
fn a_usb_output_has_the_line_of_class_ii() {
    touches(&["usb"], 0.23).expect("leakage-high", Conforms);
    touches(&["usb"], 0.25).expect("leakage-high", Inconclusive);
    touches(&["usb"], 0.27).expect_break("leakage-high", Danger);
}

#[test]
fn five_milliamperes_never_keep_the_rule() {
    for milliamperes in [0.75, 3.5, 5.0] {
        touches(&[], milliamperes).expect_break("leakage-high", Danger);
    }
}

/// EN 50525-2-11 (read): 70 °C for PVC; BS 7671 Table 4F3A (read): ratings count with 60 °C.
#[test]
fn heat_is_told_against_60_and_70_degrees() {
    let reaches = |celsius| {
        let reading = (celsius, 0.1, Unit::DegreeCelsius);
        lead(&[]).reads(in_use::HOTTEST_SPOT, Target::Sample, reading, Instrument::Thermometer)
    };
    reaches(57.0).expect("runs-hot", Conforms);
    reaches(60.0).expect("runs-hot", Inconclusive);
    reaches(65.0).expect("runs-hot", Inconclusive);
    reaches(70.0).expect("runs-hot", Inconclusive);
    reaches(73.0).expect_break("runs-hot", Danger);
    lead(&[]).expect("runs-hot", NotExamined);
}

#[test]
fn the_button_alone_proves_no_rcd() {
    let tried = |answer| lead(&["rcd"]).one(withstand::RCD_TRIPS, answer);
    tried("in-time").expect("rcd-fails", Conforms);
    tried("late").expect_break("rcd-fails", Danger);
    tried("not-at-all").expect_break("rcd-fails", Danger);
    tried("only-the-button-tried").expect("rcd-fails", Inconclusive);
    lead(&["rcd"]).expect("rcd-fails", NotExamined);
    lead(&[]).expect("rcd-fails", NotApplicable);
}

#[test]
fn a_lamp_that_misleads_is_a_bad_sign() {
    lead(&["neon"]).one(in_use::INDICATOR, "says-what-is-not").expect_break("indicator-misreads", BadSign);
    lead(&["electronics"]).one(in_use::INDICATOR, "says-what-is").expect("indicator-misreads", Conforms);
    lead(&["neon"]).expect("indicator-misreads", NotExamined);
    lead(&[]).expect("indicator-misreads", NotApplicable);
}
