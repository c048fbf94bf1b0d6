//! ASTM B566, copper-clad aluminium wire.
//!
//! Largest resistivities read in catalogues; the working values of a conductor's metal stand with the model.

use super::{Clause, Provenance};

/// Classes by the part of copper, 10 % and 15 % of the volume: largest resistivity and density.
pub const CLASSES: Clause = Clause::new("ASTM B566", "2004", "", Provenance::Read);
