//! IEC 61008-1, residual-current devices of 30 mA.
//!
//! From memory; no copy was open on the desk.

use super::{Clause, Provenance};

/// A 30 mA device opens within 300 ms at 30 mA and within 40 ms at 150 mA.
pub const TRIP_TIME: Clause = Clause::new("IEC 61008-1", "2010", "trip times", Provenance::MemoryHigh);
