//! How conductors are joined: the earth first, then how well.

use super::opening::{OPENED, has_an_inside, is_open};
use crate::domain::check::{Check, Judge, Prospect, Ruling};
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::Clause;

/// What the green-and-yellow core is joined to.
pub const EARTH_JOINED_TO: &Question = &Question::one(
    "earth-joined-to",
    Place::Inside,
    Equipment::Meters,
    &["every-socket", "some-sockets", "nothing", "no-earth-core"],
)
.when(is_open);

/// How the joints are made.
pub const JOINTS: &Question = &Question::any(
    "joints",
    Place::Inside,
    Equipment::Meters,
    &["solder-alone", "terminal-unsupported", "contact-flimsy"],
)
.when(is_open);

/// **Finds** an earth core that is not joined to the earth contact of every socket.
///
/// **Why it matters** the socket looks earthed and is not.
///
/// **Source** common practice.
///
/// **Decision** by eye; the reading of the earth path is a check of its own.
pub const EARTH_NOT_CONNECTED: &Check = &Check {
    code: "earth-not-connected",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Danger,
    applies: has_an_inside,
    judge: Judge::Answer(
        EARTH_JOINED_TO,
        &[
            ("every-socket", Ruling::Keeps),
            ("some-sockets", Ruling::Breaks(Danger)),
            ("nothing", Ruling::Breaks(Danger)),
            ("no-earth-core", Ruling::Breaks(Danger)),
        ],
    ),
    asks: &[EARTH_JOINED_TO, OPENED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 12 },
};

/// **Finds** a wire held by solder and by nothing else.
///
/// **Why it matters** solder creeps and breaks; in a fault it melts and lets go.
///
/// **Source** common practice: a soldered wire is hooked, crimped or clamped first.
///
/// **Decision** by eye.
pub const JOINT_BY_SOLDER_ALONE: &Check = &Check {
    code: "joint-by-solder-alone",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Breach,
    applies: has_an_inside,
    judge: Judge::Marked(JOINTS, "solder-alone", Breach),
    asks: &[JOINTS, OPENED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 35 },
};

/// **Finds** a terminal or contact that nothing holds in its place.
///
/// **Why it matters** each plugging in pushes it a little further.
///
/// **Source** common practice.
///
/// **Decision** by eye and a push with an insulated tool.
pub const TERMINAL_UNSUPPORTED: &Check = &Check {
    code: "terminal-unsupported",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Breach,
    applies: has_an_inside,
    judge: Judge::Marked(JOINTS, "terminal-unsupported", Breach),
    asks: &[JOINTS, OPENED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 15 },
};

/// **Finds** socket contacts of metal so thin or soft that they hold no pin firmly.
///
/// **Why it matters** a contact that grips loosely runs hot.
///
/// **Source** common practice.
///
/// **Decision** by eye and hand: they bend with a fingertip, or stay bent.
pub const CONTACT_FLIMSY: &Check = &Check {
    code: "contact-flimsy",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Breach,
    applies: has_an_inside,
    judge: Judge::Marked(JOINTS, "contact-flimsy", Breach),
    asks: &[JOINTS, OPENED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 25 },
};
