//! Short marks of a sample: its name, its subject line, its file's name, the bar of its verdict.

use crate::domain::examination::Examination;
use crate::domain::sample::{Equipment, Kind, Market, Sample};
use crate::domain::verdict::Verdict;
use crate::record::{Custody, Record, Scenarios};

use super::statement::{Bar, sentence};
use super::{moment, reason, verdict};

/// So much of a sample's origin stands in the name of one that nobody named.
const MOST_OF_ORIGIN: usize = 48;

/// What a sample is called in a list.
pub fn title(record: &Record) -> String {
    let sample = &record.examination.sample;
    match (sample.title.as_str(), sample.number.as_str()) {
        ("", "") => plain_title(record),
        ("", number) => number.to_owned(),
        (title, "") => title.to_owned(),
        (title, number) => format!("{title}, {number}"),
    }
}

/// The name of a sample that nobody named: its kind, and what tells it from another of its kind.
fn plain_title(record: &Record) -> String {
    let kind = reason::capital(verdict::kind(record.examination.sample.kind));
    let origin = record.origin.lines().next().unwrap_or_default().trim();
    if !origin.is_empty() {
        let mut kept: String = origin.chars().take(MOST_OF_ORIGIN).collect();
        if kept.len() < origin.len() {
            kept.push('…');
        }
        format!("{kind} ({kept})")
    } else if !record.begun.is_empty() {
        format!("{kind}, {}", moment::moment(&record.begun))
    } else if let Some(id) = record.id.get(..6) {
        format!("{kind}, {id}")
    } else {
        kind
    }
}

/// What a sample is, where it is sold and what it was looked at with.
pub fn subject(record: &Record) -> String {
    let equipment = verdict::equipment(record.examination.equipment).to_lowercase();
    format!("{} Looked at with: {equipment}.", what_it_is(record))
}

/// What a sample is called, what kind of thing it is and where it is sold.
pub fn what_it_is(record: &Record) -> String {
    let sample = &record.examination.sample;
    let market = verdict::market(sample.market);
    if sample.title.is_empty() && sample.number.is_empty() {
        return format!("{}, sold in {market}.", title(record));
    }
    format!("{}: {}, sold in {market}.", title(record), verdict::kind(sample.kind))
}

/// A name for the file: letters, digits and hyphens only, so that every system takes it.
pub fn file_name(record: &Record) -> String {
    let day = record.changed.get(..10).unwrap_or("undated");
    let plain: String =
        title(record).chars().map(|c| if c.is_ascii_alphanumeric() { c.to_ascii_lowercase() } else { '-' }).collect();
    let plain = plain.split('-').filter(|part| !part.is_empty()).take(6).collect::<Vec<_>>().join("-");
    format!("plugwary-{day}-{plain}")
}

/// Whether every wanted word stands somewhere in a sample's name, origin, verdict or statement; `wanted` is lower case.
pub fn has_words(record: &Record, wanted: &str) -> bool {
    if wanted.trim().is_empty() {
        return true;
    }
    let kind = record.examination.sample.kind;
    let statement = record.examination.answers.iter().map(|answered| sentence(answered, kind));
    let all: Vec<String> = [title(record), record.origin.clone()].into_iter().chain(statement).collect();
    let all = all.join(" ").to_lowercase();
    wanted.split_whitespace().all(|word| all.contains(word))
}

/// The bar of a verdict.
pub const fn of_verdict(verdict: Verdict) -> Bar {
    match verdict {
        Verdict::KeepAway => Bar::Solid,
        Verdict::DoNotAccept => Bar::Hatched,
        Verdict::NotDecided => Bar::Dotted,
        Verdict::NothingWrongSeen => Bar::Thin,
    }
}

/// An empty record, shown for the moment in which a sample is being deleted.
pub fn blank() -> Record {
    let sample =
        Sample { number: String::new(), title: String::new(), kind: Kind::ExtensionLead, market: Market::GreatBritain };
    Record {
        id: String::new(),
        begun: String::new(),
        changed: String::new(),
        edition: String::new(),
        origin: String::new(),
        custody: Custody::default(),
        is_example: false,
        is_known_good: false,
        examination: Examination::new(sample, Equipment::Eyes),
        photos: Vec::new(),
        scenarios: Scenarios::default(),
    }
}

/// A point of time as a number that grows with it, for putting samples in order: the digits down to the second, without the zone.
pub fn moment(rfc3339: &str) -> f64 {
    let digits: String = rfc3339.chars().filter(char::is_ascii_digit).take(14).collect();
    digits.parse().unwrap_or_default()
}
