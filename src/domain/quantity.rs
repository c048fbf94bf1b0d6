//! The quantities we measure, and the units a person may pick for each.
//!
//! Arithmetic is done in uom types, so that volts divided by amperes can be nothing but ohms. Where values of several kinds meet
//! (evidence, answers), an [`Amount`] keeps the kind as data.

use uom::si::{ISQ, Quantity, SI};
use uom::typenum::{N2, N3, P1, Z0};

pub use uom::si::f64::{
    Area, ElectricCurrent, ElectricPotential, ElectricalResistance, Length, Mass, Power, ThermodynamicTemperature,
};

/// Resistance of a core over its length; base unit Ω/m.
pub type ResistancePerLength = Quantity<ISQ<P1, P1, N3, N2, Z0, Z0, Z0>, SI<f64>, f64>;

/// What sort of quantity a value is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum QuantityKind {
    /// Cross-sectional area, base unit m².
    Area,
    /// Electric current, base unit A.
    Current,
    /// Length, base unit m.
    Length,
    /// Mass, base unit kg.
    Mass,
    /// Electric potential, base unit V.
    Potential,
    /// Power, base unit W.
    Power,
    /// Resistance, base unit Ω.
    Resistance,
    /// Resistance per length, base unit Ω/m.
    ResistancePerLength,
    /// Temperature, base unit K.
    Temperature,
}

/// A quantity that can be read, limited and judged.
///
/// `base` and `from_base` are the only doors between typed quantities and plain numbers.
pub trait Measurand: Copy + PartialOrd {
    /// The kind of quantity.
    const KIND: QuantityKind;
    /// The quantity whose value in its base unit is `base`.
    fn from_base(base: f64) -> Self;
    /// The value in the base unit.
    fn base(self) -> f64;

    /// The same quantity with its kind kept as data.
    fn amount(self) -> Amount {
        Amount { kind: Self::KIND, base: self.base() }
    }
}

macro_rules! measurands {
    ($($quantity:ty => $kind:ident),* $(,)?) => {$(
        impl Measurand for $quantity {
            const KIND: QuantityKind = QuantityKind::$kind;
            fn from_base(base: f64) -> Self {
                Self { dimension: core::marker::PhantomData, units: core::marker::PhantomData, value: base }
            }
            fn base(self) -> f64 {
                self.value
            }
        }
    )*};
}

measurands! {
    Area => Area,
    ElectricCurrent => Current,
    Length => Length,
    Mass => Mass,
    ElectricPotential => Potential,
    Power => Power,
    ElectricalResistance => Resistance,
    ResistancePerLength => ResistancePerLength,
    ThermodynamicTemperature => Temperature,
}

/// A value of any kind of quantity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Amount {
    kind: QuantityKind,
    base: f64,
}

impl Amount {
    /// `value` of `unit`.
    pub fn new(value: f64, unit: Unit) -> Self {
        Self { kind: unit.kind(), base: unit.to_base(value) }
    }

    /// The kind of quantity.
    pub const fn kind(self) -> QuantityKind {
        self.kind
    }

    /// The number that stands beside `unit`; `None` where the unit belongs to another kind of quantity.
    pub fn in_unit(self, unit: Unit) -> Option<f64> {
        (unit.kind() == self.kind).then(|| unit.of_base(self.base))
    }

    /// The number beside `unit` for an amount that is a difference, such as an uncertainty: unlike a value it knows no zero point.
    pub fn difference_in(self, unit: Unit) -> Option<f64> {
        (unit.kind() == self.kind).then(|| self.base * unit.per_base())
    }

    /// The typed quantity, if it is of that kind.
    pub fn to<Q: Measurand>(self) -> Option<Q> {
        (Q::KIND == self.kind).then(|| Q::from_base(self.base))
    }
}

/// A unit that a value may be typed, stored or shown in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Unit {
    /// A
    Ampere,
    /// °C
    DegreeCelsius,
    /// g
    Gram,
    /// kΩ
    Kilohm,
    /// kg
    Kilogram,
    /// kW
    Kilowatt,
    /// MΩ
    Megohm,
    /// m
    Metre,
    /// mA
    Milliampere,
    /// mm
    Millimetre,
    /// mΩ
    Milliohm,
    /// cm
    Centimetre,
    /// GΩ
    Gigohm,
    /// Ω
    Ohm,
    /// Ω/km
    OhmPerKilometre,
    /// mm²
    SquareMillimetre,
    /// V
    Volt,
    /// W
    Watt,
}

