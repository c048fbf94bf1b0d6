//! BS 7671:2018+A2, Appendix 4: volt drop of flexible cords, and the temperatures that Tables 4F3A and 4F3B are made for.
//!
//! Read in secondary copies; the standard itself was not open on the desk.

use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

use super::{Clause, Provenance, bs7671_shock};
use crate::domain::quantity::{
    Area, ElectricPotential, Measurand, ResistancePerLength, ThermodynamicTemperature, Unit, degrees_celsius,
    ohms_per_kilometre,
};

/// Volt drop of flexible cords.
pub const TABLE_4F3B: Clause = Clause::new("BS 7671", "2018+A2", "Table 4F3B", Provenance::Read);

/// The most that an installation should lose on the way, 5 % (3 % for lighting); it is no rule for a lead.
pub const VOLT_DROP: Clause = Clause::new("BS 7671", "2018+A2", "Appendix 4, 6.4", Provenance::MemoryHigh);

/// What [`VOLT_DROP`] allows at the nominal voltage: 11.5 V.
pub fn largest_drop() -> ElectricPotential {
    0.05 * bs7671_shock::nominal_voltage()
}

/// Rows of Table 4F3B in printed order: mm², mV/A/m (single phase, out and back).
const DROPS: [(f64, f64); 7] =
    [(0.5, 93.0), (0.75, 62.0), (1.0, 46.0), (1.25, 37.0), (1.5, 32.0), (2.5, 19.0), (4.0, 12.0)];

/// Volt drop for each ampere and metre, out and back; mV/A/m is Ω/km. `None` for an area that is not in the table.
pub fn volt_drop(area: Area) -> Option<ResistancePerLength> {
    let wanted = area.amount().in_unit(Unit::SquareMillimetre)?;
    DROPS.iter().find(|(size, _)| (size - wanted).abs() < 1e-3).map(|&(_, drop)| ohms_per_kilometre(drop))
}

/// Cables bunched in air: what is left of the current of each (17th edition, read in a secondary copy).
pub const TABLE_4C1: Clause = Clause::new("BS 7671", "2008", "Table 4C1, item 1", Provenance::Read);

/// What is left of the current of a flex whose four turns lie on each other, each turn counted as a cable of its own.
pub fn four_turns() -> Ratio {
    Ratio::new::<ratio>(0.65)
}

/// The temperature around the cord that Table 4F3A is made for.
pub fn surroundings() -> ThermodynamicTemperature {
    degrees_celsius(30.0)
}

/// The conductor temperature that Tables 4F3A and 4F3B are made for.
pub fn conductor() -> ThermodynamicTemperature {
    degrees_celsius(60.0)
}
