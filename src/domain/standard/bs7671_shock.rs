//! BS 7671:2018, protection against electric shock: what a fault loop may have, and where a switch belongs.
//!
//! Read in secondary copies; the standard itself was not open on the desk.

use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricCurrent, ElectricPotential, ElectricalResistance, amperes, ohms, volts};

/// A single-pole switch is in the line conductor only.
pub const SWITCH_IN_LINE: Clause = Clause::new("BS 7671", "2018", "132.14.1", Provenance::MemoryHigh);

/// Nominal voltage of the supply, line to earth, for which the tables of loops are made.
pub fn nominal_voltage() -> ElectricPotential {
    volts(230.0)
}

/// Largest impedance of a fault loop at which a BS 1362 fuse opens within 0.4 s.
pub const LOOP_0_4_S: Clause = Clause::new("BS 7671", "2018", "Table 41.2(d)", Provenance::Read);

/// Largest impedance of a fault loop at which a BS 1362 fuse opens within 5 s.
pub const LOOP_5_S: Clause = Clause::new("BS 7671", "2018", "Table 41.4(d)", Provenance::Read);

/// Rows of both tables: A, Ω within 0.4 s, Ω within 5 s. Before 2015 they had no voltage factor: 16.4 Ω, 23.2 Ω; 2.42 Ω, 3.83 Ω.
const LOOPS: [(f64, f64, f64); 2] = [(3.0, 15.6, 22.0), (13.0, 2.30, 3.64)];

/// The whole loop at which a fuse opens within 0.4 s; `None` for a rating that has no row.
pub fn loop_for_0_4_s(fuse: ElectricCurrent) -> Option<ElectricalResistance> {
    LOOPS.into_iter().find(|&(rating, ..)| fuse == amperes(rating)).map(|(_, soon, _)| ohms(soon))
}

/// The whole loop at which a fuse opens within 5 s; `None` for a rating that has no row.
pub fn loop_for_5_s(fuse: ElectricCurrent) -> Option<ElectricalResistance> {
    LOOPS.into_iter().find(|&(rating, ..)| fuse == amperes(rating)).map(|(.., late)| ohms(late))
}

/// The whole loop that [`LOOP_5_S`] allows a 3 A fuse: 22.0 Ω. Behind more than that no plug fuse opens in time.
pub fn largest_loop() -> ElectricalResistance {
    let [(.., late), _] = LOOPS;
    ohms(late)
}
