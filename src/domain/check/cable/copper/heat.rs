//! Too hot at the claimed current.

use super::cut_flex::CutFlex;
use crate::domain::check::ruling::evidence;
use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::decision::Limit;
use crate::domain::facts;
use crate::domain::finding::Severity::Danger;
use crate::domain::finding::{Basis, Conformity, Judgement, Needed, Reason};
use crate::domain::physics::heating::{self, Heat, LoadedFlex};
use crate::domain::quantity::{Area, ElectricCurrent, Length, Measurand, Unit, millimetres, square_millimetres};
use crate::domain::question::{Core, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::en50525::{self, Duty, Sizes};
use crate::domain::standard::{bs7671, bs7671_flex, iec60287};
use crate::domain::uncertainty::Measured;
use crate::domain::view::View;

/// **Finds** a flex that gets too hot when it carries what the product claims.
///
/// **Why it matters** above 70 °C its insulation softens and ages, further on it melts and burns.
///
/// **Source** heat loss after IEC 60287-2-1, 4.2.1 (read); see `physics::heating` for the model and what it cannot tell. 30 °C
/// around the flex as in BS 7671 Table 4F3A (read); 70 °C for polyvinyl chloride (read). A diameter that nobody measured is taken
/// from EN 50525-2-11 (sizes of type 53 memory-high).
///
/// **Decision** the flex lies straight in still air and its two live cores carry the claimed current. Too hot if 0.7 of the rise
/// reaches 70 °C with every reading moved two standard uncertainties in its favour; cool enough if 1.3 times the rise stays at 60
/// °C with every reading moved against it. Between them it cannot be told. Leads that were not taken off, and readings that failed
/// a cross-check, can condemn and never clear.
pub const OVERHEATS_AT_CLAIM: &Check = &Check {
    code: "overheats-at-claim",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(|view: &View| judge(&CutFlex::of(view))),
    asks: &[facts::CORE_RESISTANCE, facts::PIECE_LENGTH, facts::FLEX_DIAMETER, facts::RATING],
    against: &[
        iec60287::FREE_AIR,
        iec60287::METALS,
        en50525::CONDUCTOR_TEMPERATURE,
        bs7671::TABLE_4F3A,
        en50525::SIZES,
    ],
    prospect: Prospect { minutes: 8.0, percent: 15 },
};

/// The usual duty of each size, mm².
const USUAL: [(Duty, f64); 5] =
    [(Duty::Light, 0.5), (Duty::Ordinary, 0.75), (Duty::Ordinary, 1.0), (Duty::Ordinary, 1.5), (Duty::Ordinary, 2.5)];

/// The flex at three places inside what its readings allow.
#[derive(Debug, Clone, Copy)]
pub struct Loaded {
    /// Every reading moved two standard uncertainties in its favour.
    pub coolest: LoadedFlex,
    /// The readings as they are.
    pub likely: LoadedFlex,
    /// Every reading moved against it.
    pub hottest: LoadedFlex,
}

/// Judges the heat of a cut flex.
pub fn judge(flex: &CutFlex) -> Judgement {
    let read = [Core::Line, Core::Neutral].into_iter().filter(|&core| flex.reading(core).is_some()).count();
    match read {
        0 => return flex.nothing_read(Danger),
        1 => return Judgement::cannot_tell(Danger, Reason::OnlySomeRead { read: 1, of: 2 }),
        _ => {}
    }
    let Some(loaded) = loaded(flex) else { return flex.unusable(Danger) };
    let Some(current) = flex.current else {
        return Judgement::cannot_tell(Danger, Reason::Needs(Needed::ClaimedCurrent));
    };
    let carries = most_current(&loaded);
    if !carries.value.base().is_finite() {
        // Numbers that no instrument shows, written by hand into a file, lead to no current at all.
        return Judgement::cannot_tell(Danger, Reason::OutOfRange);
    }
    let heat = verdict_of(&loaded, current);
    let outcome = match heat {
        Heat::Overheats => Conformity::Nonconforming,
        Heat::Within if !flex.has_leads() && !flex.is_doubted => Conformity::Conforms,
        Heat::Within | Heat::CannotTell => Conformity::Inconclusive,
    };
    let reason = match heat {
        Heat::Within if flex.has_leads() => Reason::LeadsNotTakenOff,
        Heat::Within if flex.is_doubted => Reason::CrossCheckFailed,
        Heat::Within | Heat::Overheats | Heat::CannotTell => balance(&loaded, current),
    };
    let judgement = match outcome {
        Conformity::Nonconforming => Judgement::breaks(Danger, Basis::Reading, reason),
        Conformity::Conforms => Judgement::conforms(Danger, Basis::Reading, reason),
        Conformity::Inconclusive | Conformity::NotExamined | Conformity::NotApplicable => {
            Judgement::cannot_tell(Danger, reason)
        }
    };
    let limit = Limit::AtLeast(current);
    let probability = limit.conformance(&carries);
    let mut evidence = evidence(Target::Sample, &carries, &limit, probability, outcome);
    if outcome == Conformity::Nonconforming {
        evidence.favour.granted = flex.retried(&limit, |flex| Some(most_current(&self::loaded(flex)?).shifted(2.0)));
    }
    judgement.with_evidence(vec![evidence])
}

/// What the model says of the heat; `None` where it has too little to go by.
pub fn verdict(flex: &CutFlex) -> Option<Heat> {
    Some(verdict_of(&loaded(flex)?, flex.current?))
}

fn verdict_of(loaded: &Loaded, current: ElectricCurrent) -> Heat {
    heating::judge(&loaded.coolest, &loaded.hottest, current, bs7671_flex::surroundings())
}

/// The flex as its readings and what is claimed for it allow; `None` where line or neutral was not read.
pub fn loaded(flex: &CutFlex) -> Option<Loaded> {
    let (line, neutral) = (flex.core(Core::Line)?, flex.core(Core::Neutral)?);
    let diameter = flex.diameter.unwrap_or_else(|| usual_diameter(flex.area));
    let thinnest = diameter.shifted(-2.0).max(millimetres(1.0));
    Some(Loaded {
        coolest: LoadedFlex { cores: line.least() + neutral.least(), diameter: diameter.shifted(2.0) },
        likely: LoadedFlex { cores: line.likely() + neutral.likely(), diameter: diameter.value },
        hottest: LoadedFlex { cores: line.most() + neutral.most(), diameter: thinnest },
    })
}

/// The diameter that a three-core flex of an area may have. A size that is in no table (1.25 mm² is in none) gets all that sizes
/// within half as much again may have, and an unknown one all that any flex may have.
pub fn usual_diameter(area: Option<Area>) -> Measured<Length> {
    let rows: Vec<(f64, Sizes)> = USUAL
        .into_iter()
        .filter_map(|(duty, size)| Some((size, en50525::sizes(duty, 3, square_millimetres(size))?)))
        .collect();
    let wanted = area.and_then(|area| area.amount().in_unit(Unit::SquareMillimetre));
    let within = |factor: f64| {
        let near = |size: f64| wanted.is_none_or(|wanted| size < wanted * factor && wanted < size * factor);
        let chosen = rows.iter().filter(move |(size, _)| near(*size)).map(|(_, sizes)| sizes.diameter);
        chosen.reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)))
    };
    let nothing = (Length::from_base(0.0), Length::from_base(0.0));
    let (from, to) = [1.001, 1.5, f64::INFINITY].into_iter().find_map(within).unwrap_or(nothing);
    Measured::rectangular((from + to) / 2.0, (to - from) / 2.0)
}

/// The current that brings the conductors to 70 °C, with the doubt of the readings and of the model.
fn most_current(loaded: &Loaded) -> Measured<ElectricCurrent> {
    let carries = |flex: &LoadedFlex| flex.current_for(en50525::hottest_conductor(), bs7671_flex::surroundings());
    let likely = carries(&loaded.likely);
    let of_readings = (carries(&loaded.coolest).min(2.0 * likely) - carries(&loaded.hottest)).base() / 4.0;
    let of_model = heating::deviation_of_current() * likely.base();
    Measured::new(likely, ElectricCurrent::from_base(libm::hypot(of_readings, of_model)))
}

fn balance(loaded: &Loaded, current: ElectricCurrent) -> Reason {
    let room = bs7671_flex::surroundings();
    Reason::HeatBalance {
        current: current.amount(),
        conductor: loaded.likely.steady(current, room),
        between: heating::between(&loaded.coolest, &loaded.hottest, current, room),
        carries: loaded.likely.current_for(bs7671_flex::conductor(), room).amount(),
    }
}
