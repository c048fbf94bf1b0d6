//! The pins by eye and by magnet: earth of metal and first, none loose, none rolled from sheet, none of steel.

use crate::domain::check::sockets::connector::has_no_earth_by_design;
use crate::domain::check::{Check, Judge, Prospect, Ruling};
use crate::domain::facts::has_uk_plug;
use crate::domain::finding::Severity::{BadSign, Breach, Danger};
use crate::domain::finding::{Conformity, Judgement, Severity};
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_1};
use crate::domain::view::View;

/// Gross faults of pins and sleeves.
pub const PINS_AND_SLEEVES: &Question = &Question::any(
    "pins-and-sleeves",
    Place::Plug,
    Equipment::Eyes,
    &[
        "no-sleeves",
        "sleeve-damaged",
        "sleeve-on-earth",
        "plastic-earth-pin",
        "short-earth-pin",
        "pin-loose",
        "rolled-sheet",
        "near-edge",
    ],
)
.when(has_uk_plug);

/// How the pins answer to a magnet.
pub const MAGNET: &Question =
    &Question::one("magnet-on-pins", Place::Plug, Equipment::HandTools, &["no-pull", "weak-pull", "strong-pull"])
        .when(has_uk_plug);

/// **Finds** an earth pin of plastic.
///
/// **Why it matters** the sample needs an earth, and plastic carries none: a fault leaves metal live.
///
/// **Source** BS 1363-1, clause 12 (read): a plastic pin opens shutters for two-core class II cords and is allowed nowhere else.
///
/// **Decision** by eye, whatever marks the sample bears. Before a connector that takes no earth it cannot be told: there the pin may be
/// right.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, plug::pins};
/// assert_eq!(by_code("earth-pin-plastic").map(|check| check.severity), Some(pins::EARTH_PIN_PLASTIC.severity));
/// ```
pub const EARTH_PIN_PLASTIC: &Check = &Check {
    judge: Judge::Reckoned(plastic_earth_pin),
    ..marked("earth-pin-plastic", "plastic-earth-pin", Danger, &[bs1363_1::SHUTTER_OPENER], 8)
};

/// **Finds** an earth pin no longer than the other two.
///
/// **Why it matters** it must touch first and leave last; a short one may also fail to open the shutters.
///
/// **Source** BS 1363-1, Figure 4a: 22.7 mm against 17.7 mm (read).
///
/// **Decision** by eye: the difference is 5 mm.
pub const EARTH_PIN_NOT_FIRST: &Check =
    &marked("earth-pin-not-first", "short-earth-pin", Danger, &[bs1363_1::PIN_LENGTH], 3);

/// **Finds** a pin that moves in the plug, or is bent.
///
/// **Why it matters** its joint inside works loose and runs hot, or the pin stays in the socket.
///
/// **Source** BS 1363-1, pin twist (read).
///
/// **Decision** by hand, gently.
pub const PIN_LOOSE: &Check = &marked("pin-loose", "pin-loose", Danger, &[bs1363_1::PIN_TWIST, bs1363_1::GAUGE], 8);

/// **Finds** a pin folded or rolled from sheet: hollow, or with a seam.
///
/// **Why it matters** it gives way, carries less and heats the socket's contacts.
///
/// **Source** BS 1363-1, clause 12 (read).
///
/// **Decision** by eye; to be confirmed on the opened plug.
pub const PINS_OF_ROLLED_SHEET: &Check =
    &marked("pins-of-rolled-sheet", "rolled-sheet", Breach, &[bs1363_1::PIN_MAKE], 8);

/// **Finds** a plug so small that its pins sit close to the edge.
///
/// **Why it matters** fingers on the edge come near live pins.
///
/// **Source** no outline is standardised; the distance is another check.
///
/// **Decision** by eye: a hint to measure the distance from pin to edge.
pub const PLUG_UNDERSIZED: &Check = &marked("plug-undersized", "near-edge", BadSign, &[Clause::common_practice()], 15);

/// **Finds** pins of steel.
///
/// **Why it matters** steel carries an eighth of what copper does, rusts, and heats the socket.
///
/// **Source** BS 1363-1, clause 12: brass (read).
///
/// **Decision** a strong pull breaks it; a nickel coat on brass pulls weakly.
pub const PIN_METAL_WRONG: &Check = &Check {
    code: "pin-metal-wrong",
    place: Place::Plug,
    needs: Equipment::HandTools,
    severity: Breach,
    applies: has_uk_plug,
    judge: Judge::Answer(
        MAGNET,
        &[("no-pull", Ruling::Keeps), ("weak-pull", Ruling::Keeps), ("strong-pull", Ruling::Breaks(Breach))],
    ),
    asks: &[MAGNET],
    against: &[bs1363_1::PIN_MAKE],
    prospect: Prospect { minutes: 0.3, percent: 10 },
};

fn plastic_earth_pin(view: &View) -> Judgement {
    let judgement = Judgement::by_mark(view, PINS_AND_SLEEVES, "plastic-earth-pin", Danger, Danger);
    if judgement.outcome == Conformity::Nonconforming && has_no_earth_by_design(view) {
        return Judgement::cannot_tell(Danger, judgement.reason);
    }
    judgement
}

const fn marked(
    code: &'static str,
    answer: &'static str,
    severity: Severity,
    against: &'static [Clause],
    percent: u8,
) -> Check {
    Check {
        code,
        place: Place::Plug,
        needs: Equipment::Eyes,
        severity,
        applies: has_uk_plug,
        judge: Judge::Marked(PINS_AND_SLEEVES, answer, severity),
        asks: &[PINS_AND_SLEEVES],
        against,
        prospect: Prospect { minutes: 0.1, percent },
    }
}
