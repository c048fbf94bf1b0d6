//! BS 7671:2018, protection against electric shock: what a fault loop may have, and where a switch belongs.
//!
//! Read in secondary copies; the standard itself was not open on the desk.

use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricPotential, ElectricalResistance, ohms, volts};

/// A single-pole switch is in the line conductor only.
pub const SWITCH_IN_LINE: Clause = Clause::new("BS 7671", "2018", "132.14.1", Provenance::MemoryHigh);

/// Nominal voltage of the supply, line to earth, for which the tables of loops are made.
pub fn nominal_voltage() -> ElectricPotential {
    volts(230.0)
}

/// Largest impedance of a fault loop at which a BS 1362 fuse opens within 5 s.
pub const LOOP_5_S: Clause = Clause::new("BS 7671", "2018", "Table 41.4(d)", Provenance::Read);

/// The whole loop that [`LOOP_5_S`] allows a 3 A fuse: 22.0 Ω. Behind more than that no plug fuse opens in time.
pub fn largest_loop() -> ElectricalResistance {
    ohms(22.0)
}
