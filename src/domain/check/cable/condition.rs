//! The state of the flex along its whole length: whole, in one piece, its sheath close on the cores.

use crate::domain::check::{Check, Judge, Prospect, Ruling, always};
use crate::domain::examination::Answer;
use crate::domain::finding::Severity::{BadSign, Danger};
use crate::domain::finding::{Judgement, Reason, Severity};
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::Clause;
use crate::domain::view::View;

/// What is wrong along the flex.
pub const CONDITION: &Question = &Question::any(
    "flex-condition",
    Place::Cable,
    Equipment::Eyes,
    &["core-shows", "joined", "taped", "melted", "scuffed", "sheath-loose"],
);

/// What damages a flex, the gravest first.
const DAMAGE: &[(&str, Severity)] =
    &[("core-shows", Danger), ("taped", Danger), ("melted", Danger), ("scuffed", BadSign)];

/// **Finds** a flex whose inner cores show, that is taped, melted, or scuffed.
///
/// **Why it matters** one layer of thin insulation, or none, is left between a hand and the mains.
///
/// **Source** facts of the trade.
///
/// **Decision** by eye; a scuff that leaves the sheath closed is a bad sign only. Tape hides what is under it and is no repair.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, cable::condition};
/// assert_eq!(by_code("flex-damaged").map(|check| check.place), Some(condition::FLEX_DAMAGED.place));
/// ```
pub const FLEX_DAMAGED: &Check = &Check {
    code: "flex-damaged",
    place: Place::Cable,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(damage),
    asks: &[CONDITION],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.3, percent: 5 },
};

/// **Finds** two pieces of flex joined on the way.
///
/// **Why it matters** a joint outside a box comes apart under a pull, and then its live ends lie open.
///
/// **Source** facts of the trade.
///
/// **Decision** by eye; under tape there may be a joint, so tape leaves it open.
pub const JOINT_IN_FLEX: &Check = &Check {
    code: "joint-in-flex",
    place: Place::Cable,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(joint),
    asks: &[CONDITION],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.3, percent: 2 },
};

/// **Finds** a sheath that slides or wrinkles over the cores.
///
/// **Why it matters** a cord grip holds the sheath: if it slides, a pull reaches the terminals.
///
/// **Source** facts of the trade.
///
/// **Decision** by eye and a gentle twist; a hint only.
pub const SHEATH_LOOSE: &Check = &Check {
    code: "sheath-loose",
    place: Place::Cable,
    needs: Equipment::Eyes,
    severity: BadSign,
    applies: always,
    judge: Judge::Marked(CONDITION, "sheath-loose", BadSign),
    asks: &[CONDITION],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.3, percent: 15 },
};

fn damage(view: &View) -> Judgement {
    let Some(Answer::Any(seen)) = view.answer(CONDITION, Target::Sample) else {
        return Judgement::without_choice(Danger, view.answer(CONDITION, Target::Sample));
    };
    let ruling = |&(code, severity): &(&'static str, Severity)| (code, Ruling::Breaks(severity));
    let worst = DAMAGE.iter().find(|(code, _)| seen.contains(code)).map(ruling);
    by_sight(view, worst)
}

fn joint(view: &View) -> Judgement {
    let Some(Answer::Any(seen)) = view.answer(CONDITION, Target::Sample) else {
        return Judgement::without_choice(Danger, view.answer(CONDITION, Target::Sample));
    };
    let worst = [("joined", Ruling::Breaks(Danger)), ("taped", Ruling::CannotTell)];
    by_sight(view, worst.into_iter().find(|(code, _)| seen.contains(code)))
}

fn by_sight(view: &View, worst: Option<(&'static str, Ruling)>) -> Judgement {
    let Some((answer, ruling)) = worst else {
        return Ruling::Keeps.judgement(view, Danger, Reason::NothingWrongAnswered);
    };
    let reason = Reason::Answered { question: CONDITION.id, target: Target::Sample, answer };
    ruling.judgement(view, Danger, reason)
}
