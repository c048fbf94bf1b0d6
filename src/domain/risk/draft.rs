//! Draft scenarios: how each danger may come to hurt somebody, with a guess for each event. They are there to be weighed and changed.
//!
//! Every probability here is our starting guess, usual practice, with no published source: a round number, a power of ten or a half of
//! one. The same event has the same guess wherever it comes up. An injury is the gravest that the chain leads to in earnest.

use crate::domain::assess::Assessment;
use crate::domain::decision::Probability;
use crate::domain::finding::{Finding, Severity};
use crate::domain::standard::eu_risk::Injury;

/// One event of a draft, with our guess.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Guess {
    /// Kebab-case, named for what happens; the same event has the same code in every draft.
    pub code: &'static str,
    /// One chance in so many.
    one_in: f64,
}

impl Guess {
    /// How likely we guess it to be, once all earlier ones have happened.
    pub fn probability(&self) -> Probability {
        Probability::new(1.0 / self.one_in)
    }
}

/// How a tight family of dangers may come to hurt somebody.
#[derive(Debug)]
pub struct Family {
    /// Kebab-case, named for what is wrong.
    pub code: &'static str,
    /// The checks whose dangers it follows from.
    pub checks: &'static [&'static str],
    /// The events, in order.
    pub steps: &'static [Guess],
    /// The injury at the end.
    pub injury: Injury,
}

/// A family that has something to say of a sample.
#[derive(Debug, Clone, PartialEq)]
pub struct Draft {
    /// The code of the family.
    pub code: &'static str,
    /// The events, in order.
    pub steps: &'static [Guess],
    /// The injury at the end.
    pub injury: Injury,
    /// The checks that found a danger, by code.
    pub of: Vec<&'static str>,
}

const fn guess(code: &'static str, one_in: f64) -> Guess {
    Guess { code, one_in }
}

// What drafts are made of: what is plugged in, what fails, who touches what, and what ends it or does not.
const USED: Guess = guess("used", 1.0);
const LIVE_PART_TOUCHED: Guess = guess("live-part-touched", 10.0);
const PIN_TOUCHED: Guess = guess("pin-touched", 10.0);
const BARE_END_PLUGGED_IN: Guess = guess("bare-end-plugged-in", 2.0);
const BARE_END_TOUCHED: Guess = guess("bare-end-touched", 2.0);
const BODY_CONDUCTS: Guess = guess("body-conducts", 10.0);
const NOT_CUT_OFF: Guess = guess("not-cut-off", 2.0);
const SHOCK_KILLS: Guess = guess("shock-kills", 10.0);
const SHORT_SHOCK_KILLS: Guess = guess("short-shock-kills", 100.0);
const NEEDS_EARTH: Guess = guess("needs-earth", 2.0);
const APPLIANCE_FAILS: Guess = guess("appliance-fails", 100.0);
const METAL_TOUCHED: Guess = guess("metal-touched", 2.0);
const METAL_JOINED: Guess = guess("metal-joined", 10.0);
const WIRED_BY_MARK: Guess = guess("wired-by-mark", 100.0);
const UPSIDE_DOWN: Guess = guess("upside-down", 10.0);
const TOUCHED_WHILE_PLUGGING: Guess = guess("touched-while-plugging", 10.0);
const TRUSTED_AS_OFF: Guess = guess("trusted-as-off", 10.0);
const OVERLOADED: Guess = guess("overloaded", 2.0);
const FLEX_OVERHEATS: Guess = guess("flex-overheats", 10.0);
const CATCHES_FIRE: Guess = guess("catches-fire", 10.0);
const FIRE_SPREADS: Guess = guess("fire-spreads", 10.0);
const FIRE_KILLS: Guess = guess("fire-kills", 2.0);
const CONTACT_OVERHEATS: Guess = guess("contact-overheats", 2.0);
const CONTACT_BURNS: Guess = guess("contact-burns", 100.0);
const SURGE_PART_WEARS: Guess = guess("surge-part-wears", 10.0);
const SURGE_PART_BURNS: Guess = guess("surge-part-burns", 10.0);
const CHILD_ALONE: Guess = guess("child-alone", 10.0);
const CHILD_POKES: Guess = guess("child-pokes", 10.0);
const HOLDS_THE_THING: Guess = guess("holds-the-thing", 2.0);
const WIRE_COMES_OFF: Guess = guess("wire-comes-off", 10.0);
const WIRE_MEETS_METAL: Guess = guess("wire-meets-metal", 10.0);
const ARC_BURNS: Guess = guess("arc-burns", 2.0);
const ARC_MEETS_HAND: Guess = guess("arc-meets-hand", 100.0);
const INSULATION_LEAKS: Guess = guess("insulation-leaks", 10.0);
const BARRIER_FAILS: Guess = guess("barrier-fails", 10.0);
const USED_IN_THE_WET: Guess = guess("used-in-the-wet", 2.0);
const WATER_ENTERS: Guess = guess("water-enters", 10.0);
const RECALLED_FAULT_SHOWS: Guess = guess("recalled-fault-shows", 10.0);
const SOMEBODY_IS_THERE: Guess = guess("somebody-is-there", 10.0);
const IT_KILLS: Guess = guess("it-kills", 10.0);

