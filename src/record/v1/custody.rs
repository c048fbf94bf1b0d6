//! Where a sample came from and who held it since, field for field.

use serde::{Deserialize, Serialize};

#[cfg(feature = "schema")]
use super::MOMENT;
#[cfg(feature = "schema")]
use crate::record::LONGEST_TEXT;

/// How somebody came by a sample.
#[derive(Debug, Deserialize, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Acquired {
    /// The place: a shop, a market, a website, an address.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub place: String,
    /// When it was bought or handed over, such as `2026-11-24T10:30:00Z`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(regex(pattern = MOMENT)))]
    pub when: Option<String>,
    /// Who sold it or gave it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub seller: String,
    /// What was paid, with its currency.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub price: String,
    /// The number of the order or receipt.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub order: String,
    /// The address of the listing.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub listing: String,
    /// What the parcel and its seals looked like when it came.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub parcel: String,
}

/// One time at which a sample changed hands, or something was done with it.
#[derive(Debug, Deserialize, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Handling {
    /// Its number in the chain, from 1. Written by hand, an entry has neither a number nor a link.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(range(min = 1)))]
    pub number: Option<u32>,
    /// When, such as `2026-11-24T10:30:00Z`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(regex(pattern = MOMENT)))]
    pub when: Option<String>,
    /// Who held it or handed it on.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub who: String,
    /// What was done.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub done: String,
    /// The number of the seal or bag it was in afterwards.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "schema", schemars(length(max = LONGEST_TEXT)))]
    pub seal: String,
    /// SHA-256 of the link before it, or of when the examination was begun, and of this entry; 64 lower-case hexadecimal digits.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(regex(pattern = "^[0-9a-f]{64}$")))]
    pub link: Option<String>,
}
