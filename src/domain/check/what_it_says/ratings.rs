//! What is stated of volts, amperes, watts and metres, held against itself, against the plug and against the tape.

use crate::domain::check::cable::size;
use crate::domain::check::plug::fuse::{IN_THE_HOLDER, may_be_there};
use crate::domain::check::plug::print::PLUG_PRINT;
use crate::domain::check::sockets::body::TOTAL_RATING;
use crate::domain::check::{Check, Judge, Prospect, always, ruling};
use crate::domain::decision::Limit;
use crate::domain::examination::Answer;
use crate::domain::facts::{FLEX_LENGTH, FUSE_RATING, RATING, has_uk_plug};
use crate::domain::finding::Severity::{BadSign, Breach, Danger};
use crate::domain::finding::{Basis, Conformity, Judgement, Reason, Severity};
use crate::domain::marking::{Disagreement, Rating};
use crate::domain::quantity::{Amount, Length, Measurand, Power, QuantityKind, Unit, volts};
use crate::domain::question::{ClaimPlace, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_1, law_gb, marks};
use crate::domain::view::View;

/// **Finds** a product that itself states neither volts nor amperes nor watts.
///
/// **Why it matters** nobody can know how much may be plugged in.
///
/// **Source** IEC 60884-1, 8.1 (memory-high).
///
/// **Decision** body and plug are looked at; package and listing do not count.
pub const RATING_MISSING: &Check = &rated(
    "rating-missing",
    Equipment::Eyes,
    Breach,
    missing,
    &[RATING, PLUG_PRINT, TOTAL_RATING],
    &[marks::RATING_PLATE],
);

/// **Finds** watts above what the volts and amperes printed with them allow.
///
/// **Why it matters** whoever believes the watts overloads the rest.
///
/// **Source** common practice: 250 V and 10 A make 2500 W at the most.
///
/// **Decision** by interval: every digit is read as coarsely as it may be, at the label's own highest volts.
pub const RATING_IMPOSSIBLE: &Check =
    &rated("rating-impossible", Equipment::Eyes, Breach, impossible, &[RATING], &[marks::POWER_FROM_RATING]);

/// **Finds** two places that state different things.
///
/// **Why it matters** one of them is not true.
///
/// **Source** Digital Markets, Competition and Consumers Act 2024 (memory-high).
///
/// **Decision** pairwise, with half a step of the last digit granted to each. Against the rules where the weaker evidence promises
/// more than the sample bears, else a bad sign. A 13 A plug on a lead for less is no contradiction, nor is 250 V beside 230 V.
///
/// **Example**
/// ```
/// use plugwary::domain::check::by_code;
/// use plugwary::domain::check::what_it_says::ratings::RATINGS_DISAGREE;
/// assert_eq!(by_code("ratings-disagree").map(|check| check.needs), Some(RATINGS_DISAGREE.needs));
/// ```
pub const RATINGS_DISAGREE: &Check =
    &rated("ratings-disagree", Equipment::Eyes, Breach, disagree, &[RATING], &[law_gb::TRUE_CLAIMS]);

/// **Finds** a whole load above what a 13 A plug carries.
///
/// **Why it matters** plug and flex overheat, and only the fuse stands between.
///
/// **Source** BS 1363-1 and BS 1362: 13 A (read).
///
/// **Decision** the highest total that any place claims; watts at the label's highest volts, else at the plug's 250 V. A danger where
/// there is no fuse, or one above what flex or sockets allow; else against the rules.
pub const RATING_ABOVE_PLUG: &Check = &Check {
    applies: has_uk_plug,
    ..rated(
        "rating-above-plug",
        Equipment::Eyes,
        Danger,
        above_plug,
        &[RATING, IN_THE_HOLDER, FUSE_RATING],
        &[bs1363_1::TABLE_2],
    )
};

/// **Finds** a flex shorter than claimed.
///
/// **Why it matters** the buyer pays for length that is not there, and the resistances are judged by it.
///
/// **Source** Digital Markets, Competition and Consumers Act 2024 (memory-high).
///
/// **Decision** the flex alone, without plug and body, against the shortest claim, by conformance probability.
pub const LENGTH_OVERSTATED: &Check = &rated(
    "length-overstated",
    Equipment::HandTools,
    Breach,
    length_overstated,
    &[FLEX_LENGTH, RATING],
    &[law_gb::TRUE_CLAIMS],
);

