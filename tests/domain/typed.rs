//! What a person types, read as a value, and how values are said back.

use plugwary::domain::decision::Probability;
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{Amount, Measurand, QuantityKind, ThermodynamicTemperature, Unit};
use plugwary::domain::reading::{Reading, Shown};
use plugwary::words::number;
use plugwary::words::typed::{InputProblem, parse_reading};
use proptest::prelude::*;

fn ohms(typed: &str) -> Result<Reading, InputProblem> {
    parse_reading(typed, QuantityKind::Resistance, Unit::Ohm, Instrument::FourWireMeter)
}

#[track_caller]
fn check(typed: &str, value: f64, unit: Unit, step: f64) {
    let reading = ohms(typed).unwrap_or_else(|problem| panic!("{typed}: {problem:?}"));
    assert_eq!(reading.shown, Shown::Value(Amount::new(value, unit)), "{typed}");
    assert_eq!(reading.step, Amount::new(step, unit), "{typed}");
    assert_eq!(reading.typed, typed);
}

#[test]
fn comma_and_point_are_the_same() {
    check("0,37", 0.37, Unit::Ohm, 0.01);
    check("0.37", 0.37, Unit::Ohm, 0.01);
    check(" 0.370 ", 0.370, Unit::Ohm, 0.001);
    check("12", 12.0, Unit::Ohm, 1.0);
    check(".5", 0.5, Unit::Ohm, 0.1);
}

#[test]
fn a_typed_unit_counts_before_the_tapped_one() {
    check("370 mΩ", 370.0, Unit::Milliohm, 1.0);
    check("370mohm", 370.0, Unit::Milliohm, 1.0);
    check("0.37 ohm", 0.37, Unit::Ohm, 0.01);
    check("2.5MΩ", 2.5, Unit::Megohm, 0.1);
    check("1.2 k", 1.2, Unit::Kilohm, 0.1);
}

/// IEC 60062: the letter stands in the place of the decimal point (R47 is 0.47 Ω, 4K7 is 4.7 kΩ, 1M5 is 1.5 MΩ).
#[test]
fn resistor_notation_is_understood() {
    check("0R37", 0.37, Unit::Ohm, 0.01);
    check("R47", 0.47, Unit::Ohm, 0.01);
    check("4k7", 4.7, Unit::Kilohm, 0.1);
    check("4K7", 4.7, Unit::Kilohm, 0.1);
    check("1M5", 1.5, Unit::Megohm, 0.1);
    check("10R", 10.0, Unit::Ohm, 1.0);
}

#[test]
fn over_range_is_no_number() {
    for typed in ["OL", "O.L", "open", "∞", "ol", "0.L"] {
        assert_eq!(ohms(typed).map(|reading| reading.shown), Ok(Shown::Open), "{typed}");
    }
    let above = ohms("> 999 MΩ").map(|reading| reading.shown);
    assert_eq!(above, Ok(Shown::Above(Amount::new(999.0, Unit::Megohm))));
    assert_eq!(ohms("<0.01").map(|reading| reading.shown), Ok(Shown::Below(Amount::new(0.01, Unit::Ohm))));
}

#[test]
fn what_is_no_reading_is_said_and_kept() {
    assert_eq!(ohms(""), Err(InputProblem::Empty));
    assert_eq!(ohms("abc"), Err(InputProblem::NoNumber("abc".to_owned())));
    assert_eq!(ohms("1,234.5"), Err(InputProblem::Ambiguous("1,234.5".to_owned())));
    assert_eq!(ohms("12 13"), Err(InputProblem::Ambiguous("12 13".to_owned())));
    assert_eq!(ohms("12 mm"), Err(InputProblem::WrongUnit("mm".to_owned(), QuantityKind::Resistance)));
    assert_eq!(ohms("12 bananas"), Err(InputProblem::UnknownUnit("bananas".to_owned())));
    assert_eq!(ohms("-0.5"), Err(InputProblem::NotPositive("-0.5".to_owned(), QuantityKind::Resistance)));
    let length = |typed| parse_reading(typed, QuantityKind::Length, Unit::Metre, Instrument::Tape);
    assert_eq!(length("0"), Err(InputProblem::NotPositive("0".to_owned(), QuantityKind::Length)));
    assert_eq!(length("5000"), Err(InputProblem::OutOfReach("5000".to_owned(), QuantityKind::Length)));
    let message = length("-0.5 m").map_err(|problem| problem.message());
    assert_eq!(message, Err("a length must be more than zero, got -0.5 m".to_owned()));
}

