//! How grave it is, in words: levels, severities, bands, every draft in full, and what a level hangs on.

use core::fmt::Write as _;

use plugwary::domain::decision::Probability;
use plugwary::domain::risk::draft::{Draft, FAMILIES};
use plugwary::domain::risk::{Scenario, Standing};
use plugwary::domain::sample::Market;
use plugwary::domain::standard::eu_risk::{Band, Injury, RiskLevel};
use plugwary::words::risk::{self, draft};

use crate::accepted;

fn line(told: &mut String, text: &str) {
    writeln!(told, "{text}").expect("a text takes any line");
}

#[test]
fn levels_severities_and_bands_read_as_accepted() {
    let mut told = String::new();
    for level in [RiskLevel::Low, RiskLevel::Medium, RiskLevel::High, RiskLevel::Serious] {
        line(&mut told, &format!("{}: {}", risk::level(level), risk::asks_for(level)));
    }
    for injury in Injury::ALL {
        line(&mut told, risk::severity(injury));
    }
    for band in Band::ALL {
        line(&mut told, risk::band(band));
    }
    for market in Market::ALL {
        line(&mut told, &risk::method(market));
    }
    accepted("risk-scales", &told);
}

fn drafts() -> impl Iterator<Item = Scenario> {
    FAMILIES.iter().map(|family| {
        let of = family.checks.to_vec();
        draft::in_words(&Draft { code: family.code, steps: family.steps, injury: family.injury, of })
    })
}

#[test]
fn every_draft_reads_as_accepted() {
    let mut told = String::new();
    for scenario in drafts() {
        line(&mut told, &risk::title(&scenario));
        for (place, step) in (0..).zip(&scenario.steps) {
            line(&mut told, &format!("  {}", risk::event(place, step)));
        }
        for said in [risk::product(&scenario), risk::injury_and_why(&scenario), risk::position(&scenario)] {
            line(&mut told, &format!("  {said}"));
        }
    }
    accepted("risk-drafts", &told);
}

/// The folding chair of 2019/417, weighed: 1 × 1/50 × 1/10 × 1, a pinched finger.
fn chair() -> Scenario {
    let mut chair = drafts().next().expect("there are drafts");
    "A finger is pinched".clone_into(&mut chair.title);
    chair.injury = Injury::FirstAid;
    chair.injury_standing = Standing::Weighed;
    "A pinched finger needs first aid.".clone_into(&mut chair.injury_reason);
    let events = [
        ("Somebody sits down", 1.0),
        ("the chair shifts", 0.02),
        ("a finger is in the gap", 0.1),
        ("it is pinched", 1.0),
    ];
    chair.steps.truncate(events.len());
    for (step, (happens, chance)) in chair.steps.iter_mut().zip(events) {
        happens.clone_into(&mut step.happens);
        step.probability = Probability::new(chance);
        step.reason.clear();
        step.standing = Standing::Weighed;
    }
    chair
}

#[test]
fn a_weighed_scenario_says_what_it_hangs_on() {
    let chair = chair();
    assert_eq!(risk::standing(&chair), "Weighed by the examiner.");
    assert_eq!(
        risk::product(&chair),
        "All of them together: certain × 1 in 50 × 1 in 10 × certain = 1 in 500, in the life of the product."
    );
    assert_eq!(
        risk::position(&chair),
        "In the matrix: a chance of more than 1 in 1000, up to 1 in 100, and severity 1 of 4. The risk is low."
    );
    assert_eq!(
        risk::hangs_on(&chair),
        [
            "If one of “the chair shifts”, “a finger is in the gap” were ten times as likely, the risk would be medium instead of low.",
            "If the injury were one severity worse, the risk would be high instead of low.",
        ]
    );
    assert_eq!(risk::event(1, &chair.steps[1]), "Then: the chair shifts (1 in 50). No reason is given.");
}

#[test]
fn what_is_still_a_guess_is_counted_and_said() {
    let mut scenario = drafts().next().expect("there are drafts");
    assert_eq!(risk::standing(&scenario), "Draft: nobody has weighed it yet.");
    assert!(scenario.steps.iter().all(|step| risk::event(0, step).contains("our starting guess")));
    scenario.steps[0].standing = Standing::Weighed;
    assert_eq!(risk::standing(&scenario), "Weighed in part: 5 of its 6 judgements are still our starting guesses.");
    assert!(!risk::event(0, &scenario.steps[0]).contains("our starting guess"));
    scenario.steps.iter_mut().for_each(|step| step.standing = Standing::Weighed);
    assert_eq!(risk::standing(&scenario), "Weighed in part: 1 of its 6 judgements is still our starting guess.");
}

#[test]
fn one_guess_that_a_level_hangs_on_is_named() {
    let mut scenario = chair();
    scenario.steps.truncate(2);
    scenario.injury = Injury::Fatal;
    scenario.steps[0].probability = Probability::new(0.5);
    scenario.steps[1].probability = Probability::new(0.000_5);
    // 1 in 4000, over 1/10 000, and death: serious; ten times rarer, high.
    let said = "If any one of these events were ten times less likely, the risk would be high instead of serious.";
    assert_eq!(risk::hangs_on(&scenario).first().map(String::as_str), Some(said));
    scenario.steps.remove(0);
    scenario.steps[0].probability = Probability::new(1.0);
    assert_eq!(risk::hangs_on(&scenario), [risk::hangs_on(&scenario)[0].as_str()]);
    assert!(risk::hangs_on(&scenario)[0].starts_with("The level hangs on no single judgement"));
}
