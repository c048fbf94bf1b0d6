//! What is examined, where it is sold, and what is at hand to examine it with.

/// The kind of product.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// A multiway extension lead: plug, flex and a body with sockets.
    ExtensionLead,
    /// A plug with flex (cord set): plug, flex and a connector or free ends.
    CordSet,
}

impl Kind {
    /// Every kind, in the order they are offered.
    pub const ALL: [Self; 2] = [Self::ExtensionLead, Self::CordSet];

    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::ExtensionLead => "extension-lead",
            Self::CordSet => "cord-set",
        }
    }
}

/// Where the sample is sold: selects plug standard and law.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Market {
    /// England, Scotland and Wales.
    GreatBritain,
    /// Northern Ireland, where EU product rules apply.
    NorthernIreland,
}

impl Market {
    /// Every market.
    pub const ALL: [Self; 2] = [Self::GreatBritain, Self::NorthernIreland];

    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::GreatBritain => "great-britain",
            Self::NorthernIreland => "northern-ireland",
        }
    }
}

/// What is at hand; each includes what comes before it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Equipment {
    /// Eyes only.
    Eyes,
    /// Ruler, calliper, scale, magnet, torch, any continuity tester.
    HandTools,
    /// Meters and a screwdriver: the sample may be opened.
    Meters,
}

impl Equipment {
    /// Every set, the smallest first.
    pub const ALL: [Self; 3] = [Self::Eyes, Self::HandTools, Self::Meters];

    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Eyes => "eyes",
            Self::HandTools => "hand-tools",
            Self::Meters => "meters",
        }
    }
}

/// A place where one looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Place {
    /// Package, label and listing.
    WhatItSays,
    /// The plug and its fuse.
    Plug,
    /// The flex and its print.
    Cable,
    /// The sockets and their body; on a cord set, the connector.
    Sockets,
    /// Dead readings.
    Readings,
    /// Opened.
    Inside,
    /// Energised; competent persons only.
    Live,
}

impl Place {
    /// Every place, in the order of the walk.
    pub const ALL: [Self; 7] =
        [Self::WhatItSays, Self::Plug, Self::Cable, Self::Sockets, Self::Readings, Self::Inside, Self::Live];

    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::WhatItSays => "what-it-says",
            Self::Plug => "plug",
            Self::Cable => "cable",
            Self::Sockets => "sockets",
            Self::Readings => "readings",
            Self::Inside => "inside",
            Self::Live => "live",
        }
    }
}

/// The examined thing itself.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sample {
    /// The number written on the sample or its bag, such as `2026-014`; may be empty.
    pub number: String,
    /// What it is called, in the examiner's words; may be empty.
    pub title: String,
    /// The kind of product.
    pub kind: Kind,
    /// Where it is sold.
    pub market: Market,
}
