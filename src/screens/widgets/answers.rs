//! The answers to one question, as words to tap or a field to type in.

use leptos::prelude::*;

use super::typed::{PrintedField, ReadingField};
use crate::domain::examination::Answer;
use crate::domain::question::{Ask, Question, Target};
use crate::domain::sample::Equipment;
use crate::words::{question, screens, typed};

/// Every way to answer one question.
#[component]
pub fn Answers(
    /// The question.
    question: &'static Question,
    /// Which of several.
    target: Target,
    /// The answer so far, when it is looked at again.
    current: Option<Answer>,
    /// Puts an answer down.
    answer: Callback<Answer>,
    /// The sample's id.
    id: String,
) -> impl IntoView {
    match question.ask {
        Ask::One(codes) => view! { <OneOf question codes current answer /> }.into_any(),
        Ask::Any(codes) => view! { <AnyOf question codes current answer /> }.into_any(),
        Ask::Measure { kind, units, instruments } => {
            view! { <ReadingField question target kind units instruments current answer id /> }.into_any()
        }
        Ask::Printed(sort) => view! { <PrintedField question target sort current answer id /> }.into_any(),
        Ask::Count(low, high) => view! { <Counted low high current answer /> }.into_any(),
    }
}

/// The answers that fit every question.
#[component]
pub fn WaysOut(
    /// The question.
    question: &'static Question,
    /// Puts an answer down.
    answer: Callback<Answer>,
) -> impl IntoView {
    view! {
        <p class="asides">
            <button class="aside" id="cannot-tell" on:click=move |_| answer.run(Answer::CannotTell)>{screens::CANNOT_TELL}</button>
            {(question.needs > Equipment::Eyes)
                .then(|| view! { <button class="aside" id="no-tool" on:click=move |_| answer.run(Answer::NoTool)>{screens::NO_TOOL}</button> })}
            <button class="aside" id="refused" on:click=move |_| answer.run(Answer::Refused)>{screens::REFUSED}</button>
        </p>
    }
}

/// Exactly one answer.
#[component]
fn OneOf(
    /// The question.
    question: &'static Question,
    /// Its answers.
    codes: &'static [&'static str],
    /// The answer so far.
    current: Option<Answer>,
    /// Puts an answer down.
    answer: Callback<Answer>,
) -> impl IntoView {
    let words = question::of(question);
    let rows = codes.iter().map(|&code| {
        let chosen = current == Some(Answer::One(code));
        view! {
            <li>
                <button class="answer" data-answer=code aria-pressed=chosen.to_string() on:click=move |_| answer.run(Answer::One(code))>
                    {words.answer(code).map_or(code, |answer| answer.answer)}
                </button>
            </li>
        }
    });
    view! { <ul class="answers">{rows.collect_view()}</ul> }
}

/// Any number of answers.
#[component]
fn AnyOf(
    /// The question.
    question: &'static Question,
    /// Its answers.
    codes: &'static [&'static str],
    /// The answer so far.
    current: Option<Answer>,
    /// Puts an answer down.
    answer: Callback<Answer>,
) -> impl IntoView {
    let words = question::of(question);
    let before = match current {
        Some(Answer::Any(codes)) => codes,
        _ => Vec::new(),
    };
    let chosen = RwSignal::new(before);
    let rows = codes.iter().map(|&code| {
        let is_chosen = move || chosen.with(|chosen| chosen.contains(&code));
        let toggle = move |_| {
            chosen.update(|chosen| match chosen.iter().position(|known| *known == code) {
                Some(at) => {
                    chosen.remove(at);
                }
                None => chosen.push(code),
            });
        };
        view! {
            <li>
                <button class="answer several" data-answer=code aria-pressed=move || is_chosen().to_string() on:click=toggle>
                    {words.answer(code).map_or(code, |answer| answer.answer)}
                </button>
            </li>
        }
    });
    let put_down = move |_| {
        let chosen = chosen.get_untracked();
        answer.run(Answer::Any(codes.iter().copied().filter(|code| chosen.contains(code)).collect()));
    };
    let last = move || if chosen.with(Vec::is_empty) { screens::NONE_OF_THESE } else { screens::THAT_IS_ALL };
    view! {
        <ul class="answers">
            {rows.collect_view()}
            <li><button class="answer decisive" data-answer="put-down" on:click=put_down>{last}</button></li>
        </ul>
    }
}

/// A whole number of things.
#[component]
fn Counted(
    /// The fewest.
    low: u8,
    /// The most.
    high: u8,
    /// The answer so far.
    current: Option<Answer>,
    /// Puts an answer down.
    answer: Callback<Answer>,
) -> impl IntoView {
    if high > MOST_TO_TAP {
        return view! { <CountField low high answer /> }.into_any();
    }
    let numbers = (low..=high).map(|n| {
        let chosen = current == Some(Answer::Count(n));
        view! {
            <button class="number" data-answer=n.to_string() aria-pressed=chosen.to_string() on:click=move |_| answer.run(Answer::Count(n))>
                {n}
            </button>
        }
    });
    view! { <div class="numbers-line">{numbers.collect_view()}</div> }.into_any()
}

/// More numbers than this are typed.
const MOST_TO_TAP: u8 = 24;

/// A whole number that is typed.
#[component]
fn CountField(
    /// The fewest.
    low: u8,
    /// The most.
    high: u8,
    /// Puts an answer down.
    answer: Callback<Answer>,
) -> impl IntoView {
    let text = RwSignal::new(String::new());
    let counted = Memo::new(move |_| typed::parse_count(&text.read(), low, high));
    let put_down = move || {
        if let Ok(count) = counted.get_untracked() {
            answer.run(Answer::Count(count));
        }
    };
    let on_enter = move |event: leptos::ev::KeyboardEvent| {
        if event.key() == "Enter" {
            event.prevent_default();
            put_down();
        }
    };
    let problem = move || match counted.get() {
        Err(problem) if !text.read().is_empty() => format!("{}. {}", problem.message(), problem.hint()),
        _ => String::new(),
    };
    view! {
        <div class="field">
            <input
                class="value"
                type="text"
                inputmode="numeric"
                autocomplete="off"
                enterkeyhint="next"
                aria-label=screens::VALUE
                prop:value=text
                on:input=move |event| text.set(event_target_value(&event))
                on:keydown=on_enter
            />
        </div>
        <p class="problem-line">{problem}</p>
        <button class="answer decisive" data-answer="put-down" on:click=move |_| put_down()>{screens::PUT_DOWN}</button>
    }
}
