//! The words of the file: headings, how to read it, cautions.

use super::moment::moment;
use super::statement::Bar;
use super::{check, clause, reason, verdict};
use crate::domain::assess::Assessment;
use crate::domain::examination::{Answer, Answered, Examination};
use crate::domain::finding::Finding;
use crate::domain::sample::{Equipment, Sample};
use crate::domain::standard::Clause;

/// Said first, to somebody who never saw the app.
pub const WHAT_THIS_IS: &str =
    "What was found on one sample of a mains product. Made with Plugwary on the examiner’s own device.";
/// Heading.
pub const WHAT_IS_WRONG: &str = "What is wrong with it";
/// Heading.
pub const BAD_SIGNS: &str = "Bad signs, which decide nothing";
/// Heading.
pub const COULD_NOT_BE_TOLD: &str = "What could not be told";
/// Before a list of doubts.
pub const SO_NOT_TOLD: &str = "So it could not be told whether there is any of these, with what would settle it:";
/// Heading.
pub const ONLY_PRINT: &str = "Dangers with only somebody’s word against them";
/// Said under it.
pub const ONLY_PRINT_MEANS: &str = "The print on the product, or a search, says that these are in order. That shows nothing: they count as not tested.";
/// Said under the heading of what nobody looked at.
pub const NOT_LOOKED_MEANS: &str = "Nothing is said about these, good or bad.";
/// Begins the dangers among them.
pub const DANGERS: &str = "Dangers nobody looked for: ";
/// Begins the rest.
pub const OTHERS: &str = "Other things nobody looked for: ";
/// Heading.
pub const WHAT_WAS_SEEN: &str = "What was seen, step by step";
/// Heading.
pub const WHAT_IT_CLAIMS: &str = "What it claims, place by place";
/// Said beside a quantity of which two places state what cannot both be true.
pub const DISAGREE: &str = "these disagree";
/// Heading.
pub const NOBODY_LOOKED_AT: &str = "What nobody looked at";
/// Heading.
pub const SOURCES: &str = "Sources";
/// Said under it.
pub const SOURCES_MEAN: &str = "Standards are sold, and none was open where these rules were written. Without a remark, the rule or number was read in a public copy or summary. “Quoted from memory” means that the limit or rule was not checked against the text of the standard or law. “Usual practice” is what the trade does, without a published source.";
/// Heading.
pub const CAUTIONS_HEADING: &str = "What this file is not";
/// Heading.
pub const HOW_TO_READ: &str = "How to read this";
/// Said in the place of a photo whose bytes are gone.
pub const PHOTO_MISSING: &str = "A photo was taken here; it is no longer on the device that made this file.";

/// What a bar means.
pub const fn bar(bar: Bar) -> &'static str {
    match bar {
        Bar::Solid => "Danger: it can hurt or kill, or set fire.",
        Bar::Hatched => "Against the rules: it breaks a law or a standard.",
        Bar::Dotted => "Can’t tell: it was looked at, and what was seen does not settle it.",
        Bar::Empty => "Not looked at.",
        Bar::Double => "Bad sign: poor or dishonest work, or a mere hint. It decides nothing.",
        Bar::Thin => "Nothing against it: it keeps the rule, or is a plain fact.",
    }
}

/// How numbers are to be read.
pub const NUMBERS: &[&str] = &[
    "Every reading has a doubt. It is shown as ±, and the true value lies inside it in about 95 of 100 cases.",
    "A reading is “inside the limit” if the chance that the true value keeps the limit is 95 % or more, “outside” if it is 5 % or less, and “can’t tell” between the two (JCGM 106).",
    "“Tried in its favour” repeats a decision with the whole doubt granted to the product, then with each error that cross-checks of the readings suggest, then with all of them. It never lifts a danger.",
];

/// Cautions at the end of every file.
pub const CAUTIONS: &[&str] = &[
    "It speaks of this one sample, and not of others of the same product. It certifies nothing; local rules and licensed practice come first.",
    "A dangerous sample should not be posted, resold or thrown away whole. Do not cut its plug off; one that was cut off can kill whoever plugs it in: take its fuse out and make it useless at once, or tag it and lock it away as evidence.",
];

/// Where the sample came from; empty where nobody said.
pub fn origin(origin: &str) -> String {
    if origin.is_empty() { String::new() } else { format!("Where it came from: {origin}") }
}

/// What it was looked at with, and how much of it was measured.
pub fn how_looked(examination: &Examination) -> String {
    let with = match examination.equipment {
        Equipment::Eyes => "Looked at by eye",
        Equipment::HandTools => "Looked at by eye and with hand tools",
        Equipment::Meters => "Looked at by eye, with hand tools and with meters",
    };
    let is_reading = |answered: &&Answered| matches!(answered.answer, Answer::Reading(_));
    match examination.answers.iter().filter(is_reading).count() {
        0 => format!("{with}; nothing was measured."),
        1 => format!("{with}; one reading."),
        n => format!("{with}; {n} readings."),
    }
}

/// How much of what these tools can tell was looked at, in all and by place, and how much needs more than these tools.
pub fn coverage(assessment: &Assessment, sample: &Sample, equipment: Equipment) -> String {
    let places = assessment.within_reach(equipment);
    let by_place: Vec<String> = places
        .iter()
        .map(|(place, tally)| {
            format!("{} {} of {}", verdict::place(*place, sample.kind).to_lowercase(), tally.made, tally.of)
        })
        .collect();
    let made: usize = places.iter().map(|(_, tally)| tally.made).sum();
    let of: usize = places.iter().map(|(_, tally)| tally.of).sum();
    let tools = match equipment {
        Equipment::Eyes => "by eye",
        Equipment::HandTools => "by eye and with hand tools",
        Equipment::Meters => "with meters and the sample opened",
    };
    let beyond = match assessment.looked.of.saturating_sub(of) {
        0 => String::new(),
        n => format!(" Another {n} need more tools."),
    };
    let by_place = by_place.join(", ");
    format!("Looked at {made} of the {of} things that can be looked at {tools}; by place: {by_place}.{beyond}")
}

/// When it was examined, and by which edition of the rules it was judged.
pub fn when(begun: &str, changed: &str, edition: &str) -> String {
    let times = match (begun, changed) {
        ("", "") => String::new(),
        (begun, "") => format!("Begun {}. ", moment(begun)),
        ("", changed) => format!("Last changed {}. ", moment(changed)),
        (begun, changed) => format!("Begun {}; last changed {}. ", moment(begun), moment(changed)),
    };
    format!("{times}Judged by edition {edition} of Plugwary’s rules.")
}

/// What a finding is called, and what it found.
pub fn heading(finding: &Finding) -> String {
    format!("{}: {}", reason::capital(reason::label(finding)), check::of(finding.code).wrong)
}

/// A doubt among others that share their reason: what could not be told, and what would settle it.
pub fn doubt(finding: &Finding) -> String {
    format!("{}. {}", reason::capital(check::of(finding.code).wrong), reason::settles(finding))
}

/// What a finding is held against.
pub fn held_against(against: &[Clause]) -> String {
    let citations: Vec<String> = against.iter().map(clause::citation).collect();
    if citations.is_empty() { String::new() } else { format!("Held against: {}.", citations.join("; ")) }
}

/// The line under a photo.
pub fn photo_of(taken: &str, sha256: &str) -> String {
    if taken.is_empty() {
        format!("Photo. SHA-256 {sha256}")
    } else {
        format!("Photo attached {}. SHA-256 {sha256}", moment(taken))
    }
}
