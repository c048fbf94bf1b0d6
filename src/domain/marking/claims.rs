//! What every place claims, side by side.

use super::{FlexPrint, Rating};
use crate::domain::quantity::{Area, ElectricCurrent, Length};
use crate::domain::question::ClaimPlace;
use crate::domain::uncertainty::Measured;

/// The claims of all places.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Claims {
    ratings: Vec<(ClaimPlace, Rating)>,
    flex_area: Option<Area>,
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

    /// The claimed cross-section: the flex's own print first, then the place nearest to the flex.
    pub fn area(&self) -> Option<Area> {
        self.flex_area.or_else(|| self.ratings.iter().rev().find_map(|(_, r)| r.area.map(|a| a.value)))
    }

    /// The highest current claimed for the whole product, from amperes or from watts over volts.
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
}
