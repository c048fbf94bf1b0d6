//! What a known good plug and a wooden stick tell, unplugged: shutters, grip, and whether a plug goes in upside down.

use super::holes::SHUTTERS;
use crate::domain::check::ruling::against;
use crate::domain::check::{Check, Judge, Prospect, Ruling, on_leads};
use crate::domain::decision::Limit;
use crate::domain::finding::Severity::{BadSign, Breach, Danger};
use crate::domain::finding::{Conformity, Evidence, Judgement, Reason};
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{QuantityKind, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_2};
use crate::domain::view::View;

/// What opens the shutters, tried with a stick of wood or plastic in each hole and in both lower holes at once.
pub const OPENED_BY: &Question = &Question::one(
    "shutter-opened-by",
    Place::Sockets,
    Equipment::HandTools,
    &["one-lower-hole", "stays-open", "earth-hole", "both-lower-holes", "all-three"],
)
.when(may_have_shutters);

/// How a known good plug sits.
pub const GRIP: &Question =
    &Question::one("socket-grip", Place::Sockets, Equipment::HandTools, &["firm", "wobbles", "falls-out"])
        .when(on_leads);

/// Whether a known good plug goes in upside down.
pub const UPSIDE_DOWN: &Question =
    &Question::one("plug-upside-down", Place::Sockets, Equipment::HandTools, &["does-not-enter", "enters"])
        .when(on_leads);

/// The shortest distance from a line or neutral hole to the edge of the body.
pub const TO_THE_EDGE: &Question = &Question::asking(
    "hole-to-edge",
    Place::Sockets,
    Equipment::HandTools,
    Ask::Measure {
        kind: QuantityKind::Length,
        units: &[Unit::Millimetre],
        instruments: &[Instrument::DigitalCalliper, Instrument::VernierCalliper, Instrument::Rule],
    },
)
.when(open_without_earth_pin);

/// **Finds** a shutter that one pin alone opens, or that does not close again.
///
/// **Why it matters** whatever a child pushes in reaches live metal.
///
/// **Source** BS 1363-2 (read): the earth pin opens it, or line and neutral together.
///
/// **Decision** by trial with a stick of wood or plastic; opening from the earth hole or by both at once is as it should be.
pub const SHUTTER_OPENS_TO_SINGLE_PIN: &Check = &Check {
    code: "shutter-opens-to-single-pin",
    place: Place::Sockets,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: may_have_shutters,
    judge: Judge::Answer(
        OPENED_BY,
        &[
            ("one-lower-hole", Ruling::Breaks(Danger)),
            ("stays-open", Ruling::Breaks(Danger)),
            ("earth-hole", Ruling::Keeps),
            ("both-lower-holes", Ruling::Keeps),
            ("all-three", Ruling::Keeps),
        ],
    ),
    asks: &[OPENED_BY],
    against: &[bs1363_2::SHUTTERS],
    prospect: Prospect { minutes: 1.0, percent: 15 },
};

/// **Finds** a socket that does not hold a known good plug.
///
/// **Why it matters** a loose contact arcs and burns; a plug that slips out shows live pins.
///
/// **Source** facts of the trade.
///
/// **Decision** by trial: a plug that falls out is a danger, one that wobbles a bad sign.
pub const SOCKET_LOOSE: &Check = &Check {
    code: "socket-loose",
    place: Place::Sockets,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: on_leads,
    judge: Judge::Answer(
        GRIP,
        &[("firm", Ruling::Keeps), ("wobbles", Ruling::Breaks(BadSign)), ("falls-out", Ruling::Breaks(Danger))],
    ),
    asks: &[GRIP],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.7, percent: 15 },
};

/// **Finds** a socket that takes a plug upside down, or lies so near the edge that it may.
///
/// **Why it matters** upside down, line and neutral change places and the earth pin hangs in the air.
///
/// **Source** BS 1363-2, 14.10 (read): 18 mm where line and neutral open the shutter; no distance is asked of the earth hole.
///
/// **Decision** a known good plug that enters is a danger; under 18 mm is a breach, with the doubt of the calliper or rule, and only
/// where line and neutral open the shutter.
pub const PLUG_FITS_UPSIDE_DOWN: &Check = &Check {
    code: "plug-fits-upside-down",
    place: Place::Sockets,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: on_leads,
    judge: Judge::Reckoned(upside_down),
    asks: &[UPSIDE_DOWN, OPENED_BY, TO_THE_EDGE],
    against: &[bs1363_2::INVERTED_PLUG],
    prospect: Prospect { minutes: 1.0, percent: 10 },
};

fn may_have_shutters(view: &View) -> bool {
    on_leads(view) && view.one(SHUTTERS) != Some("all-open")
}

fn open_without_earth_pin(view: &View) -> bool {
    may_have_shutters(view) && view.one(OPENED_BY) == Some("both-lower-holes")
}

fn upside_down(view: &View) -> Judgement {
    let tried = view.one(UPSIDE_DOWN);
    if let Some(answer @ "enters") = tried {
        return Ruling::Breaks(Danger).judgement(view, Danger, answered(UPSIDE_DOWN, answer));
    }
    let near_edge = if open_without_earth_pin(view) { to_the_edge(view) } else { None };
    let near_edge = match near_edge {
        Some(evidence) if evidence.outcome != Conformity::Conforms => {
            return Judgement::by_readings(Breach, vec![evidence], 1);
        }
        near_edge => near_edge,
    };
    let Some(not_entering) = tried else {
        return Judgement::without_choice(Danger, view.answer(UPSIDE_DOWN, Target::Sample));
    };
    if let Some(evidence) = near_edge {
        return Judgement::by_readings(Danger, vec![evidence], 1);
    }
    let open = match view.one(OPENED_BY) {
        _ if !may_have_shutters(view) => None,
        None => Some(OPENED_BY),
        Some("both-lower-holes") => Some(TO_THE_EDGE),
        Some(_) => None,
    };
    match open {
        Some(question) => Judgement::without_choice(Breach, view.answer(question, Target::Sample)),
        None => Ruling::Keeps.judgement(view, Danger, answered(UPSIDE_DOWN, not_entering)),
    }
}

fn to_the_edge(view: &View) -> Option<Evidence> {
    let distance = view.reading(TO_THE_EDGE, Target::Sample).and_then(Reading::measured)?;
    Some(against(Target::Sample, &distance, &Limit::AtLeast(bs1363_2::aperture_to_edge())))
}

fn answered(question: &Question, answer: &'static str) -> Reason {
    Reason::Answered { question: question.id, target: Target::Sample, answer }
}
