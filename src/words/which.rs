//! Which one of several a sentence speaks of.

use std::borrow::Cow;

use crate::domain::question::{ClaimPlace, Core, Target};
use crate::domain::sample::Kind;

/// The noun phrase for a target, with its article: "socket 2", "the brown (line) core", "the package".
pub fn which(target: Target, kind: Kind) -> Cow<'static, str> {
    Cow::Borrowed(match (target, kind) {
        (Target::Sample, _) => "this sample",
        (Target::Socket(number), Kind::ExtensionLead) => return Cow::Owned(format!("socket\u{A0}{number}")),
        (Target::Socket(_), Kind::CordSet) => "the connector",
        (Target::Core(Core::Line), _) => "the brown (line) core",
        (Target::Core(Core::Neutral), _) => "the blue (neutral) core",
        (Target::Core(Core::Earth), _) => "the green-and-yellow (earth) core",
        (Target::Claim(place), kind) => claim_place(place, kind),
    })
}

/// The noun phrase for a place that can state a rating.
pub const fn claim_place(place: ClaimPlace, kind: Kind) -> &'static str {
    match (place, kind) {
        (ClaimPlace::Listing, _) => "the seller's page",
        (ClaimPlace::Package, _) => "the package",
        (ClaimPlace::Body, Kind::ExtensionLead) => "the body",
        (ClaimPlace::Body, Kind::CordSet) => "the connector",
        (ClaimPlace::Plug, _) => "the plug",
        (ClaimPlace::Flex, _) => "the flex",
    }
}
