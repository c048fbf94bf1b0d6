//! Conductor from resistance: temperature, area, and the self-checks.

use plugwary::domain::physics::conductor::{
    SelfCheck, at_20, copper_equivalent, half_length, joined, per_length, usual_room,
};
use plugwary::domain::quantity::{
    ElectricalResistance, Measurand, ThermodynamicTemperature, degrees_celsius, metres, ohms, ohms_per_kilometre,
};
use plugwary::domain::uncertainty::{Correlation, Measured, combine_correlated};
use uom::si::ratio::ratio;

use crate::near::{near, near_part};

fn within(value: f64, half_width: f64) -> Measured<ElectricalResistance> {
    Measured::rectangular(ohms(value), ohms(half_width))
}

/// A worked propagation (GTC and uncertainties agree on it): 0.83 ± 0.00817 Ω, 1.200 ± 0.005 m, 22 °C ± 2 K rectangular. It was
/// worked with copper's own 0.00393 and gave 0.82353(891) Ω and 686.3(8.0) Ω/km; IEC 60228's 0.004, which the code uses, gives
/// 0.82341 Ω.
#[test]
fn uncertainty_of_reading_length_and_temperature_is_carried_through() {
    let room = Measured::rectangular(degrees_celsius(22.0), ThermodynamicTemperature::from_base(2.0));
    let r20 = at_20(Measured::new(ohms(0.83), ohms(0.00817)), room);
    near("R at 20 °C", r20.value.base(), 0.82341, 5e-6);
    near("R at 20 °C, copper's coefficient", r20.value.base(), 0.82353, 1.5e-4);
    near("u", r20.u.base(), 0.00891, 5e-5);
    let per_km = per_length(r20, Measured::new(metres(1.2), metres(0.005)));
    near("Ω/km", per_km.value.base() * 1e3, 686.3, 0.2);
    near("u of Ω/km", per_km.u.base() * 1e3, 8.0, 0.05);
    let area = copper_equivalent(per_km);
    near("copper-equivalent mm²", area.value.base() * 1e6, 0.02512, 1e-5);
    near("u of mm²", area.u.base() * 1e6, 0.00029, 1e-5);
}

/// A just-conforming 0.75 mm² core reads 0.663 mm² of copper (derived).
#[test]
fn a_core_at_its_limit_has_less_copper_than_its_name_says() {
    let area = copper_equivalent(Measured::exact(ohms_per_kilometre(26.0)));
    near("mm²", area.value.base() * 1e6, 0.663, 0.0005);
}

#[test]
fn an_unknown_room_is_taken_as_20_give_or_take_5() {
    let room = usual_room();
    near("°C", room.value.base(), 293.15, 1e-9);
    near("u", room.u.base(), 5.0 / 3.0_f64.sqrt(), 1e-12);
}

#[test]
fn a_length_of_nothing_gives_no_small_resistance() {
    for length in [0.0, -1.0] {
        let found = per_length(within(0.02, 0.001), Measured::exact(metres(length)));
        assert!(found.value.base() > 1e9, "{length} m gave {:?}", found.value);
    }
}

/// Invented readings of three cores: 0.83, 0.91 and 3.7 Ω alone, 0.393 Ω joined; the normalized errors were worked with steps of 0.01,
/// 0.01, 0.1 and 0.001 Ω and 1 % or 2 % of the reading, all rectangular (GTC and Monte Carlo agree).
#[test]
fn joined_cores_agree_as_far_as_the_instrument_goes() {
    for (of_reading, normalized_error, agrees) in [(0.0, 2.4, false), (0.01, 0.79, true), (0.02, 0.41, true)] {
        let read = |value: f64, step: f64| {
            let u = libm::hypot(of_reading * value / 3.0_f64.sqrt(), step / 12.0_f64.sqrt());
            Measured::new(ohms(value), ohms(u))
        };
        let check = joined(&[read(0.83, 0.01), read(0.91, 0.01), read(3.7, 0.1)], read(0.393, 0.001)).unwrap();
        near("1/Σ(1/R)", check.expected.value.base(), 0.38850, 5e-6);
        near_part("normalized error", check.normalized_error().get::<ratio>(), normalized_error, 0.05);
        assert_eq!(check.agrees(), agrees, "{of_reading} of reading");
    }
}

