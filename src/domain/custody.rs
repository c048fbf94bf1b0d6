//! Where a sample came from, and through whose hands it went: what somebody wrote down, and nothing that judges it.
//!
//! Nothing here decides a verdict. Every text may be empty where nobody said; moments are RFC 3339 with zone.

/// How somebody came by a sample.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Acquisition {
    /// The place: a shop, a market, a website, an address.
    pub place: String,
    /// When it was bought or handed over; empty where nobody said.
    pub when: String,
    /// Who sold it or gave it.
    pub seller: String,
    /// What was paid, with its currency, as it was written.
    pub price: String,
    /// The number of the order or receipt.
    pub order: String,
    /// The address of the listing.
    pub listing: String,
    /// What the parcel and its seals looked like when it came.
    pub parcel: String,
}

impl Acquisition {
    /// Whether nobody said anything.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// One time at which a sample changed hands, or something was done with it.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Handling {
    /// When.
    pub when: String,
    /// Who held it or handed it on.
    pub who: String,
    /// What was done.
    pub done: String,
    /// The number of the seal or bag it was in afterwards; empty where there was none.
    pub seal: String,
}

/// A handling as it stands in the record.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Entry {
    /// What was written down.
    pub handling: Handling,
    /// Its place in the chain. An entry that somebody wrote by hand has none.
    pub link: Option<Link>,
}

/// What ties an entry to those before it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Link {
    /// The number of the entry, from 1.
    pub number: u32,
    /// A digest of the entry and of the link before it: 64 lower-case hexadecimal digits.
    pub sha256: String,
}

/// Where a sample came from, and who held it since.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Custody {
    /// How somebody came by it.
    pub acquisition: Acquisition,
    /// Who held it since, in the order in which it stands in the record.
    pub entries: Vec<Entry>,
}
