//! The resistance of the earth path, socket by socket, against what its flex may have.

use super::trust::{Trust, in_doubt, unplugged};
use crate::domain::check::cable::copper::cut_flex::CutFlex;
use crate::domain::check::ruling::against;
use crate::domain::check::shown::held;
use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::decision::Limit;
use crate::domain::examination::Answer;
use crate::domain::facts;
use crate::domain::finding::Severity::Danger;
use crate::domain::finding::{Basis, Conformity, Evidence, Granted, GrossError, Judgement, Needed, Reason};
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{Area, ElectricalResistance, Measurand, QuantityKind, ResistancePerLength, Unit};
use crate::domain::question::{Ask, Per, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::iec60228::{self, Coating};
use crate::domain::standard::iet_code;
use crate::domain::uncertainty::{Measured, combine2};
use crate::domain::view::View;
use uom::si::f64::Ratio;

/// Resistance from the plug's earth pin to each socket's earth contact, at a current of 200 mA or less.
pub const EARTH_RESISTANCE: &Question = &Question::asking(
    "earth-resistance",
    Place::Readings,
    Equipment::Meters,
    Ask::Measure {
        kind: QuantityKind::Resistance,
        units: &[Unit::Ohm, Unit::Milliohm],
        instruments: &[
            Instrument::EarthPathTester,
            Instrument::FourWireMeter,
            Instrument::HandMeterNulled,
            Instrument::HandMeter,
        ],
    },
)
.per(Per::Socket)
.when(unplugged);

/// **Finds** an earth path of more resistance than its flex explains.
///
/// **Why it matters** the current of a fault stays too small for the fuse, and metal stays live meanwhile.
///
/// **Source** IET Code of Practice Table 15.1 (read): no more than 0.1 Ω + R. R is the largest of IEC 60228 Table 3 (read) for the
/// cross-section that the flex claims, or that its claimed current needs, times its length; never what its own core reads, which would
/// excuse a thin core by itself.
///
/// **Decision** by conformance probability; the doubt of the length counts with that of the reading. The worst socket decides, and
/// every socket is needed. Leads that were not taken off may hold 0.3 Ω: that is granted before such a reading condemns, and it never
/// clears. Where only print tells the length, a kept limit rests on print. Where the cores were not read, it clears with them only.
pub const EARTH_RESISTANCE_HIGH: &Check = &Check {
    code: "earth-resistance-high",
    place: Place::Readings,
    needs: Equipment::Meters,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(earth_resistance_high),
    asks: &[
        EARTH_RESISTANCE,
        facts::READINGS_PREPARED,
        facts::SOCKET_COUNT,
        facts::FLEX_LENGTH,
        facts::FLEX_PRINT,
        facts::CORE_RESISTANCE,
    ],
    against: &[iet_code::EARTH_CONTINUITY, iec60228::TABLE_3],
    prospect: Prospect { minutes: 2.0, percent: 25 },
};

fn earth_resistance_high(view: &View) -> Judgement {
    let answers: Vec<(Target, Option<&Answer>)> = EARTH_RESISTANCE
        .targets(view)
        .into_iter()
        .map(|socket| (socket, view.answer(EARTH_RESISTANCE, socket)))
        .collect();
    let readings: Vec<(Target, &Reading)> = answers
        .iter()
        .filter_map(|&(socket, answer)| match answer {
            Some(Answer::Reading(reading)) => Some((socket, reading)),
            _ => None,
        })
        .collect();
    if readings.is_empty() {
        let each = answers.into_iter().map(|(_, answer)| Judgement::without_choice(Danger, answer));
        return Judgement::worst(each.collect(), Danger);
    }
    let judgement = match allowed(view) {
        _ if readings.iter().any(|(_, reading)| reading.is_open()) => {
            Judgement::breaks(Danger, Basis::Reading, Reason::OutOfRange)
        }
        Ok(allowed) => by_each_socket(view, &readings, allowed, answers.len()),
        Err(needed) => Judgement::cannot_tell(Danger, Reason::Needs(needed)),
    };
    Trust::Loose.hold(view, judgement)
}

/// 0.1 Ω + R with the doubt of the length, or what is not known yet.
fn allowed(view: &View) -> Result<Measured<ElectricalResistance>, Needed> {
    let per_length = view.area_to_hold_to().and_then(class_5_at_most).ok_or(Needed::ClaimedArea)?;
    let length = view.flex_length().ok_or(Needed::FlexLength)?;
    Ok(length.map(|length| iet_code::earth_beyond_flex() + per_length * length))
}

fn by_each_socket(
    view: &View,
    readings: &[(Target, &Reading)],
    allowed: Measured<ElectricalResistance>,
    sockets: usize,
) -> Judgement {
    let known_wire = known_wire(view);
    let granted = |mut evidence: Evidence| {
        let value = evidence.favour.value.to().zip(known_wire);
        evidence.favour.granted.extend(value.map(|(value, times): (ElectricalResistance, Ratio)| {
            let value = value / times;
            let (errors, holds) = (vec![GrossError::Scale(times)], value <= allowed.value);
            Granted { errors, value: value.amount(), holds }
        }));
        evidence
    };
    let evidence = readings.iter().filter_map(|&(socket, reading)| at(socket, reading, allowed)).map(granted).collect();
    let judgement = Judgement::by_readings(Danger, evidence, sockets);
    let leads_on = readings.iter().any(|(_, reading)| has_leads_on(reading));
    match judgement.outcome {
        Conformity::Inconclusive if leads_on && judgement.reason == Reason::Measured => {
            in_doubt(judgement, Reason::LeadsNotTakenOff)
        }
        Conformity::Conforms => Judgement {
            basis: if view.reading(facts::FLEX_LENGTH, Target::Sample).is_some() {
                Basis::Reading
            } else {
                Basis::Print
            },
            reason: if every_core_was_read(view) { Reason::Measured } else { Reason::ClearsOnlyWithCores },
            ..judgement
        },
        Conformity::Inconclusive | Conformity::Nonconforming | Conformity::NotApplicable | Conformity::NotExamined => {
            judgement
        }
    }
}

/// How much too much the meter may show, as a known wire suggests.
fn known_wire(view: &View) -> Option<Ratio> {
    CutFlex::of(view).suspected.iter().find_map(|error| match error {
        GrossError::Scale(times) => Some(*times),
        GrossError::Leads(_) | GrossError::Clips(_) => None,
    })
}

/// One socket's reading against the limit, with the doubt of the limit added to its own.
fn at(socket: Target, reading: &Reading, allowed: Measured<ElectricalResistance>) -> Option<Evidence> {
    let against_limit = |most: ElectricalResistance| match reading.measured() {
        Some(shown) => {
            let doubted = combine2(shown, allowed, |shown: ElectricalResistance, of| shown + (allowed.value - of));
            Some(against(socket, &doubted, &Limit::AtMost(most)))
        }
        None => held(socket, reading, &Limit::AtMost(most)),
    };
    let granted = against_limit(allowed.value + reading.instrument.leads_at_most())?;
    if !has_leads_on(reading) || granted.outcome == Conformity::Nonconforming {
        return Some(granted);
    }
    against_limit(allowed.value).map(|evidence| Evidence { outcome: Conformity::Inconclusive, ..evidence })
}

fn has_leads_on(reading: &Reading) -> bool {
    reading.instrument.leads_at_most() > ElectricalResistance::from_base(0.0)
}

fn every_core_was_read(view: &View) -> bool {
    facts::CORE_RESISTANCE.targets(view).into_iter().all(|core| view.reading(facts::CORE_RESISTANCE, core).is_some())
}

/// The largest resistance of a class 5 core of plain copper. Of a size between two rows the smaller one counts, which allows more.
fn class_5_at_most(area: Area) -> Option<ResistancePerLength> {
    // No mains flex is thinner than the first row, whatever it claims.
    let row = iec60228::class5_size_within(area).unwrap_or_else(iec60228::class5_smallest);
    iec60228::class5_maximum(row, Coating::Plain)
}
