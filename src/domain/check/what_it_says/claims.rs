//! Ratings and sizes as they are printed, held against themselves, each other, the plug and the flex.

use crate::domain::check::cable::size;
use crate::domain::check::plug::fuse::IN_THE_HOLDER;
use crate::domain::check::plug::print::PLUG_PRINT;
use crate::domain::check::ruling::against;
use crate::domain::check::{Check, Judge, Prospect, always, on_leads};
use crate::domain::decision::Limit;
use crate::domain::examination::Answer;
use crate::domain::facts::{FLEX_LENGTH, FLEX_PRINT, FUSE_RATING, RATING};
use crate::domain::finding::Severity::{BadSign, Breach, Danger};
use crate::domain::finding::{Basis, ClaimPlace, Conformity, Judgement, Reason, Severity};
use crate::domain::marking::{Claims, Disagreement, Rating, Stated};
use crate::domain::quantity::{Amount, ElectricCurrent, Length, Measurand, QuantityKind};
use crate::domain::question::Target;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{bs1363_1, law_gb, marks, practice};
use crate::domain::view::View;

/// **Finds** a product that states neither volts, amperes nor watts on itself.
///
/// **Why it matters** nobody can know what may be plugged in.
///
/// **Source** IEC 60884-1, 8.1 (memory-high).
///
/// **Decision** by print on body or plug; the package does not count. Print that is there and cannot be read as a rating leaves it open.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, what_it_says::claims};
/// assert_eq!(by_code("rating-missing").map(|check| check.severity), Some(claims::RATING_MISSING.severity));
/// ```
pub const RATING_MISSING: &Check = &Check {
    asks: &[RATING, PLUG_PRINT],
    against: &[marks::RATING_PLATE],
    prospect: Prospect { minutes: 0.4, percent: 15 },
    ..printed("rating-missing", Breach, Judge::Reckoned(missing))
};

/// **Finds** more watts than the same label's volts and amperes make.
///
/// **Why it matters** whoever trusts the watts overloads it.
///
/// **Source** watts are at most volts times amperes (physics; no standard needed).
///
/// **Decision** breaks only beyond the declared digits: the smallest value that the watts may stand for against the largest that volts
/// and amperes may.
pub const RATING_IMPOSSIBLE: &Check = &Check {
    against: &[marks::POWER_FROM_RATING],
    prospect: Prospect { minutes: 0.5, percent: 25 },
    ..printed("rating-impossible", Breach, Judge::Reckoned(impossible))
};

/// **Finds** two places that cannot both be right.
///
/// **Why it matters** one of them is untrue, and it is the larger one that sells.
///
/// **Source** what is said of goods is true (memory-high).
///
/// **Decision** by intervals of the declared digits, pair by pair. A breach where the place that is less to be believed says more (the
/// seller's page more than the package, the package more than the product, the body more than plug or flex); else a bad sign. Volts are a
/// bad sign only, and 250 V, which an accessory bears, is at peace with 230 V, which the supply has. So is a 13 A plug with a lead for less.
pub const RATINGS_DISAGREE: &Check = &Check {
    asks: &[RATING, FLEX_PRINT],
    against: &[law_gb::TRUE_CLAIMS],
    prospect: Prospect { minutes: 0.5, percent: 25 },
    ..printed("ratings-disagree", Breach, Judge::Reckoned(disagree))
};

/// **Finds** a total claim above the 13 A of the plug.
///
/// **Why it matters** a 13 A plug carries no more; whoever trusts the claim overheats plug and flex.
///
/// **Source** BS 1363-1 (read): 13 A. Watts without volts are held at 250 V.
///
/// **Decision** by print, beyond the declared digits; the total claim and not the sum of the sockets. A danger where no fuse stops it, or
/// one too large for flex or plug.
pub const RATING_ABOVE_PLUG: &Check = &Check {
    asks: &[RATING, IN_THE_HOLDER, FUSE_RATING],
    against: &[bs1363_1::TABLE_2],
    prospect: Prospect { minutes: 0.5, percent: 20 },
    ..printed("rating-above-plug", Danger, Judge::Reckoned(above_plug))
};

/// **Finds** a flex shorter than claimed.
///
/// **Why it matters** it is sold short; and whoever skimps there skimps on copper.
///
/// **Source** what is said of goods is true (memory-high).
///
/// **Decision** the flex alone, against every length that is claimed, with the tape's doubt.
pub const LENGTH_OVERSTATED: &Check = &Check {
    needs: Equipment::HandTools,
    asks: &[FLEX_LENGTH, RATING],
    against: &[law_gb::TRUE_CLAIMS],
    prospect: Prospect { minutes: 1.0, percent: 25 },
    ..printed("length-overstated", Breach, Judge::Reckoned(length))
};

