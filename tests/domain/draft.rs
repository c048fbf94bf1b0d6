//! Drafts of scenarios: each danger has one, its guesses are round, and none of it touches the verdict.

use std::collections::BTreeSet;

use plugwary::domain::assess::{RuleBook, assess};
use plugwary::domain::check;
use plugwary::domain::decision::Probability;
use plugwary::domain::finding::Severity;
use plugwary::domain::question::Question;
use plugwary::domain::risk::draft::{self, FAMILIES};
use plugwary::domain::risk::{Standing, highest};
use plugwary::domain::sample::Equipment;
use plugwary::domain::standard::eu_risk::RiskLevel;
use plugwary::words::risk::draft::{drafts, in_words, worded};

use crate::bench::Bench;

#[test]
fn every_danger_that_a_check_can_find_has_a_draft() {
    for check in check::all().filter(|check| check.severity == Severity::Danger) {
        assert!(draft::family(check.code).is_some(), "{}", check.code);
    }
}

#[test]
fn a_draft_is_for_dangers_and_each_stands_in_one_only() {
    let mut seen = BTreeSet::new();
    for family in FAMILIES {
        for code in family.checks {
            let severity = check::by_code(code).map(|check| check.severity);
            assert_eq!(severity, Some(Severity::Danger), "{code}");
            assert!(seen.insert(code), "{code} stands twice");
        }
    }
}

#[test]
fn a_chain_has_two_to_five_events_with_round_guesses() {
    for family in FAMILIES {
        assert!((2..=5).contains(&family.steps.len()), "{}", family.code);
        for step in family.steps {
            let one_in = (1.0 / step.probability().value()).round();
            assert!([1.0, 2.0, 10.0, 100.0, 1000.0].contains(&one_in), "{}: 1 in {one_in}", step.code);
        }
    }
}

#[test]
fn the_same_event_has_the_same_guess_everywhere() {
    let steps: Vec<_> = FAMILIES.iter().flat_map(|family| family.steps).collect();
    for step in &steps {
        assert!(steps.iter().all(|other| other.code != step.code || other == step), "{}", step.code);
    }
}

#[test]
fn every_event_and_family_has_words_with_a_reason_and_nothing_else_has() {
    for family in FAMILIES {
        let draft = draft::Draft { code: family.code, steps: family.steps, injury: family.injury, of: Vec::new() };
        let scenario = in_words(&draft);
        let is_name = |text: &str| !text.is_empty() && !text.ends_with('.');
        assert!(is_name(&scenario.title) && scenario.injury_reason.ends_with('.'), "{}", family.code);
        for (step, guess) in scenario.steps.iter().zip(family.steps) {
            assert!(is_name(&step.happens) && step.reason.ends_with('.'), "{}", guess.code);
            assert_eq!(step.standing, Standing::Guess);
        }
    }
    let (events, families) = worded();
    let known: BTreeSet<_> = FAMILIES.iter().flat_map(|family| family.steps).map(|step| step.code).collect();
    assert_eq!(events.collect::<BTreeSet<_>>(), known);
    let codes: BTreeSet<_> = FAMILIES.iter().map(|family| family.code).collect();
    assert_eq!(families.collect::<BTreeSet<_>>(), codes);
}

/// A lead whose fuse holder is empty, or has something in it.
fn lead(holder: &str) -> Bench {
    Bench::lead(Equipment::Eyes).one(question("fuse-in-the-holder"), holder)
}

fn question(id: &str) -> &'static Question {
    check::question(id).expect("the question is asked")
}

#[test]
fn dangers_of_a_family_share_a_draft_and_what_is_none_has_none() {
    assert_eq!(drafts(&lead("marked-bs-1362").assessed()), []);
    let bench = lead("empty").any(question("socket-holes"), &["other-plugs-fit", "two-holes"]);
    let of: Vec<_> = drafts(&bench.assessed()).into_iter().map(|draft| draft.of).collect();
    assert_eq!(
        of,
        [vec!["socket-takes-foreign-plugs", "socket-two-pin", "socket-without-earth"], vec!["fuse-missing"]]
    );
}

/// Worked by hand: 1/2 × 1/10 × 1/10 × 1/10 × 1/2 = 1/4000, over 1/10 000, and death: serious.
#[test]
fn a_lead_without_a_fuse_is_drafted_as_a_serious_risk() {
    let drafts = drafts(&lead("empty").assessed());
    let counts = highest(&drafts).expect("a danger has a draft");
    assert!((counts.probability().value() - 1.0 / 4000.0).abs() < 1e-12);
    assert_eq!(counts.level(), RiskLevel::Serious);
}

#[test]
fn a_scenario_of_nothing_that_is_wrong_counts_for_nothing() {
    let wrong = lead("empty").assessed();
    let mut scenario = drafts(&wrong).remove(0);
    assert!(scenario.counts(&wrong.findings));
    assert!(!scenario.counts(&lead("marked-bs-1362").assessed().findings));
    scenario.of.clear();
    assert!(!scenario.counts(&wrong.findings));
}

#[test]
fn a_grade_never_changes_the_verdict() {
    let bench = lead("empty");
    let before = bench.assessed();
    let mut scenario = drafts(&before).remove(0);
    scenario.steps[0].probability = Probability::new(1e-9);
    let line = |scenarios| {
        let mut record = plugwary::words::mark::blank();
        record.examination = bench.0.clone();
        record.scenarios = scenarios;
        assert_eq!(assess(&record.examination, &RuleBook::CURRENT), before);
        plugwary::record::judged_line(&record)
    };
    assert_eq!(line(vec![scenario]), line(Vec::new()));
}
