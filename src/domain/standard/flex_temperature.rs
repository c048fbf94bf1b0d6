//! Temperatures that PVC flex is made and rated for: EN 50525-2-11:2011 and BS 7671:2018.
//!
//! Read in secondary copies; the standards themselves were not open on the desk.

use super::{Clause, Provenance};
use crate::domain::quantity::{ThermodynamicTemperature, degrees_celsius};

/// The conductor temperature that flex ratings count with.
pub const RATED: Clause = Clause::new("BS 7671", "2018", "Table 4F3A", Provenance::Read);

/// What [`RATED`] says: 60 °C.
pub fn rated() -> ThermodynamicTemperature {
    degrees_celsius(60.0)
}

/// The hottest a conductor in PVC may run.
pub const PVC_AT_MOST: Clause = Clause::new("EN 50525-2-11", "2011", "conductor temperature", Provenance::Read);

/// What [`PVC_AT_MOST`] says: 70 °C.
pub fn pvc_at_most() -> ThermodynamicTemperature {
    degrees_celsius(70.0)
}
