//! The connector of a cord set: its pattern, what it carries, and its earth.

use crate::domain::check::cable::size::on_a_cord_set;
use crate::domain::check::{Check, Judge, Prospect, Ruling, on_cord_sets};
use crate::domain::facts::{FLEX_LENGTH, FLEX_PRINT};
use crate::domain::finding::Judgement;
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::marking::FlexPrint;
use crate::domain::quantity::ElectricCurrent;
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Kind, Place};
use crate::domain::standard::{Clause, iec60320, iec60799};
use crate::domain::view::View;

/// Which connector is at the other end, by the name of its sheet in IEC 60320.
pub const PATTERN: &Question = &Question::one(
    "connector-pattern",
    Place::Sockets,
    Equipment::Eyes,
    &["c13", "c5", "c19", "two-holes", "other", "free-ends"],
)
.when(on_cord_sets);

/// Whether there is a path from the connector's earth contact to the plug's earth pin.
pub const EARTH_PATH: &Question =
    &Question::one("connector-earth", Place::Sockets, Equipment::HandTools, &["path", "comes-and-goes", "no-path"])
        .when(has_earthed_connector);

/// **Finds** a connector made for more current than the flex says it carries.
///
/// **Why it matters** the appliance draws what the connector lets it draw.
///
/// **Source** IEC 60799 (memory-medium), IEC 60320-1 (read).
///
/// **Decision** by print against the size for the connector's current, a smaller one up to 2 m; a danger under 0.5 mm² or where
/// 1.3 times the rise reaches 70 °C at that current, lying straight (`physics::heating`).
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, sockets::connector};
/// assert_eq!(by_code("connector-above-flex").map(|check| check.place), Some(connector::CONNECTOR_ABOVE_FLEX.place));
/// ```
pub const CONNECTOR_ABOVE_FLEX: &Check = &Check {
    code: "connector-above-flex",
    place: Place::Cable,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: has_connector,
    judge: Judge::Reckoned(|view| above_flex(view, view.flex())),
    asks: &[PATTERN, FLEX_PRINT, FLEX_LENGTH],
    against: &[iec60799::LEAST_AREA, iec60320::CONNECTORS],
    prospect: Prospect { minutes: 0.5, percent: 20 },
};

/// **Finds** a 16 A connector on a 13 A plug.
///
/// **Why it matters** an appliance for 16 A overloads plug and fuse.
///
/// **Source** IEC 60799, 5.2.2 (read).
///
/// **Decision** by eye.
pub const CONNECTOR_ABOVE_PLUG: &Check = &Check {
    code: "connector-above-plug",
    place: Place::Sockets,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: has_connector,
    judge: Judge::Answer(
        PATTERN,
        &[
            ("c13", Ruling::Keeps),
            ("c5", Ruling::Keeps),
            ("c19", Ruling::Breaks(Breach)),
            ("two-holes", Ruling::Keeps),
            ("other", Ruling::CannotTell),
            ("free-ends", Ruling::DoesNotApply),
        ],
    ),
    asks: &[PATTERN],
    against: &[iec60799::PLUG_AND_CONNECTOR],
    prospect: Prospect { minutes: 0.1, percent: 2 },
};

/// **Finds** no path, or none that stays, from the connector's earth contact to the plug's earth pin.
///
/// **Why it matters** the appliance's metal is live after its first fault.
///
/// **Source** a fact of the trade.
///
/// **Decision** by any continuity tester while the flex is bent at both ends. A path is no proof of enough copper: its resistance is
/// another check.
pub const CONNECTOR_EARTH_OPEN: &Check = &Check {
    code: "connector-earth-open",
    place: Place::Sockets,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: has_earthed_connector,
    judge: Judge::Answer(
        EARTH_PATH,
        &[("path", Ruling::Keeps), ("comes-and-goes", Ruling::Breaks(Danger)), ("no-path", Ruling::Breaks(Danger))],
    ),
    asks: &[EARTH_PATH],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 1.0, percent: 12 },
};

/// Whether a cord set has, or may have, a connector and not free ends.
pub fn has_connector(view: &View) -> bool {
    view.kind() == Kind::CordSet && view.one(PATTERN) != Some("free-ends")
}

/// Whether a cord set has, or may have, a connector with an earth contact.
pub fn has_earthed_connector(view: &View) -> bool {
    has_connector(view) && !has_no_earth_by_design(view)
}

/// Whether the connector is of a pattern for appliances that take no earth. It is the connector that says so, not a mark.
pub fn has_no_earth_by_design(view: &View) -> bool {
    view.kind() == Kind::CordSet && view.one(PATTERN) == Some("two-holes")
}

/// The current that the connector's pattern carries.
pub fn rating(view: &View) -> Option<ElectricCurrent> {
    match view.one(PATTERN)? {
        "c13" => iec60320::rating(13),
        "c5" => iec60320::rating(5),
        "c19" => iec60320::rating(19),
        "two-holes" => iec60320::rating(7),
        _ => None,
    }
}

/// Whether the stated cross-section carries what the connector does.
pub fn above_flex(view: &View, print: Option<&FlexPrint>) -> Judgement {
    on_a_cord_set(view, print, rating(view))
}
