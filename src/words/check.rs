//! What a check says to a person: what is wrong, why it matters, what would settle it.
//!
//! Why it matters and what would settle it lie beside this file in `checks.txt`: each check has three lines there, with an empty one before the
//! next, its code; why a break matters, in one or two sentences that a customer understands; what would settle it when it cannot be told.
//! Only the app is without them at first: it fetches them once the first screen stands, and [provides](provide) them.

use super::{cable, copper, inside, live, plug, readings, sockets, what_it_says};

/// The words of one check.
#[derive(Debug, Clone, Copy)]
pub struct CheckWords {
    /// The check's code.
    pub code: &'static str,
    /// What is looked for, as a short noun phrase: "a plug without a fuse".
    pub wrong: &'static str,
}

/// Stands in for words that nobody wrote; a test proves that it is never shown.
const UNWRITTEN: CheckWords = CheckWords { code: "", wrong: "" };

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

impl CheckWords {
    /// Why a break matters.
    pub fn why(&self) -> &'static str {
        self.line(0)
    }

    /// What would settle it when it cannot be told: "Look under the fuse holder’s lid."
    pub fn settles(&self) -> &'static str {
        self.line(1)
    }

    fn line(&self, n: usize) -> &'static str {
        let of_check = |check: &'static str| check.strip_prefix(self.code)?.strip_prefix('\n');
        later::text().split("\n\n").find_map(of_check).and_then(|lines| lines.lines().nth(n)).unwrap_or_default()
    }
}

pub use later::provide;

#[cfg(feature = "app")]
mod later {
    use std::sync::OnceLock;

    static TEXT: OnceLock<String> = OnceLock::new();

    /// Provides the text of `checks.txt`; only the first call counts.
    pub fn provide(text: String) {
        // Another call came first: it is the same text.
        drop(TEXT.set(text));
    }

    pub(super) fn text() -> &'static str {
        TEXT.get().map_or("", String::as_str)
    }
}

#[cfg(not(feature = "app"))]
mod later {
    /// Does nothing here: the text is compiled in.
    pub fn provide(_text: String) {}

    pub(super) const fn text() -> &'static str {
        include_str!("checks.txt")
    }
}
