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
