//! Implementing Decision (EU) 2019/417, Annex, and Delegated Regulation (EU) 2024/3173, Annex II: how bad, how likely, and what level
//! of risk that makes.
//!
//! The layout of the matrix, four levels of severity by eight bands of probability, was read; its cells are from memory (memory-high) and
//! agree with both published examples. The United Kingdom's PRISM of 2024 has the same severities, bands and matrix (read).

use super::{Clause, Provenance};
use crate::domain::decision::Probability;
use crate::domain::sample::Market::{GreatBritain, NorthernIreland};

/// The method: scenario, severity, probability, level of risk, sensitivity.
pub const METHOD: Clause =
    Clause::new("Delegated Regulation (EU) 2024/3173", "", "Annex II", Provenance::Read).only_in(NorthernIreland);

/// What an injury of each severity is.
pub const SEVERITIES: Clause =
    Clause::new("Implementing Decision (EU) 2019/417", "", "Annex, Table 3", Provenance::Read).only_in(NorthernIreland);

/// The level of risk of each severity and probability.
pub const MATRIX: Clause =
    Clause::new("Implementing Decision (EU) 2019/417", "", "Annex, Table 4", Provenance::MemoryHigh)
        .only_in(NorthernIreland);

/// The same severities, bands and matrix, as Great Britain uses them: that they are the same was read, the cells are from memory.
pub const PRISM: Clause = Clause::new(
    "PRISM, the risk assessment method of the Office for Product Safety and Standards",
    "October 2024",
    "",
    Provenance::MemoryHigh,
)
.only_in(GreatBritain);

/// Severity of an injury (Table 3).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Injury {
    /// Level 1: first aid is enough, no doctor, all of it passes.
    FirstAid,
    /// Level 2: a visit to a hospital, limits for up to about six months.
    HospitalVisit,
    /// Level 3: a stay in hospital, limits for longer or for ever.
    HospitalStay,
    /// Level 4: death, loss of a limb, or more than one tenth of function lost for ever.
    Fatal,
}

impl Injury {
    /// Every severity, level 1 first.
    pub const ALL: [Self; 4] = [Self::FirstAid, Self::HospitalVisit, Self::HospitalStay, Self::Fatal];

    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::FirstAid => "first-aid",
            Self::HospitalVisit => "hospital-visit",
            Self::HospitalStay => "hospital-stay",
            Self::Fatal => "fatal",
        }
    }
}

/// Where the method is published, in whichever market; a file names what holds where the sample is sold.
pub const SOURCES: [Clause; 4] = [METHOD, SEVERITIES, MATRIX, PRISM];

/// Probability of an injury during the foreseeable lifetime of a product (Table 4, first column).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Band {
    /// < 1/1 000 000
    Rarer,
    /// > 1/1 000 000
    OverMillionth,
    /// > 1/100 000
    OverHundredThousandth,
    /// > 1/10 000
    OverTenThousandth,
    /// > 1/1 000
    OverThousandth,
    /// > 1/100
    OverHundredth,
    /// > 1/10
    OverTenth,
    /// > 50 %
    OverHalf,
}

/// Where each band begins, in printed order.
const BEGINNINGS: [(f64, Band); 7] = [
    (0.5, Band::OverHalf),
    (1e-1, Band::OverTenth),
    (1e-2, Band::OverHundredth),
    (1e-3, Band::OverThousandth),
    (1e-4, Band::OverTenThousandth),
    (1e-5, Band::OverHundredThousandth),
    (1e-6, Band::OverMillionth),
];

impl Band {
    /// Every band, in printed order.
    pub const ALL: [Self; 8] = [
        Self::OverHalf,
        Self::OverTenth,
        Self::OverHundredth,
        Self::OverThousandth,
        Self::OverTenThousandth,
        Self::OverHundredThousandth,
        Self::OverMillionth,
        Self::Rarer,
    ];

    /// The band of a probability. A product of fractions may stand a last digit over the edge that it meets: it still counts as met.
    pub fn of(probability: Probability) -> Self {
        let over = |edge: f64| probability.value() > edge * (1.0 + 1e-9);
        BEGINNINGS.into_iter().find(|&(edge, _)| over(edge)).map_or(Self::Rarer, |(_, band)| band)
    }
}

/// Level of risk.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum RiskLevel {
    /// Low.
    Low,
    /// Medium.
    Medium,
    /// High.
    High,
    /// Serious.
    Serious,
}

/// The level of risk in a cell of Table 4.
pub const fn level(band: Band, injury: Injury) -> RiskLevel {
    use RiskLevel::{High, Low, Medium, Serious};
    let [first, second, third, fourth] = match band {
        Band::OverHalf => [High, Serious, Serious, Serious],
        Band::OverTenth | Band::OverHundredth => [Medium, Serious, Serious, Serious],
        Band::OverThousandth => [Low, High, Serious, Serious],
        Band::OverTenThousandth => [Low, Medium, High, Serious],
        Band::OverHundredThousandth => [Low, Low, Medium, High],
        Band::OverMillionth => [Low, Low, Low, Medium],
        Band::Rarer => [Low, Low, Low, Low],
    };
    match injury {
        Injury::FirstAid => first,
        Injury::HospitalVisit => second,
        Injury::HospitalStay => third,
        Injury::Fatal => fourth,
    }
}
