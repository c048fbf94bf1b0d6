//! What an assessment counts and lists: looked at by place, dangers not tested, what withdraws the live place, order.

use plugwary::domain::assess::{Assessment, Tally};
use plugwary::domain::check::inside::opening;
use plugwary::domain::check::live::in_use;
use plugwary::domain::check::plug::{fuse, pin_size};
use plugwary::domain::check::sockets::connector;
use plugwary::domain::check::{self, was_made};
use plugwary::domain::facts;
use plugwary::domain::finding::Bearing::{Decides, IsOnlyTold};
use plugwary::domain::finding::Conformity::{Conforms, Inconclusive, Nonconforming, NotExamined};
use plugwary::domain::finding::Severity::{Breach, Danger};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::next_check::NextCheck;
use plugwary::domain::quantity::Unit;
use plugwary::domain::question::Target;
use plugwary::domain::sample::Equipment::{Eyes, HandTools, Meters};
use plugwary::domain::sample::{Equipment, Place};

use crate::bench::Bench;

/// A fresh lead, and the same after one look at its fuse holder. A marked fuse in it settles several checks, all of them by eye and at
/// the plug: none is missing, none bridged, the carrier is whole, the fuse is marked.
fn looked_into_the_holder(equipment: Equipment) -> (Bench, Bench) {
    let fresh = Bench::lead(equipment);
    (fresh.clone(), fresh.one(fuse::IN_THE_HOLDER, "marked-bs-1362"))
}

fn at(tallies: &[(Place, Tally)], place: Place) -> Option<Tally> {
    tallies.iter().find(|(at, _)| *at == place).map(|(_, tally)| *tally)
}

fn places(tallies: &[(Place, Tally)]) -> Vec<Place> {
    tallies.iter().map(|(place, _)| *place).collect()
}

fn sum(tallies: &[(Place, Tally)]) -> Tally {
    tallies
        .iter()
        .fold(Tally::default(), |sum, (_, tally)| Tally { made: sum.made + tally.made, of: sum.of + tally.of })
}

#[test]
fn looks_are_counted_where_they_were_made() {
    let (fresh, looked) = looked_into_the_holder(Eyes);
    let (before, after) = (fresh.assessed(), looked.assessed());
    assert_eq!(before.looked, Tally { made: 0, of: before.findings.len() });
    let settled = after.findings.iter().filter(|finding| was_made(finding.outcome())).count();
    assert!(settled >= 3, "one look at the holder settles several checks: {settled}");
    assert_eq!(after.looked, Tally { made: settled, of: after.findings.len() });
    for (place, tally) in &after.looked_at {
        assert_eq!(tally.made, if *place == Place::Plug { settled } else { 0 }, "{place:?}");
        assert_eq!(tally.of, after.findings.iter().filter(|finding| finding.place == *place).count(), "{place:?}");
    }
    assert_eq!(sum(&after.looked_at), after.looked);
}

/// A cord set with free ends has neither sockets nor a connector to look at; a lead has every place.
#[test]
fn places_with_nothing_to_look_at_are_left_out() {
    assert_eq!(places(&Bench::lead(Meters).assessed().looked_at), Place::ALL);
    let free_ends = Bench::cord_set(Meters).one(connector::PATTERN, "free-ends").assessed();
    let but_sockets: Vec<Place> = Place::ALL.into_iter().filter(|place| *place != Place::Sockets).collect();
    assert_eq!(places(&free_ends.looked_at), but_sockets);
}

/// Eyes alone reach nothing of the readings, the inside and the live place.
#[test]
fn within_reach_is_what_the_equipment_can_tell() {
    let fresh = Bench::lead(Meters).assessed();
    let outside = [Place::WhatItSays, Place::Plug, Place::Cable, Place::Sockets];
    assert_eq!(places(&fresh.within_reach(Eyes)), outside);
    assert_eq!(places(&fresh.within_reach(Meters)), Place::ALL);
    for equipment in Equipment::ALL {
        let can_be = |code| check::by_code(code).is_some_and(|check| check.needs <= equipment);
        let of = fresh.findings.iter().filter(|finding| can_be(finding.code)).count();
        assert_eq!(sum(&fresh.within_reach(equipment)), Tally { made: 0, of }, "{equipment:?}");
    }
    let reach = Equipment::ALL.map(|equipment| sum(&fresh.within_reach(equipment)).of);
    assert!(reach.is_sorted() && reach[0] < reach[1] && reach[1] < reach[2], "{reach:?}");
    assert_eq!(reach[2], fresh.findings.len());
}

/// A pin's thickness wants a calliper: read, it is one more made of one more; a look at the fuse holder is more made of as many.
#[test]
fn what_was_made_beyond_reach_counts_too() {
    let (fresh, looked) = looked_into_the_holder(HandTools);
    let plug = |assessment: &Assessment| at(&assessment.within_reach(Eyes), Place::Plug).expect("a plug is looked at");
    let before = plug(&fresh.assessed());
    let by_eye = plug(&looked.assessed());
    assert!(before.made == 0 && by_eye.made >= 3 && by_eye.of == before.of, "{before:?} {by_eye:?}");
    let reading = (4.0, 0.01, Unit::Millimetre);
    let measured = fresh.reads(pin_size::THICKNESS, Target::Sample, reading, Instrument::DigitalCalliper);
    assert!(was_made(measured.outcome("pin-thickness-off")));
    assert_eq!(plug(&measured.assessed()), Tally { made: 1, of: before.of + 1 });
}

