//! Cross-checks of readings in words: what was expected, what was read, what may be behind a difference, and what each cannot see.

use super::{number, reason};
use crate::domain::cross_check::{CrossCheck, Crossed};
use crate::domain::decision::Probability;
use crate::domain::physics::reference::Cause;

/// Rarer causes are not named.
const RARE: f64 = 0.02;

/// All cross-checks that were made, one after the other.
pub fn said(checks: &[CrossCheck]) -> String {
    checks.iter().map(one).collect::<Vec<_>>().join(" ")
}

fn one(check: &CrossCheck) -> String {
    let (expected, read) = (number::amount(check.expected), number::amount(check.read));
    match &check.of {
        Crossed::Joined { clips } => {
            let clips = clips.map_or_else(String::new, |clips| {
                format!(" {} of clips in every reading would explain the rest.", reason::capital(&number::about(clips)))
            });
            let agree = if check.agrees { "They agree." } else { "They do not agree." };
            format!(
                "Read alone, the cores should give {expected} joined; {read} was read. {agree}{clips} This cannot show a wrong scale or length."
            )
        }
        Crossed::Reference { causes } => {
            let causes = if check.agrees {
                "The meter’s scale is right, if the wire is what is said of it.".to_owned()
            } else {
                format!(
                    "So something said of the wire, its length or the meter is wrong. {} This order hangs on the list, each as likely as another beforehand.",
                    causes.iter().filter(|cause| cause.1.value() >= RARE).map(cause).collect::<Vec<_>>().join(" ")
                )
            };
            format!(
                "Copper of its size and length, the known wire should read {} at 20 °C; it read {read}. {causes}",
                number::about(check.expected)
            )
        }
        Crossed::HalfLength => {
            let told = if check.agrees {
                "The core is thin all along."
            } else if check.reads_more {
                "A bad joint, a break or a bad clip is in this half."
            } else {
                "A bad joint, a break or a bad clip is in the other half."
            };
            format!(
                "Half of the core that reads most should read {expected}; {read} was read. {told} This cannot show a wrong scale."
            )
        }
    }
}

fn cause((cause, share): &(Cause, Probability)) -> String {
    let said = match cause {
        Cause::AsSaid => "It may be chance",
        Cause::Thinner => "It may be thinner than is said: measure it across",
        Cause::CladSteel => "It may be steel under copper: try a magnet",
        Cause::Aluminium => "It may be aluminium under copper: scrape it",
        Cause::Brass => "It may be brass: scrape it",
        Cause::Scale => "The meter may show too much: take another one",
        Cause::Length => "The length may be wrong: measure it again",
        Cause::Series => "Clips may add a lot: clean the ends",
    };
    format!("{said} ({}).", number::chance(*share, number::Grounds::Number))
}
