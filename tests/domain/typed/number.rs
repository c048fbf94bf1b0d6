//! Values as a person reads them.

use plugwary::domain::decision::Probability;
use plugwary::domain::finding::Bound;
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{Amount, Measurand, Unit, ohms};
use plugwary::domain::uncertainty::Measured;
use plugwary::words::number::{self, Grounds};
use plugwary::words::typed::parse_reading;

fn of(value: f64, unit: Unit) -> Amount {
    Amount::new(value, unit)
}

/// Digits, with the no-break space shown as an underscore so that it can be seen.
fn seen(text: &str) -> String {
    text.replace('\u{A0}', "_")
}

#[test]
fn unit_suits_the_size() {
    for (value, unit, written) in [
        (0.0083, Unit::Ohm, "8.3_mΩ"),
        (0.0585, Unit::Ohm, "58.5_mΩ"),
        (0.83, Unit::Ohm, "0.83_Ω"),
        (0.0, Unit::Ohm, "0_Ω"),
        (4700.0, Unit::Ohm, "4.7_kΩ"),
        (1_000_000.0, Unit::Ohm, "1_MΩ"),
        (999.0, Unit::Megohm, "999_MΩ"),
        (2e9, Unit::Ohm, "2_GΩ"),
        (0.0129, Unit::Metre, "12.9_mm"),
        (2.0, Unit::Metre, "2_m"),
        (1.5, Unit::SquareMillimetre, "1.5_mm²"),
        (13.0, Unit::Ampere, "13_A"),
        (0.03, Unit::Ampere, "30_mA"),
        (3120.0, Unit::Watt, "3120_W"),
        (0.25, Unit::Kilogram, "250_g"),
        (-4.5, Unit::DegreeCelsius, "\u{2212}4.5_°C"),
    ] {
        assert_eq!(seen(&number::sized(of(value, unit))), written);
    }
}

#[test]
fn four_digits_count_and_whole_numbers_keep_all() {
    for (value, written) in [
        (0.823_456, "0.8235_Ω"),
        (12.345_6, "12.35_Ω"),
        (0.999_96, "1_Ω"),
        (123_456.0, "123456_Ω"),
        (0.000_123_456, "0.0001235_Ω"),
        (1.0 / 3.0, "0.3333_Ω"),
        (-0.000_000_000_01, "0_Ω"),
    ] {
        assert_eq!(seen(&number::amount(of(value, Unit::Ohm), Unit::Ohm)), written);
    }
}

#[test]
fn value_is_written_in_the_unit_asked_for() {
    assert_eq!(seen(&number::amount(of(0.83, Unit::Ohm), Unit::Milliohm)), "830_mΩ");
    assert_eq!(seen(&number::amount(of(0.83, Unit::Ohm), Unit::Metre)), "0.83_Ω");
}

/// GUM 7.2.6: 10.057 62 Ω with u = 27 mΩ is rounded to 10.058 Ω. GUM 7.2.2: m = 100.021 47 g, u = 0.35 mg.
/// The others follow from the same rule.
#[test]
fn value_ends_where_its_doubt_ends() {
    for (value, u, unit, written) in [
        (10.057_62, 0.027, Unit::Ohm, "10.058_Ω ± 0.054_Ω"),
        (100.021_47, 0.000_35, Unit::Gram, "100.02147_g ± 0.00070_g"),
        (0.83, 0.0212, Unit::Ohm, "0.830_Ω ± 0.042_Ω"),
        (0.83, 0.049_8, Unit::Ohm, "0.83_Ω ± 0.10_Ω"),
        (12.9, 0.5, Unit::Millimetre, "12.9_mm ± 1.0_mm"),
        (56_789.0, 617.0, Unit::Ohm, "56800_Ω ± 1200_Ω"),
        (0.83, 0.0, Unit::Ohm, "0.83_Ω"),
    ] {
        assert_eq!(seen(&number::with_doubt(of(value, unit), of(u, unit), unit)), written);
    }
}

#[test]
fn doubt_of_a_temperature_is_a_difference() {
    let reading = parse_reading("21.5", Unit::DegreeCelsius.kind(), Unit::DegreeCelsius, Instrument::Thermometer);
    let measured =
        reading.ok().and_then(|reading| reading.measured()).map(|measured: Measured<Temperature>| measured.amounts());
    let (value, u) = measured.expect("a reading");
    // 2 °C of rectangular half-width and a step of 0.1 °C: u = 1.155 °C.
    assert_eq!(seen(&number::with_doubt(value, u, Unit::DegreeCelsius)), "21.5_°C ± 2.3_°C");
}

type Temperature = plugwary::domain::quantity::ThermodynamicTemperature;

#[test]
fn display_is_said_back_with_its_digits() {
    let said = |typed| {
        let reading = parse_reading(typed, Unit::Ohm.kind(), Unit::Ohm, Instrument::HandMeter).expect("a reading");
        seen(&number::shown(&reading))
    };
    assert_eq!(said("0.370"), "0.370_Ω");
    assert_eq!(said("370 mΩ"), "370_mΩ");
    assert_eq!(said("4k7"), "4.7_kΩ");
    assert_eq!(said(">999M"), "more than 999_MΩ");
    assert_eq!(said("<0,01"), "less than 0.01_Ω");
    assert_eq!(said("OL"), "over range");
}

#[test]
fn limits_and_spans_are_said_whole() {
    let half = ohms(0.5).amount();
    assert_eq!(seen(&number::bound(&Bound::AtMost(half), Unit::Ohm)), "at most 0.5_Ω");
    assert_eq!(seen(&number::bound(&Bound::AtLeast(of(9.5, Unit::Millimetre)), Unit::Millimetre)), "at least 9.5_mm");
    let between = Bound::Between(of(25.0, Unit::Millimetre), of(26.2, Unit::Millimetre));
    assert_eq!(seen(&number::bound(&between, Unit::Millimetre)), "from 25_mm to 26.2_mm");
    assert_eq!(seen(&number::span(of(220.0, Unit::Volt), of(240.0, Unit::Volt), Unit::Volt)), "220_V to 240_V");
    assert_eq!(seen(&number::span(of(230.0, Unit::Volt), of(230.0, Unit::Volt), Unit::Volt)), "230_V");
}

#[test]
fn certainty_is_only_claimed_of_an_over_range_display() {
    let said = |p: f64, grounds| seen(&number::probability(Probability::new(p), grounds));
    for (p, written) in [
        (0.0, "under 1_in_1000"),
        (0.0009, "under 1_in_1000"),
        (0.001, "about 1_in_1000"),
        (0.004, "about 4_in_1000"),
        (0.05, "about 5_%"),
        (0.5, "about 50_%"),
        (0.972, "about 97_%"),
        (0.996, "about 996_in_1000"),
        (0.9995, "over 999_in_1000"),
        (1.0, "over 999_in_1000"),
    ] {
        assert_eq!(said(p, Grounds::Number), written, "{p}");
    }
    assert_eq!(said(1.0, Grounds::OverRange), "100_%");
    assert_eq!(said(0.0, Grounds::OverRange), "0_%");
    assert_eq!(said(0.972, Grounds::OverRange), "about 97_%");
}
