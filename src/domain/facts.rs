//! Questions whose answers many checks share: what the sample has, what is printed on it, and how the readings are taken.

use super::check::inside::opening;
use super::check::plug::fuse;
use super::instrument::Instrument;
use super::quantity::{ElectricCurrent, QuantityKind, Unit, amperes};
use super::question::{Ask, Per, Printed, Question, Stage};
use super::sample::{Equipment, Kind, Place};
use super::view::View;

/// How many 13 A sockets the body has.
pub const SOCKET_COUNT: &Question =
    &Question::asking("socket-count", Place::Sockets, Equipment::Eyes, Ask::Count(1, 20)).when(is_lead);

/// What the body has beside sockets.
pub const EXTRAS: &Question = &Question::any(
    "extras",
    Place::Sockets,
    Equipment::Eyes,
    &["usb", "switch", "neon", "timer", "rcd", "electronics"],
);

/// What the product promises, wherever it says so.
pub const PROMISES: &Question = &Question::any(
    "promises",
    Place::WhatItSays,
    Equipment::Eyes,
    &["surge", "overload", "shutters", "switch", "outdoor", "thermal"],
);

/// What each place states of volts, amperes, watts, length and cross-section, as it is printed.
pub const RATING: &Question =
    &Question::asking("rating", Place::WhatItSays, Equipment::Eyes, Ask::Printed(Printed::Rating)).per(Per::Claim);

/// The print along the flex, as it is printed.
pub const FLEX_PRINT: &Question =
    &Question::asking("flex-print", Place::Cable, Equipment::Eyes, Ask::Printed(Printed::Flex));

/// How the plug is made.
pub const PLUG_MAKE: &Question =
    &Question::one("plug-make", Place::Plug, Equipment::HandTools, &["moulded", "rewirable"]).when(has_uk_plug);

/// Which pattern the plug has.
pub const PLUG_PATTERN: &Question = &Question::one(
    "plug-pattern",
    Place::Plug,
    Equipment::Eyes,
    &["uk-three-pin", "uk-plug-with-converter", "two-round-pins", "flat-parallel-pins", "flat-slanted-pins", "other"],
);

/// The rating printed on the fuse.
pub const FUSE_RATING: &Question = &Question::one(
    "fuse-rating",
    Place::Plug,
    Equipment::Eyes,
    &["3", "5", "10", "13", "above-13", "other-up-to-13", "not-printed"],
)
.when(fuse::may_be_seen)
.implied(fuse::without_print);

/// The current that an answer to [`FUSE_RATING`] names; `None` for one that names none.
pub fn in_amperes(rating: &str) -> Option<ElectricCurrent> {
    rating.parse().ok().map(amperes)
}

/// Length of the flex alone, from where it leaves the plug to where it enters the body.
pub const FLEX_LENGTH: &Question = &Question::asking(
    "flex-length",
    Place::Cable,
    Equipment::HandTools,
    Ask::Measure {
        kind: QuantityKind::Length,
        units: &[Unit::Metre, Unit::Centimetre, Unit::Millimetre],
        instruments: &[Instrument::Rule, Instrument::Tape],
    },
);

/// Temperature of the room while resistances are read.
pub const ROOM_TEMPERATURE: &Question = &Question::asking(
    "room-temperature",
    Place::Inside,
    Equipment::Meters,
    Ask::Measure {
        kind: QuantityKind::Temperature,
        units: &[Unit::DegreeCelsius],
        instruments: &[Instrument::Thermometer],
    },
)
.after_cutting();

/// Resistance of each core of the flex alone, read at its cut ends.
pub const CORE_RESISTANCE: &Question = &Question::asking(
    "core-resistance",
    Place::Inside,
    Equipment::Meters,
    Ask::Measure {
        kind: QuantityKind::Resistance,
        units: &[Unit::Ohm, Unit::Milliohm],
        instruments: &[Instrument::FourWireMeter, Instrument::HandMeterNulled, Instrument::HandMeter],
    },
)
.per(Per::Core)
.after_cutting();

/// Length of the piece of flex whose cores were read.
pub const PIECE_LENGTH: &Question = &Question::asking(
    "piece-length",
    Place::Inside,
    Equipment::Meters,
    Ask::Measure {
        kind: QuantityKind::Length,
        units: &[Unit::Metre, Unit::Millimetre],
        instruments: &[Instrument::Rule, Instrument::Tape],
    },
)
.after_cutting();

/// Outer diameter of the flex.
pub const FLEX_DIAMETER: &Question = &Question::asking(
    "flex-diameter",
    Place::Cable,
    Equipment::HandTools,
    Ask::Measure {
        kind: QuantityKind::Length,
        units: &[Unit::Millimetre],
        instruments: &[Instrument::DigitalCalliper, Instrument::VernierCalliper, Instrument::Rule],
    },
);

/// How many cores the flex has, by sight.
pub const CORE_COUNT: &Question =
    &Question::one("core-count", Place::Inside, Equipment::Meters, &["three", "two", "other"]).when(cores_can_be_seen);

/// Whether the flex may be cut: the last thing that is done to a sample.
pub const MAY_CUT: &Question =
    &Question { stage: Stage::Cut, ..Question::one("may-cut", Place::Inside, Equipment::Meters, &["yes", "no"]) };

/// What was made sure of before dead readings: without the first nobody reads at all, and without the rest a sound lead reads open.
pub const READINGS_PREPARED: &Question = &Question::any(
    "readings-prepared",
    Place::Readings,
    Equipment::HandTools,
    &["unplugged", "nothing-connected", "switches-on", "fuse-good"],
);

fn is_lead(view: &View) -> bool {
    view.kind() == Kind::ExtensionLead
}

/// Whether three UK pins enter the socket, or may: those of the plug, or of a converter around it.
pub fn has_uk_plug(view: &View) -> bool {
    matches!(view.one(PLUG_PATTERN), None | Some("uk-three-pin" | "uk-plug-with-converter"))
}

/// Whether the flex may be cut.
pub fn may_be_cut(view: &View) -> bool {
    view.one(MAY_CUT) == Some("yes")
}

/// Whether the cores come to light: where the body is opened, or at a cut end.
pub fn cores_can_be_seen(view: &View) -> bool {
    opening::is_open(view) || may_be_cut(view)
}

/// Whether the body has an extra; an unanswered question is taken as "it may".
pub fn may_have(view: &View, extra: &str) -> bool {
    view.marked(EXTRAS, extra) != Some(false)
}

/// Whether the body is known to have an extra.
pub fn has(view: &View, extra: &str) -> bool {
    view.marked(EXTRAS, extra) == Some(true)
}
