//! What a fault to earth does to a thin earth core: called a danger where the core surely opens first, told step by step.

use plugwary::domain::check::cable::cores::EARTH_COLOUR;
use plugwary::domain::facts;
use plugwary::domain::finding::{Conformity, CoreDanger, Reason, Severity};
use plugwary::domain::instrument::Instrument::{FourWireMeter, HandMeterNulled};
use plugwary::domain::physics::fault::Race;
use plugwary::domain::quantity::{Measurand, Unit};
use plugwary::domain::question::{Core, Target};

use super::{breaks, cores, piece, resistance_of};
use crate::bench::Bench;

/// The earth core alone hair-thin, and the rest sound: it opens before the fuse at every usual supply.
#[test]
fn a_thin_earth_core_is_a_danger_of_its_own() {
    let bench = cores(piece(1.2), [16.0, 16.0, 3700.0], FourWireMeter);
    let judgement = resistance_of(&bench, 1.5);
    breaks(&judgement, Severity::Danger);
    assert!(matches!(judgement.reason, Reason::CoresMeasured { danger: Some(CoreDanger::EarthOpensFirst), .. }));
    let small_fuse = bench.one(facts::FUSE_RATING, "3");
    let judgement = resistance_of(&small_fuse, 1.5);
    assert!(matches!(judgement.reason, Reason::CoresMeasured { danger: Some(CoreDanger::HalfAsMuchAgain), .. }));
}

/// The invented flex of 1.20 m: a loop of 5.23 Ω where neutral and earth are joined, 41.8 A, 162 V on the metal, a fuse of 0.22 s to
/// 57 s, an earth core that melts in 1.3 ms to 14 ms (worked); with earth by the cable's sheath 0.45 Ω more, so 5.68 Ω and 38.5 A, at
/// which steel takes 14 ms × (41.8/38.5)² = 16.5 ms. The earth core is asked for until somebody has seen it, and nothing is told where
/// green-and-yellow goes elsewhere.
#[test]
fn a_fault_is_told_step_by_step() {
    let bench = cores(piece(1.2), [830.0, 910.0, 3700.0], FourWireMeter);
    let told = |bench: &Bench| {
        let Reason::CoresMeasured { fault, .. } = resistance_of(bench, 1.5).reason else { panic!("the cores decide") };
        fault
    };
    let fault = told(&bench).unwrap();
    let course = fault.course;
    for (found, worked) in [
        (course.loop_resistance.0.base(), 5.23),
        (course.loop_resistance.1.base(), 5.68),
        (course.current.1.base(), 41.8),
        (course.current.0.base(), 38.5),
        (course.touch.1.base(), 162.0),
        (course.fuse.shortest.value, 0.225),
        (course.melts.0.value, 0.0013),
        (course.melts.1.value, 0.0165),
    ] {
        assert!((found / worked - 1.0).abs() < 0.04, "{found} against {worked}");
    }
    assert!(course.fuse.longest.unwrap().value > 57.0, "the other supply takes longer");
    assert_eq!((course.race, fault.earth_was_seen), (Race::EarthOpensFirst, false));
    let seen = bench.clone().one(EARTH_COLOUR, "green-and-yellow");
    assert!(told(&seen).unwrap().earth_was_seen);
    let elsewhere = bench.clone().one(EARTH_COLOUR, "green-and-yellow-is-live");
    assert_eq!(told(&elsewhere), None);
    assert_eq!(told(&bench.one(facts::FUSE_RATING, "3")), None, "the gates of smaller fuses are not modelled");
}

/// With 0.91 Ω as its earth core the same flex melts it in 5 ms to 51 ms where the fuse takes 14 ms to 416 ms (worked): it may.
#[test]
fn a_race_that_is_close_is_told_and_not_called() {
    let bench = cores(piece(1.2), [830.0, 3700.0, 910.0], FourWireMeter);
    let Reason::CoresMeasured { danger, fault: Some(fault), .. } = resistance_of(&bench, 1.5).reason else {
        panic!("it is told")
    };
    assert_eq!(fault.course.race, Race::CannotTell);
    assert_eq!(danger, Some(CoreDanger::Overheats));
}

/// Clad aluminium of 1.5 mm² and 10 m breaks its limit, and its fuse clears: 0.19 Ω of earth core are not worth telling.
#[test]
fn a_fault_that_the_fuse_clears_is_not_told() {
    let judgement = resistance_of(&cores(piece(10.0), [189.0; 3], FourWireMeter), 1.5);
    breaks(&judgement, Severity::Breach);
    assert!(matches!(judgement.reason, Reason::CoresMeasured { fault: None, .. }), "{:?}", judgement.reason);
}

/// 15 Ω/km break their limit, and the fuse clears long before such a core melts; from 0.5 Ω of earth core on (usual practice) it is told all
/// the same: 0.525 Ω at 35 m, not 0.495 Ω at 33 m.
#[test]
fn a_long_earth_core_is_told_although_its_fuse_clears() {
    let told = |metres: f64| {
        let bench = cores(piece(metres), [15.0 * metres; 3], FourWireMeter);
        let Reason::CoresMeasured { fault, .. } = resistance_of(&bench, 1.5).reason else { panic!("the cores decide") };
        fault.map(|fault| fault.course.race)
    };
    assert_eq!((told(35.0), told(33.0)), (Some(Race::FuseOpensFirst), None));
}

/// A thin core of 0.4 Ω may melt before its fuse opens, by hand in 9.5 ms to 100 ms where the fuse takes 5 ms to 95 ms: told, however few ohms.
#[test]
fn a_thin_earth_core_is_told_however_short_it_is() {
    let judgement = resistance_of(&cores(piece(1.2), [400.0; 3], FourWireMeter), 1.5);
    let Reason::CoresMeasured { fault: Some(fault), .. } = judgement.reason else { panic!("it is told") };
    assert_eq!(fault.course.race, Race::CannotTell);
}

/// 3.7 Ω in steps of 1 Ω, give or take three (1.76 Ω of standard uncertainty) may be 0.2 Ω, where the core outlasts the fuse: too much doubt to
/// call the race, though not to call the core too thin.
#[test]
fn a_race_is_called_with_the_doubt_of_the_reading_granted() {
    let earth = |step| {
        let bench = cores(piece(1.2), [16.0, 16.0, 3700.0], FourWireMeter);
        let reading = (3.7, step, Unit::Ohm);
        let bench = bench.reads(facts::CORE_RESISTANCE, Target::Core(Core::Earth), reading, HandMeterNulled);
        let judgement = resistance_of(&bench, 1.5);
        assert_eq!(judgement.outcome, Conformity::Nonconforming);
        let Reason::CoresMeasured { danger, .. } = judgement.reason else { panic!("the cores decide") };
        danger
    };
    assert_eq!(earth(0.1), Some(CoreDanger::EarthOpensFirst));
    assert_ne!(earth(1.0), Some(CoreDanger::EarthOpensFirst));
}
