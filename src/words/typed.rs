//! What a person types, or an instrument that types like a keyboard, read as a value.
//!
//! Nothing is guessed: whatever could be two different numbers is refused with a reason.

use super::input_problem::InputProblem;
use super::unit_spelling::{Spelled, unit_of, unit_of_another};
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{Amount, QuantityKind, Unit};
use crate::domain::reading::{Reading, Shown};

/// More characters than any reading has.
const MOST_CHARACTERS: usize = 40;

/// More digits than any display has; more would not survive the way through binary numbers.
const MOST_DIGITS: usize = 15;

/// What displays and people write for "over range".
const OVER_RANGE: &[&str] =
    &["∞", "0L", "INFINITE", "INFINITY", "OFL", "OL", "OPEN", "OPENCIRCUIT", "OVERLOAD", "OVERRANGE"];

/// Stands for every space that may part thousands: no ordinary space does, because two numbers may stand so.
pub(super) const THOUSANDS_SPACE: char = '\u{2009}';

/// Reads a typed reading of `asked`. A unit that was typed goes before the one that was tapped.
///
/// Point and comma both part decimals; `4k7`, `0R37` and `R37` are read as in IEC 60062; `OL`, `∞` and a lone `1.` are an open circuit where a
/// resistance is asked; `>` and `<` make a value beyond the range. One step of the last typed digit becomes the reading's step.
///
/// # Errors
/// [`InputProblem`] where the text is no reading of that quantity, or could be two.
pub fn parse_reading(
    typed: &str,
    asked: QuantityKind,
    unit_tapped: Unit,
    instrument: Instrument,
) -> Result<Reading, InputProblem> {
    if typed.trim().is_empty() {
        return Err(InputProblem::Empty);
    }
    if typed.chars().count() > MOST_CHARACTERS {
        return Err(InputProblem::TooLong { typed: typed.to_owned() });
    }
    let text = plain(typed);
    let reading = |shown, step, unit| Reading { shown, step, unit, instrument, own: None, typed: typed.to_owned() };
    if is_over_range(&text, asked) {
        return if asked == QuantityKind::Resistance {
            Ok(reading(Shown::Open, Amount::new(0.0, unit_tapped), unit_tapped))
        } else {
            Err(InputProblem::NoOverRange { typed: typed.to_owned(), asked })
        };
    }
    let (beyond, text) = beyond_range(&text);
    let Number { value, step, unit } = number(typed, text, asked, unit_tapped)?;
    let amount = Amount::new(value, unit);
    check_size(typed, asked, value, unit)?;
    let shown = match beyond {
        None => Shown::Value(amount),
        Some(Beyond::Above) => Shown::Above(amount),
        Some(Beyond::Below) => Shown::Below(amount),
    };
    Ok(reading(shown, Amount::new(step, unit), unit))
}

/// Reads a typed number of things from `least` to `most`.
///
/// # Errors
/// [`InputProblem`] where the text is no whole number or lies outside.
pub fn parse_count(typed: &str, least: u8, most: u8) -> Result<u8, InputProblem> {
    if typed.trim().is_empty() {
        return Err(InputProblem::Empty);
    }
    let text = plain(typed);
    if text.is_empty() || !text.bytes().all(|byte| byte.is_ascii_digit()) {
        return Err(InputProblem::NotACount { typed: typed.to_owned() });
    }
    let outside = || InputProblem::OutsideCount { typed: typed.to_owned(), least, most };
    text.parse().ok().filter(|count| (least..=most).contains(count)).ok_or_else(outside)
}

/// A number with its unit.
struct Number {
    value: f64,
    /// One step of its last digit.
    step: f64,
    unit: Unit,
}

enum Beyond {
    Above,
    Below,
}

/// Characters that look alike made one, outer spaces gone.
pub(super) fn plain(typed: &str) -> String {
    let mut text = String::with_capacity(typed.len());
    for c in typed.trim().chars() {
        match c {
            '\u{FF01}'..='\u{FF5E}' => text.push(char::from_u32(u32::from(c) - 0xFEE0).unwrap_or(c)),
            '\u{A0}' | '\u{2009}' | '\u{202F}' => text.push(THOUSANDS_SPACE),
            'µ' | 'μ' => text.push('u'),
            '\u{2126}' | 'ω' => text.push('Ω'),
            '−' | '–' | '—' => text.push('-'),
            '²' => text.push('2'),
            '^' => {}
            'º' | '˚' => text.push('°'),
            '℃' => text.push_str("°C"),
            '㎟' => text.push_str("mm2"),
            other => text.push(other),
        }
    }
    text
}

