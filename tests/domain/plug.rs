//! Checks of the plug, by eye and hand.

#[path = "plug/sizes.rs"]
mod sizes;

use plugwary::domain::check;
use plugwary::domain::check::plug::{body, fuse, pattern, pins, print, rewirable, sleeves};
use plugwary::domain::essential;
use plugwary::domain::examination::Answer;
use plugwary::domain::facts;
use plugwary::domain::finding::Conformity::{Conforms, Inconclusive, NotApplicable, NotExamined};
use plugwary::domain::finding::Severity::{BadSign, Breach, Danger};
use plugwary::domain::finding::{Basis, ClaimPlace, Needed, Reason};
use plugwary::domain::quantity::{Measurand, amperes};
use plugwary::domain::question::{Ask, Question, Target};
use plugwary::domain::sample::Equipment::{Eyes, HandTools};
use plugwary::domain::sample::Place;
use plugwary::domain::view::View;
use plugwary::domain::walk;
use plugwary::words;

use crate::bench::Bench;

const BODY: Target = Target::Claim(ClaimPlace::Body);
const PLUG: Target = Target::Claim(ClaimPlace::Plug);

fn held(answer: &str) -> Bench {
    Bench::lead(Eyes).one(fuse::IN_THE_HOLDER, answer)
}

fn fused(rating: &str) -> Bench {
    held("marked-bs-1362").one(facts::FUSE_RATING, rating)
}

/// A moulded plug in order, seen with eyes only.
fn sound_plug() -> Bench {
    fused("13")
        .one(facts::PLUG_PATTERN, "uk-three-pin")
        .any(pins::PINS_AND_SLEEVES, &[])
        .any(body::PLUG_AND_FLEX, &[])
        .any(print::PLUG_PRINT, &["maker", "bs-1363", "fuse-sign", "rating", "approval-mark"])
}

#[test]
fn six_taps_tell_all_that_eyes_must_have_seen_of_a_plug() {
    let plug = sound_plug();
    let view = View::new(&plug.0);
    let here = |question: &&Question| question.place == Place::Plug;
    assert_eq!(walk::asked(&view).iter().map(|(question, _)| *question).filter(here).count(), 6);
    let read = plug
        .printed(facts::RATING, BODY, "13A 250V")
        .printed(facts::FLEX_PRINT, Target::Sample, "H05VV-F 3G1.5")
        .assessed();
    let essential = |code: &str| essential::is_essential(code, Eyes);
    let at_the_plug = read.findings.iter().filter(|f| f.place == Place::Plug && essential(f.code));
    for finding in at_the_plug {
        assert_eq!(finding.outcome(), Conforms, "{}", finding.code);
    }
    let essential_here = check::plug::CHECKS.iter().filter(|check| essential(check.code));
    assert_eq!(essential_here.count(), 21, "essential checks of the plug with eyes only");
}

#[test]
fn a_plug_of_another_pattern_is_a_danger_on_an_earthed_product() {
    for answer in ["two-round-pins", "flat-parallel-pins", "flat-slanted-pins", "other"] {
        let foreign = Bench::lead(Eyes).one(facts::PLUG_PATTERN, answer);
        foreign.expect_break("plug-foreign", Danger);
        foreign.expect("fuse-missing", NotApplicable);
    }
    Bench::lead(Eyes).one(facts::PLUG_PATTERN, "uk-three-pin").expect("plug-foreign", Conforms);
}

#[test]
fn only_a_marked_and_fixed_converter_makes_a_foreign_plug_fit() {
    let converted = Bench::lead(Eyes).one(facts::PLUG_PATTERN, "uk-plug-with-converter");
    converted.expect("plug-foreign", NotExamined);
    converted.expect("fuse-missing", NotExamined);
    converted.clone().one(pattern::CONVERTER, "not-marked").expect_break("plug-foreign", Danger);
    converted.clone().one(pattern::CONVERTER, "comes-off").expect_break("plug-foreign", Danger);
    let marked = converted.one(pattern::CONVERTER, "marked-and-fixed").finding("plug-foreign");
    let judged = marked.map(|finding| (finding.outcome(), finding.judgement.basis));
    assert_eq!(judged, Some((Conforms, Basis::Print)));
}

