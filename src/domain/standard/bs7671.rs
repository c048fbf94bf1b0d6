//! BS 7671:2018+A2, requirements for electrical installations: what a flexible cord carries.
//!
//! Read in secondary copies; the standard itself was not open on the desk.

use super::{Clause, Provenance};
use crate::domain::quantity::{Area, ElectricCurrent, amperes, square_millimetres};

/// Table 4F3A: current-carrying capacity of flexible cords, single-phase, 30 °C ambient, 60 °C conductor.
pub const TABLE_4F3A: Clause = Clause::new("BS 7671", "2018+A2", "Table 4F3A", Provenance::Read);

/// Rows of Table 4F3A in printed order: mm², A.
const CORD_RATINGS: [(f64, f64); 7] =
    [(0.5, 3.0), (0.75, 6.0), (1.0, 10.0), (1.25, 13.0), (1.5, 16.0), (2.5, 25.0), (4.0, 32.0)];

/// What a cord may carry all the time: the row of the nearest size not above `area`; `None` under 0.5 mm².
pub fn cord_rating(area: Area) -> Option<ElectricCurrent> {
    CORD_RATINGS.into_iter().rev().find(|&(row, _)| area >= square_millimetres(row)).map(|(_, rating)| amperes(rating))
}

/// Every size of Table 4F3A, the thinnest first.
pub fn cord_sizes() -> impl Iterator<Item = Area> {
    CORD_RATINGS.into_iter().map(|(area, _)| square_millimetres(area))
}

/// The last row of Table 4F3A.
pub fn thickest_cord() -> Area {
    square_millimetres(4.0)
}

/// The smallest cord that may carry `current` all the time; `None` above 32 A.
pub fn cord_area(current: ElectricCurrent) -> Option<Area> {
    CORD_RATINGS.into_iter().find(|&(_, row)| current <= amperes(row)).map(|(area, _)| square_millimetres(area))
}
