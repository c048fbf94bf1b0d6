//! The chain of custody entries: each carries a digest of itself and of the link before it, so that a change between two of them shows.
//!
//! It cannot see that entries at its end were taken away, nor that somebody made all of it anew: both need no secret. The seal of a file
//! covers what was there when it was sealed.

use serde::Serialize;

use super::fault::RecordFault;
use super::{MOST_HANDLINGS, Record, custody, digest};
use crate::domain::custody::{Entry, Handling, Link};

/// What a walk along the chain found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Chain {
    /// There are no entries.
    Empty,
    /// No entry has a link, as where somebody wrote them by hand: nothing can be told.
    NotChained,
    /// Each entry follows from the one before it; so many are there.
    Unbroken(usize),
    /// What is wrong, in the order of the numbers.
    Broken(Vec<Break>),
}

/// One thing that is wrong with a chain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Break {
    /// An entry has neither a number nor a link, among others that have.
    Unlinked {
        /// Where it stands in the list, from 1.
        place: usize,
    },
    /// An entry stands behind one with a greater number.
    Misplaced {
        /// Its number.
        number: u32,
        /// The number before it.
        after: u32,
    },
    /// Entries are not there; whether the one behind them is as it was written cannot be told either.
    Missing {
        /// The first of them.
        first: u32,
        /// The last of them.
        last: u32,
    },
    /// A number stands twice.
    Twice {
        /// The number.
        number: u32,
    },
    /// The link does not follow from the one before it and the entry.
    Altered {
        /// The number of the entry.
        number: u32,
    },
}

/// Adds an entry at the end and links it. Where no entry before it has a link, all are linked now: from then on a change of them shows.
///
/// # Errors
///
/// What [`read`](super::read) would not take back: too many entries, too long a text, a moment that is none.
pub fn append(record: &mut Record, handling: Handling) -> Result<(), RecordFault> {
    let entries = &mut record.custody.entries;
    let number = entries.len() + 1;
    if number > MOST_HANDLINGS {
        return Err(RecordFault::TooManyHandlings);
    }
    let handling = custody::handling(handling).map_err(|fault| RecordFault::Handling { number, fault })?;
    let last = entries.iter().filter_map(|entry| entry.link.clone()).max_by_key(|link| link.number);
    let linked = if last.is_some() { entries.len() } else { 0 };
    let mut last = last.unwrap_or_else(|| start(&record.begun));
    entries.push(Entry { handling, link: None });
    for entry in entries.iter_mut().skip(linked) {
        let number = last.number.saturating_add(1);
        last = Link { number, sha256: link(&last.sha256, number, &entry.handling) };
        entry.link = Some(last.clone());
    }
    Ok(())
}

/// Walks along the chain of a record and names what is wrong.
pub fn chain(record: &Record) -> Chain {
    let entries = &record.custody.entries;
    let linked = entries.iter().filter_map(|entry| Some((&entry.handling, entry.link.as_ref()?)));
    let mut linked: Vec<(&Handling, &Link)> = linked.collect();
    if linked.is_empty() {
        return if entries.is_empty() { Chain::Empty } else { Chain::NotChained };
    }
    let unlinked = (1..).zip(entries).filter(|(_, entry)| entry.link.is_none());
    let mut breaks: Vec<Break> = unlinked.map(|(place, _)| Break::Unlinked { place }).collect();
    let behind =
        linked.iter().zip(linked.iter().skip(1)).filter(|((_, before), (_, link))| link.number < before.number);
    breaks
        .extend(behind.map(|((_, before), (_, link))| Break::Misplaced { number: link.number, after: before.number }));
    linked.sort_by_key(|(_, link)| link.number);
    walk(&record.begun, &linked, &mut breaks);
    if breaks.is_empty() { Chain::Unbroken(entries.len()) } else { Chain::Broken(breaks) }
}

/// Along entries in the order of their numbers.
fn walk(begun: &str, linked: &[(&Handling, &Link)], breaks: &mut Vec<Break>) {
    let start = start(begun);
    let mut number = 0;
    // Where a number stands twice, one of the two was put in, and what comes next may follow from either.
    let mut ends = vec![&start];
    for (handling, link) in linked.iter().copied() {
        let follows = |end: &&Link| self::link(&end.sha256, link.number, handling) == link.sha256;
        if link.number == number {
            breaks.push(Break::Twice { number });
            ends.push(link);
            continue;
        }
        let next = number.saturating_add(1);
        if link.number > next {
            breaks.push(Break::Missing { first: next, last: link.number.saturating_sub(1) });
        } else if !ends.iter().any(follows) {
            breaks.push(Break::Altered { number: link.number });
        }
        number = link.number;
        ends = vec![link];
    }
}

/// What the first entry is linked to: when the examination was begun. Its name would not do: a copy that is kept beside it has another.
fn start(begun: &str) -> Link {
    Link { number: 0, sha256: begun.to_owned() }
}

/// An entry as it is hashed: every field, in this order.
#[derive(Serialize)]
struct Hashed<'a> {
    number: u32,
    when: &'a str,
    who: &'a str,
    done: &'a str,
    seal: &'a str,
}

#[expect(clippy::expect_used, reason = "a number and texts are JSON")]
fn link(before: &str, number: u32, handling: &Handling) -> String {
    let Handling { when, who, done, seal } = handling;
    let entry = serde_json::to_string(&Hashed { number, when, who, done, seal }).expect("a number and texts are JSON");
    digest::sha256(format!("plugwary-custody 1\n{before}\n{entry}").as_bytes())
}
