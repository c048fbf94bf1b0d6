//! Dead readings: when they count, and what a tester's beep and silence amount to.

mod earth;
mod insulation;

use plugwary::domain::check::readings::{earth as path, poles, shorts};
use plugwary::domain::examination::Answer;
use plugwary::domain::facts;
use plugwary::domain::finding::Conformity::{self, Conforms, Inconclusive, Nonconforming, NotApplicable, NotExamined};
use plugwary::domain::finding::Severity::{Breach, Danger};
use plugwary::domain::finding::{Needed, Reason, Severity};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{Amount, Unit};
use plugwary::domain::question::{Question, Target};
use plugwary::domain::reading::{Reading, Shown};
use plugwary::domain::sample::Equipment::{self, HandTools, Meters};
use plugwary::domain::view::View;
use plugwary::domain::walk;

use crate::bench::Bench;

const PREPARED: [&str; 4] = ["unplugged", "nothing-connected", "switches-on", "fuse-good"];

/// A plain lead of two sockets, ready for dead readings.
fn ready(equipment: Equipment) -> Bench {
    with_extras(equipment, &[]).any(facts::READINGS_PREPARED, &PREPARED)
}

fn with_extras(equipment: Equipment, extras: &[&str]) -> Bench {
    Bench::lead(equipment)
        .answer(facts::SOCKET_COUNT, Target::Sample, Answer::Count(2))
        .any(facts::EXTRAS, extras)
        .any(facts::PROMISES, &[])
}

fn at_both(bench: &Bench, question: &'static Question, code: &str) -> Bench {
    bench.clone().one_of(question, Target::Socket(1), code).one_of(question, Target::Socket(2), code)
}

/// A display that shows no number.
fn shows(shown: Shown, instrument: Instrument) -> Answer {
    let typed = String::from("OL");
    let unit = Unit::Megohm;
    Answer::Reading(Reading { shown, step: Amount::new(1.0, unit), unit, instrument, own: None, typed })
}

fn reason(bench: &Bench, code: &str) -> Option<Reason> {
    bench.finding(code).map(|finding| finding.judgement.reason)
}

/// Every answer of a question, and what it makes of a check with everything made sure of.
#[track_caller]
fn amounts_to(question: &'static Question, code: &str, table: &[(&str, Conformity)], severity: Severity) {
    let named: Vec<&str> = table.iter().map(|row| row.0).collect();
    assert_eq!(question.answers(), named, "every answer is told");
    for &(answer, outcome) in table {
        let bench = if question.targets(&View::new(&ready(HandTools).0)).len() > 1 {
            at_both(&ready(HandTools), question, answer)
        } else {
            ready(HandTools).one(question, answer)
        };
        bench.expect(code, outcome);
        if outcome == Nonconforming {
            bench.expect_break(code, severity);
        }
    }
    ready(HandTools).expect(code, NotExamined);
}

#[test]
fn a_tester_tells_an_open_earth_and_one_that_comes_and_goes() {
    amounts_to(
        path::EARTH_PATH,
        "earth-open",
        &[("beeps", Conforms), ("comes-and-goes", Conforms), ("silent", Nonconforming)],
        Danger,
    );
    // A steady beep clears no earth while it is bent: a tester is slow and beeps through tens of ohms.
    amounts_to(
        path::EARTH_PATH,
        "earth-intermittent",
        &[("beeps", NotExamined), ("comes-and-goes", Nonconforming), ("silent", NotExamined)],
        Danger,
    );
}

#[test]
fn poles_are_told_by_where_they_beep() {
    let table = |line_silent, neutral_silent, both_silent| {
        [
            ("both-beep", Conforms),
            ("crossed", Conforms),
            ("line-silent", line_silent),
            ("neutral-silent", neutral_silent),
            ("both-silent", both_silent),
        ]
    };
    amounts_to(poles::POLE_PATH, "line-open", &table(Nonconforming, Conforms, Nonconforming), Breach);
    amounts_to(poles::POLE_PATH, "neutral-open", &table(Conforms, Nonconforming, Nonconforming), Breach);
    let mut polarity = table(Conforms, Conforms, Inconclusive);
    polarity[1].1 = Nonconforming;
    amounts_to(poles::POLE_PATH, "polarity-reversed", &polarity, Danger);
}

