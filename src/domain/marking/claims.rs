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

/// Two places that state different things.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Disagreement {
    /// The place that states the higher value, and the value.
    pub higher: (ClaimPlace, Amount),
    /// The place that states the lower value, and the value.
    pub lower: (ClaimPlace, Amount),
}

impl Disagreement {
    /// What the places disagree about.
    pub const fn kind(&self) -> QuantityKind {
        self.higher.1.kind()
    }
}

/// Every claim by quantity and place.
#[derive(Debug, Clone, PartialEq)]
pub struct ClaimsTable {
    /// The places that state anything, weakest evidence first: the columns.
    pub places: Vec<ClaimPlace>,
    /// One row for each quantity that any place states.
    pub rows: Vec<ClaimsRow>,
}

/// The claims of one quantity.
#[derive(Debug, Clone, PartialEq)]
pub struct ClaimsRow {
    /// The quantity.
    pub kind: QuantityKind,
    /// What each place states, lowest and highest (equal where one value is printed), in the order of the table's places.
    pub cells: Vec<Option<(Amount, Amount)>>,
}

/// What one place states of one quantity.
struct Claim {
    stated: (Amount, Amount),
    /// The smallest and largest base value the print may stand for.
    declared: (f64, f64),
}

impl Claim {
    fn new<Q: Measurand>(lowest: &Stated<Q>, highest: &Stated<Q>) -> Self {
        Self {
            stated: (lowest.amount(), highest.amount()),
            declared: (lowest.lowest().base(), highest.highest().base()),
        }
    }

    fn of(rating: &Rating, kind: QuantityKind) -> Option<Self> {
        match kind {
            QuantityKind::Potential => rating.voltage.map(|(lowest, highest)| Self::new(&lowest, &highest)),
            QuantityKind::Current => rating.current.map(|one| Self::new(&one, &one)),
            QuantityKind::Power => rating.power.map(|one| Self::new(&one, &one)),
            QuantityKind::Length => rating.length.map(|one| Self::new(&one, &one)),
            QuantityKind::Area => rating.area.map(|one| Self::new(&one, &one)),
            QuantityKind::Mass
            | QuantityKind::Resistance
            | QuantityKind::ResistancePerLength
            | QuantityKind::Temperature => None,
        }
    }
}

impl Claims {
    /// Reads what each place states; the flex's own print counts as one more place.
    pub fn new<'a>(printed: impl Iterator<Item = (ClaimPlace, &'a str)>, flex: Option<&FlexPrint>) -> Self {
        let mut ratings: Vec<_> = printed.map(|(place, print)| (place, Rating::parse(print))).collect();
        if let Some(area) = flex.and_then(FlexPrint::stated_area) {
            let own = Rating { area: Some(area), cores: flex.and_then(|flex| flex.cores), ..Rating::default() };
            match ratings.iter_mut().find(|(place, _)| *place == ClaimPlace::Flex) {
                Some((_, rating)) => {
                    *rating = Rating { area: own.area, cores: own.cores.or(rating.cores), ..rating.clone() }
                }
                None => ratings.push((ClaimPlace::Flex, own)),
            }
        }
        ratings.sort_by_key(|(place, _)| *place);
        Self { ratings }
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

    /// Every two places whose statements of one quantity cannot both hold, however coarsely their digits are read.
    pub fn disagreements(&self) -> Vec<Disagreement> {
        COMPARED.into_iter().flat_map(|kind| self.disagreements_about(kind)).collect()
    }

    fn disagreements_about(&self, kind: QuantityKind) -> Vec<Disagreement> {
        let claims: Vec<_> =
            self.ratings.iter().filter_map(|(place, rating)| Some((*place, Claim::of(rating, kind)?))).collect();
        let mut found = Vec::new();
        for (at, (place, claim)) in claims.iter().enumerate() {
            for (other_place, other) in claims.iter().skip(at + 1) {
                if claim.declared.0 > other.declared.1 {
                    found
                        .push(Disagreement { higher: (*place, claim.stated.0), lower: (*other_place, other.stated.1) });
                } else if other.declared.0 > claim.declared.1 {
                    found
                        .push(Disagreement { higher: (*other_place, other.stated.0), lower: (*place, claim.stated.1) });
                }
            }
        }
        found
    }

    /// What each place states of each quantity.
    pub fn table(&self) -> ClaimsTable {
        let cell = |rating: &Rating, kind| Claim::of(rating, kind).map(|claim| claim.stated);
        let rows = COMPARED
            .into_iter()
            .map(|kind| ClaimsRow { kind, cells: self.ratings.iter().map(|(_, rating)| cell(rating, kind)).collect() });
        ClaimsTable {
            places: self.ratings.iter().map(|(place, _)| *place).collect(),
            rows: rows.filter(|row| row.cells.iter().any(Option::is_some)).collect(),
        }
    }
}
