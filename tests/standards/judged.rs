//! Each case judged: by the whole engine on a small examination, or by the limit itself where no examination can vary it.

use plugwary::domain::assess::{RuleBook, assess};
use plugwary::domain::finding::{Bearing, Bound, Conformity, Evidence, Finding, Reason};
use plugwary::domain::quantity::{Amount, Unit};
use plugwary::domain::standard::registry::{Range, Value};
use plugwary::record;
use plugwary::words::limits as words;
use serde_json::json;
use uom::si::f64::{Ratio, Time};
use uom::si::ratio::ratio;
use uom::si::time::second;

use crate::cases::{Case, Limit, Stands, plain, sheets};

#[test]
fn every_case_is_judged_as_its_source_asks() {
    let mut wrong = Vec::new();
    for (_, sheet) in sheets() {
        for limit in &sheet.limit {
            for (stands, case) in limit.cases() {
                let found = match &limit.check {
                    Some(check) => by_the_engine(limit, check, case, stands),
                    None => by_the_limit(limit, case),
                };
                if found != case.1 {
                    wrong.push(format!("{} {stands:?} {}: expected {}, found {found}", limit.name(), case.0, case.1));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// A value stands where the case says, whatever the check makes of it.
#[test]
fn every_value_stands_where_the_case_says() {
    for (_, sheet) in sheets() {
        for limit in sheet.limit.iter().filter(|limit| limit.check.is_none()) {
            for (stands, case) in limit.cases() {
                let is_allowed = limit.published().1.range.allows(value(&case.0)) == Some(true);
                assert_eq!(is_allowed, stands != Stands::Outside, "{} {}", limit.name(), case.0);
            }
        }
    }
}

fn by_the_limit(limit: &Limit, case: &Case) -> String {
    match limit.published().1.range.allows(value(&case.0)) {
        Some(true) => "allowed".to_owned(),
        Some(false) => "not allowed".to_owned(),
        None => "another kind of value".to_owned(),
    }
}

/// A typed value: "4.8 A", "29 %", "0.3 s".
#[track_caller]
fn value(typed: &str) -> Value {
    let (number, symbol) = typed.split_once(' ').expect("a unit stands behind the number");
    let number: f64 = number.parse().expect("the number is one");
    match symbol {
        "%" => Value::Ratio(Ratio::new::<ratio>(number / 100.0)),
        "s" => Value::Time(Time::new::<second>(number)),
        _ => {
            let unit = Unit::ALL.into_iter().find(|unit| unit.symbol() == symbol).expect("the unit is known");
            Value::Amount(Amount::new(number, unit))
        }
    }
}

#[track_caller]
fn by_the_engine(limit: &Limit, check: &str, case: &Case, stands: Stands) -> String {
    let Some(finding) = finding(limit, check, case) else { return Conformity::NotApplicable.code().to_owned() };
    if stands == Stands::Outside && limit.unseen.is_none() {
        assert!(shows(limit, &finding), "{} {}: the finding shows another limit", limit.name(), case.0);
    }
    if let Some(evidence) = finding.judgement.evidence.iter().find(|evidence| is_shown(limit, &evidence.limit)) {
        stands_so(limit, case, stands, evidence);
    }
    said(&finding)
}

/// The finding of a check on the sample of a case.
pub fn finding(limit: &Limit, check: &str, case: &Case) -> Option<Finding> {
    let assessed = assess(&examination(limit, case).examination, &RuleBook::CURRENT);
    assessed.findings.into_iter().find(|finding| finding.code == check)
}

/// The record of a case's sample.
#[track_caller]
pub fn examination(limit: &Limit, case: &Case) -> record::Record {
    let parts: Vec<&str> = case.0.split('|').collect();
    let varied = limit.varies.iter().map(|answer| filled(answer, &parts));
    let answers: Vec<_> = limit.answers.iter().cloned().chain(varied).collect();
    let text = json!({
        "format": "plugwary-examination", "version": 1, "equipment": limit.equipment, "answers": answers,
        "sample": { "kind": limit.kind, "market": "great-britain" }
    });
    record::read(&text.to_string()).unwrap_or_else(|fault| panic!("{} {}: {fault}", limit.name(), case.0))
}

/// An answer with the parts of a case's value in their places; a place that stands alone takes a number.
fn filled(answer: &serde_json::Value, parts: &[&str]) -> serde_json::Value {
    match answer {
        serde_json::Value::String(text) => {
            let alone = parts.iter().enumerate().find(|(at, _)| *text == format!("={{{at}}}"));
            if let Some((_, part)) = alone {
                let number: f64 = part.parse().expect("the part is a number");
                return json!(number);
            }
            let each = parts.iter().enumerate();
            json!(each.fold(text.clone(), |text, (at, part)| text.replace(&format!("{{{at}}}"), part)))
        }
        serde_json::Value::Array(all) => all.iter().map(|one| filled(one, parts)).collect(),
        serde_json::Value::Object(all) => {
            serde_json::Value::Object(all.iter().map(|(key, one)| (key.clone(), filled(one, parts))).collect())
        }
        serde_json::Value::Null | serde_json::Value::Bool(_) | serde_json::Value::Number(_) => answer.clone(),
    }
}

/// The outcome in a word; of a break its severity.
fn said(finding: &Finding) -> String {
    let judgement = &finding.judgement;
    let is_told = judgement.bearing == Bearing::IsOnlyTold;
    if judgement.outcome == Conformity::Nonconforming {
        judgement.severity.code().to_owned()
    } else if judgement.outcome == Conformity::Inconclusive && is_told {
        "told".to_owned()
    } else {
        judgement.outcome.code().to_owned()
    }
}

/// Whether a finding rests on the limit of the case, and not on another one.
fn shows(limit: &Limit, finding: &Finding) -> bool {
    let by_evidence = finding.judgement.evidence.iter().any(|evidence| is_shown(limit, &evidence.limit));
    let end = if let Reason::ClaimAgainst { limit, .. }
    | Reason::FuseAgainst { limit, .. }
    | Reason::FlexShort { limit, .. } = finding.judgement.reason
    {
        Some(limit)
    } else {
        None
    };
    let is_end = |end: Amount| [Bound::AtLeast(end), Bound::AtMost(end)].iter().any(|bound| is_shown(limit, bound));
    by_evidence || end.is_some_and(is_end)
}

fn is_shown(limit: &Limit, bound: &Bound) -> bool {
    let wanted = limit.shows.as_ref().unwrap_or(&limit.allows);
    plain(&words::range(Range::from(*bound))) == *wanted
}

/// Inside is at least 95 in 100 sure, outside at most 5 in 100, and at the limit neither.
#[track_caller]
fn stands_so(limit: &Limit, case: &Case, stands: Stands, evidence: &Evidence) {
    let chance = evidence.probability.value();
    let is_so = match stands {
        Stands::Inside => chance >= 0.95,
        Stands::At => (0.05..0.95).contains(&chance),
        Stands::Outside => chance <= 0.05,
    };
    assert!(is_so, "{} {}: {stands:?} with a chance of {chance}", limit.name(), case.0);
}
