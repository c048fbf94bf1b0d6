//! What a question says to a person, and what its answers say of the sample.

use super::{cable, copper, inside, live, plug, readings, sockets, what_it_says};
use crate::domain::question::Question;

/// The words of one question.
#[derive(Debug, Clone, Copy)]
pub struct QuestionWords {
    /// The question's id.
    pub id: &'static str,
    /// The question itself, short enough for two lines of a phone, with `{which}` where it is asked of several: "What is in the fuse holder?"
    pub asks: &'static str,
    /// What it asks about, as it stands inside a sentence: "what is in the fuse holder".
    pub topic: &'static str,
    /// Its answers, in the order of the question's codes. Where a value is typed there is none; where print is copied out there is
    /// one, `nothing`, for a place that bears no print.
    pub answers: &'static [AnswerWords],
    /// The sentence of the statement for a typed value, print or count, with `{value}` and, where it is asked of several, `{which}`:
    /// "The earth of {which} reads {value}." For a question with several answers: the sentence when none of them fits.
    pub says: &'static str,
    /// A caution that must be read before looking; empty where none is needed.
    pub caution: &'static str,
}

/// The words of one answer.
#[derive(Debug, Clone, Copy)]
pub struct AnswerWords {
    /// The answer's code.
    pub code: &'static str,
    /// What is tapped: "a fuse marked BS 1362".
    pub answer: &'static str,
    /// The whole sentence of the statement, with `{which}` where the question is asked of several: "The plug has a fuse marked BS 1362."
    pub says: &'static str,
}

/// Stands in for words that nobody wrote; a test proves that it is never shown.
const UNWRITTEN: QuestionWords = QuestionWords { id: "", asks: "", topic: "", answers: &[], says: "", caution: "" };

/// The words of every question.
pub fn all() -> impl Iterator<Item = &'static QuestionWords> {
    [
        what_it_says::QUESTIONS,
        plug::QUESTIONS,
        plug::SIZES,
        cable::QUESTIONS,
        sockets::QUESTIONS,
        readings::QUESTIONS,
        inside::QUESTIONS,
        copper::QUESTIONS,
        live::QUESTIONS,
    ]
    .into_iter()
    .flatten()
}

/// The words of a question.
pub fn of(question: &Question) -> &'static QuestionWords {
    by_id(question.id).unwrap_or(&UNWRITTEN)
}

/// The words of the question of an id.
pub fn by_id(id: &str) -> Option<&'static QuestionWords> {
    all().find(|words| words.id == id)
}

impl QuestionWords {
    /// The words of one of its answers.
    pub fn answer(&self, code: &str) -> Option<&'static AnswerWords> {
        self.answers.iter().find(|answer| answer.code == code)
    }
}
