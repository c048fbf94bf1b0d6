//! Checks of the sockets, their body and the connector.

use plugwary::domain::check::sockets::{body, connector, holes, trial};
use plugwary::domain::check::{self, Judge, cable};
use plugwary::domain::examination::Answer;
use plugwary::domain::facts;
use plugwary::domain::finding::Conformity::{Conforms, Inconclusive, NotApplicable, NotExamined};
use plugwary::domain::finding::Severity::{BadSign, Breach, Danger};
use plugwary::domain::finding::{Basis, Severity};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::Unit;
use plugwary::domain::question::{Ask, Question, Target};
use plugwary::domain::sample::Equipment::{Eyes, HandTools, Meters};
use plugwary::domain::sample::Place;
use plugwary::domain::view::View;
use plugwary::domain::walk;
use plugwary::words;

use crate::bench::Bench;

/// A break, and an answer to the same question that keeps the rule.
#[track_caller]
fn breaks_and_keeps(bench: &Bench, question: &'static Question, code: &str, bad: &[(&str, Severity)], good: &[&str]) {
    for (answer, severity) in bad {
        bench.clone().one(question, answer).expect_break(code, *severity);
    }
    for answer in good {
        bench.clone().one(question, answer).expect(code, Conforms);
    }
    bench.expect(code, NotExamined);
    bench.clone().answer(question, Target::Sample, Answer::Refused).expect(code, Inconclusive);
}

#[test]
fn holes_that_no_13_ampere_socket_has_are_dangers() {
    let lead = Bench::lead(Eyes);
    let seen = |codes: &[&str]| lead.clone().any(holes::WRONG_HOLES, codes);
    seen(&["other-plugs-fit"]).expect_break("socket-takes-foreign-plugs", Danger);
    seen(&["other-plugs-fit"]).expect("socket-without-earth", Conforms);
    seen(&["two-holes"]).expect_break("socket-two-pin", Danger);
    seen(&["two-holes"]).expect_break("socket-without-earth", Danger);
    seen(&["no-earth-hole"]).expect_break("socket-without-earth", Danger);
    seen(&["no-earth-hole"]).expect("socket-two-pin", Conforms);
    for code in ["socket-takes-foreign-plugs", "socket-two-pin", "socket-without-earth"] {
        seen(&[]).expect(code, Conforms);
        lead.expect(code, NotExamined);
    }
}

#[test]
fn open_holes_and_empty_earth_holes_are_dangers() {
    let lead = Bench::lead(Eyes);
    let bad = [("some-open", Danger), ("all-open", Danger)];
    breaks_and_keeps(&lead, holes::SHUTTERS, "shutter-missing", &bad, &["all-closed"]);
    let bad = [("some-empty", Danger), ("all-empty", Danger)];
    breaks_and_keeps(&lead, holes::EARTH_HOLES, "earth-contact-absent", &bad, &["metal-in-all"]);
}

#[test]
fn metal_in_the_earth_holes_leaves_the_earth_path_untested() {
    let assessed = Bench::lead(Eyes).one(holes::EARTH_HOLES, "metal-in-all").assessed();
    assert!(assessed.outside_only);
}

#[test]
fn each_fault_of_the_body_is_a_danger_of_its_own() {
    let faults = [
        ("live-metal", "live-part-touchable"),
        ("slot-to-the-inside", "mounting-slot-reaches-inside"),
        ("broken", "case-broken"),
        ("opens-by-hand", "case-opens-by-hand"),
        ("scorched", "socket-scorched"),
    ];
    for (seen, code) in faults {
        let bench = Bench::lead(Eyes).any(body::CONDITION, &[seen]);
        bench.expect_break(code, Danger);
        for (_, other) in faults.into_iter().filter(|(_, other)| *other != code) {
            bench.expect(other, Conforms);
        }
        Bench::lead(Eyes).expect(code, NotExamined);
        Bench::lead(Eyes).answer(body::CONDITION, Target::Sample, Answer::CannotTell).expect(code, Inconclusive);
    }
}

#[test]
fn a_lead_states_its_whole_load_and_that_is_a_claim() {
    let lead = Bench::lead(Eyes);
    breaks_and_keeps(&lead, body::TOTAL_RATING, "total-rating-unmarked", &[("not-marked", Breach)], &["marked"]);
    let marked = lead.one(body::TOTAL_RATING, "marked").finding("total-rating-unmarked");
    assert_eq!(marked.map(|finding| finding.judgement.basis), Some(Basis::Print));
    Bench::cord_set(Eyes).expect("total-rating-unmarked", NotApplicable);
}

