//! How warm a straight flex gets in still air at a steady current.
//!
//! Source: heat loss of a single cable after IEC 60287-2-1, 4.2.1 (read). Inside the flex, two equal wires in one sheath share
//! the heat: each sends half of it through `ρ/(2π) ln(D/d)`, and the air between the cores adds 0.10 K·m/W. That sum stands for a
//! table of two-dimensional solutions for cords of 0.75 mm² to 4 mm² and meets it within 3 %; for hair-thin cores it lies inside
//! their range. Resistance rises as copper's does. No more than two cores carry current.
//!
//! What it cannot tell: a flex that is coiled, bunched, covered, under carpet or in warm air gets far hotter; none of that is modelled
//! (four turns can double the rise; where a figure for four turns is shown, a table's factor is applied to the current). Steel's resistance rises a little faster than copper's. Above about 160 °C the number only means
//! "destroyed". The published tables scatter about the model by 7 % of current: ±15 % of current or ±30 % of the rise is its margin.

use uom::si::f64::{LinearPowerDensity, TemperatureInterval};
use uom::si::linear_power_density::watt_per_meter;
use uom::si::temperature_coefficient::per_kelvin;
use uom::si::temperature_interval::kelvin;

use crate::domain::quantity::{
    Area, ElectricCurrent, Length, Measurand, ResistancePerLength, ThermodynamicTemperature, amperes, degrees_celsius,
};
use crate::domain::standard::iec60287::{self, StillAir};
use crate::domain::standard::{bs7671_flex, en50525};

/// What the air between the cores adds to the thermal resistance of the flex, K·m/W.
const AIR_BETWEEN_CORES: f64 = 0.10;

/// The hottest surface that a balance is sought for, K above the room. Nothing that a flex is made of lasts to half of it.
const SEARCH_LIMIT: f64 = 1000.0;

/// Halvings of an interval: enough to use up every digit of the numbers.
const HALVINGS: u32 = 60;

/// Coverage of the model: its rise may be wrong by this part of it (two standard deviations).
const MARGIN_OF_RISE: f64 = 0.30;

/// The same as one standard deviation of a current.
const DEVIATION_OF_CURRENT: f64 = 0.075;

/// The relative standard uncertainty of a current that the model gives.
pub const fn deviation_of_current() -> f64 {
    DEVIATION_OF_CURRENT
}

/// The part of the rise that the model may be wrong by, either way.
pub const fn margin_of_rise() -> f64 {
    MARGIN_OF_RISE
}

/// A flex with two cores that carry the current.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LoadedFlex {
    /// Resistance over length of both loaded cores together, at 20 °C.
    pub cores: ResistancePerLength,
    /// Outer diameter.
    pub diameter: Length,
}

/// Where a steady current leads.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Steady {
    /// The conductors settle at a temperature.
    At(ThermodynamicTemperature),
    /// They never settle: more heat is made than the flex can give away at any temperature.
    Never,
}

/// How warm the conductors get at one current, straight and wound up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Warmth {
    /// The current.
    pub current: ElectricCurrent,
    /// Lying straight in still air.
    pub straight: Steady,
    /// In four turns. A factor of the rating tables is applied to the current for it: this is no model of a coil.
    pub wound: Steady,
    /// What the margin allows to be said of the straight flex.
    pub heat: Heat,
}

/// What the model and its margin allow to be said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Heat {
    /// Too hot, even with the margin in the flex's favour.
    Overheats,
    /// Cool enough, even with the margin against it.
    Within,
    /// Inside the model's margin.
    CannotTell,
}

impl LoadedFlex {
    /// Whether both values are values at all: nothing is said of a flex that is not.
    fn is_known(&self) -> bool {
        let is_value = |value: f64| value.is_finite() && value >= 0.0;
        is_value(self.cores.base()) && is_value(self.diameter.base()) && self.diameter.base() > 0.0
    }

    /// The heat made at a current while the cores are at 20 °C.
    pub fn cold_heat(&self, current: ElectricCurrent) -> LinearPowerDensity {
        current * current * self.cores
    }

    /// How warm it gets where the rating tables are made for.
    pub fn warmth(&self, current: ElectricCurrent) -> Warmth {
        let room = bs7671_flex::surroundings();
        Warmth {
            current,
            straight: self.steady(current, room),
            wound: self.steady(current / bs7671_flex::four_turns(), room),
            heat: judge(self, self, current, room),
        }
    }

