//! A bench to lay an invented sample on: answers by question, findings by code.

use plugwary::domain::assess::{Assessment, RuleBook, assess};
use plugwary::domain::examination::{Answer, Examination};
use plugwary::domain::finding::{Conformity, Finding, Severity};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{Amount, Unit};
use plugwary::domain::question::{Question, Target};
use plugwary::domain::reading::{Reading, Shown};
use plugwary::domain::sample::{Equipment, Kind, Market, Sample};

/// One examination in the making.
#[derive(Clone)]
pub struct Bench(pub Examination);

impl Bench {
    /// A lead for Great Britain.
    pub fn lead(equipment: Equipment) -> Self {
        Self::sample(Kind::ExtensionLead, Market::GreatBritain, equipment)
    }

    /// A cord set for Great Britain.
    pub fn cord_set(equipment: Equipment) -> Self {
        Self::sample(Kind::CordSet, Market::GreatBritain, equipment)
    }

    /// Any sample.
    pub fn sample(kind: Kind, market: Market, equipment: Equipment) -> Self {
        let sample = Sample { number: String::new(), title: String::new(), kind, market };
        Self(Examination::new(sample, equipment))
    }

    /// Any answer for any target.
    pub fn answer(mut self, question: &'static Question, target: Target, answer: Answer) -> Self {
        self.0.record(question, target, answer);
        self
    }

    /// One of a question's answers.
    #[track_caller]
    pub fn one(self, question: &'static Question, code: &str) -> Self {
        self.one_of(question, Target::Sample, code)
    }

    /// One of a question's answers, for one of several.
    #[track_caller]
    pub fn one_of(self, question: &'static Question, target: Target, code: &str) -> Self {
        let code = question.answers().iter().find(|known| **known == code).expect("the question knows the answer");
        self.answer(question, target, Answer::One(code))
    }

    /// Those of a question's answers that fit.
    #[track_caller]
    pub fn any(self, question: &'static Question, codes: &[&str]) -> Self {
        assert!(codes.iter().all(|code| question.answers().contains(code)), "the question knows every answer");
        let codes = question.answers().iter().copied().filter(|known| codes.contains(known)).collect();
        self.answer(question, Target::Sample, Answer::Any(codes))
    }

    /// What is printed there.
    pub fn printed(self, question: &'static Question, target: Target, print: &str) -> Self {
        self.answer(question, target, Answer::Printed(print.to_owned()))
    }

    /// A reading of `value` in `unit` whose last digit steps by `step`.
    pub fn reads(
        self,
        question: &'static Question,
        target: Target,
        (value, step, unit): (f64, f64, Unit),
        instrument: Instrument,
    ) -> Self {
        let reading = Reading {
            shown: Shown::Value(Amount::new(value, unit)),
            step: Amount::new(step, unit),
            unit,
            instrument,
            own: None,
            typed: value.to_string(),
        };
        self.answer(question, target, Answer::Reading(reading))
    }

    /// Everything that can be said of it.
    pub fn assessed(&self) -> Assessment {
        assess(&self.0, &RuleBook::CURRENT)
    }

    /// The finding of a check; `None` where the check does not apply.
    pub fn finding(&self, code: &str) -> Option<Finding> {
        self.assessed().findings.into_iter().find(|finding| finding.code == code)
    }

    /// The outcome of a check.
    pub fn outcome(&self, code: &str) -> Conformity {
        self.finding(code).map_or(Conformity::NotApplicable, |finding| finding.outcome())
    }

    /// The outcome of a check is `outcome`.
    #[track_caller]
    pub fn expect(&self, code: &str, outcome: Conformity) {
        assert_eq!(self.outcome(code), outcome, "outcome of {code}");
    }

    /// A check breaks, and so gravely.
    #[track_caller]
    pub fn expect_break(&self, code: &str, severity: Severity) {
        let judgement = self.finding(code).map(|finding| finding.judgement);
        let found = judgement.as_ref().map(|j| (j.outcome, j.severity));
        assert_eq!(found, Some((Conformity::Nonconforming, severity)), "judgement of {code}");
    }
}
