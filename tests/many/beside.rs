//! A sample beside a known good: readings held against each other with their doubt, answers as they are.

use plugwary::domain::comparison::{Compared, Difference, Gap, Likeness, Ranges, Readings, between, compare};
use plugwary::domain::examination::{Answer, Examination};
use plugwary::domain::instrument::{Accuracy, Instrument, OwnInstrument};
use plugwary::domain::quantity::{Amount, Unit};
use plugwary::domain::question::{Core, Target};
use plugwary::domain::reading::{Reading, Shown};
use plugwary::domain::sample::Kind;
use plugwary::words::comparison::{cautions, sentence, summary};

use crate::{case, cases, question, record};

fn shown(shown: Shown, unit: Unit, instrument: Instrument) -> Reading {
    Reading { shown, step: Amount::new(0.01, unit), unit, instrument, own: None, typed: String::new() }
}

fn value(value: f64, unit: Unit, instrument: Instrument) -> Reading {
    shown(Shown::Value(Amount::new(value, unit)), unit, instrument)
}

/// A reading with an expanded uncertainty (k = 2) of a fixed amount and part of the reading, and hardly any of its digits.
fn expanded(value: f64, fixed: f64, of_reading: f64, unit: Unit) -> Reading {
    // A rectangular half-width of √3 u has the standard uncertainty u (GUM 4.3.7).
    let half = |expanded: f64| expanded / 2.0 * 3.0_f64.sqrt();
    let accuracy = Accuracy { of_reading: half(of_reading), digits: 0.0, fixed: (half(fixed), unit) };
    Reading {
        shown: Shown::Value(Amount::new(value, unit)),
        step: Amount::new(1e-9, unit),
        unit,
        instrument: Instrument::FourWireMeter,
        own: Some(OwnInstrument { name: String::new(), accuracy }),
        typed: String::new(),
    }
}

#[track_caller]
fn numbers(sample: &Reading, reference: &Reading) -> Difference {
    match between(sample, reference) {
        Readings::Numbers(difference) => difference,
        Readings::Ranges(ranges) => unreachable!("{ranges:?}"),
    }
}

/// The normalised error of ISO 13528 worked by hand: 10.05 mm ± 0.04 mm and 10.00 mm ± 0.03 mm are 0.05 mm apart, and
/// √(0.04² + 0.03²) mm is 0.05 mm, so it is 1 exactly, which is still within.
#[test]
fn a_difference_as_large_as_the_joint_doubt_is_none_and_a_step_more_is_one() {
    let reference = expanded(10.0, 0.03, 0.0, Unit::Millimetre);
    for (sample, normalised, gap) in [
        (10.05, 1.0, Gap::Within),
        (10.049, 0.98, Gap::Within),
        (10.051, 1.02, Gap::Beyond),
        (9.95, 1.0, Gap::Within),
        (9.949, 1.02, Gap::Beyond),
        (10.0, 0.0, Gap::Within),
    ] {
        let found = numbers(&expanded(sample, 0.04, 0.0, Unit::Millimetre), &reference);
        assert!((found.normalised.value() - normalised).abs() < 1e-6, "{sample}: {found:?}");
        assert_eq!(found.gap, gap, "{sample}");
        let u = found.u.difference_in(Unit::Millimetre).expect("it is a length");
        assert!((u - 0.025).abs() < 1e-9, "{u}");
        let apart = found.difference.difference_in(Unit::Millimetre).expect("it is a length");
        assert!((apart - (sample - 10.0)).abs() < 1e-9, "{apart}");
    }
}

#[test]
fn the_unit_that_a_reading_was_typed_in_changes_nothing() {
    let found = numbers(&expanded(10.05, 0.04, 0.0, Unit::Millimetre), &expanded(1.0, 0.003, 0.0, Unit::Centimetre));
    assert_eq!(found.gap, Gap::Within);
    assert!((found.normalised.value() - 1.0).abs() < 1e-6);
}

#[test]
fn readings_without_any_doubt_differ_wholly_or_not_at_all() {
    let exact = |value| expanded(value, 0.0, 0.0, Unit::Millimetre);
    let exact = |value| Reading { step: Amount::new(0.0, Unit::Millimetre), ..exact(value) };
    assert_eq!(numbers(&exact(5.0), &exact(5.0)).gap, Gap::Within);
    let apart = numbers(&exact(5.0), &exact(5.1));
    assert_eq!((apart.gap, apart.normalised.value()), (Gap::Beyond, f64::INFINITY));
}

