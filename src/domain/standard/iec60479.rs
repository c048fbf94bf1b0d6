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