#[test]
fn a_switch_without_marks_is_a_bad_sign_and_asked_only_where_there_is_one() {
    let switched = Bench::lead(Eyes).any(facts::EXTRAS, &["switch"]);
    breaks_and_keeps(&switched, body::SWITCH_MARKS, "switch-unmarked", &[("not-marked", BadSign)], &["marked"]);
    Bench::lead(Eyes).any(facts::EXTRAS, &["usb"]).expect("switch-unmarked", NotApplicable);
}

#[test]
fn only_a_strong_pull_means_steel() {
    let lead = Bench::lead(Meters);
    let bad = [("strongly", Breach)];
    breaks_and_keeps(&lead, body::CONTACT_METAL, "live-contact-steel", &bad, &["not-pulled"]);
    lead.one(body::CONTACT_METAL, "weakly").expect("live-contact-steel", Inconclusive);
}

/// BS 1363-2 (read): the earth pin opens the shutters, or line and neutral together; one pin alone never.
#[test]
fn one_pin_alone_opens_no_shutter() {
    let lead = Bench::lead(HandTools);
    let bad = [("one-lower-hole", Danger), ("stays-open", Danger)];
    let good = ["earth-hole", "both-lower-holes", "all-three"];
    breaks_and_keeps(&lead, trial::OPENED_BY, "shutter-opens-to-single-pin", &bad, &good);
    lead.one(holes::SHUTTERS, "all-open").expect("shutter-opens-to-single-pin", NotApplicable);
}

#[test]
fn a_plug_that_falls_out_is_a_danger_and_one_that_wobbles_a_bad_sign() {
    let bad = [("falls-out", Danger), ("wobbles", BadSign)];
    breaks_and_keeps(&Bench::lead(HandTools), trial::GRIP, "socket-loose", &bad, &["firm"]);
}

fn tried(opened_by: &str) -> Bench {
    Bench::lead(HandTools).one(trial::UPSIDE_DOWN, "does-not-enter").one(trial::OPENED_BY, opened_by)
}

fn to_the_edge(bench: Bench, millimetres: f64) -> Bench {
    let shown = (millimetres, 0.01, Unit::Millimetre);
    bench.reads(trial::TO_THE_EDGE, Target::Sample, shown, Instrument::DigitalCalliper)
}

#[test]
fn a_plug_that_enters_upside_down_is_a_danger_whatever_else_is_known() {
    let enters = to_the_edge(tried("both-lower-holes"), 25.0).one(trial::UPSIDE_DOWN, "enters");
    enters.expect_break("plug-fits-upside-down", Danger);
}

/// BS 1363-2, 14.10 (read): 18 mm, and only where line and neutral open the shutter.
#[test]
fn eighteen_millimetres_count_where_both_lower_pins_open_the_shutter() {
    let code = "plug-fits-upside-down";
    tried("both-lower-holes").expect(code, NotExamined);
    to_the_edge(tried("both-lower-holes"), 17.9).expect_break(code, Breach);
    to_the_edge(tried("both-lower-holes"), 18.0).expect(code, Inconclusive);
    to_the_edge(tried("both-lower-holes"), 18.1).expect(code, Conforms);
    to_the_edge(tried("earth-hole"), 16.0).expect(code, Conforms);
    tried("all-three").expect(code, Conforms);
}

#[test]
fn a_plug_nobody_tried_upside_down_keeps_nothing() {
    let code = "plug-fits-upside-down";
    Bench::lead(HandTools).expect(code, NotExamined);
    Bench::lead(HandTools).one(trial::OPENED_BY, "earth-hole").expect(code, NotExamined);
    Bench::lead(HandTools).one(trial::UPSIDE_DOWN, "does-not-enter").expect(code, NotExamined);
    let untried = Bench::lead(HandTools).one(trial::OPENED_BY, "both-lower-holes");
    to_the_edge(untried.clone(), 25.0).expect(code, NotExamined);
    to_the_edge(untried, 16.0).expect_break(code, Breach);
}

