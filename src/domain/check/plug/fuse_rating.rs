//! The fuse's rating against the plug, the lead and the flex.

use super::fuse::{Presence, presence};
use super::print::{PLUG_PRINT, plug_rating};
use crate::domain::check::{Check, Judge, Prospect, on_leads};
use crate::domain::examination::Answer;
use crate::domain::facts::{FLEX_PRINT, FUSE_RATING, RATING, has_uk_plug};
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::finding::{Basis, Judgement, Needed, Reason, Severity};
use crate::domain::marking::Rating;
use crate::domain::quantity::{ElectricCurrent, Measurand, amperes, square_millimetres, volts};
use crate::domain::question::{ClaimPlace, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1362, bs1363_1};
use crate::domain::view::View;

/// **Finds** a fuse of a higher rating than the plug or the lead claims for itself.
///
/// **Why it matters** the fuse lets through more than the rest is made for.
///
/// **Source** BS 1363-1, clause 7.1 (read): the plug's print names the fuse that belongs in it.
///
/// **Decision** print against print. A danger on leads whose flex claims less than 1.0 mm², for that overheats; else against the rules.
/// A lead that states watts alone is taken at 230 V.
pub const FUSE_ABOVE_RATING: &Check = &Check {
    code: "fuse-above-rating",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Reckoned(above_rating),
    asks: &[FUSE_RATING, PLUG_PRINT, RATING],
    against: &[bs1363_1::MARKING],
    prospect: Prospect { minutes: 0.4, percent: 20 },
};

/// **Finds** a fuse above the largest that the flex may have before it.
///
/// **Why it matters** the flex burns before the fuse opens.
///
/// **Source** BS 1363-1, Table 2 (read); no flex under 0.5 mm² for mains in the UK (common practice).
///
/// **Decision** the fuse's print against the cross-section that the flex claims. That it fits is a claim: only the metal can tell.
/// 5 A before 0.5 mm² is against the rules on a lead; on a cord set an appliance's inrush may need it.
///
/// **Example**
/// ```
/// use plugwary::domain::quantity::{amperes, square_millimetres};
/// use plugwary::domain::standard::bs1363_1::largest_fuse;
/// assert_eq!(largest_fuse(square_millimetres(0.5)), Some(amperes(3.0)));
/// ```
pub const FUSE_OVER_FLEX: &Check = &Check {
    code: "fuse-over-flex",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Reckoned(over_flex),
    asks: &[FUSE_RATING, FLEX_PRINT],
    against: &[bs1363_1::TABLE_2, Clause::common_practice()],
    prospect: Prospect { minutes: 0.4, percent: 10 },
};

/// What is printed of a fuse's rating.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FuseRating {
    /// A rating of its own.
    Exactly(ElectricCurrent),
    /// Something above 13 A.
    Above13,
    /// Some other rating, 13 A at most.
    UpTo13,
}

impl FuseRating {
    /// The rating that an answer of the question names; `None` where it names none.
    pub fn of(answer: &str) -> Option<Self> {
        match answer {
            "3" => Some(Self::Exactly(amperes(3.0))),
            "5" => Some(Self::Exactly(amperes(5.0))),
            "10" => Some(Self::Exactly(amperes(10.0))),
            "13" => Some(Self::Exactly(amperes(13.0))),
            "above-13" => Some(Self::Above13),
            "other-up-to-13" => Some(Self::UpTo13),
            _ => None,
        }
    }

    /// Whether it is above a limit; `None` where the print leaves that open.
    pub fn is_above(self, limit: ElectricCurrent) -> Option<bool> {
        match self {
            Self::Exactly(rating) => Some(rating > limit),
            Self::Above13 => (limit <= bs1362::largest_rating()).then_some(true),
            Self::UpTo13 => (limit >= bs1362::largest_rating()).then_some(false),
        }
    }

    fn against(self, limit: ElectricCurrent) -> Reason {
        let answered = |answer| Reason::Answered { question: FUSE_RATING.id, target: Target::Sample, answer };
        match self {
            Self::Exactly(rating) => Reason::FuseAgainst { fuse: rating.amount(), limit: limit.amount() },
            Self::Above13 => answered("above-13"),
            Self::UpTo13 => answered("other-up-to-13"),
        }
    }
}

/// Whether the fuse's print is above what Table 2 allows for the cross-section that the flex claims; `None` where nothing tells.
pub fn is_over_flex(view: &View) -> Option<bool> {
    let fuse = FuseRating::of(view.one(FUSE_RATING)?)?;
    fuse.is_above(bs1363_1::largest_fuse(view.claimed_area()?).unwrap_or_else(|| amperes(0.0)))
}

