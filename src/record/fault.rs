//! Why a file is not taken: one sentence that names the place, what came and what is allowed, and a hint where one helps.

use std::borrow::Cow;
use std::fmt::{self, Write};

use thiserror::Error;

use super::entry_fault::EntryFault;
use super::{DEEPEST, LARGEST, LONGEST_TEXT, MOST_ANSWERS, MOST_HANDLINGS, MOST_PHOTOS, MOST_SCENARIOS, VERSION};

const MEND_IT: &str = "If it was written by hand, mend it there.";

/// Why a text is not taken as an examination. Nothing is half read: where there is a fault there is no record.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum RecordFault {
    /// Larger than any examination.
    #[error("the file is larger than {} MiB", LARGEST >> 20)]
    TooLarge,
    /// Lists and objects in each other without end.
    #[error("lists and objects stand more than {DEEPEST} deep in each other")]
    TooDeep,
    /// Something else altogether.
    #[error("this is not a Plugwary examination")]
    Foreign,
    /// Of a version that was not known when this edition was made.
    #[error("made by a newer edition (version {}); this one reads up to {VERSION}", .version.plain())]
    Newer {
        /// Its version.
        version: Said,
    },
    /// Not JSON from some place on.
    #[error("the file is damaged at line {line}, column {column}")]
    Damaged {
        /// The line, from 1.
        line: usize,
        /// The column, from 1.
        column: usize,
    },
    /// JSON, but not of the form that an examination has.
    #[error("line {line}, column {column}: {misfit}")]
    Form {
        /// The line, from 1.
        line: usize,
        /// The column, from 1.
        column: usize,
        /// What is the matter there.
        misfit: Misfit,
    },
    /// A field of the examination or its sample says what it cannot say.
    #[error("“{field}” must be {takes}, got {got}")]
    Field {
        /// The field.
        field: &'static str,
        /// What it takes.
        takes: &'static str,
        /// What stands there.
        got: Said,
    },
    /// A text of the examination or its sample that nobody would have written.
    #[error("“{field}” has more than {LONGEST_TEXT} characters")]
    TooLong {
        /// The field.
        field: &'static str,
    },
    /// More answers than there are questions.
    #[error("there are more than {MOST_ANSWERS} answers")]
    TooManyAnswers,
    /// More photos than a record holds.
    #[error("there are more than {MOST_PHOTOS} photos")]
    TooManyPhotos,
    /// More custody entries than a record holds.
    #[error("there are more than {MOST_HANDLINGS} custody entries")]
    TooManyHandlings,
    /// More scenarios than a record holds.
    #[error("there are more than {MOST_SCENARIOS} scenarios")]
    TooManyScenarios,
    /// One answer is no answer.
    #[error("answer {number}: {fault}")]
    Answer {
        /// Which, from 1.
        number: usize,
        /// What is wrong with it.
        fault: EntryFault,
    },
    /// One entry for a photo is wrong.
    #[error("photo {number}: {fault}")]
    Photo {
        /// Which, from 1.
        number: usize,
        /// What is wrong with it.
        fault: EntryFault,
    },
    /// One custody entry is wrong.
    #[error("custody entry {number}: {fault}")]
    Handling {
        /// Which, from 1.
        number: usize,
        /// What is wrong with it.
        fault: EntryFault,
    },
    /// One scenario is wrong.
    #[error("scenario {number}: {fault}")]
    Scenario {
        /// Which, from 1.
        number: usize,
        /// What is wrong with it.
        fault: EntryFault,
    },
    /// One event of a scenario is wrong.
    #[error("scenario {number}, event {event}: {fault}")]
    Event {
        /// Which scenario, from 1.
        number: usize,
        /// Which of its events, from 1.
        event: usize,
        /// What is wrong with it.
        fault: EntryFault,
    },
    /// A page with more than one examination in it.
    #[error("the file has more than one examination in it")]
    SeveralExaminations,
    /// A text or a page that ends inside its examination.
    #[error("the file is cut short")]
    CutShort,
    /// The bytes of a photo are not those whose digest the examination keeps.
    #[error("photo {number} was changed after the file was made")]
    PhotoChanged {
        /// Which, from 1.
        number: usize,
    },
    /// The page shows a photo that its examination does not speak of.
    #[error("a photo was added after the file was made")]
    PhotoAdded,
}

