//! What each piece of the print along a flex means, as data; `words::flex_print` puts it in plain English.

use crate::domain::quantity::{Area, ElectricPotential};
use crate::domain::standard::cord_type::CordType;
use crate::domain::standard::hd361::{Compound, ConductorForm, Construction, Harmonisation, Metallic, VoltageCode};

/// One piece of print and its meaning.
#[derive(Debug, Clone, PartialEq)]
pub struct Piece {
    /// As it is printed.
    pub printed: String,
    /// What it means.
    pub means: Meaning,
}

/// What a piece of print means.
#[derive(Debug, Clone, PartialEq)]
pub enum Meaning {
    /// The conductor is aluminium.
    Aluminium,
    /// A body's mark of approval or origin; a claim like all print, and often a forged one.
    ApprovalMark,
    /// Cross-section of one core.
    Area(Area),
    /// Make of the conductor.
    Conductor(ConductorForm),
    /// How the flex is built.
    Construction(Construction),
    /// So many cores; the print does not say which.
    Cores(u8),
    /// So many cores, one of them green-and-yellow.
    CoresWithEarth(u8),
    /// So many cores, none of them green-and-yellow.
    CoresWithoutEarth(u8),
    /// A wire gauge and the cross-section it stands for.
    Gauge(u8, Area),
    /// Relation to the harmonised standards.
    Harmonisation(Harmonisation),
    /// Material of the insulation.
    Insulation(Compound),
    /// Materials of insulation and of the one sheath.
    InsulationAndSheath(Compound, Compound),
    /// Perhaps the maker's name.
    Maker,
    /// Metal around the cores.
    Metallic(Metallic),
    /// Material of one sheath of several.
    Sheath(Compound),
    /// Number of a standard.
    Standard,
    /// Temperature that the flex may have.
    Temperature,
    /// A type by its number or national name.
    Type(&'static CordType),
    /// Rated voltage by its code.
    Voltage(VoltageCode),
    /// Rated voltage in figures: core to earth, core to core.
    VoltageInFigures(ElectricPotential, ElectricPotential),
}
