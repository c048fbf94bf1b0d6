//! Checks of the open body.

use plugwary::domain::check::inside::{barrier, damage, joints, opening, parts, wiring};
use plugwary::domain::check::{self, inside, live, readings};
use plugwary::domain::examination::Answer;
use plugwary::domain::facts;
use plugwary::domain::finding::Conformity::{Conforms, Inconclusive, NotApplicable, NotExamined};
use plugwary::domain::finding::Severity::{BadSign, Breach, Danger};
use plugwary::domain::finding::{Basis, Bearing, Reason, Severity};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::Unit;
use plugwary::domain::question::{Ask, Question, Target};
use plugwary::domain::sample::Equipment::{HandTools, Meters};
use plugwary::domain::sample::Place;
use plugwary::domain::view::View;
use plugwary::domain::walk;
use plugwary::words;

use crate::bench::Bench;

/// A lead with these extras, open.
fn open(extras: &[&str]) -> Bench {
    Bench::lead(Meters).any(facts::EXTRAS, extras).any(facts::PROMISES, &[]).one(opening::OPENED, "opened")
}

#[track_caller]
fn breaks_and_keeps(bench: &Bench, question: &'static Question, code: &str, bad: &[(&str, Severity)], good: &[&str]) {
    for (answer, severity) in bad {
        bench.clone().one(question, answer).expect_break(code, *severity);
    }
    for answer in good {
        bench.clone().one(question, answer).expect(code, Conforms);
    }
    bench.expect(code, NotExamined);
    bench.clone().answer(question, Target::Sample, Answer::CannotTell).expect(code, Inconclusive);
}

#[test]
fn each_thing_seen_inside_breaks_its_own_check() {
    for (question, seen, code, severity) in [
        (damage::SEEN_INSIDE, "scorched", "scorched-inside", Danger),
        (damage::SEEN_INSIDE, "stray-conductor", "conductor-can-stray", Danger),
        (damage::SEEN_INSIDE, "melted", "insulation-melted", Breach),
        (damage::SEEN_INSIDE, "nicked", "insulation-nicked", Breach),
        (damage::SEEN_INSIDE, "foreign-matter", "foreign-matter", BadSign),
        (joints::JOINTS, "solder-alone", "joint-by-solder-alone", Breach),
        (joints::JOINTS, "terminal-unsupported", "terminal-unsupported", Breach),
        (joints::JOINTS, "contact-flimsy", "contact-flimsy", Breach),
    ] {
        open(&[]).any(question, &[seen]).expect_break(code, severity);
        open(&[]).any(question, &[]).expect(code, Conforms);
        open(&[]).expect(code, NotExamined);
        open(&[]).answer(question, Target::Sample, Answer::Refused).expect(code, Inconclusive);
    }
}

#[test]
fn an_earth_is_joined_to_every_socket() {
    let bad = [("some-sockets", Danger), ("nothing", Danger), ("no-earth-core", Danger)];
    breaks_and_keeps(&open(&[]), joints::EARTH_JOINED_TO, "earth-not-connected", &bad, &["every-socket"]);
}

#[test]
fn wires_inside_are_as_thick_as_the_flex_and_say_what_they_carry() {
    let good = ["metal-bars", "as-thick-as-the-flex"];
    let bad = [("thinner-than-the-flex", Danger)];
    breaks_and_keeps(&open(&[]), wiring::WIRES_INSIDE, "internal-wire-thin", &bad, &good);
    let bad = [("other-colours", Breach), ("green-and-yellow-is-live", Danger)];
    breaks_and_keeps(&open(&[]), wiring::COLOURS_INSIDE, "internal-colour-wrong", &bad, &["right-or-bars"]);
}

#[test]
fn a_switch_opens_the_line() {
    let ready = open(&["switch"])
        .any(facts::READINGS_PREPARED, &["unplugged", "nothing-connected", "switches-on", "fuse-good"]);
    let bad = [("neutral", Danger), ("neither", Danger)];
    breaks_and_keeps(&ready, wiring::SWITCH_OPENS, "switch-in-neutral", &bad, &["line", "both"]);
    open(&[]).expect("switch-in-neutral", NotApplicable);
    Bench::cord_set(Meters).expect("switch-in-neutral", NotApplicable);
}

