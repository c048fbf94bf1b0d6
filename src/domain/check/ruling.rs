//! From an answer or a reading to a judgement: the few moves that every check is made of.

use crate::domain::decision::{Limit, Probability, Thresholds};
use crate::domain::examination::Answer;
use crate::domain::finding::{Basis, Bearing, Conformity, Evidence, Favour, Judgement, Reason, Severity};
use crate::domain::quantity::Measurand;
use crate::domain::question::{Question, Target};
use crate::domain::uncertainty::Measured;
use crate::domain::view::View;

/// What an answer amounts to.
#[derive(Debug, Clone, Copy)]
pub enum Ruling {
    /// Keeps the rule.
    Keeps,
    /// Keeps the rule as far as print can tell: a claim, no evidence.
    FitsTheClaim,
    /// Breaks the rule.
    Breaks(Severity),
    /// Breaks the rule; how grave that is depends on the sample.
    BreaksBy(fn(&View) -> Severity),
    /// Cannot be told from this answer.
    CannotTell,
    /// This answer says nothing about the check: nobody looked.
    NotLookedAt,
    /// The check has nothing to say then.
    DoesNotApply,
}

impl Ruling {
    /// The judgement; `gravest` is the severity of what could not be told.
    pub fn judgement(self, view: &View, gravest: Severity, reason: Reason) -> Judgement {
        match self {
            Self::Keeps => Judgement::conforms(gravest, Basis::Sight, reason),
            Self::FitsTheClaim => Judgement::conforms(gravest, Basis::Print, reason),
            Self::Breaks(severity) => Judgement::breaks(severity, Basis::Sight, reason),
            Self::BreaksBy(severity) => Judgement::breaks(severity(view), Basis::Sight, reason),
            Self::CannotTell => Judgement::cannot_tell(gravest, reason),
            Self::NotLookedAt => Judgement::not_examined(gravest),
            Self::DoesNotApply => Judgement::does_not_apply(gravest),
        }
    }
}

impl Judgement {
    fn new(outcome: Conformity, severity: Severity, basis: Basis, reason: Reason) -> Self {
        Self { outcome, severity, basis, bearing: Bearing::Decides, reason, evidence: Vec::new() }
    }

    /// Keeps the rule; `severity` is what a break would have been.
    pub fn conforms(severity: Severity, basis: Basis, reason: Reason) -> Self {
        Self::new(Conformity::Conforms, severity, basis, reason)
    }

    /// Breaks the rule.
    pub fn breaks(severity: Severity, basis: Basis, reason: Reason) -> Self {
        Self::new(Conformity::Nonconforming, severity, basis, reason)
    }

    /// Looked at and could not be told.
    pub fn cannot_tell(severity: Severity, reason: Reason) -> Self {
        Self::new(Conformity::Inconclusive, severity, Basis::Sight, reason)
    }

    /// Nobody looked.
    pub fn not_examined(severity: Severity) -> Self {
        Self::new(Conformity::NotExamined, severity, Basis::Sight, Reason::NotAsked)
    }

    /// Nothing to say about this sample.
    pub fn does_not_apply(severity: Severity) -> Self {
        Self::new(Conformity::NotApplicable, severity, Basis::Sight, Reason::DoesNotApply)
    }

    /// What an answer amounts to that chooses nothing: "can't tell" and a refusal are inconclusive, all else is not looked at.
    pub fn without_choice(severity: Severity, answer: Option<&Answer>) -> Self {
        match answer {
            Some(Answer::CannotTell) => Self::cannot_tell(severity, Reason::CouldNotTell),
            Some(Answer::Refused) => Self::cannot_tell(severity, Reason::Refused),
            Some(
                Answer::One(_)
                | Answer::Any(_)
                | Answer::Reading(_)
                | Answer::Printed(_)
                | Answer::Nothing
                | Answer::Count(_)
                | Answer::NoTool
                | Answer::Later,
            )
            | None => Self::not_examined(severity),
        }
    }

    /// By whether an answer of a several-answers question was given: given, it breaks with `severity`; else it keeps.
    pub fn by_mark(
        view: &View,
        question: &'static Question,
        code: &'static str,
        severity: Severity,
        gravest: Severity,
    ) -> Self {
        match view.answer(question, Target::Sample) {
            Some(Answer::Any(codes)) if codes.contains(&code) => {
                let reason = Reason::Answered { question: question.id, target: Target::Sample, answer: code };
                Self::breaks(severity, Basis::Sight, reason)
            }
            Some(Answer::Any(_)) => Self::conforms(gravest, Basis::Sight, Reason::NothingWrongAnswered),
            answer => Self::without_choice(gravest, answer),
        }
    }

