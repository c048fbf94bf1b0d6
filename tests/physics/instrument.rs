//! Instruments against their specifications, and what readings of one instrument have in common.

use plugwary::domain::instrument::{Accuracy, Instrument, OwnInstrument};
use plugwary::domain::quantity::{Amount, ElectricalResistance, Length, Measurand, Unit, ohms_per_kilometre};
use plugwary::domain::reading::{Reading, Shown};
use plugwary::domain::uncertainty::{Correlation, combine_correlated, combine2};
use uom::si::ratio::ratio;

use crate::near::{near, near_part};

fn reading(value: f64, step: f64, unit: Unit, instrument: Instrument) -> Reading {
    Reading {
        shown: Shown::Value(Amount::new(value, unit)),
        step: Amount::new(step, unit),
        unit,
        instrument,
        own: None,
        typed: value.to_string(),
    }
}

fn resistance(value: f64, step: f64, instrument: Instrument) -> Reading {
    reading(value, step, Unit::Ohm, instrument)
}

/// Ordinary instruments (memory-medium), standard uncertainty: a hand meter of 0.8 % and 3 digits at 0.83 Ω in steps of 0.01 Ω 0.0212;
/// a four-wire meter of 0.2 % and 2 steps of 0.1 mΩ there 0.0011; calliper 0.02 mm in steps of 0.01 mm about 0.012.
/// The four-wire figure was worked without the 0.1 mΩ that our meter adds for its clips.
#[test]
fn instruments_know_their_doubt() {
    let u = |reading: &Reading| reading.measured::<ElectricalResistance>().unwrap().u.base();
    near("hand meter", u(&resistance(0.83, 0.01, Instrument::HandMeterNulled)), 0.0213, 0.0002);
    near("four-wire meter", u(&resistance(0.83, 0.0001, Instrument::FourWireMeter)), 0.0011, 0.00005);
    let calliper = reading(7.0, 0.01, Unit::Millimetre, Instrument::DigitalCalliper);
    near("calliper", calliper.measured::<Length>().unwrap().u.base() * 1e3, 0.012, 0.0005);
}

/// The trade's ranges (memory-medium): calliper 0.02 mm to 0.03 mm, vernier 0.05 mm, hand meter 0.5 % to 1 % and 2 to 5 digits, four wires
/// 0.1 % to 1 % and 0.1 mΩ, insulation tester 3 % to 10 %. Where the trade names none our working values stand: earth path 3 % and 3
/// digits, scale 0.2 % and 1, tape 0.2 % and 5 mm, thermometer 2 K, touch current as insulation. By hand, half-width over √3 and step over
/// √12 in squares: 0.2 Ω in steps of 1 mΩ are (6 + 3) mΩ, so 5.204 mΩ.
#[test]
fn every_instrument_has_the_doubt_of_its_kind() {
    use Instrument::{
        ContinuityTester, EarthPathTester, HandMeter, HandMeterNulled, InsulationTester, LeakageMeter, Scale, Tape,
        Thermometer, VernierCalliper,
    };
    for (instrument, value, step, unit, u) in [
        (EarthPathTester, 200.0, 1.0, Unit::Milliohm, 5.204),
        (InsulationTester, 2.0, 0.01, Unit::Megohm, 0.075_11),
        (LeakageMeter, 0.5, 0.01, Unit::Milliampere, 0.031_89),
        (Scale, 13.1, 0.1, Unit::Gram, 0.078_37),
        (Tape, 3.0, 0.001, Unit::Metre, 0.006_357),
        (Thermometer, 20.0, 0.1, Unit::DegreeCelsius, 1.155_06),
        (VernierCalliper, 7.0, 0.05, Unit::Millimetre, 0.032_27),
        (HandMeter, 0.83, 0.01, Unit::Ohm, 0.021_35),
        (HandMeterNulled, 0.83, 0.01, Unit::Ohm, 0.021_35),
        (ContinuityTester, 12.0, 1.0, Unit::Ohm, 0.288_68),
    ] {
        let found = reading(value, step, unit, instrument).standard_uncertainty().unwrap().difference_in(unit).unwrap();
        near_part(instrument.code(), found, u, 1e-3);
    }
}

/// Half a step of the display is a part of its own (GUM F.2.2.1): a rule that may be wrong by 1 mm and is read in steps of 1 mm has
/// u² = 1²/3 + 1²/12, that is 0.6455 mm; a calliper of 0.02 mm in steps of 0.01 mm 0.01190 mm.
#[test]
fn the_last_digit_adds_its_own_doubt() {
    let u = |reading: Reading| reading.measured::<Length>().unwrap().u.base() * 1e3;
    near("rule", u(reading(40.0, 1.0, Unit::Millimetre, Instrument::Rule)), 0.6455, 5e-5);
    near("calliper", u(reading(7.0, 0.01, Unit::Millimetre, Instrument::DigitalCalliper)), 0.011_90, 5e-6);
}

