//! IEC 60479-1, effects of alternating current on people, 15 Hz to 100 Hz, hand to foot.
//!
//! Read in secondary copies; the publication itself was not open on the desk.

use super::{Clause, Provenance};
use crate::domain::quantity::{ElectricCurrent, amperes};

/// Line a: below it a current is hardly felt (zone AC-1).
pub const LINE_A: Clause = Clause::new("IEC 60479-1", "2018", "zone AC-1", Provenance::Read);

/// Where [`LINE_A`] runs: 0.5 mA, however long it flows.
pub fn line_a() -> ElectricCurrent {
    amperes(0.5e-3)
}

/// Line b after ten seconds and more: above it muscles cramp and hold on (zone AC-3).
pub const LINE_B: Clause = Clause::new("IEC 60479-1", "2018", "zones AC-2 and AC-3", Provenance::MemoryMedium);

/// Where [`LINE_B`] runs then: 5 mA. It starts at 200 mA for 10 ms.
pub fn line_b() -> ElectricCurrent {
    amperes(5e-3)
}

/// Line c1 after some three seconds and more: above it the heart may flutter (zone AC-4).
pub const LINE_C1: Clause = Clause::new("IEC 60479-1", "2018", "zones AC-3 and AC-4", Provenance::MemoryMedium);

/// Where [`LINE_C1`] runs then: about 40 mA. It starts at 500 mA for 10 ms.
pub fn line_c1() -> ElectricCurrent {
    amperes(40e-3)
}