/// Nothing wrong, or a mere breach, withdraws nothing; a danger does, and names itself, unless it was found live.
#[test]
fn a_danger_withdraws_the_live_place() {
    let withdrawn_by = |bench: &Bench| bench.assessed().live_withdrawn_by;
    let lead = Bench::lead(Meters);
    assert_eq!(withdrawn_by(&lead), None);
    assert_eq!(withdrawn_by(&lead.clone().one(fuse::IN_THE_HOLDER, "marked-bs-1362")), None);
    let thick = lead.clone().reads(
        pin_size::THICKNESS,
        Target::Sample,
        (4.6, 0.01, Unit::Millimetre),
        Instrument::DigitalCalliper,
    );
    thick.expect_break("pin-thickness-off", Breach);
    assert_eq!(withdrawn_by(&thick), None);
    let empty = lead.clone().one(fuse::IN_THE_HOLDER, "empty");
    empty.expect_break("fuse-missing", Danger);
    assert_eq!(withdrawn_by(&empty), Some("fuse-missing"));
    let leaks = (9.0, 0.001, Unit::Milliampere);
    let live = lead.reads(in_use::TOUCH_CURRENT, Target::Sample, leaks, Instrument::LeakageMeter);
    live.expect_break("leakage-high", Danger);
    assert_eq!(withdrawn_by(&live), None);
}

/// Earth, polarity and copper are tested with meters only.
#[test]
fn without_meters_only_the_outside_was_tested() {
    let is_outside_only = Equipment::ALL.map(|equipment| Bench::lead(equipment).assessed().outside_only);
    assert_eq!(is_outside_only, [true, true, false]);
}

/// Breaks before doubts before what was not looked at before what is in order, and the gravest first in each.
#[test]
fn the_weightiest_findings_come_first() {
    let mixed = Bench::lead(Eyes).one(fuse::IN_THE_HOLDER, "empty").one(facts::PLUG_PATTERN, "uk-three-pin");
    let findings = mixed.assessed().findings;
    let weights: Vec<_> = findings.iter().map(|f| (f.outcome(), f.judgement.severity)).collect();
    assert!(weights.is_sorted_by(|one, next| one >= next), "{weights:?}");
    assert_eq!(weights.first(), Some(&(Nonconforming, Danger)));
    assert_eq!(weights.last().map(|weight| weight.0), Some(Conforms));
}

/// A thickness within its doubt of the recalled limit is only told; a length of which one of two was read counts as not settled and
/// comes first, although the walk asks for it later.
#[test]
fn among_equals_what_decides_comes_before_what_is_only_told() {
    let calliper = |bench: Bench, question, value| {
        bench.reads(question, Target::Sample, (value, 0.01, Unit::Millimetre), Instrument::DigitalCalliper)
    };
    let bench = calliper(calliper(Bench::lead(HandTools), pin_size::THICKNESS, 4.05), pin_size::LIVE_LENGTH, 17.7);
    let of_breach = |code| bench.finding(code).map(|f| (f.outcome(), f.judgement.severity, f.judgement.bearing));
    assert_eq!(of_breach("pin-thickness-off"), Some((Inconclusive, Breach, IsOnlyTold)));
    assert_eq!(of_breach("pin-length-off"), Some((Inconclusive, Breach, Decides)));
    let codes: Vec<&str> = bench.assessed().findings.iter().map(|finding| finding.code).collect();
    let place = |code| codes.iter().position(|found| *found == code);
    assert!(place("pin-length-off") < place("pin-thickness-off"), "{codes:?}");
}

/// *Look next* weighs chance × severity × chance that a look settles it (90 % for these) ÷ minutes, a danger 10, a breach 3, a bad sign a half (stated defaults, usual practice): no fuse 15 %
/// in 0.3 minutes, no maker on the flex 25 % in 0.3, readings that cannot all be right 10 % in 2.
#[test]
fn look_next_weighs_chance_severity_and_minutes() {
    let next = Bench::lead(Meters).one(facts::MAY_CUT, "yes").assessed().next;
    let worth = |code| next.iter().find(|next| next.code == code).map(NextCheck::worth);
    let near = |found: Option<f64>, wanted: f64| found.is_some_and(|found| (found - wanted).abs() < 1e-9);
    assert!(near(worth("fuse-missing"), 0.15 * 10.0 * 0.9 / 0.3), "{:?}", worth("fuse-missing"));
    assert!(near(worth("flex-maker-missing"), 0.25 * 3.0 * 0.9 / 0.3), "{:?}", worth("flex-maker-missing"));
    assert!(near(worth("readings-inconsistent"), 0.1 * 0.5 * 0.9 / 2.0), "{:?}", worth("readings-inconsistent"));
    assert!(next.is_sorted_by(|one, another| one.worth() >= another.worth()));
}

/// What is asked of a cut flex waits for whether it may be cut, and then begins with the room; nothing else waits for it.
#[test]
fn look_next_leads_to_the_question_that_opens_the_way() {
    let question =
        |bench: &Bench, code| bench.assessed().next.iter().find(|next| next.code == code).map(|n| n.question);
    let whole = Bench::lead(Meters);
    assert_eq!(question(&whole, "core-resistance-high"), Some("may-cut"));
    assert_eq!(question(&whole.clone().one(facts::MAY_CUT, "yes"), "core-resistance-high"), Some("room-temperature"));
    assert_eq!(question(&whole.clone().one(facts::MAY_CUT, "no"), "core-resistance-high"), None);
    let shut = whole.one(opening::OPENED, "stays-closed");
    assert_eq!(shut.outcome("scorched-inside"), NotExamined);
    assert_eq!(question(&shut, "scorched-inside"), None);
}
