//! Which checks must have been made before "nothing wrong seen" may be said. Each set of equipment adds to the one before.

use super::sample::Equipment;

/// With eyes only.
const EYES: &[&str] = &[
    "fuse-missing",
    "fuse-link-bridged",
    "fuse-carrier-missing",
    "fuse-unmarked",
    "fuse-standard-wrong",
    "fuse-above-rating",
    "fuse-over-flex",
    "plug-foreign",
    "plug-both-ends",
    "sleeve-missing",
    "sleeve-on-earth",
    "sleeve-damaged",
    "earth-pin-plastic",
    "earth-pin-not-first",
    "pin-loose",
    "plug-mark-missing",
    "approval-mark-missing",
    "body-broken",
    "body-opens-by-hand",
    "plug-scorched",
    "cord-grip-slips",
    "flex-unmarked",
    "flex-thin-for-rating",
    "flex-damaged",
    "joint-in-flex",
    "socket-takes-foreign-plugs",
    "shutter-missing",
    "socket-without-earth",
    "earth-contact-absent",
    "live-part-touchable",
    "mounting-slot-reaches-inside",
    "case-broken",
    "case-opens-by-hand",
    "total-rating-unmarked",
    "rating-above-plug",
];

/// With hand tools.
const HAND_TOOLS: &[&str] = &[
    "pin-near-edge",
    "pin-width-off",
    "pin-thickness-off",
    "pin-length-off",
    "pin-spacing-off",
    "pin-metal-wrong",
    "fuse-size-off",
    "shutter-opens-to-single-pin",
    "socket-loose",
    "plug-fits-upside-down",
    "earth-open",
    "polarity-reversed",
    "line-open",
    "pole-shorted",
    "neutral-earth-joined",
    "fuse-not-in-line",
    "plug-wired-wrong",
    "cord-grip-on-cores",
];

/// With meters and a screwdriver.
const METERS: &[&str] = &[
    "earth-resistance-high",
    "earth-intermittent",
    "insulation-low",
    "core-resistance-high",
    "cores-too-few",
    "earth-colour-wrong",
    "overheats-at-claim",
    "earth-not-connected",
    "switch-in-neutral",
    "conductor-can-stray",
    "insulation-melted",
    "insulation-nicked",
    "scorched-inside",
    "internal-wire-thin",
    "output-not-isolated",
    "promised-part-missing",
];

/// Whether a check is essential with what is at hand.
pub fn is_essential(code: &str, equipment: Equipment) -> bool {
    codes(equipment).any(|essential| essential == code)
}

/// The essential checks with what is at hand.
pub fn codes(equipment: Equipment) -> impl Iterator<Item = &'static str> {
    let sets: &[&[&str]] = match equipment {
        Equipment::Eyes => &[EYES],
        Equipment::HandTools => &[EYES, HAND_TOOLS],
        Equipment::Meters => &[EYES, HAND_TOOLS, METERS],
    };
    sets.iter().copied().flatten().copied()
}
