//! The earth path: there at every socket, and there all the while the flex is bent.

use super::earth_resistance::EARTH_RESISTANCE;
use super::trust::{Table, Trust, by_tester, unplugged, worst_made};
use crate::domain::check::shown::held;
use crate::domain::check::sockets::connector;
use crate::domain::check::{Check, Judge, Prospect, Ruling, always};
use crate::domain::decision::Limit;
use crate::domain::examination::Answer;
use crate::domain::facts;
use crate::domain::finding::Severity::Danger;
use crate::domain::finding::{Basis, Judgement, Reason};
use crate::domain::question::{Per, Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs7671_shock};
use crate::domain::view::View;

/// Whether a tester beeps from the plug's earth pin to a socket's earth contact, while the flex is bent at both ends.
///
/// A meter tells it better: then the resistance is read instead. Of a connector it is asked among the sockets.
pub const EARTH_PATH: &Question =
    &Question::one("earth-path", Place::Readings, Equipment::HandTools, &["beeps", "comes-and-goes", "silent"])
        .per(Per::Socket)
        .when(|view| unplugged(view) && view.equipment() < Equipment::Meters && !is_asked_of_the_connector(view));

/// What the earth reading does while the flex is bent where it enters the plug and where it enters the body.
pub const EARTH_WHILE_BENT: &Question =
    &Question::one("earth-while-bent", Place::Readings, Equipment::Meters, &["steady", "jumps", "open-all-the-while"])
        .when(unplugged);

/// **Finds** a socket whose earth contact has no path to the plug's earth pin.
///
/// **Why it matters** a fault makes metal live, and nothing switches it off.
///
/// **Source** BS 7671 Table 41.4(d) (read): behind a loop above 22.0 Ω not even a 3 A plug fuse opens within 5 s.
///
/// **Decision** each socket: a tester that stays silent, a display that shows no path, or a reading above 22.0 Ω at p <= 0.05.
/// Neither switch nor fuse is in the earth, so both may be in any state.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, readings::earth};
/// assert_eq!(by_code("earth-open").map(|check| check.place), Some(earth::EARTH_OPEN.place));
/// ```
pub const EARTH_OPEN: &Check = &Check {
    code: "earth-open",
    place: Place::Readings,
    needs: Equipment::HandTools,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(earth_open),
    asks: &[EARTH_PATH, EARTH_RESISTANCE, connector::EARTH_PATH, facts::READINGS_PREPARED, facts::SOCKET_COUNT],
    against: &[bs7671_shock::LOOP_5_S],
    prospect: Prospect { minutes: 1.0, percent: 15 },
};

fn earth_open(view: &View) -> Judgement {
    let each = EARTH_PATH.targets(view).into_iter().map(|socket| {
        let here = worst_made([by_sound(view, socket), by_display(view, socket)], Danger);
        worst_made([Trust::Loose.hold(view, here), by_the_connector(view)], Danger)
    });
    Judgement::worst(each.collect(), Danger)
}

fn by_sound(view: &View, target: Target) -> Judgement {
    match view.answer(EARTH_PATH, target) {
        Some(&Answer::One(answer)) => {
            let ruling = if answer == "silent" { Ruling::Breaks(Danger) } else { Ruling::Keeps };
            ruling.judgement(view, Danger, Reason::Answered { question: EARTH_PATH.id, target, answer })
        }
        answer => Judgement::without_choice(Danger, answer),
    }
}

fn is_asked_of_the_connector(view: &View) -> bool {
    (connector::EARTH_PATH.when)(view)
}

fn by_the_connector(view: &View) -> Judgement {
    match view.answer(connector::EARTH_PATH, Target::Sample) {
        Some(&Answer::One(answer)) if is_asked_of_the_connector(view) => {
            let ruling = if answer == "no-path" { Ruling::Breaks(Danger) } else { Ruling::Keeps };
            let reason = Reason::Answered { question: connector::EARTH_PATH.id, target: Target::Sample, answer };
            ruling.judgement(view, Danger, reason)
        }
        answer => Judgement::without_choice(Danger, answer),
    }
}

fn by_display(view: &View, target: Target) -> Judgement {
    match view.reading(EARTH_RESISTANCE, target) {
        Some(reading) if reading.is_open() => Judgement::breaks(Danger, Basis::Reading, Reason::OutOfRange),
        Some(reading) => {
            let limit = Limit::AtMost(bs7671_shock::largest_loop());
            Judgement::by_readings(Danger, held(target, reading, &limit).into_iter().collect(), 1)
        }
        None => Judgement::without_choice(Danger, view.answer(EARTH_RESISTANCE, target)),
    }
}

const BENT_WITH_A_TESTER: &Table = &[
    // A tester is slow and beeps through tens of ohms: its steady tone clears nothing.
    ("beeps", Ruling::NotLookedAt, Trust::Loose),
    ("comes-and-goes", Ruling::Breaks(Danger), Trust::Loose),
    ("silent", Ruling::NotLookedAt, Trust::Loose),
];

const BENT_WITH_A_METER: &Table = &[
    ("steady", Ruling::Keeps, Trust::Loose),
    ("jumps", Ruling::Breaks(Danger), Trust::Loose),
    ("open-all-the-while", Ruling::NotLookedAt, Trust::Loose),
];

/// **Finds** an earth path that comes and goes when the flex is bent where it enters the plug or the body.
///
/// **Why it matters** broken strands or a loose joint: the earth fails on the day it is needed.
///
/// **Source** common practice: whoever reads an earth bends the flex meanwhile.
///
/// **Decision** a meter's display that jumps, or a tester that comes and goes, breaks; only a meter's steady display keeps.
pub const EARTH_INTERMITTENT: &Check = &Check {
    code: "earth-intermittent",
    place: Place::Readings,
    needs: Equipment::Meters,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(earth_intermittent),
    asks: &[EARTH_WHILE_BENT, EARTH_PATH, facts::READINGS_PREPARED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 1.0, percent: 10 },
};

fn earth_intermittent(view: &View) -> Judgement {
    let with_a_tester = by_tester(view, EARTH_PATH, Danger, BENT_WITH_A_TESTER);
    let with_a_meter = by_tester(view, EARTH_WHILE_BENT, Danger, BENT_WITH_A_METER);
    worst_made([with_a_tester, with_a_meter], Danger)
}
