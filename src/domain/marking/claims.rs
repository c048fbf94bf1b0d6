//! What every place claims, side by side.

use super::{FlexPrint, Rating, Stated};
use crate::domain::quantity::{Amount, Area, ElectricCurrent, Length, Measurand, QuantityKind};
use crate::domain::question::ClaimPlace;
use crate::domain::uncertainty::Measured;

/// The quantities that are compared from place to place, in the order of a table.
const COMPARED: [QuantityKind; 5] =
    [QuantityKind::Potential, QuantityKind::Current, QuantityKind::Power, QuantityKind::Length, QuantityKind::Area];

/// The claims of all places.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Claims {
    ratings: Vec<(ClaimPlace, Rating)>,
}

/// What one place states of one quantity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Claimed {
    /// Where it stands.
    pub place: ClaimPlace,
    /// The value as printed; of a range, the lowest.
    pub from: Amount,
    /// The highest of a range; else the same.
    pub to: Amount,
    /// The smallest base value that the print may stand for.
    lowest: f64,
    /// The largest base value that the print may stand for.
    highest: f64,
}

/// Two places that cannot both be right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Disagreement {
    /// The quantity they disagree on.
    pub kind: QuantityKind,
    /// The place that states the higher value, and the value.
    pub higher: (ClaimPlace, Amount),
    /// The place that states the lower value, and the value.
    pub lower: (ClaimPlace, Amount),
}

impl Claimed {
    fn new<Q: Measurand>(place: ClaimPlace, from: &Stated<Q>, to: &Stated<Q>) -> Self {
        let (lowest, highest) = (from.lowest().base(), to.highest().base());
        Self { place, from: from.amount(), to: to.amount(), lowest, highest }
    }

    fn of(place: ClaimPlace, rating: &Rating, kind: QuantityKind) -> Option<Self> {
        match kind {
            QuantityKind::Potential => rating.voltage.map(|(from, to)| Self::new(place, &from, &to)),
            QuantityKind::Current => rating.current.map(|one| Self::new(place, &one, &one)),
            QuantityKind::Power => rating.power.map(|one| Self::new(place, &one, &one)),
            QuantityKind::Length => rating.length.map(|one| Self::new(place, &one, &one)),
            QuantityKind::Area => rating.area.map(|one| Self::new(place, &one, &one)),
            QuantityKind::Mass
            | QuantityKind::Resistance
            | QuantityKind::ResistancePerLength
            | QuantityKind::Temperature => None,
        }
    }

    /// What makes it impossible that both are right, if anything does.
    fn against(&self, other: &Self) -> Option<Disagreement> {
        let (higher, lower) = if self.lowest > other.highest {
            (self, other)
        } else if other.lowest > self.highest {
            (other, self)
        } else {
            return None;
        };
        let kind = higher.from.kind();
        Some(Disagreement { kind, higher: (higher.place, higher.from), lower: (lower.place, lower.to) })
    }
}

impl Claims {
    /// Reads what each place states; the flex's own print counts as one more place.
    pub fn new<'a>(printed: impl Iterator<Item = (ClaimPlace, &'a str)>, flex: Option<&FlexPrint>) -> Self {
        let mut ratings: Vec<_> = printed.map(|(place, print)| (place, Rating::parse(print))).collect();
        if let Some(area) = flex.and_then(FlexPrint::stated_area) {
            let cores = flex.and_then(|flex| flex.cores.map(|count| (count, flex.has_earth)));
            let own = Rating { area: Some(area), cores, ..Rating::default() };
            match ratings.iter_mut().find(|(place, _)| *place == ClaimPlace::Flex) {
                Some((_, rating)) => {
                    *rating = Rating { area: own.area, cores: own.cores.or(rating.cores), ..rating.clone() }
                }
                None => ratings.push((ClaimPlace::Flex, own)),
            }
        }
        let of_place = |place| ratings.iter().filter(move |(of, _)| *of == place).cloned();
        Self { ratings: ClaimPlace::ALL.into_iter().flat_map(of_place).collect() }
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
        self.ratings.iter().rev().find_map(|(_, rating)| rating.area.map(|area| area.value))
    }

    /// The highest current claimed for the product as a whole, from amperes or from watts over volts.
    ///
    /// What body, package and seller's page state goes first: a plug bears the rating of its pattern, whatever hangs on it. A flex states
    /// what it could carry, not what the product takes.
    pub fn total_current(&self) -> Option<ElectricCurrent> {
        let current = |rating: &Rating| {
            rating.current.map(|current| current.value).or_else(|| {
                let (lowest, _) = rating.voltage?;
                Some(rating.power?.value / lowest.value)
            })
        };
        let highest = |places: &[ClaimPlace]| {
            let currents =
                self.ratings.iter().filter(|(place, _)| places.contains(place)).filter_map(|(_, r)| current(r));
            currents.reduce(|a, b| if b > a { b } else { a })
        };
        highest(&[ClaimPlace::Listing, ClaimPlace::Package, ClaimPlace::Body]).or_else(|| highest(&[ClaimPlace::Plug]))
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
        self.ratings.iter().filter_map(|(place, rating)| Claimed::of(*place, rating, kind)).collect()
    }

    /// The quantities that any place states, in the order of a rating plate.
    pub fn quantities(&self) -> impl Iterator<Item = QuantityKind> + '_ {
        COMPARED.into_iter().filter(|kind| !self.stated(*kind).is_empty())
    }

    /// Every two places whose statements of one quantity cannot both hold, however coarsely their digits are read.
    pub fn disagreements(&self) -> Vec<Disagreement> {
        let of_kind = |kind| {
            let stated = self.stated(kind);
            let others = |at: usize| stated.iter().skip(at + 1);
            let found =
                stated.iter().enumerate().flat_map(|(at, one)| others(at).filter_map(move |other| one.against(other)));
            found.collect::<Vec<_>>()
        };
        self.quantities().flat_map(of_kind).collect()
    }
}
