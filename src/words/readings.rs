//! Words of the place: readings.

use super::check::CheckWords;
use super::question::QuestionWords;

/// Words of the questions.
pub const QUESTIONS: &[QuestionWords] = &[];

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[];
