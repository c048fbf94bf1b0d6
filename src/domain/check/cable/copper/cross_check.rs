//! Whether the readings of the cores agree with each other and with a wire of known size: a doubt about the readings, not about the
//! flex.

use super::cut_flex::{CutFlex, carries_leads};
use super::resistance;
use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::examination::Answer;
use crate::domain::facts;
use crate::domain::finding::Severity::BadSign;
use crate::domain::finding::{Basis, Conformity, CrossCheck, Crossed, GrossError, Judgement, Needed, Reason};
use crate::domain::instrument::Instrument;
use crate::domain::marking::FlexPrint;
use crate::domain::physics::conductor::{self, SelfCheck};
use crate::domain::physics::reference::{Reference, Size};
use crate::domain::physics::signs::likeliest_first;
use crate::domain::quantity::{ElectricalResistance, Length, Measurand, QuantityKind, Unit};
use crate::domain::question::{Ask, Core, Printed, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, practice};
use crate::domain::uncertainty::Measured;
use crate::domain::view::View;
use uom::si::ratio::ratio;

const METERED: Ask = Ask::Measure {
    kind: QuantityKind::Resistance,
    units: &[Unit::Ohm, Unit::Milliohm],
    instruments: &[Instrument::FourWireMeter, Instrument::HandMeterNulled, Instrument::HandMeter],
};

/// Resistance of all cores twisted together at both ends.
pub const CORES_JOINED: &Question = &asked("cores-joined", METERED).after_cutting();

/// Whether a piece of copper wire of known size is at hand. Asked only where the readings give reason to doubt them.
pub const REFERENCE_WIRE: &Question =
    &asked("reference-wire", Ask::One(&["size-stated", "can-be-measured", "none"])).after_cutting().when(gives_reason);

/// What is said of its size.
pub const REFERENCE_SIZE: &Question =
    &asked("reference-size", Ask::Printed(Printed::Flex)).after_cutting().when(is_stated);

/// Diameter of a wire that is solid.
pub const REFERENCE_DIAMETER: &Question = &asked(
    "reference-diameter",
    Ask::Measure {
        kind: QuantityKind::Length,
        units: &[Unit::Millimetre],
        instruments: &[Instrument::DigitalCalliper, Instrument::VernierCalliper],
    },
)
.after_cutting()
.when(is_measured);

/// Its length.
pub const REFERENCE_LENGTH: &Question =
    &asked("reference-length", facts::PIECE_LENGTH.ask).after_cutting().when(has_wire);

/// Its resistance, with the same meter.
pub const REFERENCE_RESISTANCE: &Question = &asked("reference-resistance", METERED).after_cutting().when(has_wire);

/// Resistance of one half of the core that reads most. Asked only where it stands out from the others.
pub const HALF_LENGTH: &Question = &asked("half-length-resistance", METERED).after_cutting().when(|view| {
    let flex = CutFlex::of(view);
    facts::may_be_cut(view) && gives_reason(view) && odd_core(&flex).is_some()
});

/// **Finds** readings of the cores that cannot all be right.
///
/// **Why it matters** a slip of the pen or a bad clip could condemn a sound flex, or clear a bad one.
///
/// **Source** Ohm's law: cores in parallel read `1/Σ(1/R)`, half a core half of it, copper `ρL/A`. Resistivity see `physics::metal`.
///
/// **Decision** differs by more than the expanded uncertainty (coverage factor 2) of both. The cores joined see a slip in one reading and
/// a resistance common to all; they are blind to a wrong scale or length. The reference wire sees a wrong scale, and hangs on what
/// is said of the wire. Half a core tells a thin core from one bad joint, and is blind to a wrong scale. A note only: it decides
/// nothing, and it lifts no break; but readings that failed here clear nothing either.
pub const READINGS_INCONSISTENT: &Check = &Check {
    code: "readings-inconsistent",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: BadSign,
    applies: always,
    judge: Judge::Reckoned(judge),
    asks: &[
        CORES_JOINED,
        REFERENCE_WIRE,
        REFERENCE_SIZE,
        REFERENCE_DIAMETER,
        REFERENCE_LENGTH,
        REFERENCE_RESISTANCE,
        HALF_LENGTH,
        facts::CORE_RESISTANCE,
    ],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 2.0, percent: 10 },
};

