//! The saved and exported form of an examination: JSON that a person can read and write by hand, alone or inside the file to show.
//!
//! [`read`] believes nothing: what it does not know is a [`RecordFault`] that says where and why, never a guess. A number stands
//! beside its unit. A version that was ever released is read for ever; an unknown newer one is refused.

mod carried;
mod envelope;
mod fault;
mod judged;
mod number;
#[cfg(feature = "schema")]
mod schema;
mod spelling;
mod to_domain;
mod to_saved;
mod v1;

use crate::domain::examination::Examination;
use crate::domain::question::Target;

pub use carried::{Carried, CarriedPhoto, embed, from_file};
pub use envelope::{FORMAT, LARGEST, VERSION};
pub use fault::{AnswerFault, RecordFault};
pub use judged::judged_line;
#[cfg(feature = "schema")]
pub use schema::schema;

/// An examination with what the device adds to it: the form that is saved, shared and taken back.
#[derive(Debug, Clone, PartialEq)]
pub struct Record {
    /// Unique on every device: 32 hexadecimal digits.
    pub id: String,
    /// When it was begun, RFC 3339 with zone.
    pub begun: String,
    /// When it was last changed, RFC 3339 with zone.
    pub changed: String,
    /// The edition of the rule book that judged it last.
    pub edition: String,
    /// Where the sample came from, in the examiner's words; may be empty.
    pub origin: String,
    /// Whether it is the example that comes with the app.
    pub is_example: bool,
    /// What was examined and answered.
    pub examination: Examination,
    /// The photos, in the order they were taken; their bytes are kept apart.
    pub photos: Vec<Photo>,
}

/// A photo attached to an answer.
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
    /// When it was attached, RFC 3339 with zone.
    pub taken: String,
    /// The question it belongs to.
    pub question: &'static str,
    /// Which of several it belongs to.
    pub target: Target,
}

/// The record as JSON: fields in a fixed order, two spaces of indent, no newline at its end. The same record gives the same bytes.
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
    // Only a map with keys that are no strings, or a failing writer, could make this fail; there is neither.
    serde_json::to_string_pretty(&to_saved::examination(record)).unwrap_or_default()
}

/// Reads what [`write`] wrote, or what somebody wrote by hand.
///
/// # Errors
///
/// What is no whole, well-formed examination of a known version gives the first [`RecordFault`] met.
pub fn read(text: &str) -> Result<Record, RecordFault> {
    let text = text.trim_start_matches('\u{feff}');
    envelope::open(text)?;
    let saved: v1::Examination = serde_json::from_str(text).map_err(|error| RecordFault::from_json(&error))?;
    to_domain::record(saved, text)
}
