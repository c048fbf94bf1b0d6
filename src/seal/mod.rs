//! The seal of a page to show: a signature over every byte of it, made with a key that stays on one device.
//!
//! [`statement`] takes a page that names the key and says what is to be signed; whoever holds the key signs it, here with [`sign`] or
//! elsewhere; [`attach`] puts both at the end of the page. [`check`] tells whether anything was changed since, and where. A seal shows
//! that a file is as it left the holder of a key; who that is, it cannot show.

mod again;
mod check;
mod fault;
mod key;
mod line;
mod statement;

pub use again::{Again, Change};
pub use check::{Checked, Part, State, check};
pub use fault::SealFault;
pub use key::{PublicKey, fingerprint, sign};
pub use line::checked_line;
pub use statement::{ENDING, attach, mention, statement};

use crate::record::digest::sha256;

/// The published page of limits and rules: what the rule book decides by, as anybody can read it.
const LIMITS: &[u8] = include_bytes!("../../public/limits.html");

/// What tells this rule book from every other: the SHA-256 of the published page of limits and rules.
pub fn rule_book() -> String {
    sha256(LIMITS)
}
