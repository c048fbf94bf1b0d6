//! One answer, to and from its saved form.

use super::entry_fault::EntryFault;
use super::fault::Said;
use super::number::Number;
use super::{is_too_long, spelling, v1};
use crate::domain::check;
use crate::domain::examination::{Answer, Answered};
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{Amount, QuantityKind, Unit};
use crate::domain::question::{Ask, Question};
use crate::domain::reading::{Reading, Shown};

/// The saved form of an answer.
pub fn to_v1(answered: &Answered) -> v1::Answer {
    let form = v1::Answer {
        question: answered.question.id.to_owned(),
        of: spelling::of_target(answered.target),
        ..v1::Answer::default()
    };
    match &answered.answer {
        Answer::One(code) => v1::Answer { one: Some((*code).to_owned()), ..form },
        Answer::Any(codes) => v1::Answer { any: Some(codes.iter().copied().map(str::to_owned).collect()), ..form },
        Answer::Reading(reading) => v1::Answer { reading: Some(reading_to_v1(reading)), ..form },
        Answer::Printed(print) => v1::Answer { printed: Some(print.clone()), ..form },
        Answer::Nothing => v1::Answer { nothing: Some(true), ..form },
        Answer::Count(count) => v1::Answer { count: Some(Number::new(f64::from(*count))), ..form },
        Answer::CannotTell => v1::Answer { cannot_tell: Some(true), ..form },
        Answer::Refused => v1::Answer { refused: Some(true), ..form },
        Answer::Later => v1::Answer { later: Some(true), ..form },
    }
}

fn reading_to_v1(reading: &Reading) -> v1::Reading {
    let (shown, amount) = match reading.shown {
        Shown::Value(amount) => ("value", Some(amount)),
        Shown::Above(amount) => ("above", Some(amount)),
        Shown::Below(amount) => ("below", Some(amount)),
        Shown::Open => ("open", None),
    };
    v1::Reading {
        shown: Some(shown.to_owned()),
        value: amount.and_then(|amount| number_beside(reading.unit, amount)),
        unit: spelling::of_unit(reading.unit).to_owned(),
        step: number_beside(reading.unit, reading.step),
        instrument: Some(reading.instrument.code().to_owned()),
        typed: Some(reading.typed.clone()),
    }
}

/// The shortest number that is the amount when it stands beside the unit, as it was when somebody typed it.
fn number_beside(unit: Unit, amount: Amount) -> Option<Number> {
    let near = amount.in_unit(unit)?;
    let short = |decimals: usize| format!("{near:.decimals$e}").parse().ok();
    let exact = (0..17).filter_map(short).find(|short| Amount::new(*short, unit) == amount);
    Some(Number::new(exact.unwrap_or(near)))
}

/// The answer that a saved form stands for.
pub fn from_v1(form: v1::Answer) -> Result<Answered, EntryFault> {
    let question = question(&form.question)?;
    let target = spelling::target(question, form.of.as_deref())?;
    Ok(Answered { question, target, answer: answer(question, form)? })
}

/// The question of an id.
pub fn question(id: &str) -> Result<&'static Question, EntryFault> {
    check::question(id).ok_or_else(|| EntryFault::UnknownQuestion { question: Said::from(id) })
}

/// What one field of an answer says.
enum Given {
    One(String),
    Any(Vec<String>),
    Printed(String),
    Count(Number),
    Reading(v1::Reading),
    /// An answer that fits every question, and whether it is said to hold.
    Flag(Answer, bool),
}

fn given(form: v1::Answer) -> impl Iterator<Item = (&'static str, Given)> {
    [
        form.one.map(|code| ("one", Given::One(code))),
        form.any.map(|codes| ("any", Given::Any(codes))),
        form.printed.map(|print| ("printed", Given::Printed(print))),
        form.count.map(|count| ("count", Given::Count(count))),
        form.reading.map(|reading| ("reading", Given::Reading(reading))),
        form.nothing.map(|holds| ("nothing", Given::Flag(Answer::Nothing, holds))),
        form.cannot_tell.map(|holds| ("cannot_tell", Given::Flag(Answer::CannotTell, holds))),
        form.refused.map(|holds| ("refused", Given::Flag(Answer::Refused, holds))),
        form.later.map(|holds| ("later", Given::Flag(Answer::Later, holds))),
    ]
    .into_iter()
    .flatten()
}

/// The field that answers a question.
pub const fn field(ask: Ask) -> &'static str {
    match ask {
        Ask::One(_) => "one",
        Ask::Any(_) => "any",
        Ask::Measure { .. } => "reading",
        Ask::Printed(_) => "printed",
        Ask::Count(..) => "count",
    }
}