/// A plain number, zero or more, with comma or point; `None` for anything else.
pub fn parse_number(typed: &str) -> Option<f64> {
    let number: f64 = plain(typed).replace(',', ".").parse().ok()?;
    (number.is_finite() && number >= 0.0).then_some(number)
}

/// Also a lone `1.`: older displays leave only the leading one lit.
fn is_over_range(text: &str, asked: QuantityKind) -> bool {
    let letters: String =
        text.chars().filter(|c| !c.is_whitespace() && *c != '.').flat_map(char::to_uppercase).collect();
    let bare = letters.trim_end_matches(['Ω', 'M', 'K']);
    OVER_RANGE.contains(&letters.as_str())
        || OVER_RANGE.contains(&bare)
        || (text == "1." && asked == QuantityKind::Resistance)
}

fn beyond_range(text: &str) -> (Option<Beyond>, &str) {
    let small = text.to_lowercase();
    for (sign, beyond) in
        [(">", Beyond::Above), ("≥", Beyond::Above), ("more than ", Beyond::Above), ("over ", Beyond::Above)]
            .into_iter()
            .chain([
                ("<", Beyond::Below),
                ("≤", Beyond::Below),
                ("less than ", Beyond::Below),
                ("under ", Beyond::Below),
            ])
    {
        if small.starts_with(sign) {
            let rest = text.get(sign.len()..).unwrap_or_default().trim_start_matches('=');
            return (Some(beyond), rest.trim());
        }
    }
    (None, text)
}

fn number(typed: &str, text: &str, asked: QuantityKind, unit_tapped: Unit) -> Result<Number, InputProblem> {
    let text = text.replace([' ', '\t'], " ");
    let (is_negative, text) = match text.strip_prefix('-') {
        Some(rest) => (true, rest.trim_start()),
        None => (false, text.strip_prefix('+').unwrap_or(&text).trim_start()),
    };
    let coded = if asked == QuantityKind::Resistance { coded(text) } else { None };
    if let Some(coded) = coded {
        return Ok(if is_negative { Number { value: -coded.value, ..coded } } else { coded });
    }
    let is_of_number = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | THOUSANDS_SPACE);
    let end = text.find(|c| !is_of_number(c)).unwrap_or(text.len());
    let (digits, rest) = text.split_at_checked(end).unwrap_or((text, ""));
    let decimal = Decimal::read(typed, digits)?;
    let (unit, exponent) = unit(typed, rest, asked, unit_tapped)?;
    let value = decimal.value(exponent);
    // A display that reads "-0.00" reads nothing.
    let value = if is_negative && value > 0.0 { -value } else { value };
    Ok(Number { value, step: decimal.step(exponent), unit })
}

/// Digits before and behind the decimal sign.
pub(super) struct Decimal {
    whole: String,
    decimals: String,
}

impl Decimal {
    pub(super) fn read(typed: &str, digits: &str) -> Result<Self, InputProblem> {
        let typed = || typed.to_owned();
        let digits = digits.trim_matches(THOUSANDS_SPACE);
        if !digits.contains(|c: char| c.is_ascii_digit()) {
            return Err(InputProblem::NotANumber { typed: typed() });
        }
        let separators = digits.chars().filter(|c| matches!(c, '.' | ',')).count();
        let (whole, decimals) = digits.split_once(['.', ',']).unwrap_or((digits, ""));
        let groups: Vec<&str> = whole.split(THOUSANDS_SPACE).collect();
        let has_groups = groups.len() > 1;
        let is_grouped =
            groups.split_first().is_some_and(|(first, rest)| first.len() <= 3 && rest.iter().all(|g| g.len() == 3));
        if decimals.contains(THOUSANDS_SPACE) || has_groups && !is_grouped {
            return Err(InputProblem::TwoNumbers { typed: typed() });
        }
        // "1,234" is a thousand to one reader and one to another; "0,370" and "1.234" are clear.
        let may_be_thousands = decimals.len() == 3 && (1..=3).contains(&whole.len()) && !whole.starts_with('0');
        if separators > 1 || (digits.contains(',') && may_be_thousands && !has_groups) {
            return Err(InputProblem::AmbiguousSeparators { typed: typed() });
        }
        let whole = groups.concat();
        if whole.len() + decimals.len() > MOST_DIGITS {
            return Err(InputProblem::TooLong { typed: typed() });
        }
        Ok(Self { whole, decimals: decimals.to_owned() })
    }

