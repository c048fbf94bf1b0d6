//! Faults: loop, current, touch voltage, fuse, and whether the earth core lasts.

use plugwary::domain::physics::fault::{Fault, Race, Supply, course, fuse_time, melting_time, race};
use plugwary::domain::quantity::{Measurand, amperes, metres, ohms, ohms_per_kilometre};
use plugwary::domain::standard::adiabatic::Melts;
use uom::si::time::second;

use crate::near::{near, near_part};

/// Gates of BS 1362 (read): A, shortest s, longest s.
#[test]
fn a_13_a_link_keeps_its_gates() {
    for (current, shortest, longest) in [(30.0, 1.0, 400.0), (50.0, 0.1, 20.0), (100.0, 0.01, 0.2)] {
        let time = fuse_time(amperes(current));
        near_part("shortest", time.shortest.get::<second>(), shortest, 1e-9);
        near_part("longest", time.longest.unwrap().get::<second>(), longest, 1e-9);
    }
}

/// 1.6 times the rating opens nothing in half an hour, 1.9 times the rating does (read).
#[test]
fn a_13_a_link_keeps_its_conventional_currents() {
    let at = |current: f64| fuse_time(amperes(current));
    near("1.6 In, shortest", at(20.8).shortest.get::<second>(), 1800.0, 1e-6);
    assert_eq!(at(20.8).longest, None);
    assert_eq!(at(0.0).longest, None);
    assert_eq!(at(24.69).longest, None, "between the two it may open or not");
    near("1.9 In, longest", at(24.7).longest.unwrap().get::<second>(), 1800.0, 1e-6);
}

#[test]
fn more_current_never_opens_a_link_later() {
    let mut earlier = fuse_time(amperes(5.0));
    for step in 51..4000 {
        let time = fuse_time(amperes(f64::from(step) / 10.0));
        assert!(time.shortest <= earlier.shortest, "shortest at {step}");
        assert!(earlier.longest.is_none() || time.longest <= earlier.longest, "longest at {step}");
        assert!(time.longest.is_none_or(|longest| longest >= time.shortest), "order at {step}");
        earlier = time;
    }
}

/// Worst case of the gates joined on logarithmic paper: 5 s at 62 A and 0.4 s at 90 A. BS 7671 Tables 41.2(d) and 41.4(d) imply
/// 60 A and 95 A (2.30 Ω × 95 A = 218.5 V): the lines between the gates are no more than 6 % of current off.
#[test]
fn gates_joined_by_lines_stand_near_the_wiring_rules() {
    for (current, worst, implied) in [(61.6, 5.0, 60.0), (90.1, 0.4, 95.0)] {
        near_part("worst case", fuse_time(amperes(current)).longest.unwrap().get::<second>(), worst, 0.01);
        near_part("wiring rules", current, implied, 0.06);
    }
    near("2.30 Ω and 95 A", 2.30 * 95.0, 0.95 * 230.0, 1e-9);
}

/// Worked cases: supply (TN-C-S or TN-S, 0.35 Ω of fixed wiring), line and earth core in Ω, then loop Ω, A, V (of them along the
/// flex), fuse s from and to.
#[test]
fn faults_are_as_worked() {
    let (joined, sheath) = (Supply::joined_earth_and_neutral(), Supply::earth_by_cable_sheath());
    let metre = 2.0 * 0.0195;
    let clad = 3.0 * 0.055;
    let rows = [
        (joined, metre, metre, 0.78, 281.0, 60.0, 11.0, 0.001, Some(0.025)),
        (joined, 0.83, 3.7, 5.23, 41.8, 162.0, 155.0, 0.22, Some(57.0)),
        (joined, 1.45, 6.48, 8.63, 25.3, 168.0, 164.0, f64::NAN, Some(1480.0)),
        (joined, 1.73, 7.71, 10.14, 21.6, 170.0, 166.0, f64::NAN, None),
        (joined, 0.83, 0.91, 2.44, 89.5, 97.0, 81.0, 0.014, Some(0.42)),
        (sheath, clad, clad, 1.48, 148.0, 50.0, 24.0, 0.005, Some(0.09)),
    ];
    for (supply, line, earth, loop_resistance, current, touch, of_flex, shortest, longest) in rows {
        let fault = Fault { supply, line: ohms(line), earth: ohms(earth) };
        near("loop", fault.loop_resistance().base(), loop_resistance, 0.005);
        near_part("current", fault.current().base(), current, 0.003);
        near("touch voltage", fault.touch_voltage().base(), touch, 0.6);
        near("of the flex", fault.touch_voltage_of_flex().base(), of_flex, 0.6);
        let time = fuse_time(fault.current());
        if shortest.is_finite() {
            near_part("shortest", time.shortest.get::<second>(), shortest, 0.3);
        }
        match longest {
            Some(longest) => near_part("longest", time.longest.unwrap().get::<second>(), longest, 0.03),
            None => assert_eq!(time.longest, None),
        }
    }
}

