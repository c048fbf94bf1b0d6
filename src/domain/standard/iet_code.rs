//! IET Code of Practice for in-service inspection and testing, 5th edition: how long a lead should be, and what it reads on a meter.
//!
//! Read in secondary copies. Advice, not law.

use super::{Clause, Provenance};
use crate::domain::quantity::{
    Area, ElectricCurrent, ElectricalResistance, Length, amperes, metres, ohms, square_millimetres,
};

const EDITION: &str = "5th edition, 2020";

/// Longest lead by cross-section; longer ones with an RCD of 30 mA.
pub const LEAD_LENGTH: Clause = Clause::new("IET Code of Practice", EDITION, "10.10", Provenance::Read);

/// Rows of the advice: mm², m.
const LONGEST: [(f64, f64); 3] = [(1.25, 12.0), (1.5, 15.0), (2.5, 25.0)];

/// Every size that the advice speaks of.
pub fn lead_sizes() -> impl Iterator<Item = Area> {
    LONGEST.into_iter().map(|(area, _)| square_millimetres(area))
}

/// The longest advised lead; `None` under 1.25 mm², of which the advice does not speak.
pub fn longest_lead(area: Area) -> Option<Length> {
    LONGEST.into_iter().rev().find(|&(row, _)| area >= square_millimetres(row)).map(|(_, length)| metres(length))
}

/// Earth continuity of a lead or cord set: no more than 0.1 Ω beyond the resistance of the flex's own protective conductor.
pub const EARTH_CONTINUITY: Clause = Clause::new("IET Code of Practice", EDITION, "Table 15.1", Provenance::Read);

/// What [`EARTH_CONTINUITY`] allows beyond the flex: 0.1 Ω.
pub fn earth_beyond_flex() -> ElectricalResistance {
    ohms(0.1)
}

/// Insulation of class I equipment at 500 V d.c.
pub const INSULATION_CLASS_I: Clause =
    Clause::new("IET Code of Practice", EDITION, "insulation resistance, class I", Provenance::Read);

/// The least that [`INSULATION_CLASS_I`] allows: 1 MΩ.
pub fn insulation_class_1() -> ElectricalResistance {
    ohms(1e6)
}

/// Insulation of class II equipment at 500 V d.c.
pub const INSULATION_CLASS_II: Clause =
    Clause::new("IET Code of Practice", EDITION, "insulation resistance, class II", Provenance::Read);

/// The least that [`INSULATION_CLASS_II`] allows: 2 MΩ.
pub fn insulation_class_2() -> ElectricalResistance {
    ohms(2e6)
}

/// Leads with surge protection are tested at 250 V d.c.
pub const SURGE_LEADS: Clause =
    Clause::new("IET Code of Practice", EDITION, "leads with surge protection", Provenance::Read);

/// Touch current of class II equipment in the superseded 4th edition.
///
/// The 5th edition prints 5 mA for all equipment. That is no line for a current through a person, and is not used here.
pub const TOUCH_CLASS_II: Clause =
    Clause::new("IET Code of Practice", "4th edition, 2012", "touch current, class II", Provenance::Read);

/// The most that [`TOUCH_CLASS_II`] allows: 0.25 mA.
pub fn touch_class_2() -> ElectricCurrent {
    amperes(0.25e-3)
}
