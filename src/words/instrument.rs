//! The names of instruments, by type and never by brand.

use crate::domain::instrument::Instrument;

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
