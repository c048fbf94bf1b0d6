//! How much conductor the cores have, what metal it is, and whether it carries the claimed current.
//!
//! The flex is cut last: everything here is read at the ends of a piece of flex that belongs to no plug and no body any more.

pub mod cut_flex;
pub mod heat;
pub mod joined;
pub mod metal;
pub mod resistance;
pub mod strands;
pub mod volt_drop;

use crate::domain::check::Check;
use crate::domain::facts;
use crate::domain::question::Question;

/// The questions in the order of the walk.
pub const QUESTIONS: &[&Question] = &[
    facts::PIECE_LENGTH,
    facts::CORE_RESISTANCE,
    joined::CORES_JOINED,
    metal::MAGNET,
    metal::SCRAPE,
    strands::STRAND_COUNT,
    strands::TEN_STRANDS,
    strands::CORE_MASS,
];

/// The checks.
pub const CHECKS: &[&Check] = &[
    resistance::CORE_RESISTANCE_HIGH,
    heat::OVERHEATS_AT_CLAIM,
    metal::METAL_NOT_COPPER,
    strands::STRAND_AREA_SHORT,
    strands::MASS_BELOW_COPPER_PROMISED,
    volt_drop::VOLT_DROP_HIGH,
    joined::READINGS_INCONSISTENT,
];
