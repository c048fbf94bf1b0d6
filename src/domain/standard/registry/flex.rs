//! Limits of the flex.

use super::{Cell, Given, Published, Range, Value, at_least, at_most, limit, range};
use crate::domain::decision::Limit;
use crate::domain::quantity::{Area, Length, ResistancePerLength, square_millimetres};
use crate::domain::standard::en50525::Sizes;
use crate::domain::standard::iec60228::{Coating, class5_least_copper, class5_maximum, class5_sizes};
use crate::domain::standard::{
    Provenance, bs7671, bs7671_flex, en50525, iec60227_1, iec60228, iec60320, iec60799, iet_code, practice,
};

pub(super) const LIMITS: &[Published] = &[
    Published::new(
        "flex-rating",
        bs7671::TABLE_4F3A,
        || {
            let row = |area| Some(at_most(bs7671::cord_rating(area)?).given(area));
            bs7671::cord_sizes().filter_map(row).collect()
        },
        &["flex-thin-for-rating"],
    ),
    Published::new(
        "thinnest-flex",
        practice::USUAL,
        || vec![at_least(practice::thinnest_flex())],
        &["flex-thin-for-rating", "flex-thin-for-fuse", "connector-above-flex"],
    ),
    Published::new(
        "cord-set-size",
        iec60799::LEAST_AREA,
        || {
            let row = |current| Some(at_least(iec60799::least_area(current)?.any_length).given(current));
            iec60799::currents().filter_map(row).collect()
        },
        &["flex-thin-for-rating", "connector-above-flex"],
    ),
    Published::new(
        "short-cord-set-size",
        iec60799::LEAST_AREA,
        || {
            let row = |current| Some(at_least(iec60799::least_area(current)?.short).given(current));
            iec60799::currents().filter_map(row).collect()
        },
        &["flex-thin-for-rating", "connector-above-flex"],
    ),
    Published::new(
        "short-cord-set",
        iec60799::LEAST_AREA,
        || vec![at_most(iec60799::short_set())],
        &["flex-thin-for-rating", "connector-above-flex"],
    ),
    Published::new(
        "connector-rating",
        iec60320::CONNECTORS,
        || {
            let row = |sheet| Some(at_most(iec60320::rating(sheet)?).of(Given::Connector(sheet)));
            [5, 7, 13, 19].into_iter().filter_map(row).collect()
        },
        &["connector-above-flex"],
    ),
    Published::new(
        "lead-length",
        iet_code::LEAD_LENGTH,
        || {
            let row = |area| Some(at_most(iet_code::longest_lead(area)?).given(area));
            iet_code::lead_sizes().filter_map(row).collect()
        },
        &["flex-too-long"],
    ),
    Published::new(
        "print-gap",
        iec60227_1::MARK_REPEATS,
        || vec![at_most(iec60227_1::longest_gap())],
        &["flex-unmarked"],
    ),
    Published::new(
        "share-of-a-colour",
        iec60227_1::TWO_COLOURS,
        || {
            let (least, most) = iec60227_1::share_of_a_colour();
            vec![range(Range { at_least: Some(Value::Ratio(least)), at_most: Some(Value::Ratio(most)) })]
        },
        &["earth-colour-wrong"],
    ),
    Published::new(
        "sheath-thickness",
        iec60227_1::SHEATH,
        || cords(|sizes| Limit::AtLeast(iec60227_1::thinnest_sheath(sizes.sheath))),
        &["sheath-thin"],
    ),
    Published::new(
        "insulation-thickness",
        iec60227_1::INSULATION,
        || cords(|sizes| Limit::AtLeast(iec60227_1::thinnest_insulation(sizes.insulation))),
        &["insulation-thin"],
    ),
    Published::new(
        "flex-diameter",
        en50525::SIZES,
        || cords(|sizes| Limit::Between(sizes.diameter.0, sizes.diameter.1)),
        &["diameter-off", "overheats-at-claim"],
    ),
    Published::new(
        "core-resistance",
        iec60228::TABLE_3,
        || resistances(Coating::Coated, |most| most),
        &["core-resistance-high"],
    ),
    Published::new(
        "core-resistance-danger",
        practice::USUAL,
        || resistances(Coating::Coated, practice::dangerous_resistance),
        &["core-resistance-high"],
    ),
    Published::new(
        "earth-core-resistance",
        iec60228::TABLE_3,
        || resistances(Coating::Plain, |most| most),
        &["earth-resistance-high"],
    ),
    Published::new(
        "copper-needed",
        iec60228::TABLE_3,
        || {
            let row = |area| Some(at_least(class5_least_copper(area)?).given(area).known(Provenance::Derived));
            class5_sizes().filter_map(row).collect()
        },
        &["strand-area-short", "mass-below-copper-promised"],
    ),
    Published::new(
        "thickest-core",
        practice::USUAL,
        || vec![at_most(practice::thickest_core())],
        &["core-resistance-high"],
    ),
    Published::new(
        "volt-drop",
        bs7671_flex::VOLT_DROP,
        || vec![at_most(bs7671_flex::largest_drop())],
        &["volt-drop-high"],
    ),
    Published::new(
        "conductor-temperature",
        en50525::CONDUCTOR_TEMPERATURE,
        || vec![at_most(en50525::hottest_conductor())],
        &["overheats-at-claim", "runs-hot"],
    ),
    Published::new(
        "conductor-temperature-of-ratings",
        bs7671::TABLE_4F3A,
        || vec![at_most(bs7671_flex::conductor())],
        &["overheats-at-claim", "runs-hot"],
    ),
];

fn cords(of: impl Fn(Sizes) -> Limit<Length>) -> Vec<Cell> {
    let row =
        |(duty, cores, area)| Some(limit(of(en50525::sizes(duty, cores, area)?)).of(Given::Cord(duty, cores, area)));
    en50525::cords().filter_map(row).collect()
}

/// The rows of IEC 60228, of which 1.25 mm² is none: its values are recalled.
fn resistances(coating: Coating, most: impl Fn(ResistancePerLength) -> ResistancePerLength) -> Vec<Cell> {
    let row = |area: Area| {
        let cell = at_most(most(class5_maximum(area, coating)?)).given(area);
        Some(if area == square_millimetres(1.25) { cell.known(Provenance::MemoryMedium) } else { cell })
    };
    class5_sizes().filter_map(row).collect()
}
