//! BS 1363-1 and BS 1363-2, what new plugs and sockets read on a meter.
//!
//! From memory; no copy was open on the desk.

use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricalResistance, ohms};

/// Insulation of a new accessory at 500 V d.c.
pub const INSULATION: Clause = Clause::new("BS 1363-1 and BS 1363-2", "1995/2016", "15", Provenance::MemoryHigh);

/// The least that [`INSULATION`] allows: 5 MΩ.
pub fn insulation() -> ElectricalResistance {
    ohms(5e6)
}