/// GUM 7.2.6: the uncertainty to two significant digits, the value to the same decimal.
#[test]
fn values_are_said_with_their_doubt() {
    let said = number::measured(Amount::new(0.8312, Unit::Ohm), Amount::new(0.0212, Unit::Ohm));
    assert_eq!(said, "0.831\u{a0}Ω ± 0.042\u{a0}Ω");
    assert_eq!(number::amount(Amount::new(0.0083, Unit::Ohm)), "8.3\u{a0}mΩ");
    assert_eq!(number::amount(Amount::new(1.0, Unit::Megohm)), "1\u{a0}MΩ");
    assert_eq!(number::amount(Amount::new(12.9, Unit::Millimetre)), "12.9\u{a0}mm");
    assert_eq!(number::amount(Amount::new(1.5, Unit::SquareMillimetre)), "1.5\u{a0}mm²");
    assert_eq!(number::amount(Amount::new(-5.0, Unit::DegreeCelsius)), "\u{2212}5\u{a0}°C");
    let one_kelvin = ThermodynamicTemperature::from_base(1.0).amount();
    let room = number::measured(Amount::new(23.0, Unit::DegreeCelsius), one_kelvin);
    assert_eq!(room, "23.0\u{a0}°C ± 2.0\u{a0}°C");
}

/// By hand (GUM 4.3.7, F.2.2.1): 0.2 % of 0.83 Ω + 2 digits of 0.01 Ω + 0.1 mΩ is a half-width of 0.02176 Ω; over √3 that is
/// 0.012563 Ω; with 0.01 Ω/√12 in quadrature 0.012890 Ω.
#[test]
fn a_reading_is_said_with_what_its_instrument_may_be_wrong_by() {
    let reading = ohms("0.83").expect("a reading");
    let u = reading.standard_uncertainty().and_then(|u| u.difference_in(Unit::Ohm)).expect("an uncertainty");
    assert!((u - 0.012_890).abs() < 1e-5, "{u}");
    assert_eq!(number::reading(&reading), "0.83\u{a0}Ω ± 0.026\u{a0}Ω");
}

#[test]
fn a_chance_is_never_said_to_be_certain_unless_it_is() {
    assert_eq!(number::chance(Probability::new(0.9996)), "over 999 in 1000");
    assert_eq!(number::chance(Probability::new(0.0001)), "under 1 in 1000");
    assert_eq!(number::chance(Probability::new(0.5)), "about 50 in 100");
    assert_eq!(number::chance(Probability::ONE), "certain");
}

proptest! {
    #[test]
    fn nothing_typed_makes_it_panic(typed in "\\PC{0,40}") {
        let _ = ohms(&typed);
    }

    #[test]
    fn the_unit_chosen_never_changes_the_value(thousandths in 1_u32..9_999_999) {
        let milliohms = ohms(&format!("{thousandths} mΩ")).expect("a reading");
        let ohms = ohms(&format!("{}.{:03}", thousandths / 1000, thousandths % 1000)).expect("a reading");
        let base = |reading: &Reading| match reading.shown {
            Shown::Value(amount) => amount.in_unit(Unit::Ohm).expect("ohms"),
            Shown::Above(_) | Shown::Below(_) | Shown::Open => f64::NAN,
        };
        prop_assert!((base(&milliohms) - base(&ohms)).abs() <= 1e-12 * base(&ohms));
    }
}