/// Melting of a core that reads 3.7 Ω over 1.20 m, at 41.8 A: copper 1.5 ms, aluminium 1.3 ms, steel 14 ms (derived), all before
/// the fuse's earliest 225 ms.
#[test]
fn a_hair_thin_earth_core_opens_before_the_fuse() {
    let core = ohms(3.7) / metres(1.2);
    for (metal, milliseconds) in [(Melts::Copper, 1.5), (Melts::Aluminium, 1.3), (Melts::Steel, 14.0)] {
        let time = melting_time(metal, core, amperes(41.8));
        near_part("melting", time.get::<second>() * 1e3, milliseconds, 0.04);
    }
    near_part("fuse", fuse_time(amperes(41.8)).shortest.get::<second>(), 0.225, 0.01);
    for supply in [Supply::joined_earth_and_neutral(), Supply::earth_by_cable_sheath()] {
        let fault = Fault { supply, line: ohms(0.83), earth: ohms(3.7) };
        assert_eq!(race(&fault, core), Race::EarthOpensFirst);
    }
}

/// A core of 0.91 Ω over 1.20 m lasts 5 ms to 51 ms where the fuse takes 14 ms to 416 ms: likely the first to open, but not certainly.
#[test]
fn a_thin_earth_core_may_open_before_the_fuse() {
    let core = ohms(0.91) / metres(1.2);
    let fault = Fault { supply: Supply::joined_earth_and_neutral(), line: ohms(0.83), earth: ohms(0.91) };
    let times = Melts::ALL.map(|metal| melting_time(metal, core, fault.current()).get::<second>());
    near_part("earliest", times.into_iter().fold(f64::INFINITY, f64::min), 0.005, 0.1);
    near_part("latest", times.into_iter().fold(0.0, f64::max), 0.051, 0.02);
    near_part("fuse", fuse_time(fault.current()).longest.unwrap().get::<second>(), 0.416, 0.01);
    assert_eq!(race(&fault, core), Race::CannotTell);
}

#[test]
fn a_sound_earth_core_outlasts_the_fuse() {
    let core = ohms_per_kilometre(19.5);
    let fault =
        Fault { supply: Supply::joined_earth_and_neutral(), line: core * metres(2.0), earth: core * metres(2.0) };
    assert_eq!(race(&fault, core), Race::FuseOpensFirst);
}

/// Far below the fuse's current nothing is adiabatic any more: no race is called.
#[test]
fn a_core_that_would_take_minutes_is_not_called_first() {
    let core = ohms_per_kilometre(40.0);
    let fault = Fault { supply: Supply::joined_earth_and_neutral(), line: ohms(5.0), earth: ohms(5.0) };
    assert_eq!(race(&fault, core), Race::CannotTell);
}

/// The law holds from 0.1 s to 5 s (BS 7671 434.5.2, memory-high). At 20 A, a loop of 218.5 V / 20 A = 10.925 Ω, the fuse
/// holds for half an hour at least. Steel lasts longest: of 0.3944 mm² (350 Ω/km) it melts in (111.1 × 0.3944 / 20)² = 4.80 s, of
/// 0.4105 mm² (336 Ω/km) in 5.20 s; only the first is told.
#[test]
fn a_race_is_called_within_five_seconds_only() {
    let supply = Supply::joined_earth_and_neutral();
    for (core, melts, wanted) in [(349.89, 4.8, Race::EarthOpensFirst), (336.17, 5.2, Race::CannotTell)] {
        let core = ohms_per_kilometre(core);
        let fault = Fault { supply, line: ohms(5.0), earth: ohms(10.925 - 5.7) };
        near("current", fault.current().base(), 20.0, 1e-9);
        near("steel melts", melting_time(Melts::Steel, core, fault.current()).get::<second>(), melts, 0.005);
        assert_eq!(race(&fault, core), wanted);
    }
}

/// The core that steel makes last 4.80 s at 20 A (see above) lasts 4.80 × (11.375/10.925)² = 5.20 s where the supply's loop is 0.45 Ω longer:
/// one supply says that it opens first, the other says nothing. With 3.7 Ω over 1.2 m both say so, with 19.5 Ω/km over 2 m neither.
#[test]
fn a_race_is_told_where_both_supplies_agree() {
    let sound = ohms_per_kilometre(19.5);
    assert_eq!(course(ohms(0.83) / metres(1.2), ohms(3.7) / metres(1.2), metres(1.2)).race, Race::EarthOpensFirst);
    assert_eq!(course(sound, sound, metres(2.0)).race, Race::FuseOpensFirst);
    let core = ohms_per_kilometre(349.89);
    let length = ohms(10.925 - 5.7) / core;
    let [joined, sheath] = [Supply::joined_earth_and_neutral(), Supply::earth_by_cable_sheath()]
        .map(|supply| race(&Fault { supply, line: ohms(5.0), earth: core * length }, core));
    assert_eq!((joined, sheath), (Race::EarthOpensFirst, Race::CannotTell));
    assert_eq!(course(ohms(5.0) / length, core, length).race, Race::CannotTell);
}
