//! Which plug it is, and whether there is one where none may be.

use super::body::PLUG_AND_FLEX;
use crate::domain::check::{Check, Judge, Prospect, Ruling, always};
use crate::domain::facts::PLUG_PATTERN;
use crate::domain::finding::Severity::Danger;
use crate::domain::finding::{Judgement, Reason};
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, law_gb};
use crate::domain::view::View;

/// What sort of converter sits around a foreign plug.
pub const CONVERTER: &Question =
    &Question::one("converter", Place::Plug, Equipment::Eyes, &["marked-and-fixed", "not-marked", "comes-off"])
        .when(in_converter);

/// **Finds** a plug that the market's sockets do not take.
///
/// **Why it matters** it is forced in or put into a travel adaptor, and its earth is lost on the way.
///
/// **Source** Plugs and Sockets etc. (Safety) Regulations 1994 (read): a foreign plug needs a fixed conversion plug to BS 1363-5.
///
/// **Decision** by eye; a danger on every sample that needs an earth, which today's kinds all do. A marked converter is a claim.
///
/// **Example**
/// ```
/// use plugwary::domain::check::plug::pattern::PLUG_FOREIGN;
/// use plugwary::domain::finding::Severity;
/// assert_eq!(PLUG_FOREIGN.severity, Severity::Danger);
/// ```
pub const PLUG_FOREIGN: &Check = &Check {
    code: "plug-foreign",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: always,
    judge: Judge::Reckoned(plug_foreign),
    asks: &[PLUG_PATTERN, CONVERTER],
    against: &[law_gb::PLUGS],
    prospect: Prospect { minutes: 0.1, percent: 10 },
};

/// **Finds** a plug, or bare pins, at both ends of one flex.
///
/// **Why it matters** with one end in a socket the pins of the other are live in the hand.
///
/// **Source** common practice.
///
/// **Decision** by eye.
pub const PLUG_BOTH_ENDS: &Check = &Check {
    code: "plug-both-ends",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: always,
    judge: Judge::Marked(PLUG_AND_FLEX, "second-plug", Danger),
    asks: &[PLUG_AND_FLEX],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.1, percent: 1 },
};

/// **Finds** a plug on a flex that was cut off.
///
/// **Why it matters** plugged in, the cut end is live.
///
/// **Source** common practice.
///
/// **Decision** by eye.
pub const SEVERED_PLUG: &Check = &Check {
    code: "severed-plug",
    place: Place::Plug,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: always,
    judge: Judge::Marked(PLUG_AND_FLEX, "severed", Danger),
    asks: &[PLUG_AND_FLEX],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 0.1, percent: 1 },
};

fn in_converter(view: &View) -> bool {
    view.one(PLUG_PATTERN) == Some("uk-plug-with-converter")
}

fn plug_foreign(view: &View) -> Judgement {
    let (question, answer, ruling) = match (view.one(PLUG_PATTERN), view.one(CONVERTER)) {
        (None, _) => return Judgement::without_choice(Danger, view.answer(PLUG_PATTERN, Target::Sample)),
        (Some(pattern @ "uk-three-pin"), _) => (PLUG_PATTERN, pattern, Ruling::Keeps),
        (Some("uk-plug-with-converter"), Some(converter @ "marked-and-fixed")) => {
            (CONVERTER, converter, Ruling::FitsTheClaim)
        }
        (Some("uk-plug-with-converter"), Some(converter)) => (CONVERTER, converter, Ruling::Breaks(Danger)),
        (Some("uk-plug-with-converter"), None) => {
            return Judgement::without_choice(Danger, view.answer(CONVERTER, Target::Sample));
        }
        (Some(pattern), _) => (PLUG_PATTERN, pattern, Ruling::Breaks(Danger)),
    };
    ruling.judgement(view, Danger, Reason::Answered { question: question.id, target: Target::Sample, answer })
}
