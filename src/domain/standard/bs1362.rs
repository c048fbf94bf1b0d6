//! BS 1362:1973, cartridge fuse links for plugs.
//!
//! Read in secondary copies; the standard itself was not open on the desk.

use super::{Clause, Provenance};
use crate::domain::quantity::ElectricCurrent;

/// A fuse link carries its maker's mark, rated current, BS 1362 and an approval mark.
pub const MARKING: Clause = Clause::new("BS 1362", "1973", "marking", Provenance::Read);

/// No rating above 13 A exists.
pub const LARGEST_RATING: Clause = Clause::new("BS 1362", "1973", "ratings", Provenance::Read);

/// What a fuse carries for half an hour without opening.
pub const NON_FUSING: Clause = Clause::new("BS 1362", "1973", "non-fusing current", Provenance::Read);

/// The non-fusing current of a fuse: 1.6 times its rating.
pub fn non_fusing(rating: ElectricCurrent) -> ElectricCurrent {
    rating * 1.6
}
