//! Promises, and the one that can be judged from outside. The others are asked again where they can be seen.

use crate::domain::check::{Check, Judge, Prospect};
use crate::domain::facts::{FLEX_PRINT, PROMISES};
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::finding::{Basis, Judgement, Reason};
use crate::domain::marking::Covering;
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, law_gb};
use crate::domain::view::View;

/// How goods that are promised for outdoors are built and used.
pub const OUTDOOR_BUILD: &Question =
    &Question::any("outdoor-build", Place::WhatItSays, Equipment::Eyes, &["splash-proof", "rubber-flex", "used-wet"])
        .when(promises_outdoor);

/// **Finds** goods promised for outdoors with a PVC flex, or not protected against splashing.
///
/// **Why it matters** water reaches live parts, and PVC cracks in the cold.
///
/// **Source** common practice: rubber flex and IPX4 at least.
///
/// **Decision** by the promise, the marks and the flex's own print; a danger where it is used in the wet.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, what_it_says::promise};
/// assert_eq!(by_code("outdoor-promise-unmet").map(|check| check.needs), Some(promise::OUTDOOR_BUILD.needs));
/// ```
pub const OUTDOOR_PROMISE_UNMET: &Check = &Check {
    code: "outdoor-promise-unmet",
    place: Place::WhatItSays,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: |view| view.marked(PROMISES, "outdoor") != Some(false),
    judge: Judge::Reckoned(outdoor),
    asks: &[PROMISES, OUTDOOR_BUILD, FLEX_PRINT],
    against: &[Clause::common_practice(), law_gb::TRUE_CLAIMS],
    prospect: Prospect { minutes: 0.3, percent: 10 },
};

fn promises_outdoor(view: &View) -> bool {
    view.marked(PROMISES, "outdoor") == Some(true)
}

fn outdoor(view: &View) -> Judgement {
    if !promises_outdoor(view) {
        return Judgement::without_choice(Danger, view.answer(PROMISES, Target::Sample));
    }
    let has = |code| view.marked(OUTDOOR_BUILD, code);
    let severity = if has("used-wet") == Some(true) { Danger } else { Breach };
    let is_pvc = view.flex().and_then(|flex| flex.kind.as_ref()).map(|kind| kind.sheath == Covering::Pvc);
    let is_unmet = |code| Judgement::breaks(severity, Basis::Sight, missing(code));
    match (has("splash-proof"), has("rubber-flex"), is_pvc) {
        (_, _, Some(true)) | (_, Some(false), None) => is_unmet("rubber-flex"),
        (Some(false), ..) => is_unmet("splash-proof"),
        (Some(true), ..) => Judgement::conforms(severity, Basis::Print, Reason::FitsTheClaim),
        (None, ..) => Judgement::without_choice(Danger, view.answer(OUTDOOR_BUILD, Target::Sample)),
    }
}

const fn missing(answer: &'static str) -> Reason {
    Reason::NotAmong { question: OUTDOOR_BUILD.id, answer }
}
