//! The fuse in the plug: there, of metal that melts, and covered.

use crate::domain::check::{Check, Judge, Prospect, Ruling};
use crate::domain::facts::has_uk_plug;
use crate::domain::finding::Severity::Danger;
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1362, bs1363_1};
use crate::domain::view::View;

/// What is in the fuse holder.
pub const IN_THE_HOLDER: &Question = &Question::one(
    "fuse-in-the-holder",
    Place::Plug,
    Equipment::Eyes,
    &[
        "marked-bs-1362",
        "other-marking",
        "unmarked",
        "glass",
        "bridged",
        "empty",
        "holder-broken",
        "no-holder",
        "under-the-cover",
    ],
)
.when(has_uk_plug);

const RULES: &[Clause] = &[bs1363_1::FUSE, bs1362::MARKING];

/// **Finds** a 13 A plug without a fuse link, or made without a place for one.
///
/// **Why it matters** the socket circuit behind it is protected at 30 A or 32 A: without its own fuse the flex burns first.
///
/// **Source** BS 1363-1 (read); every 13 A plug has a fuse (common practice).
///
/// **Decision** by eye; under a rewirable plug's cover nobody has looked yet.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, plug::fuse};
/// assert_eq!(by_code("fuse-missing").map(|check| check.place), Some(fuse::FUSE_MISSING.place));
/// ```
pub const FUSE_MISSING: &Check = &by_the_holder(
    "fuse-missing",
    15,
    &[
        ("marked-bs-1362", Ruling::Keeps),
        ("other-marking", Ruling::Keeps),
        ("unmarked", Ruling::Keeps),
        ("glass", Ruling::Keeps),
        ("bridged", Ruling::Breaks(Danger)),
        ("empty", Ruling::Breaks(Danger)),
        ("holder-broken", Ruling::CannotTell),
        ("no-holder", Ruling::Breaks(Danger)),
        ("under-the-cover", Ruling::NotLookedAt),
    ],
);

/// **Finds** foil, wire or a metal slug in place of a fuse link.
///
/// **Why it matters** nothing opens in a fault.
///
/// **Source** BS 1362 (read).
///
/// **Decision** by eye.
pub const FUSE_LINK_BRIDGED: &Check = &by_the_holder(
    "fuse-link-bridged",
    3,
    &[
        ("marked-bs-1362", Ruling::Keeps),
        ("other-marking", Ruling::Keeps),
        ("unmarked", Ruling::Keeps),
        ("glass", Ruling::Keeps),
        ("bridged", Ruling::Breaks(Danger)),
        ("empty", Ruling::DoesNotApply),
        ("holder-broken", Ruling::CannotTell),
        ("no-holder", Ruling::DoesNotApply),
        ("under-the-cover", Ruling::NotLookedAt),
    ],
);

/// **Finds** a fuse carrier that is absent or cracked, or a fuse clip left open.
///
/// **Why it matters** the fuse and its clips are live and can be touched.
///
/// **Source** BS 1363-1 (read).
///
/// **Decision** by eye.
pub const FUSE_CARRIER_MISSING: &Check = &by_the_holder(
    "fuse-carrier-missing",
    5,
    &[
        ("marked-bs-1362", Ruling::Keeps),
        ("other-marking", Ruling::Keeps),
        ("unmarked", Ruling::Keeps),
        ("glass", Ruling::Keeps),
        ("bridged", Ruling::Keeps),
        ("empty", Ruling::Keeps),
        ("holder-broken", Ruling::Breaks(Danger)),
        ("no-holder", Ruling::DoesNotApply),
        ("under-the-cover", Ruling::NotLookedAt),
    ],
);

const fn by_the_holder(code: &'static str, percent: u8, table: &'static [(&'static str, Ruling)]) -> Check {
    Check {
        code,
        place: Place::Plug,
        needs: Equipment::Eyes,
        severity: Danger,
        applies: has_uk_plug,
        judge: Judge::Answer(IN_THE_HOLDER, table),
        asks: &[IN_THE_HOLDER],
        against: RULES,
        prospect: Prospect { minutes: 0.3, percent },
    }
}

/// What is known of a fuse.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Presence {
    /// A fuse link was seen.
    There,
    /// It was seen that there is none.
    Absent,
    /// Nobody saw.
    Unknown,
}

/// Whether there is a fuse link.
pub fn presence(view: &View) -> Presence {
    match view.one(IN_THE_HOLDER) {
        Some("marked-bs-1362" | "other-marking" | "unmarked" | "glass") => Presence::There,
        Some("bridged" | "empty" | "no-holder") => Presence::Absent,
        _ => Presence::Unknown,
    }
}

/// Whether there is a fuse whose rating can be read, or may be.
pub fn may_be_there(view: &View) -> bool {
    let hidden = view.one(IN_THE_HOLDER) == Some("under-the-cover");
    has_uk_plug(view) && !hidden && presence(view) != Presence::Absent
}