/// A record may be written by hand: a number that no instrument shows is no reading, and neither is one with such a doubt.
#[test]
fn what_no_instrument_shows_is_no_reading() {
    let showing = |shown: Shown| Reading { shown, ..resistance(1.0, 0.1, Instrument::HandMeter) };
    let ohms = |value: f64| Amount::new(value, Unit::Ohm);
    assert!(showing(Shown::Value(ohms(1e14))).measured::<ElectricalResistance>().is_some());
    for far in [1e16, -1e16, f64::INFINITY, f64::NAN] {
        assert_eq!(showing(Shown::Value(ohms(far))).measured::<ElectricalResistance>(), None, "{far}");
        assert_eq!(showing(Shown::Above(ohms(far))).above::<ElectricalResistance>(), None, "{far}");
        assert_eq!(showing(Shown::Below(ohms(far))).below::<ElectricalResistance>(), None, "{far}");
        let doubtful = Reading { step: ohms(far), ..showing(Shown::Value(ohms(1.0))) };
        assert_eq!(doubtful.measured::<ElectricalResistance>(), None, "in steps of {far}");
    }
}

/// The relative doubt of a core's reading over a reference wire's.
fn doubt_of_quotient(core: &Reading, wire: &Reading) -> f64 {
    let both = [core, wire].map(|reading| reading.measured::<ElectricalResistance>().unwrap());
    let correlation = core.correlation_with::<ElectricalResistance>(wire);
    let found = combine_correlated(both, |_, _| correlation, |[core, wire]| ohms_per_kilometre(26.0) * (core / wire));
    (found.u / found.value).get::<ratio>()
}

/// 0.83 Ω and 0.91 Ω in steps of 0.1 mΩ, four wires (0.2 % of reading, 2 steps, 0.1 mΩ; memory-medium), worked by hand: each u² less the
/// square of 0.2 %/√3 of the value leaves 0.100 % of doubt in the quotient with one meter; with two meters it is 0.192 %.
#[test]
fn a_quotient_of_one_meters_readings_forgets_its_scale() {
    let core = resistance(0.83, 0.0001, Instrument::FourWireMeter);
    let wire = resistance(0.91, 0.0001, Instrument::FourWireMeter);
    near_part("one meter", doubt_of_quotient(&core, &wire), 0.001_001_8, 1e-3);
    let another = Reading { instrument: Instrument::EarthPathTester, ..wire.clone() };
    assert_eq!(core.correlation_with::<ElectricalResistance>(&another), Correlation::NONE);
    let both = [&core, &wire].map(|reading| reading.measured::<ElectricalResistance>().unwrap());
    let apart = combine2(both[0], both[1], |core, wire| ohms_per_kilometre(26.0) * (core / wire));
    near_part("two meters", (apart.u / apart.value).get::<ratio>(), 0.001_915_7, 1e-3);
}

/// A reading goes with itself as far as its scale rules it; a rule's or calliper's doubt has no part of the reading.
#[test]
fn only_a_part_of_the_reading_is_common_to_two_readings() {
    let r = |reading: &Reading| reading.correlation_with::<ElectricalResistance>(reading).value();
    let coarse = r(&resistance(0.02, 0.001, Instrument::HandMeterNulled));
    let fine = r(&resistance(900.0, 0.001, Instrument::HandMeterNulled));
    assert!((0.0..0.01).contains(&coarse), "steps rule a short core: {coarse}");
    assert!((0.99..=1.0).contains(&fine), "the scale rules a large value: {fine}");
    let calliper = reading(7.0, 0.01, Unit::Millimetre, Instrument::DigitalCalliper);
    assert_eq!(calliper.correlation_with::<Length>(&calliper), Correlation::NONE);
    assert_eq!(calliper.correlation_with::<ElectricalResistance>(&calliper), Correlation::NONE, "no resistance at all");
}

/// A maker's 0.5 % + 2 digits at 0.83 Ω in steps of 0.01 Ω: half-width 0.00415 + 0.02 = 0.02415, u = √((0.02415/√3)² + (0.01/√12)²) =
/// 0.014239 (GUM 4.3.7, by hand).
#[test]
fn own_instrument_goes_before_its_type() {
    let accuracy = Accuracy { of_reading: 0.005, digits: 2.0, fixed: (0.0, Unit::Ohm) };
    let own = OwnInstrument { name: "the blue one".to_owned(), accuracy };
    let reading = Reading { own: Some(own.clone()), ..resistance(0.83, 0.01, Instrument::HandMeter) };
    let measured = reading.measured::<ElectricalResistance>().expect("a number");
    near("u of the owner's meter", measured.u.base(), 0.014_239, 1e-6);
    // A fixed amount counts in its own unit.
    let accuracy = Accuracy { of_reading: 0.0, digits: 0.0, fixed: (10.0, Unit::Milliohm) };
    let fixed = Reading { own: Some(OwnInstrument { accuracy, ..own }), ..reading };
    let u = libm::hypot(0.01 / libm::sqrt(3.0), 0.01 / libm::sqrt(12.0));
    near("u of a fixed amount", fixed.measured::<ElectricalResistance>().expect("a number").u.base(), u, 1e-12);
}
