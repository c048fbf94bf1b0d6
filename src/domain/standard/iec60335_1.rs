//! IEC 60335-1, household appliances: which supply cord an appliance needs.
//!
//! Sizes read in a secondary copy, the wording of what 2 m allow is memory-high. Nothing is judged by it: it stands beside IEC 60799,
//! whose own table is recalled, and has the same sizes where both have a row.

use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricCurrent, amperes, square_millimetres};
use crate::domain::standard::iec60799::LeastArea;

/// Smallest cross-section of a supply cord.
pub const SUPPLY_CORD: Clause = Clause::new("IEC 60335-1", "", "Table 11", Provenance::Read);

/// Rows of Table 11 in printed order: up to so many A, mm² up to 2 m, mm² at any length (0.5 mm² is for 2 m at most).
const ROWS: [(f64, f64, f64); 5] =
    [(3.0, 0.5, 0.75), (6.0, 0.75, 0.75), (10.0, 0.75, 1.0), (16.0, 1.0, 1.5), (25.0, 2.5, 2.5)];

/// The smallest cross-sections for an appliance's current; `None` above 25 A.
pub fn least_area(current: ElectricCurrent) -> Option<LeastArea> {
    ROWS.into_iter()
        .find(|&(row, ..)| current <= amperes(row))
        .map(|(_, short, any)| LeastArea { short: square_millimetres(short), any_length: square_millimetres(any) })
}
