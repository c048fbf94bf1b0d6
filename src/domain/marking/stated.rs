//! A printed value and what its digits declare.

use crate::domain::quantity::{Amount, Measurand};

/// A printed value and one step of its last digit.
///
/// A printed value stands for everything that rounds to it: half a step either way. Zeros at the end of a whole number may be digits or
/// mere fillers, so such a number has a second, coarser reading: 2500 is known to half a unit or to fifty. At least two digits count in
/// either reading, because nobody prints "10 A" for fourteen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stated<Q> {
    /// The value.
    pub value: Q,
    /// One step of the last printed digit.
    pub step: Q,
    /// One step of the last digit that is no zero, where that is a coarser reading of the same print.
    pub coarse_step: Option<Q>,
}

impl<Q: Measurand> Stated<Q> {
    /// A value whose last digit steps by `step`.
    pub const fn new(value: Q, step: Q) -> Self {
        Self { value, step, coarse_step: None }
    }

    /// Half a step for every reading of the digits, the finest first.
    pub fn half_steps(&self) -> impl Iterator<Item = Q> {
        [Some(self.step), self.coarse_step].into_iter().flatten().map(|step| Q::from_base(step.base() / 2.0))
    }

    /// The smallest value that the print may stand for, in its coarsest reading.
    pub fn lowest(&self) -> Q {
        Q::from_base(self.value.base() - self.half_width())
    }

    /// The largest value that the print may stand for, in its coarsest reading.
    pub fn highest(&self) -> Q {
        Q::from_base(self.value.base() + self.half_width())
    }

    /// The value with its kind of quantity kept as data.
    pub fn amount(&self) -> Amount {
        self.value.amount()
    }

    fn half_width(&self) -> f64 {
        self.half_steps().map(Measurand::base).fold(0.0, f64::max)
    }
}
