//! Decisions against a limit, against the tables and worked examples of JCGM 106:2012 and of ILAC-G8:09/2019.

use plugwary::domain::decision::{Limit, Probability, Thresholds};
use plugwary::domain::finding::Conformity::{Conforms, Inconclusive, Nonconforming};
use plugwary::domain::quantity::{ElectricPotential, Length, Measurand, volts};
use plugwary::domain::uncertainty::Measured;

use crate::near::{near, prints};

fn plain(value: f64, u: f64) -> Measured<Length> {
    Measured::new(Length::from_base(value), Length::from_base(u))
}

/// A standard normal state of knowledge against `limit`.
fn of_standard_normal(limit: f64) -> f64 {
    Limit::AtMost(Length::from_base(limit)).conformance(&plain(0.0, 1.0)).value()
}

/// JCGM 106:2012 Table 1 (memory-high): conformance probability against distance from a limit in standard uncertainties.
#[test]
fn distance_from_a_limit_is_probability() {
    for (probability, z) in [(0.80, 0.84), (0.90, 1.28), (0.95, 1.64), (0.99, 2.33), (0.999, 3.09)] {
        near("probability", of_standard_normal(z), probability, 0.0015);
    }
    for (probability, z) in [(0.90, 1.2816), (0.95, 1.6449), (0.99, 2.3263)] {
        near("probability, more digits", of_standard_normal(z), probability, 1e-5);
    }
}

/// JCGM 106:2012, an upper limit: breakdown of a Zener diode at -5.47 V with u 0.05 V, no more than -5.40 V: 0.92 (memory-medium;
/// 0.9192 derived).
#[test]
fn a_breakdown_voltage_keeps_its_upper_limit() {
    let measured: Measured<ElectricPotential> = Measured::new(volts(-5.47), volts(0.05));
    let probability = Limit::AtMost(volts(-5.40)).conformance(&measured).value();
    prints("printed", probability, 2, "0.92");
    prints("derived", probability, 4, "0.9192");
}

/// JCGM 106:2012, a lower limit: a container bursts at 509.7 kPa with u 8.6 kPa, no less than 490 kPa: 0.99 (memory-medium; 0.9890
/// derived). Pressure is no quantity of ours: kPa stand as metres.
#[test]
fn a_burst_pressure_keeps_its_lower_limit() {
    let probability = Limit::AtLeast(Length::from_base(490.0)).conformance(&plain(509.7, 8.6)).value();
    prints("printed", probability, 2, "0.99");
    prints("derived", probability, 4, "0.9890");
}

/// JCGM 106:2012, two limits: motor oil of 13.6 mm²/s with u 1.8, between 12.5 and 16.3: 0.66 (memory-medium; 0.6626 derived).
#[test]
fn a_viscosity_lies_between_its_limits() {
    let limit = Limit::Between(Length::from_base(12.5), Length::from_base(16.3));
    let probability = limit.conformance(&plain(13.6, 1.8)).value();
    prints("printed", probability, 2, "0.66");
    prints("derived", probability, 4, "0.6626");
}

/// ILAC-G8:09/2019 (read): accepted at the limit itself, half of all could be wrong; with a guard band of U (k = 2) less than 2.5 %.
#[test]
fn a_guard_band_bounds_what_is_accepted_wrongly() {
    near("no guard band", of_standard_normal(0.0), 0.5, 1e-15);
    let wrongly = 1.0 - of_standard_normal(2.0);
    assert!((0.022..0.025).contains(&wrongly), "{wrongly}");
}

/// JCGM 106:2012 8.3.2 and ISO 14253-1:2017 (memory-high): with 95 % on one side, acceptance and rejection begin 1.645 standard
/// uncertainties from the limit; between them nothing is decided.
#[test]
fn acceptance_and_rejection_begin_1_645_uncertainties_from_the_limit() {
    for limit in [Limit::AtMost(volts(100.0)), Limit::AtLeast(volts(-100.0))] {
        let side = if matches!(limit, Limit::AtMost(_)) { 1.0 } else { -1.0 };
        let outcome = |distance: f64| {
            let measured = Measured::new(volts(side * (100.0 - 2.0 * distance)), volts(2.0));
            Thresholds::USUAL.conformity(limit.conformance(&measured))
        };
        assert_eq!(outcome(1.645), Conforms, "{limit:?}");
        assert_eq!(outcome(1.644), Inconclusive, "{limit:?}");
        assert_eq!(outcome(-1.644), Inconclusive, "{limit:?}");
        assert_eq!(outcome(-1.645), Nonconforming, "{limit:?}");
    }
}

