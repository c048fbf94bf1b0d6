//! What is asked: one thing to see, read, measure or try, and the answers it may get.
//!
//! A question settles nothing. [Checks](super::check) read its answers; one answer may feed several checks, so that a buyer at a stall
//! taps once for what one look can tell.

use super::examination::Answer;
use super::facts;
use super::instrument::Instrument;
use super::quantity::{QuantityKind, Unit};
use super::sample::{Equipment, Place};
use super::view::View;

/// One thing that is asked.
#[derive(Debug)]
pub struct Question {
    /// Kebab-case, unique, for ever.
    pub id: &'static str,
    /// What it is looked up by.
    pub key: Key,
    /// Where one looks.
    pub place: Place,
    /// The least equipment it needs.
    pub needs: Equipment,
    /// What an answer looks like.
    pub ask: Ask,
    /// Whether it is asked once or for each socket or core.
    pub per: Per,
    /// When in the walk it comes.
    pub stage: Stage,
    /// Whether it is asked at all, given what is known.
    pub when: fn(&View) -> bool,
    /// What another answer says of it; who has said that is not asked.
    pub implied: fn(&View) -> Option<&'static Answer>,
}

impl PartialEq for Question {
    fn eq(&self, other: &Self) -> bool {
        self.id == other.id
    }
}

/// An id as a number, reckoned when the program is compiled (FNV-1a, 64 bits): answers are looked up by the hundred at each tap, and two
/// numbers are compared in one step. No two questions share one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Key(u64);

impl Key {
    /// The key of an id.
    pub const fn of(id: &str) -> Self {
        let mut key = 0xcbf2_9ce4_8422_2325;
        let mut rest = id.as_bytes();
        while let [first, others @ ..] = rest {
            #[expect(clippy::as_conversions, reason = "nothing else widens a byte when the program is compiled")]
            let byte = *first as u64;
            key = (key ^ byte).wrapping_mul(0x0100_0000_01b3);
            rest = others;
        }
        Self(key)
    }
}

/// What an answer looks like.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Ask {
    /// Exactly one of these, by code.
    One(&'static [&'static str]),
    /// Any of these, or none of them, by code.
    Any(&'static [&'static str]),
    /// A number with a unit and an instrument.
    Measure {
        /// The quantity.
        kind: QuantityKind,
        /// Units that may be tapped; the first is the default.
        units: &'static [Unit],
        /// Instruments that may be named, the least exact last. None is a default: whoever says nothing has used the last.
        instruments: &'static [Instrument],
    },
    /// Words as they are printed.
    Printed(Printed),
    /// A whole number between two bounds, both included.
    Count(u8, u8),
}

/// What sort of print is copied out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Printed {
    /// Ratings, such as `13A 250V~`.
    Rating,
    /// The print along a flex, such as `H05VV-F 3G1.5`.
    Flex,
    /// A number under bars.
    Barcode,
    /// Anything else.
    Words,
}

/// When in the walk a question comes: nothing is cut while the sample must still be whole for something else, and what decides goes first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stage {
    /// While the sample is whole, opened or not.
    Whole,
    /// Once its flex may be cut.
    Cut,
    /// At the end: it informs bad signs only, which decide nothing.
    Lesser,
}

/// How often a question is asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Per {
    /// Once.
    Sample,
    /// For each socket.
    Socket,
    /// For each core of the flex.
    Core,
    /// For each place that can state a rating.
    Claim,
}

/// Which one of several an answer speaks of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Target {
    /// The sample.
    Sample,
    /// A socket, counted from the flex end, starting at 1.
    Socket(u8),
    /// A core.
    Core(Core),
    /// A place that can state a rating.
    Claim(ClaimPlace),
}

/// A core by its job; where the job is not known yet, `Earth` is the green-and-yellow one by sight.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Core {
    /// Line: brown.
    Line,
    /// Neutral: blue.
    Neutral,
    /// Earth: green-and-yellow.
    Earth,
}

