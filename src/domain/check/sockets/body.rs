//! The body with the sockets, or the connector: whole, closed, marked.

use super::connector;
use crate::domain::check::inside::opening;
use crate::domain::check::{Check, Judge, Prospect, Ruling, on_leads};
use crate::domain::facts::{self, RATING};
use crate::domain::finding::Severity::{BadSign, Breach, Danger};
use crate::domain::finding::{ClaimPlace, Judgement, Reason};
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, bs1363_2};
use crate::domain::view::View;

/// What is wrong with the body or the connector.
pub const CONDITION: &Question = &Question::any(
    "body-condition",
    Place::Sockets,
    Equipment::Eyes,
    &["live-metal", "slot-to-the-inside", "broken", "opens-by-hand", "scorched"],
)
.when(has_body);

/// Whether the body says what it carries in all.
pub const TOTAL_RATING: &Question =
    &Question::one("total-rating", Place::Sockets, Equipment::Eyes, &["marked", "not-marked"])
        .when(body_rating_is_open);

/// Whether the switch says which way is on.
pub const SWITCH_MARKS: &Question =
    &Question::one("switch-marks", Place::Sockets, Equipment::Eyes, &["marked", "not-marked"])
        .when(has_switch)
        .lesser();

/// Whether a magnet pulls the line and neutral contacts, opened.
pub const CONTACT_METAL: &Question =
    &Question::one("contact-metal", Place::Inside, Equipment::Meters, &["not-pulled", "weakly", "strongly"])
        .when(|view| on_leads(view) && opening::is_open(view));

/// **Finds** metal of the live circuit within a finger's reach.
///
/// **Why it matters** whoever touches it holds the mains.
///
/// **Source** BS 1363-2 (memory-high).
///
/// **Decision** by eye.
pub const LIVE_PART_TOUCHABLE: &Check = &marked(
    "live-part-touchable",
    Judge::Marked(CONDITION, "live-metal", Danger),
    &[bs1363_2::TOUCH],
    Prospect { minutes: 0.3, percent: 4 },
);

/// **Finds** a slot for hanging up that leads to the inside.
///
/// **Why it matters** the screw in the wall, or a finger, reaches live parts.
///
/// **Source** BS 1363-2 (memory-high).
///
/// **Decision** by eye.
pub const MOUNTING_SLOT_REACHES_INSIDE: &Check = &Check {
    applies: on_leads,
    ..marked(
        "mounting-slot-reaches-inside",
        Judge::Marked(CONDITION, "slot-to-the-inside", Danger),
        &[bs1363_2::TOUCH],
        Prospect { minutes: 0.2, percent: 8 },
    )
};

/// **Finds** a body that is cracked or has a piece missing.
///
/// **Why it matters** nothing but the body keeps hands from the mains.
///
/// **Source** BS 1363-2 (memory-high).
///
/// **Decision** by eye.
pub const CASE_BROKEN: &Check = &marked(
    "case-broken",
    Judge::Marked(CONDITION, "broken", Danger),
    &[bs1363_2::TOUCH],
    Prospect { minutes: 0.3, percent: 8 },
);

/// **Finds** a body that opens without a tool.
///
/// **Why it matters** it opens in a child's hands or when it is dropped.
///
/// **Source** BS 1363-2 (memory-high); also IEC 60884-1, 14.1.
///
/// **Decision** by hand, gently.
pub const CASE_OPENS_BY_HAND: &Check = &marked(
    "case-opens-by-hand",
    Judge::Marked(CONDITION, "opens-by-hand", Danger),
    &[bs1363_2::TOUCH],
    Prospect { minutes: 0.3, percent: 6 },
);

/// **Finds** brown, melted or bubbled plastic at the sockets.
///
/// **Why it matters** it has been far too hot already.
///
/// **Source** a fact of the trade.
///
/// **Decision** by eye.
pub const SOCKET_SCORCHED: &Check = &marked(
    "socket-scorched",
    Judge::Marked(CONDITION, "scorched", Danger),
    &[Clause::common_practice()],
    Prospect { minutes: 0.1, percent: 3 },
);

