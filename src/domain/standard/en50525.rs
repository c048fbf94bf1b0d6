//! EN 50525-2-11 (IEC 60227-5): sizes of flexible cords with PVC insulation and sheath.
//!
//! The ordinary cords are rows of Table 13 of IEC 60227-5:2003 for type 57, read in a national transposition; that type 53
//! (H05VV-F) has the same sizes is from memory. The light cords (H03VV-F) are from memory, believed right. Two-core rows are left
//! out: their flat forms have other sizes, and no two-core flex is right on an earthed product. There is no row for 1.25 mm², a UK size.

use super::{Clause, Provenance};
use crate::domain::quantity::{
    Area, Length, Measurand, ThermodynamicTemperature, degrees_celsius, millimetres, square_millimetres,
};

/// Thickness of insulation and sheath, and mean outer diameter.
pub const SIZES: Clause = Clause::new("EN 50525-2-11", "2011", "sizes, as IEC 60227-5", Provenance::MemoryHigh);

/// The hottest that a conductor in ordinary PVC may run.
pub const CONDUCTOR_TEMPERATURE: Clause =
    Clause::new("EN 50525-2-11", "2011", "conductor temperature", Provenance::Read);

/// What [`CONDUCTOR_TEMPERATURE`] allows: 70 °C.
pub fn hottest_conductor() -> ThermodynamicTemperature {
    degrees_celsius(70.0)
}

/// What a cord is built for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Duty {
    /// H03VV-F, 300/300 V.
    Light,
    /// H05VV-F, 300/500 V.
    Ordinary,
}

/// Sizes of one round cord.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sizes {
    /// Specified thickness of the insulation of each core.
    pub insulation: Length,
    /// Specified thickness of the sheath.
    pub sheath: Length,
    /// Mean outer diameter, smallest and largest.
    pub diameter: (Length, Length),
}

struct Row {
    duty: Duty,
    cores: u8,
    area: f64,
    insulation: f64,
    sheath: f64,
    diameter: (f64, f64),
}

const fn row(duty: Duty, (cores, area): (u8, f64), insulation: f64, sheath: f64, diameter: (f64, f64)) -> Row {
    Row { duty, cores, area, insulation, sheath, diameter }
}

const ROWS: [Row; 14] = [
    row(Duty::Light, (3, 0.5), 0.5, 0.6, (4.9, 6.3)),
    row(Duty::Light, (3, 0.75), 0.5, 0.6, (5.2, 6.7)),
    row(Duty::Ordinary, (3, 0.75), 0.6, 0.8, (6.0, 7.6)),
    row(Duty::Ordinary, (3, 1.0), 0.6, 0.8, (6.3, 8.0)),
    row(Duty::Ordinary, (3, 1.5), 0.7, 0.9, (7.4, 9.4)),
    row(Duty::Ordinary, (3, 2.5), 0.8, 1.1, (9.2, 11.4)),
    row(Duty::Ordinary, (4, 0.75), 0.6, 0.8, (6.6, 8.3)),
    row(Duty::Ordinary, (4, 1.0), 0.6, 0.9, (7.1, 9.0)),
    row(Duty::Ordinary, (4, 1.5), 0.7, 1.0, (8.4, 10.5)),
    row(Duty::Ordinary, (4, 2.5), 0.8, 1.1, (10.1, 12.5)),
    row(Duty::Ordinary, (5, 0.75), 0.6, 0.9, (7.4, 9.3)),
    row(Duty::Ordinary, (5, 1.0), 0.6, 0.9, (7.8, 9.8)),
    row(Duty::Ordinary, (5, 1.5), 0.7, 1.1, (9.3, 11.6)),
    row(Duty::Ordinary, (5, 2.5), 0.8, 1.2, (11.2, 13.9)),
];

/// Every cord that there is a row for, in printed order.
pub fn cords() -> impl Iterator<Item = (Duty, u8, Area)> {
    ROWS.iter().map(|row| (row.duty, row.cores, square_millimetres(row.area)))
}

/// The sizes of a cord; `None` where there is no such row.
pub fn sizes(duty: Duty, cores: u8, area: Area) -> Option<Sizes> {
    let is_size = |row: f64| (square_millimetres(row) - area).base().abs() < square_millimetres(0.001).base();
    ROWS.iter().find(|row| row.duty == duty && row.cores == cores && is_size(row.area)).map(|row| Sizes {
        insulation: millimetres(row.insulation),
        sheath: millimetres(row.sheath),
        diameter: (millimetres(row.diameter.0), millimetres(row.diameter.1)),
    })
}