#[test]
fn paths_that_must_not_be_are_dangers() {
    let together = [("silent", Conforms), ("beeps-for-a-moment", Conforms), ("beeps", Nonconforming)];
    amounts_to(shorts::POLES_TOGETHER, "pole-shorted", &together, Danger);
    let joined = [("neither", Conforms), ("line", Nonconforming), ("neutral", Nonconforming), ("both", Nonconforming)];
    amounts_to(shorts::EARTH_TO_POLES, "neutral-earth-joined", &joined, Danger);
}

#[test]
fn a_fuse_must_open_the_line() {
    let table =
        [("only-neutral-beeps", Conforms), ("line-still-beeps", Nonconforming), ("neither-beeps", Inconclusive)];
    amounts_to(poles::FUSE_OUT, "fuse-not-in-line", &table, Danger);
    let foreign = ready(HandTools).one(facts::PLUG_PATTERN, "two-round-pins");
    foreign.expect("fuse-not-in-line", NotApplicable);
}

#[test]
fn the_worst_socket_decides_and_every_socket_is_needed() {
    let one = |code| ready(HandTools).one_of(poles::POLE_PATH, Target::Socket(1), code);
    one("both-beep").expect("polarity-reversed", Inconclusive);
    assert_eq!(reason(&one("both-beep"), "polarity-reversed"), Some(Reason::OnlySomeRead { read: 1, of: 2 }));
    one("both-beep").one_of(poles::POLE_PATH, Target::Socket(2), "crossed").expect_break("polarity-reversed", Danger);
    one("crossed").expect_break("polarity-reversed", Danger);
}

#[test]
fn nothing_is_read_before_it_is_unplugged() {
    let is_asked = |bench: &Bench| {
        let view = View::new(&bench.0);
        walk::asked(&view).iter().any(|(question, _)| question.id == poles::POLE_PATH.id)
    };
    let lead = with_extras(HandTools, &[]);
    assert!(!is_asked(&lead));
    assert!(!is_asked(&lead.clone().any(facts::READINGS_PREPARED, &["switches-on", "fuse-good", "nothing-connected"])));
    assert!(is_asked(&lead.any(facts::READINGS_PREPARED, &["unplugged"])));
}

#[test]
fn look_next_leads_to_the_preparation_before_any_reading() {
    let assessed = with_extras(HandTools, &[]).assessed();
    let next = assessed.next.iter().find(|next| next.code == "earth-open");
    assert_eq!(next.map(|next| next.question), Some(facts::READINGS_PREPARED.id));
}

#[test]
fn silence_counts_only_with_switches_on_and_the_fuse_good() {
    for left_out in ["switches-on", "fuse-good", "nothing-connected", "unplugged"] {
        let sure: Vec<&str> = PREPARED.into_iter().filter(|code| *code != left_out).collect();
        let lead = with_extras(HandTools, &[]).any(facts::READINGS_PREPARED, &sure);
        for (question, answer, code) in
            [(poles::POLE_PATH, "line-silent", "line-open"), (poles::POLE_PATH, "neutral-silent", "neutral-open")]
        {
            let bench = at_both(&lead, question, answer);
            bench.expect(code, Inconclusive);
            assert_eq!(reason(&bench, code), Some(Reason::Needs(Needed::ReadingsPrepared)));
        }
        lead.clone().one(shorts::POLES_TOGETHER, "silent").expect("pole-shorted", Inconclusive);
        lead.clone().one(shorts::EARTH_TO_POLES, "neither").expect("neutral-earth-joined", Inconclusive);
        lead.one(poles::FUSE_OUT, "only-neutral-beeps").expect("fuse-not-in-line", Inconclusive);
    }
}

