//! Version 1 of the saved form, field for field. A released version is never changed.

#[cfg(not(feature = "first"))]
mod custody;
#[cfg(not(feature = "first"))]
mod scenario;

use serde::de::{Deserializer, IgnoredAny, SeqAccess, Visitor};
use serde::{Deserialize, Serialize};

use super::fault::RecordFault;
use super::number::Number;
#[cfg(feature = "schema")]
use super::{FORMAT, LONGEST_TEXT, VERSION};
use super::{MOST_ANSWERS, MOST_PHOTOS};
#[cfg(not(feature = "first"))]
use super::{MOST_HANDLINGS, MOST_SCENARIOS};
#[cfg(feature = "schema")]
use crate::domain::sample::{Equipment, Kind, Market};

#[cfg(not(feature = "first"))]
pub use custody::{Acquired as HowAcquired, Handling};
#[cfg(not(feature = "first"))]
pub use scenario::{Event, Scenario};

/// How somebody came by the sample, if anybody said.
#[cfg(not(feature = "first"))]
pub type Acquired = Option<HowAcquired>;
/// Who held it since.
#[cfg(not(feature = "first"))]
pub type Handlings = Vec<Handling>;
/// How what is wrong may hurt somebody.
#[cfg(not(feature = "first"))]
pub type Scenarios = Vec<Scenario>;

/// How somebody came by the sample, kept without being read.
#[cfg(feature = "first")]
pub type Acquired = Option<Box<serde_json::value::RawValue>>;
/// Who held it since, likewise.
#[cfg(feature = "first")]
pub type Handlings = Acquired;
/// How what is wrong may hurt somebody, likewise.
#[cfg(feature = "first")]
pub type Scenarios = Acquired;

/// More checks than there are, so that one that is named twice or unknown is found to be just that.
#[cfg(not(feature = "first"))]
const MOST_CHECKS: usize = 1000;

/// RFC 3339 with zone, as a pattern.
#[cfg(feature = "schema")]
const MOMENT: &str = r"^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\.[0-9]*)?(Z|[+-][0-9]{2}:[0-9]{2})$";

/// The examination of one sample.
#[derive(Debug, Deserialize, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Examination {
    /// What this is.
    #[cfg_attr(feature = "schema", schemars(extend("const" = FORMAT)))]
    pub format: String,
    /// The version of this form.
    #[cfg_attr(feature = "schema", schemars(extend("const" = VERSION)))]
    pub version: u64,
    /// The edition of the rule book that judged it last.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub rule_book: Option<String>,
    /// Its name: 32 lower-case hexadecimal digits. Left out, it is made from the text.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(regex(pattern = "^[0-9a-f]{32}$")))]
    pub id: Option<String>,
    /// When it was begun, such as `2026-11-24T10:30:00Z`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(regex(pattern = MOMENT)))]
    pub begun: Option<String>,
    /// When it was last changed, such as `2026-11-24T10:30:00+00:00`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(regex(pattern = MOMENT)))]
    pub changed: Option<String>,
    /// Where the sample came from, in the examiner's words.
    #[serde(default)]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub origin: String,
    /// How somebody came by the sample.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub acquired: Acquired,
    /// Who held it since, oldest first.
    #[cfg_attr(feature = "first", serde(default, skip_serializing_if = "Option::is_none"))]
    #[cfg_attr(
        not(feature = "first"),
        serde(default, deserialize_with = "at_most::<_, _, MOST_HANDLINGS>", skip_serializing_if = "Vec::is_empty")
    )]
    #[cfg_attr(feature = "schema", schemars(length(max = MOST_HANDLINGS)))]
    pub custody: Handlings,
    /// Whether it is the example that comes with the app.
    #[serde(default)]
    pub example: bool,
    /// Whether the sample is kept as a known good, for others to be compared with.
    #[serde(default, skip_serializing_if = "is_false")]
    pub known_good: bool,
    /// What is examined.
    pub sample: Sample,
    /// What is at hand.
    #[cfg_attr(feature = "schema", schemars(extend("enum" = Equipment::ALL.map(Equipment::code))))]
    pub equipment: String,
    /// Every answer, oldest first; at most one for a question and what it is asked of.
    #[serde(default, deserialize_with = "at_most::<_, _, MOST_ANSWERS>")]
    #[cfg_attr(feature = "schema", schemars(length(max = MOST_ANSWERS)))]
    pub answers: Vec<Answer>,
    /// The photos, in the order they were taken.
    #[serde(default, deserialize_with = "at_most::<_, _, MOST_PHOTOS>")]
    #[cfg_attr(feature = "schema", schemars(length(max = MOST_PHOTOS)))]
    pub photos: Vec<Photo>,
    /// How what is wrong may hurt somebody, as the examiner weighed it.
    #[cfg_attr(feature = "first", serde(default, skip_serializing_if = "Option::is_none"))]
    #[cfg_attr(
        not(feature = "first"),
        serde(default, skip_serializing_if = "Vec::is_empty", deserialize_with = "at_most::<_, _, MOST_SCENARIOS>")
    )]
    #[cfg_attr(feature = "schema", schemars(length(max = MOST_SCENARIOS)))]
    pub scenarios: Scenarios,
}

/// What is examined.
#[derive(Debug, Deserialize, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Sample {
    /// The number written on the sample or its bag.
    #[serde(default)]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub number: String,
    /// What it is called, in the examiner's words.
    #[serde(default)]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub title: String,
    /// The kind of product.
    #[cfg_attr(feature = "schema", schemars(extend("enum" = Kind::ALL.map(Kind::code))))]
    pub kind: String,
    /// Where it is sold.
    #[cfg_attr(feature = "schema", schemars(extend("enum" = Market::ALL.map(Market::code))))]
    pub market: String,
}

