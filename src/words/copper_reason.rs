//! Reasons of the conductor's checks in words: how far over the limit, what could explain it, what makes it a danger.

use crate::domain::finding::{Bound, Conformity};
use crate::domain::finding::{CoreDanger, Evidence, RoomTemperature};
use crate::domain::physics::metal::{Candidate, Explanation, Metal};
use crate::domain::quantity::Amount;

use super::number;
use super::reason::capital;

/// Why the cores' resistance is what it is found to be.
pub fn cores_measured(
    evidence: &[Evidence],
    room: RoomTemperature,
    explanation: Option<Explanation>,
    danger: Option<CoreDanger>,
) -> String {
    let worst =
        evidence.iter().filter(|e| e.outcome == Conformity::Nonconforming).filter_map(times_the_limit).reduce(f64::max);
    let over =
        worst.map(|times| format!("The worst core has about {} times the resistance allowed.", number::roughly(times)));
    let sentences = [
        over.unwrap_or_default(),
        explanation.map(explained).unwrap_or_default().to_owned(),
        danger.map(dangerous).unwrap_or_default().to_owned(),
        match room {
            RoomTemperature::Read => String::new(),
            RoomTemperature::Assumed => {
                "Nobody read the room’s temperature, so 20 °C, give or take 5, was taken.".to_owned()
            }
        },
    ];
    sentences.into_iter().filter(|sentence| !sentence.is_empty()).collect::<Vec<_>>().join(" ")
}

fn times_the_limit(evidence: &Evidence) -> Option<f64> {
    let Bound::AtMost(limit) = evidence.limit else { return None };
    let ratio = |unit| evidence.value.in_unit(unit).zip(limit.in_unit(unit)).map(|(value, limit)| value / limit);
    ratio(crate::domain::quantity::Unit::OhmPerKilometre)
}

const fn explained(explanation: Explanation) -> &'static str {
    match explanation {
        Explanation::CladAluminium => {
            "Copper-clad aluminium of the full size could explain it, and so could thinner copper."
        }
        Explanation::Steel => {
            "Even copper-clad aluminium of the full size would have less: the cores are thinner than claimed, or of steel."
        }
        Explanation::Stainless => {
            "Even ordinary steel of the full size would have less: the cores are far thinner than claimed, or of stainless steel."
        }
        Explanation::NoMetal => {
            "No metal sold as a conductor has so much at the claimed size: the cores are far too thin."
        }
    }
}

const fn dangerous(danger: CoreDanger) -> &'static str {
    match danger {
        CoreDanger::HalfAsMuchAgain => "More than one and a half times the limit is a danger.",
        CoreDanger::Overheats => "At the current it claims, the flex gets too hot.",
        CoreDanger::EarthOpensFirst => {
            "In a fault the earth core burns open before the fuse, and what you touch stays live."
        }
    }
}

/// What the heat balance came to.
pub fn heat_balance(current: Amount, conductor: Option<Amount>, carries: Amount) -> String {
    let (current, carries) = (number::amount(current), number::about(carries));
    match conductor {
        Some(conductor) => format!(
            "At {current} its cores settle at about {}, lying straight in still air at 30 °C; {carries} brings them to 60 °C. Coiled or covered it gets much hotter; that is not modelled.",
            number::rounded(conductor)
        ),
        None => format!(
            "At {current} it never settles: it heats until something gives way. {} already brings its cores to 60 °C.",
            capital(&carries)
        ),
    }
}

/// Said where the margin of the heat balance leaves it open.
pub const HEAT_LEFT_OPEN: &str =
    "The model may be wrong by three tenths of the rise either way: that leaves it open whether it gets too hot.";

/// The metals that the signs speak for.
pub fn metals(candidates: &[Candidate]) -> String {
    match candidates {
        [] => "The signs speak for no metal.".to_owned(),
        [only] => format!("The signs speak for {}.", metal(only.metal)),
        [first, others @ ..] => {
            let others = others.iter().map(|c| metal(c.metal)).collect::<Vec<_>>().join(", ");
            format!("Most likely {}; these cannot be told from it: {others}.", metal(first.metal))
        }
    }
}

const fn metal(metal: Metal) -> &'static str {
    match metal {
        Metal::Copper => "copper",
        Metal::CladAluminium15 => "aluminium clad with 15 % copper",
        Metal::CladAluminium10 => "aluminium clad with 10 % copper",
        Metal::Aluminium => "aluminium",
        Metal::CladSteel40 => "copper-clad steel (40 %)",
        Metal::CladSteel30 => "copper-clad steel (30 %)",
        Metal::CladSteel21 => "copper-clad steel (21 %)",
        Metal::Steel => "steel",
        Metal::Brass => "brass",
        Metal::Stainless => "stainless steel",
    }
}
