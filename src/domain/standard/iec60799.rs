//! IEC 60799, cord sets: which flex a connector needs.
//!
//! The table is from memory, plausible; IEC 60335-1 Table 11, read in a secondary copy, has the same sizes for supply cords.

use super::{Clause, Provenance};
use crate::domain::quantity::{Area, ElectricCurrent, Length, amperes, metres, square_millimetres};

/// The plug's rating is not below the connector's.
pub const PLUG_AND_CONNECTOR: Clause = Clause::new("IEC 60799", "", "5.2.2", Provenance::Read);

/// Smallest cross-section for a connector's current.
pub const LEAST_AREA: Clause = Clause::new("IEC 60799", "", "smallest cross-sections", Provenance::MemoryMedium);

/// Up to this length a smaller size will do for some currents.
pub fn short_set() -> Length {
    metres(2.0)
}

/// Smallest cross-sections for a current.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeastArea {
    /// Up to 2 m.
    pub short: Area,
    /// At any length.
    pub any_length: Area,
}

/// Rows in printed order: up to so many A, mm² up to 2 m, mm² at any length.
const ROWS: [(f64, f64, f64); 4] = [(2.5, 0.5, 0.75), (6.0, 0.75, 0.75), (10.0, 0.75, 1.0), (16.0, 1.0, 1.5)];

/// Every current that there is a row for.
pub fn currents() -> impl Iterator<Item = ElectricCurrent> {
    ROWS.into_iter().map(|(current, ..)| amperes(current))
}

/// The smallest cross-sections for a current; `None` above 16 A.
pub fn least_area(current: ElectricCurrent) -> Option<LeastArea> {
    ROWS.into_iter()
        .find(|&(row, _, _)| current <= amperes(row))
        .map(|(_, short, any)| LeastArea { short: square_millimetres(short), any_length: square_millimetres(any) })
}
