//! Checks of the place: live, for competent persons only.

pub mod competence;
pub mod in_use;
pub mod withstand;

use super::Check;
use crate::domain::question::Question;

/// The questions in the order of the walk.
pub const QUESTIONS: &[&Question] = &[
    competence::LIVE_COMPETENT,
    withstand::WITHSTAND,
    in_use::TOUCH_CURRENT,
    withstand::RCD_TRIPS,
    in_use::HOTTEST_SPOT,
    in_use::INDICATOR,
];

/// The checks.
pub const CHECKS: &[&Check] = &[
    withstand::WITHSTAND_BROKE_DOWN,
    in_use::LEAKAGE_HIGH,
    withstand::RCD_FAILS,
    in_use::RUNS_HOT,
    in_use::INDICATOR_MISREADS,
];