/// 1.010 Ω and 1.000 Ω, each with 2 % (k = 2): the joint doubt is √(0.0202² + 0.02²) Ω = 0.0284 Ω. If one scale is wrong in both, what
/// is left is 0.0202 Ω - 0.02 Ω = 0.0002 Ω.
#[test]
fn what_one_instrument_would_show_apart_is_told_and_not_counted() {
    let found = numbers(&expanded(1.01, 0.0, 0.02, Unit::Ohm), &expanded(1.0, 0.0, 0.02, Unit::Ohm));
    assert_eq!(found.gap, Gap::BeyondIfOneInstrument);
    assert!((found.normalised.value() - 0.01 / 0.028_425).abs() < 1e-4, "{:?}", found.normalised);
    let other = Reading { instrument: Instrument::HandMeterNulled, ..expanded(1.0, 0.0, 0.02, Unit::Ohm) };
    assert_eq!(numbers(&expanded(1.01, 0.0, 0.02, Unit::Ohm), &other).gap, Gap::Within);
}

/// Leads that were not taken off may add up to 0.3 Ω to a reading, and take nothing from it.
#[test]
fn leads_are_granted_to_the_side_that_they_may_be_in() {
    let hand = |ohms| value(ohms, Unit::Ohm, Instrument::HandMeter);
    let four_wire = |ohms| value(ohms, Unit::Ohm, Instrument::FourWireMeter);
    assert_eq!(numbers(&hand(0.5), &four_wire(0.3)).gap, Gap::BeyondUnlessLeads);
    assert_eq!(numbers(&four_wire(0.3), &hand(0.5)).gap, Gap::BeyondUnlessLeads);
    assert_eq!(numbers(&hand(0.7), &four_wire(0.3)).gap, Gap::Beyond);
    assert_eq!(numbers(&hand(0.3), &four_wire(0.5)).gap, Gap::Beyond);
}

#[test]
fn a_display_without_a_number_differs_only_where_its_bound_leaves_nothing_in_common() {
    let at = |n| value(n, Unit::Megohm, Instrument::InsulationTester);
    let bound = |shown: fn(Amount) -> Shown, n| {
        self::shown(shown(Amount::new(n, Unit::Megohm)), Unit::Megohm, Instrument::InsulationTester)
    };
    let open = shown(Shown::Open, Unit::Ohm, Instrument::HandMeter);
    let path = |ohms| value(ohms, Unit::Ohm, Instrument::HandMeter);
    for (sample, reference, wanted) in [
        (bound(Shown::Above, 20.0), at(1.2), Ranges::Apart),
        (at(1.2), bound(Shown::Above, 20.0), Ranges::Apart),
        // 19.9 MΩ has a doubt of more than 1 MΩ.
        (bound(Shown::Above, 20.0), at(19.9), Ranges::CannotTell),
        (bound(Shown::Above, 200.0), at(250.0), Ranges::CannotTell),
        (bound(Shown::Above, 20.0), bound(Shown::Above, 200.0), Ranges::CannotTell),
        (bound(Shown::Above, 20.0), bound(Shown::Below, 20.0), Ranges::Apart),
        (bound(Shown::Above, 20.0), bound(Shown::Below, 21.0), Ranges::CannotTell),
        (bound(Shown::Below, 0.5), at(1.2), Ranges::Apart),
        (open.clone(), open.clone(), Ranges::BothOpen),
        (open.clone(), path(0.05), Ranges::Apart),
        (path(0.05), open.clone(), Ranges::Apart),
        (open, at(150.0), Ranges::CannotTell),
    ] {
        assert_eq!(between(&sample, &reference), Readings::Ranges(wanted), "{:?} {:?}", sample.shown, reference.shown);
    }
}

fn examination(answers: &[(&str, Target, Answer)]) -> Examination {
    let mut examination = record(1, "", &[]).examination;
    for (id, target, answer) in answers {
        examination.record(question(id), *target, answer.clone());
    }
    examination
}

#[track_caller]
fn only<'a>(sample: &'a Examination, reference: &'a Examination) -> Compared<'a> {
    let mut compared = compare(sample, reference);
    assert_eq!(compared.len(), 1, "{compared:?}");
    compared.remove(0)
}

#[test]
fn resistance_of_a_core_is_compared_over_one_length_only() {
    let metres = |metres| Answer::Reading(value(metres, Unit::Metre, Instrument::Tape));
    let core = |ohms| {
        (
            "core-resistance",
            Target::Core(Core::Line),
            Answer::Reading(value(ohms, Unit::Ohm, Instrument::FourWireMeter)),
        )
    };
    let piece = |length| ("piece-length", Target::Sample, metres(length));
    let reference = examination(&[core(0.5), piece(2.0)]);
    assert_eq!(only(&examination(&[core(0.9)]), &reference).likeness, Likeness::NotOfOneLength);
    assert_eq!(only(&examination(&[core(0.9), piece(1.5)]), &reference).likeness, Likeness::NotOfOneLength);
    assert!(only(&examination(&[core(0.9), piece(2.0)]), &reference).differs());
}

