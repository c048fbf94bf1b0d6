//! Ratings as they are printed: `13A 250V~`, `10 A 250V~ 2500W MAX`, `220-240V 50/60Hz`.

use crate::domain::quantity::{Area, ElectricCurrent, ElectricPotential, Length, Power};

/// A printed value and one step of its last printed digit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stated<Q> {
    /// The value.
    pub value: Q,
    /// One step of the last digit.
    pub step: Q,
}

/// A printed rating as far as it could be read.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Rating {
    /// Voltage, lowest and highest (equal where one is printed).
    pub voltage: Option<(Stated<ElectricPotential>, Stated<ElectricPotential>)>,
    /// Current.
    pub current: Option<Stated<ElectricCurrent>>,
    /// Power.
    pub power: Option<Stated<Power>>,
    /// Whether the power is printed as a maximum.
    pub power_is_maximum: bool,
    /// Length of the flex.
    pub length: Option<Stated<Length>>,
    /// Cross-section of a core.
    pub area: Option<Stated<Area>>,
    /// Pieces that could not be read, as they were printed.
    pub unread: Vec<String>,
}

impl Rating {
    /// Reads a printed rating.
    pub fn parse(printed: &str) -> Self {
        Self { unread: vec![printed.to_owned()], ..Self::default() }
    }
}
