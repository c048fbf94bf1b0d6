//! Paths that must not be: from line to neutral, and from either to earth.

use super::trust::{Table, Trust, by_tester, in_doubt, unplugged, worst_made};
use crate::domain::check::shown::held;
use crate::domain::check::{Check, Judge, Prospect, Ruling, always};
use crate::domain::decision::Limit;
use crate::domain::facts;
use crate::domain::finding::Severity::Danger;
use crate::domain::finding::{Basis, Conformity, Judgement, Reason};
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{ElectricalResistance, QuantityKind, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::practice;
use crate::domain::view::View;

/// Whether a tester beeps from the plug's line pin to its neutral pin. A meter tells it better: then the resistance is read instead.
pub const POLES_TOGETHER: &Question =
    &Question::one("poles-together", Place::Readings, Equipment::HandTools, &["silent", "beeps-for-a-moment", "beeps"])
        .when(|view| unplugged(view) && view.equipment() < Equipment::Meters);

/// Resistance from the plug's line pin to its neutral pin.
pub const POLE_RESISTANCE: &Question = &Question::asking(
    "pole-resistance",
    Place::Readings,
    Equipment::Meters,
    Ask::Measure {
        kind: QuantityKind::Resistance,
        units: &[Unit::Ohm, Unit::Kilohm, Unit::Megohm],
        instruments: &[Instrument::FourWireMeter, Instrument::HandMeterNulled, Instrument::HandMeter],
    },
)
.when(unplugged);

/// Whether the plug's earth pin beeps, or reads under 1 MΩ, to its line or neutral pin.
pub const EARTH_TO_POLES: &Question =
    &Question::one("earth-to-poles", Place::Readings, Equipment::HandTools, &["neither", "line", "neutral", "both"])
        .when(unplugged);

/// **Finds** line and neutral joined.
///
/// **Why it matters** at the first plugging in, the full current of the circuit flows through the flex.
///
/// **Source** common practice. Below 230 V / 13 A = 17.7 Ω the path would carry more than any plug fuse is rated for, which no lamp,
/// surge part or winding of a lead does.
///
/// **Decision** a beep that lasts; or a reading below 17.7 Ω at p <= 0.05. Silence counts only with the poles closed all the way. In a
/// lead that is known to have nothing between its poles, less than 1 MΩ cannot be told apart from a beginning breakdown.
pub const POLE_SHORTED: &Check = &Check {
    code: "pole-shorted",
    place: Place::Readings,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(|view| {
        worst_made([by_tester(view, POLES_TOGETHER, Danger, TOGETHER), poles_by_meter(view)], Danger)
    }),
    asks: &[POLES_TOGETHER, POLE_RESISTANCE, facts::READINGS_PREPARED, facts::EXTRAS, facts::PROMISES],
    against: &[practice::USUAL],
    prospect: Prospect { minutes: 0.5, percent: 3 },
};

const TOGETHER: &Table = &[
    ("silent", Ruling::Keeps, Trust::PolesClosed),
    ("beeps-for-a-moment", Ruling::Keeps, Trust::PolesClosed),
    ("beeps", Ruling::Breaks(Danger), Trust::Loose),
];

fn poles_by_meter(view: &View) -> Judgement {
    match view.reading(POLE_RESISTANCE, Target::Sample) {
        Some(reading) if reading.is_open() => {
            Trust::PolesClosed.hold(view, Judgement::conforms(Danger, Basis::Reading, Reason::OutOfRange))
        }
        Some(reading) => poles_by_reading(view, reading),
        None => Judgement::without_choice(Danger, view.answer(POLE_RESISTANCE, Target::Sample)),
    }
}

fn poles_by_reading(view: &View, reading: &Reading) -> Judgement {
    let at_least = |least: ElectricalResistance| {
        Judgement::by_readings(Danger, held(Target::Sample, reading, &Limit::AtLeast(least)).into_iter().collect(), 1)
    };
    let no_short = at_least(practice::short_circuit());
    if no_short.outcome != Conformity::Conforms {
        return Trust::Loose.hold(view, no_short);
    }
    let nothing_conducts = at_least(practice::nothing_conducts());
    if has_nothing_between_poles(view) && nothing_conducts.outcome != Conformity::Conforms {
        return in_doubt(nothing_conducts, Reason::Measured);
    }
    Trust::PolesClosed.hold(view, no_short)
}

/// Whether the body is known to have nothing that may conduct between line and neutral.
fn has_nothing_between_poles(view: &View) -> bool {
    facts::EXTRAS.answers().iter().all(|extra| *extra == "switch" || !facts::may_have(view, extra))
        && view.marked(facts::PROMISES, "surge") == Some(false)
}

/// **Finds** line or neutral joined to earth.
///
/// **Why it matters** earth carries current all the time, or the mains itself: whatever metal hangs on it is live.
///
/// **Source** common practice: under 1 MΩ.
///
/// **Decision** by a tester's beep, or a meter's ohm range; silence counts only with the poles closed all the way.
pub const NEUTRAL_EARTH_JOINED: &Check = &Check {
    code: "neutral-earth-joined",
    place: Place::Readings,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(|view| by_tester(view, EARTH_TO_POLES, Danger, JOINED)),
    asks: &[EARTH_TO_POLES, facts::READINGS_PREPARED, facts::EXTRAS],
    against: &[practice::USUAL],
    prospect: Prospect { minutes: 0.5, percent: 4 },
};

const JOINED: &Table = &[
    ("neither", Ruling::Keeps, Trust::PolesClosed),
    ("line", Ruling::Breaks(Danger), Trust::Loose),
    ("neutral", Ruling::Breaks(Danger), Trust::Loose),
    ("both", Ruling::Breaks(Danger), Trust::Loose),
];
