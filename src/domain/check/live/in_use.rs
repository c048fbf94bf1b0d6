//! What the sample does in use: touch current, heat, and what its lamp or meter says.

use super::competence::{LIVE_COMPETENT, may_energise};
use crate::domain::check::ruling::against;
use crate::domain::check::shown::held;
use crate::domain::check::{Check, Judge, Prospect, Ruling, always, on_leads};
use crate::domain::decision::Limit;
use crate::domain::facts;
use crate::domain::finding::Severity::{BadSign, Danger};
use crate::domain::finding::{Conformity, Evidence, Judgement};
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{QuantityKind, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs7671, bs7671_flex, en50525, iec60479, iet_code};
use crate::domain::view::View;

/// Current to earth from what people touch.
pub const TOUCH_CURRENT: &Question = &Question::asking(
    "touch-current",
    Place::Live,
    Equipment::Meters,
    Ask::Measure { kind: QuantityKind::Current, units: &[Unit::Milliampere], instruments: &[Instrument::LeakageMeter] },
)
.when(may_energise);

/// The hottest spot of the surface after an hour at the rated current.
pub const HOTTEST_SPOT: &Question = &Question::asking(
    "hottest-spot",
    Place::Live,
    Equipment::Meters,
    Ask::Measure {
        kind: QuantityKind::Temperature,
        units: &[Unit::DegreeCelsius],
        instruments: &[Instrument::Thermometer],
    },
)
.when(may_energise);

/// What the built-in lamp or meter says, against the supply.
pub const INDICATOR: &Question =
    &Question::one("indicator", Place::Live, Equipment::Meters, &["says-what-is", "says-what-is-not"])
        .when(|view| may_energise(view) && may_have_indicator(view));

/// **Finds** more current to earth than a person should feel.
///
/// **Why it matters** above it muscles cramp; what can be felt today may kill in the wet.
///
/// **Source** IEC 60479-1 (read): line a, 0.5 mA. With a USB output, IET Code of Practice, 4th edition (read): class II, 0.25 mA. The
/// 5 mA of its 5th edition is no line for a current through a person.
///
/// **Decision** by conformance probability.
pub const LEAKAGE_HIGH: &Check = &Check {
    code: "leakage-high",
    place: Place::Live,
    needs: Equipment::Meters,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(leakage_high),
    asks: &[TOUCH_CURRENT, LIVE_COMPETENT, facts::EXTRAS],
    against: &[iec60479::LINE_A, iet_code::TOUCH_CLASS_II],
    prospect: Prospect { minutes: 3.0, percent: 4 },
};

fn leakage_high(view: &View) -> Judgement {
    let line = if on_leads(view) && facts::has(view, "usb") { iet_code::touch_class_2() } else { iec60479::line_a() };
    let reading = view.reading(TOUCH_CURRENT, Target::Sample);
    reading.and_then(|reading| held(Target::Sample, reading, &Limit::AtMost(line))).map_or_else(
        || Judgement::without_choice(Danger, view.answer(TOUCH_CURRENT, Target::Sample)),
        |evidence| Judgement::by_readings(Danger, vec![evidence], 1),
    )
}

/// **Finds** a plug, flex or body that runs hot at its rated current.
///
/// **Why it matters** PVC softens, contacts age, and the heat feeds itself.
///
/// **Source** EN 50525-2-11 (read): 70 °C for a conductor in PVC. BS 7671 Table 4F3A (read): ratings count with 60 °C.
///
/// **Decision** the surface is never hotter than the conductor: above 70 °C at p <= 0.05 it breaks. It keeps below 60 °C at p >= 0.95;
/// between the two it cannot be told.
pub const RUNS_HOT: &Check = &Check {
    code: "runs-hot",
    place: Place::Live,
    needs: Equipment::Meters,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(runs_hot),
    asks: &[HOTTEST_SPOT, LIVE_COMPETENT],
    against: &[en50525::CONDUCTOR_TEMPERATURE, bs7671::TABLE_4F3A],
    prospect: Prospect { minutes: 70.0, percent: 20 },
};

fn runs_hot(view: &View) -> Judgement {
    let Some(measured) = view.reading(HOTTEST_SPOT, Target::Sample).and_then(Reading::measured) else {
        return Judgement::without_choice(Danger, view.answer(HOTTEST_SPOT, Target::Sample));
    };
    let at_most = |limit| against(Target::Sample, &measured, &Limit::AtMost(limit));
    let too_hot = at_most(en50525::hottest_conductor());
    if too_hot.outcome == Conformity::Nonconforming {
        return Judgement::by_readings(Danger, vec![too_hot], 1);
    }
    let cool = at_most(bs7671_flex::conductor());
    let outcome = cool.outcome.min(Conformity::Inconclusive);
    Judgement::by_readings(Danger, vec![Evidence { outcome, ..cool }], 1)
}

/// **Finds** a lamp or built-in meter that says what is not so.
///
/// **Why it matters** people take a dark lamp for a dead socket.
///
/// **Source** common practice.
///
/// **Decision** by eye, against a meter on the supply.
pub const INDICATOR_MISREADS: &Check = &Check {
    code: "indicator-misreads",
    place: Place::Live,
    needs: Equipment::Meters,
    severity: BadSign,
    applies: may_have_indicator,
    judge: Judge::Answer(INDICATOR, &[("says-what-is", Ruling::Keeps), ("says-what-is-not", Ruling::Breaks(BadSign))]),
    asks: &[INDICATOR, LIVE_COMPETENT, facts::EXTRAS],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 1.0, percent: 10 },
};

fn may_have_indicator(view: &View) -> bool {
    on_leads(view) && (facts::may_have(view, "neon") || facts::may_have(view, "electronics"))
}