    /// Where a steady current leads in a room.
    pub fn steady(&self, current: ElectricCurrent, room: ThermodynamicTemperature) -> Steady {
        let cooling = self.cooling(room);
        let settles = cooling.balanced_at(SEARCH_LIMIT).current >= current;
        if !settles {
            return Steady::Never;
        }
        let rise = halve(|rise| cooling.balanced_at(rise).current < current);
        Steady::At(cooling.balanced_at(rise).conductor)
    }

    /// The current that brings the conductors to a temperature.
    pub fn current_for(&self, conductor: ThermodynamicTemperature, room: ThermodynamicTemperature) -> ElectricCurrent {
        let cooling = self.cooling(room);
        let rise = halve(|rise| cooling.balanced_at(rise).conductor < conductor);
        cooling.balanced_at(rise).current
    }

    /// What does not change while the flex warms.
    fn cooling(&self, room: ThermodynamicTemperature) -> Cooling {
        let wire = Length::from_base(self.wire().min(self.diameter.base()));
        let half_a_watt = LinearPowerDensity::new::<watt_per_meter>(0.5);
        let through_pvc = iec60287::rise_across_pvc(half_a_watt, self.diameter, wire).get::<kelvin>();
        Cooling {
            air: StillAir::around(self.diameter),
            inside: through_pvc + AIR_BETWEEN_CORES,
            cores: self.cores,
            room,
        }
    }

    /// Diameter, in metres, of a round copper wire with the resistance of one core.
    fn wire(&self) -> f64 {
        let area: Area = iec60287::copper_resistivity() / (self.cores / 2.0);
        libm::sqrt(4.0 * area.base() / core::f64::consts::PI)
    }
}

/// How a flex gives away its heat.
struct Cooling {
    air: StillAir,
    /// How much warmer the conductors are than the surface, K·m/W.
    inside: f64,
    /// Resistance over length of both loaded cores together, at 20 °C.
    cores: ResistancePerLength,
    room: ThermodynamicTemperature,
}

impl Cooling {
    /// The state in which the flex gives away all the heat it makes while its surface is `rise` kelvin above the room. The heat
    /// given away fixes the conductors' temperature, that their resistance, and that the current: nothing is left to search for.
    fn balanced_at(&self, rise: f64) -> Balance {
        let heat = self.air.loss(TemperatureInterval::new::<kelvin>(rise)).get::<watt_per_meter>();
        let conductor = ThermodynamicTemperature::from_base(self.room.base() + rise + heat * self.inside);
        let coefficient = iec60287::copper_coefficient().get::<per_kelvin>();
        let warm = self.cores.base() * (1.0 + coefficient * (conductor.base() - degrees_celsius(20.0).base()));
        Balance { conductor, current: amperes(libm::sqrt(heat / warm)) }
    }
}

/// One steady state.
struct Balance {
    conductor: ThermodynamicTemperature,
    current: ElectricCurrent,
}

/// The surface rise at which `too_little` turns from true to false, by halving; the search limit where it never does.
fn halve(too_little: impl Fn(f64) -> bool) -> f64 {
    let (mut low, mut high) = (0.0, SEARCH_LIMIT);
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(low, high);
        if too_little(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    high
}

/// Where a current leads between the coolest and the hottest flex that the readings allow, with the model's margin on top: the first
/// with 0.7 of its rise, the second with 1.3 times its rise.
pub fn between(
    coolest: &LoadedFlex,
    hottest: &LoadedFlex,
    current: ElectricCurrent,
    room: ThermodynamicTemperature,
) -> (Steady, Steady) {
    let stretched = |flex: &LoadedFlex, by: f64| match flex.steady(current, room) {
        Steady::At(conductor) => {
            let rise = by * (conductor.base() - room.base());
            Steady::At(ThermodynamicTemperature::from_base(room.base() + rise))
        }
        Steady::Never => Steady::Never,
    };
    (stretched(coolest, 1.0 - MARGIN_OF_RISE), stretched(hottest, 1.0 + MARGIN_OF_RISE))
}

/// What may be said at a current: too hot when 0.7 of the rise of the `coolest` flex that the readings allow reaches 70 °C, cool enough
/// when 1.3 times the rise of the `hottest` stays at 60 °C.
pub fn judge(
    coolest: &LoadedFlex,
    hottest: &LoadedFlex,
    current: ElectricCurrent,
    room: ThermodynamicTemperature,
) -> Heat {
    let (least, most) = between(coolest, hottest, current, room);
    let in_base = |steady: Steady| if let Steady::At(conductor) = steady { conductor.base() } else { f64::INFINITY };
    if coolest.is_known() && in_base(least) >= en50525::hottest_conductor().base() {
        Heat::Overheats
    } else if hottest.is_known() && in_base(most) <= bs7671_flex::conductor().base() {
        Heat::Within
    } else {
        Heat::CannotTell
    }
}
