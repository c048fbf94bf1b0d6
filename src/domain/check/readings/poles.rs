//! Line and neutral from the plug to every socket: the right way round, all the way through, and through the fuse.

use super::trust::{Table, Trust, by_tester, unplugged};
use crate::domain::check::{Check, Judge, Prospect, Ruling, always};
use crate::domain::facts;
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::question::{Per, Question};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_1};

/// Where line and neutral of the plug beep at a socket: line to the right-hand hole, neutral to the left-hand one, earth hole up.
pub const POLE_PATH: &Question = &Question::one(
    "pole-path",
    Place::Readings,
    Equipment::HandTools,
    &["both-beep", "crossed", "line-silent", "neutral-silent", "both-silent"],
)
.per(Per::Socket)
.when(unplugged);

/// Which pin still beeps through to a socket with the fuse taken out.
pub const FUSE_OUT: &Question = &Question::one(
    "fuse-taken-out",
    Place::Readings,
    Equipment::HandTools,
    &["only-neutral-beeps", "line-still-beeps", "neither-beeps"],
)
.when(|view| unplugged(view) && facts::has_uk_plug(view));

/// **Finds** a socket whose line contact is joined to the plug's neutral pin.
///
/// **Why it matters** fuse and switch then open the neutral: what is plugged in stays live when it is off.
///
/// **Source** BS 1363 (common practice): facing the socket, earth up, line is on the right.
///
/// **Decision** each socket, by a tester. A path that is heard counts whatever the switches are set to.
pub const POLARITY_REVERSED: &Check = &Check {
    code: "polarity-reversed",
    place: Place::Readings,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(|view| by_tester(view, POLE_PATH, Danger, POLARITY)),
    asks: &[POLE_PATH, facts::READINGS_PREPARED, facts::SOCKET_COUNT],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 1.0, percent: 8 },
};

const POLARITY: &Table = &[
    ("both-beep", Ruling::Keeps, Trust::Loose),
    ("crossed", Ruling::Breaks(Danger), Trust::Loose),
    ("line-silent", Ruling::Keeps, Trust::Loose),
    ("neutral-silent", Ruling::Keeps, Trust::Loose),
    ("both-silent", Ruling::CannotTell, Trust::Loose),
];

/// **Finds** a socket whose line contact has no path to the plug's line pin.
///
/// **Why it matters** the socket is dead, and a joint that failed may be loose and hot.
///
/// **Source** common practice.
///
/// **Decision** each socket, by a tester. Silence counts only with every switch on, the fuse known good, and nothing in the lead that
/// opens its poles while it is dead.
pub const LINE_OPEN: &Check = &Check {
    code: "line-open",
    place: Place::Readings,
    needs: Equipment::HandTools,
    severity: Breach,
    applies: always,
    judge: Judge::Reckoned(|view| by_tester(view, POLE_PATH, Breach, LINE)),
    asks: &[POLE_PATH, facts::READINGS_PREPARED, facts::EXTRAS, facts::SOCKET_COUNT],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 1.0, percent: 5 },
};

const LINE: &Table = &[
    ("both-beep", Ruling::Keeps, Trust::Loose),
    ("crossed", Ruling::Keeps, Trust::Loose),
    ("line-silent", Ruling::Breaks(Breach), Trust::PolesClosed),
    ("neutral-silent", Ruling::Keeps, Trust::Loose),
    ("both-silent", Ruling::Breaks(Breach), Trust::PolesClosed),
];

/// **Finds** a socket whose neutral contact has no path to the plug's neutral pin.
///
/// **Why it matters** what is plugged in does not work, looks dead, and is live inside.
///
/// **Source** common practice.
///
/// **Decision** as for an open line.
pub const NEUTRAL_OPEN: &Check = &Check {
    code: "neutral-open",
    place: Place::Readings,
    needs: Equipment::HandTools,
    severity: Breach,
    applies: always,
    judge: Judge::Reckoned(|view| by_tester(view, POLE_PATH, Breach, NEUTRAL)),
    asks: &[POLE_PATH, facts::READINGS_PREPARED, facts::EXTRAS, facts::SOCKET_COUNT],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 1.0, percent: 4 },
};

const NEUTRAL: &Table = &[
    ("both-beep", Ruling::Keeps, Trust::Loose),
    ("crossed", Ruling::Keeps, Trust::Loose),
    ("line-silent", Ruling::Keeps, Trust::Loose),
    ("neutral-silent", Ruling::Breaks(Breach), Trust::PolesClosed),
    ("both-silent", Ruling::Breaks(Breach), Trust::PolesClosed),
];

/// **Finds** a fuse that is not in the line: with the fuse out, line still reaches a socket.
///
/// **Why it matters** the fuse protects nothing, or leaves line live when it opens.
///
/// **Source** BS 1363-1 (read): the fuse is in the line pole.
///
/// **Decision** by a tester, fuse out. A silent line counts only where it beeps with the fuse in.
pub const FUSE_NOT_IN_LINE: &Check = &Check {
    code: "fuse-not-in-line",
    place: Place::Readings,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: facts::has_uk_plug,
    judge: Judge::Reckoned(|view| by_tester(view, FUSE_OUT, Danger, FUSED)),
    asks: &[FUSE_OUT, facts::READINGS_PREPARED, POLE_PATH],
    against: &[bs1363_1::FUSE],
    prospect: Prospect { minutes: 1.0, percent: 5 },
};

const FUSED: &Table = &[
    ("only-neutral-beeps", Ruling::Keeps, Trust::PolesClosed),
    ("line-still-beeps", Ruling::Breaks(Danger), Trust::Loose),
    ("neither-beeps", Ruling::CannotTell, Trust::Loose),
];
