//! BS 1362:1973, cartridge fuse links for plugs.
//!
//! Read in secondary copies; the standard itself was not open on the desk.

use uom::si::f64::Time;
use uom::si::time::second;

use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricCurrent, amperes};

/// A fuse link carries its maker's mark, rated current, BS 1362 and an approval mark.
pub const MARKING: Clause = Clause::new("BS 1362", "1973", "marking", Provenance::Read);

/// No rating above 13 A exists.
pub const LARGEST_RATING: Clause = Clause::new("BS 1362", "1973", "ratings", Provenance::Read);

/// Time-current gates of a 13 A fuse link.
pub const GATES: Clause = Clause::new("BS 1362", "1973", "gates", Provenance::Read);

/// A 13 A link at a current: the shortest and the longest time before it opens.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gate {
    /// The current.
    pub current: ElectricCurrent,
    /// It holds at least so long.
    pub shortest: Time,
    /// It has opened by then.
    pub longest: Time,
}

/// The gates of a 13 A link: 30 A 1 s to 400 s, 50 A 0.1 s to 20 s, 100 A 0.01 s to 0.2 s.
pub fn gates_of_13_a() -> [Gate; 3] {
    [(30.0, 1.0, 400.0), (50.0, 0.1, 20.0), (100.0, 0.01, 0.2)].map(|(current, shortest, longest)| Gate {
        current: amperes(current),
        shortest: Time::new::<second>(shortest),
        longest: Time::new::<second>(longest),
    })
}

/// The current that a 13 A link carries for the conventional time without opening: 1.6 times its rating.
pub fn non_fusing_of_13_a() -> ElectricCurrent {
    amperes(20.8)
}

/// The current that opens a 13 A link within the conventional time: 1.9 times its rating.
pub fn fusing_of_13_a() -> ElectricCurrent {
    amperes(24.7)
}

/// The conventional time.
pub fn conventional_time() -> Time {
    Time::new::<second>(1800.0)
}
