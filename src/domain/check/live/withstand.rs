//! What holds or trips under voltage: the insulation, and the RCD that is built in.

use super::competence::{LIVE_COMPETENT, may_energise};
use crate::domain::check::inside::parts;
use crate::domain::check::{Check, Judge, Prospect, Ruling, on_leads};
use crate::domain::facts;
use crate::domain::finding::Severity::Danger;
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, iec61008};
use crate::domain::view::View;

/// What a withstand test at 1250 V between earth and both poles did.
pub const WITHSTAND: &Question = &Question::one(
    "withstand",
    Place::Live,
    Equipment::Meters,
    &["held-1250-v", "held-less", "broke-down", "broke-down-above-1250-v"],
)
.when(|view| may_energise(view) && surely_takes_high_voltage(view));

/// What the built-in RCD does.
pub const RCD_TRIPS: &Question = &Question::one(
    "rcd-trips",
    Place::Live,
    Equipment::Meters,
    &["in-time", "late", "not-at-all", "only-the-button-tried"],
)
.when(|view| may_energise(view) && may_have_rcd(view));

/// **Finds** insulation that breaks down under high voltage.
///
/// **Why it matters** mains carries surges of more than a thousand volts every day.
///
/// **Source** common practice: portable-appliance testers apply 1250 V between earth and both poles of a class I sample. The IET Code of
/// Practice names 1500 V (read); holding that is not asked for here.
///
/// **Decision** a break at 1250 V or less. Never on leads with surge parts, USB or electronics: the test destroys them.
pub const WITHSTAND_BROKE_DOWN: &Check = &Check {
    code: "withstand-broke-down",
    place: Place::Live,
    needs: Equipment::Meters,
    severity: Danger,
    applies: takes_high_voltage,
    judge: Judge::Answer(
        WITHSTAND,
        &[
            ("held-1250-v", Ruling::Keeps),
            ("held-less", Ruling::CannotTell),
            ("broke-down", Ruling::Breaks(Danger)),
            ("broke-down-above-1250-v", Ruling::CannotTell),
        ],
    ),
    asks: &[WITHSTAND, LIVE_COMPETENT, facts::EXTRAS, facts::PROMISES],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 3.0, percent: 3 },
};

/// What high voltage destroys.
const DELICATE: [&str; 4] = ["usb", "timer", "rcd", "electronics"];

fn takes_high_voltage(view: &View) -> bool {
    let is_delicate = on_leads(view) && DELICATE.into_iter().any(|extra| facts::has(view, extra));
    !is_delicate && !parts::has_surge_part(view)
}

/// The question is asked only where nothing delicate can be overlooked.
fn surely_takes_high_voltage(view: &View) -> bool {
    let nothing_delicate = DELICATE.into_iter().all(|extra| !facts::may_have(view, extra));
    let no_surge_part = view.marked(facts::PROMISES, "surge") == Some(false);
    takes_high_voltage(view) && (!on_leads(view) || (nothing_delicate && no_surge_part))
}

/// **Finds** a built-in RCD that does not trip, or trips late.
///
/// **Why it matters** the lead is bought for it.
///
/// **Source** IEC 61008-1 (memory-high): 300 ms at 30 mA, 40 ms at 150 mA.
///
/// **Decision** by an RCD tester. The test button alone proves the mechanism, not the time.
pub const RCD_FAILS: &Check = &Check {
    code: "rcd-fails",
    place: Place::Live,
    needs: Equipment::Meters,
    severity: Danger,
    applies: may_have_rcd,
    judge: Judge::Answer(
        RCD_TRIPS,
        &[
            ("in-time", Ruling::Keeps),
            ("late", Ruling::Breaks(Danger)),
            ("not-at-all", Ruling::Breaks(Danger)),
            ("only-the-button-tried", Ruling::CannotTell),
        ],
    ),
    asks: &[RCD_TRIPS, LIVE_COMPETENT, facts::EXTRAS],
    against: &[iec61008::TRIP_TIME],
    prospect: Prospect { minutes: 2.0, percent: 8 },
};

fn may_have_rcd(view: &View) -> bool {
    on_leads(view) && facts::may_have(view, "rcd")
}
