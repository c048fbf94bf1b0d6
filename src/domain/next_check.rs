//! Look next: the checks that would do most for the verdict now.

use super::check::{self, Check};
use super::facts;
use super::finding::{Conformity, Finding, Severity};
use super::question::{Question, Stage, Target};
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
    /// Chance in percent that a doubtful product breaks it (stated default, usual practice).
    pub percent: u8,
    /// Minutes it takes.
    pub minutes: f64,
    /// Chance × severity ÷ minutes.
    pub worth: f64,
}

/// What is not settled and can be looked at with what is at hand, by chance that it breaks × severity ÷ minutes.
pub fn ranked(view: &View, findings: &[Finding]) -> Vec<NextCheck> {
    let unanswered = walk::unanswered(view);
    let mut next: Vec<NextCheck> = findings
        .iter()
        .filter(|f| f.outcome() == Conformity::NotExamined)
        .filter_map(|f| candidate(check::by_code(f.code)?, &unanswered))
        .collect();
    next.sort_by(|a, b| b.worth.total_cmp(&a.worth));
    next
}

fn candidate(check: &'static Check, unanswered: &[(&'static Question, Target)]) -> Option<NextCheck> {
    let informs = |question: &Question| check.asks.contains(&question);
    // What is only asked of a cut flex waits for the question whether it may be cut.
    let opens =
        |question: &Question| *question == *facts::MAY_CUT && check.asks.iter().any(|asked| asked.stage == Stage::Cut);
    let find = |wanted: &dyn Fn(&Question) -> bool| unanswered.iter().find(|(question, _)| wanted(question));
    let (question, target) = find(&informs).or_else(|| find(&opens))?;
    let severity = match check.severity {
        Severity::Danger => 10.0,
        Severity::Breach => 3.0,
        Severity::BadSign => 0.5,
    };
    let prospect = check.prospect;
    Some(NextCheck {
        code: check.code,
        question: question.id,
        target: *target,
        percent: prospect.percent,
        minutes: prospect.minutes,
        worth: f64::from(prospect.percent) * severity / prospect.minutes,
    })
}
