//! The verdict on a record as one line of JSON, for machines and for holding two devices against each other.

use serde::Serialize;

use super::{Record, spelling};
use crate::domain::assess::{RuleBook, Tally, assess};
use crate::domain::finding::{Bearing, Bound, Conformity, Evidence, Finding};
use crate::domain::quantity::Amount;

/// How many of the checks that would do most are named.
const NEXT: usize = 5;

/// Judges a record by today's rule book and says so in one line of JSON, with no newline at its end.
///
/// Fields stand in a fixed order and numbers are cut to so many significant digits, so that the same record and rule book give
/// the same bytes on every device.
pub fn judged_line(record: &Record) -> String {
    line(&judged(record))
}

#[expect(clippy::expect_used, reason = "a verdict has nothing that JSON cannot hold")]
fn line(judged: &Judged) -> String {
    serde_json::to_string(judged).expect("texts, flags, lists and numbers are JSON")
}

#[derive(Serialize)]
struct Judged<'a> {
    id: &'a str,
    number: &'a str,
    rule_book: &'static str,
    verdict: &'static str,
    looked: Looked,
    outside_only: bool,
    findings: Vec<Found>,
    not_looked_at: Vec<&'static str>,
    dangers_not_tested: Vec<&'static str>,
    next: Vec<&'static str>,
}

#[derive(Serialize)]
struct Looked {
    made: usize,
    of: usize,
}

#[derive(Serialize)]
struct Found {
    code: &'static str,
    outcome: &'static str,
    severity: &'static str,
    basis: &'static str,
    decides: bool,
    probability: Option<f64>,
    evidence: Vec<Shown>,
}

#[derive(Serialize)]
struct Shown {
    #[serde(skip_serializing_if = "Option::is_none")]
    of: Option<String>,
    value: Option<f64>,
    u: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    at_least: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    at_most: Option<f64>,
    unit: &'static str,
    outcome: &'static str,
    probability: Option<f64>,
    in_its_favour: bool,
}

fn judged(record: &Record) -> Judged<'_> {
    let assessment = assess(&record.examination, &RuleBook::CURRENT);
    let (not_looked_at, looked_at): (Vec<_>, Vec<_>) =
        assessment.findings.iter().partition(|finding| finding.outcome() == Conformity::NotExamined);
    let Tally { made, of } = assessment.looked;
    Judged {
        id: &record.id,
        number: &record.examination.sample.number,
        rule_book: assessment.edition,
        verdict: assessment.verdict.code(),
        looked: Looked { made, of },
        outside_only: assessment.outside_only,
        findings: looked_at.into_iter().map(found).collect(),
        not_looked_at: not_looked_at.into_iter().map(|finding| finding.code).collect(),
        dangers_not_tested: assessment.dangers_not_tested,
        next: assessment.next.iter().take(NEXT).map(|next| next.code).collect(),
    }
}

fn found(finding: &Finding) -> Found {
    let judgement = &finding.judgement;
    Found {
        code: finding.code,
        outcome: judgement.outcome.code(),
        severity: judgement.severity.code(),
        basis: spelling::of_basis(judgement.basis),
        decides: judgement.bearing == Bearing::Decides,
        probability: finding.probability().and_then(|probability| cut(probability.value(), 4)),
        evidence: judgement.evidence.iter().map(shown).collect(),
    }
}

fn shown(evidence: &Evidence) -> Shown {
    let unit = spelling::stated_in(evidence.value.kind());
    let stated = |amount: Amount| amount.in_unit(unit).and_then(|number| cut(number, 6));
    let (at_least, at_most) = match evidence.limit {
        Bound::AtLeast(low) => (Some(low), None),
        Bound::AtMost(high) => (None, Some(high)),
        Bound::Between(low, high) => (Some(low), Some(high)),
    };
    Shown {
        of: spelling::of_target(evidence.target),
        value: stated(evidence.value),
        u: evidence.u.difference_in(unit).and_then(|number| cut(number, 4)),
        at_least: at_least.and_then(stated),
        at_most: at_most.and_then(stated),
        unit: spelling::of_unit(unit),
        outcome: evidence.outcome.code(),
        probability: cut(evidence.probability.value(), 4),
        in_its_favour: evidence.favour.holds,
    }
}

/// A number cut to so many significant digits; nothing where it is none. Decimal rounding is the same on every machine.
fn cut(number: f64, digits: usize) -> Option<f64> {
    let decimals = digits.saturating_sub(1);
    let cut: f64 = format!("{number:.decimals$e}").parse().ok()?;
    // Adding zero takes the sign off a zero.
    cut.is_finite().then_some(cut + 0.0)
}
