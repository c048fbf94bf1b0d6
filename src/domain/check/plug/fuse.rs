//! The fuse in the plug: that there is one, whole, and its holder closed.

use crate::domain::check::{Check, Judge, Prospect, Ruling};
use crate::domain::examination::Answer;
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

/// What a fuse without any print says of its amperes.
const NOT_PRINTED: &Answer = &Answer::One("not-printed");

/// **Finds** a 13 A plug without a fuse link, or made without a place for one.
///
/// **Why it matters** the socket circuit behind it is protected at 30 A or 32 A: without its own fuse the flex burns first.
///
/// **Source** BS 1363-1 (read); every 13 A plug has a fuse (common practice).
///
/// **Decision** by eye; under the cover of a plug that nobody opened it was not looked at.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, plug::fuse};
/// assert_eq!(by_code("fuse-missing").map(|check| check.place), Some(fuse::FUSE_MISSING.place));
/// ```
pub const FUSE_MISSING: &Check = &Check {
    code: "fuse-missing",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Answer(
        IN_THE_HOLDER,
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
    ),
    asks: &[IN_THE_HOLDER],
    against: RULES,
    prospect: Prospect { minutes: 0.3, percent: 15 },
};

/// **Finds** foil, wire or a metal slug in place of a fuse link.
///
/// **Why it matters** nothing opens in a fault.
///
/// **Source** BS 1362 (read).
///
/// **Decision** by eye.
pub const FUSE_LINK_BRIDGED: &Check = &Check {
    code: "fuse-link-bridged",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Answer(
        IN_THE_HOLDER,
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
    ),
    asks: &[IN_THE_HOLDER],
    against: RULES,
    prospect: Prospect { minutes: 0.3, percent: 3 },
};

/// **Finds** a fuse carrier that is absent or cracked, or a fuse clip left open.
///
/// **Why it matters** the fuse and its clips are live and can be touched.
///
/// **Source** BS 1363-1 (read).
///
/// **Decision** by eye; a fuse under the cover needs no carrier that a hand can reach.
pub const FUSE_CARRIER_MISSING: &Check = &Check {
    code: "fuse-carrier-missing",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Answer(
        IN_THE_HOLDER,
        &[
            ("marked-bs-1362", Ruling::Keeps),
            ("other-marking", Ruling::Keeps),
            ("unmarked", Ruling::Keeps),
            ("glass", Ruling::Keeps),
            ("bridged", Ruling::Keeps),
            ("empty", Ruling::Keeps),
            ("holder-broken", Ruling::Breaks(Danger)),
            ("no-holder", Ruling::DoesNotApply),
            ("under-the-cover", Ruling::Keeps),
        ],
    ),
    asks: &[IN_THE_HOLDER],
    against: RULES,
    prospect: Prospect { minutes: 0.2, percent: 5 },
};

/// Whether there is, or may be, a fuse link.
pub fn may_be_there(view: &View) -> bool {
    has_uk_plug(view) && !matches!(view.one(IN_THE_HOLDER), Some("bridged" | "empty" | "no-holder"))
}

/// Whether there is, or may be, a fuse link that can be looked at.
pub fn may_be_seen(view: &View) -> bool {
    may_be_there(view) && view.one(IN_THE_HOLDER) != Some("under-the-cover")
}

/// The amperes of a fuse that bears no print at all: nobody need be asked for them.
pub fn without_print(view: &View) -> Option<&'static Answer> {
    (view.one(IN_THE_HOLDER) == Some("unmarked")).then_some(NOT_PRINTED)
}
