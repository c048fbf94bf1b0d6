//! Drawings of what to look at: our own SVG, generated from the limits where it shows dimensions.

mod lead;
mod plug;
mod svg;

/// The drawing for a question, as an inline SVG with a text alternative; `None` where words do.
pub fn of(question: &str) -> Option<String> {
    Some(match question {
        "fuse-in-the-holder" | "fuse-rating" => plug::fuse(),
        _ => return None,
    })
}