const fn rated(
    code: &'static str,
    needs: Equipment,
    severity: Severity,
    judge: fn(&View) -> Judgement,
    asks: &'static [&'static Question],
    against: &'static [Clause],
) -> Check {
    Check {
        code,
        place: Place::WhatItSays,
        needs,
        severity,
        applies: always,
        judge: Judge::Reckoned(judge),
        asks,
        against,
        prospect: Prospect { minutes: 1.0, percent: 20 },
    }
}

fn missing(view: &View) -> Judgement {
    let stated = |place| view.claims().at(place).is_some_and(states_something);
    let on_body = stated(ClaimPlace::Body) || view.one(TOTAL_RATING) == Some("marked");
    let on_plug = stated(ClaimPlace::Plug) || view.marked(PLUG_PRINT, "rating") == Some(true);
    if on_body || on_plug {
        return Judgement::conforms(Breach, Basis::Print, Reason::FitsTheClaim);
    }
    let body_bears_none = bears_nothing(view, ClaimPlace::Body) || view.one(TOTAL_RATING) == Some("not-marked");
    let plug_bears_none = bears_nothing(view, ClaimPlace::Plug) || view.marked(PLUG_PRINT, "rating") == Some(false);
    if body_bears_none && plug_bears_none {
        return Judgement::breaks(Breach, Basis::Sight, Reason::NowhereStated);
    }
    let open = if body_bears_none { ClaimPlace::Plug } else { ClaimPlace::Body };
    without_rating(view, open, Breach)
}

fn impossible(view: &View) -> Judgement {
    let claims = view.claims().ratings();
    let compared = claims.iter().filter_map(|(place, rating)| Some((*place, rating.power?, rating.watts_allowed()?)));
    let mut compared = compared.peekable();
    if compared.peek().is_none() {
        return without_claims(view, Breach);
    }
    match compared.find(|(_, stated, allowed)| stated.lowest() > *allowed) {
        Some((place, stated, allowed)) => {
            let (watts, at_most) = (stated.amount(), allowed.amount());
            let reason = Reason::WattsAboveVoltsTimesAmperes { place, watts, at_most };
            Judgement::breaks(Breach, Basis::Print, reason)
        }
        None => Judgement::conforms(Breach, Basis::Print, Reason::FitsTheClaim),
    }
}

fn disagree(view: &View) -> Judgement {
    let claims = view.claims();
    let gravest = claims.disagreements().into_iter().filter(is_contradiction).max_by_key(matters);
    if let Some(found) = gravest {
        let reason = Reason::ClaimsDisagree { higher: found.higher, lower: found.lower };
        return Judgement::breaks(matters(&found), Basis::Print, reason);
    }
    if claims.quantities().any(|kind| claims.stated(kind).len() > 1) {
        return Judgement::conforms(Breach, Basis::Print, Reason::FitsTheClaim);
    }
    without_claims(view, Breach)
}

/// How grave a contradiction is: the weaker evidence promising more than the sample bears is against the rules.
pub fn matters(found: &Disagreement) -> Severity {
    if found.higher.0 < found.lower.0 { Breach } else { BadSign }
}

/// Whether two stated values really contradict each other.
fn is_contradiction(found: &Disagreement) -> bool {
    match found.kind {
        // The voltage that an accessory bears stands beside that of the supply; 120 V against 240 V is another matter.
        QuantityKind::Potential => ratio(found.higher.1, found.lower.1) > 1.2,
        QuantityKind::Current => found.higher.0 != ClaimPlace::Plug,
        QuantityKind::Area
        | QuantityKind::Length
        | QuantityKind::Mass
        | QuantityKind::Power
        | QuantityKind::Resistance
        | QuantityKind::ResistancePerLength
        | QuantityKind::Temperature => true,
    }
}

