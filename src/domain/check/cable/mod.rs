//! Checks of the flex: its state, what is printed on it, and whether its cores, colours and sizes suit the product.

pub mod condition;
pub mod copper;
pub mod cores;
pub mod length;
pub mod make;
pub mod print;
pub mod size;

use super::Check;
use super::sockets::connector;
use crate::domain::facts;
use crate::domain::question::Question;

/// The questions in the order of the walk.
pub const QUESTIONS: &[&Question] = &[
    condition::CONDITION,
    facts::FLEX_PRINT,
    print::VISIBLE,
    print::MAKER,
    facts::FLEX_LENGTH,
    facts::FLEX_DIAMETER,
    cores::EARTH_COLOUR,
    cores::LINE_NEUTRAL_COLOURS,
    print::MAKER_THREAD,
    make::SHEATH_THICKNESS,
    make::INSULATION_THICKNESS,
];

/// The checks.
pub const CHECKS: &[&Check] = &[
    condition::FLEX_DAMAGED,
    condition::JOINT_IN_FLEX,
    size::FLEX_THIN_FOR_RATING,
    size::FLEX_THIN_FOR_FUSE,
    connector::CONNECTOR_ABOVE_FLEX,
    print::FLEX_UNMARKED,
    print::FLEX_UNSUITABLE,
    print::FLEX_MAKER_MISSING,
    cores::CORES_TOO_FEW,
    cores::EARTH_COLOUR_WRONG,
    cores::LINE_NEUTRAL_COLOUR_WRONG,
    make::SHEATH_THIN,
    make::INSULATION_THIN,
    make::DIAMETER_OFF,
    length::FLEX_TOO_LONG,
    condition::SHEATH_LOOSE,
];
