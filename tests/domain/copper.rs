//! Checks of the conductor: resistance, heat, metal, strands, volt drop, and whether readings agree.

use plugwary::domain::check::cable::copper::cut_flex::CutFlex;
use plugwary::domain::check::cable::copper::{QUESTIONS, heat, resistance};
use plugwary::domain::facts;
use plugwary::domain::finding::{Conformity, CoreDanger, Judgement, Needed, Reason, RoomTemperature, Severity};
use plugwary::domain::instrument::Instrument::{
    self, DigitalCalliper, FourWireMeter, HandMeter, HandMeterNulled, Tape, Thermometer,
};
use plugwary::domain::physics::heating::Steady;
use plugwary::domain::physics::metal::Explanation;
use plugwary::domain::quantity::{Amount, Measurand, ThermodynamicTemperature, Unit, amperes, square_millimetres};
use plugwary::domain::question::{Core, Target};
use plugwary::domain::reading::{Reading, Shown};
use plugwary::domain::sample::Equipment;
use plugwary::domain::verdict::Verdict;
use plugwary::domain::view::View;

use crate::bench::Bench;

mod cross_check;
mod cut_flex;
mod fault;
mod favour;
mod heat_of_flex;
mod metal;

fn bench() -> Bench {
    Bench::lead(Equipment::Meters)
}

/// A piece of so many metres at 20 °C.
fn piece(metres: f64) -> Bench {
    bench().reads(facts::PIECE_LENGTH, Target::Sample, (metres, 0.001, Unit::Metre), Tape).reads(
        facts::ROOM_TEMPERATURE,
        Target::Sample,
        (20.0, 0.1, Unit::DegreeCelsius),
        Thermometer,
    )
}

/// Line, neutral and earth core in milliohms, to a tenth.
fn cores(bench: Bench, readings: [f64; 3], instrument: Instrument) -> Bench {
    Core::ALL.into_iter().zip(readings).fold(bench, |bench, (core, milliohms)| {
        bench.reads(facts::CORE_RESISTANCE, Target::Core(core), (milliohms, 0.1, Unit::Milliohm), instrument)
    })
}

/// What a core's meter showed.
fn shows(bench: Bench, core: Core, shown: Shown, instrument: Instrument) -> Bench {
    let reading = Reading {
        shown,
        step: Amount::new(0.1, Unit::Milliohm),
        unit: Unit::Milliohm,
        instrument,
        own: None,
        typed: String::new(),
    };
    bench.answer(facts::CORE_RESISTANCE, Target::Core(core), plugwary::domain::examination::Answer::Reading(reading))
}

/// What is known of the flex of an examination, held to an area and a current whatever the print says.
fn with<R>(bench: &Bench, area: Option<f64>, current: Option<f64>, judge: impl Fn(&CutFlex) -> R) -> R {
    let view = View::new(&bench.0);
    judge(&CutFlex { area: area.map(square_millimetres), current: current.map(amperes), ..CutFlex::of(&view) })
}

fn resistance_of(bench: &Bench, area: f64) -> Judgement {
    with(bench, Some(area), Some(13.0), resistance::judge)
}

#[track_caller]
fn breaks(judgement: &Judgement, severity: Severity) {
    assert_eq!((judgement.outcome, judgement.severity), (Conformity::Nonconforming, severity), "{judgement:#?}");
}

#[track_caller]
fn amounts_to(judgement: &Judgement, outcome: Conformity) {
    assert_eq!(judgement.outcome, outcome, "{judgement:#?}");
}

/// IEC 60228 Table 3, 1.5 mm², coated: 13.7 Ω/km. A piece of 10 m read to 0.3 % cannot stand at the limit itself; one step of
/// doubt inside keeps it, one outside breaks it.
#[test]
fn cores_are_held_to_the_coated_limit_of_their_area() {
    let at = |per_km: f64| resistance_of(&cores(piece(10.0), [per_km * 10.0; 3], FourWireMeter), 1.5);
    amounts_to(&at(13.7), Conformity::Inconclusive);
    amounts_to(&at(13.7 * 0.98), Conformity::Conforms);
    breaks(&at(13.7 * 1.02), Severity::Breach);
}

