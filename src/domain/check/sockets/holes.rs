//! The holes of the sockets: which plugs they take, their earth contacts and their shutters.

use super::connector::{self, has_earthed_connector};
use crate::domain::check::{Check, Judge, Prospect, Ruling, on_leads};
use crate::domain::examination::Answer;
use crate::domain::finding::Severity::Danger;
use crate::domain::finding::{Judgement, Reason};
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Kind, Place};
use crate::domain::standard::bs1363_2;
use crate::domain::view::View;

/// Holes that a socket for 13 A plugs does not have.
pub const WRONG_HOLES: &Question =
    &Question::any("socket-holes", Place::Sockets, Equipment::Eyes, &["other-plugs-fit", "two-holes", "no-earth-hole"])
        .when(on_leads);

/// Whether the line and neutral holes are closed.
pub const SHUTTERS: &Question =
    &Question::one("shutters", Place::Sockets, Equipment::Eyes, &["all-closed", "some-open", "all-open"])
        .when(on_leads);

/// Whether there is metal in the earth holes.
pub const EARTH_HOLES: &Question =
    &Question::one("earth-holes", Place::Sockets, Equipment::Eyes, &["metal-in-all", "some-empty", "all-empty"])
        .when(needs_earth_contact);

/// **Finds** holes shaped to take plugs of several countries.
///
/// **Why it matters** such plugs fit loosely, bring no fuse and often no earth, and such holes have no shutters that work.
///
/// **Source** BS 1363-2 (memory-high); listed as dangerous by safety bodies (read).
///
/// **Decision** by eye.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, sockets::holes};
/// let check = by_code("socket-takes-foreign-plugs");
/// assert_eq!(check.map(|check| check.severity), Some(holes::SOCKET_TAKES_FOREIGN_PLUGS.severity));
/// ```
pub const SOCKET_TAKES_FOREIGN_PLUGS: &Check = &Check {
    code: "socket-takes-foreign-plugs",
    place: Place::Sockets,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: on_leads,
    judge: Judge::Marked(WRONG_HOLES, "other-plugs-fit", Danger),
    asks: &[WRONG_HOLES],
    against: &[bs1363_2::APERTURES],
    prospect: Prospect { minutes: 0.1, percent: 20 },
};

/// **Finds** sockets for plugs of two pins.
///
/// **Why it matters** what is plugged in there has neither earth nor fuse.
///
/// **Source** BS 1363-2 (memory-high); national note in the draft of IEC 60884-2-7 (read).
///
/// **Decision** by eye.
pub const SOCKET_TWO_PIN: &Check = &Check {
    code: "socket-two-pin",
    place: Place::Sockets,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: on_leads,
    judge: Judge::Marked(WRONG_HOLES, "two-holes", Danger),
    asks: &[WRONG_HOLES],
    against: &[bs1363_2::APERTURES, bs1363_2::EXTENSION_SETS_ARE_EARTHED],
    prospect: Prospect { minutes: 0.1, percent: 8 },
};

/// **Finds** a socket or connector with no hole for an earth.
///
/// **Why it matters** an appliance of metal plugged in there is live after its first fault.
///
/// **Source** national note in the draft of IEC 60884-2-7 (read): the sockets of a UK set are earthed.
///
/// **Decision** by eye. A two-hole connector of a cord set fits only appliances without an earth: such a set is not of the earthed
/// kind that is examined here, so it is left open.
pub const SOCKET_WITHOUT_EARTH: &Check = &Check {
    code: "socket-without-earth",
    place: Place::Sockets,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: is_lead_or_has_connector,
    judge: Judge::Reckoned(without_earth),
    asks: &[WRONG_HOLES, connector::PATTERN],
    against: &[bs1363_2::EXTENSION_SETS_ARE_EARTHED],
    prospect: Prospect { minutes: 0.1, percent: 5 },
};

/// **Finds** earth holes with nothing in them.
///
/// **Why it matters** the earth pin of every plug ends in plastic.
///
/// **Source** BS 1363-2 (memory-high).
///
/// **Decision** by eye with a light. Metal that is seen need not be connected: that is another check.
pub const EARTH_CONTACT_ABSENT: &Check = &Check {
    code: "earth-contact-absent",
    place: Place::Sockets,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: needs_earth_contact,
    judge: Judge::Answer(
        EARTH_HOLES,
        &[
            ("metal-in-all", Ruling::Keeps),
            ("some-empty", Ruling::Breaks(Danger)),
            ("all-empty", Ruling::Breaks(Danger)),
        ],
    ),
    asks: &[EARTH_HOLES],
    against: &[bs1363_2::APERTURES],
    prospect: Prospect { minutes: 0.4, percent: 8 },
};

/// **Finds** line and neutral holes that stand open.
///
/// **Why it matters** a child pushes something in.
///
/// **Source** BS 1363-2 (read).
///
/// **Decision** by eye.
pub const SHUTTER_MISSING: &Check = &Check {
    code: "shutter-missing",
    place: Place::Sockets,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: on_leads,
    judge: Judge::Answer(
        SHUTTERS,
        &[("all-closed", Ruling::Keeps), ("some-open", Ruling::Breaks(Danger)), ("all-open", Ruling::Breaks(Danger))],
    ),
    asks: &[SHUTTERS],
    against: &[bs1363_2::SHUTTERS],
    prospect: Prospect { minutes: 0.2, percent: 15 },
};

fn is_lead_or_has_connector(view: &View) -> bool {
    on_leads(view) || connector::has_connector(view)
}

fn needs_earth_contact(view: &View) -> bool {
    on_leads(view) || has_earthed_connector(view)
}

fn without_earth(view: &View) -> Judgement {
    match view.kind() {
        Kind::ExtensionLead => sockets_without_earth(view),
        Kind::CordSet => connector_without_earth(view),
    }
}

fn sockets_without_earth(view: &View) -> Judgement {
    let Some(Answer::Any(seen)) = view.answer(WRONG_HOLES, Target::Sample) else {
        return Judgement::without_choice(Danger, view.answer(WRONG_HOLES, Target::Sample));
    };
    match seen.iter().find(|code| matches!(**code, "no-earth-hole" | "two-holes")) {
        Some(answer) => Ruling::Breaks(Danger).judgement(view, Danger, answered(WRONG_HOLES, answer)),
        None => Ruling::Keeps.judgement(view, Danger, Reason::NothingWrongAnswered),
    }
}

fn connector_without_earth(view: &View) -> Judgement {
    let Some(answer) = view.one(connector::PATTERN) else {
        return Judgement::without_choice(Danger, view.answer(connector::PATTERN, Target::Sample));
    };
    let ruling = match answer {
        "c13" | "c5" | "c19" => Ruling::Keeps,
        "free-ends" => Ruling::DoesNotApply,
        _ => Ruling::CannotTell,
    };
    ruling.judgement(view, Danger, answered(connector::PATTERN, answer))
}

fn answered(question: &Question, answer: &'static str) -> Reason {
    Reason::Answered { question: question.id, target: Target::Sample, answer }
}