/// A core stands out that has so many times the resistance of the best one (usual practice).
const STANDS_OUT: f64 = 1.5;

const fn asked(id: &'static str, ask: Ask) -> Question {
    Question::asking(id, Place::Inside, Equipment::Meters, ask)
}

fn gives_reason(view: &View) -> bool {
    let flex = CutFlex::of(view);
    let disagree = || matches!(joined(view, &flex), Some(Ok(check)) if !check.agrees());
    facts::may_be_cut(view) && (resistance::judge(&flex).outcome == Conformity::Nonconforming || disagree())
}

fn has_wire(view: &View) -> bool {
    is_stated(view) || is_measured(view)
}

fn is_stated(view: &View) -> bool {
    view.one(REFERENCE_WIRE) == Some("size-stated")
}

fn is_measured(view: &View) -> bool {
    view.one(REFERENCE_WIRE) == Some("can-be-measured")
}

fn judge(view: &View) -> Judgement {
    let flex = CutFlex::of(view);
    let joined = joined(view, &flex).map(|made| {
        made.map(|check| cross(Crossed::Joined { clips: clips(view, &flex).map(|c| c.value.amount()) }, &check))
    });
    let known = reference(view, &flex)
        .map(|made| made.map(|reference| cross(Crossed::Reference { causes: reference.ranked() }, &reference.check())));
    let half = half_length(view, &flex).map(|made| made.map(|check| cross(Crossed::HalfLength, &check)));
    let made: Vec<Result<CrossCheck, Reason>> = [joined, known, half].into_iter().flatten().collect();
    let checks: Vec<CrossCheck> = made.iter().filter_map(|made| made.as_ref().ok().cloned()).collect();
    let judgement = if checks.is_empty() {
        match made.into_iter().find_map(Result::err) {
            Some(doubt) => Judgement::cannot_tell(BadSign, doubt),
            None => Judgement::without_choice(BadSign, view.answer(CORES_JOINED, Target::Sample)),
        }
    } else if checks.iter().all(|check| check.agrees) {
        Judgement::conforms(BadSign, Basis::Reading, Reason::CrossChecked(checks))
    } else {
        Judgement::breaks(BadSign, Basis::Reading, Reason::CrossChecked(checks))
    };
    judgement.only_told()
}

fn cross(of: Crossed, check: &SelfCheck) -> CrossCheck {
    let (expected, read) = (check.expected.value.amount(), check.read.value.amount());
    CrossCheck { of, expected, read, agrees: check.agrees(), reads_more: check.read.value > check.expected.value }
}

/// Whether a check failed in a way that the flex may be worse than its readings: such readings clear nothing.
pub fn may_read_too_little(view: &View, flex: &CutFlex) -> bool {
    let differs = |made: Option<Result<SelfCheck, Reason>>| matches!(made, Some(Ok(check)) if !check.agrees());
    let too_little =
        |reference: &Reference| !reference.check().agrees() && reference.read.value < reference.check().expected.value;
    differs(joined(view, flex))
        || differs(half_length(view, flex))
        || matches!(reference(view, flex), Some(Ok(r)) if too_little(&r))
}

/// The gross errors that the meter and the checks suggest; those in the flex's favour only.
pub fn suspected(view: &View, flex: &CutFlex) -> Vec<GrossError> {
    let leads = flex.has_leads().then(|| GrossError::Leads(Instrument::HandMeter.leads_at_most().amount()));
    let clips = clips(view, flex).map(|clips| GrossError::Clips(clips.value.amount()));
    let reads_too_much = |known: &Reference| !known.check().agrees() && known.factor().get::<ratio>() > 1.0;
    let known = reference(view, flex).and_then(Result::ok).filter(reads_too_much);
    leads.into_iter().chain(clips).chain(known.map(|known| GrossError::Scale(known.factor()))).collect()
}