/// The same readings by one meter whose scale is 1 % off everywhere: the scale cancels, and the difference stands 4.8 of its own
/// doubts from nothing (worked with resolution only). The check takes each reading's doubt as its own, which gives 1.6: it is slow to
/// accuse, for a maker's 1 % is not all scale.
#[test]
fn one_meters_scale_cancels_between_cores_alone_and_joined() {
    let steps = [(0.83, 0.01), (0.91, 0.01), (3.7, 0.1), (0.393, 0.001)];
    let scale = |value: f64| 0.01 * value / 3.0_f64.sqrt();
    let u = |(value, step): (f64, f64)| libm::hypot(scale(value), step / 12.0_f64.sqrt());
    let shares = steps.map(|reading| scale(reading.0) / u(reading));
    let readings = steps.map(|reading| Measured::new(ohms(reading.0), ohms(u(reading))));
    let distance = |common: f64| {
        let r = |i: usize, j: usize| Correlation::new(common * shares[i] * shares[j]);
        let difference = combine_correlated(readings, r, |[a, b, c, joined]| {
            joined - ohms(1.0 / [a, b, c].map(|core| 1.0 / core.base()).iter().sum::<f64>())
        });
        difference.value.base() / difference.u.base()
    };
    near("one scale", distance(1.0), 4.8, 0.06);
    near("each its own", distance(0.0), 1.6, 0.05);
}

/// From resolution alone the expected value has u = 0.00088 Ω (the same worked example).
#[test]
fn joined_cores_are_known_better_than_each_alone() {
    let step = |value: f64, step: f64| Measured::new(ohms(value), ohms(step / 12.0_f64.sqrt()));
    let check = joined(&[step(0.83, 0.01), step(0.91, 0.01), step(3.7, 0.1)], step(0.393, 0.001)).unwrap();
    near("u", check.expected.u.base(), 0.00088, 5e-6);
}

/// What the check sees and what it cannot see: a resistance common to all readings (46 mΩ would read 0.415 Ω joined) and a factor.
#[test]
fn joining_cores_shows_common_leads_and_hides_a_common_factor() {
    let alone = [0.83, 0.91, 3.7];
    let joined_of = |change: &dyn Fn(f64) -> f64, read: f64| {
        let cores: Vec<_> = alone.iter().map(|&r| Measured::new(ohms(change(r)), ohms(0.003 * r))).collect();
        joined(&cores, Measured::new(ohms(read), ohms(0.001))).unwrap()
    };
    let true_joined = 0.38850;
    assert!(joined_of(&|r| r, true_joined).agrees());
    assert!(!joined_of(&|r| r + 0.046, true_joined + 0.046).agrees(), "leads of 46 mΩ in every reading show");
    assert!(joined_of(&|r| 2.66 * r, 2.66 * true_joined).agrees(), "a wrong scale does not");
    let with_leads = joined(&[0.784, 0.864, 3.654].map(|r| Measured::exact(ohms(r))), within(0.415, 0.0)).unwrap();
    near("joined with leads of 46 mΩ", with_leads.expected.value.base() + 0.046, 0.415, 0.0005);
}

/// A normalized error of 1 itself still agrees (ISO/IEC 17043:2010, B.4.1.1, memory-medium): a difference of 0.25 Ω against twice
/// 0.125 Ω, numbers without a rounded digit. What is equal agrees even where neither is in doubt.
#[test]
fn an_error_of_its_whole_doubt_still_agrees() {
    let check = |off: f64, u: f64| SelfCheck {
        expected: Measured::exact(ohms(10.0)),
        read: Measured::new(ohms(10.0 + off), ohms(u)),
    };
    for (off, u, normalized_error, agrees) in [
        (0.25, 0.125, 1.0, true),
        (-0.25, 0.125, 1.0, true),
        (0.265_625, 0.125, 1.0625, false),
        (0.0, 0.125, 0.0, true),
        (0.0, 0.0, 0.0, true),
        (0.25, 0.0, f64::INFINITY, false),
    ] {
        let check = check(off, u);
        assert_eq!((check.normalized_error().get::<ratio>(), check.agrees()), (normalized_error, agrees), "{off} {u}");
    }
}

#[test]
fn no_core_and_no_resistance_make_no_check() {
    assert_eq!(joined(&[], within(0.1, 0.001)), None);
    assert_eq!(joined(&[within(0.0, 0.001)], within(0.1, 0.001)), None);
}

#[test]
fn a_thin_core_halves_and_a_bad_joint_does_not() {
    let whole = within(3.7, 0.05);
    assert!(half_length(whole, within(1.85, 0.03)).agrees());
    assert!(!half_length(whole, within(0.45, 0.03)).agrees(), "the step is in the other half");
}
