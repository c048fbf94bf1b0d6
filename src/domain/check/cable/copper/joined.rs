//! Whether the readings of the cores agree with each other: a doubt about the readings, not about the flex.

use super::cut_flex::{CutFlex, carries_leads};
use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::facts;
use crate::domain::finding::Severity::BadSign;
use crate::domain::finding::{Basis, Judgement, Reason};
use crate::domain::instrument::Instrument;
use crate::domain::physics::conductor;
use crate::domain::quantity::{ElectricalResistance, Measurand, QuantityKind, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::Clause;
use crate::domain::view::View;

/// Resistance of all cores twisted together at both ends.
pub const CORES_JOINED: &Question = &Question::asking(
    "cores-joined",
    Place::Inside,
    Equipment::Meters,
    Ask::Measure {
        kind: QuantityKind::Resistance,
        units: &[Unit::Ohm, Unit::Milliohm],
        instruments: &[Instrument::FourWireMeter, Instrument::HandMeterNulled, Instrument::HandMeter],
    },
)
.after_cutting();

/// **Finds** readings of the cores that cannot all be right.
///
/// **Why it matters** a slip of the pen or a bad clip could condemn a sound flex, or clear a bad one.
///
/// **Source** Ohm's law: cores in parallel read `1/Σ(1/R)`.
///
/// **Decision** differs by more than the expanded uncertainty (coverage factor 2) of both. It sees a slip in one reading and a
/// resistance common to all; it is blind to a wrong scale or a wrong length. A note only: it decides nothing.
pub const READINGS_INCONSISTENT: &Check = &Check {
    code: "readings-inconsistent",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: BadSign,
    applies: always,
    judge: Judge::Reckoned(judge),
    asks: &[CORES_JOINED, facts::CORE_RESISTANCE],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 2.0, percent: 10 },
};

fn judge(view: &View) -> Judgement {
    let answer = view.answer(CORES_JOINED, Target::Sample);
    let Some(joined) = view.reading(CORES_JOINED, Target::Sample) else {
        return Judgement::without_choice(BadSign, answer).only_told();
    };
    let flex = CutFlex::of(view);
    let alone: Vec<_> = flex.readings().filter_map(|(_, reading)| reading.measured::<ElectricalResistance>()).collect();
    if alone.is_empty() {
        return Judgement::not_examined(BadSign).only_told();
    }
    if alone.len() < flex.cores.len() {
        let count = |n: usize| u8::try_from(n).unwrap_or(u8::MAX);
        let reason = Reason::OnlySomeRead { read: count(alone.len()), of: count(flex.cores.len()) };
        return Judgement::cannot_tell(BadSign, reason).only_told();
    }
    if flex.has_leads() || carries_leads(joined) {
        return Judgement::cannot_tell(BadSign, Reason::LeadsNotTakenOff).only_told();
    }
    let check = Reading::measured(joined).and_then(|read| conductor::joined(&alone, read));
    let Some(check) = check else { return Judgement::cannot_tell(BadSign, Reason::OutOfRange).only_told() };
    let reason = Reason::CoresJoined { expected: check.expected.value.amount(), read: check.read.value.amount() };
    if check.agrees() {
        Judgement::conforms(BadSign, Basis::Reading, reason).only_told()
    } else {
        Judgement::breaks(BadSign, Basis::Reading, reason).only_told()
    }
}