/// The cores joined against the cores alone; `None` where nobody made the readings for it.
fn joined(view: &View, flex: &CutFlex) -> Option<Result<SelfCheck, Reason>> {
    let joined = view.reading(CORES_JOINED, Target::Sample)?;
    let alone = alone(flex);
    if alone.is_empty() {
        return None;
    }
    let count = |n: usize| u8::try_from(n).unwrap_or(u8::MAX);
    Some(if alone.len() < flex.cores.len() {
        Err(Reason::OnlySomeRead { read: count(alone.len()), of: count(flex.cores.len()) })
    } else if flex.has_leads() || carries_leads(joined) {
        Err(Reason::LeadsNotTakenOff)
    } else {
        joined.measured().and_then(|read| conductor::joined(&alone, read)).ok_or(Reason::OutOfRange)
    })
}

fn alone(flex: &CutFlex) -> Vec<Measured<ElectricalResistance>> {
    flex.readings().filter_map(|(_, reading)| reading.measured()).collect()
}

/// What the cores joined say that clips add to every reading, where it is more than its own doubt.
fn clips(view: &View, flex: &CutFlex) -> Option<Measured<ElectricalResistance>> {
    in_series(view, flex).filter(|clips| clips.value > clips.u)
}

fn in_series(view: &View, flex: &CutFlex) -> Option<Measured<ElectricalResistance>> {
    joined(view, flex)?.ok().and_then(|check| conductor::in_series(&alone(flex), check.read))
}

/// The known wire; `None` where nobody read one.
pub fn reference(view: &View, flex: &CutFlex) -> Option<Result<Reference, Reason>> {
    let reading = view.reading(REFERENCE_RESISTANCE, Target::Sample).filter(|_| has_wire(view))?;
    if carries_leads(reading) {
        return Some(Err(Reason::LeadsNotTakenOff));
    }
    let known = || {
        let above_zero = |length: &Measured<Length>| length.value.base() > 0.0;
        let measured = |question| view.reading(question, Target::Sample).and_then(Reading::measured).filter(above_zero);
        let size = match view.answer(REFERENCE_SIZE, Target::Sample) {
            Some(Answer::Printed(print)) if is_stated(view) => Size::Stated(FlexPrint::parse(print).area?),
            _ if is_stated(view) => return None,
            _ => Size::Measured(measured(REFERENCE_DIAMETER)?.map(|d| d * d * core::f64::consts::FRAC_PI_4)),
        };
        let read = flex.cooled(reading.measured()?);
        let is_four_wire = reading.instrument == Instrument::FourWireMeter;
        let of_meter = if is_four_wire { practice::four_wire_clips() } else { practice::clips() };
        Some(Reference {
            size,
            length: measured(REFERENCE_LENGTH)?,
            read,
            clips: in_series(view, flex).unwrap_or(of_meter),
        })
    };
    Some(known().ok_or(Reason::Needs(Needed::KnownWire)))
}

/// Half of the core that reads most against the whole; `None` where nobody read it.
fn half_length(view: &View, flex: &CutFlex) -> Option<Result<SelfCheck, Reason>> {
    let half = view.reading(HALF_LENGTH, Target::Sample)?;
    let whole = flex.reading(odd_core(flex)?)?;
    if carries_leads(half) || carries_leads(whole) {
        return Some(Err(Reason::LeadsNotTakenOff));
    }
    let both = whole.measured().zip(half.measured());
    Some(both.map(|(whole, half)| conductor::half_length(whole, half)).ok_or(Reason::OutOfRange))
}

/// The core that reads most, where it stands out.
fn odd_core(flex: &CutFlex) -> Option<Core> {
    let read = |&(core, _): &(Core, Option<&Answer>)| Some((core, flex.core(core)?.likely()));
    let mut cores: Vec<_> = flex.cores.iter().filter_map(read).collect();
    likeliest_first(&mut cores, |(_, resistance)| resistance.base());
    let (worst, best) = (cores.first()?, cores.last()?);
    (worst.1 > STANDS_OUT * best.1).then_some(worst.0)
}
