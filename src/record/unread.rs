//! What the app's first program keeps without reading it, letter for letter. The other programs read it in `kept.rs`.

use serde_json::value::RawValue;

use super::fault::RecordFault;
use super::{Record, v1};

/// Where the sample came from: how it was acquired, and who held it.
#[derive(Debug, Clone, Default)]
pub struct Custody(Option<Box<RawValue>>, Option<Box<RawValue>>);

/// How what is wrong may hurt somebody.
#[derive(Debug, Clone, Default)]
pub struct Scenarios(Option<Box<RawValue>>);

impl PartialEq for Custody {
    fn eq(&self, other: &Self) -> bool {
        text(self.0.as_deref()) == text(other.0.as_deref()) && text(self.1.as_deref()) == text(other.1.as_deref())
    }
}

impl PartialEq for Scenarios {
    fn eq(&self, other: &Self) -> bool {
        text(self.0.as_deref()) == text(other.0.as_deref())
    }
}

fn text(raw: Option<&RawValue>) -> Option<&str> {
    raw.map(RawValue::get)
}

/// The saved forms: how it was acquired, who held it, the scenarios.
pub fn to_v1(record: &Record) -> (v1::Acquired, v1::Handlings, v1::Scenarios) {
    (record.custody.0.clone(), record.custody.1.clone(), record.scenarios.0.clone())
}

/// What the saved forms stand for.
#[expect(clippy::unnecessary_wraps, reason = "the programs that read it may refuse it")]
pub fn from_v1(
    acquired: v1::Acquired,
    handlings: v1::Handlings,
    scenarios: v1::Scenarios,
) -> Result<(Custody, Scenarios), RecordFault> {
    Ok((Custody(acquired, handlings), Scenarios(scenarios)))
}
