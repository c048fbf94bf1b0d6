//! The running statement: one sentence for each answer, with the bar that stands beside it and the findings that rest on it.
//!
//! The screen and the file are both made of this.

use crate::domain::assess::Assessment;
use crate::domain::examination::{Answer, Answered, Examination};
use crate::domain::finding::{Conformity, Finding, Reason, Severity};
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Kind, Place};

use super::{check, number, question, which};

/// The bar beside a sentence.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Bar {
    /// Keeps the rule, or is a plain fact.
    Thin,
    /// Not looked at.
    Empty,
    /// A bad sign.
    Double,
    /// Could not be told.
    Dotted,
    /// Against the rules.
    Hatched,
    /// A danger.
    Solid,
}

impl Bar {
    /// The bar of a finding.
    pub const fn of(finding: &Finding) -> Self {
        match (finding.judgement.outcome, finding.judgement.severity) {
            (Conformity::Nonconforming, Severity::Danger) => Self::Solid,
            (Conformity::Nonconforming, Severity::Breach) => Self::Hatched,
            (Conformity::Nonconforming, Severity::BadSign) => Self::Double,
            (Conformity::Inconclusive, _) => Self::Dotted,
            (Conformity::NotExamined, _) => Self::Empty,
            (Conformity::Conforms | Conformity::NotApplicable, _) => Self::Thin,
        }
    }

    /// The stable code, also the name of its style class.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Thin => "thin",
            Self::Empty => "empty",
            Self::Double => "double",
            Self::Dotted => "dotted",
            Self::Hatched => "hatched",
            Self::Solid => "solid",
        }
    }

    /// The same in a word, for those who cannot see the bar.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Thin => "nothing against it",
            Self::Empty => "not looked at",
            Self::Double => "bad sign",
            Self::Dotted => "can’t tell",
            Self::Hatched => "against the rules",
            Self::Solid => "danger",
        }
    }
}

/// One sentence of the statement.
#[derive(Debug, Clone, PartialEq)]
pub struct Sentence<'a> {
    /// The question it answers.
    pub question: &'static Question,
    /// Which of several.
    pub target: Target,
    /// The sentence.
    pub text: String,
    /// Whether the answer tells anything of the sample; that a tool is not at hand does not.
    pub tells: bool,
    /// Whether it says that something could not be found out.
    pub is_open: bool,
    /// The bar beside it: that of its gravest finding.
    pub bar: Bar,
    /// The findings told under it: breaks and doubts, gravest first.
    pub findings: Vec<&'a Finding>,
}

impl Sentence<'_> {
    /// The word of the bar, with what is wrong: beside a plain fact the word alone would blame that. Empty where nothing is.
    pub fn blame(&self) -> String {
        let of_bar = self.findings.iter().filter(|finding| Bar::of(finding) == self.bar);
        let wrong: Vec<&str> = of_bar.map(|finding| check::of(finding.code).wrong).collect();
        match (self.bar > Bar::Thin, wrong.is_empty()) {
            (false, _) => String::new(),
            (true, true) => self.bar.word().to_owned(),
            (true, false) => format!("{}: {}", self.bar.word(), wrong.join("; ")),
        }
    }
}

/// The statement, a sentence for each answer in the order they were given.
///
/// Each finding stands under one sentence only: the last one given of those it rests on.
pub fn sentences<'a>(examination: &Examination, assessment: &'a Assessment) -> Vec<Sentence<'a>> {
    let told = |answered: &&Answered| answered.answer != Answer::Later;
    let mut sentences: Vec<Sentence<'a>> = examination
        .answers
        .iter()
        .filter(told)
        .map(|answered| Sentence {
            question: answered.question,
            target: answered.target,
            text: sentence(answered, examination.sample.kind),
            tells: answered.answer != Answer::NoTool,
            is_open: matches!(answered.answer, Answer::CannotTell | Answer::Refused),
            bar: Bar::Thin,
            findings: Vec::new(),
        })
        .collect();
    let is_answered = |question: &&Question| examination.answers.iter().any(|a| a.question == *question);
    let is_all_answered = |finding: &Finding| finding.asks.iter().all(is_answered);
    for finding in &assessment.findings {
        if let Some(home) = home(&mut sentences, finding) {
            // What waits for another question does not make this answer one that nobody gave.
            if finding.outcome() != Conformity::NotExamined || is_all_answered(finding) {
                home.bar = home.bar.max(Bar::of(finding));
            }
            if matches!(finding.outcome(), Conformity::Nonconforming | Conformity::Inconclusive) {
                home.findings.push(finding);
            }
        }
    }
    sentences
}

/// Findings that have no answer to stand under, such as print that is nowhere.
pub fn homeless<'a>(examination: &Examination, assessment: &'a Assessment) -> Vec<&'a Finding> {
    let rests = |finding: &&Finding| {
        !examination.answers.iter().any(|a| a.answer != Answer::Later && finding.asks.contains(&a.question))
    };
    let told = |finding: &&Finding| matches!(finding.outcome(), Conformity::Nonconforming | Conformity::Inconclusive);
    assessment.findings.iter().filter(told).filter(rests).collect()
}

