//! BS 1363-1:1995+A4 and 2016+A1, 13 A plugs.
//!
//! Read in secondary copies; the standard itself was not open on the desk. The 2023 edition was not compared. Every pin tolerance is
//! from memory (memory-high): a reading outside one says "confirm with the Figure 5 gauge", until it is far outside.

use super::{Clause, Provenance};
use crate::domain::decision::Limit;
use crate::domain::quantity::{
    Area, ElectricCurrent, ElectricPotential, Length, amperes, millimetres, square_millimetres, volts,
};
use crate::domain::question::Core;

const PUBLICATION: &str = "BS 1363-1";
const EDITIONS: &str = "1995/2016";

/// What a plug carries, clause 7.1 of 1995+A2: maker's name or mark; BS 1363 (BS 1363/A for rough use); on rewirable plugs the
/// symbols of line, neutral and earth; FUSE, FUSED or the fuse symbol outside; 13 A on a rewirable plug's engagement face, on any
/// other the rating of the fuse fitted.
pub const MARKING: Clause = Clause::new(PUBLICATION, "1995+A2", "7.1", Provenance::Read);

/// A plug has a fuse link to BS 1362 in its line pole: that there is one is read, that the pole is the line pole is memory-high.
pub const FUSE: Clause = Clause::new(PUBLICATION, EDITIONS, "fuse", Provenance::Read);

/// No live part can be reached; a straight steel pin 1 mm thick and 20 mm long tries it.
pub const TEST_PIN: Clause = Clause::new(PUBLICATION, EDITIONS, "9 and Figure 1", Provenance::Read);

/// Line and neutral stay away from the plug's edge; the clause number is unconfirmed.
pub const PIN_TO_EDGE: Clause = Clause::new(PUBLICATION, EDITIONS, "9 or 12", Provenance::Read);

/// The least distance from any part of the line or neutral pin to the edge of the plug, on the engagement face.
pub fn pin_to_edge() -> Limit<Length> {
    Limit::AtLeast(millimetres(9.5))
}

/// Pins are solid brass, not folded sheet; the plug's cover screws are captive.
pub const PIN_MAKE: Clause = Clause::new(PUBLICATION, EDITIONS, "12, make of pins", Provenance::Read);

/// A plastic earth pin opens the shutters of a plug for a two-core class II cord, and is allowed nowhere else.
pub const SHUTTER_OPENER: Clause = Clause::new(PUBLICATION, EDITIONS, "12, plastic earth pins", Provenance::Read);

/// Line and neutral pins are sleeved (flush with the bare pin's size), since the edition of 1984; the earth pin never is.
/// That the rule stands near 12.16 and 12.17 is what copies say; the sleeve's own length is memory-low and not asked.
pub const SLEEVES: Clause = Clause::new(PUBLICATION, EDITIONS, "12.16/12.17", Provenance::Read);

/// The plug goes into the Figure 5 gauge with no more than 20 N. Spacings have no tolerance of their own.
pub const GAUGE: Clause = Clause::new(PUBLICATION, EDITIONS, "12/13 and Figure 5", Provenance::Read);

/// Pins twisted with 1 N·m for 60 s each way still fit the gauge.
pub const PIN_TWIST: Clause = Clause::new(PUBLICATION, "2016/2023", "pin twist", Provenance::Read);

/// Width of a pin.
pub const PIN_WIDTH: Clause = Clause::new(PUBLICATION, EDITIONS, "Figure 4a", Provenance::MemoryHigh);

/// Width of a pin: nominal 6.4 mm and 8.0 mm are read.
pub fn pin_width(pin: Core) -> Limit<Length> {
    match pin {
        Core::Line | Core::Neutral => between(6.22, 6.48),
        Core::Earth => between(7.80, 8.05),
    }
}

/// Thickness of a pin.
pub const PIN_THICKNESS: Clause = Clause::new(PUBLICATION, EDITIONS, "Figure 4a", Provenance::MemoryHigh);

/// Thickness of each of the three pins: nominal 4.0 mm is read.
pub fn pin_thickness() -> Limit<Length> {
    between(3.90, 4.05)
}

