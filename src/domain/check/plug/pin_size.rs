//! The plug's face under a calliper: sizes and places of the pins.
//!
//! Tolerances of the pins are recalled, not read: a reading outside one is told and decides nothing until it lies further outside than
//! its own doubt and 0.2 mm. The distance from pin to edge was read, and decides.

use super::sleeves::has_bare_pins;
use crate::domain::check::{Check, Judge, Prospect, ruling};
use crate::domain::decision::Limit;
use crate::domain::facts::has_uk_plug;
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::finding::{Conformity, Evidence, Judgement};
use crate::domain::instrument::Instrument::{DigitalCalliper, Rule, VernierCalliper};
use crate::domain::quantity::{Length, QuantityKind, Unit, millimetres};
use crate::domain::question::{Ask, Core, Per, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_1};
use crate::domain::uncertainty::{Measured, combine3};
use crate::domain::view::View;

/// The shortest way from the line or neutral pin to the edge of the plug, on its face.
pub const TO_EDGE: &Question = &sized("pin-to-edge");

/// Width of a pin: its longer side.
pub const WIDTH: &Question = &sized("pin-width").per(Per::Pin);

/// Thickness of a pin: its shorter side.
pub const THICKNESS: &Question = &sized("pin-thickness").per(Per::Pin);

/// Length of a pin from the plug's face.
pub const LENGTH: &Question = &sized("pin-length").per(Per::Pin);

/// Across line and neutral at their base, from outer side to outer side.
pub const ACROSS: &Question = &sized("across-line-and-neutral");

/// From the outer side of the earth pin to the far sides of line and neutral, at their base.
pub const EARTH_TO_FAR_SIDE: &Question = &sized("earth-to-far-side");

const fn sized(id: &'static str) -> Question {
    let ask = Ask::Measure {
        kind: QuantityKind::Length,
        units: &[Unit::Millimetre],
        instruments: &[DigitalCalliper, VernierCalliper, Rule],
    };
    Question::asking(id, Place::Plug, Equipment::HandTools, ask).when(has_uk_plug)
}

/// **Finds** line or neutral closer than 9.5 mm to the plug's edge.
///
/// **Why it matters** a finger on the edge touches a half-entered live pin.
///
/// **Source** BS 1363-1 (read, clause number unconfirmed); 7 mm as the line to a danger is common practice.
///
/// **Decision** by conformance probability; a danger under 7 mm, or where the pins have no sleeves.
///
/// **Example**
/// ```
/// use plugwary::domain::check::plug::pin_size::PIN_NEAR_EDGE;
/// use plugwary::domain::finding::Severity;
/// assert_eq!(PIN_NEAR_EDGE.severity, Severity::Danger);
/// ```
pub const PIN_NEAR_EDGE: &Check = &Check {
    code: "pin-near-edge",
    place: Place::Plug,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Reckoned(near_edge),
    asks: &[TO_EDGE],
    against: &[bs1363_1::PIN_TO_EDGE, Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 20 },
};

/// **Finds** a pin too wide or too narrow.
///
/// **Why it matters** a wide pin strains the socket's contacts, a narrow one heats them.
///
/// **Source** BS 1363-1, Figure 4a (memory-high).
///
/// **Decision** told, not decided, until beyond the limit by more than U + 0.2 mm.
pub const PIN_WIDTH_OFF: &Check = &recalled("pin-width-off", width_off, &[WIDTH], &[bs1363_1::PIN_WIDTH]);

/// **Finds** a pin too thick or too thin.
///
/// **Why it matters** as for the width; a thin pin is the commoner fault.
///
/// **Source** BS 1363-1, Figure 4a (memory-high).
///
/// **Decision** told, not decided, until beyond the limit by more than U + 0.2 mm.
pub const PIN_THICKNESS_OFF: &Check =
    &recalled("pin-thickness-off", thickness_off, &[THICKNESS], &[bs1363_1::PIN_THICKNESS]);

/// **Finds** a pin too long or too short.
///
/// **Why it matters** a short pin meets its contact by the tip; a short earth pin comes late.
///
/// **Source** BS 1363-1, Figure 4a (nominal read, range memory-high).
///
/// **Decision** told, not decided, until beyond the limit by more than U + 0.2 mm.
pub const PIN_LENGTH_OFF: &Check = &recalled("pin-length-off", length_off, &[LENGTH], &[bs1363_1::PIN_LENGTH]);

/// **Finds** pins that stand too close together or too far apart.
///
/// **Why it matters** forced in, they bend the socket's contacts, which then run hot.
///
/// **Source** BS 1363-1, Figure 4a (nominal read); the standard itself uses the Figure 5 gauge.
///
/// **Decision** centres reckoned from outer sides and pin sizes; told, not decided, until beyond by more than U + 0.2 mm.
pub const PIN_SPACING_OFF: &Check = &recalled(
    "pin-spacing-off",
    spacing_off,
    &[ACROSS, EARTH_TO_FAR_SIDE, WIDTH, THICKNESS],
    &[bs1363_1::PIN_SPACING, bs1363_1::GAUGE],
);

