//! From an examination to the saved form.

use super::number::Number;
use super::{FORMAT, Photo, Record, spelling, v1};
use crate::domain::examination::{Answer, Answered};
use crate::domain::quantity::{Amount, Unit};
use crate::domain::reading::{Reading, Shown};

/// The saved form of a record.
pub fn examination(record: &Record) -> v1::Examination {
    let sample = &record.examination.sample;
    v1::Examination {
        format: FORMAT.to_owned(),
        version: 1,
        rule_book: record.edition.clone(),
        id: record.id.clone(),
        begun: record.begun.clone(),
        changed: record.changed.clone(),
        origin: record.origin.clone(),
        example: record.is_example,
        sample: v1::Sample {
            number: sample.number.clone(),
            title: sample.title.clone(),
            kind: sample.kind.code().to_owned(),
            market: sample.market.code().to_owned(),
        },
        equipment: record.examination.equipment.code().to_owned(),
        answers: record.examination.answers.iter().map(answered).collect(),
        photos: record.photos.iter().map(photo).collect(),
    }
}

fn answered(answered: &Answered) -> v1::Answered {
    let mut saved = v1::Answered {
        question: answered.question.id.to_owned(),
        of: spelling::of_target(answered.target),
        ..v1::Answered::default()
    };
    match &answered.answer {
        Answer::One(code) => saved.one = Some((*code).to_owned()),
        Answer::Any(codes) => saved.any = Some(codes.iter().map(|code| (*code).to_owned()).collect()),
        Answer::Reading(reading) => saved.reading = Some(self::reading(reading)),
        Answer::Printed(print) => saved.printed = Some(print.clone()),
        Answer::Nothing => saved.nothing = true,
        Answer::Count(count) => saved.count = Some(*count),
        Answer::CannotTell => saved.cannot_tell = true,
        Answer::Refused => saved.refused = true,
        Answer::Later => saved.later = true,
    }
    saved
}

fn reading(reading: &Reading) -> v1::Reading {
    let number = |amount: Amount| Some(in_unit(amount, reading.unit));
    let mut saved = v1::Reading {
        unit: spelling::of_unit(reading.unit).to_owned(),
        step: number(reading.step),
        instrument: Some(reading.instrument.code().to_owned()),
        typed: Some(reading.typed.clone()),
        ..v1::Reading::default()
    };
    match reading.shown {
        Shown::Value(amount) => saved.value = number(amount),
        Shown::Above(amount) => saved.above = number(amount),
        Shown::Below(amount) => saved.below = number(amount),
        Shown::Open => saved.open = true,
    }
    saved
}

/// The number that stands beside a unit. Twelve digits are more than any instrument shows, and few enough that the way through base
/// units leaves no trace: what was typed as 0.37 mm is written as 0.37.
fn in_unit(amount: Amount, unit: Unit) -> Number {
    let exact = amount.in_unit(unit).unwrap_or(0.0);
    Number::new(format!("{exact:.11e}").parse().unwrap_or(exact))
}

fn photo(photo: &Photo) -> v1::Photo {
    v1::Photo {
        sha256: photo.sha256.clone(),
        media_type: photo.media_type.clone(),
        width: photo.width,
        height: photo.height,
        taken: photo.taken.clone(),
        question: photo.question.to_owned(),
        of: spelling::of_target(photo.target),
    }
}