#[test]
fn no_fuse_no_holder_and_a_bridge_are_dangers() {
    held("empty").expect_break("fuse-missing", Danger);
    held("no-holder").expect_break("fuse-missing", Danger);
    held("bridged").expect_break("fuse-missing", Danger);
    held("bridged").expect_break("fuse-link-bridged", Danger);
    held("holder-broken").expect_break("fuse-carrier-missing", Danger);
    held("marked-bs-1362").expect("fuse-missing", Conforms);
    held("marked-bs-1362").expect("fuse-link-bridged", Conforms);
    held("marked-bs-1362").expect("fuse-carrier-missing", Conforms);
    Bench::lead(Eyes).answer(fuse::IN_THE_HOLDER, Target::Sample, Answer::Refused).expect("fuse-missing", Inconclusive);
}

#[test]
fn a_fuse_under_a_cover_that_nobody_opened_was_not_looked_at() {
    for code in ["fuse-missing", "fuse-link-bridged", "fuse-unmarked", "fuse-standard-wrong", "fuse-above-rating"] {
        held("under-the-cover").expect(code, NotExamined);
    }
}

/// BS 1362 (read): maker's mark, rated current and BS 1362 stand on the link.
#[test]
fn a_fuse_without_print_or_rating_breaks_the_rule() {
    held("unmarked").expect_break("fuse-unmarked", Breach);
    fused("not-printed").expect_break("fuse-unmarked", Breach);
    fused("13").expect("fuse-unmarked", Conforms);
    held("unmarked").expect("fuse-standard-wrong", Inconclusive);
    held("other-marking").expect_break("fuse-standard-wrong", Breach);
    held("empty").expect("fuse-unmarked", NotApplicable);
}

#[test]
fn glass_is_a_danger_on_a_lead_and_a_breach_on_a_cord_set() {
    held("glass").expect_break("fuse-standard-wrong", Danger);
    let cord_set = Bench::cord_set(Eyes).one(fuse::IN_THE_HOLDER, "glass");
    cord_set.expect_break("fuse-standard-wrong", Breach);
}

/// BS 1362 (read): no rating above 13 A exists.
#[test]
fn a_bs_1362_fuse_above_13_amperes_is_a_fake() {
    fused("above-13").expect_break("fuse-standard-wrong", Danger);
    fused("13").expect("fuse-standard-wrong", Conforms);
    held("marked-bs-1362").expect("fuse-standard-wrong", NotExamined);
    let unsure = held("marked-bs-1362").answer(facts::FUSE_RATING, Target::Sample, Answer::CannotTell);
    unsure.expect("fuse-standard-wrong", Inconclusive);
    fused("above-13").expect_break("fuse-above-rating", Breach);
}

#[test]
fn a_fuse_is_held_to_the_lowest_rating_on_body_and_plug() {
    let ten = |rating| fused(rating).printed(facts::RATING, BODY, "10A 250V~");
    ten("13").expect_break("fuse-above-rating", Breach);
    ten("10").expect("fuse-above-rating", Conforms);
    ten("5").expect("fuse-above-rating", Conforms);
    ten("other-up-to-13").expect("fuse-above-rating", Inconclusive);
    ten("not-printed").expect("fuse-above-rating", Inconclusive);
    let thirteen = fused("13").printed(facts::RATING, BODY, "13A 250V~");
    thirteen.expect("fuse-above-rating", Conforms);
    thirteen.printed(facts::RATING, PLUG, "FUSE 5A 250V").expect_break("fuse-above-rating", Breach);
    let against = ten("13").finding("fuse-above-rating").map(|finding| finding.judgement.reason);
    let expected = Reason::FuseAgainst { fuse: Some(amperes(13.0).amount()), limit: amperes(10.0).amount() };
    assert_eq!(against, Some(expected));
}

