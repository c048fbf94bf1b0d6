//! Checks of the place: cable.

pub mod copper;

use super::Check;
use crate::domain::question::Question;

/// The questions in the order of the walk.
pub const QUESTIONS: &[&Question] = &[];

/// The checks.
pub const CHECKS: &[&Check] = &[];
