//! The checks: one for each thing that can be wrong, named for what is wrong.
//!
//! A place is a folder; a file is a check or a tight family. Each place lists its [questions](Question) in the order of the walk and
//! its checks; [`all`] and [`questions`] are the one registry.

pub mod cable;
pub mod inside;
pub mod live;
pub mod plug;
pub mod readings;
pub mod ruling;
pub mod shown;
pub mod sockets;
pub mod what_it_says;

use super::examination::Answer;
use super::finding::{Conformity, Finding, Judgement, Reason, Severity};
use super::question::Question;
use super::sample::{Equipment, Place};
use super::standard::Clause;
use super::view::View;
use inside::opening::OPENED;
use live::competence::{LIVE_COMPETENT, may_energise};
pub use ruling::Ruling;

/// One thing that can be wrong.
#[derive(Debug)]
pub struct Check {
    /// Kebab-case, named for what is wrong, unique, for ever.
    pub code: &'static str,
    /// Where one looks.
    pub place: Place,
    /// The least equipment that can tell.
    pub needs: Equipment,
    /// How much a break matters at its gravest.
    pub severity: Severity,
    /// Whether it has anything to say about this sample.
    pub applies: fn(&View) -> bool,
    /// How answers become an outcome.
    pub judge: Judge,
    /// The questions that inform it, the most telling first.
    pub asks: &'static [&'static Question],
    /// What it is held against, in whichever market; a finding keeps what holds where the sample is sold.
    pub against: &'static [Clause],
    /// What looking costs and how often it finds something.
    pub prospect: Prospect,
}

/// What a look costs, and how often a doubtful product breaks there; both are stated defaults of usual practice.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Prospect {
    /// Minutes it takes.
    pub minutes: f64,
    /// Chance, in percent, that a doubtful product breaks it.
    pub percent: u8,
}

/// How answers become an outcome.
#[derive(Debug)]
pub enum Judge {
    /// By the answer to a question, looked up in a table that names every answer.
    Answer(&'static Question, &'static [(&'static str, Ruling)]),
    /// By whether an answer of a several-answers question was given: given, it breaks with this severity; else it keeps.
    Marked(&'static Question, &'static str, Severity),
    /// By reckoning.
    Reckoned(fn(&View) -> Judgement),
}

impl Check {
    /// Judges this check.
    pub fn finding(&self, view: &View) -> Finding {
        let judgement = if (self.applies)(view) {
            match self.judge {
                Judge::Answer(question, table) => self.by_answer(view, question, table),
                Judge::Marked(question, code, severity) => {
                    Judgement::by_mark(view, question, code, severity, self.severity)
                }
                Judge::Reckoned(judge) => judge(view),
            }
        } else {
            Judgement::does_not_apply(self.severity)
        };
        let judgement = match judgement.outcome {
            Conformity::Conforms if self.is_shut(view) => Judgement::not_examined(self.severity),
            Conformity::Conforms
            | Conformity::Inconclusive
            | Conformity::Nonconforming
            | Conformity::NotApplicable
            | Conformity::NotExamined => judgement,
        };
        let against = self.against.iter().copied().filter(|clause| clause.holds_in(view.market())).collect();
        Finding { code: self.code, place: self.place, judgement, against, asks: self.asks }
    }

    /// Whether the body stays closed that one would look into, or nobody may energise what is tried live. Whatever was found wrong
    /// there stands all the same; what was found in order does not, for it cannot have been looked at as it must be.
    fn is_shut(&self, view: &View) -> bool {
        (self.asks.contains(&OPENED) && view.one(OPENED) == Some("stays-closed"))
            || (self.asks.contains(&LIVE_COMPETENT) && !may_energise(view))
    }

    fn by_answer(&self, view: &View, question: &'static Question, table: &[(&str, Ruling)]) -> Judgement {
        let judged = question.targets(view).into_iter().map(|target| match view.answer(question, target) {
            Some(Answer::One(answer)) => {
                let ruling = table.iter().find(|(code, _)| code == answer).map_or(Ruling::CannotTell, |row| row.1);
                let reason = Reason::Answered { question: question.id, target, answer };
                ruling.judgement(view, self.severity, reason)
            }
            answer => Judgement::without_choice(self.severity, answer),
        });
        Judgement::worst(judged.collect(), self.severity)
    }
}

/// Every check, in the order of the walk.
pub fn all() -> impl Iterator<Item = &'static Check> {
    [
        what_it_says::CHECKS,
        plug::CHECKS,
        cable::CHECKS,
        sockets::CHECKS,
        readings::CHECKS,
        inside::CHECKS,
        cable::copper::CHECKS,
        live::CHECKS,
    ]
    .into_iter()
    .flatten()
    .copied()
}

/// Every question, in the order of the walk.
pub fn questions() -> impl Iterator<Item = &'static Question> {
    [
        what_it_says::QUESTIONS,
        plug::QUESTIONS,
        cable::QUESTIONS,
        sockets::QUESTIONS,
        readings::QUESTIONS,
        inside::QUESTIONS,
        cable::copper::QUESTIONS,
        live::QUESTIONS,
    ]
    .into_iter()
    .flatten()
    .copied()
}

/// The check of a code.
pub fn by_code(code: &str) -> Option<&'static Check> {
    all().find(|check| check.code == code)
}

/// The question of an id.
pub fn question(id: &str) -> Option<&'static Question> {
    questions().find(|question| question.id == id)
}

/// For checks that apply to every sample of today's kinds.
pub const fn always(_: &View) -> bool {
    true
}

/// For checks of leads only.
pub fn on_leads(view: &View) -> bool {
    view.kind() == super::sample::Kind::ExtensionLead
}

/// For checks of cord sets only.
pub fn on_cord_sets(view: &View) -> bool {
    view.kind() == super::sample::Kind::CordSet
}

/// Whether an outcome counts as looked at.
pub const fn was_made(outcome: Conformity) -> bool {
    matches!(outcome, Conformity::Conforms | Conformity::Nonconforming | Conformity::Inconclusive)
}
