//! Fields to type a reading or a print into: comma or point, units typed or tapped, value and Enter moves on.

use leptos::prelude::*;

use crate::domain::examination::Answer;
use crate::domain::instrument::{Instrument, ReadWith};
use crate::domain::quantity::{QuantityKind, Unit};
use crate::domain::question::{Printed, Question, Target};
use crate::domain::reading::Reading;
use crate::screens::state::Samples;
use crate::screens::way::INSTRUMENTS;
use crate::store::{Draft, settings};
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
    let samples = expect_context::<Samples>();
    let choices: Vec<ReadWith> = settings::own_instruments()
        .into_iter()
        .filter(|own| instruments.contains(&own.instrument))
        .chain(instruments.iter().map(|&instrument| ReadWith { instrument, own: None }))
        .collect();
    let begun = samples.draft(&id, question, target).unwrap_or_else(|| Draft {
        text: before.as_ref().map(|reading| reading.typed.clone()).unwrap_or_default(),
        unit: before.as_ref().map(|reading| reading.unit),
        read_with: before.as_ref().map(|reading| reading.read_with().key()).unwrap_or_default(),
    });
    let known = choices.iter().find(|known| known.key() == begun.read_with).cloned();
    // One that is not among one's own any more is still what it was read with.
    let known = known.or_else(|| before.as_ref().map(Reading::read_with));
    let text = RwSignal::new(begun.text);
    let unit = RwSignal::new(begun.unit.or(units.first().copied()).unwrap_or(Unit::Ohm));
    let with = RwSignal::new(known.or_else(|| usual(question, &choices)));
    // What it was read with changes no digit: until it is named, the least exact stands in.
    let stand_in = ReadWith { instrument: instruments.last().copied().unwrap_or(Instrument::HandMeter), own: None };
    let parsed = Memo::new(move |_| {
        let ReadWith { instrument, own } = with.get().unwrap_or_else(|| stand_in.clone());
        typed::parse_reading(&text.read(), kind, unit.get(), instrument).map(|reading| Reading { own, ..reading })
    });
    let is_unnamed = RwSignal::new(false);
    let put_down = move || {
        if let Ok(reading) = parsed.get_untracked() {
            if with.with_untracked(Option::is_none) {
                return is_unnamed.set(true);
            }
            settings::remember_read_with(question, reading.read_with().key());
            answer.run(Answer::Reading(reading));
        }
    };
    let keep = move || {
        let read_with = with.with_untracked(|with| with.as_ref().map(ReadWith::key).unwrap_or_default());
        let draft = Draft { text: text.get_untracked(), unit: Some(unit.get_untracked()), read_with };
        samples.keep_draft(&id, question, target, draft);
    };
    let (keep, tapped) = (keep.clone(), keep);
    let tapped = Callback::new(move |()| tapped());
    let on_enter = move |event: leptos::ev::KeyboardEvent| {
        if event.key() == "Enter" {
            event.prevent_default();
            put_down();
        }
    };
    let typed_in = move |value: String| {
        text.set(value);
        keep();
    };
    let said = move || {
        match parsed.get() {
        Ok(_) if is_unnamed.get() && with.with(Option::is_none) => {
            view! { <p class="problem" role="alert">{screens::NAME_INSTRUMENT}</p> }.into_any()
        }
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
                            <button class="unit" aria-pressed=move || (unit.get() == choice).to_string() on:click=move |_| {
                                unit.set(choice);
                                tapped.run(());
                            }>
                                {choice.symbol()}
                            </button>
                        }
                    })
                    .collect_view()}
            </span>
        </div>
        {said}
        <InstrumentChoice instruments choices with tapped />
        <button class="answer decisive" data-answer="put-down" on:click=move |_| put_down()>{screens::PUT_DOWN}</button>
    }
}

/// The instruments to name, one's own first; where there is a choice, none is named until somebody does.
#[component]
fn InstrumentChoice(
    /// The types.
    instruments: &'static [Instrument],
    /// What may be named.
    choices: Vec<ReadWith>,
    /// The one that is named.
    with: RwSignal<Option<ReadWith>>,
    /// Called after one was named.
    tapped: Callback<()>,
) -> impl IntoView {
    let words = choices
        .into_iter()
        .map(|choice| {
            let (key, name) = (choice.key(), instrument::read_with(&choice));
            let choice = StoredValue::new(choice);
            let is_named = move || with.with(|with| choice.with_value(|choice| with.as_ref() == Some(choice)));
            let put = move |_| {
                with.set(Some(choice.get_value()));
                tapped.run(());
            };
            view! {
                <button class="unit" data-instrument=key aria-pressed=move || is_named().to_string() on:click=put>
                    {name}
                </button>
            }
        })
        .collect_view();
    view! {
        <p class="with">
            <span>{screens::READ_WITH}</span>
            {words}
            <a href=INSTRUMENTS class="small">{screens::OWN_INSTRUMENT}</a>
        </p>
        {instrument::hint(instruments).map(|hint| view! { <p class="small">{hint}</p> })}
    }
}

/// What to begin with: the only one there is, or the one this question was answered with before.
fn usual(question: &Question, choices: &[ReadWith]) -> Option<ReadWith> {
    match choices {
        [only] => Some(only.clone()),
        _ => settings::read_with(question).and_then(|key| choices.iter().find(|known| known.key() == key).cloned()),
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
    let samples = expect_context::<Samples>();
    let text = RwSignal::new(samples.draft(&id, question, target).map_or(before, |draft| draft.text));
    let put_down = move || {
        let print = text.get_untracked().trim().to_owned();
        if !print.is_empty() {
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
        samples.keep_draft(&id, question, target, Draft { text: value.clone(), ..Draft::default() });
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
