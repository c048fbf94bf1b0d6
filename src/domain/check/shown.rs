//! What a display says about a limit: a number with its doubt, or "more than" and "less than", which can settle one side only.

use crate::domain::check::ruling::{against, certainly};
use crate::domain::decision::Limit;
use crate::domain::finding::{Conformity, Evidence};
use crate::domain::quantity::Measurand;
use crate::domain::question::Target;
use crate::domain::reading::Reading;

/// A reading held against a limit; `None` where the display showed no path at all, or another quantity was typed.
pub fn held<Q: Measurand>(target: Target, reading: &Reading, limit: &Limit<Q>) -> Option<Evidence> {
    if let Some(measured) = reading.measured() {
        return Some(against(target, &measured, limit));
    }
    if let Some(value) = reading.above::<Q>() {
        return Some(certainly(target, value, limit, above(value, limit)));
    }
    reading.below::<Q>().map(|value| certainly(target, value, limit, below(value, limit)))
}

fn above<Q: Measurand>(value: Q, limit: &Limit<Q>) -> Conformity {
    match *limit {
        Limit::AtLeast(low) if value >= low => Conformity::Conforms,
        Limit::AtMost(high) | Limit::Between(_, high) if value >= high => Conformity::Nonconforming,
        Limit::AtLeast(_) | Limit::AtMost(_) | Limit::Between(..) => Conformity::Inconclusive,
    }
}

fn below<Q: Measurand>(value: Q, limit: &Limit<Q>) -> Conformity {
    match *limit {
        Limit::AtMost(high) if value <= high => Conformity::Conforms,
        Limit::AtLeast(low) | Limit::Between(low, _) if value <= low => Conformity::Nonconforming,
        Limit::AtLeast(_) | Limit::AtMost(_) | Limit::Between(..) => Conformity::Inconclusive,
    }
}
