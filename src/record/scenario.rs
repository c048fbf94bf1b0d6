//! Scenarios of harm, to and from their saved form.

use super::entry::{bounded, not_true};
use super::entry_fault::EntryFault;
use super::fault::{RecordFault, Said};
use super::number::Number;
use super::{MOST_EVENTS, MOST_SCENARIOS, v1};
use crate::domain::check;
use crate::domain::decision::Probability;
use crate::domain::risk::{Scenario, Standing, Step};
use crate::domain::standard::eu_risk::Injury;

/// The saved form of a scenario.
pub fn to_v1(scenario: &Scenario) -> v1::Scenario {
    v1::Scenario {
        title: scenario.title.clone(),
        events: scenario.steps.iter().map(event_to_v1).collect(),
        injury: scenario.injury.code().to_owned(),
        injury_reason: scenario.injury_reason.clone(),
        injury_guess: guess(scenario.injury_standing),
        of: scenario.of.iter().copied().map(str::to_owned).collect(),
    }
}

fn event_to_v1(step: &Step) -> v1::Event {
    v1::Event {
        happens: step.happens.clone(),
        probability: Number::new(step.probability.value()),
        reason: step.reason.clone(),
        guess: guess(step.standing),
    }
}

fn guess(standing: Standing) -> Option<bool> {
    (standing == Standing::Guess).then_some(true)
}

/// The scenarios that their saved forms stand for.
pub fn all_from_v1(forms: Vec<v1::Scenario>) -> Result<Vec<Scenario>, RecordFault> {
    if forms.len() > MOST_SCENARIOS {
        return Err(RecordFault::TooManyScenarios);
    }
    (1..).zip(forms).map(|(number, form)| from_v1(number, form)).collect()
}

fn from_v1(number: usize, form: v1::Scenario) -> Result<Scenario, RecordFault> {
    let at = |fault| RecordFault::Scenario { number, fault };
    if form.events.len() > MOST_EVENTS {
        return Err(at(EntryFault::TooManyEvents));
    }
    let event = |(event, form)| event_from_v1(form).map_err(|fault| RecordFault::Event { number, event, fault });
    Ok(Scenario {
        title: bounded("title", form.title).map_err(at)?,
        steps: (1..).zip(form.events).map(event).collect::<Result<_, _>>()?,
        injury: injury(&form.injury).map_err(at)?,
        injury_reason: bounded("injury_reason", form.injury_reason).map_err(at)?,
        injury_standing: standing("injury_guess", form.injury_guess).map_err(at)?,
        of: checks(&form.of).map_err(at)?,
    })
}

fn event_from_v1(form: v1::Event) -> Result<Step, EntryFault> {
    Ok(Step {
        happens: bounded("happens", form.happens)?,
        probability: probability(&form.probability)?,
        reason: bounded("reason", form.reason)?,
        standing: standing("guess", form.guess)?,
    })
}

fn probability(number: &Number) -> Result<Probability, EntryFault> {
    let is_chance = |value: &f64| *value > 0.0 && *value <= 1.0;
    let takes = "a number above 0 and no more than 1";
    let fault = || EntryFault::Field { field: "probability", takes, got: Said::from(number.text()) };
    number.value().filter(is_chance).map(Probability::new).ok_or_else(fault)
}

fn standing(field: &'static str, guess: Option<bool>) -> Result<Standing, EntryFault> {
    match guess {
        Some(true) => Ok(Standing::Guess),
        Some(false) => Err(not_true(field)),
        None => Ok(Standing::Weighed),
    }
}

fn injury(said: &str) -> Result<Injury, EntryFault> {
    let takes = "first-aid, hospital-visit, hospital-stay or fatal";
    let fault = || EntryFault::Field { field: "injury", takes, got: Said::from(said) };
    Injury::ALL.into_iter().find(|injury| injury.code() == said).ok_or_else(fault)
}

fn checks(codes: &[String]) -> Result<Vec<&'static str>, EntryFault> {
    let mut known = Vec::new();
    for code in codes {
        let unknown = || EntryFault::UnknownCheck { check: Said::from(code.as_str()) };
        let check = check::by_code(code).ok_or_else(unknown)?.code;
        if known.contains(&check) {
            return Err(EntryFault::CheckTwice { check });
        }
        known.push(check);
    }
    Ok(known)
}
