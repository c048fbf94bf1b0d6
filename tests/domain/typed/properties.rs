//! What must hold for anything that is typed.

use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{Amount, QuantityKind, Unit};
use plugwary::domain::reading::Shown;
use plugwary::words::number;
use plugwary::words::typed::{parse_count, parse_reading};
use proptest::prelude::*;

/// Spellings of each unit that must mean the same.
const SPELLINGS: [(Unit, &[&str]); 18] = [
    (Unit::Ampere, &["A", "amp", "Amps"]),
    (Unit::DegreeCelsius, &["°C", "C", "℃", "degC"]),
    (Unit::Gram, &["g", "grams"]),
    (Unit::Kilohm, &["kΩ", "k", "K", "kohm", "kilohms"]),
    (Unit::Kilogram, &["kg", "KG"]),
    (Unit::Kilowatt, &["kW", "KW"]),
    (Unit::Megohm, &["MΩ", "M", "Mohm", "MOHM", "megohm"]),
    (Unit::Metre, &["m", "M", "metres", "meter"]),
    (Unit::Milliampere, &["mA", "ma"]),
    (Unit::Millimetre, &["mm", "MM"]),
    (Unit::Milliohm, &["mΩ", "m", "mohm", "milliohm"]),
    (Unit::Centimetre, &["cm"]),
    (Unit::Gigohm, &["GΩ", "G", "Gohm"]),
    (Unit::Ohm, &["Ω", "ohm", "OHMS", "R"]),
    (Unit::OhmPerKilometre, &["Ω/km", "ohm/km", "mΩ/m"]),
    (Unit::SquareMillimetre, &["mm²", "mm2", "mm^2", "sqmm"]),
    (Unit::Volt, &["V", "volts"]),
    (Unit::Watt, &["W", "watts"]),
];

/// Pieces of what people type, thrown together.
fn typed() -> impl Strategy<Value = String> {
    prop_oneof![any::<String>(), "[-+><≥ 0-9.,RkKMmGµuΩOL∞°C\u{A0}\u{2009}e/^²]{0,24}"]
}

/// Two units of one quantity.
fn two_units() -> impl Strategy<Value = (Unit, Unit)> {
    let pairs = Unit::ALL.into_iter().flat_map(|one| Unit::ALL.map(|other| (one, other)));
    prop::sample::select(pairs.filter(|(one, other)| one.kind() == other.kind()).collect::<Vec<_>>())
}

fn unit_of_any() -> impl Strategy<Value = Unit> {
    prop::sample::select(Unit::ALL.to_vec())
}

proptest! {
    #[test]
    fn anything_typed_is_read_or_refused(typed in typed(), unit in unit_of_any()) {
        match parse_reading(&typed, unit.kind(), unit, Instrument::HandMeter) {
            Ok(reading) => {
                prop_assert_eq!(reading.unit.kind(), unit.kind());
                prop_assert_eq!(&reading.typed, &typed);
                let number = match reading.shown {
                    Shown::Value(amount) | Shown::Above(amount) | Shown::Below(amount) => amount.in_unit(reading.unit),
                    Shown::Open => Some(0.0),
                };
                prop_assert!(number.is_some_and(f64::is_finite));
                prop_assert!(!number::reading(&reading).is_empty());
            }
            Err(problem) => {
                prop_assert!(!problem.message().is_empty() && !problem.hint().is_empty());
                prop_assert!(problem.typed() == typed || typed.trim().is_empty());
            }
        }
        let _ = parse_count(&typed, 1, 20);
    }

    #[test]
    fn spelling_and_space_do_not_change_the_value(
        (unit, spellings) in prop::sample::select(SPELLINGS.to_vec()),
        whole in 1_u32..400,
        decimals in "[0-9]{0,2}",
        gap in "|  ?|\u{A0}|\u{2009}",
        point in "[.,]",
    ) {
        let digits = if decimals.is_empty() { whole.to_string() } else { format!("{whole}{point}{decimals}") };
        let expected = Amount::new(digits.replace(',', ".").parse().unwrap_or_default(), unit);
        for spelling in spellings {
            let typed = format!("{digits}{gap}{spelling}");
            let reading = parse_reading(&typed, unit.kind(), unit, Instrument::HandMeter);
            let shown = reading.as_ref().map(|reading| reading.shown);
            prop_assert_eq!(shown, Ok(Shown::Value(expected)), "{}", typed);
        }
    }

    #[test]
    fn tapping_a_unit_is_typing_it(unit in unit_of_any(), whole in 1_u32..400, decimal in 0_u32..10) {
        let digits = format!("{whole}.{decimal}");
        let tapped = parse_reading(&digits, unit.kind(), unit, Instrument::HandMeter).map(|reading| (reading.shown, reading.step));
        let typed = format!("{digits} {}", unit.symbol());
        let other = Unit::ALL.into_iter().find(|other| other.kind() == unit.kind()).unwrap_or(unit);
        let typed = parse_reading(&typed, unit.kind(), other, Instrument::HandMeter).map(|reading| (reading.shown, reading.step));
        prop_assert_eq!(tapped, typed);
    }

    #[test]
    fn unit_of_writing_does_not_change_the_value(number in 0.001_f64..400.0, (unit, other) in two_units()) {
        let value = Amount::new(number, unit);
        let written = number::in_unit(value, other).replace('\u{2212}', "-");
        let back = parse_reading(&written, unit.kind(), other, Instrument::HandMeter);
        // Nine decimals and four digits are written; a value too small for its unit is written as zero, which no length may be.
        let numbers = back.ok().and_then(|reading| match reading.shown {
            Shown::Value(read) => read.in_unit(other).zip(value.in_unit(other)),
            Shown::Above(_) | Shown::Below(_) | Shown::Open => None,
        });
        let tiny = value.in_unit(other).is_some_and(|number| number.abs() < 1e-5);
        let close = |(read, meant): (f64, f64)| (read - meant).abs() <= 0.0006 * meant.abs() + 1e-9;
        prop_assert!(tiny || numbers.is_some_and(close), "{} {:?}", written, numbers);
    }

    #[test]
    fn written_reading_is_typed_again_alike(whole in 1_u32..400, decimals in "(\\.[0-9]{1,3})?", unit in unit_of_any()) {
        let typed = format!("{whole}{decimals}");
        let reading = parse_reading(&typed, unit.kind(), unit, Instrument::HandMeter).expect("a reading");
        let said = number::reading(&reading);
        let value = said.split(" ± ").next().unwrap_or_default();
        let again = parse_reading(value, unit.kind(), unit, Instrument::HandMeter).expect("a reading");
        prop_assert_eq!((reading.shown, reading.step), (again.shown, again.step));
    }

    #[test]
    fn nothing_is_certain_but_beyond_range(p in 0.0_f64..=1.0) {
        let said = number::chance(plugwary::domain::decision::Probability::new(p), number::Grounds::Number);
        prop_assert!(said.ends_with("in 100") || said.ends_with("in 1000"));
        prop_assert!(!said.contains("about 0 ") && !said.contains("about 100 ") && !said.contains("about 1000 "), "{}", said);
    }
}

/// The kinds of quantity all have a unit whose own symbol is understood.
#[test]
fn every_symbol_is_a_spelling() {
    for unit in Unit::ALL {
        let reading = parse_reading(&format!("1.5 {}", unit.symbol()), unit.kind(), unit, Instrument::HandMeter);
        assert_eq!(reading.map(|reading| reading.unit), Ok(unit));
    }
    assert!(parse_reading("1.5 Ω", QuantityKind::Mass, Unit::Gram, Instrument::Scale).is_err());
}
