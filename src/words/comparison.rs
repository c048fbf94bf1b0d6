//! A sample beside a known good in words: a sentence for each thing that was looked at in either.

use super::{clause, number, question, reason, statement, which};
use crate::domain::comparison::{Compared, Difference, Gap, Likeness, Ranges, Readings};
use crate::domain::examination::{Answer, Answered, Examination};
use crate::domain::question::{Question, Target};
use crate::domain::sample::Kind;
use crate::domain::standard::iso13528;

/// Said of a record that is kept for others to be compared with.
pub const IS_KNOWN_GOOD: &str = "kept as a known good";
/// Marks a record.
pub const KEEP_AS_KNOWN_GOOD: &str = "Keep it as a known good, to compare others with";
/// Heading of what differs.
pub const DIFFERS: &str = "What differs";
/// Heading of what does not, or cannot be told.
pub const THE_REST: &str = "No difference, or none that could be told";
/// Heading of what was looked at in one only.
pub const ONLY_ONE: &str = "Looked at in one of them only";
/// What a comparison can say and what it cannot.
pub const NO_STANDARD: &str = "A known good is one sample that somebody trusts, and no standard. To be like it is no proof of being safe, to differ from it no proof of being wrong: the limits decide, and they judged each of the two by itself.";
/// Said where the two are not of one kind.
pub const OTHER_KIND: &str =
    "These two are not of the same kind: much of what differs here differs between any two of their kinds.";

/// How differences are told from doubt, with its source.
pub fn how() -> String {
    format!(
        "A difference counts if it is larger than the doubts of both readings together, which stand for about 95 of 100 cases ({}).",
        clause::citation(&iso13528::NORMALISED_ERROR)
    )
}

/// What must be said beside a comparison: that a known good is no standard, and, where it is so, that the kinds differ.
pub fn cautions(sample: &Examination, reference: &Examination) -> Vec<&'static str> {
    let is_other_kind = sample.sample.kind != reference.sample.kind;
    [NO_STANDARD].into_iter().chain(is_other_kind.then_some(OTHER_KIND)).collect()
}

/// How many things differ, of how many that could be held against each other.
pub fn summary(compared: &[Compared]) -> String {
    let is_open = |likeness: &Likeness| {
        matches!(
            likeness,
            Likeness::OnlySample
                | Likeness::OnlyReference
                | Likeness::NotOfOneLength
                | Likeness::Readings(Readings::Ranges(Ranges::CannotTell))
        )
    };
    let told = compared.iter().filter(|one| !is_open(&one.likeness)).count();
    let differing = compared.iter().filter(|one| one.differs()).count();
    match (differing, told) {
        (_, 0) => "Nothing was looked at in both, so nothing can be compared.".to_owned(),
        (0, told) => format!("None of the {told} things looked at in both differs beyond its doubt."),
        (1, told) => format!("1 of the {told} things looked at in both differs."),
        (n, told) => format!("{n} of the {told} things looked at in both differ."),
    }
}

/// What one question shows of the two.
pub fn sentence(compared: &Compared, kind: Kind) -> String {
    let topic = || reason::capital(&topic(compared.question, compared.target, kind));
    let said = |answer: Option<&Answer>| said(compared, answer, kind);
    match compared.likeness {
        Likeness::Readings(Readings::Numbers(difference)) => {
            format!("{}{}", numbers(compared, &difference, kind), temperature(compared.question))
        }
        Likeness::Readings(Readings::Ranges(Ranges::Apart)) => {
            format!("{} They differ.", both(&said(compared.sample), &said(compared.reference)))
        }
        Likeness::Readings(Readings::Ranges(Ranges::BothOpen)) => {
            format!("Both displays showed no path at all. {}", said(compared.sample))
        }
        Likeness::Readings(Readings::Ranges(Ranges::CannotTell)) => {
            format!(
                "{} One display gave no number, so it cannot be told whether they differ.",
                both(&said(compared.sample), &said(compared.reference))
            )
        }
        Likeness::NotOfOneLength => format!(
            "{}: it goes with the length that was read, and the two lengths differ or were not measured. It cannot be compared.",
            topic()
        ),
        Likeness::Same => format!("The same in both. {}", said(compared.sample)),
        Likeness::Other => both(&said(compared.sample), &said(compared.reference)),
        Likeness::OnlySample => {
            format!("Told of the sample only: {}", said(compared.sample))
        }
        Likeness::OnlyReference => {
            format!("Told of the known good only: {}", said(compared.reference))
        }
    }
}

fn both(sample: &str, reference: &str) -> String {
    format!("Of the sample: {sample} Of the known good: {reference}")
}

/// What an answer says of the thing it was asked of.
fn said(compared: &Compared, answer: Option<&Answer>, kind: Kind) -> String {
    let sentence = |answer: &Answer| {
        let answered = Answered { question: compared.question, target: compared.target, answer: answer.clone() };
        statement::sentence(&answered, kind)
    };
    answer.map(sentence).unwrap_or_default()
}

fn topic(question: &Question, target: Target, kind: Kind) -> String {
    question::of(question).topic.replace("{which}", &which::which(target, kind))
}