#[test]
fn a_silent_line_behind_a_switch_counts_only_where_it_is_heard_with_the_switch_on() {
    let unsure = open(&["switch"]).any(facts::READINGS_PREPARED, &["unplugged", "nothing-connected"]);
    unsure.clone().one(wiring::SWITCH_OPENS, "line").expect("switch-in-neutral", Inconclusive);
    unsure.one(wiring::SWITCH_OPENS, "neutral").expect_break("switch-in-neutral", Danger);
}

#[test]
fn each_promise_needs_its_part() {
    for (promise, kept_by, not_kept_by) in [
        ("surge", "surge-part", "thermal-fuse"),
        ("overload", "overload-cut-out", "thermal-fuse"),
        ("switch", "switch", "surge-part"),
        ("thermal", "thermal-fuse", "switch"),
        ("thermal", "overload-cut-out", "surge-part"),
    ] {
        let promised = open(&[]).any(facts::PROMISES, &[promise]);
        promised.clone().any(parts::PARTS_INSIDE, &[kept_by]).expect("promised-part-missing", Conforms);
        let missing = promised.clone().any(parts::PARTS_INSIDE, &[not_kept_by]);
        missing.expect_break("promised-part-missing", Breach);
        let reason = missing.finding("promised-part-missing").map(|finding| finding.judgement.reason);
        let said = Reason::Answered { question: facts::PROMISES.id, target: Target::Sample, answer: promise };
        assert_eq!(reason, Some(said));
        promised.expect("promised-part-missing", NotExamined);
    }
}

#[test]
fn promises_that_show_outside_ask_for_no_part() {
    open(&[]).any(facts::PROMISES, &["shutters", "outdoor"]).expect("promised-part-missing", NotApplicable);
    open(&[]).expect("promised-part-missing", NotApplicable);
    Bench::lead(Meters)
        .one(opening::OPENED, "opened")
        .any(parts::PARTS_INSIDE, &[])
        .expect("promised-part-missing", NotExamined);
}

#[test]
fn a_surge_part_is_kept_from_burning() {
    let fitted = open(&[]).any(parts::PARTS_INSIDE, &["surge-part"]);
    let bad = [("bare", Breach), ("scorched", Danger)];
    breaks_and_keeps(&fitted, parts::SURGE_PART, "surge-part-unprotected", &bad, &["with-thermal-fuse"]);
    open(&[]).expect("surge-part-unprotected", NotApplicable);
    let promised = open(&[]).any(facts::PROMISES, &["surge"]);
    promised.expect("surge-part-unprotected", NotExamined);
    promised.any(parts::PARTS_INSIDE, &[]).expect("surge-part-unprotected", NotApplicable);
}

/// IEC 60384-14 (memory-high): one Y1 or two Y2 in series may bridge the barrier.
#[test]
fn only_y_capacitors_bridge_the_barrier_and_their_print_is_a_claim() {
    let usb = open(&["usb"]);
    let bad = [("one-y2", Danger), ("class-x", Danger), ("ordinary", Danger)];
    let good = ["nothing", "one-y1", "two-y2"];
    breaks_and_keeps(&usb, barrier::ACROSS_THE_BARRIER, "mains-to-touch-path-short", &bad, &good);
    let with = |answer| usb.clone().one(barrier::ACROSS_THE_BARRIER, answer);
    with("unmarked").expect("mains-to-touch-path-short", Inconclusive);
    for (answer, basis) in [("nothing", Basis::Sight), ("one-y1", Basis::Print), ("two-y2", Basis::Print)] {
        let found = with(answer).finding("mains-to-touch-path-short").map(|finding| finding.judgement.basis);
        assert_eq!(found, Some(basis));
    }
    open(&[]).expect("mains-to-touch-path-short", NotApplicable);
}

/// IEC 62368-1 (memory-high): 5.0 mm of reinforced creepage.
#[test]
fn five_millimetres_lie_along_the_barrier() {
    let creeps = |value| open(&["usb"]).reads(barrier::CREEPAGE, Target::Sample, millimetres(value), CALLIPER);
    creeps(4.95).expect_break("creepage-or-clearance-short", Danger);
    creeps(5.00).expect("creepage-or-clearance-short", Inconclusive);
    creeps(5.05).expect("creepage-or-clearance-short", Conforms);
    open(&["usb"]).expect("creepage-or-clearance-short", NotExamined);
    open(&[]).expect("creepage-or-clearance-short", NotApplicable);
}

