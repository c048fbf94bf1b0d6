//! The fuse's rating against what it protects: the product's own rating and the flex.

use super::fuse::{IN_THE_HOLDER, may_be_there};
use crate::domain::check::cable::copper::cut_flex::CutFlex;
use crate::domain::check::cable::copper::heat;
use crate::domain::check::cable::size;
use crate::domain::check::{Check, Judge, Prospect, on_leads};
use crate::domain::examination::Answer;
use crate::domain::facts::{self, FLEX_PRINT, FUSE_RATING, RATING};
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::finding::{Basis, ClaimPlace, Conformity, Judgement, Needed, Reason, Severity};
use crate::domain::quantity::{ElectricCurrent, Measurand};
use crate::domain::question::Target;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{bs1362, bs1363_1};
use crate::domain::view::View;

/// **Finds** a fuse larger than the plug or the lead says it may carry.
///
/// **Why it matters** the fuse lets more flow than the product is made for.
///
/// **Source** BS 1363-1, 7.1 and Table 2; BS 1362: no rating above 13 A (all read).
///
/// **Decision** by print. A lead is held to the lowest current printed on its body or plug, a cord set to what is printed on its plug
/// (its connector's rating is the appliance's affair); where nothing is printed there, to 13 A. A current printed only as watts is
/// taken up to the next fuse there is. A danger where the flex is known to overheat.
pub const FUSE_ABOVE_RATING: &Check = &Check {
    code: "fuse-above-rating",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: may_be_there,
    judge: Judge::Reckoned(above_rating),
    asks: &[FUSE_RATING, RATING],
    against: &[bs1363_1::MARKING, bs1363_1::TABLE_2, bs1362::LARGEST_RATING],
    prospect: Prospect { minutes: 0.2, percent: 15 },
};

/// **Finds** a fuse larger than the flex behind it allows.
///
/// **Why it matters** the fuse is there for the flex: one too large lets it burn.
///
/// **Source** BS 1363-1:1995 Table 2 (read).
///
/// **Decision** by the print on flex and fuse, as in `flex-thin-for-fuse`: the same pair seen from the plug.
pub const FUSE_OVER_FLEX: &Check = &Check {
    code: "fuse-over-flex",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: may_be_there,
    judge: Judge::Reckoned(|view| size::thin_for_fuse(view, view.flex())),
    asks: &[FUSE_RATING, FLEX_PRINT],
    against: &[bs1363_1::TABLE_2],
    prospect: Prospect { minutes: 0.2, percent: 10 },
};

/// The largest fuse that one place allows: a fuse or current printed there, or the fuse that its watts and volts ask for.
fn allowed_by(view: &View, place: ClaimPlace) -> Option<ElectricCurrent> {
    let rating = view.claims().at(place)?;
    let printed = rating.fuse.or(rating.current).map(|stated| stated.value);
    printed.or_else(|| {
        let (lowest, _) = rating.voltage?;
        Some(bs1362::smallest_rating_for(rating.power?.value / lowest.value))
    })
}

fn above_rating(view: &View) -> Judgement {
    let Some(rating) = view.one(FUSE_RATING) else {
        let asked = view.answer(FUSE_RATING, Target::Sample);
        return Judgement::without_choice(Danger, asked.or_else(|| view.answer(IN_THE_HOLDER, Target::Sample)));
    };
    let printed_on: &[ClaimPlace] =
        if on_leads(view) { &[ClaimPlace::Body, ClaimPlace::Plug] } else { &[ClaimPlace::Plug] };
    let lowest =
        printed_on.iter().filter_map(|place| allowed_by(view, *place)).reduce(|a, b| if b < a { b } else { a });
    let limit = lowest.unwrap_or_else(bs1363_1::largest_rating).min(bs1363_1::largest_rating());
    let breaks = |fuse: Option<ElectricCurrent>| {
        let fuse = fuse.map(Measurand::amount);
        let reason = Reason::FuseAgainst { fuse, limit: limit.amount() };
        Judgement::breaks(severity(view), Basis::Print, reason)
    };
    let keeps = || if on_leads(view) && lowest.is_none() { nothing_stated(view) } else { fits() };
    let exact = |fuse: ElectricCurrent| if fuse > limit { breaks(Some(fuse)) } else { keeps() };
    match rating {
        "above-13" => breaks(None),
        "other-up-to-13" if limit >= bs1362::largest_rating() => keeps(),
        _ => match facts::in_amperes(rating) {
            Some(fuse) => exact(fuse),
            None => Judgement::cannot_tell(Danger, Reason::Needs(Needed::FuseRating)),
        },
    }
}

/// Nothing read so far states a rating: 13 A is the limit only once somebody looked at the body of a lead.
fn nothing_stated(view: &View) -> Judgement {
    match view.answer(RATING, Target::Claim(ClaimPlace::Body)) {
        Some(Answer::Printed(_) | Answer::Nothing) => fits(),
        answer => Judgement::without_choice(Danger, answer),
    }
}

fn fits() -> Judgement {
    Judgement::conforms(Danger, Basis::Print, Reason::FitsTheClaim)
}

/// A danger where the flex overheats, by its print or by the readings of its cores.
fn severity(view: &View) -> Severity {
    let is_danger =
        |judgement: &Judgement| judgement.outcome == Conformity::Nonconforming && judgement.severity == Danger;
    let by_print = size::thin_for_rating(view, view.flex());
    let by_reading = heat::judge(&CutFlex::of(view));
    if is_danger(&by_print) || is_danger(&by_reading) { Danger } else { Breach }
}
