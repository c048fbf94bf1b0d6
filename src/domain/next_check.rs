//! Look next: the checks that would do most for the verdict now.

use super::check::{self, Check, Prospect};
use super::experience::{Experience, Tried};
use super::facts;
use super::finding::{Conformity, Finding, Severity};
use super::order::greatest_first;
use super::question::{Ask, Question, Stage, Target};
use super::standard::Provenance;
use super::view::View;
use super::walk;

/// A check worth making, with the numbers that rank it.
#[derive(Debug, Clone, PartialEq)]
pub struct NextCheck {
    /// The check.
    pub code: &'static str,
    /// The question to answer for it.
    pub question: &'static str,
    /// Which one of several.
    pub target: Target,
    /// Chance, from 0 to 1, that it breaks: a stated default of usual practice, moved by the samples on this device.
    pub chance: f64,
    /// What those samples have shown.
    pub tried: Tried,
    /// How much a break weighs.
    pub weight: f64,
    /// Chance, from 0 to 1, that looking settles it.
    pub tells: f64,
    /// Minutes it takes.
    pub minutes: f64,
}

impl NextCheck {
    /// What ranks it: chance that it breaks × weight × chance that it tells ÷ minutes.
    pub fn worth(&self) -> f64 {
        self.chance * self.weight * self.tells / self.minutes
    }

    /// The same check in the light of what other samples have taught.
    #[must_use]
    pub fn after(self, experience: &Experience) -> Self {
        Self { chance: experience.chance(self.code, self.chance), tried: experience.tried(self.code), ..self }
    }
}

/// What is not settled and can be looked at with what is at hand, the worthiest first, by the stated defaults alone.
pub fn ranked(view: &View, findings: &[Finding]) -> Vec<NextCheck> {
    let unanswered = walk::unanswered(view);
    let open = findings.iter().filter(|f| f.outcome() == Conformity::NotExamined);
    in_order(open.filter_map(|f| candidate(check::by_code(f.code)?, &unanswered)).collect())
}

/// The same, in the light of what other samples have taught.
pub fn learned(next: &[NextCheck], experience: &Experience) -> Vec<NextCheck> {
    in_order(next.iter().map(|next| next.clone().after(experience)).collect())
}

fn in_order(next: Vec<NextCheck>) -> Vec<NextCheck> {
    greatest_first(next, NextCheck::worth)
}

/// A reading that is held against a number from memory seldom settles anything: it breaks only far outside. Stated defaults, usual practice.
fn chance_that_it_tells(check: &Check) -> f64 {
    let is_measured = check.asks.first().is_some_and(|question| matches!(question.ask, Ask::Measure { .. }));
    let is_recalled = check.against.first().is_some_and(|clause| {
        matches!(clause.provenance, Provenance::MemoryHigh | Provenance::MemoryMedium | Provenance::MemoryLow)
    });
    if is_measured && is_recalled { 0.2 } else { 0.9 }
}

fn candidate(check: &'static Check, unanswered: &[(&'static Question, Target)]) -> Option<NextCheck> {
    let informs = |question: &Question| check.asks.contains(&question);
    // What is only asked of a cut flex waits for the question whether it may be cut.
    let opens =
        |question: &Question| *question == *facts::MAY_CUT && check.asks.iter().any(|asked| asked.stage == Stage::Cut);
    let find = |wanted: &dyn Fn(&Question) -> bool| unanswered.iter().find(|(question, _)| wanted(question));
    let (question, target) = find(&informs).or_else(|| find(&opens))?;
    let weight = match check.severity {
        Severity::Danger => 10.0,
        Severity::Breach => 3.0,
        Severity::BadSign => 0.5,
    };
    let Prospect { minutes, percent } = check.prospect;
    Some(NextCheck {
        code: check.code,
        question: question.id,
        target: *target,
        chance: f64::from(percent) / 100.0,
        tried: Tried::default(),
        weight,
        tells: chance_that_it_tells(check),
        minutes,
    })
}
