//! The barrier of a supply inside the body: between the mains and an output that people touch.

use super::opening::{OPENED, is_open};
use crate::domain::check::ruling::against;
use crate::domain::check::{Check, Judge, Prospect, Ruling, on_leads};
use crate::domain::decision::Limit;
use crate::domain::facts;
use crate::domain::finding::Severity::Danger;
use crate::domain::finding::{Conformity, Evidence, Judgement, Reason};
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{Length, QuantityKind, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{iec60384_14, iec62368_1};
use crate::domain::view::View;

/// What bridges the barrier beside the transformer.
pub const ACROSS_THE_BARRIER: &Question = &Question::one(
    "across-the-barrier",
    Place::Inside,
    Equipment::Meters,
    &["nothing", "one-y1", "two-y2", "one-y2", "class-x", "ordinary", "unmarked"],
)
.when(is_open_supply);

const DISTANCE: Ask = Ask::Measure {
    kind: QuantityKind::Length,
    units: &[Unit::Millimetre],
    instruments: &[Instrument::DigitalCalliper, Instrument::VernierCalliper, Instrument::Rule],
};

/// The shortest way across the barrier along surfaces.
pub const CREEPAGE: &Question =
    &Question::asking("creepage", Place::Inside, Equipment::Meters, DISTANCE).when(is_open_supply);

/// The shortest way across the barrier through air.
pub const CLEARANCE: &Question =
    &Question::asking("clearance", Place::Inside, Equipment::Meters, DISTANCE).when(is_open_supply);

/// **Finds** a part across the barrier that must not be there.
///
/// **Why it matters** when it shorts, the output is joined to the mains.
///
/// **Source** IEC 60384-14 (memory-high): one Y1 or two Y2 in series.
///
/// **Decision** by the print on the part: it can condemn; that it fits the rule is a claim. A part without print cannot be told.
pub const MAINS_TO_TOUCH_PATH_SHORT: &Check = &Check {
    code: "mains-to-touch-path-short",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Danger,
    applies: may_have_supply,
    judge: Judge::Answer(
        ACROSS_THE_BARRIER,
        &[
            ("nothing", Ruling::Keeps),
            ("one-y1", Ruling::FitsTheClaim),
            ("two-y2", Ruling::FitsTheClaim),
            ("one-y2", Ruling::Breaks(Danger)),
            ("class-x", Ruling::Breaks(Danger)),
            ("ordinary", Ruling::Breaks(Danger)),
            ("unmarked", Ruling::CannotTell),
        ],
    ),
    asks: &[ACROSS_THE_BARRIER, OPENED, facts::EXTRAS],
    against: &[iec60384_14::ACROSS_THE_BARRIER],
    prospect: Prospect { minutes: 2.0, percent: 25 },
};

/// **Finds** too little distance across the barrier.
///
/// **Why it matters** damp and dirt bridge a short gap, and the output becomes live.
///
/// **Source** IEC 62368-1: creepage 5.0 mm (memory-high), clearance about 3 mm to 4 mm (memory-medium).
///
/// **Decision** the creepage, by conformance probability. The clearance is told beside it and decides nothing; nor does a kept creepage
/// while the clearance stays in doubt.
pub const CREEPAGE_OR_CLEARANCE_SHORT: &Check = &Check {
    code: "creepage-or-clearance-short",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Danger,
    applies: may_have_supply,
    judge: Judge::Reckoned(creepage_or_clearance_short),
    asks: &[CREEPAGE, CLEARANCE, OPENED, facts::EXTRAS],
    against: &[iec62368_1::CREEPAGE, iec62368_1::CLEARANCE],
    prospect: Prospect { minutes: 3.0, percent: 30 },
};

fn creepage_or_clearance_short(view: &View) -> Judgement {
    let Some(creepage) = distance(view, CREEPAGE, iec62368_1::creepage()) else {
        return Judgement::without_choice(Danger, view.answer(CREEPAGE, Target::Sample));
    };
    let clearance = distance(view, CLEARANCE, iec62368_1::clearance());
    let decided = Judgement::by_readings(Danger, vec![creepage.clone()], 1);
    match clearance {
        Some(clearance) if decided.outcome == Conformity::Conforms && clearance.outcome != Conformity::Conforms => {
            let told = Evidence { outcome: Conformity::Inconclusive, ..clearance };
            Judgement::cannot_tell(Danger, Reason::Measured).only_told().with_evidence(vec![creepage, told])
        }
        Some(_) | None => decided,
    }
}

fn distance(view: &View, question: &Question, least: Length) -> Option<Evidence> {
    let measured = view.reading(question, Target::Sample).and_then(Reading::measured)?;
    Some(against(Target::Sample, &measured, &Limit::AtLeast(least)))
}

fn may_have_supply(view: &View) -> bool {
    on_leads(view) && facts::may_have(view, "usb")
}

fn is_open_supply(view: &View) -> bool {
    may_have_supply(view) && is_open(view)
}
