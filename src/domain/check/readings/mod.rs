//! Checks of the place: readings, taken on a dead sample.

pub mod earth;
pub mod earth_resistance;
pub mod insulation;
pub mod poles;
pub mod shorts;
pub mod trust;

use super::Check;
use crate::domain::facts;
use crate::domain::question::Question;

/// The questions in the order of the walk: the earth first, 500 V only after what a tester can tell, and the fuse comes out last.
pub const QUESTIONS: &[&Question] = &[
    facts::READINGS_PREPARED,
    earth::EARTH_PATH,
    earth_resistance::EARTH_RESISTANCE,
    earth::EARTH_WHILE_BENT,
    poles::POLE_PATH,
    shorts::POLES_TOGETHER,
    shorts::POLE_RESISTANCE,
    shorts::EARTH_TO_POLES,
    insulation::INSULATION_TEST,
    insulation::INSULATION,
    insulation::OUTPUT_INSULATION,
    poles::FUSE_OUT,
];

/// The checks.
pub const CHECKS: &[&Check] = &[
    earth::EARTH_OPEN,
    earth_resistance::EARTH_RESISTANCE_HIGH,
    earth::EARTH_INTERMITTENT,
    poles::POLARITY_REVERSED,
    poles::LINE_OPEN,
    poles::NEUTRAL_OPEN,
    shorts::POLE_SHORTED,
    shorts::NEUTRAL_EARTH_JOINED,
    insulation::INSULATION_LOW,
    insulation::OUTPUT_NOT_ISOLATED,
    poles::FUSE_NOT_IN_LINE,
];
