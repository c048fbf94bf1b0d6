//! The names of instruments, by type and never by brand.

use crate::domain::instrument::Instrument;

/// The name of an instrument.
pub const fn name(instrument: Instrument) -> &'static str {
    match instrument {
        Instrument::ContinuityTester => "a continuity tester",
        Instrument::DigitalCalliper => "a digital calliper",
        Instrument::EarthPathTester => "an earth path tester, leads taken off",
        Instrument::HandMeter => "a hand meter, leads not taken off",
        Instrument::HandMeterNulled => "a hand meter, leads taken off",
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
