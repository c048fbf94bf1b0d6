//! Why a text is no examination: which of its parts, what came, what is allowed.

use thiserror::Error;

/// A text that cannot be taken as an examination. Nothing stored changes because of it.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum RecordFault {
    /// The text is no JSON, or is cut off.
    #[error("the file is damaged: {0}")]
    Damaged(String),
    /// It is something else.
    #[error("this is not a Plugwary examination")]
    Foreign,
    /// It comes from an edition that writes another version.
    #[error("made by a newer edition (version {0}); this one reads up to {newest}", newest = super::VERSION)]
    Newer(String),
    /// It is larger than any examination.
    #[error("the file is larger than 64 MiB, which no examination is")]
    TooLarge,
    /// Its lists stand deeper in each other than an examination's ever do.
    #[error("the file is nested deeper than any examination")]
    TooDeep,
    /// It has more answers or photos than any examination.
    #[error("the examination has more than {most} {what}")]
    TooMany {
        /// What there are too many of.
        what: &'static str,
        /// How many there may be.
        most: usize,
    },
    /// A field holds something that is not allowed there.
    #[error("{field} must be {takes}, got {got}")]
    Field {
        /// The field.
        field: &'static str,
        /// What it takes.
        takes: String,
        /// What stands there.
        got: String,
    },
    /// An answer is none.
    #[error("answer {number}: {fault}")]
    Answer {
        /// Which one, counted from 1.
        number: usize,
        /// What is wrong with it.
        fault: AnswerFault,
    },
    /// A photo's bytes are not those that were hashed.
    #[error("photo {0} was changed after the file was made")]
    PhotoChanged(usize),
    /// A photo's bytes cannot be read.
    #[error("photo {0} is damaged")]
    PhotoDamaged(usize),
}

/// Why one answer cannot be taken.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum AnswerFault {
    /// Nobody asks that.
    #[error("there is no question \"{0}\"")]
    Question(String),
    /// The question is not asked of that.
    #[error("the question \"{question}\" is asked {takes}, got {got}")]
    Target {
        /// The question.
        question: &'static str,
        /// What it is asked of.
        takes: &'static str,
        /// What stands there.
        got: String,
    },
    /// The question has other answers.
    #[error("the question \"{question}\" has no answer \"{got}\"")]
    Choice {
        /// The question.
        question: &'static str,
        /// What stands there.
        got: String,
    },
    /// The question takes another kind of answer.
    #[error("the question \"{question}\" takes {takes}")]
    Kind {
        /// The question.
        question: &'static str,
        /// What it takes.
        takes: &'static str,
    },
    /// There is no answer, or more than one.
    #[error("the question \"{0}\" must have exactly one answer")]
    NotOne(&'static str),
    /// It was answered before.
    #[error("the question \"{0}\" is answered twice")]
    Twice(&'static str),
    /// A part of the reading is not allowed.
    #[error("{field} must be {takes}, got {got}")]
    Reading {
        /// The part.
        field: &'static str,
        /// What it takes.
        takes: String,
        /// What stands there.
        got: String,
    },
}

impl RecordFault {
    /// What can be done about it.
    pub const fn hint(&self) -> &'static str {
        match self {
            Self::Damaged(_) | Self::PhotoDamaged(_) => "Ask for the file again.",
            Self::Foreign => "A file made here ends in .html or .json.",
            Self::Newer(_) => "Load this app again while there is a network, then take the file back.",
            Self::TooLarge | Self::TooDeep | Self::TooMany { .. } => "It was not made by this app.",
            Self::Field { .. } | Self::Answer { .. } => "If it was written by hand, mend it there.",
            Self::PhotoChanged(_) => "Do not trust the file. Ask for it again.",
        }
    }

    /// A fault of JSON, with line and column.
    pub(super) fn from_json(error: &serde_json::Error) -> Self {
        let text = error.to_string();
        let short: String = text.chars().take(300).collect();
        Self::Damaged(short)
    }
}

/// A piece of what stood there, short enough for a sentence and in quotes.
pub(super) fn quoted(text: &str) -> String {
    let short: String = text.chars().take(60).collect();
    let dots = if text.chars().count() > 60 { "…" } else { "" };
    format!("\"{short}{dots}\"")
}
