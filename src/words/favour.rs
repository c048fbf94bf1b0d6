//! A break tried again in the sample's favour, in words: what remains when every doubt and every suspected error is granted.

use super::number;
use super::which;
use crate::domain::favour::GrossError;
use crate::domain::finding::{Bound, Conformity, Evidence, Finding};
use crate::domain::quantity::{Amount, QuantityKind, Unit};
use crate::domain::question::Target;
use crate::domain::sample::Kind;

/// So many times a limit and more is said as a number.
const WORTH_A_NUMBER: f64 = 1.5;

/// What became of a break when every doubt was granted to the product, by the value that stands worst then; empty where there is
/// nothing to retry.
pub fn in_its_favour(finding: &Finding, kind: Kind) -> String {
    if finding.outcome() != Conformity::Nonconforming {
        return String::new();
    }
    let broken = finding.judgement.evidence.iter().filter(|e| e.outcome == Conformity::Nonconforming);
    let beyond = |evidence: &Evidence| times_beyond(evidence.favour.value, &evidence.limit);
    let Some(worst) = broken.reduce(|a, b| if beyond(b) > beyond(a) { b } else { a }) else { return String::new() };
    let subject = match worst.target {
        Target::Sample => "it".to_owned(),
        Target::Socket(_) | Target::Core(_) | Target::Claim(_) => which::which(worst.target, kind),
    };
    let place = |value: Amount, holds: bool| place(value, &worst.limit, holds);
    let still = if worst.favour.holds { "" } else { "still " };
    let mut said = format!(
        "Tried in its favour, with the whole doubt granted, {subject} would {still}be {}, {}",
        number::as_sure(worst.favour.value, worst.u),
        place(worst.favour.value, worst.favour.holds)
    );
    for granted in &worst.favour.granted {
        let errors = match granted.errors.as_slice() {
            [one] => error(one),
            _ => "all of that".to_owned(),
        };
        let left = place(granted.value, granted.holds);
        said.extend(["; with ", &errors, " granted, ", &number::estimate(granted.value), ", ", &left]);
    }
    said.push('.');
    said
}

fn error(error: &GrossError) -> String {
    match error {
        GrossError::Leads(leads) => format!("{} of the meter’s leads", number::estimate(*leads)),
        GrossError::Clips(clips) => format!("{} of clips", number::estimate(*clips)),
        GrossError::Scale(times) => format!("a meter or length wrong by a factor of {}", number::roughly(times.value)),
    }
}

fn place(value: Amount, limit: &Bound, holds: bool) -> String {
    let times = times_beyond(value, limit);
    match limit {
        _ if holds => "inside the limit".to_owned(),
        Bound::AtMost(_) if times >= WORTH_A_NUMBER => format!("{} times the limit", number::roughly(times)),
        Bound::AtLeast(_) if times >= WORTH_A_NUMBER => {
            format!("where {} times as much is wanted", number::roughly(times))
        }
        Bound::AtMost(_) | Bound::AtLeast(_) | Bound::Between(..) => "outside the limit".to_owned(),
    }
}

/// How many times a value is beyond a one-sided limit; 0 for a temperature, which knows no times, and for two-sided limits.
pub fn times_beyond(value: Amount, limit: &Bound) -> f64 {
    let number = |amount: Amount| {
        let unit = Unit::ALL
            .into_iter()
            .find(|unit| unit.kind() == amount.kind() && amount.kind() != QuantityKind::Temperature);
        unit.and_then(|unit| amount.in_unit(unit))
    };
    let over = |a: Amount, b: Amount| number(a).zip(number(b)).map_or(0.0, |(a, b)| a / b);
    match *limit {
        Bound::AtMost(high) => over(value, high),
        Bound::AtLeast(low) => over(low, value),
        Bound::Between(..) => 0.0,
    }
}
