//! Facts of the trade and lines of our own: no publication stands behind them, and whatever rests on one says so.
//!
//! They stand here and not in the checks that use them, so that every number that decides can be found in one folder.

use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

use super::{Clause, bs1363_1, bs7671_shock};
use crate::domain::decision::Limit;
use crate::domain::quantity::{
    Area, ElectricPotential, ElectricalResistance, Length, Mass, Measurand, ResistancePerLength, millimetres, ohms,
    square_millimetres, volts,
};
use crate::domain::uncertainty::Measured;

/// What everything here is held against.
pub const USUAL: Clause = Clause::common_practice();

/// Midway between what one genuine fuse link (about 2.3 g) and one fake (about 1.6 g) weighed; under it sand may be missing. A hint,
/// no limit.
pub fn doubtful_fuse_mass() -> Limit<Mass> {
    Limit::AtLeast(Mass::from_base(1.95e-3))
}

/// From this distance down, a pin too near the edge is a danger and not only against the rules. The line is ours.
pub fn pin_far_from_fingers() -> Limit<Length> {
    Limit::AtLeast(millimetres(7.0))
}

/// What a recalled tolerance of a pin is granted beyond the doubt of the reading. The line is ours.
pub fn pin_grace() -> Length {
    millimetres(0.2)
}

/// The thinnest flex for mains in the United Kingdom.
pub fn thinnest_flex() -> Area {
    square_millimetres(0.5)
}

/// Where too much resistance of a core becomes a danger: one and a half times what is allowed.
pub fn dangerous_resistance(allowed: ResistancePerLength) -> ResistancePerLength {
    1.5 * allowed
}

/// No core of a flex on a 13 A plug is so thick: such a plug takes 1.5 mm². A core that reads less than this would was read wrongly.
pub fn thickest_core() -> Area {
    square_millimetres(4.0)
}

/// What the leads of a hand meter may add to a reading, at most; ordinary ones have 0.1 Ω to 0.3 Ω.
pub fn test_leads() -> ElectricalResistance {
    ohms(0.3)
}

/// Where a display showed no path at all: no less than this, and no more is claimed. The line is ours.
pub fn no_path() -> ElectricalResistance {
    ohms(1e6)
}

/// What the clips of a four-wire meter add to a reading, give or take: nothing, or half a milliohm.
pub fn four_wire_clips() -> Measured<ElectricalResistance> {
    Measured::new(ohms(0.0), ohms(0.000_5))
}

/// What other clips add: 5 mΩ, give or take 5.
pub fn clips() -> Measured<ElectricalResistance> {
    Measured::new(ohms(0.005), ohms(0.005))
}

/// Below it the path between line and neutral would carry more than any plug fuse is rated for.
pub fn short_circuit() -> ElectricalResistance {
    bs7671_shock::nominal_voltage() / bs1363_1::largest_rating()
}

/// From here on nothing conducts that should not: between poles that have nothing between them, and from either to earth.
pub fn nothing_conducts() -> ElectricalResistance {
    ohms(1e6)
}

/// What portable-appliance testers apply between earth and both poles of a class I sample.
pub fn withstand() -> ElectricPotential {
    volts(1250.0)
}

/// How far apart two voltages of one supply may be: 220 V and 250 V are one, 127 V and 220 V are not.
pub fn within_one_supply() -> Ratio {
    Ratio::new::<ratio>(1.2)
}

/// Whether two voltages belong to one supply.
pub fn are_one_supply(higher: ElectricPotential, lower: ElectricPotential) -> bool {
    higher <= lower * within_one_supply()
}
