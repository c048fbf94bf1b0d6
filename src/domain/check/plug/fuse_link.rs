//! The fuse link itself: its print, its standard, its size and mass.

use super::fuse::{IN_THE_HOLDER, may_be_seen, may_be_there};
use crate::domain::check::ruling::against;
use crate::domain::check::{Check, Judge, Prospect, Ruling, on_leads};
use crate::domain::facts::{FUSE_RATING, has_uk_plug};
use crate::domain::finding::Severity::{BadSign, Breach, Danger};
use crate::domain::finding::{Conformity, Judgement, Reason, Severity};
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{Length, Mass, QuantityKind, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{bs1362, practice};
use crate::domain::view::View;

const CALLIPERED: Ask = Ask::Measure {
    kind: QuantityKind::Length,
    units: &[Unit::Millimetre],
    instruments: &[Instrument::DigitalCalliper, Instrument::VernierCalliper],
};

/// How long the fuse link is.
pub const FUSE_LENGTH: &Question =
    &Question::asking("fuse-length", Place::Plug, Equipment::HandTools, CALLIPERED).when(may_be_seen);

/// How thick its caps are.
pub const FUSE_DIAMETER: &Question =
    &Question::asking("fuse-diameter", Place::Plug, Equipment::HandTools, CALLIPERED).when(may_be_seen);

/// What it weighs.
pub const FUSE_MASS: &Question = &Question::asking(
    "fuse-mass",
    Place::Plug,
    Equipment::HandTools,
    Ask::Measure { kind: QuantityKind::Mass, units: &[Unit::Gram], instruments: &[Instrument::Scale] },
)
.when(may_be_seen)
.lesser();

/// **Finds** a fuse link that does not say what it is.
///
/// **Why it matters** nobody can know when it opens, or whether it does.
///
/// **Source** BS 1362 (read): maker's mark, rated current, BS 1362.
///
/// **Decision** by eye; print fits the claim and no more.
pub const FUSE_UNMARKED: &Check = &Check {
    code: "fuse-unmarked",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: has_uk_plug,
    judge: Judge::Reckoned(unmarked),
    asks: &[IN_THE_HOLDER, FUSE_RATING],
    against: &[bs1362::MARKING],
    prospect: Prospect { minutes: 0.2, percent: 15 },
};

/// **Finds** a fuse link that is not to BS 1362: of glass, without that number, or of a rating that the standard does not have.
///
/// **Why it matters** such a link may burst, arc on or never open.
///
/// **Source** BS 1362 (read): no rating above 13 A, a ceramic body filled with sand.
///
/// **Decision** by eye. On a lead, glass and a rating above 13 A are dangers, for a lead is loaded by whoever plugs in.
pub const FUSE_STANDARD_WRONG: &Check = &Check {
    code: "fuse-standard-wrong",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Reckoned(standard_wrong),
    asks: &[IN_THE_HOLDER, FUSE_RATING],
    against: &[bs1362::LARGEST_RATING, bs1362::BODY, bs1362::MARKING],
    prospect: Prospect { minutes: 0.2, percent: 15 },
};

/// **Finds** a fuse link of the wrong size.
///
/// **Why it matters** too short it sits loose in its clips and heats them; and a link of another size is no link to BS 1362.
///
/// **Source** BS 1362: length (read), diameter of the caps (memory-low).
///
/// **Decision** the length decides with the calliper's doubt; the diameter is told and decides nothing.
pub const FUSE_SIZE_OFF: &Check = &Check {
    code: "fuse-size-off",
    place: Place::Plug,
    needs: Equipment::HandTools,
    severity: Breach,
    applies: may_be_there,
    judge: Judge::Reckoned(size_off),
    asks: &[FUSE_LENGTH, FUSE_DIAMETER],
    against: &[bs1362::LENGTH, bs1362::DIAMETER],
    prospect: Prospect { minutes: 0.5, percent: 10 },
};

/// **Finds** a fuse link so light that its sand may be missing.
///
/// **Why it matters** the sand puts out the arc; without it the link may burst in a fault.
///
/// **Source** one observation: about 2.3 g for a genuine link and 1.6 g for a fake one (read). There is no limit.
///
/// **Decision** under the middle of the two is a bad sign; it decides nothing.
pub const FUSE_UNDERWEIGHT: &Check = &Check {
    code: "fuse-underweight",
    place: Place::Plug,
    needs: Equipment::HandTools,
    severity: BadSign,
    applies: may_be_there,
    judge: Judge::Reckoned(underweight),
    asks: &[FUSE_MASS],
    against: &[practice::USUAL],
    prospect: Prospect { minutes: 1.0, percent: 15 },
};

fn unmarked(view: &View) -> Judgement {
    let held = |ruling: Ruling, answer| {
        let reason = Reason::Answered { question: IN_THE_HOLDER.id, target: Target::Sample, answer };
        ruling.judgement(view, Breach, reason)
    };
    match (view.one(IN_THE_HOLDER), view.one(FUSE_RATING)) {
        (Some("marked-bs-1362" | "other-marking" | "glass"), Some(answer @ "not-printed")) => {
            let reason = Reason::Answered { question: FUSE_RATING.id, target: Target::Sample, answer };
            Ruling::Breaks(Breach).judgement(view, Breach, reason)
        }
        (Some(answer @ "unmarked"), _) => held(Ruling::Breaks(Breach), answer),
        (Some(answer @ ("marked-bs-1362" | "other-marking")), _) => held(Ruling::FitsTheClaim, answer),
        (Some(answer @ ("glass" | "holder-broken")), _) => held(Ruling::CannotTell, answer),
        (Some(answer @ "under-the-cover"), _) => held(Ruling::NotLookedAt, answer),
        (Some(answer), _) => held(Ruling::DoesNotApply, answer),
        (None, _) => Judgement::without_choice(Breach, view.answer(IN_THE_HOLDER, Target::Sample)),
    }
}

fn standard_wrong(view: &View) -> Judgement {
    let answered = |question: &'static Question, answer, ruling: Ruling| {
        let reason = Reason::Answered { question: question.id, target: Target::Sample, answer };
        ruling.judgement(view, Danger, reason)
    };
    let Some(held) = view.one(IN_THE_HOLDER) else {
        return Judgement::without_choice(Danger, view.answer(IN_THE_HOLDER, Target::Sample));
    };
    let ruling = match held {
        "glass" => Ruling::BreaksBy(on_a_lead_danger),
        "marked-bs-1362" | "other-marking" | "unmarked" if view.one(FUSE_RATING) == Some("above-13") => {
            return answered(FUSE_RATING, "above-13", Ruling::BreaksBy(on_a_lead_danger));
        }
        "marked-bs-1362" if view.one(FUSE_RATING).is_none() => {
            return Judgement::without_choice(Danger, view.answer(FUSE_RATING, Target::Sample));
        }
        "marked-bs-1362" => Ruling::FitsTheClaim,
        "other-marking" => Ruling::Breaks(Breach),
        "unmarked" | "holder-broken" => Ruling::CannotTell,
        "under-the-cover" => Ruling::NotLookedAt,
        _ => Ruling::DoesNotApply,
    };
    answered(IN_THE_HOLDER, held, ruling)
}

