//! Conformance probabilities against the worked examples of JCGM 106.

use plugwary::domain::decision::Limit;
use plugwary::domain::quantity::{Length, Measurand};
use plugwary::domain::uncertainty::Measured;

#[track_caller]
fn check(limit: Limit<f64>, value: f64, u: f64, expected: f64, within: f64) {
    let base = |x| Length::from_base(x);
    let limit = match limit {
        Limit::AtLeast(low) => Limit::AtLeast(base(low)),
        Limit::AtMost(high) => Limit::AtMost(base(high)),
        Limit::Between(low, high) => Limit::Between(base(low), base(high)),
    };
    let found = limit.conformance(&Measured::new(base(value), base(u))).value();
    assert!((found - expected).abs() < within, "expected {expected}, got {found}");
}

/// JCGM 106:2012, Zener diode example; inputs and printed answer from memory (memory-medium), four digits derived from Φ.
#[test]
fn zener_diode_keeps_its_upper_limit() {
    check(Limit::AtMost(-5.40), -5.47, 0.05, 0.92, 0.005);
    check(Limit::AtMost(-5.40), -5.47, 0.05, 0.9192, 0.00005);
}

/// JCGM 106:2012, burst pressure of a container (memory-medium).
#[test]
fn container_keeps_its_lower_limit() {
    check(Limit::AtLeast(490.0), 509.7, 8.6, 0.9890, 0.00005);
}

/// JCGM 106:2012, motor oil between two limits (memory-medium).
#[test]
fn motor_oil_is_probably_between_its_limits() {
    check(Limit::Between(12.5, 16.3), 13.6, 1.8, 0.6626, 0.00005);
}