/// Pins 22.23 mm apart, give or take 0.13 mm (derived): nothing can be accepted unless u is less than 0.066 mm; u of 0.05 accepts to
/// 0.048 and rejects from 0.212 mm; u of 0.10 accepts never and rejects from 0.294 mm.
#[test]
fn a_doubt_too_large_for_its_limits_accepts_nothing() {
    let limit = Limit::Between(Length::from_base(-0.13), Length::from_base(0.13));
    let outcome = |off: f64, u: f64| Thresholds::USUAL.conformity(limit.conformance(&plain(off, u)));
    assert_eq!((outcome(0.0, 0.0662), outcome(0.0, 0.0664)), (Conforms, Inconclusive));
    assert_eq!((outcome(0.0475, 0.05), outcome(0.0482, 0.05)), (Conforms, Inconclusive));
    assert_eq!((outcome(0.2120, 0.05), outcome(0.2125, 0.05)), (Inconclusive, Nonconforming));
    assert_eq!((outcome(0.2935, 0.10), outcome(0.2945, 0.10)), (Inconclusive, Nonconforming));
}

/// As the rule is written, at least 0.95 conforms and at most 0.05 does not: both numbers themselves settle it.
#[test]
fn the_probability_asked_for_is_enough() {
    let outcome = |probability: f64| Thresholds::USUAL.conformity(Probability::new(probability));
    assert_eq!((outcome(0.95), outcome(0.949_999)), (Conforms, Inconclusive));
    assert_eq!((outcome(0.05), outcome(0.050_001)), (Nonconforming, Inconclusive));
}

/// A probability is never less than none nor more than all, and what is no number is no idea: one half.
#[test]
fn a_probability_lies_between_nought_and_one() {
    for (given, kept) in [(-0.2, 0.0), (0.0, 0.0), (0.3, 0.3), (1.0, 1.0), (1.2, 1.0), (f64::NAN, 0.5)] {
        near("probability", Probability::new(given).value(), kept, 0.0);
    }
}

/// Known without doubt, the limit itself still conforms: a smallest, a largest, and both ends (JCGM 106:2012 3.3.5, note 1,
/// memory-medium: the limits belong to the permissible values).
#[test]
fn an_exact_value_is_on_one_side() {
    let probability =
        |limit: Limit<ElectricPotential>, value: f64| limit.conformance(&Measured::exact(volts(value))).value();
    let ends = [
        (Limit::AtMost(volts(5.0)), 5.0, 5.000_001),
        (Limit::AtLeast(volts(3.0)), 3.0, 2.999_999),
        (Limit::Between(volts(3.0), volts(5.0)), 5.0, 5.000_001),
        (Limit::Between(volts(3.0), volts(5.0)), 3.0, 2.999_999),
    ];
    for (limit, at, beyond) in ends {
        near("at the limit", probability(limit, at), 1.0, 0.0);
        near("beyond", probability(limit, beyond), 0.0, 0.0);
    }
}

/// All the doubt given to the sample: two standard uncertainties (JCGM 100 6.3.1, U = 2u) towards the limit, and between two limits
/// no further than the nearer one. Pins of 22.10 mm to 22.36 mm: 22.00 with u 0.03 comes to 22.06, with u 0.10 to 22.10 and not to
/// 22.20; 22.50 with u 0.03 to 22.44, with u 0.10 to 22.36.
#[test]
fn all_the_doubt_can_be_given_to_the_sample() {
    let moved = |limit: Limit<Length>, value: f64, u: f64| limit.friendly(&plain(value, u)).base();
    near("at most", moved(Limit::AtMost(Length::from_base(26.0)), 26.8, 0.5), 25.8, 1e-12);
    near("at least", moved(Limit::AtLeast(Length::from_base(26.0)), 25.2, 0.5), 26.2, 1e-12);
    let between = Limit::Between(Length::from_base(22.10), Length::from_base(22.36));
    let cases =
        [(22.0, 0.03, 22.06), (22.0, 0.10, 22.10), (22.5, 0.03, 22.44), (22.5, 0.10, 22.36), (22.2, 0.10, 22.2)];
    for (value, u, wanted) in cases {
        near("between", moved(between, value, u), wanted, 1e-12);
    }
}
