//! The record of one examined sample: what it is, what is at hand, and every answer in the order it came.

use super::question::{Question, Target};
use super::reading::Reading;
use super::sample::{Equipment, Sample};

/// One examination.
#[derive(Debug, Clone, PartialEq)]
pub struct Examination {
    /// What is examined.
    pub sample: Sample,
    /// What is at hand.
    pub equipment: Equipment,
    /// Every answer, oldest first; at most one for a question and target.
    pub answers: Vec<Answered>,
}

/// One answer and what it answers.
#[derive(Debug, Clone, PartialEq)]
pub struct Answered {
    /// The question.
    pub question: &'static Question,
    /// Which of several it speaks of.
    pub target: Target,
    /// What was answered.
    pub answer: Answer,
}

/// What was answered.
#[derive(Debug, Clone, PartialEq)]
pub enum Answer {
    /// One of the question's answers, by code.
    One(&'static str),
    /// Those of the question's answers that fit, in the question's order; none of them is an answer too.
    Any(Vec<&'static str>),
    /// A reading.
    Reading(Reading),
    /// What is printed there, as it is printed.
    Printed(String),
    /// Nothing is printed there, or there is no such thing.
    Nothing,
    /// A number of things.
    Count(u8),
    /// Looked, and could not tell.
    CannotTell,
    /// The seller or owner would not let one look.
    Refused,
    /// The tool for it is not at hand; the same as not looked at.
    NoTool,
    /// Put off; the same as not looked at.
    Later,
}

impl Examination {
    /// A fresh examination.
    pub const fn new(sample: Sample, equipment: Equipment) -> Self {
        Self { sample, equipment, answers: Vec::new() }
    }

    /// The answer to a question for a target.
    pub fn answer(&self, question: &Question, target: Target) -> Option<&Answer> {
        self.answers.iter().find(|a| a.question == question && a.target == target).map(|a| &a.answer)
    }

    /// Puts an answer on record, in the place of an earlier one if there is one; returns the earlier one.
    pub fn record(&mut self, question: &'static Question, target: Target, answer: Answer) -> Option<Answer> {
        let earlier = self.answers.iter_mut().find(|a| a.question == question && a.target == target);
        if let Some(earlier) = earlier {
            return Some(core::mem::replace(&mut earlier.answer, answer));
        }
        self.answers.push(Answered { question, target, answer });
        None
    }

    /// Takes an answer off the record and returns it.
    pub fn withdraw(&mut self, question: &Question, target: Target) -> Option<Answer> {
        let at = self.answers.iter().position(|a| a.question == question && a.target == target)?;
        Some(self.answers.remove(at).answer)
    }
}