fn answer(question: &'static Question, form: v1::Answer) -> Result<Answer, EntryFault> {
    let mut given = given(form);
    let (first, said) = given.next().ok_or(EntryFault::Unanswered { question: question.id })?;
    if let Some((second, _)) = given.next() {
        return Err(EntryFault::SeveralAnswers { first, second });
    }
    match (question.ask, said) {
        (_, Given::Flag(answer, true)) => Ok(answer),
        (_, Given::Flag(_, false)) => {
            Err(EntryFault::Field { field: first, takes: "true or left out", got: Said::from("false") })
        }
        (Ask::One(_), Given::One(code)) => known(question, &code).map(Answer::One),
        (Ask::Any(_), Given::Any(codes)) => several(question, &codes).map(Answer::Any),
        (Ask::Printed(_), Given::Printed(print)) => bounded("printed", print).map(Answer::Printed),
        (Ask::Count(least, most), Given::Count(count)) => {
            let fault = || EntryFault::Count { question: question.id, least, most, got: Said::from(count.text()) };
            let whole = count.text().parse().ok().filter(|n| (least..=most).contains(n));
            whole.map(Answer::Count).ok_or_else(fault)
        }
        (Ask::Measure { kind, instruments, .. }, Given::Reading(form)) => {
            Measure { question: question.id, kind, instruments }.reading(form).map(Answer::Reading)
        }
        (ask, _) => Err(EntryFault::AnotherSort { question: question.id, takes: field(ask), got: first }),
    }
}

fn known(question: &'static Question, code: &str) -> Result<&'static str, EntryFault> {
    let fault = || EntryFault::UnknownAnswer { question: question.id, answer: Said::from(code) };
    question.answers().iter().copied().find(|known| *known == code).ok_or_else(fault)
}

/// Those answers that are given, in the question's order.
fn several(question: &'static Question, codes: &[String]) -> Result<Vec<&'static str>, EntryFault> {
    let mut given = Vec::new();
    for code in codes {
        let answer = known(question, code)?;
        if given.contains(&answer) {
            return Err(EntryFault::AnswerTwice { answer });
        }
        given.push(answer);
    }
    Ok(question.answers().iter().copied().filter(|answer| given.contains(answer)).collect())
}

fn bounded(field: &'static str, text: String) -> Result<String, EntryFault> {
    if is_too_long(&text) { Err(EntryFault::TooLong { field }) } else { Ok(text) }
}

/// Whether nothing of this kind is less than nothing, whatever a meter shows.
pub const fn is_size(kind: QuantityKind) -> bool {
    matches!(kind, QuantityKind::Area | QuantityKind::Length | QuantityKind::Mass)
}

/// A question that takes a reading.
struct Measure {
    question: &'static str,
    kind: QuantityKind,
    instruments: &'static [Instrument],
}

impl Measure {
    fn reading(&self, form: v1::Reading) -> Result<Reading, EntryFault> {
        let unit = self.unit(&form.unit)?;
        let (shown, typed) = self.shown(&form, unit)?;
        let step = match (&form.step, &form.value) {
            (Some(step), _) => step.value().filter(|step| *step > 0.0),
            (None, Some(value)) => value.step(),
            (None, None) => Some(1.0),
        };
        let step = step.ok_or_else(|| EntryFault::Field {
            field: "step",
            takes: "a finite number above zero",
            got: form.step.as_ref().or(form.value.as_ref()).map_or(Said::NOTHING, |n| Said::from(n.text())),
        })?;
        Ok(Reading {
            shown,
            step: Amount::new(step, unit),
            unit,
            instrument: self.instrument(form.instrument.as_deref())?,
            typed: bounded("typed", form.typed.unwrap_or(typed))?,
        })
    }

    /// What stood on the display, and how somebody would have typed it.
    fn shown(&self, form: &v1::Reading, unit: Unit) -> Result<(Shown, String), EntryFault> {
        let shown = form.shown.as_deref().unwrap_or("value");
        if shown == "open" {
            return match &form.value {
                None => Ok((Shown::Open, "OL".to_owned())),
                Some(number) => {
                    let got = Said::from(number.text());
                    Err(EntryFault::Field { field: "value", takes: "left out beside \"open\"", got })
                }
            };
        }
        let digits = form.value.as_ref().map_or("", Number::text);
        let amount = self.amount(form.value.as_ref(), unit)?;
        match shown {
            "value" => Ok((Shown::Value(amount), digits.to_owned())),
            "above" => Ok((Shown::Above(amount), format!("> {digits}"))),
            "below" => Ok((Shown::Below(amount), format!("< {digits}"))),
            _ => {
                let got = Said::from(shown);
                Err(EntryFault::Field { field: "shown", takes: "value, above, below or open", got })
            }
        }
    }

    fn amount(&self, number: Option<&Number>, unit: Unit) -> Result<Amount, EntryFault> {
        let got = || number.map_or(Said::NOTHING, |number| Said::from(number.text()));
        let fault = |takes| EntryFault::Field { field: "value", takes, got: got() };
        let value = number.and_then(Number::value).ok_or_else(|| fault("a finite number"))?;
        if is_size(self.kind) && value < 0.0 { Err(fault("zero or more")) } else { Ok(Amount::new(value, unit)) }
    }

    fn unit(&self, code: &str) -> Result<Unit, EntryFault> {
        let measures = spelling::kind_in_words(self.kind);
        let fault = || EntryFault::Unit { question: self.question, measures, unit: Said::from(code) };
        spelling::units(self.kind).find(|unit| spelling::of_unit(*unit) == code).ok_or_else(fault)
    }

    fn instrument(&self, code: Option<&str>) -> Result<Instrument, EntryFault> {
        let got = code.map_or(Said::NOTHING, Said::from);
        let fits = |instrument: &Instrument| code.is_none_or(|code| instrument.code() == code);
        let fault = EntryFault::Instrument { question: self.question, instrument: got };
        self.instruments.iter().copied().find(fits).ok_or(fault)
    }
}
