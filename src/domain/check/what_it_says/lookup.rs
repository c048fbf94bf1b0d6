//! What only a list elsewhere can tell: recalls and registers of approvals. Without a network nobody has looked.

use crate::domain::check::plug::print::PLUG_PRINT;
use crate::domain::check::{Check, Judge, Prospect, Ruling, always};
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::question::{Ask, Printed, Question};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{law_gb, law_ni};
use crate::domain::view::View;

/// Maker and type as they are printed: what a list is searched for.
pub const MAKER_AND_TYPE: &Question =
    &Question::asking("maker-and-type", Place::WhatItSays, Equipment::HandTools, Ask::Printed(Printed::Words));

/// The number beside an approval mark, as it is printed.
pub const APPROVAL_NUMBER: &Question =
    &Question::asking("approval-number", Place::WhatItSays, Equipment::HandTools, Ask::Printed(Printed::Words))
        .when(has_approval_mark);

/// Whether somebody has looked the product up in lists of recalls.
pub const RECALL_LISTS: &Question =
    &Question::one("recall-lists", Place::WhatItSays, Equipment::Eyes, &["not-found", "found"]);

/// Whether somebody has looked the approval up in its body's register.
pub const APPROVAL_REGISTER: &Question = &Question::one(
    "approval-register",
    Place::WhatItSays,
    Equipment::Eyes,
    &["listed", "not-listed", "listed-for-another"],
)
.when(has_approval_mark);

/// **Finds** a product that an authority or its maker has recalled.
///
/// **Why it matters** others of its kind have hurt somebody, or would.
///
/// **Source** General Product Safety Regulations 2005, Regulation (EU) 2023/988 (memory-high).
///
/// **Decision** by a list; without a network it is not looked at. Not found is no evidence: the list knows names, and names change.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, what_it_says::lookup};
/// assert_eq!(by_code("recalled-product").map(|check| check.asks), Some([lookup::RECALL_LISTS].as_slice()));
/// ```
pub const RECALLED_PRODUCT: &Check = &Check {
    code: "recalled-product",
    place: Place::WhatItSays,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: always,
    judge: Judge::Answer(RECALL_LISTS, &[("not-found", Ruling::FitsTheClaim), ("found", Ruling::Breaks(Danger))]),
    asks: &[RECALL_LISTS],
    against: &[law_gb::GENERAL_SAFETY, law_ni::GENERAL_SAFETY],
    prospect: Prospect { minutes: 5.0, percent: 3 },
};

/// **Finds** an approval number that its body does not know, or knows for something else.
///
/// **Why it matters** the mark is forged, and nobody has tested the plug.
///
/// **Source** Plugs and Sockets etc. (Safety) Regulations 1994 (read).
///
/// **Decision** by the body's register; without a network it is not looked at. A number that is listed may still be copied.
pub const APPROVAL_NUMBER_FALSE: &Check = &Check {
    code: "approval-number-false",
    place: Place::WhatItSays,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: |view| view.marked(PLUG_PRINT, "approval-mark") != Some(false),
    judge: Judge::Answer(
        APPROVAL_REGISTER,
        &[
            ("listed", Ruling::FitsTheClaim),
            ("not-listed", Ruling::Breaks(Breach)),
            ("listed-for-another", Ruling::Breaks(Breach)),
        ],
    ),
    asks: &[APPROVAL_REGISTER],
    against: &[law_gb::PLUGS],
    prospect: Prospect { minutes: 5.0, percent: 15 },
};

fn has_approval_mark(view: &View) -> bool {
    view.marked(PLUG_PRINT, "approval-mark") == Some(true)
}
