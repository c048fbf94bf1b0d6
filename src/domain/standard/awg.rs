//! ASTM B258: American wire gauge, a series of diameters in equal ratios.
//!
//! 36 steps of the ratio 92^(1/39) lead from No. 36, 0.127 mm, to the thick end. The formula is read; 18 AWG = 0.823 mm² is read too.

use super::{Clause, Provenance};
use crate::domain::quantity::{Area, square_millimetres};

/// The series of diameters.
pub const DIAMETERS: Clause = Clause::new("ASTM B258", "", "", Provenance::Derived);

/// The gauges that flexes and their wires have.
pub const GAUGES: core::ops::RangeInclusive<u8> = 4..=40;

/// Cross-section of a gauge; `None` outside the gauges of flexes.
pub fn area(gauge: u8) -> Option<Area> {
    GAUGES.contains(&gauge).then(|| square_millimetres(area_of(f64::from(gauge))))
}

/// What one step of the gauge is there: the next thinner and the next thicker are each half of it away, no size lies between.
pub fn step(gauge: u8) -> Option<Area> {
    let gauge = GAUGES.contains(&gauge).then(|| f64::from(gauge))?;
    Some(square_millimetres(area_of(gauge - 0.5) - area_of(gauge + 0.5)))
}

/// Square millimetres.
fn area_of(gauge: f64) -> f64 {
    let diameter = 0.127 * libm::pow(92.0, (36.0 - gauge) / 39.0);
    core::f64::consts::PI / 4.0 * diameter * diameter
}
