//! The walk: what is asked when, what a missing tool sets aside, and what no longer counts once a door is shut.

use std::collections::BTreeMap;

use plugwary::domain::assess::{RuleBook, assess};
use plugwary::domain::check::cable::copper::cross_check::READINGS_INCONSISTENT;
use plugwary::domain::check::inside::{damage, opening};
use plugwary::domain::check::live::{competence, in_use};
use plugwary::domain::check::plug::{fuse, pin_size};
use plugwary::domain::check::{self, cable::copper::metal};
use plugwary::domain::examination::Answer;
use plugwary::domain::facts;
use plugwary::domain::finding::{Conformity, Severity};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::Unit;
use plugwary::domain::question::{Core, Question, Stage, Target};
use plugwary::domain::sample::Equipment;
use plugwary::domain::view::View;
use plugwary::domain::walk;

use crate::bench::Bench;

fn asked(bench: &Bench) -> Vec<&'static Question> {
    walk::asked(&View::new(&bench.0)).into_iter().map(|(question, _)| question).collect()
}

fn ids(bench: &Bench) -> Vec<&'static str> {
    asked(bench).into_iter().map(|question| question.id).collect()
}

#[track_caller]
fn position(ids: &[&str], id: &str) -> usize {
    ids.iter().position(|asked| *asked == id).expect(id)
}

/// Whoever has seen a fuse without any print has seen that it names no amperes. What that breaks or leaves open is the same as if asked.
#[test]
fn amperes_of_a_fuse_without_print_are_not_asked_for() {
    let open = |bench: &Bench| {
        let open = walk::unanswered(&View::new(&bench.0));
        open.into_iter().any(|(question, _)| question == facts::FUSE_RATING)
    };
    let printed = Bench::lead(Equipment::Eyes).one(fuse::IN_THE_HOLDER, "marked-bs-1362");
    assert!(open(&printed));
    let blank = Bench::lead(Equipment::Eyes).one(fuse::IN_THE_HOLDER, "unmarked");
    assert!(!open(&blank));
    let outcomes = |bench: &Bench| {
        let findings = assess(&bench.0, &RuleBook::CURRENT).findings;
        findings.into_iter().map(|finding| (finding.code, finding.judgement.outcome)).collect::<BTreeMap<_, _>>()
    };
    assert_eq!(outcomes(&blank), outcomes(&blank.clone().one(facts::FUSE_RATING, "not-printed")));
}

#[test]
fn flex_is_cut_last_and_only_where_it_may_be() {
    let whole = Bench::lead(Equipment::Meters).one(opening::OPENED, "opened");
    let before = ids(&whole);
    assert!(!before.contains(&"core-resistance") && !before.contains(&"core-scrape"), "{before:?}");
    assert!(position(&before, "may-cut") > position(&before, "live-competent"), "a cut sample cannot be energised");
    let cut = ids(&whole.clone().one(facts::MAY_CUT, "yes"));
    assert!(position(&cut, "core-resistance") > position(&cut, "may-cut"));
    assert!(position(&cut, "core-resistance") > position(&cut, "joints"), "joints are photographed before");
    let kept_whole = whole.one(facts::MAY_CUT, "no");
    assert_eq!(ids(&kept_whole), before);
    kept_whole.expect("core-resistance-high", Conformity::NotExamined);
}

#[test]
fn colours_of_the_cores_are_asked_where_they_come_to_light() {
    let shut = Bench::lead(Equipment::Meters).one(opening::OPENED, "stays-closed");
    assert!(!ids(&shut).contains(&"earth-colour"));
    assert!(ids(&shut.clone().one(facts::MAY_CUT, "yes")).contains(&"earth-colour"));
    assert!(ids(&Bench::lead(Equipment::Meters).one(opening::OPENED, "opened")).contains(&"earth-colour"));
}

#[test]
fn what_informs_bad_signs_only_comes_at_the_end() {
    for question in check::questions() {
        let gravest = check::all().filter(|check| check.asks.contains(&question)).map(|check| check.severity).max();
        let is_mere_hint = gravest == Some(Severity::BadSign);
        // The cross-checks of the cores belong to their readings, and the lamp to the live part: neither can wait.
        let of_readings = READINGS_INCONSISTENT.asks.contains(&question);
        let cannot_wait = of_readings || question.id == "indicator";
        assert_eq!(question.stage == Stage::Lesser, is_mere_hint && !cannot_wait, "{}", question.id);
    }
    for equipment in Equipment::ALL {
        let stages: Vec<Stage> = asked(&Bench::lead(equipment)).iter().map(|question| question.stage).collect();
        assert!(stages.is_sorted(), "{stages:?}");
        assert_eq!(stages.last(), Some(&Stage::Lesser));
    }
}

