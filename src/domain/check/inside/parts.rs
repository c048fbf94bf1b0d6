//! Parts that a promise needs: surge part, overload cut-out, thermal fuse, switch.

use super::opening::{OPENED, is_open};
use crate::domain::check::{Check, Judge, Prospect, Ruling, on_leads};
use crate::domain::examination::Answer;
use crate::domain::facts;
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::finding::{Basis, Judgement, Reason};
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::Clause;
use crate::domain::view::View;

/// Which parts are there beside contacts and wires.
pub const PARTS_INSIDE: &Question = &Question::any(
    "parts-inside",
    Place::Inside,
    Equipment::Meters,
    &["surge-part", "overload-cut-out", "thermal-fuse", "switch"],
)
.when(|view| on_leads(view) && is_open(view));

/// How the surge part is kept from burning when it wears out.
pub const SURGE_PART: &Question =
    &Question::one("surge-part", Place::Inside, Equipment::Meters, &["with-thermal-fuse", "bare", "scorched"])
        .when(|view| is_open(view) && view.marked(PARTS_INSIDE, "surge-part") == Some(true));

/// Each promise whose part can be seen inside, and the parts that keep it. Shutters and weather-proofing are seen from outside.
const KEPT_BY: [(&str, &[&str]); 4] = [
    ("surge", &["surge-part"]),
    ("overload", &["overload-cut-out"]),
    ("switch", &["switch"]),
    ("thermal", &["thermal-fuse", "overload-cut-out"]),
];

/// **Finds** a promise without the part that would keep it.
///
/// **Why it matters** people rely on what is not there.
///
/// **Source** common practice: surge protection needs a surge part, overload protection a cut-out, and so on.
///
/// **Decision** by eye, for each promise that can be seen inside.
pub const PROMISED_PART_MISSING: &Check = &Check {
    code: "promised-part-missing",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Breach,
    applies: may_promise_a_part,
    judge: Judge::Reckoned(promised_part_missing),
    asks: &[PARTS_INSIDE, OPENED, facts::PROMISES],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 1.0, percent: 30 },
};

fn may_promise_a_part(view: &View) -> bool {
    on_leads(view) && KEPT_BY.iter().any(|(promise, _)| view.marked(facts::PROMISES, promise) != Some(false))
}

fn promised_part_missing(view: &View) -> Judgement {
    if !matches!(view.answer(facts::PROMISES, Target::Sample), Some(Answer::Any(_))) {
        return Judgement::without_choice(Breach, view.answer(facts::PROMISES, Target::Sample));
    }
    let Some(Answer::Any(found)) = view.answer(PARTS_INSIDE, Target::Sample) else {
        return Judgement::without_choice(Breach, view.answer(PARTS_INSIDE, Target::Sample));
    };
    let is_broken = |(promise, parts): &(&str, &[&str])| {
        view.marked(facts::PROMISES, promise) == Some(true) && !parts.iter().any(|part| found.contains(part))
    };
    match KEPT_BY.into_iter().find(is_broken) {
        Some((answer, _)) => {
            let reason = Reason::Answered { question: facts::PROMISES.id, target: Target::Sample, answer };
            Judgement::breaks(Breach, Basis::Sight, reason)
        }
        None => Judgement::conforms(Breach, Basis::Sight, Reason::NothingWrongAnswered),
    }
}

/// **Finds** a surge part with no thermal fuse beside it.
///
/// **Why it matters** a worn surge part runs hot and sets fire; the thermal fuse against it is there to stop that.
///
/// **Source** common practice.
///
/// **Decision** by eye; a danger where it is scorched already.
pub const SURGE_PART_UNPROTECTED: &Check = &Check {
    code: "surge-part-unprotected",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Danger,
    applies: has_surge_part,
    judge: Judge::Answer(
        SURGE_PART,
        &[("with-thermal-fuse", Ruling::Keeps), ("bare", Ruling::Breaks(Breach)), ("scorched", Ruling::Breaks(Danger))],
    ),
    asks: &[SURGE_PART, PARTS_INSIDE, OPENED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 40 },
};

/// Whether there is a surge part: seen, or promised and not yet looked for.
pub fn has_surge_part(view: &View) -> bool {
    let seen = view.marked(PARTS_INSIDE, "surge-part");
    on_leads(view) && seen.unwrap_or(view.marked(facts::PROMISES, "surge") == Some(true))
}
