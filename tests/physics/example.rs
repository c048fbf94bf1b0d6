//! One invented flex from first reading to last word, and one of common practice.
//!
//! A three-core flex of 1.20 m, sold as 3G1.5 and 13 A, reads 0.83, 0.91 and 3.7 Ω alone and 0.393 Ω joined at 20 °C. A reference wire,
//! said to be tinned copper of 0.75 mm² and the same length, reads 73.5 mΩ where 27.6 mΩ is expected.

use plugwary::domain::physics::conductor::{copper_equivalent, joined, times};
use plugwary::domain::physics::heating::{Heat, LoadedFlex, Steady, judge};
use plugwary::domain::physics::metal::{Explanation, Metal, explanation};
use plugwary::domain::quantity::{
    Measurand, ResistancePerLength, amperes, degrees_celsius, metres, millimetres, ohms, square_millimetres, volts,
};
use plugwary::domain::standard::iec60228::{Coating, class5_maximum};
use plugwary::domain::uncertainty::Measured;
use uom::si::linear_power_density::watt_per_meter;
use uom::si::ratio::ratio;

use crate::near::{near, near_part, prints};

const CORES: [f64; 3] = [0.83, 0.91, 3.7];

fn core(reading: f64) -> ResistancePerLength {
    ohms(reading) / metres(1.2)
}

fn limit(area: f64) -> ResistancePerLength {
    class5_maximum(square_millimetres(area), Coating::Plain).unwrap()
}

fn flex(of: f64) -> LoadedFlex {
    LoadedFlex { cores: (core(0.83) + core(0.91)) / of, diameter: millimetres(8.2) }
}

#[test]
fn ratios_to_the_limit() {
    let rows = [(692.0, 52.0, 44.0, "0.0249"), (758.0, 57.0, 49.0, "0.0227"), (3083.0, 232.0, 198.0, "0.0056")];
    for (reading, (per_km, at_1_5, at_1_25, area)) in CORES.into_iter().zip(rows) {
        near("Ω/km", core(reading).base() * 1e3, per_km, 0.5);
        near("times 1.5 mm²", times(core(reading), limit(1.5)).get::<ratio>(), at_1_5, 0.5);
        near("times 1.25 mm²", times(core(reading), limit(1.25)).get::<ratio>(), at_1_25, 0.5);
        prints("copper mm²", copper_equivalent(Measured::exact(core(reading))).value.base() * 1e6, 4, area);
    }
}

/// All of the reference wire's 2.66 charged to the meter or the tape, in the flex's favour: 20, 21 and 87 times the limit;
/// charged twice, 7.3.
#[test]
fn the_doubt_given_to_the_flex_does_not_rescue_it() {
    let factor = 73.5 / 27.6;
    near("factor", factor, 2.66, 0.005);
    for (reading, left) in CORES.into_iter().zip([20.0, 21.0, 87.0]) {
        near("times the limit", times(core(reading), limit(1.5)).get::<ratio>() / factor, left, 0.5);
    }
    near("charged twice", times(core(0.83), limit(1.5)).get::<ratio>() / factor / factor, 7.3, 0.05);
    near_part("length that would keep the limit", (ohms(0.83) / limit(1.5)).base(), 62.0, 0.01);
}

/// What core A needs of each metal: mm², strands of 0.10 mm, grams of 1.20 m (worked). Brass, steel and stainless are printed coarser.
#[test]
fn what_the_first_core_would_be_made_of() {
    let rows = [
        (Metal::Copper, 0.0251, 3.2, 0.27),
        (Metal::CladAluminium15, 0.039, 5.0, 0.17),
        (Metal::Aluminium, 0.041, 5.2, 0.13),
        (Metal::CladSteel40, 0.062, 7.9, 0.62),
        (Metal::CladSteel30, 0.083, 10.6, 0.81),
        (Metal::CladSteel21, 0.119, 15.1, 1.14),
        (Metal::Brass, 0.093, 11.8, 0.94),
        (Metal::Steel, 0.200, 25.4, 1.88),
        (Metal::Stainless, 1.01, 129.0, 9.6),
    ];
    for (metal, square_mm, strands, grams) in rows {
        let area = metal.area_for(core(0.83));
        near_part(&format!("{metal:?}"), area.base() * 1e6, square_mm, 0.012);
        near_part(&format!("{metal:?}"), area.base() * 1e6 / (core::f64::consts::FRAC_PI_4 * 0.01), strands, 0.01);
        near_part(&format!("{metal:?}"), (metal.density() * area * metres(1.2)).value * 1e3, grams, 0.025);
    }
}

#[test]
fn no_metal_explains_the_cores() {
    for (reading, against_copper) in CORES.into_iter().zip([60.0, 66.0, 268.0]) {
        let pure = core(reading).base() / (1.7241e-8 / 1.5e-6);
        near("times pure copper", pure, against_copper, 0.5);
        assert_eq!(explanation(core(reading), square_millimetres(1.5)), Explanation::NoMetal);
    }
}

