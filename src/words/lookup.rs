//! What to type into a search once there is a network: the words are ready before there is one.

use crate::domain::check::what_it_says::lookup::{APPROVAL_NUMBER, MAKER_AND_TYPE};
use crate::domain::check::what_it_says::presentation::BARCODE;
use crate::domain::examination::{Answer, Examination};
use crate::domain::question::{Question, Target};
use crate::domain::sample::Kind;

/// What lists of recalls are searched for: maker and type as printed, else what the examiner calls the sample; and its barcode.
pub fn recall(examination: &Examination) -> String {
    let title = Some(examination.sample.title.as_str()).filter(|title| !title.is_empty());
    let name = printed(examination, MAKER_AND_TYPE).or(title).unwrap_or(match examination.sample.kind {
        Kind::ExtensionLead => "extension lead",
        Kind::CordSet => "mains lead",
    });
    match printed(examination, BARCODE) {
        Some(barcode) => format!("{name} {barcode} recall"),
        None => format!("{name} recall"),
    }
}

/// What a register of approvals is searched for; `None` where no number was copied.
pub fn approval(examination: &Examination) -> Option<&str> {
    printed(examination, APPROVAL_NUMBER)
}

fn printed<'a>(examination: &'a Examination, question: &Question) -> Option<&'a str> {
    match examination.answer(question, Target::Sample) {
        Some(Answer::Printed(printed)) => Some(printed.trim()).filter(|printed| !printed.is_empty()),
        _ => None,
    }
}
