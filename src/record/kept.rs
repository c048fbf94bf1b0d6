//! What an examination carries beside what was looked at: where the sample came from, and how what is wrong may hurt somebody.
//!
//! The app's first program shows none of it and does not read it: there `unread.rs` stands in the place of this file.

use super::fault::RecordFault;
use super::{Record, custody, scenario, v1};
use crate::domain::risk::Scenario;

pub use crate::domain::custody::Custody;

/// How what is wrong may hurt somebody.
pub type Scenarios = Vec<Scenario>;

/// The saved forms: how it was acquired, who held it, the scenarios.
pub fn to_v1(record: &Record) -> (v1::Acquired, v1::Handlings, v1::Scenarios) {
    (
        custody::acquired(&record.custody.acquisition),
        record.custody.entries.iter().map(custody::to_v1).collect(),
        record.scenarios.iter().map(scenario::to_v1).collect(),
    )
}

/// What the saved forms stand for.
pub fn from_v1(
    acquired: v1::Acquired,
    handlings: v1::Handlings,
    scenarios: v1::Scenarios,
) -> Result<(Custody, Scenarios), RecordFault> {
    Ok((custody::from_v1(acquired, handlings)?, scenario::all_from_v1(scenarios)?))
}
