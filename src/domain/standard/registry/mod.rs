//! Every limit that decides something: what it is, where it is printed, and which checks use it.
//!
//! For the published page of limits and for the tests that hold each to its source. The checks do not read it: they take the same values
//! from the fact sheets, and the app is built without it.

mod flex;
mod plug;
mod rest;
mod rules;

use uom::si::f64::{Ratio, Time};

use super::en50525::Duty;
use super::{Clause, Provenance};
use crate::domain::decision::Limit;
use crate::domain::finding::Bound;
use crate::domain::quantity::{Amount, Area, Measurand, Unit};
pub use rules::{MODELS, PRINT, RULES};

/// A limit of one kind, or the rows of one table.
#[derive(Debug)]
pub struct Published {
    /// Kebab-case, unique.
    pub code: &'static str,
    /// Where it is printed.
    pub clause: Clause,
    /// Its values, in printed order.
    pub cells: fn() -> Vec<Cell>,
    /// The codes of the checks that use it.
    pub decides: &'static [&'static str],
}

/// One value, or one cell of a table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cell {
    /// Which row of a table it stands in.
    pub given: Given,
    /// What it allows.
    pub range: Range,
    /// How sure we are of this cell, where that differs from the rest of its clause.
    pub provenance: Option<Provenance>,
}

/// What a cell is the limit for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Given {
    /// There is only this one.
    Nothing,
    /// A cross-section, a current or a fuse.
    Amount(Amount),
    /// A connector, by the number of its sheet.
    Connector(u8),
    /// A round cord of so many cores of an area.
    Cord(Duty, u8, Area),
}

/// What is allowed; a missing side is open, and each end is allowed itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Range {
    /// No less than.
    pub at_least: Option<Value>,
    /// No more than.
    pub at_most: Option<Value>,
}

/// An end of a range.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Value {
    /// Of a quantity that is measured.
    Amount(Amount),
    /// A part of something, or so many times something.
    Ratio(Ratio),
    /// A time.
    Time(Time),
}

/// Every limit, in the order of the walk.
pub fn all() -> impl Iterator<Item = &'static Published> {
    [plug::LIMITS, flex::LIMITS, rest::LIMITS].into_iter().flatten()
}

/// The limit of a code.
pub fn by_code(code: &str) -> Option<&'static Published> {
    all().find(|published| published.code == code)
}

impl Published {
    const fn new(
        code: &'static str,
        clause: Clause,
        cells: fn() -> Vec<Cell>,
        decides: &'static [&'static str],
    ) -> Self {
        Self { code, clause, cells, decides }
    }
}

impl Cell {
    /// The same for one row of a table.
    fn given<Q: Measurand>(self, given: Q) -> Self {
        self.of(Given::Amount(given.amount()))
    }

    const fn of(mut self, given: Given) -> Self {
        self.given = given;
        self
    }

    /// The same, known in another way than the rest of its clause.
    const fn known(mut self, provenance: Provenance) -> Self {
        self.provenance = Some(provenance);
        self
    }

    /// How sure we are of it.
    pub fn provenance(&self, clause: &Clause) -> Provenance {
        self.provenance.unwrap_or(clause.provenance)
    }
}

impl Range {
    /// Whether an exactly known value is allowed; `None` where it is of another kind.
    pub fn allows(&self, value: Value) -> Option<bool> {
        let orders = [self.at_least.map(|low| low.before(value)), self.at_most.map(|high| value.before(high))];
        orders.into_iter().flatten().try_fold(true, |so_far, order| Some(so_far && order?))
    }
}

impl Value {
    /// Whether it is no more than another; `None` where that is of another kind.
    fn before(self, other: Self) -> Option<bool> {
        match (self, other) {
            (Self::Amount(a), Self::Amount(b)) => {
                let unit = Unit::ALL.into_iter().find(|unit| unit.kind() == a.kind())?;
                Some(a.in_unit(unit)? <= b.in_unit(unit)?)
            }
            (Self::Ratio(a), Self::Ratio(b)) => Some(a <= b),
            (Self::Time(a), Self::Time(b)) => Some(a <= b),
            (Self::Amount(_) | Self::Ratio(_) | Self::Time(_), _) => None,
        }
    }
}

impl From<Bound> for Range {
    fn from(bound: Bound) -> Self {
        let (at_least, at_most) = match bound {
            Bound::AtLeast(low) => (Some(low), None),
            Bound::AtMost(high) => (None, Some(high)),
            Bound::Between(low, high) => (Some(low), Some(high)),
        };
        Self { at_least: at_least.map(Value::Amount), at_most: at_most.map(Value::Amount) }
    }
}

/// The cell of a limit.
fn limit<Q: Measurand>(limit: Limit<Q>) -> Cell {
    range(limit.bound().into())
}

fn at_least<Q: Measurand>(low: Q) -> Cell {
    limit(Limit::AtLeast(low))
}

fn at_most<Q: Measurand>(high: Q) -> Cell {
    limit(Limit::AtMost(high))
}

const fn range(range: Range) -> Cell {
    Cell { given: Given::Nothing, range, provenance: None }
}
