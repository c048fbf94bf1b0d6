//! The registry: unique codes, words for everything, a row for every answer, and nothing essential missing.

use std::collections::BTreeSet;

use plugwary::domain::check::{self, Judge};
use plugwary::domain::essential;
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::Measurand;
use plugwary::domain::question::Ask;
use plugwary::domain::sample::Equipment;
use plugwary::words;

/// What the app fetches when somebody asks how to look.
const HELP: &str = include_str!("../../src/words/help.txt");

fn is_kebab(code: &str) -> bool {
    !code.is_empty()
        && code.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
        && !code.starts_with('-')
        && !code.ends_with('-')
}

#[test]
fn codes_are_kebab_case_and_unique() {
    let mut codes = BTreeSet::new();
    for check in check::all() {
        assert!(is_kebab(check.code), "{}", check.code);
        assert!(codes.insert(check.code), "{} stands twice", check.code);
    }
    let mut ids = BTreeSet::new();
    for question in check::questions() {
        assert!(is_kebab(question.id), "{}", question.id);
        assert!(ids.insert(question.id), "{} stands twice", question.id);
    }
    let keys: BTreeSet<_> = check::questions().map(|question| question.key).collect();
    assert_eq!(keys.len(), ids.len(), "two questions share a key");
}

#[test]
fn every_question_a_check_asks_is_in_the_registry() {
    for check in check::all() {
        assert!(!check.asks.is_empty(), "{} asks nothing", check.code);
        for question in check.asks {
            assert!(check::question(question.id).is_some(), "{} asks {}, which is in no list", check.code, question.id);
        }
    }
}

#[test]
fn every_question_is_asked_by_a_check_or_gates_one() {
    let gates = [
        "live-competent",
        "readings-prepared",
        "plug-make",
        "socket-count",
        "extras",
        "room-temperature",
        "piece-length",
        "may-cut",
    ];
    for question in check::questions() {
        let is_asked = check::all().any(|check| check.asks.contains(&question));
        assert!(is_asked || gates.contains(&question.id), "{} informs nothing", question.id);
    }
}

#[test]
fn a_table_names_every_answer_of_its_question() {
    for check in check::all() {
        match check.judge {
            Judge::Answer(question, table) => {
                let named: Vec<&str> = table.iter().map(|(code, _)| *code).collect();
                assert_eq!(named.len(), question.answers().len(), "{} and {}", check.code, question.id);
                assert!(
                    question.answers().iter().all(|code| named.contains(code)),
                    "{} and {}",
                    check.code,
                    question.id
                );
                assert!(matches!(question.ask, Ask::One(_)), "{} reads one answer of {}", check.code, question.id);
            }
            Judge::Marked(question, code, _) => {
                assert!(question.answers().contains(&code), "{} looks for {code} in {}", check.code, question.id);
                assert!(matches!(question.ask, Ask::Any(_)), "{} reads marks of {}", check.code, question.id);
            }
            Judge::Reckoned(_) => {}
        }
    }
}

#[test]
fn a_check_needs_no_less_than_its_first_question() {
    for check in check::all() {
        let least = check.asks.iter().map(|question| question.needs).min();
        assert!(least.is_some_and(|needs| needs <= check.needs), "{} cannot be made with what it needs", check.code);
    }
}

#[test]
fn least_exact_instrument_stands_last() {
    for question in check::questions() {
        let Ask::Measure { kind, instruments, .. } = question.ask else { continue };
        // An insulation tester brings the voltage that a hand meter lacks, whatever their accuracies.
        if question.id == "insulation" {
            assert_eq!(instruments.last(), Some(&Instrument::HandMeter));
            continue;
        }
        let may_be_wrong_by = |instrument: &Instrument| {
            let accuracy = instrument.accuracy();
            let (fixed, unit) = accuracy.fixed;
            let fixed = if unit.kind() == kind { fixed * unit.step_in_base() } else { 0.0 };
            // A tenth of an ohm in steps of a milliohm, or what compares with it.
            accuracy.of_reading * 0.1 + accuracy.digits * 0.001 + fixed + instrument.leads_at_most().base()
        };
        let widths: Vec<f64> = instruments.iter().map(may_be_wrong_by).collect();
        let last = widths.last().copied().unwrap_or_default();
        assert!(widths.iter().all(|width| *width <= last), "{}: {widths:?}", question.id);
    }
}