/// The same readings at 30 °C stand 4 % lower at 20 °C (IEC 60228 Annex A: 0.962).
#[test]
fn a_warm_room_is_granted() {
    let warm = cores(piece(10.0), [139.8; 3], FourWireMeter);
    breaks(&resistance_of(&warm, 1.5), Severity::Breach);
    let warm = warm.reads(facts::ROOM_TEMPERATURE, Target::Sample, (30.0, 0.1, Unit::DegreeCelsius), Thermometer);
    amounts_to(&resistance_of(&warm, 1.5), Conformity::Conforms);
}

#[test]
fn a_room_that_nobody_measured_widens_the_doubt_and_is_said() {
    let bench = cores(
        bench().reads(facts::PIECE_LENGTH, Target::Sample, (10.0, 0.001, Unit::Metre), Tape),
        [13.7 * 9.85; 3],
        FourWireMeter,
    );
    let judgement = resistance_of(&bench, 1.5);
    amounts_to(&judgement, Conformity::Inconclusive);
    let assumed =
        Reason::CoresMeasured { room: RoomTemperature::Assumed, explanation: None, danger: None, fault: None };
    assert_eq!(judgement.reason, assumed);
}

#[test]
fn one_core_beyond_its_limit_is_enough() {
    breaks(&resistance_of(&cores(piece(10.0), [130.0, 130.0, 142.0], FourWireMeter), 1.5), Severity::Breach);
}

/// Danger from 1.5 times the limit: 20.55 Ω/km at 1.5 mm² (usual practice). It stands in the retry in the flex's favour.
#[test]
fn one_and_a_half_times_the_limit_is_a_danger() {
    let at = |per_km: f64| resistance_of(&cores(piece(10.0), [130.0, 130.0, per_km * 10.0], FourWireMeter), 1.5);
    breaks(&at(20.55), Severity::Breach);
    breaks(&at(20.55 * 0.98), Severity::Breach);
    let danger = at(20.55 * 1.02);
    breaks(&danger, Severity::Danger);
    assert!(matches!(danger.reason, Reason::CoresMeasured { danger: Some(CoreDanger::HalfAsMuchAgain), .. }));
    assert_eq!(danger.evidence.len(), 4, "the earth core is held against both limits");
    let gravest = danger.evidence.last().unwrap();
    assert_eq!((gravest.target, gravest.favour.holds), (Target::Core(Core::Earth), false));
}

/// 0.5 mm² cores under a claim of 1.5 mm² and 13 A stand at 2.8 times the limit; a thinner claim leaves heat alone to make the danger.
#[test]
fn a_break_that_overheats_is_a_danger() {
    let bench = cores(piece(10.0), [45.0 * 10.0, 45.0 * 10.0, 390.0], FourWireMeter);
    breaks(&with(&bench, Some(0.5), Some(3.0), resistance::judge), Severity::Breach);
    let judgement = with(&bench, Some(0.5), Some(16.0), resistance::judge);
    breaks(&judgement, Severity::Danger);
    assert!(matches!(judgement.reason, Reason::CoresMeasured { danger: Some(CoreDanger::Overheats), .. }));
}

#[test]
fn every_core_is_needed() {
    let two = [Core::Line, Core::Neutral].into_iter().fold(piece(10.0), |bench, core| {
        bench.reads(facts::CORE_RESISTANCE, Target::Core(core), (130.0, 0.1, Unit::Milliohm), FourWireMeter)
    });
    let judgement = resistance_of(&two, 1.5);
    amounts_to(&judgement, Conformity::Inconclusive);
    assert_eq!(judgement.reason, Reason::OnlySomeRead { read: 2, of: 3 });
}

#[test]
fn no_reading_is_not_looked_at_and_no_length_is_asked_for() {
    amounts_to(&resistance_of(&bench(), 1.5), Conformity::NotExamined);
    let judgement = resistance_of(&cores(bench(), [130.0; 3], FourWireMeter), 1.5);
    amounts_to(&judgement, Conformity::Inconclusive);
    assert_eq!(judgement.reason, Reason::Needs(Needed::PieceLength));
}

