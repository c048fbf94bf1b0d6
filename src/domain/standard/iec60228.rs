//! IEC 60228:2004 (EN 60228, DIN VDE 0295), conductors of insulated cables: d.c. resistance at 20 °C, strands, temperature.
//!
//! Read in national copies and catalogues; the standard itself was not open on the desk. Resistance, not area, decides: the standard
//! sets no area. 1.25 mm² is a size of the United Kingdom (BS 6500) and not of IEC 60228; its rows are memory-medium and agree with the
//! rule of its neighbours that resistance times area is 19.5 Ω·mm²/km.

use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

use super::{Clause, Provenance, iec60287};
use crate::domain::quantity::{
    Area, Length, Measurand, ResistancePerLength, ThermodynamicTemperature, Unit, degrees_celsius, millimetres,
    ohms_per_kilometre, square_millimetres,
};

/// Largest resistance of solid conductors.
pub const TABLE_1: Clause = Clause::new("IEC 60228", "2004", "Table 1", Provenance::Read);

/// Largest resistance of stranded conductors.
pub const TABLE_2: Clause = Clause::new("IEC 60228", "2004", "Table 2", Provenance::Read);

/// Largest resistance and thickest strand of flexible conductors.
pub const TABLE_3: Clause = Clause::new("IEC 60228", "2004", "Table 3", Provenance::Read);

/// Thickest strand of the finest flexible conductors; they share the resistances of Table 3.
pub const TABLE_4: Clause = Clause::new("IEC 60228", "2004", "Table 4", Provenance::MemoryHigh);

/// Factors that bring a resistance to 20 °C.
pub const ANNEX_A: Clause = Clause::new("IEC 60228", "2004", "Annex A", Provenance::Read);

/// Flexible conductors are of copper: classes 5 and 6 have no aluminium in these sizes.
pub const COPPER_ONLY: Clause = Clause::new("IEC 60228", "2004", "5.1.1, Tables 3 and 4", Provenance::Read);

/// The surface of a conductor's strands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Coating {
    /// Bare copper.
    Plain,
    /// Tinned, or coated with another metal: the more generous column, for use where nobody looked.
    Coated,
}

/// Tables 1 and 2, copper: mm², Ω/km plain, Ω/km coated; both classes have the same values in these sizes.
const CLASS_1_AND_2: [(f64, f64, f64); 6] =
    [(0.5, 36.0, 36.7), (0.75, 24.5, 24.8), (1.0, 18.1, 18.2), (1.5, 12.1, 12.2), (2.5, 7.41, 7.56), (4.0, 4.61, 4.70)];

/// Tables 3 and 4, copper: mm², Ω/km plain, Ω/km coated.
const CLASS_5_AND_6: [(f64, f64, f64); 7] = [
    (0.5, 39.0, 40.1),
    (0.75, 26.0, 26.7),
    (1.0, 19.5, 20.0),
    (1.25, 15.6, 16.1),
    (1.5, 13.3, 13.7),
    (2.5, 7.98, 8.21),
    (4.0, 4.95, 5.09),
];

/// Tables 3 and 4: mm², thickest strand of class 5 and of class 6 in mm. That of 1.25 mm² is no printed value: it is the one of its
/// neighbours, for a size that is usually built of 40 wires of 0.20 mm (memory-medium).
const STRANDS: [(f64, f64, f64); 7] = [
    (0.5, 0.21, 0.16),
    (0.75, 0.21, 0.16),
    (1.0, 0.21, 0.16),
    (1.25, 0.21, 0.16),
    (1.5, 0.26, 0.16),
    (2.5, 0.26, 0.16),
    (4.0, 0.31, 0.16),
];

/// Usual builds of class 5: mm², wires, mm. Resistance decides, so that a build of other wires may be right too.
const BUILDS: [(f64, u8, f64); 6] =
    [(0.5, 16, 0.20), (0.75, 24, 0.20), (1.0, 32, 0.20), (1.5, 30, 0.25), (2.5, 50, 0.25), (4.0, 56, 0.30)];

/// Annex A: °C and the factor k(t), for every metal.
const FACTORS: [(f64, f64); 11] = [
    (5.0, 1.064),
    (10.0, 1.042),
    (15.0, 1.020),
    (20.0, 1.000),
    (25.0, 0.980),
    (30.0, 0.962),
    (35.0, 0.943),
    (40.0, 0.926),
    (50.0, 0.893),
    (60.0, 0.862),
    (70.0, 0.833),
];

