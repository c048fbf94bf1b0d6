//! Uncertainty and decision against the worked examples of JCGM 100 and 106, and instruments against their specifications.

use plugwary::domain::decision::Limit;
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{Amount, ElectricalResistance, Length, Measurand, Unit};
use plugwary::domain::reading::{Reading, Shown};
use plugwary::domain::uncertainty::{Measured, combine2, combine3};

use crate::near::near;

fn reading(value: f64, step: f64, unit: Unit, instrument: Instrument) -> Reading {
    Reading {
        shown: Shown::Value(Amount::new(value, unit)),
        step: Amount::new(step, unit),
        unit,
        instrument,
        typed: value.to_string(),
    }
}

/// JCGM 106:2012 Table 1 (memory-high): conformance probability against distance from a limit in standard uncertainties.
#[test]
fn distance_from_a_limit_is_probability() {
    for (probability, z) in [(0.80, 0.84), (0.90, 1.28), (0.95, 1.64), (0.99, 2.33), (0.999, 3.09)] {
        let limit = Limit::AtMost(Length::from_base(z));
        let found = limit.conformance(&Measured::new(Length::from_base(0.0), Length::from_base(1.0))).value();
        near("probability", found, probability, 0.0015);
    }
}

/// JCGM 100:2008 H.1, end gauge: four inputs, 32 nm printed (read), 31.7 nm first order (derived). Metres throughout; the two factors
/// of temperature are plain numbers here.
#[test]
fn end_gauge_has_32_nm() {
    let m = |value: f64, u: f64| Measured::new(Length::from_base(value), Length::from_base(u));
    let together = combine2(m(0.050_000_623, 25e-9), m(215e-9, 9.7e-9), |standard, difference| standard + difference);
    let gauge = combine3(together, m(0.0, 0.58e-6), m(0.0, 0.029), |length, expansion, warmer| {
        let change = expansion.base() * -0.1 + 11.5e-6 * warmer.base();
        Length::from_base(length.base() * (1.0 - change))
    });
    near("nm", gauge.u.base() * 1e9, 31.7, 0.05);
    near("mm", gauge.value.base() * 1e3, 50.000_838, 5e-7);
}

/// Ordinary instruments (memory-medium), standard uncertainty: a hand meter of 0.8 % and 3 digits at 0.83 Ω in steps of 0.01 Ω 0.0212;
/// a four-wire meter of 0.2 % and 2 steps of 0.1 mΩ there 0.0011; calliper 0.02 mm in steps of 0.01 mm about 0.012.
/// The four-wire figure was worked without the 0.1 mΩ that our meter adds for its clips.
#[test]
fn instruments_know_their_doubt() {
    let u = |reading: &Reading| reading.measured::<ElectricalResistance>().unwrap().u.base();
    near("hand meter", u(&reading(0.83, 0.01, Unit::Ohm, Instrument::HandMeterNulled)), 0.0213, 0.0002);
    near("four-wire meter", u(&reading(0.83, 0.0001, Unit::Ohm, Instrument::FourWireMeter)), 0.0011, 0.00005);
    let calliper = reading(7.0, 0.01, Unit::Millimetre, Instrument::DigitalCalliper);
    near("calliper", calliper.measured::<Length>().unwrap().u.base() * 1e3, 0.012, 0.0005);
}
