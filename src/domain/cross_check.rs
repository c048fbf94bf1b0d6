//! Readings held against each other, as data: what was expected, what was read, and what may be behind a difference.

use super::decision::Probability;
use super::physics::reference::Cause;
use super::quantity::Amount;

/// A reading held against what others lead to.
#[derive(Debug, Clone, PartialEq)]
pub struct CrossCheck {
    /// What was held against what.
    pub of: Crossed,
    /// What the others lead to.
    pub expected: Amount,
    /// What was read.
    pub read: Amount,
    /// Whether the two agree within their doubt.
    pub agrees: bool,
    /// Whether more was read than expected.
    pub reads_more: bool,
}

/// What a cross-check holds against what.
#[derive(Debug, Clone, PartialEq)]
pub enum Crossed {
    /// The cores joined at both ends, against the cores alone.
    Joined {
        /// What clips would have to add to every reading; `None` where it is no more than its doubt.
        clips: Option<Amount>,
    },
    /// A wire of known size, against copper of that size.
    Reference {
        /// What may be behind a difference, the likeliest first.
        causes: Vec<(Cause, Probability)>,
    },
    /// Half of the core that reads most, against the whole.
    HalfLength,
}
