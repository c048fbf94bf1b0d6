//! A rewirable plug with its cover off: terminals, cord grip, strands.

use crate::domain::check::{Check, Judge, Prospect};
use crate::domain::facts::{PLUG_MAKE, has_uk_plug};
use crate::domain::finding::Severity::Danger;
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_1};
use crate::domain::view::View;

/// What is wrong under the cover.
pub const UNDER_THE_COVER: &Question = &Question::any(
    "under-the-cover",
    Place::Plug,
    Equipment::HandTools,
    &["wrong-terminal", "grip-on-cores", "stray-strand"],
)
.when(is_rewirable);

/// **Finds** a core at the wrong terminal of a rewirable plug, or one that no terminal holds.
///
/// **Why it matters** metal of the appliance is live, or without earth.
///
/// **Source** BS 1363-1, 7.1: terminals are marked (read); brown to L, blue to N, green-and-yellow to E is the practice of the trade.
///
/// **Decision** by eye with the cover off.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, plug::rewirable};
/// assert_eq!(by_code("plug-wired-wrong").map(|check| check.severity), Some(rewirable::PLUG_WIRED_WRONG.severity));
/// ```
pub const PLUG_WIRED_WRONG: &Check =
    &opened("plug-wired-wrong", "wrong-terminal", &[bs1363_1::MARKING, Clause::common_practice()], 10);

/// **Finds** a cord grip that holds the cores and not the sheath, or nothing.
///
/// **Why it matters** a pull tears the cores off their terminals.
///
/// **Source** BS 1363-1, cord anchorage (memory-medium).
///
/// **Decision** by eye with the cover off.
pub const CORD_GRIP_ON_CORES: &Check = &opened("cord-grip-on-cores", "grip-on-cores", &[bs1363_1::CORD_ANCHORAGE], 15);

/// **Finds** a strand of a core outside its terminal.
///
/// **Why it matters** it touches another terminal, the earth or a finger.
///
/// **Source** common practice.
///
/// **Decision** by eye with the cover off.
pub const STRAND_OUTSIDE_TERMINAL: &Check =
    &opened("strand-outside-terminal", "stray-strand", &[Clause::common_practice()], 15);

const fn opened(code: &'static str, answer: &'static str, against: &'static [Clause], percent: u8) -> Check {
    Check {
        code,
        place: Place::Plug,
        needs: Equipment::HandTools,
        severity: Danger,
        applies: may_be_rewirable,
        judge: Judge::Marked(UNDER_THE_COVER, answer, Danger),
        asks: &[UNDER_THE_COVER, PLUG_MAKE],
        against,
        prospect: Prospect { minutes: 1.5, percent },
    }
}

fn is_rewirable(view: &View) -> bool {
    has_uk_plug(view) && view.one(PLUG_MAKE) == Some("rewirable")
}

/// Whether the plug has a cover that comes off, or may have.
fn may_be_rewirable(view: &View) -> bool {
    has_uk_plug(view) && view.one(PLUG_MAKE) != Some("moulded")
}
