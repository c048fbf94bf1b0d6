//! IEC 60287-1-1 and IEC 60287-2-1:2023, electric cables, calculation of the current rating: materials and loss to still air.
//!
//! Constants read in open calculation packages and public work on CIGRE TB 880; the standard itself was not open on the desk.

use uom::si::electrical_resistivity::ohm_meter;
use uom::si::f64::{ElectricalResistivity, LinearPowerDensity, TemperatureCoefficient, TemperatureInterval};
use uom::si::linear_power_density::watt_per_meter;
use uom::si::temperature_coefficient::per_kelvin;
use uom::si::temperature_interval::kelvin;

use super::{Clause, Provenance};
use crate::domain::quantity::{Length, Measurand};

/// Resistivity and temperature coefficient of metals.
pub const METALS: Clause = Clause::new("IEC 60287-1-1", "2023", "Table 1", Provenance::Read);

/// Thermal resistivity of materials.
pub const THERMAL_RESISTIVITIES: Clause = Clause::new("IEC 60287-2-1", "2023", "Table 1", Provenance::Read);

/// Heat from a cable in free air, out of the sun.
pub const FREE_AIR: Clause = Clause::new("IEC 60287-2-1", "2023", "4.2.1, Table 3", Provenance::Read);

/// Thermal resistivity of polyvinyl chloride for cables up to 3 kV, K·m/W.
const PVC: f64 = 5.0;

/// Table 3, single cable: Z, E and g, for a diameter in metres.
const SINGLE_CABLE: (f64, f64, f64) = (0.21, 3.94, 0.60);

/// Resistivity of copper at 20 °C.
pub fn copper_resistivity() -> ElectricalResistivity {
    ElectricalResistivity::new::<ohm_meter>(1.7241e-8)
}

/// Temperature coefficient of copper's resistance at 20 °C.
pub fn copper_coefficient() -> TemperatureCoefficient {
    TemperatureCoefficient::new::<per_kelvin>(3.93e-3)
}

/// The rise across a ring of polyvinyl chloride of outer and inner diameter with heat `flow` through it: `ρ/(2π) ln(outer/inner)`
/// per watt.
pub fn rise_across_pvc(flow: LinearPowerDensity, outer: Length, inner: Length) -> TemperatureInterval {
    let per_watt = PVC / core::f64::consts::TAU * libm::log(outer.base() / inner.base());
    TemperatureInterval::new::<kelvin>(flow.get::<watt_per_meter>() * per_watt)
}

/// A single horizontal cable in still air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StillAir {
    /// `π D h`, W/(m·K^1.25).
    loss_at_one_kelvin: f64,
}

impl StillAir {
    /// The air around a cable of a diameter: `h = Z/D^g + E`.
    pub fn around(diameter: Length) -> Self {
        let (z, e, g) = SINGLE_CABLE;
        let coefficient = z / libm::pow(diameter.base(), g) + e;
        Self { loss_at_one_kelvin: core::f64::consts::PI * diameter.base() * coefficient }
    }

    /// Heat that the cable gives away while its surface is warmer by `rise`: `π D h rise^1.25`.
    pub fn loss(&self, rise: TemperatureInterval) -> LinearPowerDensity {
        let rise = rise.get::<kelvin>().max(0.0);
        let to_the_power = rise * libm::sqrt(libm::sqrt(rise));
        LinearPowerDensity::new::<watt_per_meter>(self.loss_at_one_kelvin * to_the_power)
    }
}