const fn printed(code: &'static str, severity: Severity, judge: Judge) -> Check {
    Check {
        code,
        place: Place::WhatItSays,
        needs: Equipment::Eyes,
        severity,
        applies: always,
        judge,
        asks: &[RATING],
        against: &[],
        prospect: Prospect { minutes: 0.5, percent: 20 },
    }
}

fn fits(severity: Severity) -> Judgement {
    Judgement::conforms(severity, Basis::Print, Reason::FitsTheClaim)
}

const fn rates(rating: &Rating) -> bool {
    rating.voltage.is_some() || rating.current.is_some() || rating.power.is_some()
}

/// What the places that are asked leave to say: the first refusal or doubt, else that somebody has not looked everywhere; `None`
/// where every place was read.
fn left_open(view: &View, severity: Severity) -> Option<Judgement> {
    let mut open = None;
    for target in RATING.targets(view) {
        match view.answer(RATING, target) {
            Some(Answer::Printed(_) | Answer::Nothing) => {}
            doubt @ Some(Answer::CannotTell | Answer::Refused) => {
                return Some(Judgement::without_choice(severity, doubt));
            }
            answer => open = Some(Judgement::without_choice(severity, answer)),
        }
    }
    open
}

fn missing(view: &View) -> Judgement {
    let on = |place| view.claims().at(place).is_some_and(rates);
    let of_plug = view.marked(PLUG_PRINT, "rating");
    if on(ClaimPlace::Body) || on(ClaimPlace::Plug) || of_plug == Some(true) {
        return fits(Breach);
    }
    let answer = |place| view.answer(RATING, Target::Claim(place));
    let is_unread = |place: &ClaimPlace| view.claims().at(*place).is_some_and(|rating| !rating.unread.is_empty());
    if let Some(place) = [ClaimPlace::Body, ClaimPlace::Plug].into_iter().find(is_unread) {
        return Judgement::cannot_tell(Breach, Reason::PrintNotUnderstood { place });
    }
    let bears_none = |place| matches!(answer(place), Some(Answer::Nothing | Answer::Printed(_)));
    match (bears_none(ClaimPlace::Body), bears_none(ClaimPlace::Plug) || of_plug == Some(false)) {
        (true, true) => Judgement::breaks(Breach, Basis::Sight, Reason::NowhereStated),
        (true, false) => Judgement::without_choice(Breach, answer(ClaimPlace::Plug)),
        (false, _) => Judgement::without_choice(Breach, answer(ClaimPlace::Body)),
    }
}

fn impossible(view: &View) -> Judgement {
    let ratings = view.claims().ratings();
    let held = ratings.iter().filter_map(|(place, rating)| Some((*place, rating.power?, rating.watts_allowed()?)));
    let held: Vec<_> = held.collect();
    if let Some((place, watts, at_most)) = held.iter().find(|(_, watts, at_most)| watts.lowest() > *at_most) {
        let (watts, at_most) = (watts.amount(), at_most.amount());
        let reason = Reason::WattsAboveVoltsTimesAmperes { place: *place, watts, at_most };
        return Judgement::breaks(Breach, Basis::Print, reason);
    }
    match (left_open(view, Breach), held.is_empty()) {
        (Some(open), _) => open,
        (None, true) => Judgement::does_not_apply(Breach),
        (None, false) => fits(Breach),
    }
}

/// A breach where the place less to be believed says more.
fn weight(disagreement: &Disagreement) -> Severity {
    let says_too_much = disagreement.higher.0 < disagreement.lower.0 && disagreement.kind != QuantityKind::Potential;
    if says_too_much { Breach } else { BadSign }
}

/// Whether two values are a contradiction, and not two sides of the same thing.
fn is_contradiction(disagreement: &Disagreement) -> bool {
    match (disagreement.higher.1.to(), disagreement.lower.1.to()) {
        (Some(higher), Some(lower)) => !practice::are_one_supply(higher, lower),
        _ => disagreement.kind != QuantityKind::Current || disagreement.higher.0 != ClaimPlace::Plug,
    }
}

