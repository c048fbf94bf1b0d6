//! Values as a person reads them: the one place where digits are cut.
//!
//! A decimal point, a true minus sign, and a space that does not break between number and unit (SI Brochure, 5.4.3). The digits are the
//! same on every device: only Rust's own formatting is used.

use crate::domain::decision::Probability;
use crate::domain::finding::Bound;
use crate::domain::quantity::{Amount, QuantityKind, Unit};
use crate::domain::reading::{Reading, Shown};

/// The space between number and unit.
const NO_BREAK_SPACE: char = '\u{A0}';

/// So many digits of a value count.
const SIGNIFICANT_DIGITS: i32 = 4;

/// Decimals that are ever written.
const MOST_DECIMALS: i32 = 9;

/// A value in a unit, to four significant digits; in the unit that suits its size where the given one measures something else.
pub fn amount(amount: Amount, unit: Unit) -> String {
    let Some(number) = amount.in_unit(unit) else { return sized(amount) };
    let decimals = SIGNIFICANT_DIGITS - 1 - leading_place(number);
    with_unit(&without_idle_zeros(&fixed(number, decimals)), unit)
}

/// A value in the unit that suits its size.
pub fn sized(value: Amount) -> String {
    amount(value, unit_for(value))
}

/// A value and its doubt with coverage factor 2 (about 95 %), from the standard uncertainty `u`: "0.830 Ω ± 0.042 Ω".
///
/// The doubt has two significant digits and the value ends at the same decimal (GUM 7.2.6). Without a doubt only the value is written.
pub fn with_doubt(value: Amount, u: Amount, unit: Unit) -> String {
    let (Some(number), Some(doubt)) = (value.in_unit(unit), u.difference_in(unit).map(|u| 2.0 * u)) else {
        return sized(value);
    };
    if doubt <= 0.0 || !doubt.is_finite() {
        return amount(value, unit);
    }
    // Rounding may carry a doubt of 0.0996 to 0.10, one place up.
    let rounded: f64 = format!("{doubt:.1e}").parse().unwrap_or(doubt);
    let decimals = 1 - leading_place(rounded);
    let value = with_unit(&to_place(number, decimals), unit);
    let doubt = with_unit(&to_place(rounded, decimals), unit);
    format!("{value} ± {doubt}")
}

/// What stood on the display, with the digits that were typed.
pub fn shown(reading: &Reading) -> String {
    let unit = reading.unit;
    let as_typed = |value: Amount| {
        let step = reading.step.in_unit(unit).filter(|step| *step > 0.0);
        match (value.in_unit(unit), step) {
            (Some(number), Some(step)) => with_unit(&fixed(number, -leading_place(step)), unit),
            _ => amount(value, unit),
        }
    };
    match reading.shown {
        Shown::Value(value) => as_typed(value),
        Shown::Above(value) => format!("more than {}", as_typed(value)),
        Shown::Below(value) => format!("less than {}", as_typed(value)),
        Shown::Open => "over range".to_owned(),
    }
}

/// A limit: "at least 9.5 mm".
pub fn bound(bound: &Bound, unit: Unit) -> String {
    match *bound {
        Bound::AtLeast(low) => format!("at least {}", amount(low, unit)),
        Bound::AtMost(high) => format!("at most {}", amount(high, unit)),
        Bound::Between(low, high) => format!("from {} to {}", amount(low, unit), amount(high, unit)),
    }
}

/// One value, or two where they differ: "230 V", "220 V to 240 V".
pub fn span(low: Amount, high: Amount, unit: Unit) -> String {
    let (first, last) = (amount(low, unit), amount(high, unit));
    if first == last { first } else { format!("{first} to {last}") }
}

/// What a probability was reckoned from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Grounds {
    /// A number on a display, which always has a doubt.
    Number,
    /// An over-range display, which can leave none.
    OverRange,
}

