//! Values as a person reads them: the one place where digits are cut.
//!
//! A decimal point, a true minus sign, and a space that does not break between number and unit (SI Brochure, 5.4.3). The digits are the
//! same on every device: only Rust's own formatting is used.

use uom::si::f64::Time;
use uom::si::time::second;

use crate::domain::decision::Probability;
use crate::domain::quantity::{Amount, QuantityKind, Unit};
use crate::domain::reading::{Reading, Shown};

/// The space between number and unit.
const NO_BREAK_SPACE: char = '\u{A0}';

/// So many digits of a value count.
const SIGNIFICANT_DIGITS: i32 = 4;

/// Decimals that are ever written.
const MOST_DECIMALS: i32 = 9;

/// A value in the unit that suits its size, to four significant digits, without idle zeros: "8.3 mΩ".
pub fn amount(amount: Amount) -> String {
    in_unit(amount, suited(amount))
}

/// A value in a unit, to four significant digits; in the unit that suits its size where the given one measures something else.
pub fn in_unit(amount: Amount, unit: Unit) -> String {
    let unit = if unit.kind() == amount.kind() { unit } else { suited(amount) };
    with_unit(&number(amount.in_unit(unit).unwrap_or_default()), unit)
}

/// A value without decimals, for what a model says.
pub fn rounded(amount: Amount) -> String {
    let unit = suited(amount);
    with_unit(&fixed(amount.in_unit(unit).unwrap_or_default(), 0), unit)
}

/// A time to two significant digits: "1.3 ms", "57 s", "25 min".
pub fn time(time: Time) -> String {
    let (number, unit) = match time.get::<second>() {
        seconds if seconds < 0.1 => (seconds * 1e3, "ms"),
        seconds if seconds < 99.5 => (seconds, "s"),
        seconds => (seconds / 60.0, "min"),
    };
    format!("{}{NO_BREAK_SPACE}{unit}", roughly(number))
}

/// A value without the digits that its doubt makes idle.
pub fn as_sure(value: Amount, standard_uncertainty: Amount) -> String {
    let unit = suited(value);
    match Doubt::expanded(standard_uncertainty, unit) {
        Some(doubt) => with_unit(&to_place(value.in_unit(unit).unwrap_or_default(), doubt.decimals), unit),
        None => in_unit(value, unit),
    }
}

/// A value to two significant digits, for what a model says: "about 6.3 A".
pub fn about(amount: Amount) -> String {
    format!("about {}", estimate(amount))
}

/// The same where the sentence says already that it is only estimated: "6.3 A".
pub fn estimate(amount: Amount) -> String {
    let unit = suited(amount);
    with_unit(&roughly(amount.in_unit(unit).unwrap_or_default()), unit)
}

/// A plain number to two significant digits, without idle zeros; whole numbers keep every digit.
pub fn roughly(value: f64) -> String {
    without_idle_zeros(&fixed(value, 1 - leading_place(value)))
}

/// A plain number to four significant digits, without idle zeros; whole numbers keep every digit.
pub fn number(value: f64) -> String {
    without_idle_zeros(&fixed(value, SIGNIFICANT_DIGITS - 1 - leading_place(value)))
}

/// A value and its doubt with coverage factor 2 (about 95 %): "0.830 Ω ± 0.042 Ω". Without any doubt, the value alone.
///
/// The doubt has two significant digits and the value ends at the same decimal (GUM 7.2.6).
pub fn measured(value: Amount, standard_uncertainty: Amount) -> String {
    let unit = suited(value);
    let Some(doubt) = Doubt::expanded(standard_uncertainty, unit) else { return in_unit(value, unit) };
    format!("{} ± {}", as_sure(value, standard_uncertainty), doubt.text(unit))
}

/// The size of a difference and its doubt with coverage factor 2, both in the unit that suits the difference: "0.420 mm", "0.080 mm".
/// The doubt has two significant digits and the difference ends at the same decimal (GUM 7.2.6).
pub fn difference(difference: Amount, standard_uncertainty: Amount) -> (String, String) {
    let unit = suited(difference);
    let size = difference.difference_in(unit).unwrap_or_default().abs();
    match Doubt::expanded(standard_uncertainty, unit) {
        Some(doubt) => (with_unit(&to_place(size, doubt.decimals), unit), doubt.text(unit)),
        None => (with_unit(&number(size), unit), with_unit("0", unit)),
    }
}

