//! Where a sample came from, to and from its saved form.

use super::convert::{MOMENT, bounded, is_moment, moment, said};
use super::entry_fault::EntryFault;
use super::fault::{RecordFault, Said};
use super::{MOST_HANDLINGS, digest, entry, v1};
use crate::domain::custody::{Acquisition, Custody, Entry, Handling, Link};

/// The saved form of an acquisition of which somebody said something.
pub fn acquired(acquisition: &Acquisition) -> v1::Acquired {
    (!acquisition.is_empty()).then(|| v1::HowAcquired {
        place: acquisition.place.clone(),
        when: said(&acquisition.when),
        seller: acquisition.seller.clone(),
        price: acquisition.price.clone(),
        order: acquisition.order.clone(),
        listing: acquisition.listing.clone(),
        parcel: acquisition.parcel.clone(),
    })
}

/// The saved form of an entry.
pub fn to_v1(entry: &Entry) -> v1::Handling {
    let Handling { when, who, done, seal } = entry.handling.clone();
    v1::Handling {
        number: entry.link.as_ref().map(|link| link.number),
        when: said(&when),
        who,
        done,
        seal,
        link: entry.link.as_ref().map(|link| link.sha256.clone()),
    }
}

/// What the saved form stands for.
pub fn from_v1(acquired: v1::Acquired, entries: Vec<v1::Handling>) -> Result<Custody, RecordFault> {
    if entries.len() > MOST_HANDLINGS {
        return Err(RecordFault::TooManyHandlings);
    }
    let entries = (1..).zip(entries);
    let entries =
        entries.map(|(number, form)| self::entry(form).map_err(|fault| RecordFault::Handling { number, fault }));
    Ok(Custody {
        acquisition: acquired.map(acquisition).transpose()?.unwrap_or_default(),
        entries: entries.collect::<Result<_, _>>()?,
    })
}

fn acquisition(form: v1::HowAcquired) -> Result<Acquisition, RecordFault> {
    Ok(Acquisition {
        place: bounded("place", form.place)?,
        when: moment("when", form.when)?,
        seller: bounded("seller", form.seller)?,
        price: bounded("price", form.price)?,
        order: bounded("order", form.order)?,
        listing: bounded("listing", form.listing)?,
        parcel: bounded("parcel", form.parcel)?,
    })
}

fn entry(form: v1::Handling) -> Result<Entry, EntryFault> {
    let v1::Handling { number, when, who, done, seal, link } = form;
    let handling = handling(Handling { when: when.unwrap_or_default(), who, done, seal })?;
    Ok(Entry { handling, link: self::link(number, link)? })
}

/// What could be saved and read back.
pub fn handling(handling: Handling) -> Result<Handling, EntryFault> {
    let Handling { when, who, done, seal } = handling;
    if !when.is_empty() && !is_moment(&when) {
        return Err(EntryFault::Field { field: "when", takes: MOMENT, got: Said::from(when.as_str()) });
    }
    Ok(Handling {
        when,
        who: entry::bounded("who", who)?,
        done: entry::bounded("done", done)?,
        seal: entry::bounded("seal", seal)?,
    })
}

/// A number and a link stand together or not at all.
fn link(number: Option<u32>, sha256: Option<String>) -> Result<Option<Link>, EntryFault> {
    let fault = |field, takes, got| Err(EntryFault::Field { field, takes, got });
    match (number, sha256) {
        (None, None) => Ok(None),
        (Some(0), _) => fault("number", "a whole number from 1", Said::from("0")),
        (Some(_), None) => fault("link", "there where there is a “number”", Said::NOTHING),
        (None, Some(_)) => fault("number", "there where there is a “link”", Said::NOTHING),
        (Some(number), Some(sha256)) if digest::is_hexadecimal(&sha256, 64) => Ok(Some(Link { number, sha256 })),
        (Some(_), Some(sha256)) => fault("link", "64 lower-case hexadecimal digits", Said::from(sha256.as_str())),
    }
}