    /// By whether all of `needed` are among the answers of a question that lists what is printed: one that is absent breaks with
    /// `severity`; all of them there fit the claim and no more.
    pub fn by_print(view: &View, question: &'static Question, needed: &[&'static str], severity: Severity) -> Self {
        match view.answer(question, Target::Sample) {
            Some(Answer::Any(codes)) => match needed.iter().find(|code| !codes.contains(code)) {
                Some(answer) => {
                    Self::breaks(severity, Basis::Sight, Reason::NotAmong { question: question.id, answer })
                }
                None => Self::conforms(severity, Basis::Print, Reason::FitsTheClaim),
            },
            answer => Self::without_choice(severity, answer),
        }
    }

    /// The same, but it decides nothing.
    #[must_use]
    pub const fn only_told(mut self) -> Self {
        self.bearing = Bearing::IsOnlyTold;
        self
    }

    /// The same with its values.
    #[must_use]
    pub fn with_evidence(mut self, evidence: Vec<Evidence>) -> Self {
        self.evidence = evidence;
        self
    }

    /// What readings amount to: the worst outcome among them. No reading at all is not looked at; of `of` needed readings, some
    /// missing ones turn "keeps" into "can't tell".
    pub fn by_readings(severity: Severity, evidence: Vec<Evidence>, of: usize) -> Self {
        let Some(worst) = evidence.iter().map(|e| e.outcome).max() else {
            return Self::not_examined(severity);
        };
        let count = |n: usize| u8::try_from(n).unwrap_or(u8::MAX);
        let read = evidence.len();
        if worst != Conformity::Nonconforming && read < of {
            let reason = Reason::OnlySomeRead { read: count(read), of: count(of) };
            return Self::new(Conformity::Inconclusive, severity, Basis::Reading, reason).with_evidence(evidence);
        }
        Self::new(worst, severity, Basis::Reading, Reason::Measured).with_evidence(evidence)
    }

    /// The worst of several, for a check asked of each socket or core; what nobody looked at comes before what keeps the rule.
    pub fn worst(judgements: Vec<Self>, severity: Severity) -> Self {
        let weight = |j: &Self| (j.outcome, j.severity);
        let examined = judgements.iter().filter(|j| super::was_made(j.outcome)).count();
        let all = judgements.len();
        let count = |n: usize| u8::try_from(n).unwrap_or(u8::MAX);
        let worst = judgements.into_iter().max_by_key(weight);
        match worst {
            Some(j) if j.outcome == Conformity::NotExamined && examined > 0 => {
                Self::cannot_tell(j.severity, Reason::OnlySomeRead { read: count(examined), of: count(all) })
            }
            Some(j) => j,
            None => Self::not_examined(severity),
        }
    }
}

/// A measured value against a limit, with the probability of keeping it and the retry in the sample's favour.
pub fn against<Q: Measurand>(target: Target, measured: &Measured<Q>, limit: &Limit<Q>) -> Evidence {
    let probability = limit.conformance(measured);
    evidence(target, measured, limit, probability, Thresholds::USUAL.conformity(probability))
}

/// A value that is certainly on one side of a limit, because the display said "more than" or "less than".
pub fn certainly<Q: Measurand>(target: Target, value: Q, limit: &Limit<Q>, outcome: Conformity) -> Evidence {
    let probability = match outcome {
        Conformity::Conforms => Probability::ONE,
        Conformity::Nonconforming => Probability::ZERO,
        Conformity::Inconclusive | Conformity::NotApplicable | Conformity::NotExamined => Probability::new(0.5),
    };
    evidence(target, &Measured::exact(value), limit, probability, outcome)
}

/// A measured value beside a limit, for checks that decide its outcome by a rule of their own.
pub fn evidence<Q: Measurand>(
    target: Target,
    measured: &Measured<Q>,
    limit: &Limit<Q>,
    probability: Probability,
    outcome: Conformity,
) -> Evidence {
    let (value, u) = measured.amounts();
    let friendly = limit.friendly(measured);
    Evidence {
        target,
        question: None,
        value,
        u,
        limit: limit.bound(),
        probability,
        outcome,
        favour: Favour { value: friendly.amount(), holds: limit.holds(friendly), granted: Vec::new() },
    }
}
