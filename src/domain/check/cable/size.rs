//! The stated cross-section against the fuse that protects it and the current it has to carry.

use super::copper::heat::usual_diameter;
use super::print::{stated_area, without_area};
use crate::domain::check::ruling::against;
use crate::domain::check::sockets::connector;
use crate::domain::check::{Check, Judge, Prospect, Ruling, always};
use crate::domain::decision::Limit;
use crate::domain::facts::{self, FLEX_LENGTH, FLEX_PRINT, FUSE_RATING};
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::finding::{Basis, ClaimPlace, Conformity, Judgement, Needed, Reason, Severity};
use crate::domain::marking::FlexPrint;
use crate::domain::physics::heating::{LoadedFlex, Steady, between};
use crate::domain::quantity::{Area, ElectricCurrent, Measurand};
use crate::domain::question::Target;
use crate::domain::sample::{Equipment, Kind, Place};
use crate::domain::standard::iec60228::{self, Coating};
use crate::domain::standard::{Clause, bs1362, bs1363_1, bs7671, bs7671_flex, en50525, iec60287, iec60799, practice};
use crate::domain::view::View;

/// **Finds** a flex that says itself that it is thinner than its rating asks for.
///
/// **Why it matters** a lead carries what is plugged in: the fuse lets 1.6 times its rating flow for half an hour and more, and a thin
/// flex under a carpet burns first.
///
/// **Source** BS 7671 Table 4F3A, BS 1362, IEC 60799; no flex under 0.5 mm² is for mains (usual practice).
///
/// **Decision** by print. On a lead the flex has to carry what the fuse and the product's own rating let through: behind 13 A, 1.25 mm²
/// keeps the rule, 1.0 mm² breaks it, 0.75 mm² is a danger. The rating table decides whether it breaks. Heat grades it: a danger
/// where 1.3 times the rise reaches 70 °C at that rating, lying straight, with the largest resistance of the size
/// (`physics::heating`), or under 0.5 mm². On a cord set the appliance sets the current, and up to 2 m a smaller
/// size will do.
pub const FLEX_THIN_FOR_RATING: &Check = &Check {
    code: "flex-thin-for-rating",
    place: Place::Cable,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(|view| thin_for_rating(view, view.flex())),
    asks: &[FLEX_PRINT, FUSE_RATING, connector::PATTERN, FLEX_LENGTH],
    against: &[
        bs7671::TABLE_4F3A,
        bs1362::CONVENTIONAL_CURRENTS,
        iec60799::LEAST_AREA,
        iec60287::FREE_AIR,
        bs7671_flex::TABLE_4C1,
        Clause::common_practice(),
    ],
    prospect: Prospect { minutes: 0.5, percent: 30 },
};

/// **Finds** a fuse larger than the flex behind it allows.
///
/// **Why it matters** the fuse is there for the flex: one too large lets it burn.
///
/// **Source** BS 1363-1:1995 Table 2 (read).
///
/// **Decision** by print. 0.5 mm² takes 3 A; 5 A only where some equipment's inrush needs it, so that 5 A is no more than a breach on
/// a lead and cannot be told on a cord set.
pub const FLEX_THIN_FOR_FUSE: &Check = &Check {
    code: "flex-thin-for-fuse",
    place: Place::Cable,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(|view| thin_for_fuse(view, view.flex())),
    asks: &[FLEX_PRINT, FUSE_RATING],
    against: &[bs1363_1::TABLE_2, Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 10 },
};

/// What the fuse in the plug may be: no less than, no more than.
struct FuseRange {
    at_least: ElectricCurrent,
    at_most: Option<ElectricCurrent>,
}

fn fuse(view: &View) -> Option<FuseRange> {
    let (none, largest) = (ElectricCurrent::from_base(0.0), bs1362::largest_rating());
    let (at_least, at_most) = match view.one(FUSE_RATING)? {
        "other-up-to-13" => (none, Some(largest)),
        "above-13" => (largest, None),
        rating => facts::in_amperes(rating).map_or((none, None), |fuse| (fuse, Some(fuse))),
    };
    Some(FuseRange { at_least, at_most })
}

