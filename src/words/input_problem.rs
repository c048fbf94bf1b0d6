//! Why what was typed is no reading, and how to type it.

use super::number::in_unit;
use crate::domain::quantity::{Amount, QuantityKind, Unit};

/// What was typed is no reading. Each keeps what was typed, untouched.
#[derive(Debug, Clone, PartialEq)]
pub enum InputProblem {
    /// Nothing was typed.
    Empty,
    /// A number that reads as a thousand times more or less.
    AmbiguousSeparators {
        /// What was typed.
        typed: String,
    },
    /// Below zero, of something that cannot be.
    Negative {
        /// What was typed.
        typed: String,
        /// What was asked.
        asked: QuantityKind,
        /// What it reads as.
        value: Amount,
        /// The unit it was typed in.
        unit: Unit,
    },
    /// No chance between nought and certain.
    NoChance {
        /// What was typed.
        typed: String,
    },
    /// Over-range, of something that an instrument shows a number for.
    NoOverRange {
        /// What was typed.
        typed: String,
        /// What was asked.
        asked: QuantityKind,
    },
    /// A number of things that is no whole number.
    NotACount {
        /// What was typed.
        typed: String,
    },
    /// No number.
    NotANumber {
        /// What was typed.
        typed: String,
    },
    /// Zero or less, of something that is always more.
    NotMoreThanZero {
        /// What was typed.
        typed: String,
        /// What was asked.
        asked: QuantityKind,
        /// What it reads as.
        value: Amount,
        /// The unit it was typed in.
        unit: Unit,
    },
    /// A unit of another quantity.
    OtherQuantity {
        /// What was typed.
        typed: String,
        /// What was asked.
        asked: QuantityKind,
        /// The unit that was typed.
        unit: Unit,
    },
    /// More than any instrument of this trade shows.
    OutOfReach {
        /// What was typed.
        typed: String,
        /// What was asked.
        asked: QuantityKind,
        /// What it reads as.
        value: Amount,
        /// The unit it was typed in.
        unit: Unit,
    },
    /// A number of things outside what can be.
    OutsideCount {
        /// What was typed.
        typed: String,
        /// The smallest number.
        least: u8,
        /// The largest number.
        most: u8,
    },
    /// Colder than anything can be.
    TooCold {
        /// What was typed.
        typed: String,
    },
    /// More than any value needs.
    TooLong {
        /// What was typed.
        typed: String,
    },
    /// More than one number.
    TwoNumbers {
        /// What was typed.
        typed: String,
    },
    /// A unit that is not known.
    UnknownUnit {
        /// What was typed.
        typed: String,
        /// What was asked.
        asked: QuantityKind,
        /// The part of it that was taken for a unit.
        unit: String,
    },
}

impl InputProblem {
    /// What was typed, untouched.
    pub fn typed(&self) -> &str {
        match self {
            Self::Empty => "",
            Self::AmbiguousSeparators { typed }
            | Self::Negative { typed, .. }
            | Self::NoChance { typed }
            | Self::NoOverRange { typed, .. }
            | Self::NotACount { typed }
            | Self::NotANumber { typed }
            | Self::NotMoreThanZero { typed, .. }
            | Self::OtherQuantity { typed, .. }
            | Self::OutOfReach { typed, .. }
            | Self::OutsideCount { typed, .. }
            | Self::TooCold { typed }
            | Self::TooLong { typed }
            | Self::TwoNumbers { typed }
            | Self::UnknownUnit { typed, .. } => typed,
        }
    }

    /// What is wrong: names the thing, what came and what is allowed.
    pub fn message(&self) -> String {
        match self {
            Self::Empty => "nothing is typed".to_owned(),
            Self::AmbiguousSeparators { typed } => format!("{typed} could be two different numbers"),
            Self::Negative { asked, value, unit, .. } => {
                format!("{} cannot be less than zero, got {}", noun(*asked), in_unit(*value, *unit))
            }
            Self::NoChance { typed } => {
                format!("a chance must be more than nought and no more than certain, got {typed}")
            }
            Self::NoOverRange { typed, asked } => format!("{} must be a number, got {typed}", noun(*asked)),
            Self::NotACount { typed } => format!("this must be a whole number, got {typed}"),
            Self::NotANumber { typed } => format!("this must be a number, got {typed}"),
            Self::NotMoreThanZero { asked, value, unit, .. } => {
                format!("{} must be more than zero, got {}", noun(*asked), in_unit(*value, *unit))
            }
            Self::OtherQuantity { asked, unit, .. } => {
                format!("this is {}, got {} ({})", noun(*asked), unit.symbol(), noun(unit.kind()))
            }
            Self::OutOfReach { asked, value, unit, .. } => {
                format!("no instrument shows a {} of {}", noun(*asked), in_unit(*value, *unit))
            }
            Self::OutsideCount { typed, least, most } => format!("this must be from {least} to {most}, got {typed}"),
            Self::TooCold { typed } => format!("nothing is colder than \u{2212}273.15\u{A0}°C, got {typed}"),
            Self::TooLong { .. } => "this is longer than any reading".to_owned(),
            Self::TwoNumbers { typed } => format!("this must be one number, got {typed}"),
            Self::UnknownUnit { asked, unit, .. } => format!("{unit} is no unit of {} known here", noun(*asked)),
        }
    }

    /// How to put it right.
    pub const fn hint(&self) -> &'static str {
        match self {
            Self::Empty => "Type what the display shows.",
            Self::AmbiguousSeparators { .. } => {
                "Type the number with one point and nothing between thousands: 1234.5, or 1.2345."
            }
            Self::Negative { .. } => "If the leads were nulled, hold their tips together and null them again.",
            Self::NoChance { .. } => "Type it such as 1/100, 1 in 100, 0.01 or 1 %.",
            Self::NoOverRange { .. } => "Choose a larger range and read again.",
            Self::NotACount { .. } => "Count them and type the number, such as 4.",
            Self::NotANumber { .. } => {
                "Type a number such as 0.37, with or without its unit; OL where a resistance is over range."
            }
            Self::NotMoreThanZero { .. } => "Zero the instrument and read again.",
            Self::OtherQuantity { .. } => "Check which reading this is, or leave the unit away and tap it.",
            Self::OutOfReach { .. } => "Look at the unit again.",
            Self::OutsideCount { .. } => "Count again.",
            Self::TooCold { .. } => "Type the temperature in degrees Celsius.",
            Self::TooLong { .. } => "Type only the number and its unit.",
            Self::TwoNumbers { .. } => "Type one value in one unit: 1.2 m, not 1 m 20.",
            Self::UnknownUnit { .. } => "Leave the unit away and tap it.",
        }
    }
}

/// The name of a quantity.
pub const fn noun(kind: QuantityKind) -> &'static str {
    match kind {
        QuantityKind::Area => "cross-section",
        QuantityKind::Current => "current",
        QuantityKind::Length => "length",
        QuantityKind::Mass => "mass",
        QuantityKind::Potential => "voltage",
        QuantityKind::Power => "power",
        QuantityKind::Resistance => "resistance",
        QuantityKind::ResistancePerLength => "resistance per length",
        QuantityKind::Temperature => "temperature",
    }
}
