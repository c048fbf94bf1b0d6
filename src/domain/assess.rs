//! The single door in: from an examination to everything that can be said of it. Total and pure.

use super::check;
use super::essential::is_essential;
use super::examination::Examination;
use super::finding::{Basis, Bearing, Conformity, Finding, Severity};
use super::next_check::{self, NextCheck};
use super::order::greatest_first;
use super::sample::{Equipment, Place};
use super::verdict::Verdict;
use super::view::View;

/// The rules that judge, as one edition.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct RuleBook {
    /// The edition, `year-month` and a letter where a month has several.
    pub edition: &'static str,
}

impl RuleBook {
    /// Today's edition.
    pub const CURRENT: Self = Self { edition: "2026-11" };
}

/// Everything that can be said of an examination.
#[derive(Debug, Clone, PartialEq)]
pub struct Assessment {
    /// The edition of the rule book that judged.
    pub edition: &'static str,
    /// What it all amounts to.
    pub verdict: Verdict,
    /// Every check that applies, the weightiest first.
    pub findings: Vec<Finding>,
    /// How many of how many were looked at.
    pub looked: Tally,
    /// The same by place, in the order of the walk; places with nothing to look at are left out.
    pub looked_at: Vec<(Place, Tally)>,
    /// Dangers that nobody looked for, or that only print speaks of.
    pub dangers_not_tested: Vec<&'static str>,
    /// Whether earth, polarity and copper were left untested, so that "nothing wrong" is said of the outside only.
    pub outside_only: bool,
    /// The danger that forbids energising, if one does.
    pub live_withdrawn_by: Option<&'static str>,
    /// What would do most for the verdict now, best first.
    pub next: Vec<NextCheck>,
}

/// How many of how many.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Tally {
    /// Checks that were made.
    pub made: usize,
    /// Checks that there are for this sample, whatever is at hand.
    pub of: usize,
}

impl Assessment {
    /// How many of the checks that can be made with `equipment` were made, by place; places that have none are left out. What was made
    /// with more than that counts too.
    pub fn within_reach(&self, equipment: Equipment) -> Vec<(Place, Tally)> {
        let can_be = |f: &Finding| check::by_code(f.code).is_some_and(|check| check.needs <= equipment);
        let is_in_reach = |f: &&Finding| can_be(f) || check::was_made(f.outcome());
        let at = |place| tally(self.findings.iter().filter(|f| f.place == place).filter(is_in_reach));
        Place::ALL.into_iter().map(|place| (place, at(place))).filter(|(_, tally)| tally.of > 0).collect()
    }
}

/// Judges an examination.
pub fn assess(examination: &Examination, book: &RuleBook) -> Assessment {
    let view = View::new(examination);
    let findings: Vec<Finding> = check::all()
        .map(|check| check.finding(&view))
        .filter(|finding| finding.outcome() != Conformity::NotApplicable)
        .collect();
    let next = next_check::ranked(&view, &findings);
    let findings = greatest_first(findings, weight);
    let places = Place::ALL.into_iter().map(|place| (place, tally(findings.iter().filter(|f| f.place == place))));
    Assessment {
        edition: book.edition,
        verdict: Verdict::of(&findings, |code| is_essential(code, examination.equipment)),
        looked: tally(findings.iter()),
        looked_at: places.filter(|(_, tally)| tally.of > 0).collect(),
        dangers_not_tested: findings.iter().filter(|f| is_untested_danger(f)).map(|f| f.code).collect(),
        outside_only: view.needs_earth() && examination.equipment < Equipment::Meters,
        live_withdrawn_by: findings
            .iter()
            .find(|f| f.place != Place::Live && f.breaks(Severity::Danger))
            .map(|f| f.code),
        next,
        findings,
    }
}

/// Breaks before doubts before the rest, dangers first in each, and the order of the walk among equals.
fn weight(finding: &Finding) -> f64 {
    let judgement = &finding.judgement;
    let outcome = match judgement.outcome {
        Conformity::Nonconforming => 40.0,
        Conformity::Inconclusive => 30.0,
        Conformity::NotExamined => 20.0,
        Conformity::NotApplicable => 10.0,
        Conformity::Conforms => 0.0,
    };
    let severity = match judgement.severity {
        Severity::Danger => 4.0,
        Severity::Breach => 2.0,
        Severity::BadSign => 0.0,
    };
    outcome + severity + f64::from(u8::from(judgement.bearing == Bearing::Decides))
}

fn tally<'a>(findings: impl Iterator<Item = &'a Finding>) -> Tally {
    findings.fold(Tally::default(), |tally, finding| Tally {
        made: tally.made + usize::from(check::was_made(finding.outcome())),
        of: tally.of + 1,
    })
}

fn is_untested_danger(finding: &Finding) -> bool {
    let judgement = &finding.judgement;
    judgement.severity == Severity::Danger
        && match judgement.outcome {
            Conformity::NotExamined => true,
            Conformity::Conforms => judgement.basis == Basis::Print,
            Conformity::Inconclusive | Conformity::Nonconforming | Conformity::NotApplicable => false,
        }
}
