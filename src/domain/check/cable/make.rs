//! How thick the flex is: sheath, insulation and outer diameter against the sizes of the cord that its print names.

use crate::domain::check::ruling::against;
use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::decision::Limit;
use crate::domain::facts::{FLEX_DIAMETER, FLEX_PRINT};
use crate::domain::finding::Severity::{BadSign, Breach};
use crate::domain::finding::{Judgement, Reason, Severity};
use crate::domain::instrument::Instrument;
use crate::domain::marking::FlexPrint;
use crate::domain::quantity::{Area, Length, QuantityKind, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::en50525::{Duty, Sizes, sizes};
use crate::domain::standard::hd361::Compound;
use crate::domain::standard::{cord_type, en50525, iec60227_1};
use crate::domain::view::View;

use super::print::without_area;

const CALLIPERED: Ask = Ask::Measure {
    kind: QuantityKind::Length,
    units: &[Unit::Millimetre],
    instruments: &[Instrument::DigitalCalliper, Instrument::VernierCalliper],
};

/// The sheath at its thinnest point, at a cut end.
pub const SHEATH_THICKNESS: &Question =
    &Question::asking("sheath-thickness", Place::Cable, Equipment::Meters, CALLIPERED).after_cutting();

/// The insulation of the thinnest core at its thinnest point, at a cut end.
pub const INSULATION_THICKNESS: &Question =
    &Question::asking("insulation-thickness", Place::Cable, Equipment::Meters, CALLIPERED).after_cutting();

/// **Finds** a sheath too thin for the cord that the print names.
///
/// **Why it matters** the sheath takes the wear; when it is through, one layer is left.
///
/// **Source** EN 50525-2-11 sizes, IEC 60227-1:2007, 5.5.3 (memory-high).
///
/// **Decision** the thinnest point against 85 % of the specified thickness less 0.1 mm, with the calliper's doubt.
pub const SHEATH_THIN: &Check = &Check {
    code: "sheath-thin",
    place: Place::Cable,
    needs: Equipment::Meters,
    severity: Breach,
    applies: always,
    judge: Judge::Reckoned(|view| sheath(view, view.flex())),
    asks: &[SHEATH_THICKNESS, FLEX_PRINT],
    against: &[en50525::SIZES, iec60227_1::SHEATH],
    prospect: Prospect { minutes: 3.0, percent: 20 },
};

/// **Finds** insulation too thin for the cord that the print names.
///
/// **Why it matters** it is all that is between the cores.
///
/// **Source** EN 50525-2-11 sizes, IEC 60227-1:2007, 5.2.3 (memory-high).
///
/// **Decision** the thinnest point against 90 % of the specified thickness less 0.1 mm, with the calliper's doubt.
pub const INSULATION_THIN: &Check = &Check {
    code: "insulation-thin",
    place: Place::Cable,
    needs: Equipment::Meters,
    severity: Breach,
    applies: always,
    judge: Judge::Reckoned(|view| insulation(view, view.flex())),
    asks: &[INSULATION_THICKNESS, FLEX_PRINT],
    against: &[en50525::SIZES, iec60227_1::INSULATION],
    prospect: Prospect { minutes: 4.0, percent: 20 },
};

/// **Finds** a flex thicker or thinner than the cord that its print names.
///
/// **Why it matters** a print for a cord of another size is a borrowed print; copper it says nothing about.
///
/// **Source** EN 50525-2-11 mean outer diameters (memory-high).
///
/// **Decision** between the smallest and the largest mean diameter, with the calliper's doubt; a hint only.
pub const DIAMETER_OFF: &Check = &Check {
    code: "diameter-off",
    place: Place::Cable,
    needs: Equipment::HandTools,
    severity: BadSign,
    applies: always,
    judge: Judge::Reckoned(|view| diameter(view, view.flex())),
    asks: &[FLEX_DIAMETER, FLEX_PRINT],
    against: &[en50525::SIZES],
    prospect: Prospect { minutes: 1.0, percent: 20 },
};

/// The sheath against its size.
pub fn sheath(view: &View, print: Option<&FlexPrint>) -> Judgement {
    let thinnest = |sizes: Sizes| Limit::AtLeast(iec60227_1::thinnest_sheath(sizes.sheath));
    measured(view, print, (SHEATH_THICKNESS, Breach), thinnest)
}

/// The insulation against its size.
pub fn insulation(view: &View, print: Option<&FlexPrint>) -> Judgement {
    let thinnest = |sizes: Sizes| Limit::AtLeast(iec60227_1::thinnest_insulation(sizes.insulation));
    measured(view, print, (INSULATION_THICKNESS, Breach), thinnest)
}

/// The diameter against its size.
pub fn diameter(view: &View, print: Option<&FlexPrint>) -> Judgement {
    measured(view, print, (FLEX_DIAMETER, BadSign), |sizes| Limit::Between(sizes.diameter.0, sizes.diameter.1))
}

fn measured(
    view: &View,
    print: Option<&FlexPrint>,
    (question, severity): (&'static Question, Severity),
    limit: impl Fn(Sizes) -> Limit<Length>,
) -> Judgement {
    let Some(reading) = view.reading(question, Target::Sample) else {
        return Judgement::without_choice(severity, view.answer(question, Target::Sample));
    };
    let Some((cores, area)) = print.and_then(|print| print.cores.zip(print.area)) else {
        return without_area(view, severity);
    };
    match (print.and_then(|print| granted(print, cores, area)), reading.measured()) {
        (None, _) => Judgement::does_not_apply(severity),
        (_, None) => Judgement::cannot_tell(severity, Reason::OutOfRange),
        (Some(sizes), Some(value)) => {
            Judgement::by_readings(severity, vec![against(Target::Sample, &value, &limit(sizes))], 1)
        }
    }
}

/// The sizes to go by; `None` for a cord that the print says is flat or not of PVC: those have other sizes. Where a cord is made for
/// light and for ordinary duty and the print names neither, each limit is the wider one.
fn granted(print: &FlexPrint, cores: u8, area: Area) -> Option<Sizes> {
    let is_round = print.designation.as_ref().is_none_or(|designation| designation.construction.is_empty());
    let may_be_pvc = matches!(print.sheath(), None | Some(Some(Compound::Pvc | Compound::PvcForHeat)));
    if !(is_round && may_be_pvc) {
        return None;
    }
    match (sizes(Duty::Light, cores, area), sizes(Duty::Ordinary, cores, area), print.duty()) {
        (Some(light), Some(_), Some(cord_type::Duty::Light)) => Some(light),
        (Some(_), Some(ordinary), Some(cord_type::Duty::Ordinary)) => Some(ordinary),
        (Some(light), Some(ordinary), _) => Some(Sizes { diameter: (light.diameter.0, ordinary.diameter.1), ..light }),
        (light, ordinary, _) => light.or(ordinary),
    }
}