/// Every family. Each danger that a check can find stands in one of them, and in one only.
pub const FAMILIES: &[Family] = &[
    Family {
        code: "live-part-in-reach",
        checks: &[
            "live-part-touchable",
            "mounting-slot-reaches-inside",
            "case-broken",
            "case-opens-by-hand",
            "body-broken",
            "body-opens-by-hand",
            "fuse-carrier-missing",
            "plug-head-detaches",
            "flex-damaged",
            "joint-in-flex",
        ],
        steps: &[USED, LIVE_PART_TOUCHED, BODY_CONDUCTS, NOT_CUT_OFF, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "pins-in-reach",
        checks: &["sleeve-missing", "sleeve-damaged", "pin-near-edge"],
        steps: &[USED, PIN_TOUCHED, BODY_CONDUCTS, NOT_CUT_OFF, SHORT_SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "bare-end",
        checks: &["plug-both-ends", "severed-plug"],
        steps: &[BARE_END_PLUGGED_IN, BARE_END_TOUCHED, BODY_CONDUCTS, NOT_CUT_OFF, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "no-earth",
        checks: &[
            "earth-contact-absent",
            "socket-without-earth",
            "socket-two-pin",
            "cores-too-few",
            "connector-earth-open",
            "earth-open",
            "earth-not-connected",
            "earth-intermittent",
            "earth-resistance-high",
            "earth-pin-plastic",
            "sleeve-on-earth",
            "plug-foreign",
            "socket-takes-foreign-plugs",
        ],
        steps: &[NEEDS_EARTH, APPLIANCE_FAILS, METAL_TOUCHED, NOT_CUT_OFF, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "earth-too-late",
        checks: &["earth-pin-not-first"],
        steps: &[APPLIANCE_FAILS, TOUCHED_WHILE_PLUGGING, NOT_CUT_OFF, SHORT_SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "false-double-square",
        checks: &["class-mark-contradicted"],
        steps: &[WIRED_BY_MARK, APPLIANCE_FAILS, METAL_TOUCHED, NOT_CUT_OFF, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "upside-down-plug",
        checks: &["plug-fits-upside-down"],
        steps: &[UPSIDE_DOWN, NEEDS_EARTH, APPLIANCE_FAILS, METAL_TOUCHED, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "mains-on-earth",
        checks: &["neutral-earth-joined", "earth-colour-wrong", "internal-colour-wrong", "plug-wired-wrong"],
        steps: &[NEEDS_EARTH, METAL_JOINED, METAL_TOUCHED, NOT_CUT_OFF, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "live-when-off",
        checks: &["polarity-reversed", "switch-in-neutral", "fuse-not-in-line"],
        steps: &[TRUSTED_AS_OFF, LIVE_PART_TOUCHED, BODY_CONDUCTS, NOT_CUT_OFF, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "overload",
        checks: &[
            "fuse-missing",
            "fuse-link-bridged",
            "fuse-standard-wrong",
            "fuse-above-rating",
            "fuse-over-flex",
            "flex-thin-for-rating",
            "flex-thin-for-fuse",
            "connector-above-flex",
            "rating-above-plug",
            "core-resistance-high",
            "overheats-at-claim",
            "internal-wire-thin",
        ],
        steps: &[OVERLOADED, FLEX_OVERHEATS, CATCHES_FIRE, FIRE_SPREADS, FIRE_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "bad-contact",
        checks: &["pin-loose", "socket-loose", "plug-scorched", "socket-scorched", "scorched-inside", "runs-hot"],
        steps: &[OVERLOADED, CONTACT_OVERHEATS, CONTACT_BURNS, FIRE_SPREADS, FIRE_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "surge-part",
        checks: &["surge-part-unprotected"],
        steps: &[SURGE_PART_WEARS, SURGE_PART_BURNS, FIRE_SPREADS, FIRE_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "open-shutters",
        checks: &["shutter-missing", "shutter-opens-to-single-pin"],
        steps: &[CHILD_ALONE, CHILD_POKES, HOLDS_THE_THING, NOT_CUT_OFF, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "wire-comes-loose",
        checks: &["conductor-can-stray", "strand-outside-terminal", "cord-grip-on-cores", "cord-grip-slips"],
        steps: &[WIRE_COMES_OFF, WIRE_MEETS_METAL, METAL_TOUCHED, NOT_CUT_OFF, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "short-circuit",
        checks: &["pole-shorted"],
        steps: &[USED, ARC_BURNS, ARC_MEETS_HAND],
        injury: Injury::HospitalVisit,
    },
    Family {
        code: "poor-insulation",
        checks: &["insulation-low", "withstand-broke-down", "leakage-high"],
        steps: &[INSULATION_LEAKS, METAL_TOUCHED, NOT_CUT_OFF, SHORT_SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "live-output",
        checks: &["output-not-isolated", "mains-to-touch-path-short", "creepage-or-clearance-short"],
        steps: &[BARRIER_FAILS, HOLDS_THE_THING, BODY_CONDUCTS, NOT_CUT_OFF, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "rcd-that-fails",
        checks: &["rcd-fails"],
        steps: &[APPLIANCE_FAILS, METAL_TOUCHED, NOT_CUT_OFF, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "outdoors",
        checks: &["outdoor-promise-unmet"],
        steps: &[USED_IN_THE_WET, WATER_ENTERS, LIVE_PART_TOUCHED, NOT_CUT_OFF, SHOCK_KILLS],
        injury: Injury::Fatal,
    },
    Family {
        code: "recalled",
        checks: &["recalled-product"],
        steps: &[USED, RECALLED_FAULT_SHOWS, SOMEBODY_IS_THERE, IT_KILLS],
        injury: Injury::Fatal,
    },
];

/// The family that a check's danger belongs to.
pub fn family(check: &str) -> Option<&'static Family> {
    FAMILIES.iter().find(|family| family.checks.contains(&check))
}

/// A draft for each family of which a danger was found, in the order of [`FAMILIES`].
pub fn drafts(assessment: &Assessment) -> Vec<Draft> {
    let dangers: Vec<&Finding> = assessment.findings.iter().filter(|f| f.breaks(Severity::Danger)).collect();
    let of = |family: &'static Family| {
        let codes = dangers.iter().map(|danger| danger.code);
        codes.filter(|code| family.checks.contains(code)).collect::<Vec<_>>()
    };
    FAMILIES
        .iter()
        .map(|family| Draft { code: family.code, steps: family.steps, injury: family.injury, of: of(family) })
        .filter(|draft| !draft.of.is_empty())
        .collect()
}
