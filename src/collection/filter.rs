//! Which samples are meant: by words that stand anywhere in them, by verdict, kind, market, seller, and by what is wrong with them.

use std::collections::BTreeMap;

use super::{Seen, seller};
use crate::domain::check;
use crate::domain::custody::Custody;
use crate::domain::finding::{Conformity, Finding};
use crate::domain::sample::{Kind, Market};
use crate::domain::verdict::Verdict;
use crate::words::{self, custody, mark, statement};

/// What a sample must be to be meant; what is left open, any sample is.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Filter {
    /// Words that must all occur somewhere in it, large or small letters alike.
    pub words: String,
    /// Its verdict.
    pub verdict: Option<Verdict>,
    /// The kind of product.
    pub kind: Option<Kind>,
    /// Where it is sold.
    pub market: Option<Market>,
    /// Whom it is from, letter by letter as [`seller`] has it.
    pub seller: Option<String>,
    /// The code of what is wrong with it.
    pub breaks: Option<String>,
}

impl Filter {
    /// Whether a sample is meant.
    pub fn keeps(&self, seen: Seen) -> bool {
        self.keeps_all_but_words(seen) && (self.words.trim().is_empty() || self.has_words(&text(seen)))
    }

    /// The same without its words, for whoever keeps each sample's [`text`] at hand.
    pub fn keeps_all_but_words(&self, seen: Seen) -> bool {
        let sample = &seen.record.examination.sample;
        self.verdict.is_none_or(|verdict| verdict == seen.assessment.verdict)
            && self.kind.is_none_or(|kind| kind == sample.kind)
            && self.market.is_none_or(|market| market == sample.market)
            && self.seller.as_deref().is_none_or(|wanted| wanted == seller(seen.record))
            && self.breaks.as_deref().is_none_or(|code| broken(seen).any(|finding| finding.code == code))
    }

    /// Whether every word occurs in the [`text`] of a sample.
    pub fn has_words(&self, text: &str) -> bool {
        self.words.to_lowercase().split_whitespace().all(|word| text.contains(word))
    }
}

/// All text of a sample in small letters: name, number, id, origin, who held it, kind and market, every sentence of its statement with what is
/// printed on it, and what is wrong or could not be told.
///
/// What nobody looked at is left out: it would find every sample by every fault.
pub fn text(seen: Seen) -> String {
    let record = seen.record;
    let sample = &record.examination.sample;
    let heads = [
        mark::title(record),
        record.id.clone(),
        record.origin.clone(),
        words::verdict::kind(sample.kind).to_owned(),
        words::verdict::market(sample.market).to_owned(),
        words::verdict::headline(seen.assessment),
    ];
    let statement = record.examination.answers.iter().map(|answered| statement::sentence(answered, sample.kind));
    let is_told =
        |finding: &&Finding| matches!(finding.outcome(), Conformity::Nonconforming | Conformity::Inconclusive);
    let findings = seen.assessment.findings.iter().filter(is_told);
    let findings = findings.map(|finding| format!("{} {}", words::check::of(finding.code).wrong, finding.code));
    let Custody { acquisition, entries } = &record.custody;
    let custody = custody::acquisition(acquisition).into_iter();
    let custody = custody.chain((1..).zip(entries).map(|(place, entry)| custody::entry(place, entry)));
    let scenarios = record.scenarios.iter().map(|scenario| scenario.title.clone());
    heads
        .into_iter()
        .chain(custody)
        .chain(scenarios)
        .chain(statement)
        .chain(findings)
        .collect::<Vec<_>>()
        .join("\n")
        .to_lowercase()
}

/// What is wrong with a sample.
pub(super) fn broken(seen: Seen<'_>) -> impl Iterator<Item = &Finding> {
    seen.assessment.findings.iter().filter(|finding| finding.outcome() == Conformity::Nonconforming)
}

/// Every seller that is named, with the number of samples from there, in the order of the alphabet.
pub fn sellers<'a>(all: &[Seen<'a>]) -> Vec<(&'a str, usize)> {
    let mut sellers = BTreeMap::new();
    for seen in all {
        *sellers.entry(seller(seen.record)).or_insert(0) += 1;
    }
    sellers.into_iter().filter(|(seller, _)| !seller.is_empty()).collect()
}

/// Every code of something that is wrong with a sample, with the number of samples, in the order of the walk.
pub fn breaks(all: &[Seen]) -> Vec<(&'static str, usize)> {
    let count = |code| all.iter().filter(|seen| broken(**seen).any(|finding| finding.code == code)).count();
    check::all().map(|check| (check.code, count(check.code))).filter(|(_, count)| *count > 0).collect()
}