/// One answer: a question, what it is asked of, and exactly one of the fields that say what was answered.
#[derive(Debug, Default, Deserialize, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Answer {
    /// The question.
    pub question: String,
    /// Which of several it speaks of: a socket counted from the flex end (`socket-2`), a core (`earth`), a place (`package`).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub of: Option<String>,
    /// One of the question's answers.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub one: Option<String>,
    /// Those of the question's answers that fit; none of them is an answer too.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub any: Option<Vec<String>>,
    /// What is printed there, as it is printed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub printed: Option<String>,
    /// How many there are.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(with = "Option<u8>"))]
    pub count: Option<Number>,
    /// What an instrument showed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reading: Option<Reading>,
    /// Nothing is printed there, or there is no such thing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(extend("const" = true)))]
    pub nothing: Option<bool>,
    /// Looked, and could not tell.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(extend("const" = true)))]
    pub cannot_tell: Option<bool>,
    /// The seller or owner would not let one look.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(extend("const" = true)))]
    pub refused: Option<bool>,
    /// The tool for it is not at hand; the same as not looked at.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(extend("const" = true)))]
    pub no_tool: Option<bool>,
    /// Put off; the same as not looked at.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(extend("const" = true)))]
    pub later: Option<bool>,
}

/// What an instrument showed: exactly one of `value`, `above`, `below` and `open`.
#[derive(Debug, Default, Deserialize, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Reading {
    /// The number on the display.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(with = "Option<f64>"))]
    pub value: Option<Number>,
    /// More than this number.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(with = "Option<f64>"))]
    pub above: Option<Number>,
    /// Less than this number.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(with = "Option<f64>"))]
    pub below: Option<Number>,
    /// Over the range, with no number: an open circuit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(extend("const" = true)))]
    pub open: Option<bool>,
    /// The unit of every number here.
    pub unit: String,
    /// One step of the display's last digit. Left out, the digits of the number tell: 0.370 steps by 0.001.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(with = "Option<f64>", extend("exclusiveMinimum" = 0)))]
    pub step: Option<Number>,
    /// The type of instrument it was read with. Left out, it is the least exact that the question knows.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub instrument: Option<String>,
    /// The very instrument, where its accuracy is not that of its type.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub own_instrument: Option<OwnInstrument>,
    /// What was typed, untouched.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub typed: Option<String>,
}

/// Somebody's own instrument: what it may be wrong by is the sum of the three.
#[derive(Debug, Deserialize, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct OwnInstrument {
    /// What its owner calls it.
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub name: String,
    /// Percent of the reading.
    #[cfg_attr(feature = "schema", schemars(with = "f64", range(min = 0)))]
    pub percent: Number,
    /// Steps of the display's last digit.
    #[cfg_attr(feature = "schema", schemars(with = "f64", range(min = 0)))]
    pub digits: Number,
    /// A fixed amount.
    #[cfg_attr(feature = "schema", schemars(with = "f64", range(min = 0)))]
    pub fixed: Number,
    /// The unit of the fixed amount.
    pub fixed_unit: String,
}

/// A photo; its bytes are kept apart.
#[derive(Debug, Deserialize, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Photo {
    /// SHA-256 of its bytes, 64 lower-case hexadecimal digits.
    #[cfg_attr(feature = "schema", schemars(regex(pattern = "^[0-9a-f]{64}$")))]
    pub sha256: String,
    /// Its media type.
    #[cfg_attr(feature = "schema", schemars(extend("enum" = ["image/jpeg", "image/webp"])))]
    pub media_type: String,
    /// Width in pixels.
    pub width: u32,
    /// Height in pixels.
    pub height: u32,
    /// When it was attached, such as `2026-11-24T10:30:00Z`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(regex(pattern = MOMENT)))]
    pub taken: Option<String>,
    /// The question it belongs to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub question: Option<String>,
    /// Which of several it belongs to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub of: Option<String>,
    /// It shows where the sample came from: the listing, or the parcel before it was opened.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(extend("const" = true)))]
    pub origin: Option<bool>,
}

impl Examination {
    /// Reads the form; what the words in it mean is looked at later.
    pub fn from_json(text: &str) -> Result<Self, RecordFault> {
        serde_json::from_str(text).map_err(|error| RecordFault::from_json(&error))
    }

    /// Writes the form.
    #[expect(clippy::expect_used, reason = "the form has nothing that JSON cannot hold")]
    pub fn to_json(&self) -> String {
        serde_json::to_string_pretty(self).expect("texts, flags, lists and numbers that are written already are JSON")
    }
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde hands a field on by reference")]
const fn is_false(flag: &bool) -> bool {
    !*flag
}

/// Reads a list and keeps at most one entry more than allowed: enough to see that there are too many.
fn at_most<'de, D: Deserializer<'de>, T: Deserialize<'de>, const MOST: usize>(list: D) -> Result<Vec<T>, D::Error> {
    struct AtMost<T, const MOST: usize>(core::marker::PhantomData<T>);

    impl<'de, T: Deserialize<'de>, const MOST: usize> Visitor<'de> for AtMost<T, MOST> {
        type Value = Vec<T>;

        fn expecting(&self, f: &mut core::fmt::Formatter) -> core::fmt::Result {
            f.write_str("a list")
        }

        fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Self::Value, A::Error> {
            let mut kept = Vec::new();
            while kept.len() <= MOST {
                match list.next_element()? {
                    Some(entry) => kept.push(entry),
                    None => return Ok(kept),
                }
            }
            while list.next_element::<IgnoredAny>()?.is_some() {}
            Ok(kept)
        }
    }

    list.deserialize_seq(AtMost::<T, MOST>(core::marker::PhantomData))
}