    /// The value times a power of ten, rounded once.
    pub(super) fn value(&self, exponent: i32) -> f64 {
        format!("0{}.{}0e{exponent}", self.whole, self.decimals).parse().unwrap_or_default()
    }

    fn step(&self, exponent: i32) -> f64 {
        let decimals = i32::try_from(self.decimals.len()).unwrap_or_default();
        format!("1e{}", exponent - decimals).parse().unwrap_or_default()
    }
}

/// A resistance with its prefix in place of the decimal sign: `4k7`, `0R37`, `R37`, `1M5` (IEC 60062). A small `m` is left out: `1m20` is a
/// length.
fn coded(text: &str) -> Option<Number> {
    let text = text.trim_end_matches("Ω").trim_end();
    let at = text.find(|c: char| !c.is_ascii_digit())?;
    let (whole, rest) = text.split_at_checked(at)?;
    let mut rest = rest.chars();
    let unit = match rest.next()? {
        'R' | 'r' | 'Ω' => Unit::Ohm,
        'K' | 'k' => Unit::Kilohm,
        'M' => Unit::Megohm,
        'G' => Unit::Gigohm,
        _ => return None,
    };
    let decimals = rest.as_str();
    let is_code = !decimals.is_empty() && decimals.bytes().all(|byte| byte.is_ascii_digit());
    let fits = whole.len() + decimals.len() <= MOST_DIGITS;
    let decimal = (is_code && fits).then(|| Decimal { whole: whole.to_owned(), decimals: decimals.to_owned() })?;
    Some(Number { value: decimal.value(0), step: decimal.step(0), unit })
}

fn unit(typed: &str, rest: &str, asked: QuantityKind, unit_tapped: Unit) -> Result<Spelled, InputProblem> {
    let spelling: String = rest.chars().filter(|c| !c.is_whitespace()).collect();
    let typed = || typed.to_owned();
    let spelled = if spelling.is_empty() { Some((unit_tapped, 0)) } else { unit_of(asked, &spelling) };
    if let Some((unit, exponent)) = spelled {
        return if unit.kind() == asked {
            Ok((unit, exponent))
        } else {
            Err(InputProblem::OtherQuantity { typed: typed(), asked, unit })
        };
    }
    if let Some(unit) = unit_of_another(asked, &spelling) {
        Err(InputProblem::OtherQuantity { typed: typed(), asked, unit })
    } else if spelling.contains(|c: char| c.is_ascii_digit()) {
        Err(InputProblem::TwoNumbers { typed: typed() })
    } else {
        Err(InputProblem::UnknownUnit { typed: typed(), asked, unit: rest.trim().to_owned() })
    }
}

fn check_size(typed: &str, asked: QuantityKind, value: f64, unit: Unit) -> Result<(), InputProblem> {
    let typed = typed.to_owned();
    let amount = Amount::new(value, unit);
    let can_be_negative = asked == QuantityKind::Temperature;
    let is_always_more = matches!(
        asked,
        QuantityKind::Area | QuantityKind::Length | QuantityKind::Mass | QuantityKind::ResistancePerLength
    );
    if can_be_negative && value < -273.15 {
        Err(InputProblem::TooCold { typed })
    } else if is_always_more && value <= 0.0 {
        Err(InputProblem::NotMoreThanZero { typed, asked, value: amount, unit })
    } else if value < 0.0 && !can_be_negative {
        Err(InputProblem::Negative { typed, asked, value: amount, unit })
    } else if is_within_reach(amount) {
        Ok(())
    } else {
        Err(InputProblem::OutOfReach { typed, asked, value: amount, unit })
    }
}

/// Whether any instrument of this trade could show it: more is a slip of the unit.
fn is_within_reach(amount: Amount) -> bool {
    let (unit, most) = match amount.kind() {
        QuantityKind::Area => (Unit::SquareMillimetre, 1e4),
        QuantityKind::Current => (Unit::Ampere, 1e4),
        QuantityKind::Length => (Unit::Metre, 1e3),
        QuantityKind::Mass => (Unit::Kilogram, 1e3),
        QuantityKind::Potential => (Unit::Volt, 1e5),
        QuantityKind::Power => (Unit::Watt, 1e6),
        QuantityKind::Resistance => (Unit::Gigohm, 1e4),
        QuantityKind::ResistancePerLength => (Unit::OhmPerKilometre, 1e9),
        QuantityKind::Temperature => (Unit::DegreeCelsius, 400.0),
    };
    amount.in_unit(unit).is_some_and(|number| number.is_finite() && number.abs() <= most)
}
