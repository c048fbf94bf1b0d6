//! Samples of one product put together, and what is wrong with all of them.

use std::collections::{BTreeMap, BTreeSet};

use super::{Seen, filter};
use crate::domain::check;
use crate::domain::check::what_it_says::print::BARCODE;
use crate::domain::examination::Answer;
use crate::domain::finding::{Conformity, Finding};
use crate::domain::question::Target;
use crate::domain::sample::Kind;
use crate::domain::standard::gtin;
use crate::record::Record;

/// What makes samples one product.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum SameBy {
    /// The number under their barcode; on some of them it may not have been read, where their title leads to this number alone.
    Barcode(String),
    /// Their title, in small letters; no barcode was read on any of them, or several under the same title.
    Title(String),
}

/// Several samples of one product.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Product {
    /// The kind of product; samples of two kinds are never one product.
    pub kind: Kind,
    /// What they have in common.
    pub same_by: SameBy,
    /// Where they stand in the list, at least two.
    pub samples: Vec<usize>,
    /// Codes of what is wrong with every one of them, in the order of the walk.
    pub in_all: Vec<&'static str>,
    /// What is wrong with some of them, or was not looked at in all.
    pub in_some: Vec<Broken>,
}

/// Something that is wrong with some samples.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Broken {
    /// The check's code.
    pub code: &'static str,
    /// In how many it is wrong.
    pub broke: usize,
    /// In how many it was looked at.
    pub looked: usize,
}

/// Every product of which there are two samples or more, in the order of its first one.
///
/// Samples are of one product if they are of one kind and have the same valid number under their barcode. A sample without such a number
/// goes by its title, spaces and large letters not counted: to the one number that samples of this title have, else to the others of this
/// title that have none. A sample with neither stands alone, and so does the example that comes with the app.
pub fn products(all: &[Seen]) -> Vec<Product> {
    let mut numbers: BTreeMap<(Kind, String), BTreeSet<String>> = BTreeMap::new();
    for (title, number) in all.iter().filter_map(|seen| title(seen.record).zip(barcode(seen.record))) {
        numbers.entry(title).or_default().insert(number);
    }
    let mut products: Vec<((Kind, SameBy), Vec<usize>)> = Vec::new();
    for (at, seen) in all.iter().enumerate().filter(|(_, seen)| !seen.record.is_example) {
        let Some(key) = key(seen.record, &numbers) else { continue };
        match products.iter_mut().find(|(known, _)| *known == key) {
            Some((_, samples)) => samples.push(at),
            None => products.push((key, vec![at])),
        }
    }
    products.retain(|(_, samples)| samples.len() > 1);
    products.into_iter().map(|((kind, same_by), samples)| product(all, kind, same_by, samples)).collect()
}

fn key(record: &Record, numbers: &BTreeMap<(Kind, String), BTreeSet<String>>) -> Option<(Kind, SameBy)> {
    let kind = record.examination.sample.kind;
    if let Some(number) = barcode(record) {
        return Some((kind, SameBy::Barcode(number)));
    }
    let title = title(record)?;
    let mut of_title = numbers.get(&title).into_iter().flatten();
    Some(match (of_title.next(), of_title.next()) {
        (Some(only), None) => (kind, SameBy::Barcode(only.clone())),
        _ => (kind, SameBy::Title(title.1)),
    })
}

/// The number under the bars, if its last digit fits: a misread one would put strangers together.
fn barcode(record: &Record) -> Option<String> {
    let Some(Answer::Printed(print)) = record.examination.answer(BARCODE, Target::Sample) else { return None };
    let digits = || print.chars().filter(|c| !c.is_whitespace()).collect();
    (gtin::is_valid(print) == Some(true)).then(digits)
}

fn title(record: &Record) -> Option<(Kind, String)> {
    let sample = &record.examination.sample;
    let title = sample.title.to_lowercase().split_whitespace().collect::<Vec<_>>().join(" ");
    (!title.is_empty()).then_some((sample.kind, title))
}

fn product(all: &[Seen], kind: Kind, same_by: SameBy, samples: Vec<usize>) -> Product {
    let seen: Vec<Seen> = samples.iter().filter_map(|at| all.get(*at)).copied().collect();
    let count = |code: &str, is_it: fn(&Finding) -> bool| {
        let has = |seen: &&Seen| seen.assessment.findings.iter().any(|finding| finding.code == code && is_it(finding));
        seen.iter().filter(has).count()
    };
    let codes: BTreeSet<&str> =
        seen.iter().flat_map(|seen| filter::broken(*seen)).map(|finding| finding.code).collect();
    let broken = check::all().filter(|check| codes.contains(check.code)).map(|check| Broken {
        code: check.code,
        broke: count(check.code, |finding| finding.outcome() == Conformity::Nonconforming),
        looked: count(check.code, |finding| check::was_made(finding.outcome())),
    });
    let (in_all, in_some): (Vec<_>, Vec<_>) = broken.partition(|broken| broken.broke == seen.len());
    Product { kind, same_by, samples, in_all: in_all.into_iter().map(|broken| broken.code).collect(), in_some }
}
