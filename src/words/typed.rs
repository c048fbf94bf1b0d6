//! What a person types, read as a value: comma or point, a unit behind it or none, IEC 60062 notation, over-range.

use crate::domain::instrument::Instrument;
use crate::domain::quantity::{Amount, QuantityKind, Unit};
use crate::domain::reading::{Reading, Shown};

/// Why a typed text is no reading. The text itself is never lost: it stays in the field.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum InputProblem {
    /// Nothing was typed.
    Empty,
    /// There is no number in it.
    NoNumber(String),
    /// There is more than one number, or a separator that could mean two things.
    Ambiguous(String),
    /// The unit measures something else.
    WrongUnit(String, QuantityKind),
    /// What stands behind the number is no unit.
    UnknownUnit(String),
    /// It must be more than nothing.
    NotPositive(String, QuantityKind),
    /// No instrument shows such a value.
    OutOfReach(String, QuantityKind),
}

impl InputProblem {
    /// What is wrong, in a sentence without full stop.
    pub fn message(&self) -> String {
        match self {
            Self::Empty => "nothing is typed yet".to_owned(),
            Self::NoNumber(text) => format!("there is no number in “{text}”"),
            Self::Ambiguous(text) => format!("“{text}” could mean two numbers"),
            Self::WrongUnit(text, kind) => format!("{} is asked for, got “{text}”", noun(*kind)),
            Self::UnknownUnit(text) => format!("“{text}” is no unit that is known here"),
            Self::NotPositive(text, kind) => format!("{} must be more than zero, got {text}", noun(*kind)),
            Self::OutOfReach(text, kind) => format!("no instrument shows {} of {text}", noun(*kind)),
        }
    }

    /// What to type instead.
    pub const fn hint(&self) -> &'static str {
        match self {
            Self::Empty | Self::NoNumber(_) => " Type what the display shows, such as 0.37 or OL.",
            Self::Ambiguous(_) => " Type one number, with one point or comma: 1234.5.",
            Self::WrongUnit(..) | Self::UnknownUnit(_) => " Leave the unit out and tap it.",
            Self::NotPositive(..) => " For an open circuit type OL.",
            Self::OutOfReach(..) => " Look at the unit again.",
        }
    }
}

/// Reads what was typed for a quantity. Without a unit in the text, the tapped one counts.
///
/// # Errors
///
/// An [`InputProblem`] that keeps the text.
pub fn parse_reading(
    typed: &str,
    asked: QuantityKind,
    tapped: Unit,
    instrument: Instrument,
) -> Result<Reading, InputProblem> {
    let text = typed.trim();
    if text.is_empty() {
        return Err(InputProblem::Empty);
    }
    let reading = |shown, step, unit| Reading { shown, step, unit, instrument, typed: typed.to_owned() };
    if is_over_range(text) {
        return Ok(reading(Shown::Open, Amount::new(1.0, tapped), tapped));
    }
    let (side, rest) = match text.chars().next() {
        Some('>' | '≥') => (Side::Above, text.trim_start_matches(['>', '≥', '=']).trim_start()),
        Some('<' | '≤') => (Side::Below, text.trim_start_matches(['<', '≤', '=']).trim_start()),
        _ => (Side::At, text),
    };
    let Figure { value, step, unit } = figure(rest, asked, tapped)?;
    if value < 0.0 && asked != QuantityKind::Temperature || value == 0.0 && must_be_positive(asked) {
        return Err(InputProblem::NotPositive(text.to_owned(), asked));
    }
    let amount = Amount::new(value, unit);
    if !is_within_reach(amount) {
        return Err(InputProblem::OutOfReach(text.to_owned(), asked));
    }
    let shown = match side {
        Side::At => Shown::Value(amount),
        Side::Above => Shown::Above(amount),
        Side::Below => Shown::Below(amount),
    };
    Ok(reading(shown, Amount::new(step, unit), unit))
}

enum Side {
    At,
    Above,
    Below,
}

struct Figure {
    value: f64,
    step: f64,
    unit: Unit,
}

fn is_over_range(text: &str) -> bool {
    let plain: String = text.chars().filter(|c| !c.is_whitespace() && *c != '.').collect::<String>().to_lowercase();
    matches!(plain.as_str(), "ol" | "0l" | "open" | "∞" | "inf" | "infinity" | "overload" | "1---")
}

/// Zero ohms is a fair reading; a zero length, mass or area is a slip.
const fn must_be_positive(kind: QuantityKind) -> bool {
    matches!(kind, QuantityKind::Length | QuantityKind::Mass | QuantityKind::Area)
}

/// Whether any instrument of this trade could show it.
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
    amount.in_unit(unit).is_some_and(|n| n.is_finite() && n.abs() <= most)
}

