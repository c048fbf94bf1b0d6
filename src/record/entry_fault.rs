//! What is wrong with one answer, one entry for a photo or one custody entry.

use thiserror::Error;

use super::fault::Said;
use super::{LONGEST_TEXT, MOST_EVENTS, spelling};
use crate::domain::check;
use crate::domain::instrument::Instrument;
use crate::domain::question::{Ask, Question};

/// What is wrong with one answer, one entry for a photo or one custody entry.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum EntryFault {
    /// No such question.
    #[error("there is no question {question}")]
    UnknownQuestion {
        /// What stands there.
        question: Said,
    },
    /// Asked of something that the question is not asked of.
    #[error("the question “{question}” is asked {takes}, got {got}")]
    Target {
        /// The question.
        question: &'static str,
        /// What it is asked of.
        takes: &'static str,
        /// What stands there.
        got: Said,
    },
    /// The same question of the same thing, answered before.
    #[error("the question “{question}” was answered before")]
    AnsweredBefore {
        /// The question.
        question: &'static str,
    },
    /// A question with no answer.
    #[error("the question “{question}” has nothing that answers it")]
    Unanswered {
        /// The question.
        question: &'static str,
    },
    /// Two answers at once.
    #[error("“{first}” and “{second}” stand together; an answer has one of them")]
    SeveralAnswers {
        /// The first of them.
        first: &'static str,
        /// The second.
        second: &'static str,
    },
    /// An answer of another sort than the question takes.
    #[error("the question “{question}” takes “{takes}”, got “{got}”")]
    AnotherSort {
        /// The question.
        question: &'static str,
        /// The field that answers it.
        takes: &'static str,
        /// The field that came.
        got: &'static str,
    },
    /// Not among the question's answers.
    #[error("the question “{question}” has no answer {answer}")]
    UnknownAnswer {
        /// The question.
        question: &'static str,
        /// What stands there.
        answer: Said,
    },
    /// One of the question's answers twice.
    #[error("the answer “{answer}” stands twice")]
    AnswerTwice {
        /// The answer.
        answer: &'static str,
    },
    /// A count out of bounds, or no whole number.
    #[error("the question “{question}” takes a whole number from {least} to {most}, got {got}")]
    Count {
        /// The question.
        question: &'static str,
        /// The least it takes.
        least: u8,
        /// The most it takes.
        most: u8,
        /// What stands there.
        got: Said,
    },
    /// No unit, or one of another kind of quantity.
    #[error("the question “{question}” measures {measures}, got the unit {unit}")]
    Unit {
        /// The question.
        question: &'static str,
        /// The kind of quantity in words.
        measures: &'static str,
        /// What stands there.
        unit: Said,
    },
    /// No instrument, or one that does not measure this.
    #[error("the question “{question}” is not read with {instrument}")]
    Instrument {
        /// The question.
        question: &'static str,
        /// What stands there.
        instrument: Said,
    },
    /// A display with nothing on it, or with two things at once.
    #[error("the reading of “{question}” needs one of “value”, “above”, “below” and “open”")]
    NotOneReading {
        /// The question.
        question: &'static str,
    },
    /// A field says what it cannot say.
    #[error("“{field}” must be {takes}, got {got}")]
    Field {
        /// The field.
        field: &'static str,
        /// What it takes.
        takes: &'static str,
        /// What stands there.
        got: Said,
    },
    /// A check that no edition before this one had.
    #[error("there is no check {check}")]
    UnknownCheck {
        /// What stands there.
        check: Said,
    },
    /// A check named before.
    #[error("the check “{check}” stands twice")]
    CheckTwice {
        /// The check.
        check: &'static str,
    },
    /// More events than a scenario holds.
    #[error("there are more than {MOST_EVENTS} events")]
    TooManyEvents,
    /// A text that nobody would have written.
    #[error("“{field}” has more than {LONGEST_TEXT} characters")]
    TooLong {
        /// The field.
        field: &'static str,
    },
}

impl EntryFault {
    /// What is allowed there, where a list of it helps.
    pub fn hint(&self) -> Option<String> {
        let allowed = match self {
            Self::UnknownAnswer { question, .. } => asked(question)?.answers().join(", "),
            Self::Target { question, .. } => {
                let targets = spelling::targets(asked(question)?.per);
                targets.into_iter().map(spelling::of_target).collect::<Option<Vec<_>>>()?.join(", ")
            }
            Self::Unit { question, .. } => {
                let Ask::Measure { kind, .. } = asked(question)?.ask else { return None };
                spelling::units(kind).map(spelling::of_unit).collect::<Vec<_>>().join(", ")
            }
            Self::Instrument { question, .. } => {
                let Ask::Measure { instruments, .. } = asked(question)?.ask else { return None };
                instruments.iter().copied().map(Instrument::code).collect::<Vec<_>>().join(", ")
            }
            Self::UnknownQuestion { .. } | Self::UnknownCheck { .. } => {
                return Some("It may come from a newer edition of the rule book.".to_owned());
            }
            Self::AnsweredBefore { .. }
            | Self::Unanswered { .. }
            | Self::SeveralAnswers { .. }
            | Self::AnotherSort { .. }
            | Self::AnswerTwice { .. }
            | Self::CheckTwice { .. }
            | Self::Count { .. }
            | Self::NotOneReading { .. }
            | Self::Field { .. }
            | Self::TooLong { .. }
            | Self::TooManyEvents => return None,
        };
        Some(format!("There may stand: {allowed}."))
    }
}

fn asked(id: &str) -> Option<&'static Question> {
    check::question(id)
}
