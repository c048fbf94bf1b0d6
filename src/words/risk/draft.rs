//! What drafts of scenarios say, to begin with: each event with the reason for its guess, each family with its end. All of it is there to be
//! changed by whoever weighs it.

use crate::domain::assess::Assessment;
use crate::domain::risk::draft::{self, Draft};
use crate::domain::risk::{Scenario, Standing, Step};
use crate::record::Record;

/// Said after the reason of every guess.
pub const GUESSED: &str = "This is our starting guess: usual practice, no published source.";

/// The words of one event.
#[derive(Debug)]
struct EventWords {
    code: &'static str,
    happens: &'static str,
    reason: &'static str,
}

/// The words of one family of dangers.
#[derive(Debug)]
struct FamilyWords {
    code: &'static str,
    title: &'static str,
    injury: &'static str,
}

const fn event(code: &'static str, happens: &'static str, reason: &'static str) -> EventWords {
    EventWords { code, happens, reason }
}

const fn family(code: &'static str, title: &'static str, injury: &'static str) -> FamilyWords {
    FamilyWords { code, title, injury }
}

const SHOCK: &str = "A shock from the mains through the body can stop the heart.";
const FIRE: &str = "Fire and smoke in a home can kill whoever sleeps there.";

const EVENTS: &[EventWords] = &[
    event("used", "The product is plugged in and used", "It was bought for that."),
    event(
        "live-part-touched",
        "Somebody touches a part that is live",
        "The part is in reach for years; most hands miss it, a curious one or one in the dark does not.",
    ),
    event(
        "pin-touched",
        "A finger or something of metal meets a live pin while the plug is half in",
        "People hold plugs by the edge and pull them out askew, yet rarely touch the pins.",
    ),
    event(
        "bare-end-plugged-in",
        "Somebody plugs one end in while the other is bare",
        "The plug invites it; about half of all people would see the other end first.",
    ),
    event("bare-end-touched", "Somebody takes hold of the bare end", "A live end cannot be told from a dead one."),
    event(
        "body-conducts",
        "The current finds a way through the body to earth or to the other pole",
        "Shoes, dry skin and dry floors stop most of it; a wet hand or a radiator on the other side does not.",
    ),
    event(
        "not-cut-off",
        "Nothing cuts the current off in time",
        "A fuse does not notice a current through a body. Perhaps half of all homes have an RCD that does.",
    ),
    event("shock-kills", "The shock kills", "Most people let go or fall away; some cannot."),
    event("short-shock-kills", "The shock kills, short or weak as it is", "A moment or a small current seldom does."),
    event(
        "needs-earth",
        "Something with a metal body that needs an earth is plugged in",
        "About half of what is plugged in has such a body: kettles, toasters, irons, computers.",
    ),
    event(
        "appliance-fails",
        "A fault in the appliance plugged in makes its metal live",
        "It is rare in the life of one appliance, and the earth is there for just this.",
    ),
    event("metal-touched", "Somebody touches that metal", "It is made to be held."),
    event(
        "metal-joined",
        "Its metal is joined to line, and nothing blows at once",
        "In most such cases a fuse blows or only neutral is joined; in some neither is so.",
    ),
    event(
        "wired-by-mark",
        "Somebody trusts the double square and mends or joins it without an earth",
        "Few people mend such things, and most of them look inside.",
    ),
    event(
        "upside-down",
        "Somebody pushes a plug in upside down",
        "It does not fit well that way, and most people notice.",
    ),
    event(
        "touched-while-plugging",
        "Somebody holds that metal while the plug goes in",
        "It happens when one hand steadies the appliance.",
    ),
    event(
        "trusted-as-off",
        "Somebody switches off, or trusts a blown fuse, and reaches inside",
        "Most people pull the plug before they open or clean something.",
    ),
    event(
        "overloaded",
        "It carries all that its plug allows, for hours",
        "Heaters and kettles end up on such products in about half of all homes.",
    ),
    event(
        "flex-overheats",
        "Nothing ends it before the flex gets so hot that its plastic gives way",
        "It takes a coil, a cover or a long load; most loads end before.",
    ),
    event(
        "catches-fire",
        "Something beside it catches fire",
        "Carpets, bedding and paper lie where flex lies; more often it only melts and stinks.",
    ),
    event(
        "fire-spreads",
        "The fire spreads before anybody notices",
        "Most fires are seen or smelt while they are small; those at night are not.",
    ),
    event(
        "fire-kills",
        "Somebody does not get out, or not without lasting harm",
        "Smoke in the night leaves little time.",
    ),
    event(
        "contact-overheats",
        "The contact gets hot again under load",
        "Heat takes the spring out of a contact, so that it gets hotter each time.",
    ),
    event("contact-burns", "It sets the plastic around it on fire", "Most bad contacts char and fail without a flame."),
    event("surge-part-wears", "The surge part wears out", "It takes years of surges, or one large one."),
    event(
        "surge-part-burns",
        "It gets so hot that the body burns, with nothing there to stop it",
        "Often a fuse blows first.",
    ),
    event(
        "child-alone",
        "A small child plays with it while nobody looks",
        "Small children live in or visit some of the homes, and leads lie on the floor.",
    ),
    event("child-pokes", "The child pushes something of metal into a live hole", "Pins, keys and hair clips fit."),
    event(
        "holds-the-thing",
        "Somebody holds what is live at that moment",
        "It is in a hand for much of the time, and lies about for as long.",
    ),
    event("wire-comes-off", "A pull or a knock takes a wire out of its place", "A flex is pulled often in its life."),
    event(
        "wire-meets-metal",
        "Its live end comes to lie against metal that can be touched",
        "There are many other places where it may come to lie.",
    ),
    event(
        "arc-burns",
        "An arc burns before a fuse opens",
        "A right fuse is quick; one in such a product need not be right.",
    ),
    event("arc-meets-hand", "It burns a hand or a face", "It burns inside the plug or body most of the time."),
    event(
        "insulation-leaks",
        "The poor insulation lets a current through to metal that can be touched",
        "It may stay poor for years before it lets go.",
    ),
    event(
        "barrier-fails",
        "What keeps the output from the mains fails",
        "A surge, damp or age does it; many last all the same.",
    ),
    event("used-in-the-wet", "It is used in the rain or on wet ground", "It is sold for that."),
    event("water-enters", "Water gets to live parts", "Nothing keeps it out, but most rain runs off."),
    event(
        "recalled-fault-shows",
        "The fault for which it was recalled shows in this one",
        "Few of the pieces in a recall fail. The notice of the recall may say how many: put that here.",
    ),
    event("somebody-is-there", "Somebody is there and is struck by it", "The notice may tell; mostly nobody is."),
    event("it-kills", "It kills", "Recalls of such products are for shocks and fires, which most people survive."),
];