#[test]
fn other_answers_are_the_same_or_others_or_told_of_one_only() {
    let one = |code| ("fuse-in-the-holder", Target::Sample, Answer::One(code));
    let said = |answer| ("fuse-in-the-holder", Target::Sample, answer);
    let empty = examination(&[one("empty")]);
    assert_eq!(only(&empty, &empty).likeness, Likeness::Same);
    assert_eq!(only(&empty, &examination(&[one("marked-bs-1362")])).likeness, Likeness::Other);
    for untold in [Answer::CannotTell, Answer::Refused, Answer::NoTool, Answer::Later] {
        let other = examination(&[said(untold)]);
        assert_eq!(only(&empty, &other).likeness, Likeness::OnlySample);
        assert_eq!(only(&other, &empty).likeness, Likeness::OnlyReference);
        assert!(compare(&other, &other).is_empty());
    }
    let print = |text: &str| examination(&[("flex-print", Target::Sample, Answer::Printed(text.to_owned()))]);
    assert_eq!(only(&print("H05VV-F 3G1.25"), &print(" H05VV-F  3G 1.25 ")).likeness, Likeness::Same);
    assert_eq!(only(&print("H05VV-F 3G1.25"), &print("H05VV-F 3G1.0")).likeness, Likeness::Other);
}

#[test]
fn what_tells_of_the_looking_alone_is_not_compared() {
    let warm = |degrees| {
        let reading = value(degrees, Unit::DegreeCelsius, Instrument::Thermometer);
        examination(&[("room-temperature", Target::Sample, Answer::Reading(reading))])
    };
    assert!(compare(&warm(12.0), &warm(28.0)).is_empty());
}

#[test]
fn nothing_differs_from_itself_and_two_differ_whichever_is_held_against_the_other() {
    let all = cases();
    for (name, one) in &all {
        let itself = compare(&one.examination, &one.examination);
        assert!(itself.iter().all(|compared| !compared.differs()), "{name}");
        for other in all.values() {
            let there = compare(&one.examination, &other.examination);
            let back = compare(&other.examination, &one.examination);
            assert_eq!(there.len(), back.len());
            for (there, back) in there.iter().zip(&back) {
                assert_eq!(there.differs(), back.differs(), "{name}: {}", there.question.id);
            }
        }
    }
}

#[test]
fn every_sentence_is_whole_and_says_which_of_the_two_is_meant() {
    let all = cases();
    for one in all.values() {
        for other in all.values() {
            let compared = compare(&one.examination, &other.examination);
            for line in &compared {
                let text = sentence(line, Kind::ExtensionLead);
                assert!(text.ends_with('.') && !text.contains(['{', '}']) && !text.contains("  "), "{text}");
                assert!(!text.contains("sample:  "), "{text}");
            }
            assert!(summary(&compared).ends_with('.'));
            assert!(!cautions(&one.examination, &other.examination).is_empty());
        }
    }
}

#[test]
fn a_narrow_pin_is_said_to_be_narrower_with_its_doubt() {
    let width = |mm| {
        ("earth-pin-width", Target::Sample, Answer::Reading(value(mm, Unit::Millimetre, Instrument::DigitalCalliper)))
    };
    let say = |sample, reference| {
        let (sample, reference) = (examination(&[width(sample)]), examination(&[width(reference)]));
        sentence(&only(&sample, &reference), Kind::ExtensionLead).replace('\u{a0}', " ")
    };
    // Each u is √(0.02²/3 + 0.01²/12) mm = 0.0119 mm; both together, times two: 0.0337 mm.
    assert_eq!(
        say(7.5, 7.92),
        "The sample’s earth pin is 0.420 mm narrower than the known good’s, more than the doubt of both readings (0.034 mm)."
    );
    assert_eq!(
        say(7.95, 7.92),
        "How wide the long pin is: no difference beyond the doubt of both readings (0.030 mm apart, with a doubt of 0.034 mm)."
    );
}

#[test]
fn a_record_may_be_kept_as_a_known_good() {
    let mut record = case("sound-lead-meters");
    assert!(!plugwary::record::write(&record).contains("known_good"));
    record.is_known_good = true;
    let written = plugwary::record::write(&record);
    assert!(written.contains("\"known_good\": true"));
    assert_eq!(plugwary::record::read(&written), Ok(record));
}
