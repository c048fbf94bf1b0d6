//! IEC 60320-1, appliance connectors: what each carries.
//!
//! Read in secondary copies; the standard itself was not open on the desk.

use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricCurrent, amperes};

/// Rated currents of connectors by their sheet.
pub const CONNECTORS: Clause = Clause::new("IEC 60320-1", "", "standard sheets", Provenance::Read);

/// C5, earthed.
pub fn c5() -> ElectricCurrent {
    amperes(2.5)
}

/// C7, two holes.
pub fn c7() -> ElectricCurrent {
    amperes(2.5)
}

/// C13 and its hot form C15, earthed.
pub fn c13() -> ElectricCurrent {
    amperes(10.0)
}

/// C19, earthed.
pub fn c19() -> ElectricCurrent {
    amperes(16.0)
}
