//! From the saved form to an examination: nothing is guessed, everything unknown is named.

use sha2::{Digest, Sha256};

use super::fault::{AnswerFault, RecordFault, quoted};
use super::number::Number;
use super::{Photo, Record, spelling, v1};
use crate::domain::assess::RuleBook;
use crate::domain::check;
use crate::domain::examination::{Answer, Examination};
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{Amount, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::reading::{Reading, Shown};
use crate::domain::sample::{Equipment, Kind, Market, Sample};

/// The most answers a record holds.
const MOST_ANSWERS: usize = 2000;

/// The most photos a record holds.
const MOST_PHOTOS: usize = 500;

/// The most characters any one text holds.
const LONGEST_TEXT: usize = 4000;

/// Takes over a version 1 examination. `text` is what it was read from: an examination without an id gets one from it.
pub fn record(saved: v1::Examination, text: &str) -> Result<Record, RecordFault> {
    few(saved.answers.len(), MOST_ANSWERS, "answers")?;
    few(saved.photos.len(), MOST_PHOTOS, "photos")?;
    let sample = Sample {
        number: short("sample.number", saved.sample.number)?,
        title: short("sample.title", saved.sample.title)?,
        kind: one_of("sample.kind", &saved.sample.kind, &Kind::ALL, Kind::code)?,
        market: one_of("sample.market", &saved.sample.market, &Market::ALL, Market::code)?,
    };
    let equipment = one_of("equipment", &saved.equipment, &Equipment::ALL, Equipment::code)?;
    let mut examination = Examination::new(sample, equipment);
    for (n, entry) in saved.answers.into_iter().enumerate() {
        let at = |fault| RecordFault::Answer { number: n + 1, fault };
        let (question, target, answer) = answered(entry).map_err(at)?;
        if examination.record(question, target, answer).is_some() {
            return Err(at(AnswerFault::Twice(question.id)));
        }
    }
    Ok(Record {
        id: id(saved.id, text)?,
        begun: short("begun", saved.begun)?,
        changed: short("changed", saved.changed)?,
        edition: if saved.rule_book.is_empty() {
            RuleBook::CURRENT.edition.to_owned()
        } else {
            short("rule_book", saved.rule_book)?
        },
        origin: short("origin", saved.origin)?,
        is_example: saved.example,
        examination,
        photos: saved.photos.into_iter().map(photo).collect::<Result<_, _>>()?,
    })
}

fn few(count: usize, most: usize, what: &'static str) -> Result<(), RecordFault> {
    if count > most { Err(RecordFault::TooMany { what, most }) } else { Ok(()) }
}

fn short(field: &'static str, text: String) -> Result<String, RecordFault> {
    if text.chars().count() > LONGEST_TEXT {
        return Err(RecordFault::Field {
            field,
            takes: format!("no longer than {LONGEST_TEXT} characters"),
            got: quoted(&text),
        });
    }
    Ok(text)
}

fn one_of<T: Copy>(field: &'static str, got: &str, all: &[T], code: fn(T) -> &'static str) -> Result<T, RecordFault> {
    let codes = || all.iter().map(|one| code(*one)).collect::<Vec<_>>().join(", ");
    let known = all.iter().copied().find(|one| code(*one) == got);
    known.ok_or_else(|| RecordFault::Field { field, takes: format!("one of {}", codes()), got: quoted(got) })
}

/// The id as it stands, or the first 32 digits of the text's SHA-256: the same text is the same record.
fn id(id: String, text: &str) -> Result<String, RecordFault> {
    if id.is_empty() {
        return Ok(hexadecimal(&Sha256::digest(text.as_bytes())).chars().take(32).collect());
    }
    let is_id = id.len() == 32 && is_hexadecimal(&id);
    if is_id {
        Ok(id)
    } else {
        Err(RecordFault::Field { field: "id", takes: "32 hexadecimal digits".to_owned(), got: quoted(&id) })
    }
}

fn is_hexadecimal(text: &str) -> bool {
    text.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f'))
}

/// Bytes as lower-case hexadecimal digits.
pub fn hexadecimal(bytes: &[u8]) -> String {
    let digit = |nibble: u8| char::from_digit(u32::from(nibble), 16).unwrap_or('0');
    bytes.iter().flat_map(|byte| [digit(byte >> 4), digit(byte & 15)]).collect()
}

fn answered(entry: v1::Answered) -> Result<(&'static Question, Target, Answer), AnswerFault> {
    let question = check::question(&entry.question).ok_or_else(|| AnswerFault::Question(shortened(&entry.question)))?;
    let target = spelling::target(question.per, entry.of.as_deref()).ok_or_else(|| AnswerFault::Target {
        question: question.id,
        takes: spelling::asked(question.per),
        got: entry.of.as_deref().map_or_else(|| "nothing".to_owned(), quoted),
    })?;
    Ok((question, target, answer(question, entry)?))
}

fn shortened(text: &str) -> String {
    text.chars().take(60).collect()
}

fn answer(question: &'static Question, entry: v1::Answered) -> Result<Answer, AnswerFault> {
    let flags = [
        (entry.nothing, Answer::Nothing),
        (entry.cannot_tell, Answer::CannotTell),
        (entry.refused, Answer::Refused),
        (entry.later, Answer::Later),
    ];
    let mut found: Vec<Answer> = flags.into_iter().filter(|(is_set, _)| *is_set).map(|(_, answer)| answer).collect();
    if let Some(code) = entry.one {
        found.push(Answer::One(choice(question, &code)?));
    }
    if let Some(codes) = entry.any {
        let chosen = codes.iter().map(|code| choice(question, code)).collect::<Result<Vec<_>, _>>()?;
        found.push(Answer::Any(question.answers().iter().copied().filter(|code| chosen.contains(code)).collect()));
    }
    if let Some(reading) = entry.reading {
        found.push(Answer::Reading(self::reading(question, &reading)?));
    }
    if let Some(print) = entry.printed {
        if print.chars().count() > LONGEST_TEXT {
            let takes = format!("no longer than {LONGEST_TEXT} characters");
            return Err(AnswerFault::Reading { field: "printed", takes, got: quoted(&print) });
        }
        found.push(Answer::Printed(print));
    }
    if let Some(count) = entry.count {
        found.push(Answer::Count(count));
    }
    match (found.pop(), found.is_empty()) {
        (Some(answer), true) => fits(question, answer),
        _ => Err(AnswerFault::NotOne(question.id)),
    }
}

fn choice(question: &'static Question, code: &str) -> Result<&'static str, AnswerFault> {
    let known = question.answers().iter().copied().find(|known| *known == code);
    known.ok_or_else(|| AnswerFault::Choice { question: question.id, got: shortened(code) })
}

/// Whether an answer is of the kind that the question takes.
fn fits(question: &'static Question, answer: Answer) -> Result<Answer, AnswerFault> {
    let takes = match question.ask {
        Ask::One(_) => "one of its answers, as \"one\"",
        Ask::Any(_) => "a list of its answers, as \"any\"",
        Ask::Measure { .. } => "a reading",
        Ask::Printed(_) => "print, as \"printed\" or \"nothing\"",
        Ask::Count(..) => "a number of things, as \"count\"",
    };
    let is_fit = match (&answer, question.ask) {
        (Answer::CannotTell | Answer::Refused | Answer::Later, _)
        | (Answer::One(_), Ask::One(_))
        | (Answer::Any(_), Ask::Any(_))
        | (Answer::Reading(_), Ask::Measure { .. })
        | (Answer::Printed(_) | Answer::Nothing, Ask::Printed(_)) => true,
        (Answer::Count(n), Ask::Count(low, high)) => (low..=high).contains(n),
        _ => false,
    };
    if is_fit { Ok(answer) } else { Err(AnswerFault::Kind { question: question.id, takes }) }
}

fn reading(question: &'static Question, saved: &v1::Reading) -> Result<Reading, AnswerFault> {
    let Ask::Measure { kind, instruments, .. } = question.ask else {
        return Err(AnswerFault::Kind { question: question.id, takes: "no reading" });
    };
    let unit = spelling::unit(&saved.unit).filter(|unit| unit.kind() == kind).ok_or_else(|| AnswerFault::Reading {
        field: "unit",
        takes: spelling::units(kind),
        got: quoted(&saved.unit),
    })?;
    let instrument = match &saved.instrument {
        None => instruments.first().copied().unwrap_or(Instrument::HandMeter),
        Some(code) => {
            *Instrument::ALL.iter().find(|known| known.code() == code).ok_or_else(|| AnswerFault::Reading {
                field: "instrument",
                takes: format!("one of {}", instruments.iter().map(|i| i.code()).collect::<Vec<_>>().join(", ")),
                got: quoted(code),
            })?
        }
    };
    let (number, shown): (&Number, fn(Amount) -> Shown) = match (&saved.value, &saved.above, &saved.below, saved.open) {
        (Some(number), None, None, false) => (number, Shown::Value),
        (None, Some(number), None, false) => (number, Shown::Above),
        (None, None, Some(number), false) => (number, Shown::Below),
        (None, None, None, true) => {
            let typed = saved.typed.clone().unwrap_or_else(|| "OL".to_owned());
            return Ok(Reading { shown: Shown::Open, step: Amount::new(1.0, unit), unit, instrument, typed });
        }
        _ => return Err(AnswerFault::NotOne(question.id)),
    };
    let (shown, typed, digits) = (shown(amount("value", number, unit)?), number.text(), number.step());
    let step = match &saved.step {
        Some(step) => amount("step", step, unit)?,
        None => Amount::new(digits.unwrap_or(1.0), unit),
    };
    Ok(Reading { shown, step, unit, instrument, typed: saved.typed.clone().unwrap_or_else(|| typed.to_owned()) })
}

fn amount(field: &'static str, number: &Number, unit: Unit) -> Result<Amount, AnswerFault> {
    let got = || AnswerFault::Reading {
        field,
        takes: "a number that a machine can hold".to_owned(),
        got: quoted(number.text()),
    };
    number.value().map(|value| Amount::new(value, unit)).ok_or_else(got)
}

fn photo(saved: v1::Photo) -> Result<Photo, RecordFault> {
    let field = |field, takes: &str, got: &str| RecordFault::Field { field, takes: takes.to_owned(), got: quoted(got) };
    if saved.sha256.len() != 64 || !is_hexadecimal(&saved.sha256) {
        return Err(field("photo.sha256", "64 hexadecimal digits", &saved.sha256));
    }
    if !matches!(saved.media_type.as_str(), "image/jpeg" | "image/webp" | "image/png") {
        return Err(field("photo.media_type", "image/jpeg, image/webp or image/png", &saved.media_type));
    }
    let question = check::question(&saved.question)
        .ok_or_else(|| field("photo.question", "the id of a question", &saved.question))?;
    let target = spelling::target(question.per, saved.of.as_deref())
        .ok_or_else(|| field("photo.of", "what the question is asked of", saved.of.as_deref().unwrap_or("nothing")))?;
    Ok(Photo {
        sha256: saved.sha256,
        media_type: saved.media_type,
        width: saved.width,
        height: saved.height,
        taken: short("photo.taken", saved.taken)?,
        question: question.id,
        target,
    })
}
