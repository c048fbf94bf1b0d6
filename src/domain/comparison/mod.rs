//! A sample beside a known good: every question that either answers, and what the two answers are to each other.
//!
//! It decides nothing. A known good is one sample that somebody trusts, and no standard: limits judge, not likeness.

mod difference;

pub use difference::{Difference, Gap, NormalisedError, Ranges, Readings, between};

use super::check;
use super::check::cable::copper::cross_check::{
    CORES_JOINED, HALF_LENGTH, REFERENCE_DIAMETER, REFERENCE_LENGTH, REFERENCE_RESISTANCE, REFERENCE_SIZE,
    REFERENCE_WIRE,
};
use super::check::cable::copper::strands::CORE_MASS;
use super::check::inside::opening::OPENED;
use super::check::live::competence::LIVE_COMPETENT;
use super::check::readings::earth_resistance::EARTH_RESISTANCE;
use super::examination::{Answer, Examination};
use super::facts;
use super::question::{Question, Target};

/// One question, asked of one of several, and what two examinations answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Compared<'a> {
    /// The question.
    pub question: &'static Question,
    /// Which of several.
    pub target: Target,
    /// What the sample's examination answers; `None` where that tells nothing.
    pub sample: Option<&'a Answer>,
    /// What the known good's examination answers; `None` where that tells nothing.
    pub reference: Option<&'a Answer>,
    /// What the two are to each other.
    pub likeness: Likeness,
}

/// What two answers are to each other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Likeness {
    /// Two readings.
    Readings(Readings),
    /// Two readings that go with a length, and the lengths differ or nobody measured them.
    NotOfOneLength,
    /// The same was answered.
    Same,
    /// Something else was answered.
    Other,
    /// Only the sample's examination tells.
    OnlySample,
    /// Only the known good's examination tells.
    OnlyReference,
}

impl Compared<'_> {
    /// Whether the two differ, readings by more than their doubt.
    pub const fn differs(&self) -> bool {
        match self.likeness {
            Likeness::Other | Likeness::Readings(Readings::Ranges(Ranges::Apart)) => true,
            Likeness::Readings(Readings::Numbers(difference)) => matches!(difference.gap, Gap::Beyond),
            Likeness::Readings(Readings::Ranges(Ranges::BothOpen | Ranges::CannotTell))
            | Likeness::NotOfOneLength
            | Likeness::Same
            | Likeness::OnlySample
            | Likeness::OnlyReference => false,
        }
    }
}

/// Questions about the looking and not about what was looked at.
const OF_THE_LOOKING: [&Question; 11] = [
    facts::PIECE_LENGTH,
    facts::ROOM_TEMPERATURE,
    facts::MAY_CUT,
    REFERENCE_WIRE,
    REFERENCE_SIZE,
    REFERENCE_DIAMETER,
    REFERENCE_LENGTH,
    REFERENCE_RESISTANCE,
    OPENED,
    LIVE_COMPETENT,
    facts::READINGS_PREPARED,
];

/// Every question that either examination answers, in the order of the walk. What neither could tell is left out, and so are questions
/// about the looking itself.
pub fn compare<'a>(sample: &'a Examination, reference: &'a Examination) -> Vec<Compared<'a>> {
    let questions = check::questions().filter(|question| !OF_THE_LOOKING.contains(question));
    questions.flat_map(|question| of_question(question, sample, reference)).collect()
}

fn of_question<'a>(
    question: &'static Question,
    sample: &'a Examination,
    reference: &'a Examination,
) -> impl Iterator<Item = Compared<'a>> {
    let answers = sample.answers.iter().chain(&reference.answers);
    let mut targets: Vec<Target> =
        answers.filter(|answered| answered.question == question).map(|answered| answered.target).collect();
    targets.sort_unstable();
    targets.dedup();
    targets.into_iter().filter_map(move |target| {
        let told = |examination: &'a Examination| examination.answer(question, target).filter(|answer| tells(answer));
        let (one, other) = (told(sample), told(reference));
        let likeness = match (one, other) {
            (Some(Answer::Reading(_)), Some(Answer::Reading(_))) if !are_of_one_length(question, sample, reference) => {
                Likeness::NotOfOneLength
            }
            (Some(one), Some(other)) => likeness(one, other),
            (Some(_), None) => Likeness::OnlySample,
            (None, Some(_)) => Likeness::OnlyReference,
            (None, None) => return None,
        };
        Some(Compared { question, target, sample: one, reference: other, likeness })
    })
}

/// Whether an answer tells anything of the sample.
const fn tells(answer: &Answer) -> bool {
    match answer {
        Answer::One(_)
        | Answer::Any(_)
        | Answer::Reading(_)
        | Answer::Printed(_)
        | Answer::Nothing
        | Answer::Count(_) => true,
        Answer::CannotTell | Answer::Refused | Answer::NoTool | Answer::Later => false,
    }
}

fn likeness(one: &Answer, other: &Answer) -> Likeness {
    let is_same = match (one, other) {
        (Answer::Reading(one), Answer::Reading(other)) => return Likeness::Readings(between(one, other)),
        // Spaces in print come and go with whoever copies it out.
        (Answer::Printed(one), Answer::Printed(other)) => {
            let letters = |print: &str| print.chars().filter(|c| !c.is_whitespace()).collect::<String>();
            letters(one) == letters(other)
        }
        _ => one == other,
    };
    if is_same { Likeness::Same } else { Likeness::Other }
}

/// Whether what a question measures goes with no length, or with one that was measured in both and does not differ beyond the doubt.
fn are_of_one_length(question: &Question, sample: &Examination, reference: &Examination) -> bool {
    let length = if [facts::CORE_RESISTANCE, CORES_JOINED, HALF_LENGTH, CORE_MASS].contains(&question) {
        facts::PIECE_LENGTH
    } else if question == EARTH_RESISTANCE {
        facts::FLEX_LENGTH
    } else {
        return true;
    };
    let read = |examination: &Examination| match examination.answer(length, Target::Sample) {
        Some(Answer::Reading(reading)) => Some(reading.clone()),
        _ => None,
    };
    read(sample).zip(read(reference)).is_some_and(
        |(one, other)| matches!(between(&one, &other), Readings::Numbers(difference) if difference.gap == Gap::Within),
    )
}