/// IEC 60799, 5.2.2 (read): the plug's rating is not below the connector's; C19 carries 16 A (IEC 60320-1, read).
#[test]
fn a_16_ampere_connector_is_above_a_13_ampere_plug() {
    let set = Bench::cord_set(Eyes);
    let good = ["c13", "c5", "two-holes"];
    breaks_and_keeps(&set, connector::PATTERN, "connector-above-plug", &[("c19", Breach)], &good);
    set.clone().one(connector::PATTERN, "other").expect("connector-above-plug", Inconclusive);
    set.one(connector::PATTERN, "free-ends").expect("connector-above-plug", NotApplicable);
}

#[test]
fn a_connector_without_a_steady_earth_path_is_a_danger() {
    let set = Bench::cord_set(HandTools).one(connector::PATTERN, "c13");
    let bad = [("no-path", Danger), ("comes-and-goes", Danger)];
    breaks_and_keeps(&set, connector::EARTH_PATH, "connector-earth-open", &bad, &["path"]);
    Bench::lead(HandTools).expect("connector-earth-open", NotApplicable);
}

#[test]
fn a_two_hole_connector_leaves_earth_open_and_free_ends_have_none_of_it() {
    let set = |pattern| Bench::cord_set(Meters).one(connector::PATTERN, pattern);
    set("c13").expect("socket-without-earth", Conforms);
    set("two-holes").expect("socket-without-earth", Inconclusive);
    set("two-holes").one(facts::CORE_COUNT, "two").expect("cores-too-few", Inconclusive);
    set("c13").one(facts::CORE_COUNT, "two").expect_break("cores-too-few", Danger);
    for code in ["socket-without-earth", "earth-contact-absent", "case-broken", "connector-earth-open"] {
        set("free-ends").expect(code, NotApplicable);
    }
}

#[test]
fn sockets_of_leads_are_not_asked_of_cord_sets() {
    for code in
        ["socket-takes-foreign-plugs", "socket-two-pin", "shutter-missing", "socket-loose", "live-contact-steel"]
    {
        Bench::cord_set(Meters).expect(code, NotApplicable);
    }
}

/// A buyer has three minutes: a sound three-way lead takes no more than nine taps here, and one print that is typed.
#[test]
fn flex_and_sockets_take_nine_taps_with_eyes_only() {
    let lead = Bench::lead(Eyes).answer(facts::SOCKET_COUNT, Target::Sample, Answer::Count(3));
    let lead = lead.printed(facts::FLEX_PRINT, Target::Sample, "H05VV-F 3G1.5").any(facts::EXTRAS, &[]);
    let view = View::new(&lead.0);
    let here = |question: &Question| matches!(question.place, Place::Cable | Place::Sockets);
    let taps = walk::asked(&view).into_iter().filter(|(question, _)| here(question));
    let taps = taps.filter(|(question, _)| !matches!(question.ask, Ask::Printed(_))).count();
    assert!(taps <= 9, "{taps} taps");
}

#[test]
fn every_answer_stands_in_every_table_that_reads_its_question() {
    for check in check::all() {
        if let Judge::Answer(question, table) = &check.judge {
            let codes: Vec<_> = table.iter().map(|(code, _)| *code).collect();
            assert_eq!(codes, question.answers(), "table of {}", check.code);
        }
        if let Judge::Marked(question, code, _) = &check.judge {
            assert!(question.answers().contains(code), "mark of {}", check.code);
        }
    }
}

#[test]
fn every_question_check_and_answer_of_these_places_has_words() {
    for question in cable::QUESTIONS.iter().chain(check::sockets::QUESTIONS) {
        let found = words::question::of(question);
        let codes: Vec<_> = found.answers.iter().map(|answer| answer.code).collect();
        let of_print: &[&str] = if matches!(question.ask, Ask::Printed(_)) { &["nothing"] } else { &[] };
        assert_eq!((found.id, codes), (question.id, [question.answers(), of_print].concat()));
        let needs_sentence = !matches!(question.ask, Ask::One(_));
        assert_eq!(needs_sentence, !found.says.is_empty(), "sentence of {}", question.id);
        assert!(found.asks.chars().count() < 60, "{}", question.id);
        assert!(found.answers.iter().all(|answer| answer.answer.chars().count() < 45), "answers of {}", question.id);
    }
    for check in cable::CHECKS.iter().chain(check::sockets::CHECKS) {
        assert_eq!(words::check::of(check.code).code, check.code);
    }
}
