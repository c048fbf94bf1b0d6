//! Insulation: of line and neutral to earth, and of a low-voltage output to both.

use super::trust::{Trust, in_doubt, unplugged};
use crate::domain::check::inside::parts;
use crate::domain::check::shown::held;
use crate::domain::check::{Check, Judge, Prospect, always, on_leads};
use crate::domain::decision::Limit;
use crate::domain::facts;
use crate::domain::finding::Severity::{Breach, Danger};
use crate::domain::finding::{Basis, Conformity, Judgement, Needed, Reason, Severity};
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{ElectricalResistance, QuantityKind, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{bs1363_1, bs1363_2, iet_code};
use crate::domain::view::View;

/// How insulation is tested: the voltage, and whether line and neutral are joined for it.
pub const INSULATION_TEST: &Question = &Question::one(
    "insulation-test",
    Place::Readings,
    Equipment::Meters,
    &["500-v", "250-v", "less-than-250-v", "not-joined"],
)
.when(unplugged);

const MEGOHMS: Ask = Ask::Measure {
    kind: QuantityKind::Resistance,
    units: &[Unit::Megohm, Unit::Gigohm, Unit::Kilohm],
    instruments: &[Instrument::InsulationTester, Instrument::HandMeter],
};

/// Insulation resistance of line and neutral together to earth.
pub const INSULATION: &Question =
    &Question::asking("insulation", Place::Readings, Equipment::Meters, MEGOHMS).when(unplugged);

/// Resistance of a USB output to line and neutral together.
pub const OUTPUT_INSULATION: &Question =
    &Question::asking("output-insulation", Place::Readings, Equipment::Meters, MEGOHMS)
        .when(|view| unplugged(view) && may_have_output(view));

/// **Finds** insulation between line or neutral and earth that leaks.
///
/// **Why it matters** damp, dirt or bruised insulation: the first step to a shock or a fire.
///
/// **Source** IET Code of Practice (read): class I, 1 MΩ at 500 V d.c., leads with surge parts at 250 V. BS 1363 clause 15
/// (memory-high): 5 MΩ for a new accessory.
///
/// **Decision** under 1 MΩ at p <= 0.05 a danger; else under 5 MΩ a breach, to be confirmed by a laboratory. "More than 999 MΩ" and an
/// over-range display keep. A tester's voltage that is too low never clears; 500 V through surge parts never condemns.
pub const INSULATION_LOW: &Check = &Check {
    code: "insulation-low",
    place: Place::Readings,
    needs: Equipment::Meters,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(insulation_low),
    asks: &[INSULATION, INSULATION_TEST, facts::READINGS_PREPARED, facts::EXTRAS, facts::PROMISES],
    against: &[iet_code::INSULATION_CLASS_I, bs1363_2::INSULATION, bs1363_1::INSULATION, iet_code::SURGE_LEADS],
    prospect: Prospect { minutes: 1.5, percent: 4 },
};

fn insulation_low(view: &View) -> Judgement {
    let Some(reading) = view.reading(INSULATION, Target::Sample) else {
        return Judgement::without_choice(Danger, view.answer(INSULATION, Target::Sample));
    };
    let judgement = against_both_lines(reading);
    let test = view.one(INSULATION_TEST);
    let surge = parts::has_surge_part(view);
    let clears = is_by_tester(reading) && matches!((test, surge), (Some("500-v"), _) | (Some("250-v"), true));
    match judgement.outcome {
        Conformity::Conforms if test == Some("not-joined") => {
            in_doubt(judgement, Reason::Needs(Needed::ReadingsPrepared))
        }
        Conformity::Conforms if clears => Trust::PolesClosed.hold(view, judgement),
        Conformity::Conforms => in_doubt(judgement, Reason::WrongTestVoltage),
        Conformity::Nonconforming if surge && test == Some("500-v") => in_doubt(judgement, Reason::WrongTestVoltage),
        Conformity::Nonconforming | Conformity::Inconclusive | Conformity::NotApplicable | Conformity::NotExamined => {
            Trust::Loose.hold(view, judgement)
        }
    }
}

fn against_both_lines(reading: &Reading) -> Judgement {
    let in_service = at_least(reading, iet_code::insulation_class_1(), Danger);
    if in_service.outcome != Conformity::Conforms {
        return in_service;
    }
    let when_new = at_least(reading, bs1363_2::insulation(), Breach);
    if when_new.outcome == Conformity::Conforms { Judgement { severity: Danger, ..when_new } } else { when_new }
}

/// A reading that must be no less than a limit; a display beyond its range is no path at all, and keeps it.
fn at_least(reading: &Reading, limit: ElectricalResistance, severity: Severity) -> Judgement {
    if reading.is_open() {
        return Judgement::conforms(severity, Basis::Reading, Reason::OutOfRange);
    }
    let evidence = held(Target::Sample, reading, &Limit::AtLeast(limit));
    Judgement::by_readings(severity, evidence.into_iter().collect(), 1)
}

/// A hand meter's few volts find a path that is there, and miss one that opens at hundreds.
fn is_by_tester(reading: &Reading) -> bool {
    reading.instrument == Instrument::InsulationTester
}

fn may_have_output(view: &View) -> bool {
    on_leads(view) && facts::may_have(view, "usb")
}

/// **Finds** a USB output that is not kept apart from the mains.
///
/// **Why it matters** whoever holds a telephone on its cable holds the mains.
///
/// **Source** IET Code of Practice (read): class II, 2 MΩ.
///
/// **Decision** output to line and neutral joined: under 2 MΩ at p <= 0.05 breaks. A hand meter's few volts never clear.
pub const OUTPUT_NOT_ISOLATED: &Check = &Check {
    code: "output-not-isolated",
    place: Place::Readings,
    needs: Equipment::Meters,
    severity: Danger,
    applies: may_have_output,
    judge: Judge::Reckoned(output_not_isolated),
    asks: &[OUTPUT_INSULATION, facts::READINGS_PREPARED, facts::EXTRAS],
    against: &[iet_code::INSULATION_CLASS_II],
    prospect: Prospect { minutes: 1.5, percent: 5 },
};

fn output_not_isolated(view: &View) -> Judgement {
    let Some(reading) = view.reading(OUTPUT_INSULATION, Target::Sample) else {
        return Judgement::without_choice(Danger, view.answer(OUTPUT_INSULATION, Target::Sample));
    };
    let judgement = at_least(reading, iet_code::insulation_class_2(), Danger);
    match judgement.outcome {
        Conformity::Conforms if is_by_tester(reading) => Trust::PolesClosed.hold(view, judgement),
        Conformity::Conforms => in_doubt(judgement, Reason::WrongTestVoltage),
        Conformity::Nonconforming | Conformity::Inconclusive | Conformity::NotApplicable | Conformity::NotExamined => {
            Trust::Loose.hold(view, judgement)
        }
    }
}