fn disagree(view: &View) -> Judgement {
    let mut found = view.claims().disagreements();
    found.retain(is_contradiction);
    if let Some(worst) = found.iter().max_by_key(|disagreement| weight(disagreement)) {
        let reason = Reason::ClaimsDisagree { higher: worst.higher, lower: worst.lower };
        return Judgement::breaks(weight(worst), Basis::Print, reason);
    }
    left_open(view, Breach).unwrap_or_else(|| fits(Breach))
}

/// The least current that a rating may stand for, from amperes or from watts, whichever claims more.
fn least_total(rating: &Rating) -> Option<ElectricCurrent> {
    let highest_volts = rating.voltage.as_ref().map_or_else(bs1363_1::rated_voltage, |(_, high)| high.highest());
    let by_watts = rating.power.as_ref().map(|power| power.lowest() / highest_volts);
    let by_amperes = rating.current.as_ref().map(Stated::lowest);
    by_watts.into_iter().chain(by_amperes).reduce(|a, b| if b > a { b } else { a })
}

fn above_plug(view: &View) -> Judgement {
    let plug = bs1363_1::largest_rating();
    let claims: Vec<_> =
        view.claims().ratings().iter().filter_map(|(place, rating)| Some((*place, least_total(rating)?))).collect();
    if let Some((place, _)) = claims.iter().find(|(_, least)| *least > plug) {
        let stated = view.claims().at(*place).and_then(|rating| total(rating, plug));
        let (claim, limit) = stated.unwrap_or((plug.amount(), plug.amount()));
        let reason = Reason::ClaimAgainst { place: *place, claim, limit };
        return Judgement::breaks(unstopped(view), Basis::Print, reason);
    }
    if let Some(open) = left_open(view, Danger) {
        return open;
    }
    match not_understood(view.claims()) {
        Some(place) => Judgement::cannot_tell(Danger, Reason::PrintNotUnderstood { place }),
        None if claims.is_empty() => Judgement::does_not_apply(Danger),
        None => fits(Danger),
    }
}

/// What is claimed, as it stands there, and the most of it that the plug carries: amperes where they are too many, else watts.
fn total(rating: &Rating, plug: ElectricCurrent) -> Option<(Amount, Amount)> {
    let by_amperes = rating.current.map(|current| current.value).filter(|current| *current > plug);
    by_amperes.map(|current| (current.amount(), plug.amount())).or_else(|| {
        let most_volts = rating.voltage.map_or_else(bs1363_1::rated_voltage, |(_, high)| high.value);
        rating.power.map(|power| (power.value.amount(), (most_volts * plug).amount()))
    })
}

/// The first place whose print says nothing that is understood: it may state any load.
fn not_understood(claims: &Claims) -> Option<ClaimPlace> {
    let says_nothing = |rating: &Rating| least_total(rating).is_none() && !rating.unread.is_empty();
    claims.ratings().iter().find(|(_, rating)| says_nothing(rating)).map(|(place, _)| *place)
}

/// A danger where no fuse stops the claimed current, or one too large.
fn unstopped(view: &View) -> Severity {
    let has_no_fuse = matches!(view.one(IN_THE_HOLDER), Some("empty" | "bridged" | "no-holder"));
    let is_above_sockets = view.one(FUSE_RATING) == Some("above-13");
    let is_danger =
        |judgement: Judgement| judgement.outcome == Conformity::Nonconforming && judgement.severity == Danger;
    let is_above_flex = is_danger(size::thin_for_fuse(view, view.flex()))
        || (on_leads(view) && is_danger(size::thin_for_rating(view, view.flex())));
    if has_no_fuse || is_above_sockets || is_above_flex { Danger } else { Breach }
}

fn length(view: &View) -> Judgement {
    let claimed = view.claims().stated(QuantityKind::Length);
    if claimed.is_empty() {
        return left_open(view, Breach).unwrap_or_else(|| Judgement::does_not_apply(Breach));
    }
    let Some(reading) = view.reading(FLEX_LENGTH, Target::Sample) else {
        return Judgement::without_choice(Breach, view.answer(FLEX_LENGTH, Target::Sample));
    };
    let Some(flex) = reading.measured::<Length>() else {
        return Judgement::cannot_tell(Breach, Reason::OutOfRange);
    };
    let held = claimed.iter().filter_map(|claim| {
        let limit = Limit::AtLeast(claim.to.to::<Length>()?);
        Some(against(Target::Claim(claim.place), &flex, &limit))
    });
    Judgement::by_readings(Breach, held.collect(), claimed.len())
}
