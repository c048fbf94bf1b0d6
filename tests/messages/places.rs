//! Every question and every check, place by place, as they are worded.

use core::fmt::Write as _;

use plugwary::domain::check::{self, Check};
use plugwary::domain::question::{Ask, Question};
use plugwary::domain::sample::Place;
use plugwary::words::instrument;
use plugwary::words::{check as check_words, clause, help, question as question_words, verdict};

use crate::accepted;

/// What the app fetches when somebody asks how to look.
const HELP: &str = include_str!("../../src/words/help.txt");

#[test]
fn every_question_reads_as_accepted() {
    for place in Place::ALL {
        let questions = check::questions().filter(|question| question.place == place);
        accepted(&format!("{}-questions", place.code()), &joined(questions.map(asked)));
    }
}

#[test]
fn every_check_reads_as_accepted() {
    for place in Place::ALL {
        let checks = check::all().filter(|check| check.place == place);
        accepted(&format!("{}-checks", place.code()), &joined(checks.map(judged)));
    }
}

fn joined(told: impl Iterator<Item = String>) -> String {
    told.collect::<Vec<_>>().join("\n")
}

fn asked(question: &Question) -> String {
    let words = question_words::of(question);
    let mut told = format!("{} [{}]\n", words.asks, question.id);
    line(&mut told, "topic", words.topic);
    line(&mut told, "caution", words.caution);
    if let Some(help) = help::find(HELP, words.id) {
        line(&mut told, "look", &help.look);
        line(&mut told, "why", &help.why);
    }
    for answer in words.answers {
        line(&mut told, answer.answer, answer.says);
    }
    let label = if question.answers().is_empty() { "typed" } else { "none of them" };
    line(&mut told, label, words.says);
    if let Ask::Measure { instruments, .. } = question.ask {
        let names: Vec<_> = instruments.iter().copied().map(instrument::name).collect();
        line(&mut told, "read with", &names.join("; "));
    }
    told
}

fn judged(check: &Check) -> String {
    let words = check_words::of(check.code);
    let mut told = format!("{} [{}, {}]\n", words.wrong, check.code, verdict::severity(check.severity));
    line(&mut told, "why", words.why());
    line(&mut told, "settles", words.settles());
    for held_against in check.against {
        line(&mut told, "against", &clause::citation(held_against));
    }
    told
}

/// A labelled line; nothing where there is nothing to say.
fn line(told: &mut String, label: &str, text: &str) {
    if !text.is_empty() {
        writeln!(told, "  {label}: {text}").expect("a text takes any line");
    }
}