/// **Finds** a lead that does not say what it carries in all.
///
/// **Why it matters** with three heaters on one lead, nothing warns.
///
/// **Source** BS 1363-2 (read): a lead may be rated 13 A or less; it is marked.
///
/// **Decision** by eye, or from the rating copied out from the body.
pub const TOTAL_RATING_UNMARKED: &Check = &Check {
    code: "total-rating-unmarked",
    place: Place::Sockets,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: on_leads,
    judge: Judge::Reckoned(total_rating),
    asks: &[TOTAL_RATING, RATING],
    against: &[bs1363_2::MARKING],
    prospect: Prospect { minutes: 0.2, percent: 20 },
};

/// **Finds** a switch that does not say which way is on.
///
/// **Why it matters** it may be taken for off.
///
/// **Source** a fact of the trade.
///
/// **Decision** by eye; a hint only.
pub const SWITCH_UNMARKED: &Check = &Check {
    code: "switch-unmarked",
    place: Place::Sockets,
    needs: Equipment::Eyes,
    severity: BadSign,
    applies: has_switch,
    judge: Judge::Answer(SWITCH_MARKS, &[("marked", Ruling::Keeps), ("not-marked", Ruling::Breaks(BadSign))]),
    asks: &[SWITCH_MARKS],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.1, percent: 15 },
};

/// **Finds** line and neutral contacts of steel.
///
/// **Why it matters** steel carries badly, rusts and loses its spring: the contact heats up.
///
/// **Source** a fact of the trade: contacts are of brass or bronze.
///
/// **Decision** by magnet, opened; only a strong pull means steel, and a steel spring behind a brass contact is allowed.
pub const LIVE_CONTACT_STEEL: &Check = &Check {
    code: "live-contact-steel",
    place: Place::Sockets,
    needs: Equipment::Meters,
    severity: Breach,
    applies: on_leads,
    judge: Judge::Answer(
        CONTACT_METAL,
        &[("not-pulled", Ruling::Keeps), ("weakly", Ruling::CannotTell), ("strongly", Ruling::Breaks(Breach))],
    ),
    asks: &[CONTACT_METAL],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 1.0, percent: 15 },
};

const fn marked(code: &'static str, judge: Judge, against: &'static [Clause], prospect: Prospect) -> Check {
    Check {
        code,
        place: Place::Sockets,
        needs: Equipment::Eyes,
        severity: Danger,
        applies: has_body,
        judge,
        asks: &[CONDITION],
        against,
        prospect,
    }
}

fn has_body(view: &View) -> bool {
    on_leads(view) || connector::has_connector(view)
}

fn has_switch(view: &View) -> bool {
    facts::has(view, "switch")
}

/// Whether nobody copied out a rating of the body that tells the whole load.
fn body_rating_is_open(view: &View) -> bool {
    let on_body = view.claims().ratings().iter().find(|(place, _)| *place == ClaimPlace::Body);
    on_leads(view) && !on_body.is_some_and(|(_, rating)| rating.current.is_some() || rating.power.is_some())
}

fn total_rating(view: &View) -> Judgement {
    if !body_rating_is_open(view) {
        return Ruling::FitsTheClaim.judgement(view, Breach, Reason::FitsTheClaim);
    }
    let Some(answer) = view.one(TOTAL_RATING) else {
        return Judgement::without_choice(Breach, view.answer(TOTAL_RATING, Target::Sample));
    };
    let ruling = if answer == "marked" { Ruling::FitsTheClaim } else { Ruling::Breaks(Breach) };
    let reason = Reason::Answered { question: TOTAL_RATING.id, target: Target::Sample, answer };
    ruling.judgement(view, Breach, reason)
}
