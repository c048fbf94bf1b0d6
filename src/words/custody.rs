//! The words about where a sample came from and who held it since.

use super::letters::plain::line;
use super::moment::moment;
use crate::domain::custody::{Acquisition, Entry};
use crate::record::{Break, Chain};

/// Heading.
pub const HEADING: &str = "Where it came from";
/// Heading over the entries.
pub const WHO_HELD_IT: &str = "Who held it, and what was done";
/// What a photo of the origin shows.
pub const PHOTO_SHOWS: &str = "The listing, or the parcel before it was opened.";
/// Over the photos of the origin.
pub const PHOTOS: &str = "The listing and the unopened parcel";
/// What an unbroken chain does not show.
pub const CHAIN_CANNOT_SEE: &str = "The chain cannot show that entries at its end were left out, nor that somebody wrote all of it anew: that takes no secret. The seal of a file covers the entries that were there when it was sealed.";

/// What somebody said of how they came by it, a line each.
pub fn acquisition(acquisition: &Acquisition) -> Vec<String> {
    let Acquisition { place, when, seller, price, order, listing, parcel } = acquisition;
    let when = if when.is_empty() { String::new() } else { moment(when) };
    let lines = [
        ("Place", place),
        ("When", &when),
        ("Seller", seller),
        ("Price", price),
        ("Order or receipt number", order),
        ("Address of the listing", listing),
        ("The parcel when it came", parcel),
    ];
    lines
        .into_iter()
        .filter(|(_, said)| !said.is_empty())
        .map(|(name, said)| format!("{name}: {}", line(said)))
        .collect()
}

/// One entry as a line; `place` is where it stands in the list, from 1.
pub fn entry(place: usize, entry: &Entry) -> String {
    let handling = &entry.handling;
    let number = entry.link.as_ref().map_or_else(|| place.to_string(), |link| link.number.to_string());
    let when = if handling.when.is_empty() { "no time given".to_owned() } else { moment(&handling.when) };
    let who = if handling.who.is_empty() { "nobody named".to_owned() } else { line(&handling.who) };
    let seal = if handling.seal.is_empty() {
        String::new()
    } else {
        format!(" [seal or bag number: {}]", line(&handling.seal))
    };
    let done = if handling.done.is_empty() { String::new() } else { format!(": {}", line(&handling.done)) };
    format!("Entry {number}, {when}, {who}{done}{seal}")
}

/// What a walk along the chain found, a sentence each; none where there are no entries.
pub fn chain(chain: &Chain) -> Vec<String> {
    match chain {
        Chain::Empty => Vec::new(),
        Chain::NotChained => vec![
            "These entries are not chained: somebody wrote them by hand, or their links were taken away. Nothing here would show that one was changed."
                .to_owned(),
        ],
        Chain::Unbroken(1) => vec!["The chain is unbroken: its one entry follows from this examination.".to_owned()],
        Chain::Unbroken(entries) => {
            vec![format!("The chain is unbroken: each of the {entries} entries follows from the one before it.")]
        }
        Chain::Broken(breaks) => {
            let broken = "The chain is broken: the entries are not as they were written.".to_owned();
            std::iter::once(broken).chain(breaks.iter().copied().map(self::broken)).collect()
        }
    }
}

/// One thing that is wrong.
pub fn broken(broken: Break) -> String {
    match broken {
        Break::Unlinked { place } => format!(
            "The entry at place {place} of the list has no number and no link: it was put in by hand, or they were taken away."
        ),
        Break::Misplaced { number, after } => {
            format!("Entry {number} stands behind entry {after}: entries have changed places.")
        }
        Break::Missing { first, last } if first == last => format!(
            "Entry {first} is missing. So it cannot be told whether entry {} is as it was written.",
            last.saturating_add(1)
        ),
        Break::Missing { first, last } => format!(
            "Entries {first} to {last} are missing. So it cannot be told whether entry {} is as it was written.",
            last.saturating_add(1)
        ),
        Break::Twice { number } => format!("Two entries have the number {number}: one of them was put in."),
        Break::Altered { number: 1 } => {
            "Entry 1 does not follow from this examination: it was altered or put in, or it belongs to another examination."
                .to_owned()
        }
        Break::Altered { number } => format!(
            "Entry {number} does not follow from entry {}: entry {number} was altered or put in, or the one before it was exchanged.",
            number.saturating_sub(1)
        ),
    }
}
