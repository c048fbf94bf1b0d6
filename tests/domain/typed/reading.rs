//! Typed readings that are understood.

use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{Amount, Unit};
use plugwary::domain::reading::{Reading, Shown};
use plugwary::words::typed::{parse_count, parse_reading};

fn read(typed: &str, tapped: Unit) -> Reading {
    parse_reading(typed, tapped.kind(), tapped, Instrument::HandMeter).expect(typed)
}

/// The shown number, its step and the unit are these.
#[track_caller]
fn expect(typed: &str, tapped: Unit, value: f64, step: f64, unit: Unit) {
    let reading = read(typed, tapped);
    assert_eq!(reading.shown, Shown::Value(Amount::new(value, unit)), "{typed}");
    assert_eq!((reading.step, reading.unit), (Amount::new(step, unit), unit), "{typed}");
    assert_eq!(reading.typed, typed);
}

#[test]
fn tapped_unit_holds_where_none_is_typed() {
    expect("0.37", Unit::Ohm, 0.37, 0.01, Unit::Ohm);
    expect("370", Unit::Milliohm, 370.0, 1.0, Unit::Milliohm);
    expect(" 12.90 ", Unit::Millimetre, 12.9, 0.01, Unit::Millimetre);
    expect("5.", Unit::Metre, 5.0, 1.0, Unit::Metre);
    expect(".5", Unit::Metre, 0.5, 0.1, Unit::Metre);
}

#[test]
fn comma_and_point_both_part_decimals() {
    expect("0,37", Unit::Ohm, 0.37, 0.01, Unit::Ohm);
    expect("0,370", Unit::Ohm, 0.37, 0.001, Unit::Ohm);
    expect("1.234", Unit::Metre, 1.234, 0.001, Unit::Metre);
    expect("1234,5", Unit::Ohm, 1234.5, 0.1, Unit::Ohm);
}

#[test]
fn typed_unit_goes_before_the_tapped_one() {
    for typed in ["370 mΩ", "370mohm", "370 mOhm", "370m", "370 milliohm", "370\u{A0}m\u{2126}", "３７０ mΩ"] {
        expect(typed, Unit::Ohm, 370.0, 1.0, Unit::Milliohm);
    }
    expect("0.37 ohm", Unit::Milliohm, 0.37, 0.01, Unit::Ohm);
    expect("12mm", Unit::Metre, 12.0, 1.0, Unit::Millimetre);
    expect("1.2 m", Unit::Millimetre, 1.2, 0.1, Unit::Metre);
    expect("1.2M", Unit::Millimetre, 1.2, 0.1, Unit::Metre);
    expect("250 g", Unit::Kilogram, 250.0, 1.0, Unit::Gram);
    expect("21.5 °C", Unit::DegreeCelsius, 21.5, 0.1, Unit::DegreeCelsius);
    expect("0.75 mm²", Unit::SquareMillimetre, 0.75, 0.01, Unit::SquareMillimetre);
    expect("26 mΩ/m", Unit::OhmPerKilometre, 26.0, 1.0, Unit::OhmPerKilometre);
}

#[test]
fn capital_letter_is_a_million_of_ohms_and_small_one_a_thousandth() {
    expect("200 MΩ", Unit::Ohm, 200.0, 1.0, Unit::Megohm);
    expect("200 MOHM", Unit::Ohm, 200.0, 1.0, Unit::Megohm);
    expect("200 Mohm", Unit::Ohm, 200.0, 1.0, Unit::Megohm);
    expect("200 mohm", Unit::Ohm, 200.0, 1.0, Unit::Milliohm);
}

#[test]
fn prefixes_without_a_unit_of_ours_are_carried_over() {
    expect("370 µΩ", Unit::Ohm, 0.37, 0.001, Unit::Milliohm);
    expect("370 uΩ", Unit::Ohm, 0.37, 0.001, Unit::Milliohm);
    expect("120 um", Unit::Millimetre, 0.12, 0.001, Unit::Millimetre);
    expect("1.2 TΩ", Unit::Megohm, 1200.0, 100.0, Unit::Gigohm);
    expect("230000 mV", Unit::Volt, 230.0, 0.001, Unit::Volt);
}

