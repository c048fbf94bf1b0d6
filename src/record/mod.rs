//! The saved and exported form of an examination: JSON that a person can read and write by hand, alone or inside the file to show.
//!
//! [`read`] believes nothing: what it does not know is a [`RecordFault`] that says where and why, never a guess. A number stands
//! beside its unit. A version that was ever released is read for ever; an unknown newer one is refused.

pub mod digest;

mod carried;
#[cfg(not(feature = "first"))]
mod chain;
mod convert;
#[cfg(not(feature = "first"))]
mod custody;
mod entry;
mod entry_fault;
mod envelope;
mod fault;
mod judged;
#[cfg(not(feature = "first"))]
mod kept;
#[cfg(feature = "first")]
#[path = "unread.rs"]
mod kept;
mod number;
mod pieces;
mod reading;
#[cfg(not(feature = "first"))]
mod scenario;
#[cfg(feature = "schema")]
mod schema;
pub(crate) mod spelling;
mod v1;

use crate::domain::examination::Examination;
use crate::domain::question::Target;

pub use carried::{Carried, CarriedPhoto, embed, from_file};
#[cfg(not(feature = "first"))]
pub use chain::{Break, Chain, append, chain};
pub use convert::is_moment;
pub use entry_fault::EntryFault;
pub use envelope::{DEEPEST, FORMAT, LARGEST, VERSION};
pub use fault::{Misfit, RecordFault, Said};
pub use judged::judged_line;
pub use kept::{Custody, Scenarios};
pub use pieces::Pieces;
#[cfg(feature = "schema")]
pub use schema::schema;

/// The most answers a record holds.
pub const MOST_ANSWERS: usize = 2000;

/// The most photos a record holds.
pub const MOST_PHOTOS: usize = 500;

/// The most custody entries a record holds.
pub const MOST_HANDLINGS: usize = 500;
/// The most scenarios a record holds.
pub const MOST_SCENARIOS: usize = 50;

/// The most events a scenario holds.
pub const MOST_EVENTS: usize = 20;

/// The most characters any one text in a record holds.
pub const LONGEST_TEXT: usize = 4000;

/// An examination with what the device adds to it: the form that is saved, shared and taken back.
#[derive(Debug, Clone, PartialEq)]
pub struct Record {
    /// Unique on every device: 32 lower-case hexadecimal digits.
    pub id: String,
    /// When it was begun, RFC 3339 with zone; empty where a file does not say.
    pub begun: String,
    /// When it was last changed, RFC 3339 with zone; empty where a file does not say.
    pub changed: String,
    /// The edition of the rule book that judged it last.
    pub edition: String,
    /// Where the sample came from, in the examiner's words; may be empty.
    pub origin: String,
    /// How somebody came by it, and who held it since.
    pub custody: Custody,
    /// Whether it is the example that comes with the app.
    pub is_example: bool,
    /// Whether the sample is kept as a known good, for others to be compared with.
    pub is_known_good: bool,
    /// What was examined and answered.
    pub examination: Examination,
    /// The photos, in the order they were taken; their bytes are kept apart.
    pub photos: Vec<Photo>,
    /// How what is wrong may hurt somebody, as the examiner weighed it; may be empty, and never touches the verdict.
    pub scenarios: Scenarios,
}

impl Photo {
    /// Whether these are the bytes it was attached with.
    pub fn is_of(&self, bytes: &[u8]) -> bool {
        digest::sha256(bytes) == self.sha256
    }
}

/// What a photo belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Attached {
    /// An answer: to this question, and of this one where it is asked of several.
    Answer {
        /// The question.
        question: &'static str,
        /// Which of several.
        target: Target,
    },
    /// Where the sample came from: the listing, or the parcel before it was opened.
    Origin,
}

/// A photo attached to an answer or to where the sample came from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Photo {
    /// SHA-256 of the stored bytes, 64 lower-case hexadecimal digits: the photo's name.
    pub sha256: String,
    /// Media type, `image/jpeg` or `image/webp`.
    pub media_type: String,
    /// Width in pixels.
    pub width: u32,
    /// Height in pixels.
    pub height: u32,
    /// When it was attached, RFC 3339 with zone; empty where a file does not say.
    pub taken: String,
    /// What it belongs to.
    pub attached: Attached,
}

/// The record as JSON: fields in a fixed order, two spaces of indent, no newline at the end.
///
/// The same record gives the same bytes on every device.
///
/// ```
/// use plugwary::record::{read, write};
/// let text = r#"{
///     "format": "plugwary-examination", "version": 1, "equipment": "eyes",
///     "sample": { "kind": "extension-lead", "market": "great-britain" },
///     "answers": [{ "question": "fuse-in-the-holder", "one": "empty" }]
/// }"#;
/// let record = read(text)?;
/// assert_eq!(read(&write(&record)), Ok(record));
/// # Ok::<(), plugwary::record::RecordFault>(())
/// ```
pub fn write(record: &Record) -> String {
    convert::to_v1(record).to_json()
}

/// What tells a record from every other: the SHA-256 of what [`write()`] makes of it, 64 lower-case hexadecimal digits.
pub fn fingerprint(record: &Record) -> String {
    digest::sha256(write(record).as_bytes())
}

/// Reads what [`write()`] wrote, or what somebody wrote by hand.
///
/// Left out, `id` becomes a digest of the text without white space around it, so that the same text is the same record; dates stay empty, `rule_book` becomes
/// today's edition, texts and lists stay empty.
///
/// # Errors
///
/// What is not a whole, well-formed examination of a known version gives the first [`RecordFault`] met.
pub fn read(text: &str) -> Result<Record, RecordFault> {
    let text = text.trim_start_matches('\u{feff}');
    envelope::open(text)?;
    convert::from_v1(v1::Examination::from_json(text)?, text)
}

fn is_too_long(text: &str) -> bool {
    text.chars().nth(LONGEST_TEXT).is_some()
}
