//! Checks of the place: what it says.

use super::Check;
use crate::domain::question::Question;

/// The questions in the order of the walk.
pub const QUESTIONS: &[&Question] = &[];

/// The checks.
pub const CHECKS: &[&Check] = &[];
