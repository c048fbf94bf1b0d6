//! Reasons of the conductor's checks in words: how far over the limit, what could explain it, what makes it a danger.

use crate::domain::decision::Probability;
use crate::domain::finding::Conformity;
use crate::domain::finding::{CoreDanger, Evidence, FaultTold, RoomTemperature};
use crate::domain::physics::fault::Race;
use crate::domain::physics::heating::{Heat, Steady, Warmth};
use crate::domain::physics::metal::{Candidate, Explanation, Metal};
use crate::domain::physics::signs::{Look, likeliest_first};
use crate::domain::quantity::{Amount, Measurand, degrees_celsius};

use super::favour::times_beyond;
use super::number;
use super::reason::capital;

/// Why the cores' resistance is what it is found to be.
pub fn cores_measured(
    evidence: &[Evidence],
    room: RoomTemperature,
    explanation: Option<Explanation>,
    danger: Option<CoreDanger>,
    fault: Option<FaultTold>,
) -> String {
    let worst = evidence
        .iter()
        .filter(|e| e.outcome == Conformity::Nonconforming)
        .map(|e| times_beyond(e.value, &e.limit))
        .reduce(f64::max);
    let over =
        worst.map(|times| format!("The worst core has about {} times the resistance allowed.", number::roughly(times)));
    let sentences = [
        over.unwrap_or_default(),
        explanation.map(explained).unwrap_or_default().to_owned(),
        danger.map(dangerous).unwrap_or_default().to_owned(),
        fault.map(course).unwrap_or_default(),
        match room {
            RoomTemperature::Read => String::new(),
            RoomTemperature::Assumed => {
                "Nobody read the room’s temperature, so 20 °C, give or take 5, was taken.".to_owned()
            }
        },
    ];
    sentences.into_iter().filter(|sentence| !sentence.is_empty()).collect::<Vec<_>>().join(" ")
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
            "In a fault the earth core burns open before the fuse, and what you touch stays live, at about 230 V."
        }
    }
}

/// What a fault to earth does, step by step.
fn course(fault: FaultTold) -> String {
    let course = fault.course;
    let between =
        |(least, most): (Amount, Amount)| format!("{} to {}", number::estimate(least), number::estimate(most));
    let earliest = number::time(course.fuse.shortest);
    let fuse = course.fuse.longest.map_or_else(
        || format!("A 13 A fuse holds for {earliest}, and may never open."),
        |latest| format!("A 13 A fuse opens between {earliest} and {}.", number::time(latest)),
    );
    let may_open = if course.race == Race::CannotTell { " Which opens first cannot be told." } else { "" };
    let earth = if fault.earth_was_seen {
        ""
    } else {
        " This takes the green-and-yellow core for the earth: look which core goes to the long pin."
    };
    format!(
        "If line touches metal at the end of {} of flex (two usual supplies), the loop has {}, {} flow, and the metal is lifted to {}. {fuse} The earth core melts between {} and {}.{may_open} Where a rod in the ground is the earth, only an RCD switches off.{earth}",
        number::amount(course.length.amount()),
        between((course.loop_resistance.0.amount(), course.loop_resistance.1.amount())),
        between((course.current.0.amount(), course.current.1.amount())),
        between((course.touch.0.amount(), course.touch.1.amount())),
        number::time(course.melts.0),
        number::time(course.melts.1),
    )
}

/// What the heat balance came to, and what leaves it open where it is.
pub fn heat_balance(current: Amount, at: Steady, open: Option<(Steady, Steady)>, carries: Amount) -> String {
    let (current, carries) = (number::amount(current), number::about(carries));
    let settles = match at {
        Steady::At(_) => format!(
            "At {current} its cores settle at {}, lying straight in still air at 30 °C; {carries} brings them to 60 °C. Coiled or covered it gets much hotter; that is not modelled.",
            conductor(at)
        ),
        Steady::Never => format!(
            "At {current} it never settles: it heats until something gives way. {} already brings its cores to 60 °C.",
            capital(&carries)
        ),
    };
    let open = open.map(|(least, most)| {
        format!(
            " With the doubt of the readings and 30 % of the rise for the model they reach something between {} and {}. It would be cool enough at 60 °C or less and too hot from 70 °C on, so the model’s doubt leaves it open.",
            conductor(least),
            conductor(most)
        )
    });
    format!("{settles}{}", open.unwrap_or_default())
}

