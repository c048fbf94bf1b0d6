//! Two readings of one thing: how far they are apart, and whether that is more than their doubt.

use crate::domain::quantity::{
    Amount, Area, ElectricCurrent, ElectricPotential, ElectricalResistance, Length, Mass, Measurand, Power,
    QuantityKind, ResistancePerLength, ThermodynamicTemperature,
};
use crate::domain::reading::{Reading, Shown};
use crate::domain::standard::{iso13528, practice};
use crate::domain::uncertainty::{Measured, combine_correlated, combine2};

/// So little beyond the line is the rounding of binary numbers, and no difference.
const ROUNDING: f64 = 1e-9;

/// How often the joint expanded uncertainty (k = 2) goes into the difference, without sign (ISO 13528, `E_n`).
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct NormalisedError(f64);

impl NormalisedError {
    /// Of a difference with its joint standard uncertainty. Readings without any doubt differ wholly or not at all.
    fn of<Q: Measurand>(difference: Q, u: Q) -> Self {
        let apart = difference.base().abs();
        Self(if apart > 0.0 { apart / (2.0 * u.base()) } else { 0.0 })
    }

    /// The plain number; infinite where readings without any doubt differ.
    pub const fn value(self) -> f64 {
        self.0
    }

    fn is_beyond_line(self) -> bool {
        self.0 > iso13528::LINE * (1.0 + ROUNDING)
    }
}

/// What a difference of two numbers amounts to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Gap {
    /// No more than the doubt of both readings. That is not to say that the two are the same.
    Within,
    /// More than the doubt only if the very same instrument took both readings, so that its error of scale is the same in both.
    BeyondIfOneInstrument,
    /// More than the doubt, but leads that were not taken off a reading may be what differs.
    BeyondUnlessLeads,
    /// More than the doubt of both readings.
    Beyond,
}

/// Two numbers held against each other.
///
/// The readings are taken as independent. A positive correlation makes the doubt of a difference smaller, and what we know of it is only
/// that it is no larger than [`Reading::correlation_with`] says; so independence is the cautious side for saying "they differ". It is not
/// the cautious side for saying "no difference": what one instrument would have shown apart is told as [`Gap::BeyondIfOneInstrument`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Difference {
    /// What was read of the sample, and its standard uncertainty.
    pub sample: (Amount, Amount),
    /// What was read of the known good, and its standard uncertainty.
    pub reference: (Amount, Amount),
    /// Sample less known good. A difference: unlike a value it knows no zero point.
    pub difference: Amount,
    /// Its joint standard uncertainty.
    pub u: Amount,
    /// The two as one number.
    pub normalised: NormalisedError,
    /// What it amounts to.
    pub gap: Gap,
}

/// Two displays of which at least one showed no number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ranges {
    /// What they leave open has nothing in common: the two differ for certain, numbers with two standard uncertainties to each side.
    Apart,
    /// Both showed no path at all.
    BothOpen,
    /// It cannot be told.
    CannotTell,
}

/// What two readings are to each other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Readings {
    /// Both are numbers.
    Numbers(Difference),
    /// One of them is none.
    Ranges(Ranges),
}

/// Holds the reading of a sample against that of a known good.
pub fn between(sample: &Reading, reference: &Reading) -> Readings {
    match sample.unit.kind() {
        QuantityKind::Area => of::<Area>(sample, reference),
        QuantityKind::Current => of::<ElectricCurrent>(sample, reference),
        QuantityKind::Length => of::<Length>(sample, reference),
        QuantityKind::Mass => of::<Mass>(sample, reference),
        QuantityKind::Potential => of::<ElectricPotential>(sample, reference),
        QuantityKind::Power => of::<Power>(sample, reference),
        QuantityKind::Resistance => of::<ElectricalResistance>(sample, reference),
        QuantityKind::ResistancePerLength => of::<ResistancePerLength>(sample, reference),
        QuantityKind::Temperature => of::<ThermodynamicTemperature>(sample, reference),
    }
}

fn of<Q: Measurand>(sample: &Reading, reference: &Reading) -> Readings {
    match (sample.measured::<Q>(), reference.measured::<Q>()) {
        (Some(one), Some(other)) => Readings::Numbers(numbers((sample, one), (reference, other))),
        _ => Readings::Ranges(ranges::<Q>(sample, reference)),
    }
}

fn numbers<Q: Measurand>(sample: (&Reading, Measured<Q>), reference: (&Reading, Measured<Q>)) -> Difference {
    let less = |one: Q, other: Q| Q::from_base(one.base() - other.base());
    let apart = combine2(sample.1, reference.1, less);
    let by_one_instrument = combine_correlated(
        [sample.1, reference.1],
        |_, _| sample.0.correlation_with::<Q>(reference.0),
        |[one, other]| less(one, other),
    );
    let without_leads = without(apart.value, leads(sample.0), leads(reference.0));
    let is_beyond = |difference, u| NormalisedError::of(difference, u).is_beyond_line();
    let gap = if is_beyond(without_leads, apart.u) {
        Gap::Beyond
    } else if is_beyond(apart.value, apart.u) {
        Gap::BeyondUnlessLeads
    } else if is_beyond(apart.value, by_one_instrument.u) {
        Gap::BeyondIfOneInstrument
    } else {
        Gap::Within
    };
    Difference {
        sample: sample.1.amounts(),
        reference: reference.1.amounts(),
        difference: apart.value.amount(),
        u: apart.u.amount(),
        normalised: NormalisedError::of(apart.value, apart.u),
        gap,
    }
}

/// What is left of a difference when the leads in each reading are granted what they may be, anything from nothing up.
fn without<Q: Measurand>(difference: Q, in_sample: Q, in_reference: Q) -> Q {
    let granted = if difference.base() > 0.0 { in_sample } else { in_reference };
    Q::from_base((difference.base().abs() - granted.base()).max(0.0))
}

/// The resistance of leads that a reading may still carry.
fn leads<Q: Measurand>(reading: &Reading) -> Q {
    reading.instrument.leads_at_most().amount().to().unwrap_or(Q::from_base(0.0))
}

fn ranges<Q: Measurand>(sample: &Reading, reference: &Reading) -> Ranges {
    let ((low, high), (other_low, other_high)) = (range::<Q>(sample), range::<Q>(reference));
    if sample.is_open() && reference.is_open() {
        Ranges::BothOpen
    } else if low >= other_high || other_low >= high {
        Ranges::Apart
    } else {
        Ranges::CannotTell
    }
}

/// The least and the largest that the measurand may be, in base units.
fn range<Q: Measurand>(reading: &Reading) -> (f64, f64) {
    let anything = (f64::NEG_INFINITY, f64::INFINITY);
    let bound = |amount: Amount| amount.to::<Q>().map(Measurand::base);
    match reading.shown {
        Shown::Value(_) => reading.measured::<Q>().map_or(anything, |measured| {
            (measured.shifted(-2.0).base() - leads::<Q>(reading).base(), measured.shifted(2.0).base())
        }),
        Shown::Above(least) => (bound(least).unwrap_or(anything.0), anything.1),
        Shown::Below(most) => (anything.0, bound(most).unwrap_or(anything.1)),
        Shown::Open => (bound(practice::no_path().amount()).unwrap_or(anything.0), anything.1),
    }
}
