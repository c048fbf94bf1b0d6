//! Checks of the plug: its pattern, fuse, pins, sleeves, print and body.

pub mod body;
pub mod fuse;
pub mod fuse_link;
pub mod fuse_rating;
pub mod pattern;
pub mod pin_size;
pub mod pins;
pub mod print;
pub mod rewirable;
pub mod sleeves;

use super::Check;
use crate::domain::facts;
use crate::domain::question::Question;

/// The questions in the order of the walk: six for a sound plug and eyes only, the gravest first.
pub const QUESTIONS: &[&Question] = &[
    facts::PLUG_PATTERN,
    pattern::CONVERTER,
    facts::PLUG_MAKE,
    rewirable::UNDER_THE_COVER,
    fuse::IN_THE_HOLDER,
    facts::FUSE_RATING,
    pins::PINS_AND_SLEEVES,
    sleeves::SOLD_AS,
    body::PLUG_AND_FLEX,
    print::PLUG_PRINT,
    fuse_link::FUSE_LENGTH,
    fuse_link::FUSE_DIAMETER,
    fuse_link::FUSE_MASS,
    pins::MAGNET,
    pin_size::TO_EDGE,
    pin_size::LIVE_WIDTH,
    pin_size::EARTH_WIDTH,
    pin_size::THICKNESS,
    pin_size::LIVE_LENGTH,
    pin_size::EARTH_LENGTH,
    pin_size::ACROSS,
    pin_size::EARTH_TO_FAR_SIDE,
];

/// The checks.
pub const CHECKS: &[&Check] = &[
    pattern::PLUG_FOREIGN,
    pattern::PLUG_BOTH_ENDS,
    pattern::SEVERED_PLUG,
    fuse::FUSE_MISSING,
    fuse::FUSE_LINK_BRIDGED,
    fuse::FUSE_CARRIER_MISSING,
    fuse_link::FUSE_UNMARKED,
    fuse_link::FUSE_STANDARD_WRONG,
    fuse_rating::FUSE_ABOVE_RATING,
    fuse_rating::FUSE_OVER_FLEX,
    fuse_link::FUSE_SIZE_OFF,
    fuse_link::FUSE_UNDERWEIGHT,
    sleeves::SLEEVE_MISSING,
    sleeves::SLEEVE_DAMAGED,
    sleeves::SLEEVE_ON_EARTH,
    pins::EARTH_PIN_PLASTIC,
    pins::EARTH_PIN_NOT_FIRST,
    pin_size::PIN_NEAR_EDGE,
    pin_size::PIN_WIDTH_OFF,
    pin_size::PIN_THICKNESS_OFF,
    pin_size::PIN_LENGTH_OFF,
    pin_size::PIN_SPACING_OFF,
    pins::PINS_OF_ROLLED_SHEET,
    pins::PIN_METAL_WRONG,
    pins::PIN_LOOSE,
    print::PLUG_MARK_MISSING,
    print::APPROVAL_MARK_MISSING,
    pins::PLUG_UNDERSIZED,
    body::BODY_BROKEN,
    body::BODY_OPENS_BY_HAND,
    body::PLUG_SCORCHED,
    body::PLUG_HEAD_DETACHES,
    body::CORD_GRIP_SLIPS,
    rewirable::PLUG_WIRED_WRONG,
    rewirable::CORD_GRIP_ON_CORES,
    rewirable::STRAND_OUTSIDE_TERMINAL,
];
