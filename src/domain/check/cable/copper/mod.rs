//! How much conductor the cores have, what metal it is, and whether it carries the claimed current.
//!
//! The flex is cut last: everything here is read at the ends of a piece of flex that belongs to no plug and no body any more.

pub mod cross_check;
pub mod cut_flex;
pub mod heat;
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
    cross_check::CORES_JOINED,
    cross_check::REFERENCE_WIRE,
    cross_check::REFERENCE_SIZE,
    cross_check::REFERENCE_DIAMETER,
    cross_check::REFERENCE_LENGTH,
    cross_check::REFERENCE_RESISTANCE,
    cross_check::HALF_LENGTH,
    metal::MAGNET,
    metal::SCRAPE,
    strands::STRAND_COUNT,
    strands::TEN_STRANDS,
    strands::ONE_STRAND,
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
    cross_check::READINGS_INCONSISTENT,
];
