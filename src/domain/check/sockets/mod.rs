//! Checks of the sockets and their body; on a cord set, of the connector.

pub mod body;
pub mod connector;
pub mod holes;
pub mod trial;

use super::Check;
use crate::domain::facts;
use crate::domain::question::Question;

/// The questions in the order of the walk.
pub const QUESTIONS: &[&Question] = &[
    connector::PATTERN,
    holes::WRONG_HOLES,
    holes::SHUTTERS,
    holes::EARTH_HOLES,
    body::CONDITION,
    facts::SOCKET_COUNT,
    facts::EXTRAS,
    body::TOTAL_RATING,
    body::SWITCH_MARKS,
    trial::OPENED_BY,
    trial::UPSIDE_DOWN,
    trial::TO_THE_EDGE,
    trial::GRIP,
    connector::EARTH_PATH,
    body::CONTACT_METAL,
];

/// The checks.
pub const CHECKS: &[&Check] = &[
    holes::SOCKET_TAKES_FOREIGN_PLUGS,
    holes::SOCKET_TWO_PIN,
    holes::SOCKET_WITHOUT_EARTH,
    holes::SHUTTER_MISSING,
    holes::EARTH_CONTACT_ABSENT,
    body::LIVE_PART_TOUCHABLE,
    body::MOUNTING_SLOT_REACHES_INSIDE,
    body::CASE_BROKEN,
    body::CASE_OPENS_BY_HAND,
    body::SOCKET_SCORCHED,
    trial::SHUTTER_OPENS_TO_SINGLE_PIN,
    trial::PLUG_FITS_UPSIDE_DOWN,
    trial::SOCKET_LOOSE,
    connector::CONNECTOR_EARTH_OPEN,
    connector::CONNECTOR_ABOVE_PLUG,
    body::TOTAL_RATING_UNMARKED,
    body::LIVE_CONTACT_STEEL,
    body::SWITCH_UNMARKED,
];