/// The sentence a finding stands under.
fn home<'s, 'a>(sentences: &'s mut [Sentence<'a>], finding: &Finding) -> Option<&'s mut Sentence<'a>> {
    let target = if let Reason::Answered { question, target, .. } = &finding.judgement.reason {
        Some((*question, *target))
    } else if let Reason::WattsAboveVoltsTimesAmperes { place, .. }
    | Reason::ClaimAgainst { place, .. }
    | Reason::FlexShort { place, .. }
    | Reason::ClaimsDisagree { higher: (place, _), .. } = &finding.judgement.reason
    {
        Some(("", Target::Claim(*place)))
    } else {
        let gravest = finding.judgement.evidence.iter().max_by_key(|e| e.outcome);
        gravest.map(|e| (e.question.map_or("", |question| question.id), e.target))
    };
    let rests_on = |s: &Sentence| s.tells && finding.asks.contains(&s.question);
    let exactly = |s: &Sentence| {
        target.is_some_and(|(question, target)| {
            s.target == target && (question.is_empty() || s.question.id == question) && rests_on(s)
        })
    };
    let is_doubt = matches!(finding.judgement.reason, Reason::CouldNotTell | Reason::Refused);
    let exactly = |s: &Sentence| exactly(s) || (is_doubt && s.is_open && rests_on(s));
    let is_asked = |s: &Sentence| finding.asks.contains(&s.question);
    let at = sentences
        .iter()
        .rposition(exactly)
        .or_else(|| sentences.iter().rposition(rests_on))
        .or_else(|| sentences.iter().rposition(is_asked))?;
    sentences.get_mut(at)
}

/// What one answer says of the sample.
pub fn sentence(answered: &Answered, kind: Kind) -> String {
    let words = question::of(answered.question);
    let named = which::which(answered.target, kind);
    let fill = |text: &str, value: &str| text.replace("{which}", &named).replace("{value}", value);
    let says = |code| fill(words.answer(code).map_or("", |answer| answer.says), "");
    match &answered.answer {
        Answer::One(code) => says(code),
        Answer::Any(codes) if codes.is_empty() => fill(words.says, ""),
        Answer::Any(codes) => codes.iter().map(|code| says(code)).collect::<Vec<_>>().join(" "),
        Answer::Reading(reading) => fill(words.says, &number::reading(reading)),
        Answer::Printed(print) => fill(words.says, &format!("“{print}”")),
        Answer::Count(n) => fill(words.says, &n.to_string()),
        Answer::Nothing => says("nothing"),
        Answer::CannotTell => format!("It could not be told {}.", fill(words.topic, "")),
        Answer::Refused => format!("Nobody was allowed to find out {}.", fill(words.topic, "")),
        Answer::NoTool => format!("No tool was at hand to find out {}.", fill(words.topic, "")),
        Answer::Later => String::new(),
    }
}

/// What was seen, for a finding whose reason does not say it: of several answers at once, only the one that it rests on.
pub fn seen(finding: &Finding, home: Option<&Sentence>, kind: Kind) -> String {
    let whole = || home.map_or_else(String::new, |sentence| sentence.text.clone());
    match &finding.judgement.reason {
        Reason::Answered { question, target, answer } => {
            let named = which::which(*target, kind);
            let answer = question::by_id(question).and_then(|words| words.answer(answer));
            answer.map_or_else(whole, |answer| answer.says.replace("{which}", &named))
        }
        Reason::CouldNotTell | Reason::Refused if home.is_none_or(|home| !home.is_open) => String::new(),
        Reason::CouldNotTell
        | Reason::Refused
        | Reason::Needs(_)
        | Reason::PrintNotUnderstood { .. }
        | Reason::PolesOpenWhenDead
        | Reason::WrongTestVoltage => whole(),
        Reason::NothingWrongAnswered
        | Reason::NotAsked
        | Reason::DoesNotApply
        | Reason::Measured
        | Reason::OnlySomeRead { .. }
        | Reason::LeadsNotTakenOff
        | Reason::ClaimsDisagree { .. }
        | Reason::WattsAboveVoltsTimesAmperes { .. }
        | Reason::ClaimAgainst { .. }
        | Reason::FitsTheClaim
        | Reason::NowhereStated
        | Reason::FlexType { .. }
        | Reason::OutOfRange
        | Reason::CoresMeasured { .. }
        | Reason::CoreOpen { .. }
        | Reason::HeatBalance { .. }
        | Reason::Metals { .. }
        | Reason::CrossChecked(_)
        | Reason::CrossCheckFailed
        | Reason::FlexShort { .. }
        | Reason::NotAmong { .. }
        | Reason::FuseAgainst { .. }
        | Reason::Reads { .. }
        | Reason::ClearsOnlyWithCores => String::new(),
    }
}

/// Codes of checks nobody made, by place, in the order of the walk.
pub fn not_looked_at(assessment: &Assessment) -> Vec<(Place, Vec<&Finding>)> {
    Place::ALL
        .into_iter()
        .map(|place| {
            let open = |f: &&Finding| f.place == place && f.outcome() == Conformity::NotExamined;
            (place, assessment.findings.iter().filter(open).collect::<Vec<_>>())
        })
        .filter(|(_, findings)| !findings.is_empty())
        .collect()
}