const FAMILIES: &[FamilyWords] = &[
    family("live-part-in-reach", "Somebody gets a shock from a live part in reach", SHOCK),
    family("pins-in-reach", "Somebody gets a shock from the pins of the plug", SHOCK),
    family("bare-end", "Somebody gets a shock from a bare end", SHOCK),
    family("no-earth", "Somebody gets a shock from an appliance that has no earth", SHOCK),
    family("earth-too-late", "Somebody gets a shock while plugging in, before the earth touches", SHOCK),
    family("false-double-square", "Somebody gets a shock because a false mark was trusted", SHOCK),
    family("upside-down-plug", "Somebody gets a shock with a plug upside down", SHOCK),
    family("mains-on-earth", "Somebody gets a shock from metal that the product makes live", SHOCK),
    family("live-when-off", "Somebody gets a shock from what is switched off", SHOCK),
    family("overload", "The flex overheats and sets fire", FIRE),
    family("bad-contact", "A bad contact overheats and sets fire", FIRE),
    family("surge-part", "A worn surge part sets fire", FIRE),
    family("open-shutters", "A child gets a shock from an open hole", SHOCK),
    family("wire-comes-loose", "A wire comes loose and somebody gets a shock", SHOCK),
    family(
        "short-circuit",
        "A short circuit burns somebody",
        "An arc burns skin and eyes: a doctor sees to it, and it heals.",
    ),
    family("poor-insulation", "Somebody gets a shock through poor insulation", SHOCK),
    family("live-output", "Somebody gets a shock from a telephone on its cable", SHOCK),
    family("rcd-that-fails", "An appliance fails and the RCD does not save anybody", SHOCK),
    family("outdoors", "Somebody gets a shock in the wet", SHOCK),
    family(
        "recalled",
        "What the product was recalled for happens",
        "Recalls of such products are for shocks and fires.",
    ),
];

/// The drafts for all dangers that were found, in words.
pub fn drafts(assessment: &Assessment) -> Vec<Scenario> {
    draft::drafts(assessment).iter().map(in_words).collect()
}

/// A draft in words; empty ones where nobody wrote them, which a test proves that never happens.
pub fn in_words(draft: &Draft) -> Scenario {
    let step = |guess: &draft::Guess| {
        let words = EVENTS.iter().find(|words| words.code == guess.code);
        Step {
            happens: words.map_or("", |words| words.happens).to_owned(),
            probability: guess.probability(),
            reason: words.map_or("", |words| words.reason).to_owned(),
            standing: Standing::Guess,
        }
    };
    let words = FAMILIES.iter().find(|words| words.code == draft.code);
    Scenario {
        title: words.map_or("", |words| words.title).to_owned(),
        steps: draft.steps.iter().map(step).collect(),
        injury: draft.injury,
        injury_reason: words.map_or("", |words| words.injury).to_owned(),
        injury_standing: Standing::Guess,
        of: draft.of.clone(),
    }
}

/// The scenarios of a record, and drafts for those of its dangers that none of them speaks of.
pub fn scenarios(record: &Record, assessment: &Assessment) -> Vec<Scenario> {
    let is_open = |code: &&'static str| record.scenarios.iter().all(|scenario| !scenario.of.contains(code));
    let missing = drafts(assessment).into_iter().filter_map(|draft| {
        let of: Vec<&'static str> = draft.of.iter().copied().filter(is_open).collect();
        (!of.is_empty()).then_some(Scenario { of, ..draft })
    });
    record.scenarios.iter().cloned().chain(missing).collect()
}

/// The codes that there are words for, of events and of families.
pub fn worded() -> (impl Iterator<Item = &'static str>, impl Iterator<Item = &'static str>) {
    (EVENTS.iter().map(|words| words.code), FAMILIES.iter().map(|words| words.code))
}