const fn recalled(
    code: &'static str,
    judge: fn(&View) -> Judgement,
    asks: &'static [&'static Question],
    against: &'static [Clause],
) -> Check {
    Check {
        code,
        place: Place::Plug,
        needs: Equipment::HandTools,
        severity: Breach,
        applies: has_uk_plug,
        judge: Judge::Reckoned(judge),
        asks,
        against,
        prospect: Prospect { minutes: 1.0, percent: 15 },
    }
}

/// Under this a pin is within a fingertip's reach, sleeves or not (common practice).
fn fingertip() -> Limit<Length> {
    Limit::AtLeast(millimetres(7.0))
}

fn near_edge(view: &View) -> Judgement {
    let Some(distance) = read(view, TO_EDGE, Target::Sample) else {
        return Judgement::without_choice(Danger, view.answer(TO_EDGE, Target::Sample));
    };
    let edge = ruling::against(Target::Sample, &distance, &bs1363_1::pin_to_edge());
    let reach = ruling::against(Target::Sample, &distance, &fingertip());
    if reach.outcome == Conformity::Nonconforming {
        return Judgement::by_readings(Danger, vec![edge, reach], 1);
    }
    let severity = if has_bare_pins(view) { Danger } else { Breach };
    Judgement::by_readings(severity, vec![edge], 1)
}

fn width_off(view: &View) -> Judgement {
    each_pin(view, WIDTH, bs1363_1::pin_width)
}

fn thickness_off(view: &View) -> Judgement {
    each_pin(view, THICKNESS, |_| bs1363_1::pin_thickness())
}

fn length_off(view: &View) -> Judgement {
    each_pin(view, LENGTH, bs1363_1::pin_length)
}

fn spacing_off(view: &View) -> Judgement {
    let size = |question, pin| read(view, question, Target::Pin(pin));
    let between_live = || {
        let across = read(view, ACROSS, Target::Sample)?;
        let (line, neutral) = (size(WIDTH, Core::Line)?, size(WIDTH, Core::Neutral)?);
        Some(combine3(across, line, neutral, |across, line, neutral| across - (line + neutral) / 2.0))
    };
    let to_earth = || {
        let across = read(view, EARTH_TO_FAR_SIDE, Target::Sample)?;
        let earth = size(WIDTH, Core::Earth)?;
        let live = size(THICKNESS, Core::Line).or_else(|| size(THICKNESS, Core::Neutral))?;
        Some(combine3(across, earth, live, |across, earth, live| across - (earth + live) / 2.0))
    };
    let evidence = [(Core::Line, between_live()), (Core::Earth, to_earth())]
        .into_iter()
        .filter_map(|(pin, spacing)| Some(held_loosely(Target::Pin(pin), &spacing?, &bs1363_1::pin_spacing())))
        .collect();
    let answers = [ACROSS, EARTH_TO_FAR_SIDE].map(|question| (question, Target::Sample));
    judged(view, evidence, &answers)
}

fn each_pin(view: &View, question: &'static Question, limit: fn(Core) -> Limit<Length>) -> Judgement {
    let pins = Core::ALL.into_iter().map(|pin| (pin, Target::Pin(pin)));
    let evidence = pins
        .clone()
        .filter_map(|(pin, target)| Some(held_loosely(target, &read(view, question, target)?, &limit(pin))))
        .collect();
    let answers: Vec<_> = pins.map(|(_, target)| (question, target)).collect();
    judged(view, evidence, &answers)
}

/// The judgement of recalled limits: what is in doubt with every reading there is told and decides nothing.
fn judged(view: &View, evidence: Vec<Evidence>, answers: &[(&'static Question, Target)]) -> Judgement {
    if evidence.is_empty() {
        let unread = answers.iter().map(|&(q, target)| Judgement::without_choice(Breach, view.answer(q, target)));
        return Judgement::worst(unread.collect(), Breach);
    }
    let all_read = evidence.len() == answers.len();
    let judgement = Judgement::by_readings(Breach, evidence, answers.len());
    if all_read { judgement.only_told_if_in_doubt() } else { judgement }
}

/// A reading against a recalled limit: outside is "can't tell" until it is beyond the limit by more than U + 0.2 mm.
fn held_loosely(target: Target, measured: &Measured<Length>, limit: &Limit<Length>) -> Evidence {
    let mut evidence = ruling::against(target, measured, limit);
    if evidence.outcome == Conformity::Nonconforming && widened(limit).holds(limit.friendly(measured)) {
        evidence.outcome = Conformity::Inconclusive;
    }
    evidence
}

/// The limit with what a recalled number may be wrong by.
fn widened(limit: &Limit<Length>) -> Limit<Length> {
    let slack = millimetres(0.2);
    match *limit {
        Limit::AtLeast(low) => Limit::AtLeast(low - slack),
        Limit::AtMost(high) => Limit::AtMost(high + slack),
        Limit::Between(low, high) => Limit::Between(low - slack, high + slack),
    }
}

fn read(view: &View, question: &Question, target: Target) -> Option<Measured<Length>> {
    view.reading(question, target).and_then(Reading::measured)
}
