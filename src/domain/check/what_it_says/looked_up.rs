//! What only a network can tell: recalls, and numbers of approvals. Nothing here looks it up; somebody does, and says what was found.

use crate::domain::check::{Check, Judge, Prospect, Ruling, always};
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{law_gb, law_ni};

/// Whether somebody searched for a recall.
pub const RECALL: &Question =
    &Question::one("recall-search", Place::WhatItSays, Equipment::HandTools, &["nothing-found", "recalled"]);

/// Whether somebody looked up the number of the approval.
pub const APPROVAL: &Question = &Question::one(
    "approval-search",
    Place::WhatItSays,
    Equipment::HandTools,
    &["fits", "another-product", "no-such-number", "no-number-printed"],
);

/// **Finds** a product that was called back.
///
/// **Why it matters** somebody was hurt by it, or nearly.
///
/// **Source** SI 2005/1803, Regulation (EU) 2023/988 (memory-high).
///
/// **Decision** by what somebody found since; until then it was not looked at. Nothing found is no evidence: the danger stays on the list of
/// those not tested.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, what_it_says::looked_up};
/// assert_eq!(by_code("recalled-product").map(|check| check.asks), Some([looked_up::RECALL].as_slice()));
/// ```
pub const RECALLED_PRODUCT: &Check = &Check {
    code: "recalled-product",
    place: Place::WhatItSays,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: always,
    judge: Judge::Answer(RECALL, &[("nothing-found", Ruling::FitsTheClaim), ("recalled", Ruling::Breaks(Danger))]),
    asks: &[RECALL],
    against: &[law_gb::GENERAL_SAFETY, law_ni::GENERAL_SAFETY],
    prospect: Prospect { minutes: 3.0, percent: 5 },
};

/// **Finds** an approval number that was given to another product, or to none.
///
/// **Why it matters** the mark is forged, and nobody tested the plug.
///
/// **Source** SI 1994/1768 (read): plugs are approved by a body.
///
/// **Decision** by what somebody found in the body's list; until then it was not looked at. A number that fits is a claim.
pub const APPROVAL_NUMBER_FALSE: &Check = &Check {
    code: "approval-number-false",
    place: Place::WhatItSays,
    needs: Equipment::HandTools,
    severity: Breach,
    applies: always,
    judge: Judge::Answer(
        APPROVAL,
        &[
            ("fits", Ruling::FitsTheClaim),
            ("another-product", Ruling::Breaks(Breach)),
            ("no-such-number", Ruling::Breaks(Breach)),
            ("no-number-printed", Ruling::DoesNotApply),
        ],
    ),
    asks: &[APPROVAL],
    against: &[law_gb::PLUGS],
    prospect: Prospect { minutes: 4.0, percent: 15 },
};
