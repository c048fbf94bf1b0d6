//! How long the flex is.

use crate::domain::check::ruling::against;
use crate::domain::check::{Check, Judge, Prospect};
use crate::domain::decision::Limit;
use crate::domain::facts::{self, FLEX_LENGTH, FLEX_PRINT};
use crate::domain::finding::Severity::BadSign;
use crate::domain::finding::{Basis, Judgement};
use crate::domain::marking::FlexPrint;
use crate::domain::quantity::Length;
use crate::domain::question::Target;
use crate::domain::sample::{Equipment, Kind, Place};
use crate::domain::standard::iet_code;
use crate::domain::uncertainty::Measured;
use crate::domain::view::View;

use super::print::{stated_area, without_area};

/// **Finds** a lead longer than is advised for its cross-section.
///
/// **Why it matters** far from the wall a fault draws too little current to blow the fuse quickly.
///
/// **Source** IET Code of Practice, 5th edition, 10.10 (read): 12 m for 1.25 mm², 15 m for 1.5 mm², 25 m for 2.5 mm², longer with an
/// RCD. Advice, not law; it does not speak of thinner flex.
///
/// **Decision** measured, else claimed, length against the advice; a hint only.
pub const FLEX_TOO_LONG: &Check = &Check {
    code: "flex-too-long",
    place: Place::Cable,
    needs: Equipment::HandTools,
    severity: BadSign,
    applies: is_lead_without_rcd,
    judge: Judge::Reckoned(|view| too_long(view, view.flex())),
    asks: &[FLEX_LENGTH, FLEX_PRINT],
    against: &[iet_code::LEAD_LENGTH],
    prospect: Prospect { minutes: 1.0, percent: 5 },
};

fn is_lead_without_rcd(view: &View) -> bool {
    view.kind() == Kind::ExtensionLead && !facts::has(view, "rcd")
}

/// The length against the advice for the stated cross-section.
pub fn too_long(view: &View, print: Option<&FlexPrint>) -> Judgement {
    let Some(length) = view.flex_length() else {
        return Judgement::without_choice(BadSign, view.answer(FLEX_LENGTH, Target::Sample));
    };
    let Some((_, area)) = stated_area(view, print) else {
        return without_area(view, BadSign);
    };
    let Some(longest) = iet_code::longest_lead(area) else {
        return Judgement::does_not_apply(BadSign);
    };
    let limit = Limit::AtMost(longest);
    let judged =
        |length: &Measured<Length>| Judgement::by_readings(BadSign, vec![against(Target::Sample, length, &limit)], 1);
    match view.reading(FLEX_LENGTH, Target::Sample) {
        Some(_) => judged(&length),
        // A claimed length is a nominal, like the length it is held against.
        None => Judgement { basis: Basis::Print, ..judged(&Measured::exact(length.value)) },
    }
}
