//! Strands and mass of one bare core: hints that there is less copper than the cross-section promises.

use super::cut_flex::CutFlex;
use crate::domain::check::ruling::against;
use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::decision::Limit;
use crate::domain::examination::Answer;
use crate::domain::facts;
use crate::domain::finding::Severity::BadSign;
use crate::domain::finding::{Judgement, Needed, Reason};
use crate::domain::instrument::Instrument;
use crate::domain::physics::metal::{Metal, Strands};
use crate::domain::quantity::{Area, Length, Mass, Measurand, QuantityKind, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::iec60228;
use crate::domain::uncertainty::{Measured, combine2};
use crate::domain::view::View;

/// How many strands the brown core has.
pub const STRAND_COUNT: &Question =
    &Question::asking("strand-count", Place::Inside, Equipment::Meters, Ask::Count(1, 255)).after_cutting();

/// Width of ten of its strands laid side by side, touching.
pub const TEN_STRANDS: &Question = &Question::asking("ten-strands-width", Place::Inside, Equipment::Meters, CALLIPERED)
    .after_cutting()
    .when(|view| facts::may_be_cut(view) && !has_few(view));

/// Width of one strand of a core that has fewer than ten.
pub const ONE_STRAND: &Question = &Question::asking("one-strand-width", Place::Inside, Equipment::Meters, CALLIPERED)
    .after_cutting()
    .when(|view| facts::may_be_cut(view) && has_few(view));

const CALLIPERED: Ask = Ask::Measure {
    kind: QuantityKind::Length,
    units: &[Unit::Millimetre],
    instruments: &[Instrument::DigitalCalliper, Instrument::VernierCalliper],
};

/// Mass of the bare metal of the brown core, the whole piece long.
pub const CORE_MASS: &Question = &Question::asking(
    "core-mass",
    Place::Inside,
    Equipment::Meters,
    Ask::Measure { kind: QuantityKind::Mass, units: &[Unit::Gram], instruments: &[Instrument::Scale] },
)
.after_cutting();

/// **Finds** strands that together have less area than pure copper would need.
///
/// **Why it matters** it explains a high resistance, and hints at one where none was read.
///
/// **Source** IEC 60228:2004 Table 3, class 5, plain (read): the resistance allowed, taken as pure copper. The standard itself
/// sets no area.
///
/// **Decision** by the strands' count and the width of ten of them, or of one where there are fewer, at p 0.95; doubt only, it decides nothing.
pub const STRAND_AREA_SHORT: &Check = &Check {
    code: "strand-area-short",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: BadSign,
    applies: always,
    judge: Judge::Reckoned(|view: &View| area_judgement(view, view.area_to_hold_to())),
    asks: &[STRAND_COUNT, TEN_STRANDS, ONE_STRAND],
    against: &[iec60228::TABLE_3],
    prospect: Prospect { minutes: 4.0, percent: 30 },
};

/// **Finds** a bare core that weighs less than its copper would.
///
/// **Why it matters** aluminium under a skin of copper weighs less than half.
///
/// **Source** IEC 60228:2004 Table 3, class 5, plain (read), taken as pure copper of 8.89 kg/dm³ (read).
///
/// **Decision** mass over length at p 0.95; doubt only, it decides nothing.
pub const MASS_BELOW_COPPER_PROMISED: &Check = &Check {
    code: "mass-below-copper-promised",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: BadSign,
    applies: always,
    judge: Judge::Reckoned(|view: &View| mass_judgement(view, view.area_to_hold_to())),
    asks: &[CORE_MASS, facts::PIECE_LENGTH],
    against: &[iec60228::TABLE_3],
    prospect: Prospect { minutes: 4.0, percent: 30 },
};

/// Strands laid side by side never lie quite close: part of their width, standard deviation (usual practice).
const LAID_LOOSE: f64 = 0.02;

/// Twisted strands are longer than their core, by this factor and its relative standard deviation (usual practice).
const LAY: (f64, f64) = (1.02, 0.01);

/// How long the strands of a piece of flex are. Resistance and mass are those of the strands, so a resistivity hangs on their length.
pub fn length_of_strands(piece: Measured<Length>) -> Measured<Length> {
    let (times, relative) = LAY;
    let length = piece.value * times;
    Measured::new(length, Length::from_base(libm::hypot(piece.u.base() * times, relative * length.base())))
}

/// The strands of the brown core, where they were counted and measured.
pub fn strands(view: &View) -> Option<Strands> {
    let count = count(view)?;
    let width = |question| view.reading(question, Target::Sample)?.measured::<Length>();
    let one = width(ONE_STRAND).filter(|_| has_few(view)).map(|one| (one, 1.0, 0.0));
    // Ten may have been taken from several cores.
    let (width, over, loose) = one.or_else(|| Some((width(TEN_STRANDS)?, 10.0, LAID_LOOSE)))?;
    let u = libm::hypot(width.u.base(), loose * width.value.base());
    let diameter = Measured::new(width.value / over, Length::from_base(u / over));
    (count > 0 && width.value.base() > 0.0).then_some(Strands { count, diameter })
}

fn count(view: &View) -> Option<u8> {
    if let Some(Answer::Count(count)) = view.answer(STRAND_COUNT, Target::Sample) { Some(*count) } else { None }
}

/// Whether there are too few strands to lay ten side by side.
fn has_few(view: &View) -> bool {
    count(view).is_some_and(|count| count < 10)
}

/// Mass of the brown core's bare metal, where it was weighed.
pub fn mass(view: &View) -> Option<Measured<Mass>> {
    view.reading(CORE_MASS, Target::Sample)
        .and_then(Reading::measured)
        .filter(|mass: &Measured<Mass>| mass.value.base() > 0.0)
}

/// Judges the strands against the copper that an area needs.
pub fn area_judgement(view: &View, held_to: Option<Area>) -> Judgement {
    let Some(strands) = strands(view) else {
        return missing(view, &[STRAND_COUNT, if has_few(view) { ONE_STRAND } else { TEN_STRANDS }]);
    };
    against_copper(&strands.area(), held_to)
}

/// Judges the mass against the copper that an area needs: the area of pure copper that would weigh as much.
pub fn mass_judgement(view: &View, held_to: Option<Area>) -> Judgement {
    let Some(mass) = mass(view) else { return missing(view, &[CORE_MASS]) };
    let Some(piece) = CutFlex::of(view).piece else {
        return Judgement::cannot_tell(BadSign, Reason::Needs(Needed::PieceLength));
    };
    let copper = combine2(mass, piece, |mass, piece| mass / (piece * Metal::Copper.density()));
    against_copper(&copper, held_to)
}

fn against_copper(area: &Measured<Area>, held_to: Option<Area>) -> Judgement {
    let Some(least) = held_to.and_then(iec60228::class5_least_copper) else {
        return Judgement::cannot_tell(BadSign, Reason::Needs(Needed::ClaimedArea));
    };
    Judgement::by_readings(BadSign, vec![against(Target::Sample, area, &Limit::AtLeast(least))], 1)
}

fn missing(view: &View, questions: &[&Question]) -> Judgement {
    let answers = questions.iter().map(|question| view.answer(question, Target::Sample));
    Judgement::worst(answers.map(|answer| Judgement::without_choice(BadSign, answer)).collect(), BadSign)
}