/// 2500 W at 250 V are 10 A; 2990 W at 230 V are 13 A.
#[test]
fn watts_ask_for_the_next_fuse_there_is() {
    let watts = |rating| fused("13").printed(facts::RATING, BODY, rating);
    watts("2500W MAX 250V~").expect_break("fuse-above-rating", Breach);
    watts("2900W MAX 230V~").expect("fuse-above-rating", Conforms);
    watts("2990W MAX 230V~").expect("fuse-above-rating", Conforms);
}

#[test]
fn thirteen_amperes_are_the_limit_only_once_the_body_was_read() {
    fused("13").expect("fuse-above-rating", NotExamined);
    fused("13").answer(facts::RATING, BODY, Answer::Refused).expect("fuse-above-rating", Inconclusive);
    fused("13").answer(facts::RATING, BODY, Answer::Nothing).expect("fuse-above-rating", Conforms);
}

#[test]
fn the_connector_of_a_cord_set_does_not_bound_its_fuse() {
    let cord_set = Bench::cord_set(Eyes).one(fuse::IN_THE_HOLDER, "marked-bs-1362").one(facts::FUSE_RATING, "13");
    cord_set.printed(facts::RATING, BODY, "10A 250V~").expect("fuse-above-rating", Conforms);
}

/// BS 7671 Table 4F3A: 0.75 mm² behind 13 A overheats, as `flex-thin-for-rating` has it.
#[test]
fn a_fuse_above_the_rating_of_a_thin_flex_is_a_danger() {
    let thin = fused("13").printed(facts::RATING, BODY, "10A 250V~");
    let thin = thin.printed(facts::FLEX_PRINT, Target::Sample, "H05VV-F 3G0.75");
    thin.expect_break("flex-thin-for-rating", Danger);
    thin.expect_break("fuse-above-rating", Danger);
}

/// BS 1363-1:1995 Table 2 (read): 0.5 mm² takes 3 A, 0.75 mm² takes 13 A.
#[test]
fn a_fuse_is_held_to_the_flex_it_protects() {
    let flex = |rating, print| fused(rating).printed(facts::FLEX_PRINT, Target::Sample, print);
    flex("13", "H03VV-F 3G0.5").expect_break("fuse-over-flex", Danger);
    flex("3", "H03VV-F 3G0.5").expect("fuse-over-flex", Conforms);
    flex("13", "H05VV-F 3G0.75").expect("fuse-over-flex", Conforms);
    fused("13").expect("fuse-over-flex", NotExamined);
}

/// BS 1363-1: pins are sleeved, the earth pin is bare, of metal, and longer (read); law since 1987, not backwards.
#[test]
fn gross_faults_of_pins_and_sleeves_break() {
    let seen = |answer| Bench::lead(Eyes).any(pins::PINS_AND_SLEEVES, &[answer]);
    seen("no-sleeves").expect_break("sleeve-missing", Danger);
    seen("no-sleeves").one(sleeves::SOLD_AS, "new").expect_break("sleeve-missing", Danger);
    seen("no-sleeves").one(sleeves::SOLD_AS, "old-stock").expect_break("sleeve-missing", BadSign);
    seen("sleeve-damaged").expect_break("sleeve-damaged", Danger);
    seen("sleeve-on-earth").expect_break("sleeve-on-earth", Danger);
    seen("plastic-earth-pin").expect_break("earth-pin-plastic", Danger);
    seen("short-earth-pin").expect_break("earth-pin-not-first", Danger);
    seen("pin-loose").expect_break("pin-loose", Danger);
    seen("rolled-sheet").expect_break("pins-of-rolled-sheet", Breach);
    seen("near-edge").expect_break("plug-undersized", BadSign);
    seen("near-edge").expect("sleeve-missing", Conforms);
    Bench::lead(Eyes).expect("sleeve-missing", NotExamined);
}

#[test]
fn a_strong_pull_of_a_magnet_means_steel() {
    let pull = |answer| Bench::lead(HandTools).one(pins::MAGNET, answer);
    pull("strong-pull").expect_break("pin-metal-wrong", Breach);
    pull("weak-pull").expect("pin-metal-wrong", Conforms);
    pull("no-pull").expect("pin-metal-wrong", Conforms);
}

