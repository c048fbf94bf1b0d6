//! ASTM B869, copper-clad steel wire.
//!
//! Classes by conductivity read; the resistivity that follows from each is derived.

use super::{Clause, Provenance};

/// Classes of 40 %, 30 % and 21 % of copper's conductivity.
pub const CLASSES: Clause = Clause::new("ASTM B869", "2004", "Table 1", Provenance::Read);
