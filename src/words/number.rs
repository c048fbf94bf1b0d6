//! Numbers in words: the one place where digits are cut.
//!
//! A value stands with its expanded uncertainty (k = 2), that one to two significant digits and the value to the same decimal
//! (GUM 7.2.6); between number and unit is a space that does not break (SI Brochure, 9th edition, 5.4.3).

use crate::domain::decision::Probability;
use crate::domain::quantity::{Amount, QuantityKind, Unit};
use crate::domain::reading::{Reading, Shown};

/// Joins number and unit.
const SPACE: char = '\u{a0}';

/// An amount in the unit that suits its size, to four significant digits at most, without idle zeros.
pub fn amount(amount: Amount) -> String {
    let unit = suited(amount);
    format!("{}{SPACE}{}", number(amount.in_unit(unit).unwrap_or(0.0)), unit.symbol())
}

/// An amount without decimals, for what a model says.
pub fn rounded(amount: Amount) -> String {
    let unit = suited(amount);
    format!("{}{SPACE}{}", fixed(amount.in_unit(unit).unwrap_or(0.0), 0), unit.symbol())
}

/// A value with its doubt: `0.83 Ω ± 0.042 Ω`. Without any doubt, the value alone.
pub fn measured(value: Amount, standard_uncertainty: Amount) -> String {
    let unit = suited(value);
    let number_of = |amount: Amount| amount.in_unit(unit).unwrap_or(0.0);
    let expanded = 2.0 * standard_uncertainty.difference_in(unit).unwrap_or(0.0);
    if expanded <= 0.0 {
        return amount(value);
    }
    let decimals = decimals_for(expanded, 2);
    format!(
        "{}{SPACE}{symbol} ± {}{SPACE}{symbol}",
        fixed(number_of(value), decimals),
        fixed(expanded, decimals),
        symbol = unit.symbol()
    )
}

/// What an instrument showed, in the unit it was typed in, with its doubt where it has a number.
pub fn reading(reading: &Reading) -> String {
    let plain = |value: Amount| {
        let n = value.in_unit(reading.unit).unwrap_or(0.0);
        let step = reading.step.in_unit(reading.unit).unwrap_or(1.0);
        format!("{}{SPACE}{}", fixed(n, decimals_for(step, 1)), reading.unit.symbol())
    };
    match reading.shown {
        Shown::Value(value) => match doubt(reading) {
            Some(doubt) => format!("{} ± {doubt}", plain(value)),
            None => plain(value),
        },
        Shown::Above(value) => format!("more than {}", plain(value)),
        Shown::Below(value) => format!("less than {}", plain(value)),
        Shown::Open => "over range: no path at all".to_owned(),
    }
}

/// The expanded uncertainty of a reading, in the unit it was typed in.
fn doubt(reading: &Reading) -> Option<String> {
    let expanded = 2.0 * reading.standard_uncertainty()?.difference_in(reading.unit)?;
    let symbol = reading.unit.symbol();
    (expanded > 0.0).then(|| format!("{}{SPACE}{symbol}", fixed(expanded, decimals_for(expanded, 2))))
}

/// A chance in words, never a hundred or nought per cent: "about 97 in 100", "under 1 in 1000". Certain outcomes come from a display
/// that said "more than" or "less than".
pub fn chance(probability: Probability) -> String {
    let p = probability.value();
    if p <= 0.0 {
        "none".to_owned()
    } else if p >= 1.0 {
        "certain".to_owned()
    } else if p < 0.001 {
        "under 1 in 1000".to_owned()
    } else if p > 0.999 {
        "over 999 in 1000".to_owned()
    } else if !(0.01..=0.99).contains(&p) {
        format!("about {:.0} in 1000", p * 1000.0)
    } else {
        format!("about {:.0} in 100", p * 100.0)
    }
}

/// A plain number to four significant digits at most.
pub fn number(value: f64) -> String {
    if value == 0.0 {
        return "0".to_owned();
    }
    let text = fixed(value, decimals_for(value, 4));
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}

/// How many decimals show `significant` digits of a value; none for large values.
fn decimals_for(value: f64, significant: i32) -> usize {
    let magnitude = libm::floor(libm::log10(value.abs()) + 1e-9);
    let wanted = f64::from(significant) - 1.0 - magnitude;
    (0..=9_u8).find(|&n| f64::from(n) >= wanted).map_or(9, usize::from)
}

/// A number with so many decimals and a proper minus sign.
fn fixed(value: f64, decimals: usize) -> String {
    format!("{value:.decimals$}").replace('-', "\u{2212}")
}

/// The unit in which an amount reads best.
fn suited(amount: Amount) -> Unit {
    let in_unit = |unit| amount.in_unit(unit).map_or(0.0, f64::abs);
    match amount.kind() {
        QuantityKind::Area => Unit::SquareMillimetre,
        QuantityKind::Current if in_unit(Unit::Ampere) < 0.1 => Unit::Milliampere,
        QuantityKind::Current => Unit::Ampere,
        QuantityKind::Length if in_unit(Unit::Millimetre) < 500.0 => Unit::Millimetre,
        QuantityKind::Length => Unit::Metre,
        QuantityKind::Mass if in_unit(Unit::Kilogram) < 1.0 => Unit::Gram,
        QuantityKind::Mass => Unit::Kilogram,
        QuantityKind::Potential => Unit::Volt,
        QuantityKind::Power => Unit::Watt,
        QuantityKind::Resistance => suited_resistance(in_unit(Unit::Ohm)),
        QuantityKind::ResistancePerLength => Unit::OhmPerKilometre,
        QuantityKind::Temperature => Unit::DegreeCelsius,
    }
}

fn suited_resistance(ohms: f64) -> Unit {
    if ohms >= 1e9 {
        Unit::Gigohm
    } else if ohms >= 1e6 {
        Unit::Megohm
    } else if ohms >= 1e3 {
        Unit::Kilohm
    } else if ohms < 0.1 {
        Unit::Milliohm
    } else {
        Unit::Ohm
    }
}
