//! How what is wrong may hurt somebody, field for field.

use serde::{Deserialize, Serialize};

use super::{MOST_CHECKS, at_most};
#[cfg(feature = "schema")]
use crate::domain::standard::eu_risk::Injury;
#[cfg(feature = "schema")]
use crate::record::LONGEST_TEXT;
use crate::record::MOST_EVENTS;
use crate::record::number::Number;

/// A way in which what is wrong may hurt somebody.
#[derive(Debug, Deserialize, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Scenario {
    /// What happens in the end, in the examiner's words.
    #[serde(default)]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub title: String,
    /// The events, in order, each once all earlier ones have happened.
    #[serde(default, deserialize_with = "at_most::<_, _, MOST_EVENTS>")]
    #[cfg_attr(feature = "schema", schemars(length(max = MOST_EVENTS)))]
    pub events: Vec<Event>,
    /// How bad the injury at the end is.
    #[cfg_attr(feature = "schema", schemars(extend("enum" = Injury::ALL.map(Injury::code))))]
    pub injury: String,
    /// Why it is taken to be so bad.
    #[serde(default)]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub injury_reason: String,
    /// The injury is what the draft began with, and nobody has weighed it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(extend("const" = true)))]
    pub injury_guess: Option<bool>,
    /// The checks whose findings it follows from, each once.
    #[serde(default, deserialize_with = "at_most::<_, _, MOST_CHECKS>")]
    pub of: Vec<String>,
}

/// An event on the way to an injury.
#[derive(Debug, Deserialize, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Event {
    /// What happens.
    #[serde(default)]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub happens: String,
    /// How likely it is in the life of the product.
    #[cfg_attr(feature = "schema", schemars(with = "f64", extend("exclusiveMinimum" = 0, "maximum" = 1)))]
    pub probability: Number,
    /// Why it is taken to be so likely.
    #[serde(default)]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub reason: String,
    /// It is what the draft began with, and nobody has weighed it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(extend("const" = true)))]
    pub guess: Option<bool>,
}
