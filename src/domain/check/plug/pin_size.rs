//! The sizes of the pins by calliper: width, thickness, length, spacing, and how far line and neutral stay from the edge.
//!
//! Every tolerance here is recalled: a size outside it cannot be told ("confirm with the Figure 5 gauge") and decides nothing, until it is
//! outside by more than its own doubt and 0.2 mm.

use super::pins::PINS_AND_SLEEVES;
use crate::domain::check::ruling::against;
use crate::domain::check::{Check, Judge, Prospect};
use crate::domain::decision::Limit;
use crate::domain::facts::has_uk_plug;
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::finding::{Conformity, Evidence, Judgement, Reason};
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{Length, QuantityKind, Unit};
use crate::domain::question::{Ask, Core, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_1, practice};
use crate::domain::uncertainty::{Measured, combine2, combine3};
use crate::domain::view::View;

const fn callipered(id: &'static str) -> Question {
    let ask = Ask::Measure {
        kind: QuantityKind::Length,
        units: &[Unit::Millimetre],
        instruments: &[Instrument::DigitalCalliper, Instrument::VernierCalliper],
    };
    Question::asking(id, Place::Plug, Equipment::HandTools, ask).when(has_uk_plug)
}

/// From line or neutral, whichever is nearer, to the edge of the plug.
pub const TO_EDGE: &Question = &callipered("pin-to-edge");

/// Width of line or neutral, whichever is further from what it should be.
pub const LIVE_WIDTH: &Question = &callipered("live-pin-width");

/// Width of the earth pin.
pub const EARTH_WIDTH: &Question = &callipered("earth-pin-width");

/// Thickness of the pin that is furthest from what it should be.
pub const THICKNESS: &Question = &callipered("pin-thickness");

/// Length of line or neutral, whichever is further from what it should be.
pub const LIVE_LENGTH: &Question = &callipered("live-pin-length");

/// Length of the earth pin.
pub const EARTH_LENGTH: &Question = &callipered("earth-pin-length");

/// Over line and neutral at their base, from the outer side of one to the outer side of the other.
pub const ACROSS: &Question = &callipered("across-live-pins");

/// From the far side of the earth pin to the far side of line and neutral, at their base.
pub const EARTH_TO_FAR_SIDE: &Question = &callipered("earth-pin-to-far-side");

/// **Finds** line or neutral too close to the edge of the plug.
///
/// **Why it matters** a finger around the edge touches a live pin while the plug is half in.
///
/// **Source** BS 1363-1: at least 9.5 mm (read; sub-clause unconfirmed).
///
/// **Decision** with the calliper's doubt. A danger where it is less than 7 mm (our line) or where the pins have no sleeves.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, plug::pin_size};
/// assert_eq!(by_code("pin-near-edge").map(|check| check.place), Some(pin_size::PIN_NEAR_EDGE.place));
/// ```
pub const PIN_NEAR_EDGE: &Check = &Check {
    code: "pin-near-edge",
    place: Place::Plug,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Reckoned(near_edge),
    asks: &[TO_EDGE, PINS_AND_SLEEVES],
    against: &[bs1363_1::PIN_TO_EDGE],
    prospect: Prospect { minutes: 0.7, percent: 20 },
};

/// **Finds** a pin too wide or too narrow.
///
/// **Why it matters** too wide it spreads the socket's contacts, too narrow it touches them badly and runs hot.
///
/// **Source** BS 1363-1, Figure 4a (memory-high).
///
/// **Decision** breaks only when outside by more than the expanded uncertainty and 0.2 mm; nearer it cannot be told.
pub const PIN_WIDTH_OFF: &Check = &sized(
    "pin-width-off",
    Judge::Reckoned(|view| {
        let live = (LIVE_WIDTH, bs1363_1::pin_width(Core::Line));
        recalled(view, &[live, (EARTH_WIDTH, bs1363_1::pin_width(Core::Earth))])
    }),
    &[LIVE_WIDTH, EARTH_WIDTH],
    &[bs1363_1::PIN_WIDTH, bs1363_1::GAUGE],
);

/// **Finds** a pin too thick or too thin.
///
/// **Why it matters** too thick it spreads the socket's contacts, too thin it touches them badly and runs hot.
///
/// **Source** BS 1363-1, Figure 4a (memory-high).
///
/// **Decision** as for `pin-width-off`.
pub const PIN_THICKNESS_OFF: &Check = &sized(
    "pin-thickness-off",
    Judge::Reckoned(|view| recalled(view, &[(THICKNESS, bs1363_1::pin_thickness())])),
    &[THICKNESS],
    &[bs1363_1::PIN_THICKNESS, bs1363_1::GAUGE],
);

/// **Finds** a pin too long or too short.
///
/// **Why it matters** the earth pin has to touch first, and line and neutral must not be bare while they touch.
///
/// **Source** BS 1363-1, Figure 4a (nominal read, range memory-high; copies disagree on the earth pin).
///
/// **Decision** as for `pin-width-off`.
pub const PIN_LENGTH_OFF: &Check = &sized(
    "pin-length-off",
    Judge::Reckoned(|view| {
        let live = (LIVE_LENGTH, bs1363_1::pin_length(Core::Line));
        recalled(view, &[live, (EARTH_LENGTH, bs1363_1::pin_length(Core::Earth))])
    }),
    &[LIVE_LENGTH, EARTH_LENGTH],
    &[bs1363_1::PIN_LENGTH, bs1363_1::GAUGE],
);

