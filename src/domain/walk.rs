//! The walk from place to place: which questions are asked of this sample, in which order.

use super::check;
use super::examination::Answer;
use super::question::{Ask, Question, Stage, Target};
use super::sample::{Equipment, Place};
use super::view::View;

/// The places to go to with what is at hand, in order.
///
/// Evidence comes first, then the outside, dead readings, the inside, and the live place last. A buyer with nothing but eyes has
/// three minutes: the plug tells most, so it comes first.
pub fn places(view: &View) -> Vec<Place> {
    match view.equipment() {
        Equipment::Eyes => vec![Place::Plug, Place::Sockets, Place::Cable, Place::WhatItSays],
        Equipment::HandTools => {
            vec![Place::WhatItSays, Place::Plug, Place::Cable, Place::Sockets, Place::Readings]
        }
        Equipment::Meters => Place::ALL.to_vec(),
    }
}

/// Every question that is asked of this sample with what is at hand, in order, and what each is asked of.
pub fn asked(view: &View) -> Vec<(&'static Question, Target)> {
    let places = places(view);
    let asked: Vec<&'static Question> = places
        .iter()
        .flat_map(|place| check::questions().filter(move |question| question.place == *place))
        .filter(|question| question.needs <= view.equipment() && (question.when)(view))
        .collect();
    let of_stage = |stage| asked.iter().copied().filter(move |question| question.stage == stage);
    let asked = [Stage::Whole, Stage::Cut, Stage::Lesser].into_iter().flat_map(of_stage);
    asked.flat_map(|question| question.targets(view).into_iter().map(move |target| (question, target))).collect()
}

/// Those that have no answer yet.
pub fn unanswered(view: &View) -> Vec<(&'static Question, Target)> {
    asked(view).into_iter().filter(|&(question, target)| is_open(view, question, target)).collect()
}

fn is_open(view: &View, question: &Question, target: Target) -> bool {
    matches!(view.answer(question, target), None | Some(Answer::Later))
}

/// How many of the questions that may decide are answered, and how many there are; the second may grow with the answers.
pub fn progress(view: &View) -> (usize, usize) {
    let deciding = || asked(view).into_iter().filter(|(question, _)| question.stage < Stage::Lesser);
    (deciding().filter(|&(question, target)| !is_open(view, question, target)).count(), deciding().count())
}

/// The question, and all others without an answer that want no other tool than it does.
pub fn wanting_the_same_tool(view: &View, question: &'static Question) -> Vec<(&'static Question, Target)> {
    let tools = |question: &Question| match question.ask {
        Ask::Measure { instruments, .. } => instruments,
        Ask::One(_) | Ask::Any(_) | Ask::Printed(_) | Ask::Count(..) => &[],
    };
    let lacking = tools(question);
    let is_lacking = |other: &Question| {
        let needed = tools(other);
        other == question || (!needed.is_empty() && needed.iter().all(|tool| lacking.contains(tool)))
    };
    unanswered(view).into_iter().filter(|(other, _)| is_lacking(other)).collect()
}
