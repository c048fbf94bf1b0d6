//! The fuse link in the hand: its print, its kind, its size and mass, and whether it sits in the line.

use super::fuse::{IN_THE_HOLDER, Presence, may_be_there, presence};
use crate::domain::check::{Check, Judge, Prospect, Ruling, ruling};
use crate::domain::facts::{FUSE_RATING, has_uk_plug};
use crate::domain::finding::Severity::{BadSign, Breach, Danger};
use crate::domain::finding::{Conformity, Judgement, Reason, Severity};
use crate::domain::instrument::Instrument::{DigitalCalliper, Rule, Scale, VernierCalliper};
use crate::domain::quantity::{Length, Mass, QuantityKind, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Kind, Place};
use crate::domain::standard::{bs1362, bs1363_1};
use crate::domain::view::View;

/// What is wrong with the fuse link, held in the hand.
pub const FUSE_CLOSER: &Question =
    &Question::any("fuse-closer", Place::Plug, Equipment::HandTools, &["no-maker", "no-approval-mark", "not-ceramic"])
        .when(may_be_there);

/// Length of the fuse link over both caps.
pub const FUSE_LENGTH: &Question = &with_calliper("fuse-length");

/// Diameter of the fuse link's caps.
pub const FUSE_DIAMETER: &Question = &with_calliper("fuse-diameter");

/// Mass of the fuse link.
pub const FUSE_MASS: &Question = &Question::asking(
    "fuse-mass",
    Place::Plug,
    Equipment::HandTools,
    Ask::Measure { kind: QuantityKind::Mass, units: &[Unit::Gram], instruments: &[Scale] },
)
.when(may_be_there);

/// Which pole opens when the fuse is out.
pub const FUSE_OUT: &Question = &Question::one(
    "fuse-out",
    Place::Plug,
    Equipment::HandTools,
    &["line-opens", "neutral-opens", "both-open", "none-opens"],
)
.when(has_uk_plug);

const fn with_calliper(id: &'static str) -> Question {
    let ask = Ask::Measure {
        kind: QuantityKind::Length,
        units: &[Unit::Millimetre],
        instruments: &[DigitalCalliper, VernierCalliper, Rule],
    };
    Question::asking(id, Place::Plug, Equipment::HandTools, ask).when(may_be_there)
}

/// **Finds** a fuse link without its print: maker, rating, approval mark.
///
/// **Why it matters** nobody answers for how it opens, or when.
///
/// **Source** BS 1362, marking (read).
///
/// **Decision** by eye. Print that is there fits the claim.
pub const FUSE_UNMARKED: &Check = &Check {
    code: "fuse-unmarked",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: has_uk_plug,
    judge: Judge::Reckoned(unmarked),
    asks: &[IN_THE_HOLDER, FUSE_RATING, FUSE_CLOSER],
    against: &[bs1362::MARKING],
    prospect: Prospect { minutes: 0.3, percent: 20 },
};

/// **Finds** a fuse link that is none to BS 1362: of glass, with other marks, above 13 A, or not of ceramic.
///
/// **Why it matters** it may burst at the current of a wall socket's fault instead of breaking it.
///
/// **Source** BS 1362 (read): ceramic, sand-filled, 13 A at most. A "BS 1362 15 A" is a fake.
///
/// **Decision** by eye. On multiway leads glass, more than 13 A or a fake is a danger, else against the rules.
///
/// **Example**
/// ```
/// use plugwary::domain::check::plug::fuse_closer::FUSE_STANDARD_WRONG;
/// use plugwary::domain::standard::bs1362;
/// assert!(FUSE_STANDARD_WRONG.against.contains(&bs1362::LARGEST_RATING));
/// ```
pub const FUSE_STANDARD_WRONG: &Check = &Check {
    code: "fuse-standard-wrong",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Reckoned(standard_wrong),
    asks: &[IN_THE_HOLDER, FUSE_RATING, FUSE_CLOSER],
    against: &[bs1362::LARGEST_RATING, bs1362::BODY, bs1362::MARKING],
    prospect: Prospect { minutes: 0.3, percent: 15 },
};

/// **Finds** a fuse link of another length or diameter.
///
/// **Why it matters** its clips hold it badly and run hot; a fake is often a little short.
///
/// **Source** BS 1362: length read; the diameter's tolerance is memory-low.
///
/// **Decision** by the length. The diameter is told and never decides.
pub const FUSE_SIZE_OFF: &Check = &Check {
    code: "fuse-size-off",
    place: Place::Plug,
    needs: Equipment::HandTools,
    severity: Breach,
    applies: has_uk_plug,
    judge: Judge::Reckoned(size_off),
    asks: &[FUSE_LENGTH, FUSE_DIAMETER],
    against: &[bs1362::LENGTH, bs1362::DIAMETER],
    prospect: Prospect { minutes: 0.5, percent: 10 },
};

/// **Finds** a fuse link light enough to have no sand.
///
/// **Why it matters** without sand it may burst instead of breaking a fault.
///
/// **Source** one observation of about 2.3 g and about 1.6 g (common practice): no limit.
///
/// **Decision** a hint, on a scale that shows tenths of a gram.
pub const FUSE_UNDERWEIGHT: &Check = &Check {
    code: "fuse-underweight",
    place: Place::Plug,
    needs: Equipment::HandTools,
    severity: BadSign,
    applies: has_uk_plug,
    judge: Judge::Reckoned(underweight),
    asks: &[FUSE_MASS],
    against: &[bs1362::MASS],
    prospect: Prospect { minutes: 0.5, percent: 10 },
};