/// **Finds** pins too far apart or too close together.
///
/// **Why it matters** such a plug is forced in, and bends the socket's contacts.
///
/// **Source** BS 1363-1, Figure 4a: 22.2 mm (read), tolerance memory-medium; the standard itself uses a gauge.
///
/// **Decision** both spacings follow from readings over the outer sides, less half the sizes of the pins. As for `pin-width-off`.
pub const PIN_SPACING_OFF: &Check = &sized(
    "pin-spacing-off",
    Judge::Reckoned(spacing),
    &[ACROSS, EARTH_TO_FAR_SIDE, LIVE_WIDTH, EARTH_WIDTH, THICKNESS],
    &[bs1363_1::PIN_SPACING, bs1363_1::GAUGE],
);

const fn sized(
    code: &'static str,
    judge: Judge,
    asks: &'static [&'static Question],
    against: &'static [Clause],
) -> Check {
    Check {
        code,
        place: Place::Plug,
        needs: Equipment::HandTools,
        severity: Breach,
        applies: has_uk_plug,
        judge,
        asks,
        against,
        prospect: Prospect { minutes: 1.0, percent: 10 },
    }
}

fn near_edge(view: &View) -> Judgement {
    let Some(reading) = view.reading(TO_EDGE, Target::Sample) else {
        return Judgement::without_choice(Danger, view.answer(TO_EDGE, Target::Sample));
    };
    let Some(distance) = reading.measured::<Length>() else {
        return Judgement::cannot_tell(Danger, Reason::OutOfRange);
    };
    let held = |limit| against(Target::Sample, &distance, &limit);
    let is_far_too_near = held(practice::pin_far_from_fingers()).outcome == Conformity::Nonconforming;
    let is_bare = view.marked(PINS_AND_SLEEVES, "no-sleeves") == Some(true);
    let severity = if is_far_too_near || is_bare { Danger } else { Breach };
    Judgement::by_readings(severity, vec![held(bs1363_1::pin_to_edge())], 1)
}

/// A reading of a question; `None` where there is none, or where it is no number.
fn read(view: &View, question: &Question) -> Option<Measured<Length>> {
    view.reading(question, Target::Sample).and_then(Reading::measured)
}

fn recalled(view: &View, sizes: &[(&'static Question, Limit<Length>)]) -> Judgement {
    let held = sizes.iter().filter_map(|(question, limit)| Some(leniently(&read(view, question)?, limit).of(question)));
    let first = sizes.iter().find_map(|(question, _)| view.answer(question, Target::Sample));
    by_recalled(held.collect(), sizes.len(), Judgement::without_choice(Breach, first))
}

/// The spacings of the pins, from readings over their outer sides.
fn spacing(view: &View) -> Judgement {
    // A pin that nobody measured is taken to be as the standard has it, with the whole tolerance as its doubt.
    let size_of = |question, limit: &Limit<Length>| read(view, question).unwrap_or_else(|| as_made(limit));
    let live_width = size_of(LIVE_WIDTH, &bs1363_1::pin_width(Core::Line));
    let earth_width = size_of(EARTH_WIDTH, &bs1363_1::pin_width(Core::Earth));
    let thickness = size_of(THICKNESS, &bs1363_1::pin_thickness());
    let between_live = read(view, ACROSS).map(|across| combine2(across, live_width, |across, width| across - width));
    let to_earth = read(view, EARTH_TO_FAR_SIDE)
        .map(|far| combine3(far, earth_width, thickness, |far, width, thick| far - width / 2.0 - thick / 2.0));
    let held = [(ACROSS, between_live), (EARTH_TO_FAR_SIDE, to_earth)]
        .into_iter()
        .filter_map(|(question, at)| Some(leniently(&at?, &bs1363_1::pin_spacing()).of(question)));
    let first = [ACROSS, EARTH_TO_FAR_SIDE].iter().find_map(|question| view.answer(question, Target::Sample));
    by_recalled(held.collect(), 2, Judgement::without_choice(Breach, first))
}

/// A size that nobody read: the middle of its limit, known to the limit's width.
fn as_made(limit: &Limit<Length>) -> Measured<Length> {
    match *limit {
        Limit::Between(low, high) => Measured::rectangular((low + high) / 2.0, (high - low) / 2.0),
        Limit::AtLeast(only) | Limit::AtMost(only) => Measured::exact(only),
    }
}

/// A size against a recalled limit: outside only beyond its expanded uncertainty and the grace.
fn leniently(size: &Measured<Length>, limit: &Limit<Length>) -> Evidence {
    let strict = against(Target::Sample, size, limit);
    let granted = limit.friendly(&Measured::new(size.value, (size.expanded() + practice::pin_grace()) / 2.0));
    let is_near = strict.outcome == Conformity::Nonconforming && limit.holds(granted);
    Evidence { outcome: if is_near { Conformity::Inconclusive } else { strict.outcome }, ..strict }
}

/// All sizes read: what cannot be told decides nothing. Some missing: it counts as not settled.
fn by_recalled(held: Vec<Evidence>, of: usize, without: Judgement) -> Judgement {
    if held.is_empty() {
        return without;
    }
    let all_read = held.len() == of;
    let judgement = Judgement::by_readings(Breach, held, of);
    if all_read && judgement.outcome == Conformity::Inconclusive { judgement.only_told() } else { judgement }
}
