//! The verdict as one line of JSON: what `plugwary judge` prints and every file carries. Same bytes on every device.

use serde::Serialize;

use super::{Record, spelling};
use crate::domain::assess::{RuleBook, assess};
use crate::domain::finding::{Basis, Bearing, Bound, Conformity, Evidence, Finding};
use crate::domain::quantity::{Amount, Unit};

#[derive(Serialize)]
struct Judged<'a> {
    id: &'a str,
    number: &'a str,
    rule_book: &'static str,
    verdict: &'static str,
    looked: Looked,
    outside_only: bool,
    findings: Vec<Told>,
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
struct Told {
    code: &'static str,
    outcome: &'static str,
    severity: &'static str,
    basis: &'static str,
    decides: bool,
    probability: Option<f64>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    evidence: Vec<Weighed>,
}

#[derive(Serialize)]
struct Weighed {
    #[serde(skip_serializing_if = "Option::is_none")]
    of: Option<String>,
    value: f64,
    u: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    at_least: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    at_most: Option<f64>,
    unit: &'static str,
    outcome: &'static str,
    probability: f64,
    in_its_favour: bool,
}

/// Judges a record with today's rule book, as one line of JSON without a newline at its end.
pub fn judged_line(record: &Record) -> String {
    let assessment = assess(&record.examination, &RuleBook::CURRENT);
    let (open, told): (Vec<&Finding>, Vec<&Finding>) =
        assessment.findings.iter().partition(|f| f.outcome() == Conformity::NotExamined);
    let judged = Judged {
        id: &record.id,
        number: &record.examination.sample.number,
        rule_book: assessment.edition,
        verdict: assessment.verdict.code(),
        looked: Looked { made: assessment.looked.made, of: assessment.looked.of },
        outside_only: assessment.outside_only,
        findings: told.into_iter().map(self::told).collect(),
        not_looked_at: open.into_iter().map(|f| f.code).collect(),
        dangers_not_tested: assessment.dangers_not_tested.clone(),
        next: assessment.next.iter().take(5).map(|next| next.code).collect(),
    };
    // Only a map with keys that are no strings, or a failing writer, could make this fail; there is neither.
    serde_json::to_string(&judged).unwrap_or_default()
}

fn told(finding: &Finding) -> Told {
    let judgement = &finding.judgement;
    Told {
        code: finding.code,
        outcome: judgement.outcome.code(),
        severity: judgement.severity.code(),
        basis: match judgement.basis {
            Basis::Print => "print",
            Basis::Sight => "sight",
            Basis::Reading => "reading",
        },
        decides: judgement.bearing == Bearing::Decides,
        probability: finding.probability().map(|p| four_digits(p.value())),
        evidence: judgement.evidence.iter().map(weighed).collect(),
    }
}

fn weighed(evidence: &Evidence) -> Weighed {
    let unit = spelling::stated_in(evidence.value.kind());
    let number = |amount: Amount| four_digits(amount.in_unit(unit).unwrap_or(0.0));
    let (at_least, at_most) = match evidence.limit {
        Bound::AtLeast(low) => (Some(number(low)), None),
        Bound::AtMost(high) => (None, Some(number(high))),
        Bound::Between(low, high) => (Some(number(low)), Some(number(high))),
    };
    Weighed {
        of: spelling::of_target(evidence.target),
        value: number(evidence.value),
        u: four_digits(difference(evidence.u, unit)),
        at_least,
        at_most,
        unit: spelling::of_unit(unit),
        outcome: evidence.outcome.code(),
        probability: four_digits(evidence.probability.value()),
        in_its_favour: evidence.favour.holds,
    }
}

fn difference(amount: Amount, unit: Unit) -> f64 {
    amount.difference_in(unit).unwrap_or(0.0)
}

/// Four significant digits: what two devices could differ in lies far behind them.
fn four_digits(value: f64) -> f64 {
    format!("{value:.3e}").parse().unwrap_or(value)
}
