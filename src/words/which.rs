//! Which one of several is meant: "socket 2", "the brown core", "the package".

use crate::domain::question::{ClaimPlace, Core, Target};
use crate::domain::sample::Kind;

/// The one that is meant, as it stands in the middle of a sentence.
pub fn which(target: Target, kind: Kind) -> String {
    match target {
        Target::Sample => "the sample".to_owned(),
        Target::Socket(_) if kind == Kind::CordSet => "the connector".to_owned(),
        Target::Socket(n) => format!("socket {n}"),
        Target::Core(core) => self::core(core).to_owned(),
        Target::Claim(place) => claim(place, kind).to_owned(),
    }
}

/// A core by its colour and job.
pub const fn core(core: Core) -> &'static str {
    match core {
        Core::Line => "the brown core (line)",
        Core::Neutral => "the blue core (neutral)",
        Core::Earth => "the green-and-yellow core (earth)",
    }
}

/// The same beside a picture.
pub const fn core_in_short(core: Core) -> &'static str {
    match core {
        Core::Line => "brown (line)",
        Core::Neutral => "blue (neutral)",
        Core::Earth => "green-and-yellow (earth)",
    }
}

/// A place that can state a rating, at the head of a column.
pub const fn claim_in_short(place: ClaimPlace, kind: Kind) -> &'static str {
    match (place, kind) {
        (ClaimPlace::Listing, _) => "seller",
        (ClaimPlace::Package, _) => "package",
        (ClaimPlace::Body, Kind::ExtensionLead) => "body",
        (ClaimPlace::Body, Kind::CordSet) => "connector",
        (ClaimPlace::Plug, _) => "plug",
        (ClaimPlace::Flex, _) => "flex",
    }
}

/// A place that can state a rating.
pub const fn claim(place: ClaimPlace, kind: Kind) -> &'static str {
    match (place, kind) {
        (ClaimPlace::Listing, _) => "the seller’s page or sign",
        (ClaimPlace::Package, _) => "the package",
        (ClaimPlace::Body, Kind::ExtensionLead) => "the body with the sockets",
        (ClaimPlace::Body, Kind::CordSet) => "the connector",
        (ClaimPlace::Plug, _) => "the plug",
        (ClaimPlace::Flex, _) => "the flex",
    }
}
