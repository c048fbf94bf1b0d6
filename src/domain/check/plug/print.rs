//! What is printed on the plug.

use crate::domain::check::{Check, Judge, Prospect};
use crate::domain::facts::has_uk_plug;
use crate::domain::finding::Severity::Breach;
use crate::domain::finding::{Basis, Conformity, Judgement, Reason};
use crate::domain::quantity::{ElectricCurrent, amperes};
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{bs1363_1, law_gb};
use crate::domain::view::View;

use super::rewirable::OPENED_PLUG;

/// What is printed on the plug, or moulded into it.
pub const PLUG_PRINT: &Question = &Question::any(
    "plug-print",
    Place::Plug,
    Equipment::Eyes,
    &["bs-1363", "maker", "fuse-word", "approval", "rated-13", "rated-10", "rated-5", "rated-3", "rated-other"],
)
.when(has_uk_plug);

/// **Finds** a plug without its maker, BS 1363, the word FUSE, or a rating; inside a rewirable one, without L, N and E.
///
/// **Why it matters** nobody answers for it, and nobody can tell which fuse belongs in it.
///
/// **Source** BS 1363-1, clause 7.1 (read).
///
/// **Decision** by eye. Print that is there fits the claim and is no evidence.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, plug::print};
/// assert_eq!(by_code("plug-mark-missing").map(|check| check.needs), Some(print::PLUG_PRINT.needs));
/// ```
pub const PLUG_MARK_MISSING: &Check = &Check {
    code: "plug-mark-missing",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: has_uk_plug,
    judge: Judge::Reckoned(mark_missing),
    asks: &[PLUG_PRINT, OPENED_PLUG],
    against: &[bs1363_1::MARKING],
    prospect: Prospect { minutes: 0.4, percent: 30 },
};

/// **Finds** a plug without the mark of a body that approved it.
///
/// **Why it matters** the law wants every 13 A plug approved by an independent body.
///
/// **Source** Plugs and Sockets etc. (Safety) Regulations 1994 (read).
///
/// **Decision** by eye. A mark is a claim, and the one most often forged: it is no credit.
pub const APPROVAL_MARK_MISSING: &Check = &Check {
    code: "approval-mark-missing",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: has_uk_plug,
    judge: Judge::Reckoned(|view| Judgement::by_print(view, PLUG_PRINT, &["approval"], Breach, Breach)),
    asks: &[PLUG_PRINT],
    against: &[law_gb::PLUGS],
    prospect: Prospect { minutes: 0.3, percent: 30 },
};

const RATINGS: [(&str, Option<f64>); 5] = [
    ("rated-13", Some(13.0)),
    ("rated-10", Some(10.0)),
    ("rated-5", Some(5.0)),
    ("rated-3", Some(3.0)),
    ("rated-other", None),
];

/// The rating printed on the plug: the highest where several are.
pub fn plug_rating(view: &View) -> Option<ElectricCurrent> {
    RATINGS.iter().find(|(code, _)| view.marked(PLUG_PRINT, code) == Some(true)).and_then(|row| row.1).map(amperes)
}

/// Whether the plug bears any rating; `None` where nobody looked.
pub fn bears_rating(view: &View) -> Option<bool> {
    let marked = RATINGS.map(|(code, _)| view.marked(PLUG_PRINT, code));
    if marked.contains(&None) { None } else { Some(marked.contains(&Some(true))) }
}

fn mark_missing(view: &View) -> Judgement {
    let printed = Judgement::by_print(view, PLUG_PRINT, &["bs-1363", "maker", "fuse-word"], Breach, Breach);
    if printed.outcome == Conformity::Nonconforming {
        return printed;
    }
    let inside = Judgement::by_mark(view, OPENED_PLUG, "no-letters", Breach, Breach);
    if inside.outcome == Conformity::Nonconforming {
        return inside;
    }
    match bears_rating(view) {
        Some(false) => Judgement::breaks(Breach, Basis::Sight, Reason::NowhereStated),
        Some(true) | None => printed,
    }
}
