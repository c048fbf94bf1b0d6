//! Drawings of what to look at: our own SVG, generated from the limits where it shows dimensions.

#[cfg(not(feature = "first"))]
pub mod found;
mod lead;
mod plug;
mod svg;

/// The drawing for a question, as an inline SVG with a text alternative; `None` where words do.
pub fn of(question: &str) -> Option<String> {
    Some(match question {
        "plug-pattern" | "live-pin-width" | "earth-pin-width" | "pin-thickness" | "magnet-on-pins" => plug::face(),
        "fuse-in-the-holder" | "fuse-rating" => plug::fuse(),
        "pins-and-sleeves" | "live-pin-length" | "earth-pin-length" => plug::side(),
        "pin-to-edge" => plug::edge(),
        "across-live-pins" => plug::across(),
        "earth-pin-to-far-side" => plug::earth_to_far_side(),
        "fuse-length" | "fuse-diameter" => plug::fuse_alone(),
        "flex-print" => lead::flex_print(),
        "core-count" | "earth-colour" | "core-resistance" => lead::flex_cut(),
        "shutters" | "earth-holes" => lead::socket_face(),
        "earth-path" | "earth-resistance" => lead::earth_reading(),
        "pole-path" | "pole-resistance" => lead::pole_reading(),
        _ => return None,
    })
}
