//! Between a record and its saved form: what the words of the form mean, and that they mean something.

use std::collections::BTreeSet;

use super::entry_fault::EntryFault;
use super::fault::{RecordFault, Said};
use super::{Attached, Photo, Record, digest, entry, is_too_long, kept, spelling, v1};
use super::{FORMAT, MOST_ANSWERS, MOST_PHOTOS, VERSION};
use crate::domain::assess::RuleBook;
use crate::domain::examination::{Answered, Examination};
use crate::domain::sample::{Equipment, Kind, Market, Sample};

/// What a moment must be.
pub const MOMENT: &str = "a date and time such as 2026-11-24T10:30:00Z";

/// The saved form of a record.
pub fn to_v1(record: &Record) -> v1::Examination {
    let Examination { sample, equipment, answers } = &record.examination;
    let (acquired, custody, scenarios) = kept::to_v1(record);
    v1::Examination {
        format: FORMAT.to_owned(),
        version: VERSION,
        rule_book: Some(record.edition.clone()),
        id: Some(record.id.clone()),
        begun: said(&record.begun),
        changed: said(&record.changed),
        origin: record.origin.clone(),
        acquired,
        custody,
        example: record.is_example,
        known_good: record.is_known_good,
        sample: v1::Sample {
            number: sample.number.clone(),
            title: sample.title.clone(),
            kind: sample.kind.code().to_owned(),
            market: sample.market.code().to_owned(),
        },
        equipment: equipment.code().to_owned(),
        answers: answers.iter().map(entry::to_v1).collect(),
        photos: record.photos.iter().map(photo_to_v1).collect(),
        scenarios,
    }
}

fn photo_to_v1(photo: &Photo) -> v1::Photo {
    let (question, of, origin) = match photo.attached {
        Attached::Answer { question, target } => (Some(question.to_owned()), spelling::of_target(target), None),
        Attached::Origin => (None, None, Some(true)),
    };
    v1::Photo {
        sha256: photo.sha256.clone(),
        media_type: photo.media_type.clone(),
        width: photo.width,
        height: photo.height,
        taken: said(&photo.taken),
        question,
        of,
        origin,
    }
}

/// A text where there is one.
pub fn said(text: &str) -> Option<String> {
    (!text.is_empty()).then(|| text.to_owned())
}

/// The record that a saved form stands for; `text` is what it was read from.
pub fn from_v1(form: v1::Examination, text: &str) -> Result<Record, RecordFault> {
    let sample = Sample {
        number: bounded("number", form.sample.number)?,
        title: bounded("title", form.sample.title)?,
        kind: coded("kind", "extension-lead or cord-set", &Kind::ALL, Kind::code, &form.sample.kind)?,
        market: coded("market", "great-britain or northern-ireland", &Market::ALL, Market::code, &form.sample.market)?,
    };
    let takes = "eyes, hand-tools or meters";
    let equipment = coded("equipment", takes, &Equipment::ALL, Equipment::code, &form.equipment)?;
    let (custody, scenarios) = kept::from_v1(form.acquired, form.custody, form.scenarios)?;
    Ok(Record {
        id: id(form.id, text)?,
        begun: moment("begun", form.begun)?,
        changed: moment("changed", form.changed)?,
        edition: bounded("rule_book", form.rule_book.unwrap_or_else(|| RuleBook::CURRENT.edition.to_owned()))?,
        origin: bounded("origin", form.origin)?,
        custody,
        is_example: form.example,
        is_known_good: form.known_good,
        examination: Examination { sample, equipment, answers: answers(form.answers)? },
        photos: photos(form.photos)?,
        scenarios,
    })
}

/// A text of a length that somebody may have written.
pub fn bounded(field: &'static str, text: String) -> Result<String, RecordFault> {
    if is_too_long(&text) { Err(RecordFault::TooLong { field }) } else { Ok(text) }
}

fn coded<T: Copy>(
    field: &'static str,
    takes: &'static str,
    all: &[T],
    code: fn(T) -> &'static str,
    said: &str,
) -> Result<T, RecordFault> {
    let known = all.iter().copied().find(|known| code(*known) == said);
    known.ok_or_else(|| RecordFault::Field { field, takes, got: Said::from(said) })
}

