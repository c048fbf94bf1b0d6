//! How people spell units.

use crate::domain::quantity::{QuantityKind, Unit};

/// A spelled unit: so many powers of ten of one of our units.
pub(super) type Spelled = (Unit, i32);

/// Every kind of quantity, in the order a spelling is looked for.
const KINDS: [QuantityKind; 9] = [
    QuantityKind::Length,
    QuantityKind::Resistance,
    QuantityKind::Current,
    QuantityKind::Potential,
    QuantityKind::Power,
    QuantityKind::Mass,
    QuantityKind::Temperature,
    QuantityKind::Area,
    QuantityKind::ResistancePerLength,
];

/// The unit of a quantity that `spelling` stands for. Spaces are gone by then, and signs that look alike are one.
pub(super) fn unit_of(kind: QuantityKind, spelling: &str) -> Option<Spelled> {
    let small = spelling.to_lowercase();
    let small = small.as_str();
    Some(match kind {
        QuantityKind::Area => match small {
            "mm2" | "sqmm" | "sq.mm" => (Unit::SquareMillimetre, 0),
            "cm2" | "sqcm" => (Unit::SquareMillimetre, 2),
            _ => return None,
        },
        QuantityKind::Current => match small {
            "a" | "amp" | "amps" | "ampere" | "amperes" => (Unit::Ampere, 0),
            "ma" | "milliamp" | "milliamps" => (Unit::Milliampere, 0),
            "ua" => (Unit::Milliampere, -3),
            _ => return None,
        },
        QuantityKind::Length => match small {
            "m" | "metre" | "metres" | "meter" | "meters" => (Unit::Metre, 0),
            "dm" => (Unit::Centimetre, 1),
            "cm" => (Unit::Centimetre, 0),
            "mm" => (Unit::Millimetre, 0),
            "um" => (Unit::Millimetre, -3),
            _ => return None,
        },
        QuantityKind::Mass => match small {
            "mg" => (Unit::Gram, -3),
            "g" | "gram" | "grams" | "gramme" | "grammes" => (Unit::Gram, 0),
            "kg" | "kilo" | "kilos" => (Unit::Kilogram, 0),
            _ => return None,
        },
        QuantityKind::Potential => match small {
            "mv" => (Unit::Volt, -3),
            "v" | "volt" | "volts" => (Unit::Volt, 0),
            "kv" => (Unit::Volt, 3),
            _ => return None,
        },
        QuantityKind::Power => match (spelling, small) {
            ("mW", _) => (Unit::Watt, -3),
            (_, "w" | "watt" | "watts") => (Unit::Watt, 0),
            (_, "kw") => (Unit::Kilowatt, 0),
            _ => return None,
        },
        QuantityKind::Resistance => return resistance(spelling),
        QuantityKind::ResistancePerLength => {
            let (resistance_spelling, length) = spelling.split_once('/')?;
            let exponent = match (resistance(resistance_spelling)?, length) {
                ((Unit::Ohm, 0), "km") | ((Unit::Milliohm, 0), "m") => 0,
                ((Unit::Ohm, 0), "m") => 3,
                ((Unit::Milliohm, 0), "km") => -3,
                _ => return None,
            };
            (Unit::OhmPerKilometre, exponent)
        }
        QuantityKind::Temperature => match small {
            "°c" | "c" | "°" | "deg" | "degc" | "degrees" | "celsius" | "degreescelsius" => (Unit::DegreeCelsius, 0),
            _ => return None,
        },
    })
}

/// The unit of any other quantity that `spelling` stands for.
pub(super) fn unit_of_another(kind: QuantityKind, spelling: &str) -> Option<Unit> {
    KINDS.into_iter().filter(|other| *other != kind).find_map(|other| unit_of(other, spelling)).map(|(unit, _)| unit)
}

/// A prefix and a spelling of ohm, either of which may be missing: `370m`, `4k`, `12 MΩ`, `3R`. Only here do `m` and `M` differ.
fn resistance(spelling: &str) -> Option<Spelled> {
    let small = spelling.to_lowercase();
    let ohm = ["ohms", "ohm", "ω", "r"].into_iter().find(|ohm| small.ends_with(ohm));
    let prefix = ohm.and_then(|ohm| spelling.char_indices().rev().nth(ohm.chars().count() - 1));
    let prefix = prefix.map_or(spelling, |(at, _)| spelling.get(..at).unwrap_or_default()).trim_end_matches('-');
    Some(match prefix {
        "" if ohm.is_some() => (Unit::Ohm, 0),
        "u" | "micro" => (Unit::Milliohm, -3),
        "m" | "milli" => (Unit::Milliohm, 0),
        "k" | "K" | "kil" | "kilo" => (Unit::Kilohm, 0),
        "M" | "meg" | "Meg" | "mega" | "Mega" => (Unit::Megohm, 0),
        "g" | "G" | "giga" | "Giga" => (Unit::Gigohm, 0),
        "T" | "tera" | "Tera" => (Unit::Gigohm, 3),
        _ => return None,
    })
}
