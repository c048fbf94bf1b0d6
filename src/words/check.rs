//! What a check says to a person: what is wrong, why it matters, what would settle it.

use super::{cable, copper, inside, live, plug, readings, sockets, what_it_says};

/// The words of one check.
#[derive(Debug, Clone, Copy)]
pub struct CheckWords {
    /// The check's code.
    pub code: &'static str,
    /// What is looked for, as a short noun phrase: "a plug without a fuse".
    pub wrong: &'static str,
    /// Why a break matters, in one or two sentences a customer understands.
    pub why: &'static str,
    /// What would settle it when it cannot be told: "Look under the fuse holder's lid."
    pub settles: &'static str,
}

/// Stands in for words that nobody wrote; a test proves that it is never shown.
const UNWRITTEN: CheckWords = CheckWords { code: "", wrong: "", why: "", settles: "" };

/// The words of every check.
pub fn all() -> impl Iterator<Item = &'static CheckWords> {
    [
        what_it_says::CHECKS,
        plug::CHECKS,
        cable::CHECKS,
        sockets::CHECKS,
        readings::CHECKS,
        inside::CHECKS,
        copper::CHECKS,
        live::CHECKS,
    ]
    .into_iter()
    .flatten()
}

/// The words of a check.
pub fn of(code: &str) -> &'static CheckWords {
    all().find(|words| words.code == code).unwrap_or(&UNWRITTEN)
}
