//! Where a number or a rule comes from, and how sure we are of it.

use crate::domain::sample::Market;

/// How a published value reached us. No paywalled standard text was open on the desk.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Provenance {
    /// At least one public secondary copy states the value.
    Read,
    /// The nominal was read, the tolerance is from memory.
    ReadNominal,
    /// Computed from other values here.
    Derived,
    /// From memory, believed right.
    MemoryHigh,
    /// From memory, plausible.
    MemoryMedium,
    /// From memory, weak: never decides.
    MemoryLow,
    /// A fact of the trade with no published source.
    CommonPractice,
}

impl Provenance {
    /// Whether a value of this provenance may decide a verdict.
    pub const fn may_decide(self) -> bool {
        !matches!(self, Self::MemoryLow)
    }
}

/// A place in a publication.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Clause {
    /// Number of the publication, such as `BS 1363-1`.
    pub publication: &'static str,
    /// Its edition, such as `1995+A2`.
    pub edition: &'static str,
    /// Clause, table or figure; empty where the whole publication is meant.
    pub clause: &'static str,
    /// How the value reached us.
    pub provenance: Provenance,
    /// The one market whose law it is; `None` where it holds in all.
    pub market: Option<Market>,
}

impl Clause {
    /// A citation.
    pub const fn new(
        publication: &'static str,
        edition: &'static str,
        clause: &'static str,
        provenance: Provenance,
    ) -> Self {
        Self { publication, edition, clause, provenance, market: None }
    }

    /// The same as law of one market only.
    #[must_use]
    pub const fn only_in(mut self, market: Market) -> Self {
        self.market = Some(market);
        self
    }

    /// Whether goods sold in a market are held against it.
    pub fn holds_in(&self, market: Market) -> bool {
        self.market.is_none_or(|only| only == market)
    }

    /// A fact of the trade that no publication stands behind.
    pub const fn common_practice() -> Self {
        Self::new("", "", "", Provenance::CommonPractice)
    }
}
