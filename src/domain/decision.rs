//! Does a value keep a limit? Decided by conformance probability (JCGM 106:2012, clauses 7 and 8).

use super::finding::{Bound, Conformity};
use super::quantity::Measurand;
use super::uncertainty::Measured;

/// A probability between 0 and 1.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Probability(f64);

impl Probability {
    /// Certain.
    pub const ONE: Self = Self(1.0);
    /// Impossible.
    pub const ZERO: Self = Self(0.0);

    /// `value`, brought into 0 to 1; not-a-number becomes one half, that is "no idea".
    pub fn new(value: f64) -> Self {
        Self(if value.is_nan() { 0.5 } else { value.clamp(0.0, 1.0) })
    }

    /// The plain number.
    pub const fn value(self) -> f64 {
        self.0
    }
}

/// A limit on one quantity; the limit value itself still conforms.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Limit<Q> {
    /// No less than.
    AtLeast(Q),
    /// No more than.
    AtMost(Q),
    /// Between two values.
    Between(Q, Q),
}

impl<Q: Measurand> Limit<Q> {
    /// Whether an exactly known value keeps the limit.
    pub fn holds(&self, value: Q) -> bool {
        match *self {
            Self::AtLeast(low) => value >= low,
            Self::AtMost(high) => value <= high,
            Self::Between(low, high) => low <= value && value <= high,
        }
    }

    /// The same with its kind of quantity kept as data.
    pub fn bound(&self) -> Bound {
        match *self {
            Self::AtLeast(low) => Bound::AtLeast(low.amount()),
            Self::AtMost(high) => Bound::AtMost(high.amount()),
            Self::Between(low, high) => Bound::Between(low.amount(), high.amount()),
        }
    }

    /// The probability that the true value keeps the limit, for a normal state of knowledge:
    /// `pc = Φ((TU - y)/u) - Φ((TL - y)/u)` (JCGM 106, 7.2 and 7.3).
    pub fn conformance(&self, measured: &Measured<Q>) -> Probability {
        let u = measured.u.base();
        if u <= 0.0 {
            return if self.holds(measured.value) { Probability::ONE } else { Probability::ZERO };
        }
        let below = |limit: Q| normal_cdf((limit.base() - measured.value.base()) / u);
        Probability::new(match *self {
            Self::AtLeast(low) => 1.0 - below(low),
            Self::AtMost(high) => below(high),
            Self::Between(low, high) => below(high) - below(low),
        })
    }

    /// The value moved two standard uncertainties towards keeping the limit.
    pub fn friendly(&self, measured: &Measured<Q>) -> Q {
        match *self {
            Self::AtLeast(_) => measured.shifted(2.0),
            Self::AtMost(_) => measured.shifted(-2.0),
            Self::Between(low, high) => {
                let (down, up) = (measured.shifted(-2.0), measured.shifted(2.0));
                if measured.value < low {
                    if up < low { up } else { low }
                } else if measured.value > high {
                    if down > high { down } else { high }
                } else {
                    measured.value
                }
            }
        }
    }
}

/// Distribution function of the standard normal law.
fn normal_cdf(z: f64) -> f64 {
    0.5 * libm::erfc(-z / core::f64::consts::SQRT_2)
}

/// From which probability on a measured check is called settled.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Thresholds {
    /// At least this: conforms.
    pub conforms: Probability,
    /// At most this: nonconforming.
    pub nonconforming: Probability,
}

impl Thresholds {
    /// 0.95 and 0.05, one-sided (the 95 % of JCGM 106 and ISO 14253-1:2017).
    pub const USUAL: Self = Self { conforms: Probability(0.95), nonconforming: Probability(0.05) };

    /// What a conformance probability amounts to.
    pub fn conformity(&self, probability: Probability) -> Conformity {
        if probability >= self.conforms {
            Conformity::Conforms
        } else if probability <= self.nonconforming {
            Conformity::Nonconforming
        } else {
            Conformity::Inconclusive
        }
    }
}
