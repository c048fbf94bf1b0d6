//! A piece of known wire read with the same meter: whether it reads what it should, and what could explain that it does not.
//!
//! Source: resistivities as in `metal`; wire gauges after ASTM B258. Each explanation on the list counts as equally likely beforehand,
//! each gauge as one of its own: a convention. The meter's scale may be wrong by 1 to 5 times and the length by half to 5 times, any
//! factor as likely as another.
//!
//! What it cannot tell: the ranking hangs on this list and on those chances. What does not hang on them: where reading and expectation
//! are apart, something that was said of the wire, its length or the meter is wrong.

use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

use super::conductor::SelfCheck;
use super::metal::Metal;
use super::signs::likeliest_first;
use crate::domain::decision::Probability;
use crate::domain::quantity::{Area, ElectricalResistance, Length, Measurand, Unit, millimetres};
use crate::domain::standard::awg;
use crate::domain::uncertainty::Measured;

/// A stated size is a name: sound copper that bears it may have 13 % to 16 % more resistance than so much area (IEC 60228 class 5,
/// derived), two standard deviations. It is granted to what is as said, and not to other metals.
const OF_A_NAME: f64 = 0.08;

/// The gauges that wires at hand have (usual practice).
const GAUGES: [u8; 8] = [16, 18, 20, 22, 24, 26, 28, 30];

/// Metals that are sold as copper wire, or look like it.
const METALS: [(Metal, Cause); 7] = [
    (Metal::CladAluminium15, Cause::Aluminium),
    (Metal::Aluminium, Cause::Aluminium),
    (Metal::CladSteel40, Cause::CladSteel),
    (Metal::CladSteel30, Cause::CladSteel),
    (Metal::CladSteel21, Cause::CladSteel),
    (Metal::Steel, Cause::CladSteel),
    (Metal::Brass, Cause::Brass),
];

/// A resistance in series that is no longer a matter of clips, Ω: anywhere between these.
const SERIES: (f64, f64) = (0.02, 0.08);

/// What is known of the wire, beside its metal, which is said to be copper.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Size {
    /// What is said of it.
    Stated(Area),
    /// Its area after a calliper.
    Measured(Measured<Area>),
}

/// A piece of known wire and its reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reference {
    /// Its size.
    pub size: Size,
    /// Its length.
    pub length: Measured<Length>,
    /// Its resistance at 20 °C.
    pub read: Measured<ElectricalResistance>,
    /// What clips may add to any reading of this meter.
    pub clips: Measured<ElectricalResistance>,
}

/// What may be behind a reading that is not what it should be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cause {
    /// Nothing but the doubt there is.
    AsSaid,
    /// The wire is thinner than is said.
    Thinner,
    /// It is copper-clad steel, or steel.
    CladSteel,
    /// It is copper-clad aluminium, or aluminium.
    Aluminium,
    /// It is brass.
    Brass,
    /// The meter's scale is wrong.
    Scale,
    /// The length is wrong.
    Length,
    /// Something in series, far more than clips.
    Series,
}

impl Cause {
    const ALL: [Self; 8] = [
        Self::AsSaid,
        Self::Thinner,
        Self::CladSteel,
        Self::Aluminium,
        Self::Brass,
        Self::Scale,
        Self::Length,
        Self::Series,
    ];
}

impl Reference {
    /// What copper of this size and length would read, and what was read; clips count as doubt.
    pub fn check(&self) -> SelfCheck {
        let (area, of_size) = self.area();
        let copper = self.of(Metal::Copper, area);
        let relative =
            [of_size, self.of_length(), Metal::Copper.spread().get::<ratio>()].into_iter().fold(0.0, libm::hypot);
        let clips = self.clips.value.base().abs() / 2.0 + self.clips.u.base();
        let u = libm::hypot(relative * copper.base(), clips);
        SelfCheck { expected: Measured::new(copper, ElectricalResistance::from_base(u)), read: self.read }
    }

    /// How many times what it should read it reads.
    pub fn factor(&self) -> Ratio {
        self.read.value / self.check().expected.value
    }

    /// Every explanation, the likeliest first.
    pub fn ranked(&self) -> Vec<(Cause, Probability)> {
        let (area, of_size) = self.area();
        let copper = self.of(Metal::Copper, area).base();
        let spread = Metal::Copper.spread().get::<ratio>();
        let mut weights = vec![(Cause::AsSaid, self.near(copper, libm::hypot(spread, of_size)))];
        if let Size::Stated(stated) = self.size {
            let millimetre = |mm2: f64| millimetres(mm2) * millimetres(mm2) * core::f64::consts::FRAC_PI_4;
            let as_diameter = stated.amount().in_unit(Unit::SquareMillimetre).map(millimetre);
            let sizes = GAUGES.into_iter().filter_map(awg::area).chain(as_diameter).filter(|size| *size < 0.9 * stated);
            weights.extend(sizes.map(|size| (Cause::Thinner, self.near(self.of(Metal::Copper, size).base(), spread))));
        }
        let measured = if matches!(self.size, Size::Measured(_)) { of_size } else { 0.0 };
        weights.extend(METALS.map(|(metal, cause)| {
            (cause, self.near(self.of(metal, area).base(), libm::hypot(metal.spread().get::<ratio>(), measured)))
        }));
        weights.push((Cause::Scale, self.within(copper, 5.0 * copper, self.clips.value.base())));
        weights.push((Cause::Length, self.within(0.5 * copper, 5.0 * copper, self.clips.value.base())));
        // The cores joined tell the resistance in series too: the further off it is, the less it explains.
        let (least, most) = SERIES;
        let off = (self.read.value.base() - copper - self.clips.value.base()) / self.clips.u.base();
        weights.push((Cause::Series, self.within(least, most, copper) * libm::exp(-0.5 * off * off)));
        let total: f64 = weights.iter().map(|(_, weight)| weight).sum();
        let of_cause =
            |cause: Cause| weights.iter().filter(|(of, _)| *of == cause).map(|(_, weight)| weight).sum::<f64>();
        let mut ranked = Cause::ALL.map(|cause| (cause, Probability::new(of_cause(cause) / total))).to_vec();
        likeliest_first(&mut ranked, |(_, share)| share.value());
        ranked
    }

    /// The area as said or measured, and its relative standard uncertainty.
    fn area(&self) -> (Area, f64) {
        match self.size {
            Size::Stated(area) => (area, OF_A_NAME),
            Size::Measured(area) => (area.value, area.u.base() / area.value.base()),
        }
    }

    fn of_length(&self) -> f64 {
        self.length.u.base() / self.length.value.base()
    }

    fn of(&self, metal: Metal, area: Area) -> ElectricalResistance {
        metal.resistivity() * self.length.value / area
    }

    /// The density of the reading, clips and all, where `expected` is known within a part (1/√2π left out, as in [`Self::within`]).
    fn near(&self, expected: f64, relative: f64) -> f64 {
        let of_clips = libm::hypot(self.clips.u.base(), self.read.u.base());
        let deviation = libm::hypot(of_clips, expected * libm::hypot(relative, self.of_length()));
        let z = (self.read.value.base() - expected - self.clips.value.base()) / deviation;
        libm::exp(-0.5 * z * z) / deviation
    }

    /// The same where anything between two values is as likely as another, on top of `beside`.
    fn within(&self, least: f64, most: f64, beside: f64) -> f64 {
        let value = self.read.value.base() - beside;
        if least <= value && value <= most { libm::sqrt(core::f64::consts::TAU) / (most - least) } else { 0.0 }
    }
}
