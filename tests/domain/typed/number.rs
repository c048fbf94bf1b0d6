//! Values as a person reads them.

use plugwary::domain::decision::Probability;
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{Amount, Unit};
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
        assert_eq!(seen(&number::amount(of(value, unit))), written);
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
        assert_eq!(seen(&number::in_unit(of(value, Unit::Ohm), Unit::Ohm)), written);
    }
}

#[test]
fn value_is_written_in_the_unit_asked_for() {
    assert_eq!(seen(&number::in_unit(of(0.83, Unit::Ohm), Unit::Milliohm)), "830_mΩ");
    assert_eq!(seen(&number::in_unit(of(0.83, Unit::Ohm), Unit::Metre)), "0.83_Ω");
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
        (56_789.0, 617.0, Unit::Watt, "56800_W ± 1200_W"),
        (0.83, 0.0, Unit::Ohm, "0.83_Ω"),
    ] {
        assert_eq!(seen(&number::measured(of(value, unit), of(u, unit))), written);
    }
}

#[test]
fn doubt_of_a_temperature_is_a_difference() {
    let reading = parse_reading("21.5", Unit::DegreeCelsius.kind(), Unit::DegreeCelsius, Instrument::Thermometer);
    let measured =
        reading.ok().and_then(|reading| reading.measured()).map(|measured: Measured<Temperature>| measured.amounts());
    let (value, u) = measured.expect("a reading");
    // 2 °C of rectangular half-width and a step of 0.1 °C: u = 1.155 °C.
    assert_eq!(seen(&number::measured(value, u)), "21.5_°C ± 2.3_°C");
}

type Temperature = plugwary::domain::quantity::ThermodynamicTemperature;

/// By hand (GUM 4.3.7, F.2.2.1): 0.2 % of 0.83 Ω + 2 digits of 0.01 Ω + 0.1 mΩ is a half-width of 0.02176 Ω; over √3 that is
/// 0.012563 Ω; with 0.01 Ω/√12 in quadrature 0.012890 Ω, and twice that 0.026 Ω. The others likewise.
#[test]
fn display_is_said_back_with_its_digits_and_its_doubt() {
    let said = |typed| {
        let reading = parse_reading(typed, Unit::Ohm.kind(), Unit::Ohm, Instrument::FourWireMeter).expect("a reading");
        seen(&number::reading(&reading))
    };
    assert_eq!(said("0.83"), "0.83_Ω ± 0.026_Ω");
    assert_eq!(said("370 mΩ"), "370_mΩ ± 3.3_mΩ");
    assert_eq!(said("4k7"), "4.7_kΩ ± 0.25_kΩ");
    assert_eq!(said(">999M"), "more than 999_MΩ");
    assert_eq!(said("<0,01"), "less than 0.01_Ω");
    assert_eq!(said("OL"), "over range: no path at all");
}

#[test]
fn certainty_is_only_claimed_of_a_display_beyond_its_range() {
    let said = |p: f64, grounds| number::chance(Probability::new(p), grounds);
    for (p, written) in [
        (0.0, "under 1 in 1000"),
        (0.0009, "under 1 in 1000"),
        (0.001, "about 1 in 1000"),
        (0.004, "about 4 in 1000"),
        (0.05, "about 5 in 100"),
        (0.5, "about 50 in 100"),
        (0.972, "about 97 in 100"),
        (0.996, "about 996 in 1000"),
        (0.9995, "over 999 in 1000"),
        (1.0, "over 999 in 1000"),
    ] {
        assert_eq!(said(p, Grounds::Number), written, "{p}");
    }
    assert_eq!(said(1.0, Grounds::BeyondRange), "certain");
    assert_eq!(said(0.0, Grounds::BeyondRange), "none");
    assert_eq!(said(0.972, Grounds::BeyondRange), "about 97 in 100");
}
