//! BS 1362:1973, cartridge fuse links for plugs.
//!
//! Read in secondary copies; the standard itself was not open on the desk.

use super::{Clause, Provenance};
use crate::domain::decision::Limit;
use crate::domain::quantity::{ElectricCurrent, Length, amperes, millimetres};

/// A fuse link carries its maker's mark, rated current, BS 1362 and an approval mark.
pub const MARKING: Clause = clause("marking", Provenance::Read);

/// No rating above 13 A exists; 3 A and 13 A are preferred in plugs, and any smaller one is allowed.
pub const LARGEST_RATING: Clause = clause("ratings", Provenance::Read);

/// The largest rating.
pub fn largest_rating() -> ElectricCurrent {
    amperes(13.0)
}

/// The smallest rating in use that carries a current; above 13 A there is none, and 13 A is named.
pub fn smallest_rating_for(current: ElectricCurrent) -> ElectricCurrent {
    [3.0, 5.0, 10.0].map(amperes).into_iter().find(|fuse| current <= *fuse).unwrap_or_else(largest_rating)
}

/// A ceramic body filled with sand, between two caps.
pub const BODY: Clause = clause("construction", Provenance::Read);

/// Length over both caps.
pub const LENGTH: Clause = clause("dimensions", Provenance::Read);

/// Length over both caps: 25.4 mm, 0.8 mm more or 0.4 mm less.
pub fn length() -> Limit<Length> {
    Limit::Between(millimetres(25.0), millimetres(26.2))
}

/// Diameter of the caps: the tolerance is a weak memory and never decides.
pub const DIAMETER: Clause = clause("dimensions", Provenance::MemoryLow);

/// Diameter of the caps: 6.3 mm is read, 0.2 mm more or 0.1 mm less is memory-low.
pub fn diameter() -> Limit<Length> {
    Limit::Between(millimetres(6.2), millimetres(6.5))
}

/// A link carries 1.6 times its rating for 30 minutes, and opens within 30 minutes at 1.9 times.
pub const CONVENTIONAL_CURRENTS: Clause = clause("time and current", Provenance::Read);

/// The current that a link may carry for ever: 1.6 times its rating, in an order that keeps 4.8 A and 20.8 A exact.
pub fn non_fusing_current(rating: ElectricCurrent) -> ElectricCurrent {
    rating * 16.0 / 10.0
}

/// The current that opens a link within 30 minutes: 1.9 times its rating.
pub fn fusing_current(rating: ElectricCurrent) -> ElectricCurrent {
    rating * 19.0 / 10.0
}

/// Times between which a link opens.
pub const GATES: Clause = clause("time and current, gates", Provenance::Read);

/// A current, and the seconds between which it opens the link.
pub type Gate = (f64, f64, f64);

/// Gates of a 3 A link: A, s, s; two of them only say by when it has opened.
pub const GATES_OF_3_A: [Gate; 3] = [(9.0, 0.02, 80.0), (20.0, 0.0, 0.1), (30.0, 0.0, 0.03)];

/// Gates of a 13 A link: A, s, s.
pub const GATES_OF_13_A: [Gate; 3] = [(30.0, 1.0, 400.0), (50.0, 0.1, 20.0), (100.0, 0.01, 0.2)];

const fn clause(clause: &'static str, provenance: Provenance) -> Clause {
    Clause::new("BS 1362", "1973", clause, provenance)
}
