//! When a dead reading counts: a path that was heard is there, but silence is a gap only where nothing else can have made it.

use crate::domain::check::{Ruling, on_leads, was_made};
use crate::domain::examination::Answer;
use crate::domain::facts;
use crate::domain::finding::{Conformity, Judgement, Needed, Reason, Severity};
use crate::domain::question::Question;
use crate::domain::view::View;

use super::poles::POLE_PATH;

/// What must be so for an outcome to count.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Trust {
    /// The sample hangs on nothing and nothing hangs on it. Enough for every path that is there, and for the earth, which no switch or
    /// fuse opens.
    Loose,
    /// As well, line and neutral are closed all the way from the plug to every socket.
    PolesClosed,
}

impl Trust {
    /// What keeps an outcome from counting; nothing where it counts.
    fn doubt(self, view: &View) -> Option<Reason> {
        let unprepared = || Some(Reason::Needs(Needed::ReadingsPrepared));
        if !(unplugged(view) && made_sure(view, "nothing-connected")) {
            return unprepared();
        }
        if self == Self::Loose || every_pole_was_heard(view) {
            return None;
        }
        if poles_may_open_when_dead(view) {
            return Some(Reason::PolesOpenWhenDead);
        }
        if made_sure(view, "switches-on") && made_sure(view, "fuse-good") { None } else { unprepared() }
    }

    /// The judgement where it counts; else it cannot be told, with its values kept.
    pub fn hold(self, view: &View, judgement: Judgement) -> Judgement {
        match self.doubt(view) {
            Some(reason) if was_made(judgement.outcome) => in_doubt(judgement, reason),
            Some(_) | None => judgement,
        }
    }
}

/// The same judgement, but it cannot be told, for this reason.
pub fn in_doubt(judgement: Judgement, reason: Reason) -> Judgement {
    Judgement { outcome: Conformity::Inconclusive, reason, ..judgement }
}

/// Whether somebody made sure that the sample is unplugged. No reading is asked for before.
pub fn unplugged(view: &View) -> bool {
    made_sure(view, "unplugged")
}

fn made_sure(view: &View, what: &str) -> bool {
    view.marked(facts::READINGS_PREPARED, what) == Some(true)
}

/// Line and neutral were heard at every socket, so that switches, fuse and contacts are closed whatever anybody says of them.
fn every_pole_was_heard(view: &View) -> bool {
    let mut targets = POLE_PATH.targets(view).into_iter().peekable();
    targets.peek().is_some()
        && targets.all(|target| matches!(view.one_of(POLE_PATH, target), Some("both-beep" | "crossed")))
}

fn poles_may_open_when_dead(view: &View) -> bool {
    on_leads(view) && ["timer", "rcd", "electronics"].into_iter().any(|extra| facts::may_have(view, extra))
}

/// What each answer of a tester's question amounts to, and what must be so for it to count.
pub type Table = [(&'static str, Ruling, Trust)];

/// The judgement by a tester's answers, the worst of all it was asked of.
pub fn by_tester(view: &View, question: &'static Question, severity: Severity, table: &Table) -> Judgement {
    let judged = question.targets(view).into_iter().map(|target| match view.answer(question, target) {
        Some(Answer::One(answer)) => {
            let reason = Reason::Answered { question: question.id, target, answer };
            match table.iter().find(|row| row.0 == *answer) {
                Some((_, ruling, trust)) => trust.hold(view, ruling.judgement(view, severity, reason)),
                None => Judgement::cannot_tell(severity, reason),
            }
        }
        answer => Judgement::without_choice(severity, answer),
    });
    Judgement::worst(judged.collect(), severity)
}

/// The worst of those that were made; where none was, nobody looked.
pub fn worst_made(judgements: impl IntoIterator<Item = Judgement>, severity: Severity) -> Judgement {
    Judgement::worst(judgements.into_iter().filter(|j| was_made(j.outcome)).collect(), severity)
}
