//! What is printed on the plug.

use crate::domain::check::{Check, Judge, Prospect};
use crate::domain::facts::has_uk_plug;
use crate::domain::finding::Judgement;
use crate::domain::finding::Severity::Breach;
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{bs1363_1, law_gb};

/// What can be found on the plug, from outside and without opening it.
pub const PLUG_PRINT: &Question = &Question::any(
    "plug-print",
    Place::Plug,
    Equipment::Eyes,
    &["maker", "bs-1363", "fuse-sign", "rating", "approval-mark", "ce-or-ukca"],
)
.when(has_uk_plug);

/// **Finds** a plug that does not name its maker, BS 1363, its fuse or its rating.
///
/// **Why it matters** nobody answers for it, and nobody knows which fuse belongs in it.
///
/// **Source** BS 1363-1:1995+A2, 7.1 (read).
///
/// **Decision** by eye; all of them there fit the claim and no more.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, plug::print};
/// assert_eq!(by_code("plug-mark-missing").map(|check| check.asks), Some([print::PLUG_PRINT].as_slice()));
/// ```
pub const PLUG_MARK_MISSING: &Check = &Check {
    code: "plug-mark-missing",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: has_uk_plug,
    judge: Judge::Reckoned(|view| {
        Judgement::by_print(view, PLUG_PRINT, &["bs-1363", "fuse-sign", "rating", "maker"], Breach)
    }),
    asks: &[PLUG_PRINT],
    against: &[bs1363_1::MARKING],
    prospect: Prospect { minutes: 0.3, percent: 25 },
};

/// **Finds** a plug without the mark of a body that approved it.
///
/// **Why it matters** in the United Kingdom such a plug may not be sold.
///
/// **Source** Plugs and Sockets etc. (Safety) Regulations 1994 (read).
///
/// **Decision** by eye. Approval marks are the ones most often forged: one that is there fits the claim and is no credit.
pub const APPROVAL_MARK_MISSING: &Check = &Check {
    code: "approval-mark-missing",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: has_uk_plug,
    judge: Judge::Reckoned(|view| Judgement::by_print(view, PLUG_PRINT, &["approval-mark"], Breach)),
    asks: &[PLUG_PRINT],
    against: &[law_gb::PLUGS],
    prospect: Prospect { minutes: 0.3, percent: 25 },
};
