//! The cores by sight: how many there are and what colours they have.

use crate::domain::check::sockets::connector::has_no_earth_by_design;
use crate::domain::check::{Check, Judge, Prospect, Ruling, always};
use crate::domain::examination::Answer;
use crate::domain::facts::{CORE_COUNT, FLEX_PRINT, cores_can_be_seen};
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::finding::{Basis, Judgement, Reason};
use crate::domain::marking::FlexPrint;
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{bs1363_2, hd308, iec60227_1};
use crate::domain::view::View;

/// Which colour goes to the earth, and where green-and-yellow goes.
pub const EARTH_COLOUR: &Question = &Question::one(
    "earth-colour",
    Place::Inside,
    Equipment::Meters,
    &["green-and-yellow", "nearly-one-colour", "green", "yellow", "other", "green-and-yellow-is-live"],
)
.when(|view| cores_can_be_seen(view) && has_earth_core(view));

/// Which colours go to line and neutral.
pub const LINE_NEUTRAL_COLOURS: &Question = &Question::one(
    "line-neutral-colours",
    Place::Inside,
    Equipment::Meters,
    &["brown-and-blue", "swapped", "red-and-black", "black-and-white", "other"],
)
.when(cores_can_be_seen);

/// **Finds** a flex of two cores on a product that needs an earth.
///
/// **Why it matters** without an earth core a fault makes metal live and nothing cuts it off.
///
/// **Source** national note in the draft of IEC 60884-2-7 (read): UK extension sets are earthed.
///
/// **Decision** by sight of the cores. Print that names two cores breaks the rule by itself; print that names three is a claim and
/// closes nothing.
pub const CORES_TOO_FEW: &Check = &Check {
    code: "cores-too-few",
    place: Place::Cable,
    needs: Equipment::Meters,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(|view| too_few(view, view.flex())),
    asks: &[CORE_COUNT, FLEX_PRINT],
    against: &[bs1363_2::EXTENSION_SETS_ARE_EARTHED, hd308::COLOURS],
    prospect: Prospect { minutes: 3.0, percent: 10 },
};

/// **Finds** an earth core that is not green-and-yellow, or a green-and-yellow core that is live.
///
/// **Why it matters** whoever repairs it trusts the colour: a live green-and-yellow core puts mains on metal.
///
/// **Source** HD 308 S2 (read); 30 % to 70 % of each colour on any 15 mm, IEC 60227-1:2007, 4.1.3 (memory-high); plain green has
/// been no earth colour in the United Kingdom since the early 1970s (usual practice).
///
/// **Decision** by sight.
pub const EARTH_COLOUR_WRONG: &Check = &Check {
    code: "earth-colour-wrong",
    place: Place::Cable,
    needs: Equipment::Meters,
    severity: Danger,
    applies: has_earth_core,
    judge: Judge::Answer(
        EARTH_COLOUR,
        &[
            ("green-and-yellow", Ruling::Keeps),
            ("nearly-one-colour", Ruling::Breaks(Breach)),
            ("green", Ruling::Breaks(Breach)),
            ("yellow", Ruling::Breaks(Breach)),
            ("other", Ruling::Breaks(Breach)),
            ("green-and-yellow-is-live", Ruling::Breaks(Danger)),
        ],
    ),
    asks: &[EARTH_COLOUR],
    against: &[hd308::COLOURS, iec60227_1::TWO_COLOURS],
    prospect: Prospect { minutes: 2.0, percent: 8 },
};

/// **Finds** line and neutral cores that are not brown and blue, or the other way round.
///
/// **Why it matters** the next person to wire it goes by the colours.
///
/// **Source** HD 308 S2 (read); red and black are the old British colours, gone from flex since about 1969 to 1971.
///
/// **Decision** by sight.
pub const LINE_NEUTRAL_COLOUR_WRONG: &Check = &Check {
    code: "line-neutral-colour-wrong",
    place: Place::Cable,
    needs: Equipment::Meters,
    severity: Breach,
    applies: always,
    judge: Judge::Answer(
        LINE_NEUTRAL_COLOURS,
        &[
            ("brown-and-blue", Ruling::Keeps),
            ("swapped", Ruling::Breaks(Breach)),
            ("red-and-black", Ruling::Breaks(Breach)),
            ("black-and-white", Ruling::Breaks(Breach)),
            ("other", Ruling::Breaks(Breach)),
        ],
    ),
    asks: &[LINE_NEUTRAL_COLOURS],
    against: &[hd308::COLOURS],
    prospect: Prospect { minutes: 2.0, percent: 8 },
};

fn has_earth_core(view: &View) -> bool {
    view.one(CORE_COUNT) != Some("two")
}

/// Whether there are too few cores, by sight or else by print.
pub fn too_few(view: &View, print: Option<&FlexPrint>) -> Judgement {
    let seen = |answer| Reason::Answered { question: CORE_COUNT.id, target: Target::Sample, answer };
    match view.one(CORE_COUNT) {
        Some(answer @ "three") => return Judgement::conforms(Danger, Basis::Sight, seen(answer)),
        Some(answer @ "two") if has_no_earth_by_design(view) => return Judgement::cannot_tell(Danger, seen(answer)),
        Some(answer @ "two") => return Judgement::breaks(Danger, Basis::Sight, seen(answer)),
        Some(answer) => return Judgement::cannot_tell(Danger, seen(answer)),
        None => {}
    }
    let names_two = print.and_then(|print| print.cores).is_some_and(|cores| cores < 3);
    match view.answer(FLEX_PRINT, Target::Sample) {
        Some(Answer::Printed(printed)) if names_two && !has_no_earth_by_design(view) => {
            Judgement::breaks(Danger, Basis::Print, Reason::FlexType { designation: printed.clone() })
        }
        _ => Judgement::without_choice(Danger, view.answer(CORE_COUNT, Target::Sample)),
    }
}