#[test]
fn gross_faults_of_plug_and_flex_are_dangers() {
    for (answer, code) in [
        ("scorched", "plug-scorched"),
        ("broken", "body-broken"),
        ("opens-by-hand", "body-opens-by-hand"),
        ("head-detaches", "plug-head-detaches"),
        ("cord-moves", "cord-grip-slips"),
        ("second-plug", "plug-both-ends"),
        ("severed", "severed-plug"),
    ] {
        Bench::lead(Eyes).any(body::PLUG_AND_FLEX, &[answer]).expect_break(code, Danger);
        Bench::lead(Eyes).any(body::PLUG_AND_FLEX, &[]).expect(code, Conforms);
        Bench::lead(Eyes).answer(body::PLUG_AND_FLEX, Target::Sample, Answer::CannotTell).expect(code, Inconclusive);
        Bench::lead(Eyes).expect(code, NotExamined);
    }
}

/// BS 1363-1:1995+A2, 7.1 (read).
#[test]
fn each_mark_that_is_missing_on_the_plug_breaks_the_rule_and_is_named() {
    let all = ["maker", "bs-1363", "fuse-sign", "rating"];
    Bench::lead(Eyes).any(print::PLUG_PRINT, &all).expect("plug-mark-missing", Conforms);
    for missing in all {
        let others: Vec<_> = all.into_iter().filter(|mark| *mark != missing).collect();
        let plug = Bench::lead(Eyes).any(print::PLUG_PRINT, &others);
        plug.expect_break("plug-mark-missing", Breach);
        let reason = plug.finding("plug-mark-missing").map(|finding| finding.judgement.reason);
        assert_eq!(reason, Some(Reason::NotAmong { question: "plug-print", answer: missing }));
    }
    Bench::lead(Eyes).any(print::PLUG_PRINT, &all).expect_break("approval-mark-missing", Breach);
    let approved = Bench::lead(Eyes).any(print::PLUG_PRINT, &["approval-mark"]).finding("approval-mark-missing");
    let judged = approved.map(|finding| (finding.outcome(), finding.judgement.basis));
    assert_eq!(judged, Some((Conforms, Basis::Print)), "an approval mark is a claim and no evidence");
}

#[test]
fn what_is_wrong_under_the_cover_of_a_rewirable_plug_is_a_danger() {
    let opened =
        |seen: &[&str]| Bench::lead(HandTools).one(facts::PLUG_MAKE, "rewirable").any(rewirable::UNDER_THE_COVER, seen);
    for (answer, code) in [
        ("wrong-terminal", "plug-wired-wrong"),
        ("grip-on-cores", "cord-grip-on-cores"),
        ("stray-strand", "strand-outside-terminal"),
    ] {
        opened(&[answer]).expect_break(code, Danger);
        opened(&[]).expect(code, Conforms);
        Bench::lead(HandTools).expect(code, NotExamined);
        Bench::lead(HandTools).one(facts::PLUG_MAKE, "moulded").expect(code, NotApplicable);
    }
}

#[test]
fn a_fuse_without_a_number_leaves_its_rating_to_be_known() {
    let reason = fused("not-printed").finding("fuse-above-rating").map(|finding| finding.judgement.reason);
    assert_eq!(reason, Some(Reason::Needs(Needed::FuseRating)));
}

#[test]
fn every_question_check_and_answer_of_the_plug_has_words() {
    for question in check::plug::QUESTIONS {
        let found = words::question::of(question);
        let codes: Vec<_> = found.answers.iter().map(|answer| answer.code).collect();
        assert_eq!((found.id, codes.as_slice()), (question.id, question.answers()));
        let needs_sentence = !matches!(question.ask, Ask::One(_));
        assert_eq!(needs_sentence, !found.says.is_empty(), "sentence of {}", question.id);
        assert!(found.asks.chars().count() < 60, "{}", question.id);
        assert!(found.answers.iter().all(|answer| answer.answer.chars().count() < 45), "answers of {}", question.id);
    }
    for check in check::plug::CHECKS {
        assert_eq!(words::check::of(check.code).code, check.code);
    }
}
