//! IEC 62368-1, supplies: distances across the barrier between mains and what may be touched.
//!
//! From memory; no copy was open on the desk. 230 V, pollution degree 2, material group not qualified.

use super::{Clause, Provenance};
use crate::domain::quantity::{Length, millimetres};

/// Reinforced clearance, through air.
pub const CLEARANCE: Clause = Clause::new("IEC 62368-1", "2018", "5.4.2", Provenance::MemoryMedium);

/// What [`CLEARANCE`] asks for: about 3 mm to 4 mm; the larger is taken, and a smaller distance is told only.
pub fn clearance() -> Length {
    millimetres(4.0)
}

/// Reinforced creepage, along the surface.
pub const CREEPAGE: Clause = Clause::new("IEC 62368-1", "2018", "5.4.3", Provenance::MemoryHigh);

/// What [`CREEPAGE`] asks for: 5.0 mm.
pub fn creepage() -> Length {
    millimetres(5.0)
}