/// A metre of sound 1.5 mm² is 13.7 mΩ; ordinary leads have up to 300 mΩ (common practice).
#[test]
fn leads_that_were_not_taken_off_never_clear_and_may_condemn() {
    let reads = |milliohms: f64, instrument| resistance_of(&cores(piece(1.0), [milliohms; 3], instrument), 1.5);
    let judgement = reads(13.0, HandMeter);
    amounts_to(&judgement, Conformity::Inconclusive);
    assert_eq!(judgement.reason, Reason::LeadsNotTakenOff);
    amounts_to(&reads(310.0, HandMeter), Conformity::Inconclusive);
    breaks(&reads(340.0, HandMeter), Severity::Danger);
    breaks(&reads(310.0, HandMeterNulled), Severity::Danger);
    let long = resistance_of(&cores(piece(50.0), [600.0; 3], HandMeter), 1.5);
    amounts_to(&long, Conformity::Inconclusive);
    let above = |milliohms: f64| {
        let shown = Shown::Above(Amount::new(milliohms, Unit::Milliohm));
        resistance_of(&shows(cores(piece(10.0), [130.0; 3], FourWireMeter), Core::Earth, shown, HandMeter), 1.5)
    };
    amounts_to(&above(300.0), Conformity::Inconclusive);
    breaks(&above(600.0), Severity::Danger);
}

#[test]
fn a_core_without_a_path_is_a_danger() {
    let bench = shows(cores(piece(10.0), [130.0; 3], FourWireMeter), Core::Earth, Shown::Open, FourWireMeter);
    let judgement = resistance_of(&bench, 1.5);
    breaks(&judgement, Severity::Danger);
    assert_eq!(judgement.reason, Reason::CoreOpen { core: Core::Earth });
}

#[test]
fn more_than_and_less_than_decide_where_they_can() {
    let sound = cores(piece(10.0), [130.0; 3], FourWireMeter);
    let earth = |shown| resistance_of(&shows(sound.clone(), Core::Earth, shown, FourWireMeter), 1.5);
    breaks(&earth(Shown::Above(Amount::new(2.0, Unit::Ohm))), Severity::Danger);
    amounts_to(&earth(Shown::Above(Amount::new(0.1, Unit::Ohm))), Conformity::Inconclusive);
    amounts_to(&earth(Shown::Below(Amount::new(100.0, Unit::Milliohm))), Conformity::Conforms);
    amounts_to(&earth(Shown::Below(Amount::new(200.0, Unit::Milliohm))), Conformity::Inconclusive);
}

/// With no claim at all, cores are held to the thinnest flex there is, 0.5 mm² at 40.1 Ω/km: it can be broken and not kept.
#[test]
fn a_flex_that_claims_nothing_can_break_and_not_keep() {
    let at = |per_km: f64| with(&cores(piece(1.0), [per_km; 3], FourWireMeter), None, None, resistance::judge);
    breaks(&at(700.0), Severity::Danger);
    let sound = at(13.0);
    amounts_to(&sound, Conformity::Inconclusive);
    assert_eq!(sound.reason, Reason::Needs(Needed::ClaimedArea));
}

/// 0.82 mm² is no size of the table: held to 0.75 mm², which it can break and not keep.
#[test]
fn a_foreign_size_is_held_to_the_next_smaller_one() {
    let at = |per_km: f64| resistance_of(&cores(piece(10.0), [per_km * 10.0; 3], FourWireMeter), 0.82);
    breaks(&at(26.7 * 1.02), Severity::Breach);
    amounts_to(&at(21.0), Conformity::Inconclusive);
}

/// The invented flex of 1.20 m, sold as 1.5 mm² and 13 A: 0.83, 0.91 and 3.7 Ω. No metal explains it, and everything else breaks too.
#[test]
fn hair_thin_cores_break_everything() {
    let bench = cores(piece(1.2), [830.0, 910.0, 3700.0], HandMeter);
    let judgement = resistance_of(&bench, 1.5);
    breaks(&judgement, Severity::Danger);
    assert!(
        matches!(judgement.reason, Reason::CoresMeasured { explanation: Some(Explanation::NoMetal), .. }),
        "leads of 0.3 Ω are granted and do not help: {judgement:?}"
    );
    let heat = with(&bench, Some(1.5), Some(13.0), heat::judge);
    breaks(&heat, Severity::Danger);
    assert!(matches!(heat.reason, Reason::HeatBalance { conductor: Steady::Never, .. }), "no steady temperature");
    assert!(heat.evidence.iter().all(|evidence| !evidence.favour.holds), "not even in its favour");
}

