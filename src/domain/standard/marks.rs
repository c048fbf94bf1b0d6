//! Marks on products: how they are drawn and what they say.

use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

use super::{Clause, Provenance};
use crate::domain::decision::Limit;
use crate::domain::quantity::{Length, millimetres};
use crate::domain::sample::Market;

/// CE is drawn in its proportions and at least 5 mm high. The height was read in SI 2004/1464 and Directive 2009/125/EC, which repeat
/// this annex.
pub const CE_SIZE: Clause =
    Clause::new("Regulation (EC) 765/2008", "", "Annex II", Provenance::Read).only_in(Market::NorthernIreland);

/// CE and UKCA are drawn in their proportions and at least 5 mm high, by the same rule as kept in the law of Great Britain.
pub const CE_AND_UKCA_SIZE: Clause =
    Clause::new("Regulation (EC) 765/2008 as kept in British law", "", "Annex II", Provenance::MemoryHigh)
        .only_in(Market::GreatBritain);

/// The least height of CE and of UKCA.
pub fn mark_height() -> Limit<Length> {
    Limit::AtLeast(millimetres(5.0))
}

/// How CE is drawn, in parts of the outer radius of its two arcs.
pub const CE_DRAWING: Clause = Clause::new("Regulation (EC) 765/2008", "", "Annex II, drawing", Provenance::MemoryHigh);

/// The proportions of [`CE_DRAWING`], all as parts of the outer radius.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Proportions {
    /// Inner radius of the arcs.
    pub inner_radius: Ratio,
    /// From the centre of C to the centre of E.
    pub between_centres: Ratio,
    /// From the tips of C to the back of E: 30 % of the height. In fakes they nearly touch.
    pub gap: Ratio,
    /// Width of the whole mark.
    pub width: Ratio,
    /// Height of the whole mark.
    pub height: Ratio,
}

/// CE as the drawing has it.
pub fn ce_proportions() -> Proportions {
    let part = Ratio::new::<ratio>;
    Proportions {
        inner_radius: part(0.7),
        between_centres: part(1.7),
        gap: part(0.6),
        width: part(2.8),
        height: part(2.0),
    }
}

/// The double square says that no earth is needed.
pub const DOUBLE_SQUARE: Clause = Clause::new("IEC 60417", "", "symbol 5172", Provenance::MemoryHigh);

/// The crossed-out wheeled bin says that the goods are collected apart.
pub const WHEELED_BIN: Clause = Clause::new("EN 50419", "", "", Provenance::MemoryMedium);

/// The least height of the bin (memory-medium).
pub fn bin_height() -> Limit<Length> {
    Limit::AtLeast(millimetres(5.0))
}

/// A certified management system certifies no product and is never named on one.
pub const MANAGEMENT_SYSTEM: Clause = Clause::new("ISO 9001", "2015", "use of the name", Provenance::Read);

/// A rating plate states voltage and current.
pub const RATING_PLATE: Clause = Clause::new("IEC 60884-1", "", "8.1", Provenance::MemoryHigh);

/// A current printed beside a voltage bounds the power printed with them.
pub const POWER_FROM_RATING: Clause = Clause::common_practice();

/// Standards that are rightly named on plugs, leads and cord sets and on what is built into them.
pub const STANDARDS_THAT_BELONG: Clause = Clause::common_practice();

/// Plugs, fuses, sockets, leads; flex; connectors; switches and surge parts; electronics; safety of shape and waste.
const BELONGING: [&str; 21] = [
    "1362", "1363", "5733", "60884", "61242", "60799", "50525", "60227", "60245", "60320", "61058", "61643", "62368",
    "61000", "55032", "55035", "63000", "60529", "60417", "50419", "61558",
];

/// Management systems, which are another matter.
const MANAGEMENT: [&str; 4] = ["9000", "9001", "14001", "45001"];

/// Whether the number of a standard, without part and year, may rightly be named.
pub fn may_be_named(number: &str) -> bool {
    BELONGING.contains(&number) || MANAGEMENT.contains(&number)
}