/// A flex as its stated size allows it to be: the largest resistance of the next size of the table within, and the usual diameter.
fn loaded(area: Area) -> Option<LoadedFlex> {
    let size = iec60228::class5_size_within(area)?;
    let cores = 2.0 * iec60228::class5_maximum(size, Coating::Plain)?;
    Some(LoadedFlex { cores, diameter: usual_diameter(Some(size)).value })
}

/// How grave it is that a flex carries more than its rating: a danger where `load` may overheat it, the model's margin taken against it.
fn overload(area: Area, load: ElectricCurrent) -> Severity {
    let keeps_cool = |flex: LoadedFlex| match between(&flex, &flex, load, bs7671_flex::surroundings()).1 {
        Steady::At(conductor) => conductor < en50525::hottest_conductor(),
        Steady::Never => false,
    };
    if loaded(area).is_some_and(keeps_cool) { Breach } else { Danger }
}

/// The most that flows when the product draws `current`: the fuse may stop it before.
fn unstopped(view: &View, current: ElectricCurrent) -> ElectricCurrent {
    let by_fuse = fuse(view).and_then(|fuse| fuse.at_most).map(bs1362::non_fusing_current);
    by_fuse.filter(|by_fuse| *by_fuse < current).unwrap_or(current)
}

/// How a stated cross-section stands against the one that is needed.
struct Shortfall {
    place: ClaimPlace,
    stated: Area,
    needed: Area,
}

impl Shortfall {
    /// The break, with how warm such a flex gets at some currents.
    fn breaks(&self, severity: Severity, currents: &[ElectricCurrent]) -> Judgement {
        let (claim, limit) = (self.stated.amount(), self.needed.amount());
        let warmth =
            loaded(self.stated).map_or_else(Vec::new, |flex| currents.iter().map(|i| flex.warmth(*i)).collect());
        Judgement::breaks(severity, Basis::Print, Reason::FlexShort { place: self.place, claim, limit, warmth })
    }
}

/// Whether the stated cross-section carries the rating.
pub fn thin_for_rating(view: &View, print: Option<&FlexPrint>) -> Judgement {
    match view.kind() {
        Kind::ExtensionLead => on_a_lead(view, print),
        Kind::CordSet => {
            let current = view.claimed_current().or_else(|| connector::rating(view));
            on_a_cord_set(view, print, current)
        }
    }
}

fn on_a_lead(view: &View, print: Option<&FlexPrint>) -> Judgement {
    let Some((place, stated)) = stated_area(view, print) else {
        return without_area(view, Danger);
    };
    let short = |load: ElectricCurrent, currents: Vec<ElectricCurrent>| {
        // No cord of the table carries more than its thickest: a load above that is short of it, not free of it.
        let needed = bs7671::cord_area(load).unwrap_or_else(bs7671::thickest_cord);
        (needed > stated).then(|| (overload(stated, currents.first().copied().unwrap_or(load)), needed, currents))
    };
    let short_of_fuse = |rating| short(rating, vec![rating, bs1362::non_fusing_current(rating)]);
    let fuse = fuse(view);
    let by_fuse = fuse.as_ref().and_then(|fuse| short_of_fuse(fuse.at_least));
    let by_claim = view.claimed_current().and_then(|claimed| short(claimed, vec![unstopped(view, claimed)]));
    let worst = by_claim.into_iter().chain(by_fuse).max_by_key(|(severity, ..)| *severity);
    match (worst, fuse) {
        _ if stated < practice::thinnest_flex() => under_mains_size(place, stated),
        (Some((severity, needed, currents)), _) => Shortfall { place, stated, needed }.breaks(severity, &currents),
        (None, Some(FuseRange { at_most: Some(rating), .. })) if short_of_fuse(rating).is_none() => {
            Judgement::conforms(Danger, Basis::Print, Reason::FitsTheClaim)
        }
        (None, Some(_)) => Judgement::cannot_tell(Danger, Reason::Needs(Needed::FuseRating)),
        (None, None) => Judgement::without_choice(Danger, view.answer(FUSE_RATING, Target::Sample)),
    }
}

