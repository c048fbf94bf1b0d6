//! Limits of print, sockets, readings, supplies, and of the sample in use.

use uom::si::f64::Time;

use super::{Cell, Published, Range, Value, at_least, at_most, limit, range};
use crate::domain::quantity::{ElectricCurrent, amperes};
use crate::domain::standard::{
    bs1363_1, bs1363_2, bs7671_shock, iec60479, iec61008, iec62368_1, iet_code, marks, practice,
};

pub(super) const LIMITS: &[Published] = &[
    Published::new("mark-height", marks::CE_SIZE, || vec![limit(marks::mark_height())], &["conformity-mark-malformed"]),
    Published::new(
        "one-supply",
        practice::USUAL,
        || vec![range(up_to(Value::Ratio(practice::within_one_supply())))],
        &["ratings-disagree"],
    ),
    Published::new(
        "watts-without-volts",
        practice::USUAL,
        || vec![at_most(bs1363_1::rated_voltage())],
        &["rating-above-plug"],
    ),
    Published::new(
        "aperture-to-edge",
        bs1363_2::INVERTED_PLUG,
        || vec![at_least(bs1363_2::aperture_to_edge())],
        &["plug-fits-upside-down"],
    ),
    Published::new(
        "earth-path-beyond-flex",
        iet_code::EARTH_CONTINUITY,
        || vec![at_most(iet_code::earth_beyond_flex())],
        &["earth-resistance-high"],
    ),
    Published::new(
        "hand-meter-leads",
        practice::USUAL,
        || vec![at_most(practice::test_leads())],
        &["earth-resistance-high", "core-resistance-high"],
    ),
    Published::new(
        "earth-loop",
        bs7671_shock::LOOP_5_S,
        || vec![at_most(bs7671_shock::largest_loop())],
        &["earth-open"],
    ),
    Published::new("short-circuit", practice::USUAL, || vec![at_least(practice::short_circuit())], &["pole-shorted"]),
    Published::new(
        "nothing-conducts",
        practice::USUAL,
        || vec![at_least(practice::nothing_conducts())],
        &["pole-shorted", "neutral-earth-joined"],
    ),
    Published::new(
        "insulation-in-service",
        iet_code::INSULATION_CLASS_I,
        || vec![at_least(iet_code::insulation_class_1())],
        &["insulation-low"],
    ),
    Published::new(
        "insulation-when-new",
        bs1363_2::INSULATION,
        || vec![at_least(bs1363_2::insulation())],
        &["insulation-low"],
    ),
    Published::new(
        "insulation-of-a-new-plug",
        bs1363_1::INSULATION,
        || vec![at_least(bs1363_2::insulation())],
        &["insulation-low"],
    ),
    Published::new(
        "output-insulation",
        iet_code::INSULATION_CLASS_II,
        || vec![at_least(iet_code::insulation_class_2())],
        &["output-not-isolated"],
    ),
    Published::new(
        "creepage",
        iec62368_1::CREEPAGE,
        || vec![at_least(iec62368_1::creepage())],
        &["creepage-or-clearance-short"],
    ),
    Published::new(
        "clearance",
        iec62368_1::CLEARANCE,
        || vec![at_least(iec62368_1::clearance())],
        &["creepage-or-clearance-short"],
    ),
    Published::new("withstand", practice::USUAL, || vec![at_least(practice::withstand())], &["withstand-broke-down"]),
    Published::new("touch-current", iec60479::LINE_A, || vec![at_most(iec60479::line_a())], &["leakage-high"]),
    Published::new(
        "touch-current-of-output",
        iet_code::TOUCH_CLASS_II,
        || vec![at_most(iet_code::touch_class_2())],
        &["leakage-high"],
    ),
    Published::new("rcd-trip", iec61008::TRIP_TIME, trips, &["rcd-fails"]),
];

fn trips() -> Vec<Cell> {
    let row = |current: ElectricCurrent| {
        let latest: Time = iec61008::latest_trip(current)?;
        Some(range(up_to(Value::Time(latest))).given(current))
    };
    [0.03, 0.15].map(amperes).into_iter().filter_map(row).collect()
}

const fn up_to(most: Value) -> Range {
    Range { at_least: None, at_most: Some(most) }
}
