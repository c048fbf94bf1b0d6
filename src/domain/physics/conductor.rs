//! How much conductor a core has, from its resistance, length and temperature; and whether such readings agree with each other.
//!
//! Source: IEC 60228 for the temperature (its factor stands for every metal), Ohm's law for the rest; uncertainties after the GUM.
//!
//! What it cannot tell: resistance alone names no metal (0.75 mm² of copper-clad aluminium reads like 0.5 mm² of copper). Readings that
//! agree may all be wrong by the same factor: a wrong scale or a wrong length shows in neither self-check.

use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

use crate::domain::quantity::{
    Area, ElectricalResistance, Length, Measurand, ResistancePerLength, ThermodynamicTemperature, degrees_celsius,
};
use crate::domain::standard::{iec60228, iec60287};
use crate::domain::uncertainty::{Measured, combine2};

/// Halvings of an interval: enough for any digit that a meter shows.
const HALVINGS: u32 = 40;

/// The temperature to take where nobody measured it: 20 °C, give or take 5 K, as likely here as there.
pub fn usual_room() -> Measured<ThermodynamicTemperature> {
    Measured::rectangular(degrees_celsius(20.0), ThermodynamicTemperature::from_base(5.0))
}

/// The resistance that a core would have at 20 °C.
pub fn at_20(
    resistance: Measured<ElectricalResistance>,
    temperature: Measured<ThermodynamicTemperature>,
) -> Measured<ElectricalResistance> {
    combine2(resistance, temperature, |resistance, temperature| resistance * iec60228::factor(temperature))
}

/// Resistance over length; a length that is not above zero gives an infinite result, which keeps no limit.
pub fn per_length(
    resistance: Measured<ElectricalResistance>,
    length: Measured<Length>,
) -> Measured<ResistancePerLength> {
    let shortest = Length::from_base(f64::MIN_POSITIVE);
    combine2(resistance, length, |resistance, length| resistance / length.max(shortest))
}

/// The area of a core of pure copper with the same resistance over length. It is no measure of the claimed area: a core that
/// just keeps its limit has 13 % to 16 % less copper than its name says.
pub fn copper_equivalent(per_length: Measured<ResistancePerLength>) -> Measured<Area> {
    per_length.map(|per_length| iec60287::copper_resistivity() / per_length)
}

/// How many times one resistance over length is another.
pub fn times(value: ResistancePerLength, of: ResistancePerLength) -> Ratio {
    value / of
}

/// What should be read and what was.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SelfCheck {
    /// What the other readings lead to.
    pub expected: Measured<ElectricalResistance>,
    /// What was read.
    pub read: Measured<ElectricalResistance>,
}

impl SelfCheck {
    /// The difference over its expanded uncertainty (coverage factor 2), without sign.
    pub fn normalized_error(&self) -> Ratio {
        let expanded = 2.0 * libm::hypot(self.expected.u.base(), self.read.u.base());
        let difference = (self.read.value - self.expected.value).base().abs();
        Ratio::new::<ratio>(if difference > 0.0 { difference / expanded } else { 0.0 })
    }

    /// Whether the readings agree within what the instruments may be wrong by.
    pub fn agrees(&self) -> bool {
        self.normalized_error() <= Ratio::new::<ratio>(1.0)
    }
}

/// Cores joined at both ends against the cores alone: `1/Σ(1/R)`. It sees a slip in one reading and a resistance common to all, such
/// as leads; it is blind to a factor common to all. `None` for no core at all.
///
/// Each reading's doubt is taken as its own. One meter's scale error would cancel and leave less doubt, but a maker's part of the
/// reading is not all scale: taken so, the check is slow to accuse.
pub fn joined(alone: &[Measured<ElectricalResistance>], read: Measured<ElectricalResistance>) -> Option<SelfCheck> {
    let conductance: f64 = alone.iter().map(|core| 1.0 / core.value.base()).sum();
    let together = ElectricalResistance::from_base(1.0 / conductance);
    let part = |core: &Measured<ElectricalResistance>| {
        let share: f64 = (together / core.value).get::<ratio>();
        core.u.base() * share * share
    };
    let u = alone.iter().map(part).fold(0.0, libm::hypot);
    let expected = Measured::new(together, ElectricalResistance::from_base(u));
    (together.base() > 0.0 && together.base().is_finite()).then_some(SelfCheck { expected, read })
}

/// The resistance in series with every reading, such as that of clips, that makes cores joined agree with the cores alone; never less
/// than nothing, and never the whole of the least reading. `None` for fewer than two cores.
pub fn in_series(
    alone: &[Measured<ElectricalResistance>],
    read: Measured<ElectricalResistance>,
) -> Option<Measured<ElectricalResistance>> {
    let check = joined(alone, read)?;
    let least = alone.iter().map(|core| core.value.base()).reduce(f64::min)?;
    let reads_too_little = |series: f64| {
        let conductance: f64 = alone.iter().map(|core| 1.0 / (core.value.base() - series)).sum();
        series + 1.0 / conductance < read.value.base()
    };
    let (mut low, mut high) = (0.0, least);
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(low, high);
        if reads_too_little(middle) { low = middle } else { high = middle }
    }
    // What a step of the series resistance adds to the difference of the two: 1 - Rp² Σ 1/R².
    let share =
        |core: &Measured<ElectricalResistance>| libm::pow((check.expected.value / core.value).get::<ratio>(), 2.0);
    let slope = 1.0 - alone.iter().map(share).sum::<f64>();
    let u = libm::hypot(check.expected.u.base(), check.read.u.base()) / slope;
    (slope > 1e-3).then(|| Measured::new(ElectricalResistance::from_base(low), ElectricalResistance::from_base(u)))
}

/// Half a core against the whole: thin all along, it has half the resistance; a bad joint or break puts a step into one half.
pub fn half_length(whole: Measured<ElectricalResistance>, half: Measured<ElectricalResistance>) -> SelfCheck {
    SelfCheck { expected: whole.map(|whole| whole / 2.0), read: half }
}
