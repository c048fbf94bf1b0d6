//! The saved and exported form of an examination.

use crate::domain::examination::Examination;
use crate::domain::question::Target;

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
