//! The walk from place to place: which questions are asked of this sample, in which order.

use super::check;
use super::examination::Answer;
use super::question::{Question, Target};
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
    places(view)
        .into_iter()
        .flat_map(|place| check::questions().filter(move |question| question.place == place))
        .filter(|question| question.needs <= view.equipment() && (question.when)(view))
        .flat_map(|question| question.targets(view).into_iter().map(move |target| (question, target)))
        .collect()
}

/// Those that have no answer yet.
pub fn unanswered(view: &View) -> Vec<(&'static Question, Target)> {
    asked(view).into_iter().filter(|&(question, target)| is_open(view, question, target)).collect()
}

fn is_open(view: &View, question: &Question, target: Target) -> bool {
    matches!(view.answer(question, target), None | Some(Answer::Later))
}