fn numbers(compared: &Compared, difference: &Difference, kind: Kind) -> String {
    let (size, doubt) = number::difference(difference.difference, difference.u);
    let apart = || apart(compared, difference, &size, kind);
    match difference.gap {
        Gap::Beyond => format!("{}, more than the doubt of both readings ({doubt}).", apart()),
        Gap::BeyondUnlessLeads => format!(
            "{}. That is more than the doubt of both readings ({doubt}), but the meter’s own leads may be in it: read again with the leads taken off.",
            apart()
        ),
        Gap::BeyondIfOneInstrument => format!(
            "{}. That is less than the doubt of both readings ({doubt}). If the very same instrument took both it is a difference all the same: read both again with it, one after the other.",
            apart()
        ),
        Gap::Within => format!(
            "{}: no difference beyond the doubt of both readings ({size} apart, with a doubt of {doubt}).",
            reason::capital(&topic(compared.question, compared.target, kind))
        ),
    }
}

/// "The sample’s earth pin is 0.42 mm narrower than the known good’s".
fn apart(compared: &Compared, difference: &Difference, size: &str, kind: Kind) -> String {
    let is_more = difference.sample.0.in_unit(number::suited(difference.sample.0))
        >= difference.reference.0.in_unit(number::suited(difference.sample.0));
    let of_size = SIZES.iter().find(|(id, ..)| *id == compared.question.id);
    match (of_size, is_more) {
        (Some((_, is, more, _)), true) => format!("{is} {size} {more} than the known good’s"),
        (Some((_, is, _, less)), false) => format!("{is} {size} {less} than the known good’s"),
        (None, is_more) => {
            let topic = reason::capital(&topic(compared.question, compared.target, kind));
            let more_or_less = if is_more { "more" } else { "less" };
            format!("{topic}: the sample reads {size} {more_or_less} than the known good")
        }
    }
}

/// Said of what warmth changes and nobody corrected here; empty for all else.
fn temperature(question: &Question) -> &'static str {
    match question.id {
        "core-resistance" | "cores-joined" | "half-length-resistance" | "earth-resistance" => {
            " Copper reads 4 % more in a room that is 10 °C warmer; that is not taken off here."
        }
        _ => "",
    }
}

/// Sizes that have words of their own: the question, how the sentence begins, and the two ways to differ.
const SIZES: [(&str, &str, &str, &str); 20] = [
    ("fuse-length", "The sample’s fuse is", "longer", "shorter"),
    ("fuse-diameter", "The caps of the sample’s fuse are", "thicker", "thinner"),
    ("fuse-mass", "The sample’s fuse is", "heavier", "lighter"),
    ("pin-to-edge", "A lower pin of the sample is", "further from the plug’s edge", "nearer to the plug’s edge"),
    ("live-pin-width", "A lower pin of the sample is", "wider", "narrower"),
    ("earth-pin-width", "The sample’s earth pin is", "wider", "narrower"),
    ("pin-thickness", "A pin of the sample is", "thicker", "thinner"),
    ("live-pin-length", "A lower pin of the sample is", "longer", "shorter"),
    ("earth-pin-length", "The sample’s earth pin is", "longer", "shorter"),
    ("hole-to-edge", "A lower hole of the sample is", "further from the edge", "nearer to the edge"),
    ("creepage", "Along the board the sample’s way from mains to USB is", "longer", "shorter"),
    ("clearance", "Through the air the sample’s way from mains to USB is", "longer", "shorter"),
    ("flex-length", "The sample’s flex is", "longer", "shorter"),
    ("flex-diameter", "The sample’s flex is", "thicker", "thinner"),
    ("sheath-thickness", "The outer layer of the sample’s flex is", "thicker", "thinner"),
    ("insulation-thickness", "The insulation of the sample’s thinnest wire is", "thicker", "thinner"),
    ("ten-strands-width", "Ten strands of the sample’s brown core, side by side, are", "wider", "narrower"),
    ("one-strand-width", "A strand of the sample’s brown core is", "thicker", "thinner"),
    ("core-mass", "The bare metal of the sample’s brown core is", "heavier", "lighter"),
    ("hottest-spot", "The sample’s hottest spot is", "hotter", "cooler"),
];

/// What a picture of two faces shows.
pub const FACES: &str =
    "The pin sides of two plugs over each other, earth pin up: the sample drawn through, the known good dashed.";
/// How such a picture is to be read.
pub const HOW_DRAWN: &str = "Drawn through: the sample. Dashed: the known good. Sizes that nobody measured are drawn as they should be, and of the outlines only the distance to a lower pin counts.";

/// "Width of the earth pin: 7.93 mm ± 0.03 mm, the known good’s 7.80 mm ± 0.03 mm."
pub fn size(of: &str, sample: Option<&str>, known_good: Option<&str>) -> String {
    let unmeasured = "not measured";
    let (sample, known_good) = (sample.unwrap_or(unmeasured), known_good.unwrap_or(unmeasured));
    format!("{}: the sample {sample}, the known good {known_good}.", reason::capital(of))
}
