//! How targets and units are spelled in a record: plain ASCII, for ever.

use crate::domain::quantity::{QuantityKind, Unit};
use crate::domain::question::{ClaimPlace, Core, Per, Target};

/// The most sockets a record may speak of.
const MOST_SOCKETS: u8 = 20;

/// The spelling of a target; the sample itself needs none.
pub fn of_target(target: Target) -> Option<String> {
    match target {
        Target::Sample => None,
        Target::Socket(number) => Some(format!("socket-{number}")),
        Target::Core(core) => Some(core.code().to_owned()),
        Target::Claim(place) => Some(place.code().to_owned()),
    }
}

/// The target that is spelled so, among those a question can be asked of.
pub fn target(per: Per, of: Option<&str>) -> Option<Target> {
    let targets: Vec<Target> = match per {
        Per::Sample => vec![Target::Sample],
        Per::Socket => (1..=MOST_SOCKETS).map(Target::Socket).collect(),
        Per::Core => Core::ALL.map(Target::Core).to_vec(),
        Per::Claim => ClaimPlace::ALL.map(Target::Claim).to_vec(),
    };
    targets.into_iter().find(|target| of_target(*target).as_deref() == of)
}

/// What a question is asked of, for a sentence.
pub const fn asked(per: Per) -> &'static str {
    match per {
        Per::Sample => "once, without \"of\"",
        Per::Socket => "of \"socket-1\", \"socket-2\" …",
        Per::Core => "of \"line\", \"neutral\" or \"earth\"",
        Per::Claim => "of \"listing\", \"package\", \"body\", \"plug\" or \"flex\"",
    }
}

/// The spelling of a unit.
pub const fn of_unit(unit: Unit) -> &'static str {
    match unit {
        Unit::Ampere => "ampere",
        Unit::DegreeCelsius => "degree-celsius",
        Unit::Gram => "gram",
        Unit::Kilohm => "kilohm",
        Unit::Kilogram => "kilogram",
        Unit::Kilowatt => "kilowatt",
        Unit::Megohm => "megohm",
        Unit::Metre => "metre",
        Unit::Milliampere => "milliampere",
        Unit::Millimetre => "millimetre",
        Unit::Milliohm => "milliohm",
        Unit::Centimetre => "centimetre",
        Unit::Gigohm => "gigohm",
        Unit::Ohm => "ohm",
        Unit::OhmPerKilometre => "ohm-per-kilometre",
        Unit::SquareMillimetre => "square-millimetre",
        Unit::Volt => "volt",
        Unit::Watt => "watt",
    }
}

/// The unit that is spelled so.
pub fn unit(spelled: &str) -> Option<Unit> {
    Unit::ALL.into_iter().find(|unit| of_unit(*unit) == spelled)
}

/// The units of a kind of quantity, for a sentence.
pub fn units(kind: QuantityKind) -> String {
    let known: Vec<&str> = Unit::ALL.into_iter().filter(|unit| unit.kind() == kind).map(of_unit).collect();
    format!("one of {}", known.join(", "))
}

/// The unit that a verdict states a kind of quantity in.
pub const fn stated_in(kind: QuantityKind) -> Unit {
    match kind {
        QuantityKind::Area => Unit::SquareMillimetre,
        QuantityKind::Current => Unit::Ampere,
        QuantityKind::Length => Unit::Millimetre,
        QuantityKind::Mass => Unit::Gram,
        QuantityKind::Potential => Unit::Volt,
        QuantityKind::Power => Unit::Watt,
        QuantityKind::Resistance => Unit::Ohm,
        QuantityKind::ResistancePerLength => Unit::OhmPerKilometre,
        QuantityKind::Temperature => Unit::DegreeCelsius,
    }
}
