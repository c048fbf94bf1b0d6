//! How grave a fault is for people: a chain of events, how likely each is, and the injury at its end, after the European Union's method.
//!
//! Source: `standard::eu_risk`. The probabilities of a chain are somebody's judgement; nothing is measured. Hence the sensitivity: a level
//! that hangs on one guess says so. It grades what is already known to be wrong, and neither finds a fault nor clears one; it never
//! touches the verdict. What the chains begin with is in [`draft`].

pub mod draft;

use super::decision::Probability;
use super::finding::{Finding, Severity};
use super::standard::eu_risk::{Band, Injury, RiskLevel, level};

/// What a factor is moved by to see whether the level hangs on it: the width of a band.
const ONE_BAND: f64 = 10.0;

/// Who answers for a judgement.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// Nobody yet: it is the guess that a draft begins with.
    Guess,
    /// The examiner, who wrote or confirmed it.
    Weighed,
}

/// One event on the way to an injury.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What happens, in somebody's words.
    pub happens: String,
    /// How likely it is in the lifetime of a product, once all earlier ones have happened.
    pub probability: Probability,
    /// Why it is taken to be so likely, in somebody's words.
    pub reason: String,
    /// Who answers for it.
    pub standing: Standing,
}

/// A way in which a fault hurts somebody.
#[derive(Debug, Clone, PartialEq)]
pub struct Scenario {
    /// What happens in the end, in somebody's words.
    pub title: String,
    /// The events, in order; with none the injury is certain.
    pub steps: Vec<Step>,
    /// The injury at the end.
    pub injury: Injury,
    /// Why it is taken to be so bad, in somebody's words.
    pub injury_reason: String,
    /// Who answers for the injury.
    pub injury_standing: Standing,
    /// The checks whose breaks it follows from, by code.
    pub of: Vec<&'static str>,
}

/// What a scenario's level may hang on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Factor {
    /// How likely one event is, by its place among them, from 0.
    Step(usize),
    /// How bad the injury is.
    Injury,
}

/// The level of risk with one factor moved.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sensitivity {
    /// What was moved.
    pub factor: Factor,
    /// The level with it ten times less likely, or one severity milder.
    pub milder: RiskLevel,
    /// The level with it ten times as likely, yet no more than certain, or one severity worse.
    pub graver: RiskLevel,
}

impl Sensitivity {
    /// Whether the level hangs on this factor.
    pub fn changes(&self) -> bool {
        self.milder != self.graver
    }
}

impl Scenario {
    /// How likely the injury is: all events must happen.
    pub fn probability(&self) -> Probability {
        Probability::new(self.steps.iter().map(|step| step.probability.value()).product())
    }

    /// The band that this probability lies in.
    pub fn band(&self) -> Band {
        Band::of(self.probability())
    }

    /// The level of risk.
    pub fn level(&self) -> RiskLevel {
        level(self.band(), self.injury)
    }

    /// The level with each factor moved by itself: the steps in order, then the injury.
    pub fn sensitivity(&self) -> Vec<Sensitivity> {
        let steps = (0..self.steps.len()).map(|place| Sensitivity {
            factor: Factor::Step(place),
            milder: self.with_step(place, 1.0 / ONE_BAND),
            graver: self.with_step(place, ONE_BAND),
        });
        let injury = Sensitivity {
            factor: Factor::Injury,
            milder: level(self.band(), milder(self.injury)),
            graver: level(self.band(), graver(self.injury)),
        };
        steps.chain([injury]).collect()
    }

    /// How many of its judgements, the injury among them, are still guesses that nobody has weighed.
    pub fn guesses(&self) -> usize {
        let standings = self.steps.iter().map(|step| step.standing).chain([self.injury_standing]);
        standings.filter(|standing| *standing == Standing::Guess).count()
    }

    /// Those of its checks that found something dangerous or against the rules.
    pub fn found_wrong(&self, findings: &[Finding]) -> Vec<&'static str> {
        let is_wrong = |f: &Finding| f.breaks(Severity::Danger) || f.breaks(Severity::Breach);
        let was_found = |code: &&'static str| findings.iter().any(|finding| finding.code == *code && is_wrong(finding));
        self.of.iter().copied().filter(was_found).collect()
    }

    /// Whether it speaks of something that was found wrong. Any other may be told, and counts for nothing: a bad sign is no fault, and
    /// what was found to be in order since is none either.
    pub fn counts(&self, findings: &[Finding]) -> bool {
        !self.found_wrong(findings).is_empty()
    }

    /// The level with one step so many times as likely.
    fn with_step(&self, place: usize, times: f64) -> RiskLevel {
        let moved = |(at, step): (usize, &Step)| {
            let times = if at == place { times } else { 1.0 };
            Probability::new(step.probability.value() * times).value()
        };
        let probability = Probability::new(self.steps.iter().enumerate().map(moved).product());
        level(Band::of(probability), self.injury)
    }
}

/// The scenario that counts: the one of the highest level, the likelier of equals; `None` without any.
pub fn highest<'a>(scenarios: impl IntoIterator<Item = &'a Scenario>) -> Option<&'a Scenario> {
    let by_weight = |one: &&Scenario, another: &&Scenario| {
        let likelier = one.probability().value().total_cmp(&another.probability().value());
        one.level().cmp(&another.level()).then(likelier)
    };
    scenarios.into_iter().max_by(by_weight)
}

/// One severity milder, or the mildest.
const fn milder(injury: Injury) -> Injury {
    match injury {
        Injury::FirstAid | Injury::HospitalVisit => Injury::FirstAid,
        Injury::HospitalStay => Injury::HospitalVisit,
        Injury::Fatal => Injury::HospitalStay,
    }
}

/// One severity worse, or the worst.
const fn graver(injury: Injury) -> Injury {
    match injury {
        Injury::FirstAid => Injury::HospitalVisit,
        Injury::HospitalVisit => Injury::HospitalStay,
        Injury::HospitalStay | Injury::Fatal => Injury::Fatal,
    }
}
