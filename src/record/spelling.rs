//! How targets and units are spelled in a record: plain ASCII, for ever.

use super::entry_fault::EntryFault;
use super::fault::Said;
use crate::domain::facts;
use crate::domain::finding::Basis;
use crate::domain::quantity::{QuantityKind, Unit};
use crate::domain::question::{Ask, ClaimPlace, Core, Per, Question, Target};

/// The spelling of a target; the sample itself needs none.
pub fn of_target(target: Target) -> Option<String> {
    match target {
        Target::Sample => None,
        Target::Socket(number) => Some(format!("socket-{number}")),
        Target::Core(core) => Some(core.code().to_owned()),
        Target::Claim(place) => Some(place.code().to_owned()),
    }
}

/// Every target that a question can be asked of, whatever the sample.
pub fn targets(per: Per) -> Vec<Target> {
    match per {
        Per::Sample => vec![Target::Sample],
        Per::Socket => (1..=most_sockets()).map(Target::Socket).collect(),
        Per::Core => Core::ALL.map(Target::Core).to_vec(),
        Per::Claim => ClaimPlace::ALL.map(Target::Claim).to_vec(),
    }
}

/// The target of a question that is spelled so.
pub fn target(question: &'static Question, of: Option<&str>) -> Result<Target, EntryFault> {
    let spelled = |target: &Target| of_target(*target).as_deref() == of;
    targets(question.per).into_iter().find(spelled).ok_or_else(|| EntryFault::Target {
        question: question.id,
        takes: asked_of(question.per),
        got: of.map_or(Said::NOTHING, Said::from),
    })
}

const fn asked_of(per: Per) -> &'static str {
    match per {
        Per::Sample => "once, without “of”",
        Per::Socket => "of each socket",
        Per::Core => "of each core",
        Per::Claim => "of each place that states a rating",
    }
}

fn most_sockets() -> u8 {
    if let Ask::Count(_, most) = facts::SOCKET_COUNT.ask { most } else { u8::MAX }
}

/// The spelling of what an outcome rests on.
pub const fn of_basis(basis: Basis) -> &'static str {
    match basis {
        Basis::Print => "print",
        Basis::Sight => "sight",
        Basis::Reading => "reading",
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

/// Every unit of a kind of quantity.
pub fn units(kind: QuantityKind) -> impl Iterator<Item = Unit> {
    Unit::ALL.into_iter().filter(move |unit| unit.kind() == kind)
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

/// The kind of quantity in words.
pub const fn kind_in_words(kind: QuantityKind) -> &'static str {
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