fn ratio(higher: Amount, lower: Amount) -> f64 {
    let volts = |amount: Amount| amount.in_unit(Unit::Volt).unwrap_or_default();
    volts(higher) / volts(lower)
}

fn above_plug(view: &View) -> Judgement {
    let claims = view.claims().ratings();
    if let Some(reason) = claims.iter().find_map(|(place, rating)| above_13(*place, rating)) {
        return Judgement::breaks(load_matters(view), Basis::Print, reason);
    }
    let looked_at_body = bears_nothing(view, ClaimPlace::Body)
        || view.one(TOTAL_RATING) == Some("not-marked")
        || view.claims().at(ClaimPlace::Body).is_some_and(states_load);
    if !looked_at_body {
        return without_rating(view, ClaimPlace::Body, Danger);
    }
    let reason =
        if claims.iter().any(|(_, rating)| states_load(rating)) { Reason::FitsTheClaim } else { Reason::NowhereStated };
    Judgement::conforms(Danger, Basis::Print, reason)
}

/// A claim of more than 13 A, in amperes or in watts.
fn above_13(place: ClaimPlace, rating: &Rating) -> Option<Reason> {
    let largest = bs1363_1::largest_rating();
    let by_amperes =
        rating.current.filter(|stated| stated.value > largest).map(|stated| (stated.amount(), largest.amount()));
    let most: Power = rating.voltage.map_or_else(|| volts(250.0), |(_, highest)| highest.highest()) * largest;
    let by_watts = rating.power.filter(|stated| stated.lowest() > most).map(|stated| (stated.amount(), most.amount()));
    let (claim, limit) = by_amperes.or(by_watts)?;
    Some(Reason::ClaimAgainst { place, claim, limit })
}

fn load_matters(view: &View) -> Severity {
    let above_sockets = view.one(FUSE_RATING) == Some("above-13");
    let by_fuse = size::thin_for_fuse(view, view.flex());
    let above_flex = by_fuse.outcome == Conformity::Nonconforming && by_fuse.severity == Danger;
    if !may_be_there(view) || above_sockets || above_flex { Danger } else { Breach }
}

fn length_overstated(view: &View) -> Judgement {
    let Some(claim) = view.claims().length() else {
        return without_claims(view, Breach);
    };
    let Some(length) = view.reading(FLEX_LENGTH, Target::Sample).and_then(Reading::measured::<Length>) else {
        return Judgement::without_choice(Breach, view.answer(FLEX_LENGTH, Target::Sample));
    };
    // A claim is a promise and no reading: it is held to its printed value.
    let evidence = ruling::against(Target::Sample, &length, &Limit::AtLeast(claim.value));
    Judgement::by_readings(Breach, vec![evidence], 1)
}

fn states_load(rating: &Rating) -> bool {
    rating.current.is_some() || rating.power.is_some()
}

fn states_something(rating: &Rating) -> bool {
    states_load(rating) || rating.voltage.is_some()
}

/// Whether somebody looked and found no print at all.
fn bears_nothing(view: &View, place: ClaimPlace) -> bool {
    view.answer(RATING, Target::Claim(place)) == Some(&Answer::Nothing)
}

/// What to say where a place's rating is not known.
fn without_rating(view: &View, place: ClaimPlace, gravest: Severity) -> Judgement {
    match view.answer(RATING, Target::Claim(place)) {
        Some(Answer::Printed(_)) => Judgement::cannot_tell(gravest, Reason::PrintNotUnderstood { place }),
        answer => Judgement::without_choice(gravest, answer),
    }
}

/// What to say where too little is claimed to compare: nothing, once every place was looked at.
fn without_claims(view: &View, gravest: Severity) -> Judgement {
    let answers = ClaimPlace::ALL.map(|place| view.answer(RATING, Target::Claim(place)));
    let open = answers.into_iter().filter(|answer| !matches!(answer, Some(Answer::Printed(_) | Answer::Nothing)));
    let open: Vec<_> = open.map(|answer| Judgement::without_choice(gravest, answer)).collect();
    if open.is_empty() { Judgement::does_not_apply(gravest) } else { Judgement::worst(open, gravest) }
}
