//! What is said of typing that is no value, and of files that are no examination, with the hint that puts it right.

use core::fmt::Write as _;

use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::Unit;
use plugwary::record::{EntryFault, Misfit, RecordFault, Said};
use plugwary::words::faults;
use plugwary::words::input_problem::InputProblem;
use plugwary::words::typed::{parse_count, parse_reading};
use plugwary::words::typed_odds::parse_odds;

use crate::accepted;

#[test]
fn every_refusal_of_typing_reads_as_accepted() {
    let readings = [
        ("", Unit::Ohm),
        ("1,234", Unit::Ohm),
        ("-0.5", Unit::Ohm),
        ("OL", Unit::Metre),
        ("about three", Unit::Metre),
        ("0", Unit::Metre),
        ("12 V", Unit::Ohm),
        ("99999999 m", Unit::Metre),
        ("-300", Unit::DegreeCelsius),
        ("1.23456789012345678901234567890123456789012345", Unit::Metre),
        ("1 m 20", Unit::Metre),
        ("12 furlongs", Unit::Metre),
    ];
    let readings = readings.map(|(typed, unit)| {
        (typed, parse_reading(typed, unit.kind(), unit, Instrument::HandMeter).expect_err("it is no reading"))
    });
    let counts = ["four", "99"].map(|typed| (typed, parse_count(typed, 1, 20).expect_err("it is no count")));
    let odds = [("2/1", parse_odds("2/1").expect_err("it is no chance"))];
    let problems: Vec<(&str, InputProblem)> = readings.into_iter().chain(counts).chain(odds).collect();
    let sorts: Vec<_> = problems.iter().map(|(_, problem)| core::mem::discriminant(problem)).collect();
    for (at, (typed, _)) in problems.iter().enumerate() {
        let again = sorts.iter().skip(at + 1).any(|sort| Some(sort) == sorts.get(at));
        assert!(!again, "{typed:?} is refused for a reason that another text shows already");
    }
    let mut told = String::new();
    for (typed, problem) in &problems {
        writeln!(told, "typed {typed:?}\n  {}\n  {}", problem.message(), problem.hint())
            .expect("a text takes any line");
    }
    accepted("typing", &told);
}

#[test]
fn every_refusal_of_a_file_reads_as_accepted() {
    let record = [
        RecordFault::TooLarge,
        RecordFault::TooDeep,
        RecordFault::Foreign,
        RecordFault::Newer { version: Said::from("7") },
        RecordFault::Damaged { line: 3, column: 14 },
        RecordFault::Form { line: 3, column: 14, misfit: Misfit::Missing(Said::from("sample")) },
        RecordFault::Form { line: 3, column: 14, misfit: Misfit::Unknown(Said::from("smell")) },
        RecordFault::Form { line: 3, column: 14, misfit: Misfit::Twice(Said::from("sample")) },
        RecordFault::Form { line: 3, column: 14, misfit: Misfit::AnotherSort },
        RecordFault::Field { field: "kind", takes: "extension-lead or cord-set", got: Said::from("kettle") },
        RecordFault::TooLong { field: "origin" },
        RecordFault::TooManyAnswers,
        RecordFault::TooManyPhotos,
        RecordFault::TooManyHandlings,
        RecordFault::TooManyScenarios,
        RecordFault::SeveralExaminations,
        RecordFault::CutShort,
        RecordFault::PhotoChanged { number: 2 },
        RecordFault::PhotoAdded,
    ];
    let photo = RecordFault::Photo {
        number: 2,
        fault: EntryFault::Field {
            field: "media_type",
            takes: "image/jpeg or image/webp",
            got: Said::from("image/png"),
        },
    };
    let fault = EntryFault::Field { field: "link", takes: "there where there is a “number”", got: Said::NOTHING };
    let handling = RecordFault::Handling { number: 4, fault };
    let of_scenario = [
        EntryFault::UnknownCheck { check: Said::from("fuse-too-blue") },
        EntryFault::CheckTwice { check: "fuse-missing" },
        EntryFault::TooManyEvents,
    ];
    let scenarios = of_scenario.map(|fault| RecordFault::Scenario { number: 2, fault });
    let takes = "a number above 0 and no more than 1";
    let event = RecordFault::Event {
        number: 2,
        event: 1,
        fault: EntryFault::Field { field: "probability", takes, got: Said::from("2") },
    };
    let answers = entry_faults().map(|fault| RecordFault::Answer { number: 3, fault });
    let mut told = String::new();
    for fault in record.iter().chain([&photo, &handling]).chain(&answers).chain(&scenarios).chain([&event]) {
        writeln!(told, "{}", faults::taken_back(fault)).expect("a text takes any line");
    }
    accepted("files", &told);
}

fn entry_faults() -> [EntryFault; 13] {
    let (cores, fuse) = ("core-resistance", "fuse-in-the-holder");
    [
        EntryFault::UnknownQuestion { question: Said::from("colour-of-the-box") },
        EntryFault::Target { question: cores, takes: "of a core", got: Said::from("socket-1") },
        EntryFault::AnsweredBefore { question: fuse },
        EntryFault::Unanswered { question: fuse },
        EntryFault::SeveralAnswers { first: "one", second: "cannot_tell" },
        EntryFault::AnotherSort { question: cores, takes: "reading", got: "one" },
        EntryFault::UnknownAnswer { question: fuse, answer: Said::from("a-nail") },
        EntryFault::AnswerTwice { answer: "usb" },
        EntryFault::Count { question: "socket-count", least: 1, most: 20, got: Said::from("99") },
        EntryFault::Unit { question: cores, measures: "a resistance", unit: Said::from("volt") },
        EntryFault::Instrument { question: cores, instrument: Said::from("a-nose") },
        EntryFault::NotOneReading { question: cores },
        EntryFault::TooLong { field: "printed" },
    ]
}