#[test]
fn every_question_and_answer_has_words() {
    for question in check::questions() {
        let words = words::question::of(question);
        assert_eq!(words.id, question.id, "{} has no words", question.id);
        assert!(!words.asks.is_empty(), "{}", question.id);
        let help = words::help::find(HELP, question.id);
        assert!(help.is_some_and(|help| help.look.ends_with('.') && help.why.ends_with('.')), "{}", question.id);
        for code in question.answers() {
            let answer = words.answer(code);
            assert!(answer.is_some_and(|a| !a.answer.is_empty() && a.says.ends_with('.')), "{} {code}", question.id);
        }
        let is_print = matches!(question.ask, Ask::Printed(_));
        let says_nothing = words.answer("nothing").is_some_and(|answer| answer.says.ends_with('.'));
        assert!(says_nothing || !is_print, "{} has no sentence for no print", question.id);
        let answers = question.answers().len() + usize::from(is_print);
        assert_eq!(words.answers.len(), answers, "{} words an answer it does not have", question.id);
        let has_topic = !words.topic.is_empty() && !words.topic.ends_with(['.', '?']);
        assert!(has_topic && words.topic.contains("{which}") == words.asks.contains("{which}"), "{}", question.id);
        let has_sentence = !words.says.is_empty();
        assert!(has_sentence || matches!(question.ask, Ask::One(_)), "{} has no sentence", question.id);
        let takes_value = matches!(question.ask, Ask::Measure { .. } | Ask::Printed(_) | Ask::Count(..));
        assert!(!takes_value || words.says.contains("{value}"), "{} does not say its value", question.id);
    }
    for words in words::question::all() {
        assert!(check::question(words.id).is_some(), "words for {}, which nobody asks", words.id);
    }
}

#[test]
fn help_is_for_questions_that_are_asked_and_for_each_once() {
    let ids: Vec<&str> = HELP.trim_end().split("\n\n").filter_map(|help| help.lines().next()).collect();
    for id in &ids {
        assert!(check::question(id).is_some(), "help for {id}, which nobody asks");
    }
    assert_eq!(ids.iter().collect::<BTreeSet<_>>().len(), ids.len());
    assert_eq!(words::help::find(HELP, "plug"), None, "the beginning of an id is no id");
}

#[test]
fn what_is_said_later_of_checks_is_for_checks_that_are_made_and_for_each_once() {
    let later = include_str!("../../src/words/checks.txt");
    let codes: Vec<&str> = later.trim_end().split("\n\n").filter_map(|check| check.lines().next()).collect();
    for code in &codes {
        assert!(check::by_code(code).is_some(), "words for {code}, which nobody checks");
    }
    assert_eq!(codes.iter().collect::<BTreeSet<_>>().len(), codes.len());
}

#[test]
fn every_check_has_words() {
    for check in check::all() {
        let words = words::check::of(check.code);
        assert_eq!(words.code, check.code, "{} has no words", check.code);
        assert!(
            !words.wrong.is_empty() && words.why().ends_with('.') && words.settles().ends_with('.'),
            "{}",
            check.code
        );
    }
    for words in words::check::all() {
        assert!(check::by_code(words.code).is_some(), "words for {}, which nobody checks", words.code);
    }
}

#[test]
fn everything_essential_exists_and_can_be_made_with_what_is_at_hand() {
    for equipment in Equipment::ALL {
        for code in essential::codes(equipment) {
            let check = check::by_code(code);
            assert!(check.is_some_and(|check| check.needs <= equipment), "{code} with {}", equipment.code());
        }
    }
}

#[test]
fn a_danger_is_never_decided_by_a_number_recalled_weakly() {
    for check in check::all() {
        let decides = check.against.iter().any(|clause| clause.provenance.may_decide());
        assert!(decides, "{} rests on nothing that may decide", check.code);
    }
}
