//! The plastic sleeves on line and neutral, and none on earth.

use super::pins::PINS_AND_SLEEVES;
use crate::domain::check::sockets::connector::has_no_earth_by_design;
use crate::domain::check::{Check, Judge, Prospect};
use crate::domain::facts::has_uk_plug;
use crate::domain::finding::Severity::{BadSign, Breach, Danger};
use crate::domain::finding::{Judgement, Severity};
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_1, law_gb};
use crate::domain::view::View;

/// Whether a plug without sleeves is sold as new, or comes from before sleeves were the rule.
pub const SOLD_AS: &Question =
    &Question::one("sold-as", Place::Plug, Equipment::Eyes, &["new", "old-stock"]).when(has_bare_pins);

const RULES: &[Clause] = &[bs1363_1::SLEEVES, law_gb::PLUGS];

/// **Finds** line or neutral pins without a plastic sleeve.
///
/// **Why it matters** half pulled out, a bare pin is live and a finger reaches it.
///
/// **Source** BS 1363-1 since 1984, law since 1987 and not backwards (read).
///
/// **Decision** by eye: a danger on goods sold as new, a bad sign with advice on old stock. Where nobody says which, new.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, plug::sleeves};
/// assert_eq!(by_code("sleeve-missing").map(|check| check.against), Some(sleeves::SLEEVE_MISSING.against));
/// ```
pub const SLEEVE_MISSING: &Check = &Check {
    code: "sleeve-missing",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Reckoned(|view| {
        Judgement::by_mark(view, PINS_AND_SLEEVES, "no-sleeves", missing_matters(view), Danger)
    }),
    asks: &[PINS_AND_SLEEVES, SOLD_AS],
    against: RULES,
    prospect: Prospect { minutes: 0.1, percent: 20 },
};

/// **Finds** a sleeve that is cut, cracked, melted or loose.
///
/// **Why it matters** metal shows where fingers are.
///
/// **Source** BS 1363-1 (read).
///
/// **Decision** by eye.
pub const SLEEVE_DAMAGED: &Check = &Check {
    code: "sleeve-damaged",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Marked(PINS_AND_SLEEVES, "sleeve-damaged", Danger),
    asks: &[PINS_AND_SLEEVES],
    against: RULES,
    prospect: Prospect { minutes: 0.1, percent: 5 },
};

/// **Finds** a sleeve on the earth pin.
///
/// **Why it matters** the sleeve keeps the earth pin off its contact; a known sign of a fake.
///
/// **Source** BS 1363-1 (read).
///
/// **Decision** by eye; a danger, but before a connector that takes no earth only against the rules.
pub const SLEEVE_ON_EARTH: &Check = &Check {
    code: "sleeve-on-earth",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: has_uk_plug,
    judge: Judge::Reckoned(|view| {
        let severity = if has_no_earth_by_design(view) { Breach } else { Danger };
        Judgement::by_mark(view, PINS_AND_SLEEVES, "sleeve-on-earth", severity, Danger)
    }),
    asks: &[PINS_AND_SLEEVES],
    against: RULES,
    prospect: Prospect { minutes: 0.1, percent: 8 },
};

/// Whether the line and neutral pins are known to be bare.
pub fn has_bare_pins(view: &View) -> bool {
    view.marked(PINS_AND_SLEEVES, "no-sleeves") == Some(true)
}

fn missing_matters(view: &View) -> Severity {
    if view.one(SOLD_AS) == Some("old-stock") { BadSign } else { Danger }
}
