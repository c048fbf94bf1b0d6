//! IEC 60227-1:2007, PVC cables: marks, colours and how thin insulation and sheath may be at one point.
//!
//! From memory, believed right; the clause on marking changed in the 2007 edition.

use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

use super::{Clause, Provenance};
use crate::domain::quantity::{Length, millimetres};

/// Where one print on the sheath ends, the next begins within 0.55 m.
pub const MARK_REPEATS: Clause = Clause::new("IEC 60227-1", "2007", "3.1.1", Provenance::MemoryHigh);

/// The longest gap that [`MARK_REPEATS`] allows.
pub fn longest_gap() -> Length {
    millimetres(550.0)
}

/// A name, a mark or a thread among the cores says who made the flex.
pub const MAKER: Clause = Clause::new("IEC 60227-1", "2007", "3.1", Provenance::MemoryHigh);

/// On any 15 mm of the earth core one colour covers 30 % to 70 % of the surface, the other the rest.
pub const TWO_COLOURS: Clause = Clause::new("IEC 60227-1", "2007", "4.1.3", Provenance::MemoryHigh);

/// The least and the most that one colour covers by [`TWO_COLOURS`].
pub fn share_of_a_colour() -> (Ratio, Ratio) {
    (Ratio::new::<ratio>(0.3), Ratio::new::<ratio>(0.7))
}

/// How thin insulation may be at its thinnest point.
pub const INSULATION: Clause = Clause::new("IEC 60227-1", "2007", "5.2.3", Provenance::MemoryHigh);

/// How thin the sheath may be at its thinnest point.
pub const SHEATH: Clause = Clause::new("IEC 60227-1", "2007", "5.5.3", Provenance::MemoryHigh);

/// The thinnest point of insulation of a specified thickness: 90 % of it less 0.1 mm.
pub fn thinnest_insulation(specified: Length) -> Length {
    specified * 0.9 - millimetres(0.1)
}

/// The thinnest point of a sheath of a specified thickness: 85 % of it less 0.1 mm.
pub fn thinnest_sheath(specified: Length) -> Length {
    specified * 0.85 - millimetres(0.1)
}