/// Copper-clad aluminium with the right strands reads 1.6 times copper: it breaks the limit, and clad aluminium explains it.
#[test]
fn clad_aluminium_of_the_right_size_explains_itself() {
    let clad = 27.5 * 1.03 / 1.5;
    let judgement = resistance_of(&cores(piece(10.0), [clad * 10.0; 3], FourWireMeter), 1.5);
    breaks(&judgement, Severity::Breach);
    assert!(matches!(judgement.reason, Reason::CoresMeasured { explanation: Some(Explanation::CladAluminium), .. }));
}

/// Sound 1.5 mm² at 13 A settles at some 46 °C in 30 °C and keeps well off 70 °C.
#[test]
fn a_sound_flex_carries_its_claim() {
    let bench = cores(piece(10.0), [130.0; 3], FourWireMeter);
    let judgement = with(&bench, Some(1.5), Some(13.0), heat::judge);
    amounts_to(&judgement, Conformity::Conforms);
    assert!(judgement.evidence[0].probability.value() > 0.95);
}

/// Between: 0.75 mm² at 13 A is beyond its table, yet the model cannot call it too hot.
#[test]
fn heat_inside_the_margin_is_not_called() {
    let bench = cores(piece(10.0), [260.0; 3], FourWireMeter);
    amounts_to(&with(&bench, Some(0.75), Some(13.0), heat::judge), Conformity::Inconclusive);
    breaks(&with(&bench, Some(0.75), Some(22.0), heat::judge), Severity::Danger);
}

/// The same at its edges: 26 Ω/km and 13 A in 30 °C settle at 66 °C; 0.7 and 1.3 times that rise are 55 °C and 77 °C and wider with
/// the readings' own doubt: the margin, and not a chance at 70 °C alone, leaves it open.
#[test]
fn what_leaves_heat_open_is_said() {
    let bench = cores(piece(10.0), [260.0; 3], FourWireMeter);
    let Reason::HeatBalance { between: (Steady::At(least), Steady::At(most)), .. } =
        with(&bench, Some(0.75), Some(13.0), heat::judge).reason
    else {
        panic!("it settles")
    };
    let celsius = |at: ThermodynamicTemperature| at.base() - 273.15;
    assert!((50.0..55.5).contains(&celsius(least)), "{least:?}");
    assert!((76.5..85.0).contains(&celsius(most)), "{most:?}");
}

/// A metre read in steps of 10 mΩ is known to some 18 mΩ: what the likely value would settle, the doubt leaves open on both sides.
#[test]
fn the_doubt_of_the_readings_counts_against_every_verdict_of_heat() {
    let coarse = |milliohms: f64, current: f64| {
        let bench = [Core::Line, Core::Neutral].into_iter().fold(piece(1.0), |bench, core| {
            let value = (milliohms, 10.0, Unit::Milliohm);
            bench.reads(facts::CORE_RESISTANCE, Target::Core(core), value, HandMeterNulled)
        });
        with(&bench, Some(1.0), Some(current), heat::judge)
    };
    let fine = |milliohms: f64, current: f64| {
        with(&cores(piece(1.0), [milliohms; 3], FourWireMeter), Some(1.0), Some(current), heat::judge)
    };
    amounts_to(&fine(20.0, 10.0), Conformity::Conforms);
    amounts_to(&coarse(20.0, 10.0), Conformity::Inconclusive);
    breaks(&fine(120.0, 8.5), Severity::Danger);
    amounts_to(&coarse(120.0, 8.5), Conformity::Inconclusive);
}

/// A thin flex is hotter than a fat one with the same cores: a measured diameter narrows the doubt.
#[test]
fn the_diameter_counts() {
    let bench = cores(piece(10.0), [260.0; 3], FourWireMeter);
    let current_at_70 = |bench: &Bench| with(bench, Some(0.75), Some(13.0), heat::judge).evidence[0].clone();
    let usual = current_at_70(&bench);
    let thin = bench.reads(facts::FLEX_DIAMETER, Target::Sample, (5.0, 0.01, Unit::Millimetre), DigitalCalliper);
    let thin = current_at_70(&thin);
    let amperes = |amount: Amount| amount.in_unit(Unit::Ampere).unwrap();
    assert!(amperes(thin.value) < amperes(usual.value), "{thin:?} against {usual:?}");
    assert!(amperes(thin.u) / amperes(thin.value) < amperes(usual.u) / amperes(usual.value));
}