/// **Finds** a fuse that is not in the line.
///
/// **Why it matters** when it opens, the sample is dead to look at and live to touch.
///
/// **Source** BS 1363-1 (pole: memory-high).
///
/// **Decision** by a continuity tester with the fuse out: line opens, neutral stays.
pub const FUSE_NOT_IN_LINE: &Check = &Check {
    code: "fuse-not-in-line",
    place: Place::Plug,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Answer(
        FUSE_OUT,
        &[
            ("line-opens", Ruling::Keeps),
            ("neutral-opens", Ruling::Breaks(Danger)),
            ("both-open", Ruling::CannotTell),
            ("none-opens", Ruling::Breaks(Danger)),
        ],
    ),
    asks: &[FUSE_OUT],
    against: &[bs1363_1::FUSE],
    prospect: Prospect { minutes: 1.0, percent: 5 },
};

fn unmarked(view: &View) -> Judgement {
    let closer = ["no-maker", "no-approval-mark"].into_iter().find(|code| view.marked(FUSE_CLOSER, code) == Some(true));
    let (question, answer, ruling) = match (view.one(IN_THE_HOLDER), view.one(FUSE_RATING), closer) {
        (Some(answer @ "unmarked"), ..) => (IN_THE_HOLDER, answer, Ruling::Breaks(Breach)),
        _ if presence(view) == Presence::Absent => return Judgement::does_not_apply(Breach),
        (_, Some(answer @ "not-printed"), _) => (FUSE_RATING, answer, Ruling::Breaks(Breach)),
        (.., Some(answer)) => (FUSE_CLOSER, answer, Ruling::Breaks(Breach)),
        (Some(answer @ "holder-broken"), ..) => (IN_THE_HOLDER, answer, Ruling::CannotTell),
        (Some("under-the-cover"), ..) => return Judgement::not_examined(Breach),
        (Some(_), Some(answer), None) => (FUSE_RATING, answer, Ruling::FitsTheClaim),
        (Some(_), None, None) => return unanswered(view, FUSE_RATING, Breach),
        (None, ..) => return unanswered(view, IN_THE_HOLDER, Breach),
    };
    ruling.judgement(view, Breach, answered(question, answer))
}

fn standard_wrong(view: &View) -> Judgement {
    let fake = Ruling::BreaksBy(grave_on_leads);
    let not_ceramic = view.marked(FUSE_CLOSER, "not-ceramic") == Some(true);
    let (question, answer, ruling) = match (view.one(IN_THE_HOLDER), view.one(FUSE_RATING)) {
        (Some(answer @ "glass"), _) => (IN_THE_HOLDER, answer, fake),
        _ if presence(view) == Presence::Absent => return Judgement::does_not_apply(Danger),
        (_, Some(answer @ "above-13")) => (FUSE_RATING, answer, fake),
        _ if not_ceramic => (FUSE_CLOSER, "not-ceramic", fake),
        (Some(answer @ "other-marking"), _) => (IN_THE_HOLDER, answer, Ruling::Breaks(Breach)),
        (Some(answer @ ("unmarked" | "holder-broken")), _) => (IN_THE_HOLDER, answer, Ruling::CannotTell),
        (Some("under-the-cover"), _) => return Judgement::not_examined(Danger),
        (Some(answer), Some(_)) => (IN_THE_HOLDER, answer, Ruling::FitsTheClaim),
        (Some(_), None) => return unanswered(view, FUSE_RATING, Danger),
        (None, _) => return unanswered(view, IN_THE_HOLDER, Danger),
    };
    ruling.judgement(view, Danger, answered(question, answer))
}

fn size_off(view: &View) -> Judgement {
    if presence(view) == Presence::Absent {
        return Judgement::does_not_apply(Breach);
    }
    let read = |question| view.reading(question, Target::Sample).and_then(Reading::measured::<Length>);
    let Some(length) = read(FUSE_LENGTH) else {
        return unanswered(view, FUSE_LENGTH, Breach);
    };
    let length = ruling::against(Target::Sample, &length, &bs1362::length());
    let length_keeps = length.outcome == Conformity::Conforms;
    let diameter = read(FUSE_DIAMETER).map(|diameter| {
        let mut indicative = ruling::against(Target::Sample, &diameter, &bs1362::diameter());
        if indicative.outcome == Conformity::Nonconforming {
            indicative.outcome = Conformity::Inconclusive;
        }
        indicative
    });
    let evidence: Vec<_> = core::iter::once(length).chain(diameter).collect();
    let read = evidence.len();
    let judgement = Judgement::by_readings(Breach, evidence, read);
    if length_keeps { judgement.only_told_if_in_doubt() } else { judgement }
}

fn underweight(view: &View) -> Judgement {
    if presence(view) == Presence::Absent {
        return Judgement::does_not_apply(BadSign);
    }
    match view.reading(FUSE_MASS, Target::Sample).and_then(Reading::measured::<Mass>) {
        Some(mass) => {
            let evidence = ruling::against(Target::Sample, &mass, &bs1362::doubtful_mass());
            Judgement::by_readings(BadSign, vec![evidence], 1)
        }
        None => unanswered(view, FUSE_MASS, BadSign),
    }
}

fn grave_on_leads(view: &View) -> Severity {
    match view.kind() {
        Kind::ExtensionLead => Danger,
        Kind::CordSet => Breach,
    }
}

fn unanswered(view: &View, question: &Question, gravest: Severity) -> Judgement {
    Judgement::without_choice(gravest, view.answer(question, Target::Sample))
}

fn answered(question: &Question, answer: &'static str) -> Reason {
    Reason::Answered { question: question.id, target: Target::Sample, answer }
}
