//! Letters to the seller, the marketplace and the authority: plain text, made from the record and claiming no more than its findings.
//!
//! Only what breaks a rule and decides is complained of; what could not be told becomes a question; where neither is there, there is no
//! letter. What the app does not know stands in square brackets, to be filled in. Whatever the examiner or a product brought in stands on
//! one line, with its hidden characters shown (see [`plain`]).

mod authority;
mod body;
mod evidence;
mod marketplace;
pub mod plain;
mod seller;
mod traces;

pub use authority::authority;
pub use marketplace::marketplace;
pub use seller::seller;
pub use traces::traces;

use crate::domain::assess::{Assessment, RuleBook, assess};
use crate::domain::finding::{Bearing, Conformity, Finding, Severity};
use crate::domain::verdict::Verdict;
use crate::record::Record;

use super::statement::{Sentence, sentences};
use super::{mark, report, verdict};

/// A letter in plain text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Letter {
    /// What it is for.
    pub purpose: Purpose,
    /// Its subject on one line; empty where there is no letter.
    pub subject: String,
    /// Its text; where there is no letter, why there is none.
    pub body: String,
}

impl Letter {
    /// Subject and text, as it is saved or handed on.
    pub fn whole(&self) -> String {
        if self.subject.is_empty() { self.body.clone() } else { format!("Subject: {}\n\n{}", self.subject, self.body) }
    }
}

/// What a letter is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Purpose {
    /// To complain of what was found wrong.
    Complaint,
    /// To ask about what could not be told.
    Question,
    /// There is nothing to write about.
    Nothing,
}

/// What a letter is about, the gravest of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Matter {
    /// Something is dangerous.
    Danger,
    /// Something is against the rules, and nothing dangerous was found.
    Breach,
    /// Something grave could not be told, and nothing wrong was found.
    Doubt,
}

/// What a letter is made from.
struct Case<'a> {
    record: &'a Record,
    assessment: &'a Assessment,
    said: Vec<Sentence<'a>>,
}

impl<'a> Case<'a> {
    fn of(record: &'a Record, assessment: &'a Assessment) -> Self {
        Self { record, assessment, said: sentences(&record.examination, assessment) }
    }

    fn name(&self) -> String {
        plain::line(&mark::title(self.record))
    }

    /// What breaks a rule and decides: the only findings that are complained of.
    fn breaks(&self) -> impl Iterator<Item = &'a Finding> {
        let is_break = |f: &&Finding| f.breaks(Severity::Danger) || f.breaks(Severity::Breach);
        self.assessment.findings.iter().filter(is_break)
    }

    /// What is grave, would decide, and could not be told.
    fn doubts(&self) -> impl Iterator<Item = &'a Finding> {
        let is_doubt = |f: &&Finding| {
            f.outcome() == Conformity::Inconclusive
                && f.judgement.severity > Severity::BadSign
                && f.judgement.bearing == Bearing::Decides
        };
        self.assessment.findings.iter().filter(is_doubt)
    }

    fn matter(&self) -> Option<Matter> {
        match self.assessment.verdict {
            Verdict::KeepAway => Some(Matter::Danger),
            Verdict::DoNotAccept => Some(Matter::Breach),
            Verdict::NotDecided => self.doubts().next().map(|_| Matter::Doubt),
            Verdict::NothingWrongSeen => None,
        }
    }

    /// In the place of a letter.
    fn nothing(&self) -> Letter {
        let examination = &self.record.examination;
        let why = match self.assessment.verdict {
            Verdict::NotDecided => {
                "Nothing wrong was seen so far, and not everything that must be looked at was: look on first."
            }
            Verdict::KeepAway | Verdict::DoNotAccept | Verdict::NothingWrongSeen => {
                "That speaks of this one sample and certifies nothing."
            }
        };
        let coverage = report::coverage(self.assessment, &examination.sample, examination.equipment);
        let headline = verdict::headline(self.assessment);
        let body = format!("There is nothing to complain about on these looks. {headline}. {why} {coverage}");
        Letter { purpose: Purpose::Nothing, subject: String::new(), body }
    }
}

impl Matter {
    const fn purpose(self) -> Purpose {
        match self {
            Self::Danger | Self::Breach => Purpose::Complaint,
            Self::Doubt => Purpose::Question,
        }
    }

    fn subject(self, name: &str) -> String {
        match self {
            Self::Danger => format!("Dangerous product: {name}"),
            Self::Breach => format!("Product that breaks the rules: {name}"),
            Self::Doubt => format!("Questions about a product: {name}"),
        }
    }

    /// What was found, in a sentence.
    const fn in_a_sentence(self) -> &'static str {
        match self {
            Self::Danger => "What I found on it can hurt or kill somebody, or set fire.",
            Self::Breach => "What I found on it is against the rules. I found nothing that I call dangerous.",
            Self::Doubt => {
                "I found nothing wrong with it, and some grave things could not be told. This is no complaint: I ask for information."
            }
        }
    }
}

/// Makes a letter of a record, or says why there is none.
fn letter(record: &Record, body: impl FnOnce(&Case, Matter) -> String) -> Letter {
    let assessment = assess(&record.examination, &RuleBook::CURRENT);
    let case = Case::of(record, &assessment);
    let Some(matter) = case.matter() else { return case.nothing() };
    Letter { purpose: matter.purpose(), subject: matter.subject(&case.name()), body: body(&case, matter) }
}