/// At 13 A: 245 W/m while cold (sound 1.5 mm² 4.5), 294 W in 1.20 m, 22.6 V lost; no steady temperature.
#[test]
fn at_its_claim_the_flex_never_settles() {
    let room = degrees_celsius(25.0);
    let cold = flex(1.0).cold_heat(amperes(13.0));
    near("W/m", cold.get::<watt_per_meter>(), 245.0, 0.5);
    let sound = LoadedFlex { cores: 2.0 * limit(1.5), diameter: millimetres(8.2) };
    near("W/m, sound", sound.cold_heat(amperes(13.0)).get::<watt_per_meter>(), 4.5, 0.05);
    near("W", (cold * metres(1.2)).value, 294.0, 0.5);
    near("V lost", (amperes(13.0) * flex(1.0).cores * metres(1.2)).base(), volts(22.6).base(), 0.05);
    assert_eq!(flex(1.0).steady(amperes(13.0), room), Steady::Never);
    assert_eq!(judge(&flex(1.0), &flex(1.0), amperes(13.0), room), Heat::Overheats);
}

/// The current that runs away was worked as 8.2 A with IEC 60287 outside (9.1 A by first principles); the code, which ends its search
/// where the surface is 1000 K above the room, has 8.0 A.
#[test]
fn the_flex_runs_away_above_8_amperes() {
    let room = degrees_celsius(25.0);
    assert!(matches!(flex(1.0).steady(amperes(8.2 * 0.97), room), Steady::At(_)));
    assert_eq!(flex(1.0).steady(amperes(8.2 * 1.03), room), Steady::Never);
}

/// Steady at 1, 1.5, 2, 3, 4 and 5 A: 32, 41, 54, 92, 156 and 263 °C by first principles; IEC 60287 loses up to 20 % more heat,
/// so the code's rises are up to 13 % lower, and 6 % higher at the smallest rise. For 60 °C: 2.29 A with IEC 60287, 2.21 A by
/// first principles.
#[test]
fn the_flex_is_warm_at_a_tenth_of_its_claim() {
    let room = degrees_celsius(25.0);
    let rows = [(1.0, 32.0), (1.5, 41.0), (2.0, 54.0), (3.0, 92.0), (4.0, 156.0), (5.0, 263.0)];
    for (current, expected) in rows {
        let Steady::At(conductor) = flex(1.0).steady(amperes(current), room) else { panic!("settles at {current} A") };
        near_part("rise", conductor.base() - room.base(), expected - 25.0, 0.14);
    }
    near_part("A for 60 °C", flex(1.0).current_for(degrees_celsius(60.0), room).base(), 2.29, 0.01);
    let odd = LoadedFlex { cores: core(0.83) + core(3.7), ..flex(1.0) };
    near_part("A for 60 °C, odd core live", odd.current_for(degrees_celsius(60.0), room).base(), 1.37, 0.06);
}

/// All of 2.66 given to the flex: 92 W/m, 700 °C or no balance, 3.6 A to 4.1 A for 60 °C. Given twice: 35 W/m, 170 °C to 250 °C.
/// Both fail.
#[test]
fn the_verdict_of_heat_does_not_hang_on_the_reference_wire() {
    let (room, factor) = (degrees_celsius(25.0), 73.5 / 27.6);
    let once = flex(factor);
    near("W/m", once.cold_heat(amperes(13.0)).get::<watt_per_meter>(), 92.0, 0.5);
    assert!((3.6..=4.1).contains(&once.current_for(degrees_celsius(60.0), room).base()));
    let twice = flex(factor * factor);
    near("W/m", twice.cold_heat(amperes(13.0)).get::<watt_per_meter>(), 35.0, 0.5);
    let Steady::At(conductor) = twice.steady(amperes(13.0), room) else { panic!("settles") };
    assert!((170.0..=250.0).contains(&(conductor.base() - 273.15)), "{conductor:?}");
    for given in [once, twice] {
        assert_eq!(judge(&given, &given, amperes(13.0), room), Heat::Overheats);
    }
}

/// Three cores of one flex of about 0.6 m sold as 10 A, read alone 0.54, 0.568 and 1.995 Ω and joined 0.247 Ω (common practice):
/// they agree within an ordinary meter's 0.8 % and 3 digits, stand far over every class 5 limit, and reach no steady temperature
/// at 10 A.
#[test]
fn a_short_flex_of_common_practice_is_consistent_and_hopeless() {
    let read = |value: f64| {
        let half_width = 0.008 * value + 3.0 * 0.001;
        Measured::new(ohms(value), ohms(libm::hypot(half_width / 3.0_f64.sqrt(), 0.001 / 12.0_f64.sqrt())))
    };
    let check = joined(&[read(0.54), read(0.568), read(1.995)], read(0.247)).unwrap();
    prints("1/Σ(1/R)", check.expected.value.base(), 4, "0.2431");
    assert!(check.agrees(), "normalized error {:?}", check.normalized_error());
    let thinnest = class5_maximum(square_millimetres(0.5), Coating::Coated).unwrap();
    for reading in [0.54, 0.568, 1.995] {
        assert!(times(ohms(reading) / metres(0.6), thinnest).get::<ratio>() > 20.0);
    }
    let cores = (ohms(0.54) + ohms(0.568)) / metres(0.6);
    let loaded = LoadedFlex { cores, diameter: millimetres(7.15) };
    assert_eq!(loaded.steady(amperes(10.0), degrees_celsius(20.0)), Steady::Never);
}
