//! HD 361 S3: what the letters and figures of a cable designation such as `H05VV-F 3G1.5` mean.
//!
//! Read in secondary tables; codes in the order of a designation. Where tables differ the majority is followed: one has R as EPR for
//! 90 °C, which is B, and one has F as fixed wiring, which is K.

use super::{Clause, Provenance};
use crate::domain::quantity::{Area, ElectricPotential, square_millimetres, volts};

/// The code of designations.
pub const DESIGNATION: Clause = Clause::new("HD 361", "S3", "", Provenance::Read);

/// What follows for a flex from its own letters: cores for an earth, sizes of light and ordinary cords.
pub const SANITY: Clause = Clause::new("HD 361", "S3", "with EN 50525-2-11", Provenance::Derived);

/// The fewest cores of a mains flex with a green-and-yellow one.
pub const FEWEST_CORES_WITH_EARTH: u8 = 3;

/// The largest cross-section of an H03VV-F.
pub fn largest_light_area() -> Area {
    square_millimetres(0.75)
}

/// The smallest cross-section of an H05VV-F.
pub fn smallest_ordinary_area() -> Area {
    square_millimetres(0.75)
}

/// An enum whose variants stand for the printed codes of one place in a designation.
macro_rules! codes {
    ($(#[$about:meta])* $name:ident { $($(#[$variant_about:meta])* $variant:ident = $code:literal,)* }) => {
        $(#[$about])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
        pub enum $name {
            $($(#[$variant_about])* $variant,)*
        }

        impl $name {
            /// Every one of them.
            pub const ALL: &[Self] = &[$(Self::$variant,)*];

            /// As it stands in a designation.
            pub const fn code(self) -> &'static str {
                match self {
                    $(Self::$variant => $code,)*
                }
            }

            /// The one with the longest code that `letters` begin with.
            pub fn leading(letters: &str) -> Option<Self> {
                let fits = |one: &&Self| letters.starts_with(one.code());
                Self::ALL.iter().filter(fits).max_by_key(|one| one.code().len()).copied()
            }
        }
    };
}

codes! {
    /// Relation to the harmonised standards.
    Harmonisation {
        /// Follows a harmonised standard.
        Harmonised = "H",
        /// A recognised national type.
        RecognisedNational = "A",
        /// Another national type.
        OtherNational = "N",
    }
}

codes! {
    /// Rated voltage, core to earth over core to core.
    VoltageCode {
        /// At least 100/100 V and below 300/300 V.
        Below300 = "01",
        /// 300/300 V.
        V300V300 = "03",
        /// 300/500 V.
        V300V500 = "05",
        /// 450/750 V.
        V450V750 = "07",
        /// 600/1000 V (memory-medium).
        V600V1000 = "1",
    }
}

impl VoltageCode {
    /// Core to earth, core to core; `None` where the code is a range.
    pub fn voltages(self) -> Option<(ElectricPotential, ElectricPotential)> {
        let (to_earth, to_core) = match self {
            Self::Below300 => return None,
            Self::V300V300 => (300.0, 300.0),
            Self::V300V500 => (300.0, 500.0),
            Self::V450V750 => (450.0, 750.0),
            Self::V600V1000 => (600.0, 1000.0),
        };
        Some((volts(to_earth), volts(to_core)))
    }
}

codes! {
    /// Material of insulation or sheath.
    Compound {
        /// Ethylene-propylene rubber for 90 °C.
        EthylenePropylene = "B",
        /// Ethylene-vinyl acetate.
        EthyleneVinylAcetate = "G",
        /// Braid of glass fibre.
        GlassBraid = "J",
        /// Mineral.
        Mineral = "M",
        /// Polychloroprene.
        Polychloroprene = "N",
        /// Special polychloroprene for welding cables.
        PolychloropreneForWelding = "N2",
        /// Chlorosulphonated or chlorinated polyethylene.
        ChlorinatedPolyethylene = "N4",
        /// Polychloroprene that stands water.
        PolychloropreneForWater = "N8",
        /// Polyurethane.
        Polyurethane = "Q",
        /// Polyamide.
        Polyamide = "Q4",
        /// Ordinary rubber for 60 °C.
        Rubber = "R",
        /// Silicone rubber.
        Silicone = "S",
        /// Textile braid over the cores together.
        TextileBraid = "T",
        /// Textile braid over each core.
        TextileBraidOnCores = "T6",
        /// Ordinary PVC.
        Pvc = "V",
        /// PVC for 90 °C.
        PvcForHeat = "V2",
        /// PVC for low temperature.
        PvcForCold = "V3",
        /// Cross-linked PVC.
        CrossLinkedPvc = "V4",
        /// Oil-resistant PVC.
        PvcForOil = "V5",
        /// Cross-linked polyolefin of low smoke.
        CrossLinkedPolyolefin = "Z",
        /// Thermoplastic polyolefin of low smoke.
        Polyolefin = "Z1",
    }
}

codes! {
    /// Metal around the cores.
    Metallic {
        /// Concentric copper conductor.
        ConcentricCopper = "C",
        /// Copper braid over the cores together.
        CopperBraid = "C4",
    }
}

codes! {
    /// How the flex is built. None of them means round.
    Construction {
        /// Strain-bearing element.
        StrainElement = "D",
        /// Strain-bearing elements, several.
        StrainElements = "D3",
        /// Heart that bears no strain.
        Heart = "D5",
        /// Telecommunication core.
        TelecomCore = "FM",
        /// Flat, can be pulled apart.
        FlatDivisible = "H",
        /// Flat, cannot be pulled apart.
        Flat = "H2",
        /// Flat, three cores or more.
        FlatOfManyCores = "H6",
        /// Insulation of two layers.
        TwoLayers = "H7",
        /// Coiled.
        Coiled = "H8",
    }
}

codes! {
    /// Make of the conductor.
    ConductorForm {
        /// Fine strands, for welding.
        FineForWelding = "D",
        /// Very fine strands, for welding.
        VeryFineForWelding = "E",
        /// Fine strands of a flexible cord (class 5).
        Flexible = "F",
        /// Very fine strands (class 6).
        VeryFlexible = "H",
        /// Fine strands for fixed wiring (class 5).
        FineForFixedWiring = "K",
        /// Stranded, for fixed wiring (class 2).
        Stranded = "R",
        /// One solid wire, for fixed wiring (class 1).
        Solid = "U",
        /// Tinsel; no cross-section is stated then.
        Tinsel = "Y",
    }
}

impl ConductorForm {
    /// Whether a flex may be made of it.
    pub const fn is_flexible(self) -> bool {
        match self {
            Self::FineForWelding | Self::VeryFineForWelding | Self::Flexible | Self::VeryFlexible | Self::Tinsel => {
                true
            }
            Self::FineForFixedWiring | Self::Stranded | Self::Solid => false,
        }
    }
}
