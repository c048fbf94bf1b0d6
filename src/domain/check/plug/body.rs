//! The plug's body and the flex where it enters: whole, closed, unburnt, held.

use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::finding::Severity::Danger;
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_1};

/// Damage and gross faults of the plug's body and of the flex.
pub const PLUG_AND_FLEX: &Question = &Question::any(
    "plug-and-flex",
    Place::Plug,
    Equipment::Eyes,
    &["scorched", "broken", "opens-by-hand", "head-detaches", "cord-moves", "second-plug", "severed"],
);

/// **Finds** a plug with a hole, a crack or a piece broken off.
///
/// **Why it matters** fingers reach live parts through it.
///
/// **Source** BS 1363-1, clause 9 (read).
///
/// **Decision** by eye; an open fuse holder is another check.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, plug::body};
/// assert_eq!(by_code("body-broken").map(|check| check.asks), Some([body::PLUG_AND_FLEX].as_slice()));
/// ```
pub const BODY_BROKEN: &Check = &marked("body-broken", "broken", &[bs1363_1::TEST_PIN], 5);

/// **Finds** a plug that comes open without a tool.
///
/// **Why it matters** it opens in use, with the terminals live.
///
/// **Source** BS 1363-1, clause 9 (read).
///
/// **Decision** by hand, gently; the fuse holder and a rewirable plug's screwed cover are meant to come off.
pub const BODY_OPENS_BY_HAND: &Check = &marked("body-opens-by-hand", "opens-by-hand", &[bs1363_1::TEST_PIN], 4);

/// **Finds** brown, melted or blistered plastic.
///
/// **Why it matters** it ran hot once and will again: a bad contact burns.
///
/// **Source** common practice.
///
/// **Decision** by eye and nose.
pub const PLUG_SCORCHED: &Check = &marked("plug-scorched", "scorched", &[Clause::common_practice()], 2);

/// **Finds** a plug whose pins sit in a part that comes off the rest.
///
/// **Why it matters** the part stays in the wall socket, with live contacts bare.
///
/// **Source** BS 1363-1, clause 9 (read).
///
/// **Decision** by hand, gently.
pub const PLUG_HEAD_DETACHES: &Check = &marked("plug-head-detaches", "head-detaches", &[bs1363_1::TEST_PIN], 2);

/// **Finds** a flex that moves in or out of the plug, or turns in it.
///
/// **Why it matters** the earth core is pulled off its terminal and nobody notices.
///
/// **Source** BS 1363-1, cord anchorage (memory-medium).
///
/// **Decision** by a gentle pull and twist; the figures of the type test are no measure for a hand.
pub const CORD_GRIP_SLIPS: &Check = &marked("cord-grip-slips", "cord-moves", &[bs1363_1::CORD_ANCHORAGE], 10);

const fn marked(code: &'static str, answer: &'static str, against: &'static [Clause], percent: u8) -> Check {
    Check {
        code,
        place: Place::Plug,
        needs: Equipment::Eyes,
        severity: Danger,
        applies: always,
        judge: Judge::Marked(PLUG_AND_FLEX, answer, Danger),
        asks: &[PLUG_AND_FLEX],
        against,
        prospect: Prospect { minutes: 0.2, percent },
    }
}