/// What an instrument showed, with the digits and in the unit that were typed, and its doubt where it has a number.
pub fn reading(reading: &Reading) -> String {
    let unit = reading.unit;
    let as_typed = |value: Amount| {
        let step = reading.step.in_unit(unit).filter(|step| *step > 0.0);
        match (value.in_unit(unit), step) {
            (Some(number), Some(step)) => with_unit(&fixed(number, -leading_place(step)), unit),
            _ => in_unit(value, unit),
        }
    };
    match reading.shown {
        Shown::Value(value) => match reading.standard_uncertainty().and_then(|u| Doubt::expanded(u, unit)) {
            Some(doubt) => format!("{} ± {}", as_typed(value), doubt.text(unit)),
            None => as_typed(value),
        },
        Shown::Above(value) => format!("more than {}", as_typed(value)),
        Shown::Below(value) => format!("less than {}", as_typed(value)),
        Shown::Open => "over range: no path at all".to_owned(),
    }
}

/// An expanded uncertainty (k = 2), cut to two significant digits.
struct Doubt {
    rounded: f64,
    decimals: i32,
}

impl Doubt {
    fn expanded(standard_uncertainty: Amount, unit: Unit) -> Option<Self> {
        let doubt = 2.0 * standard_uncertainty.difference_in(unit)?;
        // Rounding may carry 0.0996 to 0.10, one place up.
        let rounded: f64 = format!("{doubt:.1e}").parse().ok()?;
        (rounded > 0.0 && rounded.is_finite()).then(|| Self { rounded, decimals: 1 - leading_place(rounded) })
    }

    fn text(&self, unit: Unit) -> String {
        with_unit(&to_place(self.rounded, self.decimals), unit)
    }
}

/// What a probability was reckoned from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Grounds {
    /// A number on a display, which always has a doubt.
    Number,
    /// A display that said "more than" or "less than", which can leave none.
    BeyondRange,
}

/// A chance in words: "about 97 in 100", "under 1 in 1000". A reading far from its limit comes out as nought or one in binary numbers;
/// certainty is claimed all the same only where a display said "more than" or "less than".
pub fn chance(probability: Probability, grounds: Grounds) -> String {
    let p = probability.value();
    let is_beyond = grounds == Grounds::BeyondRange;
    if is_beyond && p <= 0.0 {
        "none".to_owned()
    } else if is_beyond && p >= 1.0 {
        "certain".to_owned()
    } else if p < 0.001 {
        "under 1 in 1000".to_owned()
    } else if p > 0.999 {
        "over 999 in 1000".to_owned()
    } else if (0.0095..0.9905).contains(&p) {
        format!("about {:.0} in 100", p * 100.0)
    } else {
        format!("about {:.0} in 1000", p * 1000.0)
    }
}

/// A judged probability, as people say it: "certain", "1 in 100", "30 in 100", and "about" where digits were cut.
pub fn odds(probability: Probability) -> String {
    let p = probability.value();
    let one_in = 1.0 / p;
    let is_whole = |number: f64| (number - number.round()).abs() < 1e-6 * number;
    if p >= 1.0 {
        "certain".to_owned()
    } else if p <= 0.0 {
        "never".to_owned()
    } else if is_whole(one_in) && one_in < 9999.5 {
        format!("1 in {one_in:.0}")
    } else if p > 0.999 {
        "over 999 in 1000".to_owned()
    } else if p >= 0.1 && is_whole(p * 100.0) {
        format!("{:.0} in 100", p * 100.0)
    } else if p >= 0.1 {
        format!("about {} in 1000", fixed(p * 1000.0, 0))
    } else {
        let digits = roughly_whole(one_in);
        let about =
            if is_whole(one_in) && digits.replace(NO_BREAK_SPACE, "") == fixed(one_in, 0) { "" } else { "about " };
        format!("{about}1 in {digits}")
    }
}

/// A number to two significant digits, with its thousands apart where there are five digits or more.
fn roughly_whole(value: f64) -> String {
    let digits = to_place(value, (1 - leading_place(value)).min(0));
    if digits.len() < 5 {
        return digits;
    }
    let apart = |(at, c): (usize, char)| {
        (at > 0 && (digits.len() - at).is_multiple_of(3)).then_some(NO_BREAK_SPACE).into_iter().chain([c])
    };
    digits.chars().enumerate().map(|(at, c)| apart((at, c)).collect::<String>()).collect()
}

/// The unit in which a value reads best.
pub fn suited(value: Amount) -> Unit {
    let at_least = |unit: Unit, least: f64| value.in_unit(unit).is_some_and(|number| number.abs() >= least);
    match value.kind() {
        QuantityKind::Area => Unit::SquareMillimetre,
        QuantityKind::Current if at_least(Unit::Ampere, 0.1) => Unit::Ampere,
        QuantityKind::Current => Unit::Milliampere,
        QuantityKind::Length if at_least(Unit::Millimetre, 500.0) => Unit::Metre,
        QuantityKind::Length => Unit::Millimetre,
        QuantityKind::Mass if at_least(Unit::Kilogram, 1.0) => Unit::Kilogram,
        QuantityKind::Mass => Unit::Gram,
        QuantityKind::Potential => Unit::Volt,
        // Labels print thousands of watts.
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
