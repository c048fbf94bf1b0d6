//! What one look into the open body shows: burns, bruises, loose bits.

use super::opening::{OPENED, has_an_inside, is_open};
use crate::domain::check::{Check, Judge, Prospect};
use crate::domain::finding::Severity::{BadSign, Breach, Danger};
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::Clause;

/// What is wrong at first sight.
pub const SEEN_INSIDE: &Question = &Question::any(
    "seen-inside",
    Place::Inside,
    Equipment::Meters,
    &["scorched", "stray-conductor", "melted", "nicked", "foreign-matter"],
)
.when(is_open);

/// **Finds** black, brown or charred spots inside.
///
/// **Why it matters** something ran hot enough to burn already, and will again.
///
/// **Source** common practice.
///
/// **Decision** by eye.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, inside::damage};
/// assert_eq!(by_code("scorched-inside").map(|check| check.place), Some(damage::SCORCHED_INSIDE.place));
/// ```
pub const SCORCHED_INSIDE: &Check = &Check {
    code: "scorched-inside",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Danger,
    applies: has_an_inside,
    judge: Judge::Marked(SEEN_INSIDE, "scorched", Danger),
    asks: &[SEEN_INSIDE, OPENED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 4 },
};

/// **Finds** a loose wire, a whisker of a strand or a bit of metal that can move to another pole.
///
/// **Why it matters** one knock, and line touches earth or neutral.
///
/// **Source** common practice.
///
/// **Decision** by eye, with a gentle tug at each wire.
pub const CONDUCTOR_CAN_STRAY: &Check = &Check {
    code: "conductor-can-stray",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Danger,
    applies: has_an_inside,
    judge: Judge::Marked(SEEN_INSIDE, "stray-conductor", Danger),
    asks: &[SEEN_INSIDE, OPENED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 20 },
};

/// **Finds** insulation that melted, from soldering or from use.
///
/// **Why it matters** what is left may be too thin, and says that a joint ran hot.
///
/// **Source** common practice.
///
/// **Decision** by eye.
pub const INSULATION_MELTED: &Check = &Check {
    code: "insulation-melted",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Breach,
    applies: has_an_inside,
    judge: Judge::Marked(SEEN_INSIDE, "melted", Breach),
    asks: &[SEEN_INSIDE, OPENED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 15 },
};

/// **Finds** insulation that is cut, pinched or scraped.
///
/// **Why it matters** copper shows, or will.
///
/// **Source** common practice.
///
/// **Decision** by eye.
pub const INSULATION_NICKED: &Check = &Check {
    code: "insulation-nicked",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Breach,
    applies: has_an_inside,
    judge: Judge::Marked(SEEN_INSIDE, "nicked", Breach),
    asks: &[SEEN_INSIDE, OPENED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 15 },
};

/// **Finds** solder balls, swarf, dirt or anything else that does not belong there.
///
/// **Why it matters** it tells of careless work; loose metal is counted as a conductor that can stray.
///
/// **Source** common practice.
///
/// **Decision** by eye.
pub const FOREIGN_MATTER: &Check = &Check {
    code: "foreign-matter",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: BadSign,
    applies: has_an_inside,
    judge: Judge::Marked(SEEN_INSIDE, "foreign-matter", BadSign),
    asks: &[SEEN_INSIDE, OPENED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 15 },
};
