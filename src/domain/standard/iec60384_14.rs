//! IEC 60384-14, capacitors that may bridge the barrier between mains and what may be touched.
//!
//! From memory; no copy was open on the desk.

use super::{Clause, Provenance};

/// One class Y1, or two class Y2 in series, may bridge reinforced insulation; class X and ordinary capacitors may not.
pub const ACROSS_THE_BARRIER: Clause = Clause::new("IEC 60384-14", "2013", "classes X and Y", Provenance::MemoryHigh);