/// Largest resistance of a copper conductor of class 1 or 2; `None` for an area that is not in the table.
pub fn class1_and_2_maximum(area: Area, coating: Coating) -> Option<ResistancePerLength> {
    maximum(&CLASS_1_AND_2, area, coating)
}

/// Largest resistance of a copper conductor of class 5, which is that of class 6 too; `None` for an area that is not in the table.
pub fn class5_maximum(area: Area, coating: Coating) -> Option<ResistancePerLength> {
    maximum(&CLASS_5_AND_6, area, coating)
}

/// Every area of classes 5 and 6, the smallest first.
pub fn class5_sizes() -> impl Iterator<Item = Area> {
    CLASS_5_AND_6.into_iter().map(|(area, ..)| square_millimetres(area))
}

/// The smallest area of classes 5 and 6.
pub fn class5_smallest() -> Area {
    square_millimetres(0.5)
}

/// The largest area of classes 5 and 6 that is no larger than `area`; `None` below the smallest.
pub fn class5_size_within(area: Area) -> Option<Area> {
    let wanted = area.amount().in_unit(Unit::SquareMillimetre)?;
    CLASS_5_AND_6.iter().rev().find(|(size, _, _)| *size < wanted + 1e-3).map(|&(size, _, _)| square_millimetres(size))
}

/// The least area of pure copper that can keep the maximum of a class 5 conductor: the standard sets no area, so less than this is
/// a doubt and no break by itself.
pub fn class5_least_copper(area: Area) -> Option<Area> {
    class5_maximum(area, Coating::Plain).map(|maximum| iec60287::copper_resistivity() / maximum)
}

/// How many wires of which thickness a class 5 conductor usually has; `None` for an area that is not in the table.
pub fn class5_usual_build(area: Area) -> Option<(u8, Length)> {
    let wanted = area.amount().in_unit(Unit::SquareMillimetre)?;
    BUILDS.iter().find(|(size, ..)| (size - wanted).abs() < 1e-3).map(|&(_, wires, wire)| (wires, millimetres(wire)))
}

/// Thickest strand of a class 5 conductor; `None` for an area that is not in the table.
pub fn class5_thickest_strand(area: Area) -> Option<Length> {
    row(&STRANDS, area).map(|(class_5, _)| millimetres(class_5))
}

/// Thickest strand of a class 6 conductor (memory-high); `None` for an area that is not in the table.
pub fn class6_thickest_strand(area: Area) -> Option<Length> {
    row(&STRANDS, area).map(|(_, class_6)| millimetres(class_6))
}

/// The factor that brings a resistance read at `temperature` to 20 °C, as printed; `None` between the printed temperatures.
pub fn printed_factor(temperature: ThermodynamicTemperature) -> Option<Ratio> {
    let same = |celsius: f64| (degrees_celsius(celsius).base() - temperature.base()).abs() < 1e-6;
    FACTORS.iter().find(|(celsius, _)| same(*celsius)).map(|&(_, factor)| Ratio::new::<ratio>(factor))
}

/// The factor that brings a resistance read at `temperature` to 20 °C: `1 / (1 + 0.004 (t - 20))`, the law behind the printed factors.
///
/// It has no meaning far below freezing, where the law crosses zero: colder than -100 °C counts as -100 °C.
pub fn factor(temperature: ThermodynamicTemperature) -> Ratio {
    let celsius = temperature.amount().in_unit(Unit::DegreeCelsius).unwrap_or(20.0).max(-100.0);
    Ratio::new::<ratio>(1.0 / (1.0 + 0.004 * (celsius - 20.0)))
}

fn maximum(table: &[(f64, f64, f64)], area: Area, coating: Coating) -> Option<ResistancePerLength> {
    row(table, area).map(|(plain, coated)| {
        ohms_per_kilometre(match coating {
            Coating::Plain => plain,
            Coating::Coated => coated,
        })
    })
}

/// The row of an area. A printed size is exact, so a thousandth of a square millimetre off is another size.
fn row(table: &[(f64, f64, f64)], area: Area) -> Option<(f64, f64)> {
    let wanted = area.amount().in_unit(Unit::SquareMillimetre)?;
    table.iter().find(|(size, _, _)| (size - wanted).abs() < 1e-3).map(|&(_, first, second)| (first, second))
}
