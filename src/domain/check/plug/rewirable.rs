//! A rewirable plug with its cover off.

use crate::domain::check::{Check, Judge, Prospect};
use crate::domain::facts::{PLUG_MAKE, has_uk_plug};
use crate::domain::finding::Judgement;
use crate::domain::finding::Severity::Danger;
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_1};
use crate::domain::view::View;

/// What is wrong under the cover.
pub const OPENED_PLUG: &Question = &Question::any(
    "opened-plug",
    Place::Plug,
    Equipment::HandTools,
    &["cores-swapped", "core-off", "earth-core-absent", "grip-on-cores", "stray-strands", "no-letters"],
)
.when(is_rewirable);

/// **Finds** a core at the wrong terminal, at none, or no earth core at all.
///
/// **Why it matters** metal that should be earthed is live, or the fuse sits in neutral.
///
/// **Source** BS 1363-1, symbols of the terminals (read).
///
/// **Decision** by eye, cover off.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, plug::rewirable};
/// assert_eq!(by_code("plug-wired-wrong").map(|check| check.needs), Some(rewirable::OPENED_PLUG.needs));
/// ```
pub const PLUG_WIRED_WRONG: &Check = &Check {
    code: "plug-wired-wrong",
    place: Place::Plug,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: may_be_rewirable,
    judge: Judge::Reckoned(wired_wrong),
    asks: &[OPENED_PLUG],
    against: &[bs1363_1::MARKING],
    prospect: Prospect { minutes: 1.0, percent: 10 },
};

/// **Finds** the grip on the cores, not on the sheath around them.
///
/// **Why it matters** a pull tears the cores off, and the grip cuts their insulation.
///
/// **Source** BS 1363-1, cord anchorage (memory-medium).
///
/// **Decision** by eye, cover off.
pub const CORD_GRIP_ON_CORES: &Check = &marked("cord-grip-on-cores", "grip-on-cores", &[bs1363_1::CORD_ANCHORAGE], 15);

/// **Finds** a strand that sticks out of a terminal.
///
/// **Why it matters** it may touch another terminal or the fuse.
///
/// **Source** common practice.
///
/// **Decision** by eye, cover off.
pub const STRAND_OUTSIDE_TERMINAL: &Check =
    &marked("strand-outside-terminal", "stray-strands", &[Clause::common_practice()], 10);

const fn marked(code: &'static str, answer: &'static str, against: &'static [Clause], percent: u8) -> Check {
    Check {
        code,
        place: Place::Plug,
        needs: Equipment::HandTools,
        severity: Danger,
        applies: may_be_rewirable,
        judge: Judge::Marked(OPENED_PLUG, answer, Danger),
        asks: &[OPENED_PLUG],
        against,
        prospect: Prospect { minutes: 1.0, percent },
    }
}

fn is_rewirable(view: &View) -> bool {
    has_uk_plug(view) && view.one(PLUG_MAKE) == Some("rewirable")
}

/// Whether the plug is, or may be, a rewirable one.
fn may_be_rewirable(view: &View) -> bool {
    has_uk_plug(view) && view.one(PLUG_MAKE) != Some("moulded")
}

fn wired_wrong(view: &View) -> Judgement {
    let faults = ["cores-swapped", "core-off", "earth-core-absent"];
    let judged = faults.map(|fault| Judgement::by_mark(view, OPENED_PLUG, fault, Danger, Danger));
    Judgement::worst(judged.into(), Danger)
}