/// IEC 62368-1 (memory-medium): about 3 mm to 4 mm of clearance; it decides nothing.
#[test]
fn a_short_way_through_the_air_is_told_and_decides_nothing() {
    let both = |creepage, clearance| {
        let usb = open(&["usb"]).reads(barrier::CREEPAGE, Target::Sample, millimetres(creepage), CALLIPER);
        usb.reads(barrier::CLEARANCE, Target::Sample, millimetres(clearance), CALLIPER)
    };
    both(6.0, 4.05).expect("creepage-or-clearance-short", Conforms);
    for clearance in [4.0, 3.95, 1.0] {
        let finding = both(6.0, clearance).finding("creepage-or-clearance-short").expect("it applies");
        assert_eq!((finding.outcome(), finding.judgement.bearing), (Inconclusive, Bearing::IsOnlyTold));
        assert_eq!(finding.judgement.evidence.len(), 2);
    }
    both(4.0, 6.0).expect_break("creepage-or-clearance-short", Danger);
}

const CALLIPER: Instrument = Instrument::DigitalCalliper;

const fn millimetres(value: f64) -> (f64, f64, Unit) {
    (value, 0.01, Unit::Millimetre)
}

#[test]
fn a_body_that_stays_closed_is_not_looked_into() {
    let closed = Bench::lead(Meters).one(opening::OPENED, "stays-closed");
    closed.expect("scorched-inside", NotExamined);
    let asked = |bench: &Bench| {
        let view = View::new(&bench.0);
        walk::asked(&view).iter().any(|(question, _)| question.id == damage::SEEN_INSIDE.id)
    };
    assert!(!asked(&closed));
    assert!(!asked(&Bench::lead(Meters)));
    assert!(asked(&open(&[])));
    assert!(walk::asked(&View::new(&Bench::lead(HandTools).0)).iter().all(|(q, _)| q.place != Place::Inside));
}

#[test]
fn a_cord_set_has_an_inside_once_somebody_opened_it() {
    Bench::cord_set(Meters).expect("earth-not-connected", NotApplicable);
    Bench::cord_set(Meters).one(opening::OPENED, "stays-closed").expect("earth-not-connected", NotApplicable);
    Bench::cord_set(Meters).one(opening::OPENED, "opened").expect("earth-not-connected", NotExamined);
}

#[test]
fn look_next_leads_to_opening_the_body() {
    let assessed = Bench::lead(Meters).assessed();
    let next = assessed.next.iter().find(|next| next.code == "conductor-can-stray");
    assert_eq!(next.map(|next| next.question), Some(opening::OPENED.id));
}

#[test]
fn every_question_check_and_answer_of_readings_inside_and_live_has_words() {
    for question in readings::QUESTIONS.iter().chain(inside::QUESTIONS).chain(live::QUESTIONS) {
        let found = words::question::of(question);
        let codes: Vec<_> = found.answers.iter().map(|answer| answer.code).collect();
        assert_eq!((found.id, codes.as_slice()), (question.id, question.answers()));
        let needs_sentence = !matches!(question.ask, Ask::One(_));
        assert_eq!(needs_sentence, !found.says.is_empty(), "sentence of {}", question.id);
        assert!(found.asks.chars().count() <= 60, "{}", question.id);
        assert!(found.answers.iter().all(|answer| answer.answer.chars().count() <= 45), "answers of {}", question.id);
    }
    for check in readings::CHECKS.iter().chain(inside::CHECKS).chain(live::CHECKS) {
        assert_eq!(words::check::of(check.code).code, check.code);
    }
}

#[test]
fn every_reading_and_every_look_inside_is_cautioned() {
    let may_do_without = [facts::ROOM_TEMPERATURE.id];
    for question in readings::QUESTIONS.iter().chain(inside::QUESTIONS).chain(live::QUESTIONS) {
        let caution = words::question::of(question).caution;
        assert!(!caution.is_empty() || may_do_without.contains(&question.id), "caution of {}", question.id);
    }
}

#[test]
fn codes_of_readings_inside_and_live_are_unique() {
    let mut codes: Vec<&str> = check::all().map(|check| check.code).collect();
    codes.sort_unstable();
    let all = codes.len();
    codes.dedup();
    assert_eq!(codes.len(), all);
    let mut ids: Vec<&str> = check::questions().map(|question| question.id).collect();
    ids.sort_unstable();
    let all = ids.len();
    ids.dedup();
    assert_eq!(ids.len(), all);
}
