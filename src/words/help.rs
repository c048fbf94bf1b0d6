//! How to look, and why it matters: said when somebody asks for it, and not loaded before.
//!
//! The texts lie beside this file in `help.txt`, which the app fetches. Each question has three lines there, with an empty one before the
//! next: its id; how to look, in one to three short sentences; why it matters, in one or two.

/// The help for one question.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Help {
    /// How to look.
    pub look: String,
    /// Why it matters.
    pub why: String,
}

/// The help for the question of an id, found in the text of all.
pub fn find(all: &str, id: &str) -> Option<Help> {
    let mut lines = all.split("\n\n").find_map(|help| help.strip_prefix(id)?.strip_prefix('\n'))?.lines();
    Some(Help { look: lines.next()?.to_owned(), why: lines.next()?.to_owned() })
}
