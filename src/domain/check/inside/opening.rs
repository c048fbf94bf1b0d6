//! Whether the body was opened at all; everything else inside waits for it.

use crate::domain::check::on_leads;
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::view::View;

/// Whether the body, or the connector of a cord set, is open.
pub const OPENED: &Question = &Question::one("opened", Place::Inside, Equipment::Meters, &["opened", "stays-closed"]);

/// Whether the body is open.
pub fn is_open(view: &View) -> bool {
    view.one(OPENED) == Some("opened")
}

/// For checks of what a body holds: every lead has one; a cord set has one only where somebody could open its connector.
pub fn has_an_inside(view: &View) -> bool {
    on_leads(view) || is_open(view)
}
