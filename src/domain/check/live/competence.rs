//! Who may go on to the live place: a competent person, in an isolated place, behind an RCD, never alone.

use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::view::View;

/// What has been made sure of before the sample is energised.
pub const LIVE_COMPETENT: &Question = &Question::any(
    "live-competent",
    Place::Live,
    Equipment::Meters,
    &["competent", "place-isolated", "rcd", "not-alone"],
);

/// Whether all of it was made sure of; nothing is asked here before.
pub fn may_energise(view: &View) -> bool {
    LIVE_COMPETENT.answers().iter().all(|sure| view.marked(LIVE_COMPETENT, sure) == Some(true))
}