impl Unit {
    /// Every unit.
    pub const ALL: [Self; 18] = [
        Self::Ampere,
        Self::DegreeCelsius,
        Self::Gram,
        Self::Kilohm,
        Self::Kilogram,
        Self::Kilowatt,
        Self::Megohm,
        Self::Metre,
        Self::Milliampere,
        Self::Millimetre,
        Self::Milliohm,
        Self::Centimetre,
        Self::Gigohm,
        Self::Ohm,
        Self::OhmPerKilometre,
        Self::SquareMillimetre,
        Self::Volt,
        Self::Watt,
    ];

    /// The kind of quantity the unit measures.
    pub const fn kind(self) -> QuantityKind {
        match self {
            Self::Ampere | Self::Milliampere => QuantityKind::Current,
            Self::DegreeCelsius => QuantityKind::Temperature,
            Self::Gram | Self::Kilogram => QuantityKind::Mass,
            Self::Milliohm | Self::Ohm | Self::Kilohm | Self::Megohm | Self::Gigohm => QuantityKind::Resistance,
            Self::Millimetre | Self::Centimetre | Self::Metre => QuantityKind::Length,
            Self::OhmPerKilometre => QuantityKind::ResistancePerLength,
            Self::SquareMillimetre => QuantityKind::Area,
            Self::Volt => QuantityKind::Potential,
            Self::Watt | Self::Kilowatt => QuantityKind::Power,
        }
    }

    /// The unit's symbol as printed beside a number (SI Brochure, 9th edition).
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Ampere => "A",
            Self::DegreeCelsius => "°C",
            Self::Gram => "g",
            Self::Kilohm => "kΩ",
            Self::Kilogram => "kg",
            Self::Kilowatt => "kW",
            Self::Megohm => "MΩ",
            Self::Metre => "m",
            Self::Milliampere => "mA",
            Self::Millimetre => "mm",
            Self::Milliohm => "mΩ",
            Self::Centimetre => "cm",
            Self::Gigohm => "GΩ",
            Self::Ohm => "Ω",
            Self::OhmPerKilometre => "Ω/km",
            Self::SquareMillimetre => "mm²",
            Self::Volt => "V",
            Self::Watt => "W",
        }
    }

    /// How many of the unit make one base unit; division by it keeps decimal values such as 1.5 mm² exact to the last digit.
    const fn per_base(self) -> f64 {
        match self {
            Self::Milliampere | Self::Gram | Self::Milliohm | Self::Millimetre | Self::OhmPerKilometre => 1e3,
            Self::Centimetre => 1e2,
            Self::SquareMillimetre => 1e6,
            Self::Kilohm | Self::Kilowatt => 1e-3,
            Self::Megohm => 1e-6,
            Self::Gigohm => 1e-9,
            Self::Ampere | Self::DegreeCelsius | Self::Kilogram | Self::Metre | Self::Ohm | Self::Volt | Self::Watt => {
                1.0
            }
        }
    }

    /// How large one unit is in base units, as a difference.
    pub fn step_in_base(self) -> f64 {
        1.0 / self.per_base()
    }

    /// What zero of the unit is in base units.
    const fn zero(self) -> f64 {
        if matches!(self, Self::DegreeCelsius) { 273.15 } else { 0.0 }
    }

    fn to_base(self, value: f64) -> f64 {
        value / self.per_base() + self.zero()
    }

    fn of_base(self, base: f64) -> f64 {
        (base - self.zero()) * self.per_base()
    }
}

/// Ohms.
pub fn ohms(value: f64) -> ElectricalResistance {
    ElectricalResistance::from_base(value)
}

/// Ohms per kilometre, the unit of IEC 60228.
pub fn ohms_per_kilometre(value: f64) -> ResistancePerLength {
    ResistancePerLength::from_base(value / 1e3)
}

/// Millimetres.
pub fn millimetres(value: f64) -> Length {
    Length::from_base(value / 1e3)
}

/// Metres.
pub fn metres(value: f64) -> Length {
    Length::from_base(value)
}

/// Square millimetres.
pub fn square_millimetres(value: f64) -> Area {
    Area::from_base(value / 1e6)
}

/// Amperes.
pub fn amperes(value: f64) -> ElectricCurrent {
    ElectricCurrent::from_base(value)
}

/// Volts.
pub fn volts(value: f64) -> ElectricPotential {
    ElectricPotential::from_base(value)
}

/// Watts.
pub fn watts(value: f64) -> Power {
    Power::from_base(value)
}

/// Degrees Celsius.
pub fn degrees_celsius(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::from_base(Unit::DegreeCelsius.to_base(value))
}
