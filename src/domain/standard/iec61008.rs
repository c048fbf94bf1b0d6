//! IEC 61008-1, residual-current devices of 30 mA.
//!
//! From memory; no copy was open on the desk.

use uom::si::f64::Time;
use uom::si::time::millisecond;

use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricCurrent, amperes};

/// A 30 mA device opens within 300 ms at 30 mA and within 40 ms at 150 mA.
pub const TRIP_TIME: Clause = Clause::new("IEC 61008-1", "2010", "trip times", Provenance::MemoryHigh);

/// What [`TRIP_TIME`] allows at a current; `None` for a current that it does not name.
pub fn latest_trip(current: ElectricCurrent) -> Option<Time> {
    [(0.03, 300.0), (0.15, 40.0)]
        .into_iter()
        .find(|&(at, _)| current == amperes(at))
        .map(|(_, latest)| Time::new::<millisecond>(latest))
}
