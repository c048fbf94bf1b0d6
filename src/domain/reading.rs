//! What an instrument showed, as it was typed, and what follows for the measurand.

use super::instrument::{Accuracy, Instrument, OwnInstrument, ReadWith};
use super::quantity::{
    Amount, Area, ElectricCurrent, ElectricPotential, ElectricalResistance, Length, Mass, Measurand, Power,
    QuantityKind, ResistancePerLength, ThermodynamicTemperature, Unit,
};
use super::uncertainty::{Correlation, Measured};

/// What stood on the display.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Shown {
    /// A number.
    Value(Amount),
    /// More than the range can show, with the end of the range where it is known (`> 999 MΩ`).
    Above(Amount),
    /// Less than a value (`< 0.01 Ω`).
    Below(Amount),
    /// Over-range with no number: an open circuit (`OL`).
    Open,
}

/// One reading of one instrument.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// What stood on the display.
    pub shown: Shown,
    /// One step of the last digit, as far as the typed digits tell.
    pub step: Amount,
    /// The unit it was typed in, and is said back in.
    pub unit: Unit,
    /// The type of instrument it was read with.
    pub instrument: Instrument,
    /// The very instrument, where somebody named theirs: its accuracy goes before that of its type.
    pub own: Option<OwnInstrument>,
    /// What was typed, untouched.
    pub typed: String,
}

impl Reading {
    /// What it was read with.
    pub fn read_with(&self) -> ReadWith {
        ReadWith { instrument: self.instrument, own: self.own.clone() }
    }

    /// What the instrument may be wrong by.
    pub fn accuracy(&self) -> Accuracy {
        self.own.as_ref().map_or(self.instrument.accuracy(), |own| own.accuracy)
    }

    /// The value with the instrument's standard uncertainty; `None` for anything but a number of the asked quantity.
    ///
    /// The accuracy's half-width and half a step of the display are two rectangular parts (GUM 4.3.7, F.2.2.1).
    pub fn measured<Q: Measurand>(&self) -> Option<Measured<Q>> {
        let Shown::Value(amount) = self.shown else { return None };
        let value: Q = amount.to()?;
        let step = self.step_in_base(Q::KIND)?;
        let accuracy = self.accuracy();
        let (fixed, fixed_unit) = accuracy.fixed;
        let fixed = if fixed_unit.kind() == Q::KIND { difference_in_base(fixed, fixed_unit) } else { 0.0 };
        let half_width = accuracy.of_reading * value.base().abs() + accuracy.digits * step + fixed;
        let u = libm::hypot(half_width / libm::sqrt(3.0), step / libm::sqrt(12.0));
        (is_within_reach(value) && u < FARTHEST).then(|| Measured::new(value, Q::from_base(u)))
    }

    /// How far the errors of two readings go together because one instrument took both: the share of its scale error, the part of
    /// the reading in its accuracy, in the doubt of each (GUM 5.2.4 and F.1.2.3).
    ///
    /// Two readings with instruments of one type count as taken with one instrument on one range. A maker's part of the reading also
    /// holds what differs from value to value, so the true correlation is no larger than this. Readings of different kinds of quantity,
    /// or without a number, have none.
    pub fn correlation_with<Q: Measurand>(&self, other: &Self) -> Correlation {
        if self.instrument != other.instrument || self.own != other.own {
            return Correlation::NONE;
        }
        match (self.share_of_scale::<Q>(), other.share_of_scale::<Q>()) {
            (Some(one), Some(another)) => Correlation::new(one * another),
            _ => Correlation::NONE,
        }
    }

    /// What part of the standard uncertainty is scale error, with the sign of the reading.
    fn share_of_scale<Q: Measurand>(&self) -> Option<f64> {
        let Measured { value, u } = self.measured::<Q>()?;
        let scale = self.accuracy().of_reading * value.base() / libm::sqrt(3.0);
        // A reading without doubt has no scale error either: nought by nought is taken for no correlation.
        Some(scale / u.base())
    }

    /// The instrument's standard uncertainty for this reading; `None` for anything but a number.
    pub fn standard_uncertainty(&self) -> Option<Amount> {
        match self.unit.kind() {
            QuantityKind::Area => self.u_of::<Area>(),
            QuantityKind::Current => self.u_of::<ElectricCurrent>(),
            QuantityKind::Length => self.u_of::<Length>(),
            QuantityKind::Mass => self.u_of::<Mass>(),
            QuantityKind::Potential => self.u_of::<ElectricPotential>(),
            QuantityKind::Power => self.u_of::<Power>(),
            QuantityKind::Resistance => self.u_of::<ElectricalResistance>(),
            QuantityKind::ResistancePerLength => self.u_of::<ResistancePerLength>(),
            QuantityKind::Temperature => self.u_of::<ThermodynamicTemperature>(),
        }
    }

    fn u_of<Q: Measurand>(&self) -> Option<Amount> {
        self.measured::<Q>().map(|measured| measured.u.amount())
    }

    /// Whether the display said there is no path at all.
    pub fn is_open(&self) -> bool {
        matches!(self.shown, Shown::Open)
    }

    /// A value that the measurand is certainly above, where the display said so.
    pub fn above<Q: Measurand>(&self) -> Option<Q> {
        match self.shown {
            Shown::Above(amount) => amount.to().filter(|value: &Q| is_within_reach(*value)),
            Shown::Value(_) | Shown::Below(_) | Shown::Open => None,
        }
    }

    /// A value that the measurand is certainly below, where the display said so.
    pub fn below<Q: Measurand>(&self) -> Option<Q> {
        match self.shown {
            Shown::Below(amount) => amount.to().filter(|value: &Q| is_within_reach(*value)),
            Shown::Value(_) | Shown::Above(_) | Shown::Open => None,
        }
    }

    fn step_in_base(&self, kind: QuantityKind) -> Option<f64> {
        (self.step.kind() == kind).then(|| self.step.in_unit(self.unit).map(|n| difference_in_base(n, self.unit)))?
    }
}

/// More base units of anything than an instrument shows. A number beyond it, written by hand into a file, is no reading.
const FARTHEST: f64 = 1e15;

fn is_within_reach<Q: Measurand>(value: Q) -> bool {
    value.base().abs() < FARTHEST
}

/// A difference of `n` units in base units: unlike a value it knows no zero point.
fn difference_in_base(n: f64, unit: Unit) -> f64 {
    n * unit.step_in_base()
}
