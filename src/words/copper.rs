//! Words of the conductor: resistance, metal and heat.

use super::check::CheckWords;
use super::question::QuestionWords;

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[];

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[];
