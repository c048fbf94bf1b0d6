//! BS 1363-1:1995+A4 and 2016+A1, 13 A plugs.
//!
//! Read in secondary copies; the standard itself was not open on the desk. The 2023 edition was not compared.

use super::{Clause, Provenance};
use crate::domain::quantity::{Area, ElectricCurrent, amperes, square_millimetres};

/// A plug has a fuse link to BS 1362 in its line pole.
pub const FUSE: Clause = Clause::new("BS 1363-1", "1995/2016", "", Provenance::Read);

/// Table 2: smallest cross-section, plug rating.
pub const TABLE_2: Clause = Clause::new("BS 1363-1", "1995", "Table 2", Provenance::Read);

/// The smallest cross-section that Table 2 allows for a current; `None` above 13 A.
///
/// Rows: 0.5 mm² 3 A, 0.75 mm² 6 A, 1.0 mm² 10 A, 1.25 mm² 13 A (read, but the ratings of 1.0 and 1.25 mm² are memory-high).
pub fn area_for_current(current: ElectricCurrent) -> Option<Area> {
    [(3.0, 0.5), (6.0, 0.75), (10.0, 1.0), (13.0, 1.25)]
        .into_iter()
        .find(|&(rating, _)| current <= amperes(rating))
        .map(|(_, area)| square_millimetres(area))
}

/// The largest fuse that Table 2 allows before a flex: 3 A from 0.5 mm², 13 A from 0.75 mm²; `None` under 0.5 mm².
pub fn largest_fuse(area: Area) -> Option<ElectricCurrent> {
    [(0.75, 13.0), (0.5, 3.0)]
        .into_iter()
        .find(|&(row, _)| area >= square_millimetres(row))
        .map(|(_, fuse)| amperes(fuse))
}
