//! The tables: every sample, every reading, every finding, a row each, for whoever reckons with them elsewhere.
//!
//! Heads of columns, codes and units are spelled as in a saved examination, in plain letters.

use super::csv::{Cell, row};
use super::{Seen, seller};
use crate::domain::check;
use crate::domain::decision::Probability;
use crate::domain::examination::{Answer, Answered};
use crate::domain::finding::{Bearing, Bound, Evidence, Finding, Severity};
use crate::domain::quantity::Amount;
use crate::domain::reading::{Reading, Shown};
use crate::record::spelling;
use crate::words::{self, clause};

/// A table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Table {
    /// A row a sample.
    Samples,
    /// A row a reading.
    Readings,
    /// A row a finding, those that nobody looked at included.
    Findings,
}

impl Table {
    /// Its first row: what stands in each column.
    pub fn head(self) -> String {
        let columns: &[&str] = match self {
            Self::Samples => &[
                "id",
                "number",
                "title",
                "kind",
                "market",
                "seller",
                "begun",
                "changed",
                "equipment",
                "verdict",
                "looked_at",
                "of",
                "dangers",
                "breaches",
                "known_good",
                "example",
            ],
            Self::Readings => &[
                "id",
                "number",
                "title",
                "question",
                "of",
                "shown",
                "value",
                "unit",
                "standard_uncertainty",
                "instrument",
                "own_instrument",
                "typed",
                "outcomes",
                "limits",
            ],
            Self::Findings => &[
                "id",
                "number",
                "title",
                "finding",
                "what",
                "place",
                "outcome",
                "severity",
                "basis",
                "decides",
                "probability",
                "against",
            ],
        };
        row(columns.iter().copied().map(Cell::text))
    }

    /// The rows of one sample.
    pub fn rows(self, seen: Seen) -> String {
        match self {
            Self::Samples => row(sample(seen)),
            Self::Readings => {
                seen.record.examination.answers.iter().filter_map(|answered| reading(seen, answered)).collect()
            }
            Self::Findings => seen.assessment.findings.iter().map(|found| finding(seen, found)).collect(),
        }
    }
}

/// A whole table of these samples.
pub fn csv(table: Table, all: &[Seen]) -> String {
    all.iter().fold(table.head(), |text, seen| text + &table.rows(*seen))
}

/// What tells one sample from another, first in every row.
fn named(seen: Seen) -> [Cell; 3] {
    let sample = &seen.record.examination.sample;
    [Cell::text(&seen.record.id), Cell::text(&sample.number), Cell::text(&sample.title)]
}

fn sample(seen: Seen) -> impl Iterator<Item = Cell> {
    let Seen { record, assessment } = seen;
    let sample = &record.examination.sample;
    let count = |severity| assessment.findings.iter().filter(|finding| finding.breaks(severity)).count();
    let rest = [
        Cell::text(sample.kind.code()),
        Cell::text(sample.market.code()),
        Cell::text(seller(record)),
        Cell::text(&record.begun),
        Cell::text(&record.changed),
        Cell::text(record.examination.equipment.code()),
        Cell::text(assessment.verdict.code()),
        whole(assessment.looked.made),
        whole(assessment.looked.of),
        whole(count(Severity::Danger)),
        whole(count(Severity::Breach)),
        flag(record.is_known_good),
        flag(record.is_example),
    ];
    named(seen).into_iter().chain(rest)
}

fn reading(seen: Seen, answered: &Answered) -> Option<String> {
    let Answer::Reading(reading) = &answered.answer else { return None };
    let (shown, value) = shown(reading);
    let (outcomes, limits) = resting_on(seen, answered);
    let u = reading.standard_uncertainty().and_then(|u| u.difference_in(reading.unit));
    let cells = [
        Cell::text(answered.question.id),
        of(answered),
        Cell::text(shown),
        Cell::number(value),
        Cell::text(spelling::of_unit(reading.unit)),
        Cell::number(u),
        Cell::text(reading.instrument.code()),
        reading.own.as_ref().map_or(Cell::Empty, |own| Cell::text(&own.name)),
        Cell::text(&reading.typed),
        Cell::text(outcomes.join("; ")),
        Cell::text(limits.join("; ")),
    ];
    Some(row(named(seen).into_iter().chain(cells)))
}

fn of(answered: &Answered) -> Cell {
    spelling::of_target(answered.target).map_or(Cell::Empty, Cell::Text)
}

fn shown(reading: &Reading) -> (&'static str, Option<f64>) {
    let number = |amount: Amount| amount.in_unit(reading.unit);
    match reading.shown {
        Shown::Value(value) => ("value", number(value)),
        Shown::Above(least) => ("above", number(least)),
        Shown::Below(most) => ("below", number(most)),
        Shown::Open => ("open", None),
    }
}

/// The outcomes that rest on a reading, and the limits that it was held against.
fn resting_on(seen: Seen, answered: &Answered) -> (Vec<String>, Vec<String>) {
    let (mut outcomes, mut limits) = (Vec::new(), Vec::new());
    let rests = |finding: &&Finding| finding.asks.contains(&answered.question) && check::was_made(finding.outcome());
    for finding in seen.assessment.findings.iter().filter(rests) {
        let is_of = |evidence: &&Evidence| {
            evidence.target == answered.target && evidence.question.is_none_or(|question| question == answered.question)
        };
        let evidence: Vec<&Evidence> = finding.judgement.evidence.iter().filter(is_of).collect();
        if evidence.is_empty() {
            outcomes.push(format!("{}: {}", finding.code, finding.outcome().code()));
        }
        for evidence in evidence {
            outcomes.push(format!("{}: {}", finding.code, evidence.outcome.code()));
            limits.push(format!("{}: {}", finding.code, limit(&evidence.limit)));
        }
    }
    (outcomes, limits)
}

fn limit(bound: &Bound) -> String {
    let stated = |amount: &Amount| {
        let unit = spelling::stated_in(amount.kind());
        (
            words::number::number(amount.in_unit(unit).unwrap_or_default()).replace('\u{2212}', "-"),
            spelling::of_unit(unit),
        )
    };
    match bound {
        Bound::AtLeast(low) => {
            let (low, unit) = stated(low);
            format!("at least {low} {unit}")
        }
        Bound::AtMost(high) => {
            let (high, unit) = stated(high);
            format!("at most {high} {unit}")
        }
        Bound::Between(low, high) => {
            let ((low, _), (high, unit)) = (stated(low), stated(high));
            format!("{low} to {high} {unit}")
        }
    }
}

fn finding(seen: Seen, finding: &Finding) -> String {
    let judgement = &finding.judgement;
    let was_made = check::was_made(judgement.outcome);
    let against: Vec<String> = finding.against.iter().map(clause::citation).collect();
    let cells = [
        Cell::text(finding.code),
        Cell::text(words::check::of(finding.code).wrong),
        Cell::text(finding.place.code()),
        Cell::text(judgement.outcome.code()),
        Cell::text(judgement.severity.code()),
        if was_made { Cell::text(spelling::of_basis(judgement.basis)) } else { Cell::Empty },
        flag(judgement.bearing == Bearing::Decides),
        Cell::number(finding.probability().map(Probability::value)),
        Cell::text(against.join("; ")),
    ];
    row(named(seen).into_iter().chain(cells))
}

fn whole(number: usize) -> Cell {
    Cell::number(u32::try_from(number).ok().map(f64::from))
}

fn flag(holds: bool) -> Cell {
    Cell::text(if holds { "true" } else { "false" })
}