impl Core {
    /// Every core of an earthed flex.
    pub const ALL: [Self; 3] = [Self::Line, Self::Neutral, Self::Earth];

    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Line => "line",
            Self::Neutral => "neutral",
            Self::Earth => "earth",
        }
    }
}

/// A place that can state a rating or a size.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum ClaimPlace {
    /// The seller's page or sign.
    Listing,
    /// Box, bag or card.
    Package,
    /// The body with the sockets; on a cord set, the connector.
    Body,
    /// The plug.
    Plug,
    /// The print on the flex.
    Flex,
}

impl ClaimPlace {
    /// Every place, weakest evidence first.
    pub const ALL: [Self; 5] = [Self::Listing, Self::Package, Self::Body, Self::Plug, Self::Flex];

    /// The places whose rating is copied out, in the order of the walk. A buyer at a stall types two; the flex has a question of its own
    /// for its print.
    pub const fn asked(equipment: Equipment) -> &'static [Self] {
        match equipment {
            Equipment::Eyes => &[Self::Body, Self::Package],
            Equipment::HandTools | Equipment::Meters => &[Self::Body, Self::Plug, Self::Package, Self::Listing],
        }
    }

    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Listing => "listing",
            Self::Package => "package",
            Self::Body => "body",
            Self::Plug => "plug",
            Self::Flex => "flex",
        }
    }
}

impl Question {
    /// A question asked once, always, with exactly one answer.
    pub const fn one(id: &'static str, place: Place, needs: Equipment, answers: &'static [&'static str]) -> Self {
        Self::asking(id, place, needs, Ask::One(answers))
    }

    /// A question asked once, always, that any number of answers fit.
    pub const fn any(id: &'static str, place: Place, needs: Equipment, answers: &'static [&'static str]) -> Self {
        Self::asking(id, place, needs, Ask::Any(answers))
    }

    /// A question asked once, always.
    pub const fn asking(id: &'static str, place: Place, needs: Equipment, ask: Ask) -> Self {
        Self {
            id,
            key: Key::of(id),
            place,
            needs,
            ask,
            per: Per::Sample,
            stage: Stage::Whole,
            when: always,
            implied: nothing,
        }
    }

    /// The same question for each of several.
    #[must_use]
    pub const fn per(mut self, per: Per) -> Self {
        self.per = per;
        self
    }

    /// The same question, asked only when `when` holds.
    #[must_use]
    pub const fn when(mut self, when: fn(&View) -> bool) -> Self {
        self.when = when;
        self
    }

    /// The same question, which another answer may settle.
    #[must_use]
    pub const fn implied(mut self, implied: fn(&View) -> Option<&'static Answer>) -> Self {
        self.implied = implied;
        self
    }

    /// The same question, asked once the flex may be cut.
    #[must_use]
    pub const fn after_cutting(mut self) -> Self {
        self.stage = Stage::Cut;
        self.when(facts::may_be_cut)
    }

    /// The same question, asked at the end.
    #[must_use]
    pub const fn lesser(mut self) -> Self {
        self.stage = Stage::Lesser;
        self
    }

    /// What the question is asked of in this examination.
    pub fn targets(&self, view: &View) -> Vec<Target> {
        match self.per {
            Per::Sample => vec![Target::Sample],
            Per::Socket => (1..=view.sockets()).map(Target::Socket).collect(),
            Per::Core => view.cores().iter().copied().map(Target::Core).collect(),
            Per::Claim => ClaimPlace::asked(view.equipment()).iter().copied().map(Target::Claim).collect(),
        }
    }

    /// The codes an answer may use; empty where it is no choice.
    pub const fn answers(&self) -> &'static [&'static str] {
        match self.ask {
            Ask::One(answers) | Ask::Any(answers) => answers,
            Ask::Measure { .. } | Ask::Printed(_) | Ask::Count(..) => &[],
        }
    }
}

const fn always(_: &View) -> bool {
    true
}

const fn nothing(_: &View) -> Option<&'static Answer> {
    None
}
