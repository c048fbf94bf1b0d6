//! Ratings as they are printed: `13A 250V~`, `10 A 250V~ 2500W MAX`, `220-240V 50/60Hz`.

use super::rating_reader::RatingReader;
use super::{Ingress, Stated};
use crate::domain::quantity::{Area, ElectricCurrent, ElectricPotential, Length, Measurand, Power};

/// A printed rating as far as it could be read.
///
/// Where several currents or powers are printed, the one printed as a maximum or total is taken, else the highest; one that is printed
/// as "each" or "per socket" only where there is no other. What a fuse or a USB output states is kept apart and is never the product's.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Rating {
    /// Voltage, lowest and highest (equal where one is printed): the one beside the current where there are several.
    pub voltage: Option<(Stated<ElectricPotential>, Stated<ElectricPotential>)>,
    /// Current.
    pub current: Option<Stated<ElectricCurrent>>,
    /// Power; apparent power in VA counts too.
    pub power: Option<Stated<Power>>,
    /// Whether the power is printed as a maximum.
    pub power_is_maximum: bool,
    /// Length of the flex: the first in metric units, else the first in feet.
    pub length: Option<Stated<Length>>,
    /// Cross-section of a core.
    pub area: Option<Stated<Area>>,
    /// How many cores the flex has, and whether one of them is an earth: `3G1.5` says so, other print does not tell.
    pub cores: Option<(u8, Option<bool>)>,
    /// Supply frequencies.
    pub frequencies: Vec<Hertz>,
    /// The flex's own rated voltage, such as 300/500 V.
    pub flex_voltage: Option<(Stated<ElectricPotential>, Stated<ElectricPotential>)>,
    /// Rating of the fuse that is fitted or asked for.
    pub fuse: Option<Stated<ElectricCurrent>>,
    /// Outputs at extra-low voltage, such as USB.
    pub outputs: Vec<Output>,
    /// Protection against ingress, such as IP44.
    pub ingress: Option<Ingress>,
    /// Numbers of standards, as they are printed.
    pub standards: Vec<String>,
    /// Pieces that could not be read, as they were printed.
    pub unread: Vec<String>,
}

/// A frequency in hertz.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Hertz(pub u32);

/// An output at extra-low voltage.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Output {
    /// Voltage, lowest and highest.
    pub voltage: Option<(Stated<ElectricPotential>, Stated<ElectricPotential>)>,
    /// Current.
    pub current: Option<Stated<ElectricCurrent>>,
    /// Power.
    pub power: Option<Stated<Power>>,
}

impl Rating {
    /// Reads a printed rating.
    pub fn parse(printed: &str) -> Self {
        RatingReader::new(printed).read()
    }

    /// Whether nothing of a rating could be read.
    pub fn says_nothing(&self) -> bool {
        let bare = Self { standards: self.standards.clone(), unread: self.unread.clone(), ..Self::default() };
        *self == bare
    }

    /// The most that volts times amperes allow, every digit read as coarsely as it may be; `None` unless both are printed.
    pub fn watts_allowed(&self) -> Option<Power> {
        let (_, volts) = self.voltage?;
        Some(volts.highest() * self.current?.highest())
    }

    /// Whether the power exceeds what volts times amperes allow, in every reading of the digits.
    pub fn is_impossible(&self) -> Option<bool> {
        Some(self.power?.lowest().base() > self.watts_allowed()?.base())
    }
}