fn on_a_lead_danger(view: &View) -> Severity {
    if on_leads(view) { Danger } else { Breach }
}

fn size_off(view: &View) -> Judgement {
    let reading = |question| view.reading(question, Target::Sample);
    let Some(length) = reading(FUSE_LENGTH) else {
        return Judgement::without_choice(Breach, view.answer(FUSE_LENGTH, Target::Sample));
    };
    let Some(length) = length.measured::<Length>() else {
        return Judgement::cannot_tell(Breach, Reason::OutOfRange);
    };
    let length = against(Target::Sample, &length, &bs1362::length()).of(FUSE_LENGTH);
    let diameter = reading(FUSE_DIAMETER)
        .and_then(Reading::measured::<Length>)
        .map(|diameter| against(Target::Sample, &diameter, &bs1362::diameter()).of(FUSE_DIAMETER));
    let decided = Judgement::by_readings(Breach, vec![length.clone()], 1);
    match diameter {
        Some(diameter) if decided.outcome == Conformity::Conforms && diameter.outcome != Conformity::Conforms => {
            Judgement::cannot_tell(Breach, Reason::Measured).with_evidence(vec![diameter, length]).only_told()
        }
        Some(diameter) => decided.with_evidence(vec![length, diameter]),
        None => decided,
    }
}

fn underweight(view: &View) -> Judgement {
    let Some(reading) = view.reading(FUSE_MASS, Target::Sample) else {
        return Judgement::without_choice(BadSign, view.answer(FUSE_MASS, Target::Sample));
    };
    let Some(mass) = reading.measured::<Mass>() else {
        return Judgement::cannot_tell(BadSign, Reason::OutOfRange);
    };
    Judgement::by_readings(BadSign, vec![against(Target::Sample, &mass, &practice::doubtful_fuse_mass())], 1)
        .only_told()
}
