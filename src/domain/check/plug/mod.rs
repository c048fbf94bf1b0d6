//! Checks of the plug: its pattern, fuse, pins, sleeves, marks and body.

pub mod fuse;

use super::Check;
use crate::domain::facts;
use crate::domain::question::Question;

/// The questions in the order of the walk.
pub const QUESTIONS: &[&Question] = &[facts::PLUG_PATTERN, facts::PLUG_MAKE, fuse::IN_THE_HOLDER, facts::FUSE_RATING];

/// The checks.
pub const CHECKS: &[&Check] = &[fuse::FUSE_MISSING, fuse::FUSE_LINK_BRIDGED, fuse::FUSE_CARRIER_MISSING];
