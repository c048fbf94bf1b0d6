//! BS 1362:1973, cartridge fuse links for plugs.
//!
//! Read in secondary copies; the standard itself was not open on the desk.

use super::{Clause, Provenance};
use crate::domain::quantity::ElectricCurrent;

/// A fuse link carries its maker's mark, rated current, BS 1362 and an approval mark.
pub const MARKING: Clause = Clause::new("BS 1362", "1973", "marking", Provenance::Read);

/// No rating above 13 A exists.
pub const LARGEST_RATING: Clause = Clause::new("BS 1362", "1973", "ratings", Provenance::Read);

/// A link carries 1.6 times its rating for 30 minutes, and opens within 30 minutes at 1.9 times.
pub const CONVENTIONAL_CURRENTS: Clause = Clause::new("BS 1362", "1973", "time and current", Provenance::Read);

/// The current that a link may carry for ever: 1.6 times its rating.
pub fn non_fusing_current(rating: ElectricCurrent) -> ElectricCurrent {
    rating * 1.6
}

/// The current that opens a link within 30 minutes: 1.9 times its rating.
pub fn fusing_current(rating: ElectricCurrent) -> ElectricCurrent {
    rating * 1.9
}

/// Times between which a link opens.
pub const GATES: Clause = Clause::new("BS 1362", "1973", "time and current", Provenance::Read);

/// A current, and the seconds between which it opens the link.
pub type Gate = (f64, f64, f64);

/// Gates of a 13 A link: A, s, s.
pub const GATES_OF_13_A: [Gate; 3] = [(30.0, 1.0, 400.0), (50.0, 0.1, 20.0), (100.0, 0.01, 0.2)];
