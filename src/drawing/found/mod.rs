//! Pictures of what was measured, for the file: each value with its doubt beside the limit it was held against, in true proportion.

mod axis;
mod band;
mod beside;
mod cores;
mod heat;
mod pins;

use crate::domain::finding::{Finding, Reason};
use crate::domain::view::View;

/// A picture and the notes that stand under it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Picture {
    /// Inline SVG with a text alternative.
    pub svg: String,
    /// A line each.
    pub notes: Vec<String>,
}

/// The pictures of one finding; none where nothing was measured.
pub fn of(finding: &Finding, view: &View) -> Vec<Picture> {
    let own = if matches!(finding.judgement.reason, Reason::CoresMeasured { .. }) {
        cores::draw(finding)
    } else if matches!(finding.judgement.reason, Reason::HeatBalance { .. }) {
        heat::draw(view)
    } else {
        None
    };
    own.map_or_else(|| band::draw(finding, view.kind()), |picture| vec![picture])
}

/// The face of the plug with all of it that was measured; `None` where nothing was.
pub fn plug_face(findings: &[Finding]) -> Option<Picture> {
    pins::draw(findings)
}

/// The faces of two plugs over each other, of a sample and of a known good; `None` where one of them was not measured.
pub fn plug_faces(sample: &[Finding], known_good: &[Finding]) -> Option<Picture> {
    beside::draw(sample, known_good)
}

/// Whether a finding is of the sizes that the face of the plug shows.
pub fn is_on_plug_face(finding: &Finding) -> bool {
    pins::CODES.contains(&finding.code) && !finding.judgement.evidence.is_empty()
}
