//! Fields to type a reading or a print into: comma or point, units typed or tapped, value and Enter moves on.

use leptos::prelude::*;

use crate::domain::examination::Answer;
use crate::domain::instrument::Instrument;
use crate::domain::quantity::{QuantityKind, Unit};
use crate::domain::question::{Printed, Question, Target};
use crate::store::settings;
use crate::words::{instrument, number, print, screens, typed};

/// A reading with unit and instrument.
#[component]
pub fn ReadingField(
    /// The question.
    question: &'static Question,
    /// Which of several.
    target: Target,
    /// The quantity that is asked for.
    kind: QuantityKind,
    /// The units to tap.
    units: &'static [Unit],
    /// The instruments to name.
    instruments: &'static [Instrument],
    /// The answer so far.
    current: Option<Answer>,
    /// Puts an answer down.
    answer: Callback<Answer>,
    /// The sample's id.
    id: String,
) -> impl IntoView {
    let before = match current {
        Some(Answer::Reading(reading)) => Some(reading),
        _ => None,
    };
    let first_unit = units.first().copied().unwrap_or(Unit::Ohm);
    let first_instrument = settings::instruments()
        .into_iter()
        .find(|known| instruments.contains(known))
        .or(instruments.first().copied())
        .unwrap_or(Instrument::HandMeter);
    let text = RwSignal::new(
        draft(&id, question, target).or(before.as_ref().map(|reading| reading.typed.clone())).unwrap_or_default(),
    );
    let unit = RwSignal::new(before.as_ref().map_or(first_unit, |reading| reading.unit));
    let with = RwSignal::new(before.as_ref().map_or(first_instrument, |reading| reading.instrument));
    let parsed = Memo::new(move |_| typed::parse_reading(&text.read(), kind, unit.get(), with.get()));
    let put_down = move || {
        if let Ok(reading) = parsed.get_untracked() {
            settings::forget_draft();
            settings::remember_instrument(reading.instrument);
            answer.run(Answer::Reading(reading));
        }
    };
    let on_enter = move |event: leptos::ev::KeyboardEvent| {
        if event.key() == "Enter" {
            event.prevent_default();
            put_down();
        }
    };
    let typed_in = move |value: String| {
        settings::set_draft(&settings::Draft::new(&id, question, target, &value));
        text.set(value);
    };
    let said = move || {
        match parsed.get() {
        Ok(reading) => view! { <p class="said-back">{number::reading(&reading)}</p> }.into_any(),
        Err(problem) if !text.read().is_empty() => {
            view! { <p class="problem" role="alert">{problem.message()} " " <span class="hint">{problem.hint()}</span></p> }
                .into_any()
        }
        Err(_) => view! { <p class="said-back">{"\u{a0}"}</p> }.into_any(),
    }
    };
    view! {
        <div class="field">
            <input
                class="value"
                type="text"
                inputmode="decimal"
                autocomplete="off"
                enterkeyhint="next"
                aria-label=screens::VALUE
                prop:value=text
                on:input=move |event| typed_in(event_target_value(&event))
                on:keydown=on_enter
            />
            <span class="units">
                {units
                    .iter()
                    .map(|&choice| {
                        view! {
                            <button class="unit" aria-pressed=move || (unit.get() == choice).to_string() on:click=move |_| unit.set(choice)>
                                {choice.symbol()}
                            </button>
                        }
                    })
                    .collect_view()}
            </span>
        </div>
        {said}
        <label class="with">
            {screens::READ_WITH}
            <select on:change=move |event| {
                let code = event_target_value(&event);
                if let Some(found) = instruments.iter().find(|known| known.code() == code) {
                    with.set(*found);
                }
            }>
                {instruments
                    .iter()
                    .map(|&known| {
                        view! { <option value=known.code() selected=move || with.get() == known>{instrument::name(known)}</option> }
                    })
                    .collect_view()}
            </select>
        </label>
        <button class="answer decisive" data-answer="put-down" on:click=move |_| put_down()>{screens::PUT_DOWN}</button>
    }
}

/// Words as they are printed, said back as far as they are understood.
#[component]
pub fn PrintedField(
    /// The question.
    question: &'static Question,
    /// Which of several.
    target: Target,
    /// What sort of print it is.
    sort: Printed,
    /// The answer so far.
    current: Option<Answer>,
    /// Puts an answer down.
    answer: Callback<Answer>,
    /// The sample's id.
    id: String,
) -> impl IntoView {
    let before = match current {
        Some(Answer::Printed(print)) => print,
        _ => String::new(),
    };
    let text = RwSignal::new(draft(&id, question, target).unwrap_or(before));
    let put_down = move || {
        let print = text.get_untracked().trim().to_owned();
        if !print.is_empty() {
            settings::forget_draft();
            answer.run(Answer::Printed(print));
        }
    };
    let on_enter = move |event: leptos::ev::KeyboardEvent| {
        if event.key() == "Enter" {
            event.prevent_default();
            put_down();
        }
    };
    let typed_in = move |value: String| {
        settings::set_draft(&settings::Draft::new(&id, question, target, &value));
        text.set(value);
    };
    view! {
        <div class="field">
            <input
                class="value print"
                type="text"
                maxlength="300"
                autocomplete="off"
                autocapitalize="off"
                spellcheck="false"
                enterkeyhint="next"
                aria-label=screens::PRINT
                placeholder=print::example(sort)
                prop:value=text
                on:input=move |event| typed_in(event_target_value(&event))
                on:keydown=on_enter
            />
        </div>
        <ul class="understood">
            {move || print::understood(sort, &text.read()).into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}
        </ul>
        <ul class="answers">
            <li>
                <button class="answer decisive" data-answer="put-down" disabled=move || text.read().trim().is_empty() on:click=move |_| put_down()>
                    {screens::PUT_DOWN}
                </button>
            </li>
            <li>
                <button class="answer" data-answer="nothing" on:click=move |_| answer.run(Answer::Nothing)>{screens::NOTHING_PRINTED}</button>
            </li>
        </ul>
    }
}

/// What was typed for this question and not put down yet: a killed tab loses nothing.
fn draft(id: &str, question: &Question, target: Target) -> Option<String> {
    settings::draft().filter(|draft| draft.is_for(id, question, target)).map(|draft| draft.text)
}