/// Length of a pin from the engagement face.
pub const PIN_LENGTH: Clause = Clause::new(PUBLICATION, EDITIONS, "Figure 4a", Provenance::ReadNominal);

/// Length of a pin from the engagement face: 17.7 mm is read; for the earth pin copies say 22.3 mm and 22.7 mm, and the range
/// holds both.
pub fn pin_length(pin: Core) -> Limit<Length> {
    match pin {
        Core::Line | Core::Neutral => between(17.20, 18.20),
        Core::Earth => between(22.23, 23.23),
    }
}

/// Centres of line and neutral, and the earth pin's centre line from theirs: 22.2 mm is read, the doubt of an inch drawing
/// (0.875 in ± 0.005 in) is memory-medium and screens only.
pub const PIN_SPACING: Clause = Clause::new(PUBLICATION, EDITIONS, "Figure 4a", Provenance::MemoryMedium);

/// Either spacing, at the base of the pins.
pub fn pin_spacing() -> Limit<Length> {
    between(22.10, 22.36)
}

/// The cord is held: 25 pulls of 60 N for 1 s each, then a twist, move it by 2 mm at most. A type test: shown, never asked.
pub const CORD_ANCHORAGE: Clause = Clause::new(PUBLICATION, EDITIONS, "cord anchorage", Provenance::MemoryMedium);

/// Insulation of a new plug at 500 V d.c.: the same 5 MΩ as of a socket, which stand with BS 1363-2.
pub const INSULATION: Clause = Clause::new(PUBLICATION, EDITIONS, "15", Provenance::MemoryHigh);

/// Table 2: cross-section of the flex, rating of the plug, largest fuse.
pub const TABLE_2: Clause = Clause::new(PUBLICATION, "1995", "Table 2", Provenance::Read);

/// Table 2 in mm², A and A: cross-section, plug rating, largest fuse.
///
/// All read but the ratings of 1.0 mm² and 1.25 mm², which are memory-high. The row of 0.75 mm² allows 10 A where the cord is at most
/// 2 m long and tested at 10 A; that of 0.5 mm² allows a 5 A fuse where some equipment's inrush needs it.
const ROWS: [(f64, f64, f64); 5] =
    [(0.5, 3.0, 3.0), (0.75, 6.0, 13.0), (1.0, 10.0, 13.0), (1.25, 13.0, 13.0), (1.5, 13.0, 13.0)];

/// The rating of every 13 A plug, and the largest there is.
pub fn largest_rating() -> ElectricCurrent {
    amperes(13.0)
}

/// The voltage that plugs are made for; watts printed without volts are held at it.
pub fn rated_voltage() -> ElectricPotential {
    volts(250.0)
}

/// Every row of Table 2: the size of the flex, and the rating of its plug.
pub fn plug_ratings() -> impl Iterator<Item = (Area, ElectricCurrent)> {
    ROWS.into_iter().map(|(area, rating, _)| (square_millimetres(area), amperes(rating)))
}

/// The thickest flex of Table 2, and the thickest that a plug takes.
pub fn thickest_flex() -> Area {
    square_millimetres(1.5)
}

/// The fuse that Table 2 allows before 0.5 mm² only where the inrush of some equipment needs it.
pub fn inrush_fuse() -> ElectricCurrent {
    amperes(5.0)
}

/// The smallest cross-section that Table 2 allows for a current; `None` above 13 A.
pub fn area_for_current(current: ElectricCurrent) -> Option<Area> {
    ROWS.into_iter().find(|&(_, rating, _)| current <= amperes(rating)).map(|(area, ..)| square_millimetres(area))
}

/// The largest fuse that Table 2 allows for a flex; `None` under 0.5 mm², where the table begins.
pub fn largest_fuse(flex: Area) -> Option<ElectricCurrent> {
    ROWS.into_iter().rev().find(|&(area, ..)| flex >= square_millimetres(area)).map(|(.., fuse)| amperes(fuse))
}

fn between(low: f64, high: f64) -> Limit<Length> {
    Limit::Between(millimetres(low), millimetres(high))
}
