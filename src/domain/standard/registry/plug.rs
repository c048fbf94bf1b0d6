//! Limits of the plug and its fuse.

use super::{Cell, Published, at_least, at_most, limit};
use crate::domain::quantity::{Area, amperes, square_millimetres};
use crate::domain::question::Core;
use crate::domain::standard::{Provenance, bs1362, bs1363_1, practice};

pub(super) const LIMITS: &[Published] = &[
    Published::new(
        "plug-rating",
        bs1363_1::TABLE_2,
        || vec![at_most(bs1363_1::largest_rating())],
        &["rating-above-plug", "fuse-above-rating"],
    ),
    Published::new("pin-to-edge", bs1363_1::PIN_TO_EDGE, || vec![limit(bs1363_1::pin_to_edge())], &["pin-near-edge"]),
    Published::new(
        "pin-far-from-fingers",
        practice::USUAL,
        || vec![limit(practice::pin_far_from_fingers())],
        &["pin-near-edge"],
    ),
    Published::new(
        "live-pin-width",
        bs1363_1::PIN_WIDTH,
        || vec![limit(bs1363_1::pin_width(Core::Line))],
        &["pin-width-off"],
    ),
    Published::new(
        "earth-pin-width",
        bs1363_1::PIN_WIDTH,
        || vec![limit(bs1363_1::pin_width(Core::Earth))],
        &["pin-width-off"],
    ),
    Published::new(
        "pin-thickness",
        bs1363_1::PIN_THICKNESS,
        || vec![limit(bs1363_1::pin_thickness())],
        &["pin-thickness-off"],
    ),
    Published::new(
        "live-pin-length",
        bs1363_1::PIN_LENGTH,
        || vec![limit(bs1363_1::pin_length(Core::Line))],
        &["pin-length-off", "earth-pin-not-first"],
    ),
    Published::new(
        "earth-pin-length",
        bs1363_1::PIN_LENGTH,
        || vec![limit(bs1363_1::pin_length(Core::Earth))],
        &["pin-length-off", "earth-pin-not-first"],
    ),
    Published::new("pin-spacing", bs1363_1::PIN_SPACING, || vec![limit(bs1363_1::pin_spacing())], &["pin-spacing-off"]),
    Published::new(
        "pin-grace",
        practice::USUAL,
        || vec![at_most(practice::pin_grace())],
        &["pin-width-off", "pin-thickness-off", "pin-length-off", "pin-spacing-off"],
    ),
    Published::new(
        "fuse-rating",
        bs1362::LARGEST_RATING,
        || vec![at_most(bs1362::largest_rating())],
        &["fuse-standard-wrong", "fuse-above-rating"],
    ),
    Published::new("fuse-length", bs1362::LENGTH, || vec![limit(bs1362::length())], &["fuse-size-off"]),
    Published::new("fuse-cap-diameter", bs1362::DIAMETER, || vec![limit(bs1362::diameter())], &["fuse-size-off"]),
    Published::new("fuse-mass", practice::USUAL, || vec![limit(practice::doubtful_fuse_mass())], &["fuse-underweight"]),
    Published::new(
        "fuse-carries",
        bs1362::CONVENTIONAL_CURRENTS,
        || {
            let carries = |rating| at_least(bs1362::non_fusing_current(amperes(rating))).given(amperes(rating));
            vec![carries(3.0), carries(13.0)]
        },
        &["flex-thin-for-rating"],
    ),
    Published::new(
        "fuse-for-flex",
        bs1363_1::TABLE_2,
        fuses,
        &["flex-thin-for-fuse", "fuse-over-flex", "internal-wire-thin"],
    ),
    Published::new(
        "fuse-for-inrush",
        bs1363_1::TABLE_2,
        || vec![at_most(bs1363_1::inrush_fuse()).given(square_millimetres(0.5))],
        &["flex-thin-for-fuse", "fuse-over-flex"],
    ),
    Published::new("current-for-flex", bs1363_1::TABLE_2, currents, &["core-resistance-high"]),
    Published::new(
        "thickest-flex",
        bs1363_1::TABLE_2,
        || vec![at_most(bs1363_1::thickest_flex())],
        &["flex-unsuitable"],
    ),
];

fn fuses() -> Vec<Cell> {
    let fuse = |(area, _)| Some(at_most(bs1363_1::largest_fuse(area)?).given(area));
    bs1363_1::plug_ratings().filter_map(fuse).collect()
}

/// The first row of each rating: a product that names a current only is held to the thinnest flex for it.
fn currents() -> Vec<Cell> {
    let is_recalled = |area: Area| area == square_millimetres(1.0) || area == square_millimetres(1.25);
    bs1363_1::plug_ratings()
        .filter(|&(area, rating)| bs1363_1::area_for_current(rating) == Some(area))
        .map(|(area, rating)| {
            let cell = at_most(rating).given(area);
            if is_recalled(area) { cell.known(Provenance::MemoryHigh) } else { cell }
        })
        .collect()
}