/// Whether a cord set's stated cross-section is the size that a current needs, which hangs on the length.
pub fn on_a_cord_set(view: &View, print: Option<&FlexPrint>, current: Option<ElectricCurrent>) -> Judgement {
    let Some((place, stated)) = stated_area(view, print) else {
        return without_area(view, Danger);
    };
    if stated < practice::thinnest_flex() {
        return under_mains_size(place, stated);
    }
    let Some((current, least)) = current.and_then(|current| Some((current, iec60799::least_area(current)?))) else {
        return without_current(view);
    };
    let unstopped = unstopped(view, current);
    let severity = overload(stated, unstopped);
    let keeps = || Judgement::conforms(Danger, Basis::Print, Reason::FitsTheClaim);
    let short_of = |needed| Shortfall { place, stated, needed }.breaks(severity, &[unstopped]);
    if stated >= least.any_length {
        return keeps();
    }
    if stated < least.short {
        return short_of(least.short);
    }
    let Some(length) = view.flex_length() else {
        return Judgement::cannot_tell(severity, Reason::Needs(Needed::FlexLength));
    };
    let limit = Limit::AtMost(iec60799::short_set());
    if view.reading(FLEX_LENGTH, Target::Sample).is_none() {
        // A claimed length is a nominal, like the 2 m it is held against: it has no doubt of its own.
        return if limit.holds(length.value) { keeps() } else { short_of(least.any_length) };
    }
    let measured = against(Target::Sample, &length, &limit);
    match measured.outcome {
        Conformity::Conforms => keeps(),
        Conformity::Nonconforming => short_of(least.any_length).with_evidence(vec![measured]),
        Conformity::Inconclusive | Conformity::NotApplicable | Conformity::NotExamined => {
            Judgement::cannot_tell(severity, Reason::Measured).with_evidence(vec![measured])
        }
    }
}

fn under_mains_size(place: ClaimPlace, stated: Area) -> Judgement {
    Shortfall { place, stated, needed: practice::thinnest_flex() }.breaks(Danger, &[])
}

/// What is left to say where neither the print nor the connector tells the current.
fn without_current(view: &View) -> Judgement {
    match view.one(connector::PATTERN) {
        Some(_) => Judgement::cannot_tell(Danger, Reason::Needs(Needed::ClaimedCurrent)),
        None => Judgement::without_choice(Danger, view.answer(connector::PATTERN, Target::Sample)),
    }
}

/// Whether the fuse is one that the stated cross-section allows.
pub fn thin_for_fuse(view: &View, print: Option<&FlexPrint>) -> Judgement {
    let Some((place, stated)) = stated_area(view, print) else {
        return without_area(view, Danger);
    };
    let Some(largest) = bs1363_1::largest_fuse(stated) else {
        return under_mains_size(place, stated);
    };
    let Some(fuse) = fuse(view) else {
        return Judgement::without_choice(Danger, view.answer(FUSE_RATING, Target::Sample));
    };
    let is_above_13 = fuse.at_most.is_none() && fuse.at_least > ElectricCurrent::from_base(0.0);
    let reason = fuse_answered(view);
    let ruling = if fuse.at_least > largest || is_above_13 {
        let is_inrush_fuse = fuse.at_most == Some(bs1363_1::inrush_fuse());
        match (is_inrush_fuse, view.kind()) {
            (false, _) => Ruling::Breaks(Danger),
            (true, Kind::ExtensionLead) => Ruling::Breaks(Breach),
            (true, Kind::CordSet) => Ruling::CannotTell,
        }
    } else if fuse.at_most.is_some_and(|rating| rating <= largest) {
        Ruling::FitsTheClaim
    } else {
        Ruling::CannotTell
    };
    ruling.judgement(view, Danger, reason)
}

fn fuse_answered(view: &View) -> Reason {
    view.one(FUSE_RATING).map_or(Reason::NotAsked, |answer| Reason::Answered {
        question: FUSE_RATING.id,
        target: Target::Sample,
        answer,
    })
}