/// The current that a lead claims for the whole: the amperes nearest to the sockets, else watts at the supply's 230 V.
pub fn lead_current(claims: &[(ClaimPlace, Rating)]) -> Option<ElectricCurrent> {
    let nearest = [ClaimPlace::Body, ClaimPlace::Package, ClaimPlace::Listing];
    let find = |of: &dyn Fn(&Rating) -> Option<ElectricCurrent>| {
        nearest.iter().find_map(|at| claims.iter().filter(|(place, _)| place == at).find_map(|(_, rating)| of(rating)))
    };
    find(&|rating| rating.current.map(|stated| stated.value))
        .or_else(|| find(&|rating| rating.power.map(|stated| stated.value / volts(230.0))))
}

fn above_rating(view: &View) -> Judgement {
    let fuse = match fuse(view, Danger) {
        Ok(fuse) => fuse,
        Err(judgement) => return judgement,
    };
    let severity = above_matters(view);
    let lead = on_leads(view).then(|| lead_current(view.claims().ratings())).flatten();
    let plug = plug_rating(view);
    let known = [plug, lead].into_iter().flatten();
    if let Some(limit) = known.clone().find(|&limit| fuse.is_above(limit) == Some(true)) {
        return Judgement::breaks(severity, Basis::Print, fuse.against(limit));
    }
    if known.clone().any(|limit| fuse.is_above(limit).is_none()) {
        return Judgement::cannot_tell(severity, Reason::Needs(Needed::FuseRating));
    }
    let lacks_lead = on_leads(view) && lead.is_none();
    match known.reduce(|a, b| if b < a { b } else { a }) {
        Some(limit) if !lacks_lead || was_looked_for(view, ClaimPlace::Body) => {
            Judgement::conforms(severity, Basis::Print, fuse.against(limit))
        }
        Some(_) => Judgement::cannot_tell(severity, Reason::Needs(Needed::ClaimedCurrent)),
        None if view.answer(PLUG_PRINT, Target::Sample).is_none() => Judgement::not_examined(severity),
        None => Judgement::cannot_tell(severity, Reason::Needs(Needed::ClaimedCurrent)),
    }
}

fn over_flex(view: &View) -> Judgement {
    let fuse = match fuse(view, Danger) {
        Ok(fuse) => fuse,
        Err(judgement) => return judgement,
    };
    if fuse.is_above(bs1363_1::largest_rating()) == Some(true) {
        return Judgement::breaks(Danger, Basis::Print, fuse.against(bs1363_1::largest_rating()));
    }
    let Some(area) = view.claimed_area() else {
        return match view.answer(FLEX_PRINT, Target::Sample) {
            Some(Answer::Later) | None => Judgement::not_examined(Danger),
            Some(_) => Judgement::cannot_tell(Danger, Reason::Needs(Needed::ClaimedArea)),
        };
    };
    let limit = bs1363_1::largest_fuse(area).unwrap_or_else(|| amperes(0.0));
    match fuse.is_above(limit) {
        Some(true) if fuse == FuseRating::Exactly(bs1363_1::inrush_fuse()) && limit > amperes(0.0) => {
            inrush(view, fuse, limit)
        }
        Some(true) => Judgement::breaks(Danger, Basis::Print, fuse.against(limit)),
        Some(false) => Judgement::conforms(Danger, Basis::Print, fuse.against(limit)),
        None => Judgement::cannot_tell(Danger, Reason::Needs(Needed::FuseRating)),
    }
}

/// 5 A before 0.5 mm²: some equipment's inrush needs it, a lead's never does.
fn inrush(view: &View, fuse: FuseRating, limit: ElectricCurrent) -> Judgement {
    if on_leads(view) {
        Judgement::breaks(Breach, Basis::Print, fuse.against(limit))
    } else {
        Judgement::cannot_tell(Danger, fuse.against(limit))
    }
}

/// The fuse's printed rating, or what to say without one.
fn fuse(view: &View, gravest: Severity) -> Result<FuseRating, Judgement> {
    if presence(view) == Presence::Absent {
        return Err(Judgement::does_not_apply(gravest));
    }
    match view.answer(FUSE_RATING, Target::Sample) {
        Some(Answer::One(answer)) => {
            FuseRating::of(answer).ok_or_else(|| Judgement::cannot_tell(gravest, Reason::Needs(Needed::FuseRating)))
        }
        answer => Err(Judgement::without_choice(gravest, answer)),
    }
}

fn above_matters(view: &View) -> Severity {
    let thin = view.claimed_area().is_some_and(|area| area < square_millimetres(1.0));
    if on_leads(view) && thin { Danger } else { Breach }
}

fn was_looked_for(view: &View, place: ClaimPlace) -> bool {
    !matches!(view.answer(RATING, Target::Claim(place)), None | Some(Answer::Later))
}
