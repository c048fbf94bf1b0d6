//! Typed text that is no reading, and what is said of it.

use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{QuantityKind, Unit};
use plugwary::words::input_problem::InputProblem;
use plugwary::words::typed::{parse_count, parse_reading};

fn problem(typed: &str, tapped: Unit) -> InputProblem {
    parse_reading(typed, tapped.kind(), tapped, Instrument::HandMeter).expect_err(typed)
}

#[track_caller]
fn expect_message(typed: &str, tapped: Unit, message: &str) {
    let problem = problem(typed, tapped);
    assert_eq!(problem.message(), message, "{typed}");
    assert_eq!(problem.typed(), typed, "what was typed is kept");
    let ends_well = !message.trim_end_matches(typed).ends_with('.') && problem.hint().ends_with('.');
    assert!(ends_well, "a message has no full stop, a hint has one: {message} / {}", problem.hint());
}

#[test]
fn nothing_is_no_reading() {
    for typed in ["", "   ", "\u{A0}"] {
        assert_eq!(problem(typed, Unit::Ohm), InputProblem::Empty);
    }
}

#[test]
fn minus_is_refused_where_it_cannot_be() {
    expect_message("-0.5 m", Unit::Metre, "length must be more than zero, got \u{2212}0.5\u{A0}m");
    expect_message("-0.5", Unit::Metre, "length must be more than zero, got \u{2212}0.5\u{A0}m");
    expect_message("0 mm", Unit::Metre, "length must be more than zero, got 0\u{A0}mm");
    expect_message("-0R37", Unit::Ohm, "resistance cannot be less than zero, got \u{2212}0.37\u{A0}Ω");
    expect_message("-13", Unit::Ampere, "current cannot be less than zero, got \u{2212}13\u{A0}A");
    expect_message("-300 °C", Unit::DegreeCelsius, "nothing is colder than \u{2212}273.15\u{A0}°C, got -300 °C");
}

#[test]
fn ambiguous_thousands_are_refused() {
    for typed in ["1,234.5", "1.234,5", "1,234", "1,234,567", "1.234.567", "1,2.3"] {
        expect_message(typed, Unit::Ohm, &format!("{typed} could be two different numbers"));
    }
}

#[test]
fn two_numbers_are_refused() {
    for typed in ["1 2", "1 234", "12 mm 13", "1m20", "1 m 20", "0.83 ± 0.04", "10-12", "1e3", "3/4", "1\u{A0}23"] {
        expect_message(typed, Unit::Metre, &format!("this must be one number, got {typed}"));
    }
}

#[test]
fn units_of_another_quantity_are_refused() {
    expect_message("12 V", Unit::Ohm, "this is resistance, got V (voltage)");
    expect_message("12 Ω", Unit::Metre, "this is length, got Ω (resistance)");
    expect_message("12 kg", Unit::Metre, "this is length, got kg (mass)");
    let wrong_tap = parse_reading("12", QuantityKind::Length, Unit::Ohm, Instrument::Tape);
    assert!(matches!(wrong_tap, Err(InputProblem::OtherQuantity { unit: Unit::Ohm, .. })));
}

#[test]
fn unknown_units_are_refused() {
    expect_message("12 furlongs", Unit::Metre, "furlongs is no unit of length known here");
    expect_message("12 inch", Unit::Metre, "inch is no unit of length known here");
    expect_message("70 °F", Unit::DegreeCelsius, "°F is no unit of temperature known here");
}

#[test]
fn what_is_no_number_is_refused() {
    for typed in ["NaN", "inf", "-inf", "abc", "Ω", ",", ".", "-", "±3", "≈ 3", "> ", "<"] {
        expect_message(typed, Unit::Ohm, &format!("this must be a number, got {typed}"));
    }
}

#[test]
fn over_range_is_no_length() {
    expect_message("OL", Unit::Metre, "length must be a number, got OL");
}

#[test]
fn absurd_lengths_of_text_are_refused() {
    let long = "1".repeat(41);
    assert_eq!(problem(&long, Unit::Ohm), InputProblem::TooLong { typed: long });
    assert!(matches!(problem("0.00000000000000000001", Unit::Ohm), InputProblem::TooLong { .. }));
}

#[test]
fn what_no_instrument_shows_is_refused() {
    expect_message("5000", Unit::Metre, "no instrument shows a length of 5000\u{A0}m");
    expect_message("1001 m", Unit::Millimetre, "no instrument shows a length of 1001\u{A0}m");
    assert!(parse_reading("1000", QuantityKind::Length, Unit::Metre, Instrument::Tape).is_ok());
    expect_message("401", Unit::DegreeCelsius, "no instrument shows a temperature of 401\u{A0}°C");
}

#[test]
fn counts_outside_their_bounds_are_refused() {
    let message = |typed| parse_count(typed, 1, 20).map_err(|problem| problem.message());
    assert_eq!(message("0"), Err("this must be from 1 to 20, got 0".to_owned()));
    assert_eq!(message("21"), Err("this must be from 1 to 20, got 21".to_owned()));
    assert_eq!(message("999999999999"), Err("this must be from 1 to 20, got 999999999999".to_owned()));
    assert_eq!(message("4.5"), Err("this must be a whole number, got 4.5".to_owned()));
    assert_eq!(message("-4"), Err("this must be a whole number, got -4".to_owned()));
    assert_eq!(parse_count("", 1, 20), Err(InputProblem::Empty));
}