#[test]
fn a_path_that_is_heard_counts_whatever_the_switches_are_set_to() {
    let lead = with_extras(HandTools, &[]).any(facts::READINGS_PREPARED, &["unplugged", "nothing-connected"]);
    at_both(&lead, poles::POLE_PATH, "crossed").expect_break("polarity-reversed", Danger);
    at_both(&lead, path::EARTH_PATH, "silent").expect_break("earth-open", Danger);
    lead.clone().one(shorts::POLES_TOGETHER, "beeps").expect_break("pole-shorted", Danger);
    lead.clone().one(shorts::EARTH_TO_POLES, "neutral").expect_break("neutral-earth-joined", Danger);
    lead.one(poles::FUSE_OUT, "line-still-beeps").expect_break("fuse-not-in-line", Danger);
}

#[test]
fn an_appliance_left_in_a_socket_spoils_every_reading() {
    let lead = with_extras(HandTools, &[]).any(facts::READINGS_PREPARED, &["unplugged", "switches-on", "fuse-good"]);
    lead.clone().one(shorts::POLES_TOGETHER, "beeps").expect("pole-shorted", Inconclusive);
    at_both(&lead, path::EARTH_PATH, "beeps").expect("earth-open", Inconclusive);
}

#[test]
fn leads_that_open_their_poles_when_dead_cannot_be_told_by_silence() {
    for extra in ["rcd", "timer", "electronics"] {
        let lead = with_extras(HandTools, &[extra]).any(facts::READINGS_PREPARED, &PREPARED);
        let silent = at_both(&lead, poles::POLE_PATH, "both-silent");
        silent.expect("line-open", Inconclusive);
        assert_eq!(reason(&silent, "line-open"), Some(Reason::PolesOpenWhenDead));
        lead.clone().one(shorts::POLES_TOGETHER, "silent").expect("pole-shorted", Inconclusive);
        lead.one(shorts::POLES_TOGETHER, "beeps").expect_break("pole-shorted", Danger);
    }
    let usb = with_extras(HandTools, &["usb", "switch", "neon"]).any(facts::READINGS_PREPARED, &PREPARED);
    at_both(&usb, poles::POLE_PATH, "both-silent").expect_break("line-open", Breach);
}

#[test]
fn poles_that_were_heard_at_every_socket_are_closed_whatever_is_said_of_them() {
    let lead = with_extras(HandTools, &["rcd"]).any(facts::READINGS_PREPARED, &["unplugged", "nothing-connected"]);
    let one = lead.one_of(poles::POLE_PATH, Target::Socket(1), "both-beep").one(shorts::EARTH_TO_POLES, "neither");
    one.expect("neutral-earth-joined", Inconclusive);
    let both = one.one_of(poles::POLE_PATH, Target::Socket(2), "both-beep");
    both.expect("neutral-earth-joined", Conforms);
}

/// 230 V / 13 A = 17.7 Ω (common practice: no part of a lead draws more than its plug's fuse).
#[test]
fn poles_are_shorted_below_what_the_fuse_allows() {
    let reads = |value| {
        let lead = with_extras(Meters, &["usb"]).any(facts::READINGS_PREPARED, &PREPARED);
        lead.reads(shorts::POLE_RESISTANCE, Target::Sample, (value, 0.1, Unit::Ohm), Instrument::HandMeter)
    };
    reads(0.3).expect_break("pole-shorted", Danger);
    reads(17.0).expect_break("pole-shorted", Danger);
    reads(17.7).expect("pole-shorted", Inconclusive);
    reads(18.4).expect("pole-shorted", Conforms);
    reads(5000.0).expect("pole-shorted", Conforms);
}

#[test]
fn a_plain_lead_that_conducts_between_its_poles_cannot_be_cleared() {
    let reads = |value, unit| {
        ready(Meters).reads(shorts::POLE_RESISTANCE, Target::Sample, (value, 0.01, unit), Instrument::HandMeter)
    };
    reads(5.0, Unit::Kilohm).expect("pole-shorted", Inconclusive);
    reads(0.9, Unit::Megohm).expect("pole-shorted", Inconclusive);
    reads(1.1, Unit::Megohm).expect("pole-shorted", Conforms);
    let open = ready(Meters).answer(shorts::POLE_RESISTANCE, Target::Sample, shows(Shown::Open, Instrument::HandMeter));
    open.expect("pole-shorted", Conforms);
}
