//! Heat of a cut flex: the diameter taken where none was measured, the doubt of what it carries, and why it is not cleared.

use plugwary::domain::check::cable::copper::cross_check::CORES_JOINED;
use plugwary::domain::check::cable::copper::heat;
use plugwary::domain::check::cable::copper::heat::usual_diameter;
use plugwary::domain::facts;
use plugwary::domain::finding::{Conformity, Reason};
use plugwary::domain::instrument::Instrument::{DigitalCalliper, FourWireMeter, HandMeter};
use plugwary::domain::physics::heating::{LoadedFlex, deviation_of_current};
use plugwary::domain::quantity::{Measurand, Unit, degrees_celsius, square_millimetres};
use plugwary::domain::question::Target;

use super::{amounts_to, cores, piece, with};

#[track_caller]
fn near(found: f64, wanted: f64, within: f64) {
    assert!((found - wanted).abs() <= within, "expected {wanted} ± {within}, got {found}");
}

/// EN 50525-2-11, three cores (sizes of type 53 memory-high), mm² and mm: 0.5 light 4.9 to 6.3; ordinary 0.75 6.0 to 7.6, 1.0 6.3 to 8.0,
/// 1.5 7.4 to 9.4, 2.5 9.2 to 11.4. What is in no table gets all that sizes within half as much again have, or all there are.
#[test]
fn an_unmeasured_flex_may_be_as_thick_as_its_table_says() {
    let rows = [
        (Some(0.5), 4.9, 6.3),
        (Some(0.75), 6.0, 7.6),
        (Some(1.0), 6.3, 8.0),
        (Some(1.5), 7.4, 9.4),
        (Some(2.5), 9.2, 11.4),
        (Some(0.6), 4.9, 7.6),
        (Some(1.05), 6.0, 9.4),
        (Some(1.25), 6.3, 9.4),
        (Some(4.0), 4.9, 11.4),
        (None, 4.9, 11.4),
    ];
    for (area, from, to) in rows {
        let diameter = usual_diameter(area.map(square_millimetres));
        near(diameter.value.base() * 1e3, f64::midpoint(from, to), 1e-9);
        near(diameter.u.base() * 1e3, (to - from) / 2.0 / 3.0_f64.sqrt(), 1e-9);
    }
}

/// Readings two standard uncertainties to each side lead to two currents, so that a quarter of what lies between is one; the model's own
/// 7.5 % is apart from it (GUM 5.1.2: in squares).
#[test]
fn what_a_flex_carries_has_the_doubt_of_readings_and_model() {
    let measured = cores(piece(1.0), [26.0; 3], FourWireMeter);
    let measured = measured.reads(facts::FLEX_DIAMETER, Target::Sample, (6.8, 0.01, Unit::Millimetre), DigitalCalliper);
    for bench in [measured, cores(piece(1.0), [26.0; 3], FourWireMeter)] {
        let judgement = with(&bench, Some(0.75), Some(6.0), heat::judge);
        let evidence = judgement.evidence.first().expect("the current stands beside the claim");
        let loaded = with(&bench, Some(0.75), Some(6.0), heat::loaded).expect("both live cores were read");
        let carries = |flex: &LoadedFlex| flex.current_for(degrees_celsius(70.0), degrees_celsius(30.0)).base();
        let likely = carries(&loaded.likely);
        let of_readings = (carries(&loaded.coolest) - carries(&loaded.hottest)) / 4.0;
        let amperes = |amount: plugwary::domain::quantity::Amount| amount.in_unit(Unit::Ampere).expect("a current");
        near(amperes(evidence.value), likely, 1e-9);
        near(amperes(evidence.u), libm::hypot(of_readings, deviation_of_current() * likely), 1e-9);
        assert!(of_readings > 0.005 * likely, "{of_readings} of {likely}");
    }
}

/// 13 Ω/km over 100 m stay cool at 13 A even with the leads' 0.3 Ω on top, and still leads clear nothing; neither do cores that read 60 mΩ
/// joined where 43.3 mΩ are expected.
#[test]
fn what_is_cool_enough_is_cleared_by_sound_readings_only() {
    let judged = |bench| with(&bench, Some(1.5), Some(13.0), heat::judge);
    let sound = cores(piece(10.0), [130.0; 3], FourWireMeter);
    let joined = |milliohms: f64| {
        sound.clone().reads(CORES_JOINED, Target::Sample, (milliohms, 0.1, Unit::Milliohm), FourWireMeter)
    };
    for bench in [sound.clone(), joined(43.3)] {
        let cleared = judged(bench);
        amounts_to(&cleared, Conformity::Conforms);
        assert!(matches!(cleared.reason, Reason::HeatBalance { .. }), "{:?}", cleared.reason);
    }
    let doubted = judged(joined(60.0));
    assert_eq!((doubted.outcome, doubted.reason), (Conformity::Inconclusive, Reason::CrossCheckFailed));
    let with_leads = judged(cores(piece(100.0), [1300.0; 3], HandMeter));
    assert_eq!((with_leads.outcome, with_leads.reason), (Conformity::Inconclusive, Reason::LeadsNotTakenOff));
    let hot_with_leads = judged(cores(piece(100.0), [2600.0; 3], HandMeter));
    assert!(matches!(hot_with_leads.reason, Reason::HeatBalance { .. }), "{:?}", hot_with_leads.reason);
}