/// A probability: "about 97 %", "under 1 in 1000". Certainty is only ever claimed of an over-range display.
pub fn probability(probability: Probability, grounds: Grounds) -> String {
    let p = probability.value();
    let is_certain = grounds == Grounds::OverRange;
    let space = NO_BREAK_SPACE;
    if is_certain && p >= 1.0 {
        format!("100{space}%")
    } else if is_certain && p <= 0.0 {
        format!("0{space}%")
    } else if p < 0.001 {
        format!("under 1{space}in{space}1000")
    } else if p > 0.999 {
        format!("over 999{space}in{space}1000")
    } else if (0.0095..0.9905).contains(&p) {
        format!("about {:.0}{space}%", p * 100.0)
    } else {
        format!("about {:.0}{space}in{space}1000", p * 1000.0)
    }
}

/// The unit that suits a value's size.
pub fn unit_for(value: Amount) -> Unit {
    let at_least = |unit: Unit, least: f64| value.in_unit(unit).is_some_and(|number| number.abs() >= least);
    match value.kind() {
        QuantityKind::Area => Unit::SquareMillimetre,
        QuantityKind::Current if at_least(Unit::Ampere, 0.1) => Unit::Ampere,
        QuantityKind::Current => Unit::Milliampere,
        QuantityKind::Length if at_least(Unit::Metre, 1.0) => Unit::Metre,
        QuantityKind::Length => Unit::Millimetre,
        QuantityKind::Mass if at_least(Unit::Kilogram, 1.0) => Unit::Kilogram,
        QuantityKind::Mass => Unit::Gram,
        QuantityKind::Potential => Unit::Volt,
        // Labels print thousands of watts, so kilowatts begin late.
        QuantityKind::Power if at_least(Unit::Kilowatt, 10.0) => Unit::Kilowatt,
        QuantityKind::Power => Unit::Watt,
        QuantityKind::Resistance if at_least(Unit::Gigohm, 1.0) => Unit::Gigohm,
        QuantityKind::Resistance if at_least(Unit::Megohm, 1.0) => Unit::Megohm,
        QuantityKind::Resistance if at_least(Unit::Kilohm, 1.0) => Unit::Kilohm,
        QuantityKind::Resistance if at_least(Unit::Ohm, 0.1) || !at_least(Unit::Milliohm, 1e-6) => Unit::Ohm,
        QuantityKind::Resistance => Unit::Milliohm,
        QuantityKind::ResistancePerLength => Unit::OhmPerKilometre,
        QuantityKind::Temperature => Unit::DegreeCelsius,
    }
}

/// The power of ten of the first digit: 2 for 230, -2 for 0.083.
fn leading_place(number: f64) -> i32 {
    let scientific = format!("{number:.3e}");
    scientific.split_once('e').and_then(|(_, exponent)| exponent.parse().ok()).unwrap_or_default()
}

/// A number with so many decimals; whole numbers keep every digit.
fn fixed(number: f64, decimals: i32) -> String {
    let decimals = usize::try_from(decimals.clamp(0, MOST_DECIMALS)).unwrap_or_default();
    let digits = format!("{:.decimals$}", number.abs());
    let is_zero = digits.bytes().all(|byte| matches!(byte, b'0' | b'.'));
    if number < 0.0 && !is_zero { format!("\u{2212}{digits}") } else { digits }
}

/// A number cut at a decimal or, below zero decimals, at tens, hundreds and so on.
fn to_place(number: f64, decimals: i32) -> String {
    if decimals >= 0 {
        return fixed(number, decimals);
    }
    let rounded = format!("{}e{}", fixed(number / power_of_ten(-decimals), 0).replace('\u{2212}', "-"), -decimals);
    fixed(rounded.parse().unwrap_or(number), 0)
}

fn power_of_ten(exponent: i32) -> f64 {
    format!("1e{exponent}").parse().unwrap_or(1.0)
}

fn without_idle_zeros(digits: &str) -> String {
    if digits.contains('.') { digits.trim_end_matches('0').trim_end_matches('.').to_owned() } else { digits.to_owned() }
}

fn with_unit(digits: &str, unit: Unit) -> String {
    format!("{digits}{NO_BREAK_SPACE}{}", unit.symbol())
}