/// What is the matter with the form of an examination.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum Misfit {
    /// A field that must be there is not.
    #[error("the field {0} is missing")]
    Missing(Said),
    /// A field that no examination has.
    #[error("there is no field {0}")]
    Unknown(Said),
    /// A field that was there before.
    #[error("the field {0} stands twice")]
    Twice(Said),
    /// A text where a list belongs, a number where a text belongs, and the like.
    #[error("another sort of value belongs there")]
    AnotherSort,
}

impl Misfit {
    /// The sort of misfit that the JSON reader names, in words that are not its own.
    fn from_reader(said: &str) -> Self {
        let field = |before: &str| said.strip_prefix(before)?.split('`').next().map(Said::from);
        let named = [
            field("missing field `").map(Self::Missing),
            field("unknown field `").map(Self::Unknown),
            field("duplicate field `").map(Self::Twice),
        ];
        named.into_iter().flatten().next().unwrap_or(Self::AnotherSort)
    }
}

/// What a file says, cut to a length that fits a sentence; shown in quotes, with nothing in it that a terminal would obey.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Said(Option<String>);

impl Said {
    /// Nothing stands there.
    pub const NOTHING: Self = Self(None);

    const LONGEST: usize = 40;

    fn plain(&self) -> &str {
        self.0.as_deref().unwrap_or_default()
    }
}

impl From<&str> for Said {
    fn from(text: &str) -> Self {
        Self(Some(shortened(text, Self::LONGEST)))
    }
}

impl fmt::Display for Said {
    fn fmt(&self, f: &mut fmt::Formatter) -> fmt::Result {
        match &self.0 {
            Some(text) => {
                f.write_str("“")?;
                for c in text.chars() {
                    if matches!(c, '"' | '\'' | '\\') { f.write_char(c)? } else { write!(f, "{}", c.escape_debug())? }
                }
                f.write_str("”")
            }
            None => f.write_str("nothing"),
        }
    }
}

impl RecordFault {
    /// What can be done about it, as a sentence.
    pub fn hint(&self) -> Cow<'static, str> {
        match self {
            Self::Damaged { .. } | Self::CutShort => "Ask for the file again.".into(),
            Self::Foreign => "A file made here ends in .html or .json.".into(),
            Self::Newer { .. } => "Load this app again while there is a network, then take the file back.".into(),
            Self::TooLarge
            | Self::TooDeep
            | Self::TooManyAnswers
            | Self::TooManyPhotos
            | Self::TooManyHandlings
            | Self::TooManyScenarios => "It was not made by this app.".into(),
            Self::SeveralExaminations | Self::PhotoAdded | Self::PhotoChanged { .. } => {
                "Do not trust the file. Ask for it again.".into()
            }
            Self::Form { .. } | Self::Field { .. } | Self::TooLong { .. } => MEND_IT.into(),
            Self::Answer { fault, .. }
            | Self::Photo { fault, .. }
            | Self::Handling { fault, .. }
            | Self::Scenario { fault, .. }
            | Self::Event { fault, .. } => fault.hint().map_or(MEND_IT.into(), Cow::from),
        }
    }

    /// What the JSON reader said, in three sorts: a text that ends too early, a broken one, or a form that is not ours.
    pub(super) fn from_json(error: &serde_json::Error) -> Self {
        let (line, column) = (error.line(), error.column());
        match error.classify() {
            serde_json::error::Category::Data => {
                Self::Form { line, column, misfit: Misfit::from_reader(&error.to_string()) }
            }
            serde_json::error::Category::Eof => Self::CutShort,
            serde_json::error::Category::Io | serde_json::error::Category::Syntax => Self::Damaged { line, column },
        }
    }
}

fn shortened(text: &str, most: usize) -> String {
    let mut kept: String = text.chars().take(most).collect();
    if kept.len() < text.len() {
        kept.push('…');
    }
    kept
}
