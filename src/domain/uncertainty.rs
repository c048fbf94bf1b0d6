//! Values with their standard uncertainty, and how uncertainties combine (JCGM 100, the GUM).

use super::quantity::{Amount, Measurand};

/// A value and its standard uncertainty, both of the same quantity.
///
/// For a temperature the uncertainty is the difference in kelvin, held as a number of the base unit like every other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured<Q> {
    /// The best estimate.
    pub value: Q,
    /// The standard uncertainty (one standard deviation), never negative.
    pub u: Q,
}

impl<Q: Measurand> Measured<Q> {
    /// A value with standard uncertainty `u`; a negative `u` is taken as its size.
    pub fn new(value: Q, u: Q) -> Self {
        Self { value, u: Q::from_base(u.base().abs()) }
    }

    /// A value known without doubt, such as a nominal size.
    pub fn exact(value: Q) -> Self {
        Self { value, u: Q::from_base(0.0) }
    }

    /// A value known to lie within `± half_width`, any place in it as likely as another: u = a/√3 (GUM 4.3.7).
    pub fn rectangular(value: Q, half_width: Q) -> Self {
        Self::new(value, Q::from_base(half_width.base() / libm::sqrt(3.0)))
    }

    /// The value moved by `k` standard uncertainties.
    pub fn shifted(&self, k: f64) -> Q {
        Q::from_base(self.value.base() + k * self.u.base())
    }

    /// Half the width of the interval with coverage factor 2 (about 95 %).
    pub fn expanded(&self) -> Q {
        Q::from_base(2.0 * self.u.base())
    }

    /// The same with the kind of quantity kept as data.
    pub fn amounts(&self) -> (Amount, Amount) {
        (self.value.amount(), self.u.amount())
    }

    /// Applies a function of one quantity, carrying the uncertainty through.
    pub fn map<R: Measurand>(self, f: impl Fn(Q) -> R) -> Measured<R> {
        let half = half_difference(self, &f);
        Measured::new(f(self.value), R::from_base(half))
    }
}

/// The effect of one input's uncertainty on a result: half the difference at `x ± u` (GUM 5.1.3, note 2).
fn half_difference<Q: Measurand, R: Measurand>(x: Measured<Q>, f: impl Fn(Q) -> R) -> f64 {
    (f(x.shifted(1.0)).base() - f(x.shifted(-1.0)).base()) / 2.0
}

/// A function of two independent quantities, with the uncertainty of both (GUM 5.1.2).
pub fn combine2<A: Measurand, B: Measurand, R: Measurand>(
    a: Measured<A>,
    b: Measured<B>,
    f: impl Fn(A, B) -> R,
) -> Measured<R> {
    let of_a = half_difference(a, |a| f(a, b.value));
    let of_b = half_difference(b, |b| f(a.value, b));
    Measured::new(f(a.value, b.value), R::from_base(libm::hypot(of_a, of_b)))
}

/// A function of three independent quantities, with the uncertainty of all (GUM 5.1.2).
pub fn combine3<A: Measurand, B: Measurand, C: Measurand, R: Measurand>(
    first: Measured<A>,
    second: Measured<B>,
    third: Measured<C>,
    f: impl Fn(A, B, C) -> R,
) -> Measured<R> {
    let of_first = half_difference(first, |x| f(x, second.value, third.value));
    let of_second = half_difference(second, |x| f(first.value, x, third.value));
    let of_third = half_difference(third, |x| f(first.value, second.value, x));
    let u = libm::hypot(libm::hypot(of_first, of_second), of_third);
    Measured::new(f(first.value, second.value, third.value), R::from_base(u))
}

/// How far the errors of two estimates go together: 1 wholly, 0 not at all, -1 against each other (GUM 5.2.2).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Correlation(f64);

impl Correlation {
    /// Not at all.
    pub const NONE: Self = Self(0.0);
    /// Wholly: whatever one is wrong by, the other is too.
    pub const WHOLE: Self = Self(1.0);

    /// `value`, brought into -1 to 1; not-a-number becomes 0.
    pub fn new(value: f64) -> Self {
        Self(if value.is_nan() { 0.0 } else { value.clamp(-1.0, 1.0) })
    }

    /// The plain number.
    pub const fn value(self) -> f64 {
        self.0
    }
}

/// A function of quantities of one kind whose errors may go together, as `correlation` says of each pair (by place, the earlier one
/// first): `u² = Σ zᵢ² + 2 Σ zᵢ zⱼ r(i, j)`, where `zᵢ` is the effect of one input's uncertainty (GUM 5.2.2, equation 16).
///
/// Like the others it is a first-order law: an effect that is even in an input's error, such as that of a product of two errors, is lost.
pub fn combine_correlated<Q: Measurand, R: Measurand, const N: usize>(
    inputs: [Measured<Q>; N],
    correlation: impl Fn(usize, usize) -> Correlation,
    f: impl Fn([Q; N]) -> R,
) -> Measured<R> {
    let values = inputs.map(|input| input.value);
    let effect = |(place, input): (usize, &Measured<Q>)| {
        half_difference(*input, |moved| {
            let mut values = values;
            if let Some(value) = values.get_mut(place) {
                *value = moved;
            }
            f(values)
        })
    };
    let effects: Vec<f64> = inputs.iter().enumerate().map(effect).collect();
    let mut variance = 0.0;
    for (i, first) in effects.iter().enumerate() {
        variance += first * first;
        for (j, second) in effects.iter().enumerate().skip(i + 1) {
            variance += 2.0 * first * second * correlation(i, j).value();
        }
    }
    Measured::new(f(values), R::from_base(libm::sqrt(variance.max(0.0))))
}
