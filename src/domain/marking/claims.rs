//! What every place claims, side by side, and where two of them cannot both be true.

use super::{FlexPrint, Rating, Stated};
use crate::domain::quantity::{
    Amount, Area, ElectricCurrent, ElectricPotential, Length, Measurand, Power, QuantityKind,
};
use crate::domain::question::ClaimPlace;
use crate::domain::uncertainty::Measured;

/// The claims of all places.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Claims {
    ratings: Vec<(ClaimPlace, Rating)>,
    flex_area: Option<Area>,
}

/// One stated value as the interval that its digits allow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Claimed {
    /// Where it stands.
    pub place: ClaimPlace,
    /// The value as printed; of a range, the lowest.
    pub from: Amount,
    /// The highest of a range; else the same.
    pub to: Amount,
    low: f64,
    high: f64,
}

/// Two places that cannot both be right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Disagreement {
    /// The quantity they disagree on.
    pub kind: QuantityKind,
    /// The place that states more.
    pub higher: (ClaimPlace, Amount),
    /// The place that states less.
    pub lower: (ClaimPlace, Amount),
}

impl Claims {
    /// Reads what each place states; the flex's own print counts as one more place.
    pub fn new<'a>(printed: impl Iterator<Item = (ClaimPlace, &'a str)>, flex: Option<&FlexPrint>) -> Self {
        Self {
            ratings: printed.map(|(place, print)| (place, Rating::parse(print))).collect(),
            flex_area: flex.and_then(|flex| flex.area),
        }
    }

    /// Each place that states anything, weakest evidence first.
    pub fn ratings(&self) -> &[(ClaimPlace, Rating)] {
        &self.ratings
    }

    /// What one place states.
    pub fn at(&self, place: ClaimPlace) -> Option<&Rating> {
        self.ratings.iter().find(|(at, _)| *at == place).map(|(_, rating)| rating)
    }

    /// The claimed cross-section: the flex's own print first, then the place nearest to the flex.
    pub fn area(&self) -> Option<Area> {
        self.flex_area.or_else(|| self.ratings.iter().rev().find_map(|(_, r)| r.area.map(|a| a.value)))
    }

    /// The highest current claimed for the whole product, from amperes or from watts over the lowest volts.
    pub fn total_current(&self) -> Option<ElectricCurrent> {
        let current = |rating: &Rating| {
            rating.current.map(|c| c.value).or_else(|| {
                let (low, _) = rating.voltage?;
                Some(rating.power?.value / low.value)
            })
        };
        self.ratings.iter().filter_map(|(_, rating)| current(rating)).reduce(|a, b| if b > a { b } else { a })
    }

    /// The claimed length of the flex: the shortest of the claims, known to half a step of its last digit.
    pub fn length(&self) -> Option<Measured<Length>> {
        self.ratings
            .iter()
            .filter_map(|(_, rating)| rating.length)
            .reduce(|a, b| if b.value < a.value { b } else { a })
            .map(|stated| Measured::rectangular(stated.value, stated.step / 2.0))
    }

    /// Everything stated of one quantity, place by place.
    pub fn stated(&self, kind: QuantityKind) -> Vec<Claimed> {
        let of_flex = self.flex_area.filter(|_| kind == QuantityKind::Area).map(|area| Claimed {
            place: ClaimPlace::Flex,
            from: area.amount(),
            to: area.amount(),
            low: area.base(),
            high: area.base(),
        });
        self.ratings.iter().filter_map(|(place, rating)| claimed(*place, rating, kind)).chain(of_flex).collect()
    }

    /// The quantities that any place states, in the order of a rating plate.
    pub fn quantities(&self) -> impl Iterator<Item = QuantityKind> + '_ {
        [QuantityKind::Potential, QuantityKind::Current, QuantityKind::Power, QuantityKind::Length, QuantityKind::Area]
            .into_iter()
            .filter(|kind| !self.stated(*kind).is_empty())
    }

    /// Every two places whose values of one quantity cannot both be true, even with half a step of the last digit granted to each.
    pub fn disagreements(&self) -> Vec<Disagreement> {
        let mut found = Vec::new();
        for kind in self.quantities() {
            let stated = self.stated(kind);
            for (n, one) in stated.iter().enumerate() {
                for other in stated.iter().skip(n + 1) {
                    if one.low > other.high {
                        found.push(disagreement(kind, one, other));
                    } else if other.low > one.high {
                        found.push(disagreement(kind, other, one));
                    }
                }
            }
        }
        found
    }
}

fn disagreement(kind: QuantityKind, higher: &Claimed, lower: &Claimed) -> Disagreement {
    Disagreement { kind, higher: (higher.place, higher.from), lower: (lower.place, lower.to) }
}

fn claimed(place: ClaimPlace, rating: &Rating, kind: QuantityKind) -> Option<Claimed> {
    match kind {
        QuantityKind::Potential => rating.voltage.map(|(low, high)| range::<ElectricPotential>(place, &low, &high)),
        QuantityKind::Current => rating.current.map(|c| range::<ElectricCurrent>(place, &c, &c)),
        QuantityKind::Power => rating.power.map(|p| range::<Power>(place, &p, &p)),
        QuantityKind::Length => rating.length.map(|l| range::<Length>(place, &l, &l)),
        QuantityKind::Area => rating.area.map(|a| range::<Area>(place, &a, &a)),
        QuantityKind::Mass
        | QuantityKind::Resistance
        | QuantityKind::ResistancePerLength
        | QuantityKind::Temperature => None,
    }
}

fn range<Q: Measurand>(place: ClaimPlace, low: &Stated<Q>, high: &Stated<Q>) -> Claimed {
    let half = |stated: &Stated<Q>| stated.step.base() / 2.0;
    Claimed {
        place,
        from: low.amount(),
        to: high.amount(),
        low: low.value.base() - half(low),
        high: high.value.base() + half(high),
    }
}