#[test]
fn progress_counts_what_may_decide() {
    let bench = Bench::lead(Equipment::Eyes);
    let lesser = asked(&bench).iter().filter(|question| question.stage == Stage::Lesser).count();
    let of = asked(&bench).len() - lesser;
    assert_eq!(walk::progress(&View::new(&bench.0)), (0, of));
    let one = bench.clone().answer(facts::PLUG_PATTERN, Target::Sample, Answer::CannotTell);
    assert_eq!(walk::progress(&View::new(&one.0)), (1, of));
    let put_off = bench.answer(facts::PLUG_PATTERN, Target::Sample, Answer::Later);
    assert_eq!(walk::progress(&View::new(&put_off.0)), (0, of));
}

#[test]
fn missing_calliper_sets_aside_what_only_a_calliper_measures() {
    let bench = Bench::lead(Equipment::HandTools);
    let aside = walk::wanting_the_same_tool(&View::new(&bench.0), pin_size::LIVE_WIDTH);
    let aside: Vec<&str> = aside.into_iter().map(|(question, _)| question.id).collect();
    assert!(aside.contains(&"live-pin-width") && aside.contains(&"pin-thickness") && aside.contains(&"fuse-length"));
    assert!(!aside.contains(&"flex-diameter"), "a ruler does for it");
    assert!(!aside.contains(&"fuse-mass") && !aside.contains(&"magnet-on-pins"));
}

#[test]
fn missing_magnet_sets_aside_nothing_but_its_question() {
    let bench = Bench::lead(Equipment::Meters).one(facts::MAY_CUT, "yes");
    let aside = walk::wanting_the_same_tool(&View::new(&bench.0), metal::MAGNET);
    assert_eq!(aside, [(metal::MAGNET, Target::Sample)]);
}

#[test]
fn missing_tool_is_nobody_looking_and_no_doubt() {
    let bench = Bench::lead(Equipment::HandTools);
    let without = bench.answer(pin_size::LIVE_WIDTH, Target::Sample, Answer::NoTool);
    without.expect("pin-width-off", Conformity::NotExamined);
    assert!(!walk::unanswered(&View::new(&without.0)).iter().any(|(question, _)| question.id == "live-pin-width"));
}

#[test]
fn nothing_seen_inside_counts_for_a_body_that_stays_closed() {
    let bench = Bench::lead(Equipment::Meters).any(damage::SEEN_INSIDE, &[]);
    bench.clone().one(opening::OPENED, "opened").expect("scorched-inside", Conformity::Conforms);
    bench.one(opening::OPENED, "stays-closed").expect("scorched-inside", Conformity::NotExamined);
    let scorched = Bench::lead(Equipment::Meters).any(damage::SEEN_INSIDE, &["scorched"]);
    scorched.one(opening::OPENED, "stays-closed").expect("scorched-inside", Conformity::Nonconforming);
}

#[test]
fn live_reading_in_order_counts_only_where_all_was_made_sure_of() {
    let reads = |milliamperes| {
        let reading = (milliamperes, 0.001, Unit::Milliampere);
        Bench::lead(Equipment::Meters).reads(in_use::TOUCH_CURRENT, Target::Sample, reading, Instrument::LeakageMeter)
    };
    let all = competence::LIVE_COMPETENT.answers();
    reads(0.01).any(competence::LIVE_COMPETENT, all).expect("leakage-high", Conformity::Conforms);
    reads(0.01).expect("leakage-high", Conformity::NotExamined);
    reads(0.01).any(competence::LIVE_COMPETENT, &["competent", "rcd"]).expect("leakage-high", Conformity::NotExamined);
    reads(9.0).expect("leakage-high", Conformity::Nonconforming);
}

#[test]
fn cores_are_read_one_by_one() {
    let cut = Bench::lead(Equipment::Meters).one(facts::MAY_CUT, "yes");
    let cores = walk::asked(&View::new(&cut.0)).into_iter().filter(|(question, _)| *question == facts::CORE_RESISTANCE);
    let cores: Vec<Target> = cores.map(|(_, target)| target).collect();
    assert_eq!(cores, Core::ALL.map(Target::Core));
}