fn figure(text: &str, asked: QuantityKind, tapped: Unit) -> Result<Figure, InputProblem> {
    let text = text.replace(['\u{a0}', '\u{202f}', '\u{2009}'], " ").replace(['−', '–'], "-");
    let digits_end = text
        .char_indices()
        .find(|&(at, c)| !(c.is_ascii_digit() || c == '.' || c == ',' || at == 0 && matches!(c, '-' | '+')))
        .map_or(text.len(), |(at, _)| at);
    let (digits, rest) = text.split_at(digits_end);
    let (decimals, prefix_unit, rest) = embedded(rest);
    let number = match decimals {
        Some(decimals) => format!("{}.{decimals}", if digits.is_empty() { "0" } else { digits }),
        None => digits.replace(',', "."),
    };
    if !number.bytes().any(|b| b.is_ascii_digit()) {
        return Err(InputProblem::NoNumber(text));
    }
    let is_ambiguous = number.matches('.').count() > 1 || rest.trim_start().starts_with(|c: char| c.is_ascii_digit());
    if is_ambiguous {
        return Err(InputProblem::Ambiguous(text));
    }
    let Ok(value) = number.parse::<f64>() else { return Err(InputProblem::NoNumber(text)) };
    let step = last_step(&number);
    let unit = match prefix_unit {
        Some(unit) if unit.kind() == asked => unit,
        Some(_) => return Err(InputProblem::WrongUnit(text, asked)),
        None => named_unit(rest.trim(), asked, tapped)?,
    };
    Ok(Figure { value, step, unit })
}

/// A letter in the place of the decimal point: `0R37`, `4k7`, `1M5` (IEC 60062). Gives the decimals, the unit, and what follows.
fn embedded(rest: &str) -> (Option<&str>, Option<Unit>, &str) {
    let mut letters = rest.chars();
    let unit = match letters.next() {
        Some('R' | 'r') => Unit::Ohm,
        Some('k' | 'K') => Unit::Kilohm,
        Some('M') => Unit::Megohm,
        Some('G') => Unit::Gigohm,
        _ => return (None, None, rest),
    };
    let after = letters.as_str();
    let end = after.find(|c: char| !c.is_ascii_digit()).unwrap_or(after.len());
    let (decimals, beyond) = after.split_at(end);
    match (decimals.is_empty(), unit) {
        (false, _) => (Some(decimals), Some(unit), beyond),
        (true, Unit::Ohm) if after.trim().is_empty() => (None, Some(unit), ""),
        (true, _) => (None, None, rest),
    }
}

/// One step of the last digit of a plain decimal number.
fn last_step(number: &str) -> f64 {
    let decimals = number.split_once('.').map_or(0, |(_, decimals)| decimals.len());
    format!("1e-{decimals}").parse().unwrap_or(1.0)
}

fn named_unit(named: &str, asked: QuantityKind, tapped: Unit) -> Result<Unit, InputProblem> {
    if named.is_empty() {
        return Ok(tapped);
    }
    match unit(named, asked) {
        Some(unit) if unit.kind() == asked => Ok(unit),
        Some(_) => Err(InputProblem::WrongUnit(named.to_owned(), asked)),
        None => Err(InputProblem::UnknownUnit(named.to_owned())),
    }
}

/// The unit that is spelled so. Between `m` and `M` only the letter's size tells; a lone prefix counts where ohms are asked for.
fn unit(named: &str, asked: QuantityKind) -> Option<Unit> {
    let of_resistance = asked == QuantityKind::Resistance;
    let ohm_free = named.replace(['Ω', 'Ω'], "ohm").replace('µ', "u");
    Some(match ohm_free.as_str() {
        "mohm" | "mohms" | "milliohm" | "milliohms" => Unit::Milliohm,
        "m" | "mR" if of_resistance => Unit::Milliohm,
        "ohm" | "ohms" | "Ohm" | "Ohms" | "OHM" | "R" => Unit::Ohm,
        "kohm" | "Kohm" | "kOhm" | "kilohm" => Unit::Kilohm,
        "k" | "K" if of_resistance => Unit::Kilohm,
        "Mohm" | "MOhm" | "MOHM" | "megohm" | "Megohm" | "megohms" => Unit::Megohm,
        "M" if of_resistance => Unit::Megohm,
        "Gohm" | "GOhm" | "gigohm" => Unit::Gigohm,
        "G" if of_resistance => Unit::Gigohm,
        "ohm/km" => Unit::OhmPerKilometre,
        "mm" => Unit::Millimetre,
        "cm" => Unit::Centimetre,
        "m" | "metre" | "metres" | "meter" | "meters" => Unit::Metre,
        "mm2" | "mm²" | "sqmm" => Unit::SquareMillimetre,
        "g" | "gram" | "grams" => Unit::Gram,
        "kg" => Unit::Kilogram,
        "A" | "a" | "amp" | "amps" => Unit::Ampere,
        "mA" | "ma" => Unit::Milliampere,
        "V" | "v" | "volt" | "volts" => Unit::Volt,
        "W" | "w" | "watt" | "watts" => Unit::Watt,
        "kW" | "kw" => Unit::Kilowatt,
        "°C" | "C" | "°c" | "ºC" | "degC" | "c" => Unit::DegreeCelsius,
        _ => return None,
    })
}

const fn noun(kind: QuantityKind) -> &'static str {
    match kind {
        QuantityKind::Area => "an area",
        QuantityKind::Current => "a current",
        QuantityKind::Length => "a length",
        QuantityKind::Mass => "a mass",
        QuantityKind::Potential => "a voltage",
        QuantityKind::Power => "a power",
        QuantityKind::Resistance => "a resistance",
        QuantityKind::ResistancePerLength => "a resistance per length",
        QuantityKind::Temperature => "a temperature",
    }
}
