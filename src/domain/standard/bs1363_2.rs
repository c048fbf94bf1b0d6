//! BS 1363-2:1995+A4 and 2016+A1, 13 A sockets.
//!
//! Read in secondary copies; the standard itself was not open on the desk. The 2023 edition was not compared.

use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricalResistance, Length, millimetres, ohms};

const EDITION: &str = "1995/2016";

/// Line and neutral apertures have shutters, opened by the earth pin or by line and neutral together, never by one pin.
pub const SHUTTERS: Clause = Clause::new("BS 1363-2", EDITION, "shutters", Provenance::Read);

/// Apertures take no plug but a 13 A plug.
pub const APERTURES: Clause = Clause::new("BS 1363-2", EDITION, "apertures", Provenance::MemoryHigh);

/// Live parts cannot be touched, and the body holds together.
pub const TOUCH: Clause = Clause::new("BS 1363-2", EDITION, "protection against shock", Provenance::MemoryHigh);

/// A lead states the whole load it may carry.
pub const MARKING: Clause = Clause::new("BS 1363-2", EDITION, "marking", Provenance::Read);

/// Where line and neutral open the shutter, their apertures keep this distance from the edge, so that no plug goes in upside down.
pub const INVERTED_PLUG: Clause = Clause::new("BS 1363-2", EDITION, "14.10", Provenance::Read);

/// The distance of clause 14.10, from a line or neutral aperture to the edge of a portable socket.
pub fn aperture_to_edge() -> Length {
    millimetres(18.0)
}

/// In the United Kingdom the sockets of an extension set are earthed; there are no two-core sets.
pub const EXTENSION_SETS_ARE_EARTHED: Clause =
    Clause::new("IEC 60884-2-7", "draft", "national note, United Kingdom", Provenance::Read);

/// Insulation of a new accessory at 500 V d.c.; plugs have the same clause in BS 1363-1.
pub const INSULATION: Clause = Clause::new("BS 1363-2", EDITION, "15", Provenance::MemoryHigh);

/// The least that clause 15 allows: 5 MΩ.
pub fn insulation() -> ElectricalResistance {
    ohms(5e6)
}
