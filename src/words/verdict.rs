//! The verdict in words: its first line, what follows from it, and what must be said with it.

use crate::domain::assess::{Assessment, Tally};
use crate::domain::finding::{Conformity, Severity};
use crate::domain::sample::{Equipment, Kind, Market, Place};
use crate::domain::verdict::Verdict;

/// The first line of the statement.
pub fn headline(assessment: &Assessment) -> String {
    let looked = assessment.looked;
    match assessment.verdict {
        Verdict::KeepAway => "Keep away".to_owned(),
        Verdict::DoNotAccept => "Don’t accept it".to_owned(),
        Verdict::NotDecided => "Not decided: don’t use it yet".to_owned(),
        Verdict::NothingWrongSeen if assessment.outside_only => {
            format!("Nothing wrong seen from outside, in {} of {}", looked.made, looked.of)
        }
        Verdict::NothingWrongSeen => format!("Nothing wrong seen in {} of {}", looked.made, looked.of),
    }
}

/// The line under it: why, and how far it reaches.
pub fn reach(assessment: &Assessment) -> String {
    let dangers = count_breaks(assessment, Severity::Danger);
    let breaches = count_breaks(assessment, Severity::Breach);
    match assessment.verdict {
        Verdict::KeepAway if breaches == 0 => format!("{}.", number_of(dangers, "danger")),
        Verdict::KeepAway => {
            format!("{}, and {} more against the rules.", number_of(dangers, "danger"), breaches)
        }
        Verdict::DoNotAccept => format!("{} against the rules.", number_of(breaches, "thing")),
        Verdict::NotDecided => undecided(assessment),
        Verdict::NothingWrongSeen if assessment.outside_only => "Earth, polarity and copper not tested.".to_owned(),
        Verdict::NothingWrongSeen => {
            "Counted is what can be wrong with such a sample. This speaks of this one alone and certifies nothing."
                .to_owned()
        }
    }
}

/// A verdict by its name.
pub const fn name(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::KeepAway => "keep away",
        Verdict::DoNotAccept => "don’t accept it",
        Verdict::NotDecided => "not decided: don’t use it yet",
        Verdict::NothingWrongSeen => "nothing wrong seen",
    }
}

/// What to do now; empty where nothing follows.
pub const fn advice(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::KeepAway => {
            "Do not buy it, and do not plug it in. If you have it already, do not post it back, resell it or bin it whole: set it aside, label it, and tell the authority (in the UK: Trading Standards)."
        }
        Verdict::DoNotAccept => {
            "It breaks a rule. Do not buy, sell or hand it on as it is. No danger was found, which does not make it safe: see what could not be told, and what nobody looked at."
        }
        Verdict::NotDecided => "Do not use it meanwhile.",
        Verdict::NothingWrongSeen => "",
    }
}

/// What a buyer is told after the first danger.
pub const ENOUGH: &str = "That is enough: leave it.";

/// What an inspector is told after the first danger.
pub const ENOUGH_TO_DECIDE: &str =
    "That decides it. Looking on shows what else is wrong, which makes the file stronger.";

fn count_breaks(assessment: &Assessment, severity: Severity) -> usize {
    assessment.findings.iter().filter(|finding| finding.breaks(severity)).count()
}

fn undecided(assessment: &Assessment) -> String {
    let told = |f: &&crate::domain::finding::Finding| {
        f.outcome() == Conformity::Inconclusive && f.judgement.severity > Severity::BadSign
    };
    match assessment.findings.iter().filter(told).count() {
        0 => "Not everything that must be looked at was.".to_owned(),
        1 => "One grave thing could not be told.".to_owned(),
        n => format!("{n} grave things could not be told."),
    }
}

/// "1 danger", "3 dangers".
fn number_of(n: usize, noun: &str) -> String {
    if n == 1 { format!("1 {noun}") } else { format!("{n} {noun}s") }
}

/// How much was looked at in each place: "Plug 12 of 30, Cable 3 of 17".
pub fn looked_by_place(assessment: &Assessment, kind: Kind) -> String {
    let line = |(at, tally): &(Place, Tally)| format!("{} {} of {}", place(*at, kind), tally.made, tally.of);
    assessment.looked_at.iter().map(line).collect::<Vec<_>>().join(", ")
}

/// The name of a place.
pub const fn place(place: Place, kind: Kind) -> &'static str {
    match (place, kind) {
        (Place::WhatItSays, _) => "What it says",
        (Place::Plug, _) => "Plug",
        (Place::Cable, _) => "Cable",
        (Place::Sockets, Kind::ExtensionLead) => "Sockets",
        (Place::Sockets, Kind::CordSet) => "Connector",
        (Place::Readings, _) => "Readings",
        (Place::Inside, _) => "Inside",
        (Place::Live, _) => "Live",
    }
}

/// The name of a kind of sample.
pub const fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::ExtensionLead => "a lead with several sockets",
        Kind::CordSet => "a plug with flex",
    }
}

/// The name of a market.
pub const fn market(market: Market) -> &'static str {
    match market {
        Market::GreatBritain => "Great Britain",
        Market::NorthernIreland => "Northern Ireland",
    }
}

/// The name of a set of equipment.
pub const fn equipment(equipment: Equipment) -> &'static str {
    match equipment {
        Equipment::Eyes => "Eyes only",
        Equipment::HandTools => "Hand tools",
        Equipment::Meters => "Meter and screwdriver",
    }
}

/// What a set of equipment is.
pub const fn equipment_means(equipment: Equipment) -> &'static str {
    match equipment {
        Equipment::Eyes => "about three minutes, nothing opened",
        Equipment::HandTools => "ruler, calliper, magnet, torch, any continuity tester",
        Equipment::Meters => "ohm meter, insulation tester; the sample is opened and may be cut",
    }
}

/// How much a break matters.
pub const fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Danger => "danger",
        Severity::Breach => "against the rules",
        Severity::BadSign => "bad sign",
    }
}
