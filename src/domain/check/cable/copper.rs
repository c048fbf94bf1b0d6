//! How much conductor the cores have, what metal it is, and whether it carries the claimed current.

use crate::domain::check::Check;
use crate::domain::question::Question;

/// The questions in the order of the walk.
pub const QUESTIONS: &[&Question] = &[];

/// The checks.
pub const CHECKS: &[&Check] = &[];
