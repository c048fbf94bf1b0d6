//! Checks of the place: inside, with the body open.

pub mod barrier;
pub mod damage;
pub mod joints;
pub mod opening;
pub mod parts;
pub mod wiring;

use super::Check;
use crate::domain::facts;
use crate::domain::question::Question;

/// The questions in the order of the walk. The joints are looked at, and photographed, before anything is cut.
pub const QUESTIONS: &[&Question] = &[
    wiring::SWITCH_OPENS,
    opening::OPENED,
    damage::SEEN_INSIDE,
    joints::EARTH_JOINED_TO,
    joints::JOINTS,
    wiring::WIRES_INSIDE,
    wiring::COLOURS_INSIDE,
    parts::PARTS_INSIDE,
    parts::SURGE_PART,
    barrier::ACROSS_THE_BARRIER,
    barrier::CREEPAGE,
    barrier::CLEARANCE,
    facts::CORE_COUNT,
    facts::MAY_CUT,
    facts::ROOM_TEMPERATURE,
];

/// The checks.
pub const CHECKS: &[&Check] = &[
    wiring::SWITCH_IN_NEUTRAL,
    damage::SCORCHED_INSIDE,
    damage::CONDUCTOR_CAN_STRAY,
    damage::INSULATION_MELTED,
    damage::INSULATION_NICKED,
    damage::FOREIGN_MATTER,
    joints::EARTH_NOT_CONNECTED,
    joints::JOINT_BY_SOLDER_ALONE,
    joints::TERMINAL_UNSUPPORTED,
    joints::CONTACT_FLIMSY,
    wiring::INTERNAL_WIRE_THIN,
    wiring::INTERNAL_COLOUR_WRONG,
    parts::PROMISED_PART_MISSING,
    parts::SURGE_PART_UNPROTECTED,
    barrier::MAINS_TO_TOUCH_PATH_SHORT,
    barrier::CREEPAGE_OR_CLEARANCE_SHORT,
];
