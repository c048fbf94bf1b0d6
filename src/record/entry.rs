//! One answer, to and from its saved form.

use super::entry_fault::EntryFault;
use super::fault::Said;
use super::number::Number;
use super::reading::{self, Measure};
use super::{is_too_long, spelling, v1};
use crate::domain::check;
use crate::domain::examination::{Answer, Answered};
use crate::domain::question::{Ask, Question};

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
        Answer::Reading(reading) => v1::Answer { reading: Some(reading::to_v1(reading)), ..form },
        Answer::Printed(print) => v1::Answer { printed: Some(print.clone()), ..form },
        Answer::Nothing => v1::Answer { nothing: Some(true), ..form },
        Answer::Count(count) => v1::Answer { count: Some(Number::new(f64::from(*count))), ..form },
        Answer::CannotTell => v1::Answer { cannot_tell: Some(true), ..form },
        Answer::Refused => v1::Answer { refused: Some(true), ..form },
        Answer::NoTool => v1::Answer { no_tool: Some(true), ..form },
        Answer::Later => v1::Answer { later: Some(true), ..form },
    }
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
        form.no_tool.map(|holds| ("no_tool", Given::Flag(Answer::NoTool, holds))),
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
        (_, Given::Flag(_, false)) => Err(not_true(first)),
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

/// A flag is set or left out, never unset: that would say nothing.
pub fn not_true(field: &'static str) -> EntryFault {
    EntryFault::Field { field, takes: "true or left out", got: Said::from("false") }
}

/// A text of a length that somebody may have written.
pub fn bounded(field: &'static str, text: String) -> Result<String, EntryFault> {
    if is_too_long(&text) { Err(EntryFault::TooLong { field }) } else { Ok(text) }
}