/// Examples of IEC 60062, code for resistance values (memory-high).
#[test]
fn examples_of_iec_60062_are_read() {
    for (code, value, step, unit) in [
        ("R10", 0.1, 0.01, Unit::Ohm),
        ("R332", 0.332, 0.001, Unit::Ohm),
        ("1R0", 1.0, 0.1, Unit::Ohm),
        ("3R32", 3.32, 0.01, Unit::Ohm),
        ("33R2", 33.2, 0.1, Unit::Ohm),
        ("332R", 332.0, 1.0, Unit::Ohm),
        ("1K0", 1.0, 0.1, Unit::Kilohm),
        ("3K32", 3.32, 0.01, Unit::Kilohm),
        ("332K", 332.0, 1.0, Unit::Kilohm),
        ("1M0", 1.0, 0.1, Unit::Megohm),
        ("33M2", 33.2, 0.1, Unit::Megohm),
        ("1G0", 1.0, 0.1, Unit::Gigohm),
        ("0R37", 0.37, 0.01, Unit::Ohm),
        ("4k7", 4.7, 0.1, Unit::Kilohm),
        ("4k7 Ω", 4.7, 0.1, Unit::Kilohm),
        ("1M5", 1.5, 0.1, Unit::Megohm),
        ("R37", 0.37, 0.01, Unit::Ohm),
    ] {
        expect(code, Unit::Ohm, value, step, unit);
    }
}

#[test]
fn over_range_is_an_open_circuit() {
    for typed in ["OL", "O.L", "ol", "0.L", "OL MΩ", "open", "1.", "∞", "infinity", "Overload"] {
        assert_eq!(read(typed, Unit::Ohm).shown, Shown::Open, "{typed}");
    }
}

#[test]
fn signs_make_values_beyond_the_range() {
    let above = |number, unit| Shown::Above(Amount::new(number, unit));
    for typed in [">999M", "> 999 MΩ", "≥999M", ">=999M", "more than 999 M", "over 999M"] {
        assert_eq!(read(typed, Unit::Ohm).shown, above(999.0, Unit::Megohm), "{typed}");
    }
    assert_eq!(read("> 200 MΩ", Unit::Ohm).shown, above(200.0, Unit::Megohm));
    for typed in ["<0.01", "< 0.01 Ω", "less than 0.01", "under 0,01"] {
        assert_eq!(read(typed, Unit::Ohm).shown, Shown::Below(Amount::new(0.01, Unit::Ohm)), "{typed}");
    }
}

#[test]
fn temperature_may_be_below_zero() {
    for typed in ["-4.5", "\u{2212}4.5 °C", "– 4,5 C"] {
        expect(typed, Unit::DegreeCelsius, -4.5, 0.1, Unit::DegreeCelsius);
    }
}

#[test]
fn display_that_trembles_below_zero_reads_zero() {
    expect("-0.00", Unit::Ohm, 0.0, 0.01, Unit::Ohm);
    expect("+0.37", Unit::Ohm, 0.37, 0.01, Unit::Ohm);
}

/// Thin or no-break spaces part thousands (SI Brochure, 5.4.4); ordinary spaces could part two numbers.
#[test]
fn thin_spaces_part_thousands() {
    for space in ['\u{2009}', '\u{202F}', '\u{A0}'] {
        expect(&format!("1{space}234.5"), Unit::Ohm, 1234.5, 0.1, Unit::Ohm);
        expect(&format!("12{space}mm"), Unit::Metre, 12.0, 1.0, Unit::Millimetre);
    }
}

#[test]
fn counts_are_whole_numbers_within_bounds() {
    assert_eq!(parse_count(" 4 ", 1, 20), Ok(4));
    assert_eq!(parse_count("1", 1, 20), Ok(1));
    assert_eq!(parse_count("20", 1, 20), Ok(20));
    assert_eq!(parse_count("６", 1, 20), Ok(6));
}
