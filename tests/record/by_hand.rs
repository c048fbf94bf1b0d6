//! Examinations that somebody wrote: every file in `cases` is read, and what they left out is filled in as promised.

use std::fs;
use std::path::Path;

use plugwary::domain::assess::RuleBook;
use plugwary::domain::check;
use plugwary::domain::examination::Answer;
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{Amount, Unit};
use plugwary::domain::question::{ClaimPlace, Core, Question, Target};
use plugwary::domain::reading::{Reading, Shown};
use plugwary::domain::risk::Standing;
use plugwary::domain::sample::{Equipment, Kind, Market};
use plugwary::domain::standard::eu_risk::{Injury, RiskLevel};
use plugwary::record::{Record, read, write};

/// Every file in `cases`, and every whole examination that other tests and the app keep, by name.
pub fn cases() -> Vec<(String, String)> {
    let mut cases = Vec::new();
    for folder in ["tests/record/cases", "tests/examinations/cases"] {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
        for entry in fs::read_dir(folder).expect("the folder of cases can be read") {
            let path = entry.expect("a case can be listed").path();
            if path.extension().is_some_and(|ending| ending == "json") {
                let name = path.file_name().expect("a case has a name").to_string_lossy().into_owned();
                cases.push((name, fs::read_to_string(path).expect("a case can be read")));
            }
        }
    }
    cases.sort();
    assert!(cases.len() >= 5, "the cases were found");
    cases
}

/// The record in a file of `cases`.
#[track_caller]
pub fn case(name: &str) -> Record {
    let text = cases().into_iter().find(|(known, _)| known == name).expect("the case is there").1;
    read(&text).expect("the case is an examination")
}

#[track_caller]
fn question(id: &str) -> &'static Question {
    check::question(id).expect("the question is asked")
}

#[test]
fn every_case_is_read_and_written_and_read_again() {
    for (name, text) in cases() {
        let record = read(&text).unwrap_or_else(|fault| panic!("{name}: {fault}"));
        assert_eq!(read(&write(&record)), Ok(record), "{name}");
    }
}

#[test]
fn what_is_left_out_is_empty_and_the_rule_book_is_of_today() {
    let record = case("smallest.json");
    assert_eq!(record.examination.sample.kind, Kind::ExtensionLead);
    assert_eq!(record.examination.sample.market, Market::GreatBritain);
    assert_eq!(record.examination.equipment, Equipment::Eyes);
    assert_eq!(record.edition, RuleBook::CURRENT.edition);
    let texts = [&record.begun, &record.changed, &record.origin, &record.examination.sample.title];
    assert_eq!(texts, [""; 4]);
    assert!(!record.is_example && record.examination.answers.is_empty() && record.photos.is_empty());
}

#[test]
fn an_id_that_is_left_out_is_the_same_for_the_same_text_only() {
    let texts = cases();
    let id = |text: &str| read(text).expect("a case is an examination").id;
    let smallest = texts.iter().find(|(name, _)| name == "smallest.json").expect("the case is there").1.as_str();
    let made = id(smallest);
    assert_eq!(id(&format!("\n{}  ", smallest.trim())), made);
    assert!(made.len() == 32 && made.bytes().all(|b| b.is_ascii_digit() || (b'a'..=b'f').contains(&b)), "{made}");
    assert_ne!(id(&smallest.replace("eyes", "meters")), made);
}

#[test]
fn a_reading_takes_its_step_from_the_digits_and_the_least_exact_instrument_of_its_question() {
    let record = case("cut-open-lead.json");
    let answer = record.examination.answer(question("core-resistance"), Target::Core(Core::Line));
    let expected = Reading {
        shown: Shown::Value(Amount::new(0.031, Unit::Ohm)),
        step: Amount::new(0.0001, Unit::Ohm),
        unit: Unit::Ohm,
        instrument: Instrument::HandMeter,
        own: None,
        typed: "0.0310".to_owned(),
    };
    assert_eq!(answer, Some(&Answer::Reading(expected)));
}

#[test]
fn a_reading_keeps_what_is_said_of_it() {
    let record = case("cut-open-lead.json");
    let answer = record.examination.answer(question("core-resistance"), Target::Core(Core::Neutral));
    let expected = Reading {
        shown: Shown::Value(Amount::new(31.2, Unit::Milliohm)),
        step: Amount::new(0.5, Unit::Milliohm),
        unit: Unit::Milliohm,
        instrument: Instrument::HandMeterNulled,
        own: None,
        typed: "31,2 m".to_owned(),
    };
    assert_eq!(answer, Some(&Answer::Reading(expected)));
}

#[test]
fn answers_that_all_fit_stand_in_the_order_of_the_question() {
    let record = case("cut-open-lead.json");
    let answer = record.examination.answer(question("extras"), Target::Sample);
    assert_eq!(answer, Some(&Answer::Any(vec!["usb", "switch"])));
}

#[test]
fn print_is_kept_for_the_place_where_it_stands() {
    let record = case("stall-lead.json");
    let at = |place| record.examination.answer(question("rating"), Target::Claim(place));
    assert_eq!(at(ClaimPlace::Package), Some(&Answer::Printed("13A 250V~ 3000W".to_owned())));
    assert_eq!(at(ClaimPlace::Body), Some(&Answer::Nothing));
    assert_eq!(at(ClaimPlace::Plug), None);
}

#[test]
fn an_open_circuit_is_a_case_and_no_number() {
    let record = case("cut-open-lead.json");
    let answer = record.examination.answer(question("core-resistance"), Target::Core(Core::Earth));
    assert!(matches!(answer, Some(Answer::Reading(reading)) if reading.is_open() && reading.typed == "OL"));
}

#[test]
fn a_byte_order_mark_before_the_examination_is_no_fault() {
    let (_, text) = cases().remove(0);
    assert!(read(&format!("\u{feff}{text}")).is_ok());
}

#[test]
fn a_typed_value_is_written_as_it_was_typed() {
    let written = write(&case("cut-open-lead.json"));
    // 20.1 °C is no round number of kelvin, nor of anything in between.
    for line in [
        "\"value\": 20.1,",
        "\"step\": 0.1,",
        "\"value\": 0.031,",
        "\"step\": 0.0001,",
        "\"value\": 31.2,",
        "\"step\": 0.5,",
        "\"open\": true,",
    ] {
        assert!(written.contains(line), "{line} in {written}");
    }
}

#[test]
fn a_scenario_keeps_what_was_weighed_apart_from_what_is_still_a_guess() {
    let record = case("weighed-scenario.json");
    let scenario = record.scenarios.first().expect("it has a scenario");
    assert_eq!(scenario.of, ["fuse-missing", "flex-thin-for-rating"]);
    let standings: Vec<_> = scenario.steps.iter().map(|step| step.standing).collect();
    assert_eq!(standings, [Standing::Guess, Standing::Weighed]);
    assert_eq!((scenario.injury, scenario.injury_standing), (Injury::HospitalStay, Standing::Weighed));
    assert_eq!((scenario.guesses(), scenario.steps[1].reason.as_str()), (1, ""));
    // 0.2 × 0.001 = 1 in 5000, over 1/10 000, and a stay in hospital: high.
    assert_eq!(scenario.level(), RiskLevel::High);
    assert!(!write(&case("smallest.json")).contains("scenarios"), "a record without any does not speak of them");
}
