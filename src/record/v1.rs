//! Version 1 of the saved form, field by field. Nothing else in the program derives serde.

use serde::{Deserialize, Serialize};

use super::number::Number;

/// One examination.
#[derive(Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(title = "Plugwary examination, version 1"))]
#[serde(deny_unknown_fields)]
pub struct Examination {
    /// Always `plugwary-examination`.
    pub format: String,
    /// Always 1.
    pub version: u32,
    /// The edition of the rule book that judged it last.
    #[serde(default)]
    pub rule_book: String,
    /// 32 hexadecimal digits; left out, it is made from the text.
    #[serde(default)]
    pub id: String,
    /// When it was begun, RFC 3339.
    #[serde(default)]
    pub begun: String,
    /// When it was last changed, RFC 3339.
    #[serde(default)]
    pub changed: String,
    /// Where the sample came from, in free words.
    #[serde(default)]
    pub origin: String,
    /// Whether it is the example that comes with the app.
    #[serde(default)]
    pub example: bool,
    /// What is examined.
    pub sample: Sample,
    /// What is at hand: `eyes`, `hand-tools` or `meters`.
    pub equipment: String,
    /// The answers, in the order they were given.
    #[serde(default)]
    pub answers: Vec<Answered>,
    /// The photos, in the order they were taken.
    #[serde(default)]
    pub photos: Vec<Photo>,
}

/// What is examined.
#[derive(Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Sample {
    /// The number on the sample or its bag.
    #[serde(default)]
    pub number: String,
    /// What it is called.
    #[serde(default)]
    pub title: String,
    /// `extension-lead` or `cord-set`.
    pub kind: String,
    /// `great-britain` or `northern-ireland`.
    pub market: String,
}

/// The answer to one question: exactly one of the fields after `of`.
#[derive(Debug, Default, Serialize, Deserialize)]
#[expect(clippy::struct_excessive_bools, reason = "a person writes one of them as true and leaves the others out")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Answered {
    /// The question's id.
    pub question: String,
    /// Which of several: `socket-2`, `earth`, `package`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub of: Option<String>,
    /// The one answer that fits.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub one: Option<String>,
    /// All answers that fit; none of them is an empty list.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub any: Option<Vec<String>>,
    /// A reading.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reading: Option<Reading>,
    /// What is printed there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub printed: Option<String>,
    /// A number of things.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub count: Option<u8>,
    /// Nothing is printed there.
    #[serde(default, skip_serializing_if = "is_false")]
    pub nothing: bool,
    /// Looked, and could not tell.
    #[serde(default, skip_serializing_if = "is_false")]
    pub cannot_tell: bool,
    /// Looking was refused.
    #[serde(default, skip_serializing_if = "is_false")]
    pub refused: bool,
    /// Put off.
    #[serde(default, skip_serializing_if = "is_false")]
    pub later: bool,
}

/// What an instrument showed: exactly one of `value`, `above`, `below` and `open`.
#[derive(Debug, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Reading {
    /// A number.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub value: Option<Number>,
    /// More than this.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub above: Option<Number>,
    /// Less than this.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub below: Option<Number>,
    /// Over range: no path.
    #[serde(default, skip_serializing_if = "is_false")]
    pub open: bool,
    /// The unit of every number here, such as `ohm`.
    pub unit: String,
    /// One step of the last digit; left out, the digits of the number tell.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<Number>,
    /// What it was read with; left out, the question's usual instrument.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub instrument: Option<String>,
    /// What was typed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub typed: Option<String>,
}

/// A photo; its bytes are kept apart.
#[derive(Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Photo {
    /// SHA-256 of the bytes, 64 lower-case hexadecimal digits.
    pub sha256: String,
    /// `image/jpeg` or `image/webp`.
    pub media_type: String,
    /// Width in pixels.
    pub width: u32,
    /// Height in pixels.
    pub height: u32,
    /// When it was attached, RFC 3339.
    #[serde(default)]
    pub taken: String,
    /// The question it belongs to.
    pub question: String,
    /// Which of several.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub of: Option<String>,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde calls it with a reference")]
const fn is_false(value: &bool) -> bool {
    !*value
}
