//! The names of instruments, by type and never by brand.

use crate::domain::instrument::{Accuracy, Instrument, ReadWith};

use super::number;

/// The name of an instrument.
pub const fn name(instrument: Instrument) -> &'static str {
    match instrument {
        Instrument::ContinuityTester => "a continuity tester",
        Instrument::DigitalCalliper => "a digital calliper",
        Instrument::EarthPathTester => "an earth path tester, leads subtracted",
        Instrument::HandMeter => "a hand meter, leads not subtracted",
        Instrument::HandMeterNulled => "a hand meter, leads subtracted",
        Instrument::InsulationTester => "an insulation tester",
        Instrument::LeakageMeter => "a touch current meter or appliance tester",
        Instrument::FourWireMeter => "a four-wire milliohm meter",
        Instrument::Rule => "a ruler",
        Instrument::Scale => "scales",
        Instrument::Tape => "a tape measure",
        Instrument::Thermometer => "a thermometer",
        Instrument::VernierCalliper => "a vernier calliper",
    }
}

/// What must be known to choose among instruments; `None` where nothing need be.
pub fn hint(instruments: &[Instrument]) -> Option<&'static str> {
    instruments.contains(&Instrument::HandMeter).then_some(
        "Leads subtracted: you held the two leads together, and the meter was zeroed then, or what it read was taken off.",
    )
}

/// What something was read with, as it is tapped: an own one by its name.
pub fn read_with(read_with: &ReadWith) -> String {
    read_with.own.as_ref().map_or_else(|| name(read_with.instrument).to_owned(), |own| own.name.clone())
}

/// What an instrument may be wrong by: "± (0.5 % + 2 digits + 0.1 mΩ)".
pub fn accuracy(accuracy: Accuracy) -> String {
    let Accuracy { of_reading, digits, fixed: (fixed, unit) } = accuracy;
    format!(
        "± ({}\u{a0}% + {} digits + {}\u{a0}{})",
        number::roughly(100.0 * of_reading),
        number::roughly(digits),
        number::roughly(fixed),
        unit.symbol()
    )
}

/// What an ordinary instrument of a type is taken to be wrong by, and in which unit the fixed amount is.
pub fn says(instrument: Instrument) -> String {
    let usual = instrument.accuracy();
    let unit = usual.fixed.1.symbol();
    format!(
        "Ordinary ones of this type are taken as {} (quoted from memory). The fixed amount is in {unit}.",
        accuracy(usual)
    )
}
