//! The 13 A plug: its face in true proportion, its side, and its fuse.

use super::svg::Svg;
use crate::domain::decision::Limit;
use crate::domain::quantity::{Length, Measurand};
use crate::domain::question::Core;
use crate::domain::standard::bs1363_1;

/// Centre of the drawing of a plug's face, in millimetres.
const MIDDLE: (f64, f64) = (50.0, 26.0);

/// Where the three pins stand, seen from the pin side with the earth pin up: line left, neutral right.
struct Pins {
    earth: (f64, f64),
    line: (f64, f64),
    neutral: (f64, f64),
}

fn millimetres(length: Length) -> f64 {
    length.base() * 1e3
}

/// The middle of a two-sided limit, in millimetres.
pub(super) fn nominal(limit: &Limit<Length>) -> f64 {
    match *limit {
        Limit::Between(low, high) => f64::midpoint(millimetres(low), millimetres(high)),
        Limit::AtLeast(only) | Limit::AtMost(only) => millimetres(only),
    }
}

fn pins() -> Pins {
    let spacing = nominal(&bs1363_1::pin_spacing());
    let (x, y) = MIDDLE;
    let low = y + spacing / 2.0;
    Pins { earth: (x, y - spacing / 2.0), line: (x - spacing / 2.0, low), neutral: (x + spacing / 2.0, low) }
}

/// The face without words: outline and pins. No outline is standardised; this one is only usual.
fn bare_face(title: &'static str) -> Svg {
    let pins = pins();
    let live = (nominal(&bs1363_1::pin_width(Core::Line)), nominal(&bs1363_1::pin_thickness()));
    let earth = (nominal(&bs1363_1::pin_thickness()), nominal(&bs1363_1::pin_width(Core::Earth)));
    let (x, y) = MIDDLE;
    let outline = format!(
        "M{:.1} {:.1} h22 q6 0 8 6 l4 26 q2 14 -12 14 h-22 q-14 0 -12 -14 l4 -26 q2 -6 8 -6 z",
        x - 11.0,
        y - 23.0
    );
    Svg::new(100.0, 52.0, title)
        .path(&outline, "s")
        .rect(pins.earth, earth, 0.3, "pin")
        .rect(pins.line, live, 0.3, "pin")
        .rect(pins.neutral, live, 0.3, "pin")
}

/// The face with each pin named.
pub fn face() -> String {
    let pins = pins();
    bare_face("The pin side of a UK plug, earth pin up: the line pin is left, the neutral pin right.")
        .pointer(pins.earth, (82.0, 14.0), "start", "earth")
        .pointer(pins.line, (18.0, 37.0), "end", "line")
        .pointer(pins.neutral, (82.0, 37.0), "start", "neutral")
        .into_string()
}

/// The face with the way from the live pins to the edge.
pub fn edge() -> String {
    let pins = pins();
    let half = nominal(&bs1363_1::pin_width(Core::Line)) / 2.0;
    let least = nominal(&bs1363_1::pin_to_edge());
    let at = pins.neutral.0 + half;
    bare_face("The pin side of a UK plug, with the way from a live pin to the nearest edge of the plug.")
        .dimension((at, pins.neutral.1 + 4.5), (at + least, pins.neutral.1 + 4.5), "")
        .words((82.0, pins.neutral.1 + 6.0), "start", &format!("{least} mm or more"))
        .into_string()
}

/// The face with the distance over the outer sides of the line and neutral pins.
pub fn across() -> String {
    let pins = pins();
    let half = nominal(&bs1363_1::pin_width(Core::Line)) / 2.0;
    bare_face(
        "The pin side of a UK plug, with the distance from the outer side of the line pin to that of the neutral pin.",
    )
    .dimension((pins.line.0 - half, 47.0), (pins.neutral.0 + half, 47.0), "measure here")
    .into_string()
}

/// The face with the distance from the earth pin's top to the far side of the other two.
pub fn earth_to_far_side() -> String {
    let pins = pins();
    let up = nominal(&bs1363_1::pin_width(Core::Earth)) / 2.0;
    let down = nominal(&bs1363_1::pin_thickness()) / 2.0;
    bare_face("The pin side of a UK plug, with the distance from the outer end of the earth pin to the far side of the other two.")
        .dimension((84.0, pins.earth.1 - up), (84.0, pins.line.1 + down), "here")
        .line((pins.earth.0 + 3.0, pins.earth.1 - up), (85.0, pins.earth.1 - up), "h")
        .line((pins.neutral.0 + 4.0, pins.neutral.1 + down), (85.0, pins.neutral.1 + down), "h")
        .into_string()
}

/// The side: the earth pin is longer, the other two wear sleeves, the earth pin none.
pub fn side() -> String {
    let live = nominal(&bs1363_1::pin_length(Core::Line));
    let earth = nominal(&bs1363_1::pin_length(Core::Earth));
    let (face, thickness) = (46.0, nominal(&bs1363_1::pin_thickness()));
    Svg::new(100.0, 46.0, "A UK plug from the side: the earth pin is the longest; the line and neutral pins wear a sleeve next to the plug.")
        .path("M46 4 v38 h-16 q-8 0 -9 -8 l-2 -14 q-1 -10 8 -12 z", "s")
        .path("M20 24 q-10 2 -20 0", "flex")
        .rect((face + earth / 2.0, 11.0), (earth, nominal(&bs1363_1::pin_width(Core::Earth)) / 1.4), 0.4, "pin")
        .rect((face + live / 2.0, 33.0), (live, thickness), 0.4, "pin")
        .rect((face + 4.75, 33.0), (9.5, thickness), 0.4, "sleeve")
        .pointer((face + earth - 3.0, 11.0), (78.0, 11.0), "start", "earth: bare")
        .pointer((face + live - 3.0, 33.0), (78.0, 33.0), "start", "bare tip")
        .pointer((face + 4.75, 35.0), (58.0, 43.0), "start", "sleeve")
        .into_string()
}

/// The fuse in its holder.
pub fn fuse() -> String {
    let (x, y) = MIDDLE;
    bare_face("The pin side of a UK plug: the fuse sits in a holder between the pins; BS 1362 and a number of amperes stand on it.")
        .rect((x, y + 1.0), (9.0, 27.0), 1.2, "s")
        .rect((x, y + 1.0), (6.3, 25.4), 1.0, "s")
        .rect((x, y - 9.2), (6.3, 5.0), 0.6, "pin")
        .rect((x, y + 11.2), (6.3, 5.0), 0.6, "pin")
        .pointer((x + 2.0, y), (82.0, 20.0), "start", "fuse")
        .words((82.8, 27.5), "start", "BS 1362")
        .words((82.8, 34.0), "start", "13 A or 3 A")
        .into_string()
}

/// A fuse alone, with its length.
pub fn fuse_alone() -> String {
    Svg::new(100.0, 26.0, "A plug fuse from the side, with its length from end to end.")
        .rect((50.0, 15.0), (25.4 * 1.6, 6.3 * 1.6), 1.2, "s")
        .rect((50.0 - 16.3, 15.0), (8.0, 6.3 * 1.6), 0.8, "pin")
        .rect((50.0 + 16.3, 15.0), (8.0, 6.3 * 1.6), 0.8, "pin")
        .words((50.0, 14.4), "middle", "BS 1362")
        .words((50.0, 18.4), "middle", "13 A")
        .dimension((50.0 - 20.3, 6.0), (50.0 + 20.3, 6.0), "25.4 mm")
        .into_string()
}
