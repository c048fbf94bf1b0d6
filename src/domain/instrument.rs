//! Instruments by type, and what their accuracy makes of a reading.
//!
//! Accuracies are those of ordinary instruments of each type, given as half-widths of a rectangular distribution
//! (values of the trade, `memory-medium`); no maker's data sheet stands behind them.

use super::quantity::{ElectricalResistance, Measurand, Unit};
use super::standard::practice;

/// A type of instrument.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Instrument {
    /// A continuity tester that lights or beeps.
    ContinuityTester,
    /// Digital calliper, 0.01 mm steps.
    DigitalCalliper,
    /// A wound-coil or electronic tester for the earth path, a few milliohm of resolution, leads nulled.
    EarthPathTester,
    /// A hand multimeter with two leads, their resistance not taken off.
    HandMeter,
    /// A hand multimeter with two leads, their resistance taken off (nulled).
    HandMeterNulled,
    /// An insulation tester, 250 V or 500 V d.c.
    InsulationTester,
    /// A portable-appliance tester or meter for touch current, through the network of a body.
    LeakageMeter,
    /// A four-wire milliohm meter.
    FourWireMeter,
    /// A steel rule, 1 mm or 0.5 mm steps.
    Rule,
    /// Scales for letters or kitchen, 1 g steps or finer.
    Scale,
    /// A tape measure.
    Tape,
    /// A thermometer in the room.
    Thermometer,
    /// Vernier calliper, 0.05 mm steps.
    VernierCalliper,
}

/// Somebody's own instrument of a type: what they call it, and what its maker says of it.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnInstrument {
    /// What its owner calls it.
    pub name: String,
    /// What it may be wrong by, as its maker states it.
    pub accuracy: Accuracy,
}

/// What a reading was taken with: an instrument of a type, or somebody's own.
#[derive(Debug, Clone, PartialEq)]
pub struct ReadWith {
    /// The type.
    pub instrument: Instrument,
    /// The very instrument, where its owner named it.
    pub own: Option<OwnInstrument>,
}

impl ReadWith {
    /// What tells it from every other: the code of the type, and the name of an own one.
    pub fn key(&self) -> String {
        self.own
            .as_ref()
            .map_or_else(|| self.instrument.code().to_owned(), |own| format!("{} {}", self.instrument.code(), own.name))
    }
}

/// The half-width of what an instrument may be wrong by: part of the reading, steps of its last digit, and a fixed amount.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Accuracy {
    /// Part of the reading, as a fraction.
    pub of_reading: f64,
    /// So many steps of the last digit.
    pub digits: f64,
    /// A fixed amount that comes on top, and its unit.
    pub fixed: (f64, Unit),
}

impl Instrument {
    /// Every type of instrument.
    pub const ALL: [Self; 13] = [
        Self::ContinuityTester,
        Self::DigitalCalliper,
        Self::EarthPathTester,
        Self::HandMeter,
        Self::HandMeterNulled,
        Self::InsulationTester,
        Self::LeakageMeter,
        Self::FourWireMeter,
        Self::Rule,
        Self::Scale,
        Self::Tape,
        Self::Thermometer,
        Self::VernierCalliper,
    ];

    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::ContinuityTester => "continuity-tester",
            Self::DigitalCalliper => "digital-calliper",
            Self::EarthPathTester => "earth-path-tester",
            Self::HandMeter => "hand-meter",
            Self::HandMeterNulled => "hand-meter-nulled",
            Self::InsulationTester => "insulation-tester",
            Self::LeakageMeter => "leakage-meter",
            Self::FourWireMeter => "four-wire-meter",
            Self::Rule => "rule",
            Self::Scale => "scale",
            Self::Tape => "tape",
            Self::Thermometer => "thermometer",
            Self::VernierCalliper => "vernier-calliper",
        }
    }

    /// What the instrument may be wrong by.
    pub const fn accuracy(self) -> Accuracy {
        match self {
            Self::ContinuityTester => Accuracy { of_reading: 0.0, digits: 0.0, fixed: (0.0, Unit::Ohm) },
            Self::DigitalCalliper => Accuracy { of_reading: 0.0, digits: 0.0, fixed: (0.02, Unit::Millimetre) },
            Self::EarthPathTester => Accuracy { of_reading: 0.03, digits: 3.0, fixed: (0.0, Unit::Ohm) },
            Self::HandMeter | Self::HandMeterNulled => {
                Accuracy { of_reading: 0.008, digits: 3.0, fixed: (0.0, Unit::Ohm) }
            }
            Self::InsulationTester | Self::LeakageMeter => {
                Accuracy { of_reading: 0.05, digits: 3.0, fixed: (0.0, Unit::Ohm) }
            }
            Self::FourWireMeter => Accuracy { of_reading: 0.002, digits: 2.0, fixed: (0.1, Unit::Milliohm) },
            Self::Rule => Accuracy { of_reading: 0.0, digits: 0.0, fixed: (1.0, Unit::Millimetre) },
            Self::Scale => Accuracy { of_reading: 0.002, digits: 1.0, fixed: (0.0, Unit::Gram) },
            Self::Tape => Accuracy { of_reading: 0.002, digits: 0.0, fixed: (5.0, Unit::Millimetre) },
            Self::Thermometer => Accuracy { of_reading: 0.0, digits: 0.0, fixed: (2.0, Unit::DegreeCelsius) },
            Self::VernierCalliper => Accuracy { of_reading: 0.0, digits: 0.0, fixed: (0.05, Unit::Millimetre) },
        }
    }

    /// Resistance of test leads that a reading may still carry, at most.
    ///
    /// Leads of a hand meter have 0.1 Ω to 0.3 Ω (common practice). Such a reading can condemn a short lead but never clear it.
    pub fn leads_at_most(self) -> ElectricalResistance {
        if matches!(self, Self::HandMeter) { practice::test_leads() } else { ElectricalResistance::from_base(0.0) }
    }
}
