//! IEC 60320-1, appliance connectors: what each carries.
//!
//! Read in secondary copies; the standard itself was not open on the desk.

use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricCurrent, amperes};

/// Rated currents of connectors by their sheet.
pub const CONNECTORS: Clause = Clause::new("IEC 60320-1", "", "standard sheets", Provenance::Read);

/// Connectors in printed order: number of the sheet, A. C15 is the hot form of C13; C1, C7, C17 and C23 take no earth.
const RATINGS: [(u8, f64); 10] =
    [(1, 0.2), (5, 2.5), (7, 2.5), (9, 6.0), (13, 10.0), (15, 10.0), (17, 10.0), (19, 16.0), (21, 16.0), (23, 16.0)];

/// What a connector carries, by its number: 13 for C13.
pub fn rating(connector: u8) -> Option<ElectricCurrent> {
    RATINGS.into_iter().find(|&(sheet, _)| sheet == connector).map(|(_, rating)| amperes(rating))
}