/// How warm a flex of its stated size gets: a statement of its own beside that of the rating table. Empty where nothing is modelled.
pub fn warmth(warmth: &[Warmth]) -> String {
    let Some(last) = warmth.last() else { return String::new() };
    let at = |w: &Warmth| {
        let current = number::amount(w.current.amount());
        format!("at {current} {} lying straight, {} in four turns", conductor(w.straight), conductor(w.wound))
    };
    let so = match last.heat {
        Heat::Overheats => "so it overheats",
        Heat::CannotTell => "so whether it overheats lying straight cannot be told",
        Heat::Within => "so it does not overheat lying straight",
    };
    format!(
        " Predicted for its cores {}. 70 °C is the most for PVC, {so}. Room at 30 °C; the rise may be 30 % off; the turns are a table’s factor, not modelled.",
        warmth.iter().map(at).collect::<Vec<_>>().join("; ")
    )
}

/// A temperature that a conductor settles at; above 160 °C the number only means "destroyed".
fn conductor(steady: Steady) -> String {
    match steady {
        Steady::At(conductor) if conductor <= degrees_celsius(160.0) => {
            format!("about {}", number::rounded(conductor.amount()))
        }
        Steady::At(_) | Steady::Never => "more than 160 °C".to_owned(),
    }
}

/// The metals that the signs speak for, and the look that would tell most.
pub fn metals(candidates: &[Candidate], contradict: bool, next: Option<Look>, stands: Option<bool>) -> String {
    let mut likely: Vec<(&str, f64)> = Vec::new();
    for candidate in candidates {
        let (name, share) = (metal(candidate.metal), candidate.share.value());
        match likely.iter_mut().find(|(known, _)| *known == name) {
            Some((_, sum)) => *sum += share,
            None => likely.push((name, share)),
        }
    }
    likeliest_first(&mut likely, |(_, share)| *share);
    let told = |(name, share): &(&str, f64)| {
        format!("{name} ({})", number::chance(Probability::new(*share), number::Grounds::Number))
    };
    let told = match likely.as_slice() {
        [(only, _)] => format!("The signs speak for {only}."),
        likely => format!(
            "It may be {}. They cannot be told apart; each was as likely as another beforehand.",
            likely.iter().map(told).collect::<Vec<_>>().join(", ")
        ),
    };
    let contradict = if contradict {
        "The signs contradict each other: no metal explains them all, so one of them is wrong, and which one is not known. "
    } else {
        ""
    };
    let stands = match stands {
        Some(true) => " With what the cross-checks suggest granted, it is still not copper.",
        Some(false) => " With what the cross-checks suggest granted, it may be copper.",
        None => "",
    };
    format!("{contradict}{told}{}{stands}", next.map_or("", look))
}

const fn look(look: Look) -> &'static str {
    match look {
        Look::Magnet => " A magnet would tell most.",
        Look::Scrape => " A scraped strand would tell most.",
        Look::Mass => " The length, the resistance and the bare mass of one core together would tell most.",
        Look::Again => " Do each of them once more.",
    }
}

const fn metal(metal: Metal) -> &'static str {
    match metal {
        Metal::Copper => "copper",
        Metal::CladAluminium15 | Metal::CladAluminium10 => "copper-clad aluminium",
        Metal::Aluminium => "aluminium",
        Metal::CladSteel40 | Metal::CladSteel30 | Metal::CladSteel21 => "copper-clad steel",
        Metal::Steel => "steel",
        Metal::Brass => "brass",
        Metal::Stainless => "stainless steel",
    }
}