#[test]
fn heat_needs_both_live_cores_and_a_claim() {
    amounts_to(&with(&bench(), Some(1.5), Some(13.0), heat::judge), Conformity::NotExamined);
    let earth_only = piece(10.0).reads(
        facts::CORE_RESISTANCE,
        Target::Core(Core::Earth),
        (130.0, 0.1, Unit::Milliohm),
        FourWireMeter,
    );
    amounts_to(&with(&earth_only, Some(1.5), Some(13.0), heat::judge), Conformity::NotExamined);
    let line_only = piece(10.0).reads(
        facts::CORE_RESISTANCE,
        Target::Core(Core::Line),
        (130.0, 0.1, Unit::Milliohm),
        FourWireMeter,
    );
    let judgement = with(&line_only, Some(1.5), Some(13.0), heat::judge);
    assert_eq!(judgement.reason, Reason::OnlySomeRead { read: 1, of: 2 });
    let judgement = with(&cores(piece(10.0), [130.0; 3], FourWireMeter), Some(1.5), None, heat::judge);
    assert_eq!(judgement.reason, Reason::Needs(Needed::ClaimedCurrent));
}

#[test]
fn leads_that_were_not_taken_off_never_clear_heat() {
    let bench = cores(piece(10.0), [130.0; 3], HandMeter);
    let judgement = with(&bench, Some(1.5), Some(13.0), heat::judge);
    amounts_to(&judgement, Conformity::Inconclusive);
}

/// 17.241/4 = 4.31 Ω/km: less than that is no core of such a flex but clips that touch.
#[test]
fn a_reading_too_good_to_be_true_clears_nothing() {
    let at = |per_km: f64| resistance_of(&cores(piece(10.0), [130.0, 130.0, per_km * 10.0], FourWireMeter), 1.5);
    amounts_to(&at(4.5), Conformity::Conforms);
    let judgement = at(4.0);
    amounts_to(&judgement, Conformity::Inconclusive);
    assert_eq!(judgement.reason, Reason::OutOfRange);
    amounts_to(&at(0.0), Conformity::Inconclusive);
}

/// What no instrument shows must not become a pass, nor bring anything down.
#[test]
fn readings_without_sense_clear_nothing() {
    for milliohms in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1.0] {
        let bench = cores(piece(10.0), [130.0, milliohms, 130.0], FourWireMeter);
        let judgement = resistance_of(&bench, 1.5);
        assert_ne!(judgement.outcome, Conformity::Conforms, "{milliohms} mΩ");
        let heat = with(&bench, Some(1.5), Some(13.0), heat::judge);
        assert_ne!(heat.outcome, Conformity::Conforms, "{milliohms} mΩ");
    }
    for metres in [f64::NAN, f64::INFINITY, 0.0, -1.0] {
        let judgement = resistance_of(&cores(piece(metres), [130.0; 3], FourWireMeter), 1.5);
        assert_ne!(judgement.outcome, Conformity::Conforms, "{metres} m");
    }
}

/// The same hair-thin cores in a cord set: no print, and no print that claims the world, keeps them from being a danger.
#[test]
fn print_saves_no_hair_thin_cores() {
    for print in ["SUPER QUALITY CABLE", "H05VV-F 3G1.5"] {
        let bench = Bench::cord_set(Equipment::Meters).printed(facts::FLEX_PRINT, Target::Sample, print).reads(
            facts::PIECE_LENGTH,
            Target::Sample,
            (1.2, 0.001, Unit::Metre),
            Tape,
        );
        let bench = cores(bench, [830.0, 910.0, 3700.0], FourWireMeter);
        bench.expect_break("core-resistance-high", Severity::Danger);
        assert_eq!(bench.assessed().verdict, Verdict::KeepAway, "{print}");
    }
}

#[test]
fn every_question_has_words_for_each_answer() {
    for question in QUESTIONS {
        let words = plugwary::words::question::of(question);
        assert_eq!(words.id, question.id);
        for code in question.answers() {
            assert!(words.answer(code).is_some(), "{}: {code}", question.id);
        }
    }
}
