//! Too little conductor: the resistance of each core over its length.

use super::cut_flex::{CoreResistance, CutFlex, EarthCore, Fuse};
use super::heat;
use crate::domain::check::ruling::{against, certainly};
use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::decision::Limit;
use crate::domain::facts;
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::finding::{Basis, Conformity, CoreDanger, Evidence, FaultTold, Judgement, Needed, Reason};
use crate::domain::physics::fault::{Course, Race, course};
use crate::domain::physics::heating::Heat;
use crate::domain::physics::metal::explanation;
use crate::domain::quantity::{Area, ResistancePerLength, ohms};
use crate::domain::question::{Core, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::adiabatic;
use crate::domain::standard::iec60228::{self, Coating, class5_maximum, class5_size_within};
use crate::domain::standard::{bs1362, bs1363_1, iec60287, practice};
use crate::domain::view::View;

/// **Finds** a core with more resistance than its claimed cross-section may have.
///
/// **Why it matters** hair-thin or foreign metal heats under load, and a thin earth core burns open before the fuse.
///
/// **Source** IEC 60228:2004 Table 3, class 5, coated (read; 1.25 mm² memory-medium); 1.5 times the limit, where a break becomes
/// a danger, is usual practice; fuse and melting see `physics::fault`.
///
/// **Decision** every core at p 0.95, brought to 20 °C. Read through leads that were not taken off, a core can break its limit
/// but never keep it. Where no cross-section is claimed, or one that the table does not have, the core is held to the largest
/// size of the table that is no larger (0.5 mm² if none is claimed): it can break that and never keep it. A core that reads less
/// than 4 mm² of copper would is a doubt about the reading. Readings that failed a cross-check can break and never keep it either.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, cable::copper::resistance};
/// assert_eq!(by_code("core-resistance-high").map(|check| check.code), Some(resistance::CORE_RESISTANCE_HIGH.code));
/// ```
pub const CORE_RESISTANCE_HIGH: &Check = &Check {
    code: "core-resistance-high",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(|view: &View| judge(&CutFlex::of(view))),
    asks: &[facts::CORE_RESISTANCE, facts::PIECE_LENGTH, facts::ROOM_TEMPERATURE],
    against: &[iec60228::TABLE_3, iec60228::ANNEX_A, bs1363_1::TABLE_2, bs1362::GATES, adiabatic::LAW],
    prospect: Prospect { minutes: 8.0, percent: 30 },
};

/// What cores are held to.
struct Held {
    area: Area,
    limit: ResistancePerLength,
    may_keep: bool,
}

/// Judges the cores of a cut flex.
pub fn judge(flex: &CutFlex) -> Judgement {
    if let Some(core) = flex.open_core() {
        return Judgement::breaks(Danger, Basis::Reading, Reason::CoreOpen { core });
    }
    if flex.readings().next().is_none() {
        return flex.nothing_read(Danger);
    }
    let Some(held) = held(flex) else {
        return Judgement::cannot_tell(Danger, Reason::Needs(Needed::ClaimedArea));
    };
    let evidence = evidence(flex, held.limit);
    if evidence.is_empty() {
        return flex.unusable(Danger);
    }
    let judged = Judgement::by_readings(Danger, evidence, flex.cores.len());
    match judged.outcome {
        Conformity::Nonconforming => broken(flex, &held, judged),
        Conformity::Conforms if !held.may_keep => {
            Judgement::cannot_tell(Danger, Reason::Needs(Needed::ClaimedArea)).with_evidence(judged.evidence)
        }
        Conformity::Conforms if reads_too_little(flex) => {
            Judgement::cannot_tell(Danger, Reason::OutOfRange).with_evidence(judged.evidence)
        }
        Conformity::Conforms if flex.is_doubted => {
            Judgement::cannot_tell(Danger, Reason::CrossCheckFailed).with_evidence(judged.evidence)
        }
        Conformity::Inconclusive if flex.has_leads() => {
            Judgement::cannot_tell(Danger, Reason::LeadsNotTakenOff).with_evidence(judged.evidence)
        }
        Conformity::Conforms | Conformity::Inconclusive | Conformity::NotExamined | Conformity::NotApplicable => {
            let all_read = judged.reason == Reason::Measured;
            let reason =
                Reason::CoresMeasured { room: flex.room_temperature(), explanation: None, danger: None, fault: None };
            if all_read { Judgement { reason, ..judged } } else { judged }
        }
    }
}

/// Whether a core reads less than any flex of a 13 A product has: clips that touch, or a length that is wrong.
fn reads_too_little(flex: &CutFlex) -> bool {
    let least = iec60287::copper_resistivity() / practice::thickest_core();
    flex.cores.iter().filter_map(|&(core, _)| flex.core(core)).any(|core| core.most() < least)
}

fn held(flex: &CutFlex) -> Option<Held> {
    let smallest = iec60228::class5_smallest();
    let named = flex.area.unwrap_or(smallest);
    let area = class5_size_within(named).unwrap_or(smallest);
    let limit = class5_maximum(area, Coating::Coated)?;
    let may_keep = flex.area.is_some_and(|claimed| class5_maximum(claimed, Coating::Coated).is_some());
    Some(Held { area, limit, may_keep })
}

/// Every core that was read, against a limit.
fn evidence(flex: &CutFlex, limit: ResistancePerLength) -> Vec<Evidence> {
    let held = |&(core, _): &(Core, _)| {
        let mut evidence = beside(core, &flex.core(core)?, limit);
        if evidence.outcome == Conformity::Nonconforming {
            evidence.favour.granted = flex.retried(&Limit::AtMost(limit), |flex| Some(flex.core(core)?.least()));
        }
        Some(evidence)
    };
    flex.cores.iter().filter_map(held).collect()
}

fn beside(core: Core, resistance: &CoreResistance, most: ResistancePerLength) -> Evidence {
    let (target, limit) = (Target::Core(core), Limit::AtMost(most));
    let if_certain = |certain: bool, outcome| if certain { outcome } else { Conformity::Inconclusive };
    match resistance {
        CoreResistance::Read(measured) => against(target, measured, &limit),
        CoreResistance::WithLeads { granted, .. } => {
            let evidence = against(target, granted, &limit);
            let breaks = evidence.outcome == Conformity::Nonconforming;
            Evidence { outcome: if_certain(breaks, Conformity::Nonconforming), ..evidence }
        }
        CoreResistance::Above(value) => {
            certainly(target, *value, &limit, if_certain(*value > most, Conformity::Nonconforming))
        }
        CoreResistance::Below(value) => {
            certainly(target, *value, &limit, if_certain(*value <= most, Conformity::Conforms))
        }
    }
}

/// A break, and how grave it is; of several dangers the gravest is named. Where cores stand beyond one and a half times the
/// limit, they are held against that too, so that the retry in the sample's favour shows whether the danger stands.
fn broken(flex: &CutFlex, held: &Held, judged: Judgement) -> Judgement {
    let graver: Vec<Evidence> = evidence(flex, practice::dangerous_resistance(held.limit))
        .into_iter()
        .filter(|evidence| evidence.outcome == Conformity::Nonconforming)
        .collect();
    let danger = if earth_opens_first(flex) {
        Some(CoreDanger::EarthOpensFirst)
    } else if heat::verdict(flex) == Some(Heat::Overheats) {
        Some(CoreDanger::Overheats)
    } else {
        (!graver.is_empty()).then_some(CoreDanger::HalfAsMuchAgain)
    };
    let known = flex.cores.iter().filter_map(|&(core, _)| Some(flex.core(core)?.least()));
    let worst = known.reduce(|worst, core| if core > worst { core } else { worst });
    let explanation = worst.map(|worst| explanation(worst, held.area));
    let fault = fault_to_tell(flex);
    let reason = Reason::CoresMeasured { room: flex.room_temperature(), explanation, danger, fault };
    let severity = if danger.is_some() { Danger } else { Breach };
    Judgement { severity, reason, evidence: [judged.evidence, graver].concat(), ..judged }
}

/// What a fault to earth does; `None` where the cores, the length or the earth are not known, or a smaller fuse is fitted.
fn fault(flex: &CutFlex, of: fn(&CoreResistance) -> ResistancePerLength) -> Option<Course> {
    let known = flex.fuse == Fuse::UpTo13A && flex.earth != EarthCore::Unknown;
    let (line, earth) = (flex.core(Core::Line)?, flex.core(Core::Earth)?);
    let length = flex.length.or(flex.piece)?;
    known.then(|| course(of(&line), of(&earth), length.value))
}

/// An earth core of less, with a fuse that surely opens, makes no danger that the loop outside would not hide (usual practice).
const WORTH_TELLING: f64 = 0.5;

/// The course of a fault, where it is worth telling.
fn fault_to_tell(flex: &CutFlex) -> Option<FaultTold> {
    let is_worth = |course: &Course| course.race != Race::FuseOpensFirst || course.earth > ohms(WORTH_TELLING);
    let course = fault(flex, CoreResistance::likely).filter(is_worth)?;
    Some(FaultTold { course, earth_was_seen: flex.earth == EarthCore::Seen })
}

/// Whether the earth core surely opens before the fuse: at every usual supply, and with its resistance as read and in its favour.
fn earth_opens_first(flex: &CutFlex) -> bool {
    let opens = |of| fault(flex, of).is_some_and(|course| course.race == Race::EarthOpensFirst);
    opens(CoreResistance::likely) && opens(CoreResistance::least)
}
