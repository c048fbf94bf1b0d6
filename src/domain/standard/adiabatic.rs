//! IEC 60949 and BS 7671 Tables 43.1 and 54.2 to 54.4: heat that stays in a conductor for the few moments of a fault.
//!
//! Heat capacities and resistivities read in secondary copies; melting points of the metals are general knowledge (memory-high;
//! mild steel melts somewhere between 1420 °C and 1500 °C, memory-medium). Nothing leaves the conductor: no heat, no arc, no rise
//! of the loop's resistance; all of these make the true time longer. Not valid beyond about five seconds.

use uom::si::electrical_resistivity::ohm_meter;
use uom::si::f64::{ElectricalResistivity, Time};
use uom::si::time::second;

use super::{Clause, Provenance};
use crate::domain::quantity::{
    Area, ElectricCurrent, Measurand, ThermodynamicTemperature, Unit, degrees_celsius, square_millimetres,
};

/// The closed form of the adiabatic law.
pub const LAW: Clause = Clause::new("IEC 60949", "1988", "3", Provenance::Read);

/// The printed constants, such as 115 for copper in a flex of polyvinyl chloride.
pub const TABLES: Clause = Clause::new("BS 7671", "2018+A2", "Tables 43.1, 54.2 to 54.4", Provenance::Read);

/// A metal that the law has constants for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Melts {
    /// Copper.
    Copper,
    /// Aluminium.
    Aluminium,
    /// Mild steel.
    Steel,
}

impl Melts {
    /// Every metal.
    pub const ALL: [Self; 3] = [Self::Copper, Self::Aluminium, Self::Steel];

    /// Resistivity at 20 °C.
    pub fn resistivity(self) -> ElectricalResistivity {
        ElectricalResistivity::new::<ohm_meter>(self.constants().resistivity * 1e-3)
    }

    /// The temperature at which it melts.
    pub fn melts_at(self) -> ThermodynamicTemperature {
        degrees_celsius(self.constants().melts)
    }

    const fn constants(self) -> Constants {
        match self {
            Self::Copper => Constants { heat: 3.45e-3, beta: 234.5, resistivity: 17.241e-6, melts: 1085.0 },
            Self::Aluminium => Constants { heat: 2.5e-3, beta: 228.0, resistivity: 28.264e-6, melts: 660.0 },
            Self::Steel => Constants { heat: 3.8e-3, beta: 202.0, resistivity: 138e-6, melts: 1470.0 },
        }
    }
}

struct Constants {
    /// Heat capacity, J/(K·mm³).
    heat: f64,
    /// Reciprocal of the temperature coefficient at 0 °C, °C.
    beta: f64,
    /// Resistivity at 20 °C, Ω·mm.
    resistivity: f64,
    /// Melting point, °C.
    melts: f64,
}

/// The constant `k` of the adiabatic law `k² S² = I² t`.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Withstand(f64);

impl Withstand {
    /// Copper in a flex of PVC, Table 54.3. The 143 of a conductor that lies apart (Table 54.2) never holds inside a flex.
    pub const COPPER_IN_FLEX: Self = Self(115.0);
    /// Aluminium in a flex of PVC (memory-high).
    pub const ALUMINIUM_IN_FLEX: Self = Self(76.0);
    /// Steel in a flex of PVC (memory-high).
    pub const STEEL_IN_FLEX: Self = Self(42.0);

    /// A printed constant, in A·√s/mm².
    pub const fn printed(k: f64) -> Self {
        Self(k)
    }

    /// The constant of a metal between two temperatures: `√(Qc (B + 20)/ρ20 · ln((B + end)/(B + start)))`.
    pub fn between(metal: Melts, start: ThermodynamicTemperature, end: ThermodynamicTemperature) -> Self {
        let Constants { heat, beta, resistivity, .. } = metal.constants();
        let celsius = |t: ThermodynamicTemperature| t.amount().in_unit(Unit::DegreeCelsius).unwrap_or(20.0);
        let ratio = ((beta + celsius(end)) / (beta + celsius(start))).max(1.0);
        Self(libm::sqrt(heat * (beta + 20.0) / resistivity * libm::log(ratio)))
    }

    /// The constant in A·√s/mm², as it is printed.
    pub const fn in_printed_unit(self) -> f64 {
        self.0
    }

    /// The least area that bears `current` for `time`.
    pub fn least_area(self, current: ElectricCurrent, time: Time) -> Area {
        square_millimetres(current.base() * libm::sqrt(time.get::<second>().max(0.0)) / self.0)
    }

    /// How long an area bears `current`.
    pub fn time(self, area: Area, current: ElectricCurrent) -> Time {
        let area = area.amount().in_unit(Unit::SquareMillimetre).unwrap_or(0.0);
        let root = self.0 * area / current.base();
        Time::new::<second>(root * root)
    }
}
