//! BS 7671:2018+A2, Appendix 4, Tables 4F3A and 4F3B: flexible cords, 30 °C around them, conductor at 60 °C; and volt drop.
//!
//! Read in secondary copies; the standard itself was not open on the desk. Old tables give 15 A for 1.5 mm²; 16 A is used here.

use super::{Clause, Provenance};
use crate::domain::quantity::{
    Area, ElectricCurrent, Measurand, ResistancePerLength, ThermodynamicTemperature, Unit, amperes, degrees_celsius,
    ohms_per_kilometre,
};

/// Currents of flexible cords.
pub const TABLE_4F3A: Clause = Clause::new("BS 7671", "2018+A2", "Table 4F3A", Provenance::Read);

/// Volt drop of flexible cords.
pub const TABLE_4F3B: Clause = Clause::new("BS 7671", "2018+A2", "Table 4F3B", Provenance::Read);

/// The most that an installation should lose on the way, 5 % (3 % for lighting); it is no rule for a lead.
pub const VOLT_DROP: Clause = Clause::new("BS 7671", "2018+A2", "Appendix 4, 6.4", Provenance::MemoryHigh);

/// mm², A (single phase), mV/A/m (single phase, out and back).
const ROWS: [(f64, f64, f64); 7] = [
    (0.5, 3.0, 93.0),
    (0.75, 6.0, 62.0),
    (1.0, 10.0, 46.0),
    (1.25, 13.0, 37.0),
    (1.5, 16.0, 32.0),
    (2.5, 25.0, 19.0),
    (4.0, 32.0, 12.0),
];

/// The current of a flexible cord; it buys volt drop and bunching too and is no limit of heat in free air.
pub fn current(area: Area) -> Option<ElectricCurrent> {
    row(area).map(|(current, _)| amperes(current))
}

/// Volt drop for each ampere and metre, out and back; mV/A/m is Ω/km.
pub fn volt_drop(area: Area) -> Option<ResistancePerLength> {
    row(area).map(|(_, drop)| ohms_per_kilometre(drop))
}

/// The temperature around the cord that Table 4F3A is made for.
pub fn surroundings() -> ThermodynamicTemperature {
    degrees_celsius(30.0)
}

/// The conductor temperature that Tables 4F3A and 4F3B are made for.
pub fn conductor() -> ThermodynamicTemperature {
    degrees_celsius(60.0)
}

fn row(area: Area) -> Option<(f64, f64)> {
    let wanted = area.amount().in_unit(Unit::SquareMillimetre)?;
    ROWS.iter().find(|(size, _, _)| (size - wanted).abs() < 1e-3).map(|&(_, current, drop)| (current, drop))
}