fn id(given: Option<String>, text: &str) -> Result<String, RecordFault> {
    match given {
        Some(id) if digest::is_hexadecimal(&id, 32) => Ok(id),
        Some(id) => {
            let takes = "32 lower-case hexadecimal digits";
            Err(RecordFault::Field { field: "id", takes, got: Said::from(id.as_str()) })
        }
        None => Ok(digest::sha256(text.trim().as_bytes()).chars().take(32).collect()),
    }
}

/// A moment, or nothing where none is given.
pub fn moment(field: &'static str, given: Option<String>) -> Result<String, RecordFault> {
    match given {
        Some(text) if is_moment(&text) => Ok(text),
        Some(text) => Err(RecordFault::Field { field, takes: MOMENT, got: Said::from(text.as_str()) }),
        None => Ok(String::new()),
    }
}

/// Whether a text has the shape of RFC 3339 with zone; the calendar is not consulted.
pub fn is_moment(text: &str) -> bool {
    let Some((clock, rest)) = text.split_at_checked("0000-00-00T00:00:00".len()) else { return false };
    let zone = rest.strip_prefix('.').map_or(rest, |rest| rest.trim_start_matches(|c: char| c.is_ascii_digit()));
    text.len() <= 40
        && has_shape(clock, "0000-00-00T00:00:00")
        && (zone == "Z" || has_shape(zone, "+00:00") || has_shape(zone, "-00:00"))
}

fn has_shape(text: &str, shape: &str) -> bool {
    let fits = |(c, of): (u8, u8)| if of == b'0' { c.is_ascii_digit() } else { c == of };
    text.len() == shape.len() && text.bytes().zip(shape.bytes()).all(fits)
}

fn answers(forms: Vec<v1::Answer>) -> Result<Vec<Answered>, RecordFault> {
    if forms.len() > MOST_ANSWERS {
        return Err(RecordFault::TooManyAnswers);
    }
    let mut answered_before = BTreeSet::new();
    let mut answer = |form| {
        let answered = entry::from_v1(form)?;
        let question = answered.question.id;
        if !answered_before.insert((question, answered.target)) {
            return Err(EntryFault::AnsweredBefore { question });
        }
        Ok(answered)
    };
    (1..).zip(forms).map(|(number, form)| answer(form).map_err(|fault| RecordFault::Answer { number, fault })).collect()
}

fn photos(forms: Vec<v1::Photo>) -> Result<Vec<Photo>, RecordFault> {
    if forms.len() > MOST_PHOTOS {
        return Err(RecordFault::TooManyPhotos);
    }
    (1..).zip(forms).map(|(number, form)| photo(form).map_err(|fault| RecordFault::Photo { number, fault })).collect()
}

fn photo(form: v1::Photo) -> Result<Photo, EntryFault> {
    let attached = attached(form.question.as_deref(), form.of.as_deref(), form.origin)?;
    let fault = |field, takes, got: &str| Err(EntryFault::Field { field, takes, got: Said::from(got) });
    if !digest::is_hexadecimal(&form.sha256, 64) {
        return fault("sha256", "64 lower-case hexadecimal digits", &form.sha256);
    }
    if !matches!(form.media_type.as_str(), "image/jpeg" | "image/webp") {
        return fault("media_type", "image/jpeg or image/webp", &form.media_type);
    }
    if let Some(taken) = form.taken.as_deref().filter(|taken| !is_moment(taken)) {
        return fault("taken", MOMENT, taken);
    }
    Ok(Photo {
        sha256: form.sha256,
        media_type: form.media_type,
        width: form.width,
        height: form.height,
        taken: form.taken.unwrap_or_default(),
        attached,
    })
}

/// A photo belongs to a question or to the origin, and to one of them.
fn attached(question: Option<&str>, of: Option<&str>, origin: Option<bool>) -> Result<Attached, EntryFault> {
    let alone = |field, got: &str| {
        Err(EntryFault::Field { field, takes: "left out where a photo belongs to the origin", got: Said::from(got) })
    };
    match (question, of, origin) {
        (_, _, Some(false)) => Err(entry::not_true("origin")),
        (Some(question), _, Some(true)) => alone("question", question),
        (None, Some(of), Some(true)) => alone("of", of),
        (None, None, Some(true)) => Ok(Attached::Origin),
        (Some(id), of, None) => {
            let question = entry::question(id)?;
            Ok(Attached::Answer { question: question.id, target: spelling::target(question, of)? })
        }
        (None, _, None) => {
            let takes = "a question where “origin” is left out";
            Err(EntryFault::Field { field: "question", takes, got: Said::NOTHING })
        }
    }
}
