//! IET Code of Practice for in-service inspection and testing, 5th edition: how long an extension lead should be.
//!
//! Read in secondary copies. Advice, not law.

use super::{Clause, Provenance};
use crate::domain::quantity::{Area, Length, metres, square_millimetres};

/// Longest lead by cross-section; longer ones with an RCD of 30 mA.
pub const LEAD_LENGTH: Clause = Clause::new("IET Code of Practice", "5th edition, 2020", "10.10", Provenance::Read);

/// The longest advised lead; `None` under 1.25 mm², of which the advice does not speak.
pub fn longest_lead(area: Area) -> Option<Length> {
    [(2.5, 25.0), (1.5, 15.0), (1.25, 12.0)]
        .into_iter()
        .find(|&(row, _)| area >= square_millimetres(row))
        .map(|(_, length)| metres(length))
}
