//! The wires inside the body: how thick, which colour, and what the switch opens.

use super::opening::{OPENED, has_an_inside, is_open};
use crate::domain::check::readings::trust::{Table, Trust, by_tester, unplugged};
use crate::domain::check::{Check, Judge, Prospect, Ruling, on_leads};
use crate::domain::facts;
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_1, bs7671_shock};
use crate::domain::view::View;

/// How the sockets are fed inside, copper against copper of the flex.
pub const WIRES_INSIDE: &Question = &Question::one(
    "wires-inside",
    Place::Inside,
    Equipment::Meters,
    &["metal-bars", "as-thick-as-the-flex", "thinner-than-the-flex"],
)
.when(is_open);

/// The colours of the wires inside, by what they carry.
pub const COLOURS_INSIDE: &Question = &Question::one(
    "colours-inside",
    Place::Inside,
    Equipment::Meters,
    &["right-or-bars", "other-colours", "green-and-yellow-is-live"],
)
.when(is_open);

/// What the switch opens, by a tester, dead.
pub const SWITCH_OPENS: &Question =
    &Question::one("switch-opens", Place::Inside, Equipment::Meters, &["line", "both", "neutral", "neither"])
        .when(|view| unplugged(view) && may_have_switch(view));

/// **Finds** wires between flex and sockets that are thinner than the flex.
///
/// **Why it matters** they carry the same current behind the same fuse, in a closed body.
///
/// **Source** BS 1363-1 Table 2 (read): a cross-section for a current; it holds inside as well.
///
/// **Decision** by eye, bare copper beside bare copper: insulation may be thick around a hair.
pub const INTERNAL_WIRE_THIN: &Check = &Check {
    code: "internal-wire-thin",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Danger,
    applies: has_an_inside,
    judge: Judge::Answer(
        WIRES_INSIDE,
        &[
            ("metal-bars", Ruling::Keeps),
            ("as-thick-as-the-flex", Ruling::Keeps),
            ("thinner-than-the-flex", Ruling::Breaks(Danger)),
        ],
    ),
    asks: &[WIRES_INSIDE, OPENED],
    against: &[bs1363_1::TABLE_2],
    prospect: Prospect { minutes: 1.0, percent: 15 },
};

/// **Finds** wires inside whose colours do not say what they carry.
///
/// **Why it matters** whoever mends the lead trusts them.
///
/// **Source** common practice: line brown, neutral blue, earth green-and-yellow, and green-and-yellow for nothing else.
///
/// **Decision** by eye; a danger where green-and-yellow carries line or neutral.
pub const INTERNAL_COLOUR_WRONG: &Check = &Check {
    code: "internal-colour-wrong",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Danger,
    applies: has_an_inside,
    judge: Judge::Answer(
        COLOURS_INSIDE,
        &[
            ("right-or-bars", Ruling::Keeps),
            ("other-colours", Ruling::Breaks(Breach)),
            ("green-and-yellow-is-live", Ruling::Breaks(Danger)),
        ],
    ),
    asks: &[COLOURS_INSIDE, OPENED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.5, percent: 10 },
};

/// **Finds** a switch that leaves line joined to the sockets when it is off.
///
/// **Why it matters** what is plugged in looks off, and is live.
///
/// **Source** BS 7671, 132.14.1 (memory-high): a single-pole switch is in the line; common practice for leads.
///
/// **Decision** by a tester, dead, with the switch off. A silent pole counts only where it beeps with the switch on.
pub const SWITCH_IN_NEUTRAL: &Check = &Check {
    code: "switch-in-neutral",
    place: Place::Inside,
    needs: Equipment::Meters,
    severity: Danger,
    applies: may_have_switch,
    judge: Judge::Reckoned(|view| by_tester(view, SWITCH_OPENS, Danger, OPENS)),
    asks: &[SWITCH_OPENS, facts::READINGS_PREPARED, facts::EXTRAS],
    against: &[bs7671_shock::SWITCH_IN_LINE, Clause::common_practice()],
    prospect: Prospect { minutes: 1.0, percent: 10 },
};

const OPENS: &Table = &[
    ("line", Ruling::Keeps, Trust::PolesClosed),
    ("both", Ruling::Keeps, Trust::PolesClosed),
    ("neutral", Ruling::Breaks(Danger), Trust::Loose),
    ("neither", Ruling::Breaks(Danger), Trust::Loose),
];

fn may_have_switch(view: &View) -> bool {
    on_leads(view) && facts::may_have(view, "switch")
}
