//! Promises that can be held against what is seen outside. The others are asked again where they can be seen, inside.

use crate::domain::check::{Check, Judge, Prospect};
use crate::domain::examination::Answer;
use crate::domain::facts::{FLEX_PRINT, PROMISES};
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::finding::{Basis, Judgement, Reason, Severity};
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, law_gb};
use crate::domain::view::View;

/// What speaks for or against the promise that it may be used outdoors.
pub const OUTDOORS: &Question =
    &Question::any("outdoors", Place::WhatItSays, Equipment::Eyes, &["ipx4-or-more", "used-wet"]).when(is_promised);

/// **Finds** a lead sold for outdoors that is not made for it.
///
/// **Why it matters** water gets in, and PVC flex cracks in the cold.
///
/// **Source** what is said of goods is true (memory-high); outdoors means at least IPX4 and a rubber flex (usual practice).
///
/// **Decision** by print: no IPX4 or more, or a flex whose print names PVC. A danger where it is used wet.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, what_it_says::promises};
/// assert_eq!(by_code("outdoor-promise-unmet").map(|check| check.place), Some(promises::OUTDOOR_PROMISE_UNMET.place));
/// ```
pub const OUTDOOR_PROMISE_UNMET: &Check = &Check {
    code: "outdoor-promise-unmet",
    place: Place::WhatItSays,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: may_be_promised,
    judge: Judge::Reckoned(outdoors),
    asks: &[OUTDOORS, PROMISES, FLEX_PRINT],
    against: &[law_gb::TRUE_CLAIMS, Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 10 },
};

fn is_promised(view: &View) -> bool {
    view.marked(PROMISES, "outdoor") == Some(true)
}

fn may_be_promised(view: &View) -> bool {
    view.marked(PROMISES, "outdoor") != Some(false)
}

fn outdoors(view: &View) -> Judgement {
    if !is_promised(view) {
        return Judgement::without_choice(Danger, view.answer(PROMISES, Target::Sample));
    }
    let severity: Severity = if view.marked(OUTDOORS, "used-wet") == Some(true) { Danger } else { Breach };
    let flex = view.flex().and_then(|print| Some((print.is_for_outdoors(), print.name()?)));
    if let Some((Some(false), designation)) = flex {
        return Judgement::breaks(severity, Basis::Print, Reason::FlexType { designation });
    }
    let Some(Answer::Any(seen)) = view.answer(OUTDOORS, Target::Sample) else {
        return Judgement::without_choice(Danger, view.answer(OUTDOORS, Target::Sample));
    };
    if !seen.contains(&"ipx4-or-more") {
        let reason = Reason::NotAmong { question: OUTDOORS.id, answer: "ipx4-or-more" };
        return Judgement::breaks(severity, Basis::Print, reason);
    }
    match flex {
        Some((Some(true), _)) => Judgement::conforms(severity, Basis::Print, Reason::FitsTheClaim),
        Some((_, designation)) => Judgement::cannot_tell(severity, Reason::FlexType { designation }),
        None => match view.answer(FLEX_PRINT, Target::Sample) {
            Some(Answer::Nothing | Answer::Printed(_)) => Judgement::cannot_tell(severity, Reason::CouldNotTell),
            answer => Judgement::without_choice(severity, answer),
        },
    }
}
