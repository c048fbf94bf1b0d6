//! Somebody's own instruments: what they are called, and what their makers say they may be wrong by.

use leptos::prelude::*;

use crate::domain::instrument::{Accuracy, Instrument, OwnInstrument, ReadWith};
use crate::screens::way::Way;
use crate::screens::widgets::Line;
use crate::store::settings;
use crate::words::{instrument, study as words, typed};

/// The page.
#[component]
pub fn Instruments() -> impl IntoView {
    let all = RwSignal::new(settings::own_instruments());
    let keep = move |change: &dyn Fn(&mut Vec<ReadWith>)| {
        all.update(|all| change(all));
        all.with_untracked(|all| settings::set_own_instruments(all));
    };
    let kind = RwSignal::new(Instrument::HandMeterNulled);
    let (name, percent, digits, fixed) = (
        RwSignal::new(String::new()),
        RwSignal::new(String::new()),
        RwSignal::new(String::new()),
        RwSignal::new(String::new()),
    );
    let entered = Memo::new(move |_| {
        let number = |text: RwSignal<String>| typed::parse_number(&text.read());
        let (_, unit) = kind.get().accuracy().fixed;
        let accuracy =
            Accuracy { of_reading: number(percent)? / 100.0, digits: number(digits)?, fixed: (number(fixed)?, unit) };
        let name = name.read().trim().to_owned();
        let own = Some(OwnInstrument { name, accuracy }).filter(|own| !own.name.is_empty());
        own.map(|own| ReadWith { instrument: kind.get(), own: Some(own) })
    });
    let add = move |_| {
        if let Some(new) = entered.get_untracked() {
            keep(&|all| {
                all.retain(|known| known.key() != new.key());
                all.push(new.clone());
            });
            name.set(String::new());
        }
    };
    let lines = move || {
        let line = |own: ReadWith| {
            let key = own.key();
            let accuracy = own.own.as_ref().map(|own| instrument::accuracy(own.accuracy)).unwrap_or_default();
            let text = format!("{}, {}, {accuracy}", instrument::read_with(&own), instrument::name(own.instrument));
            let remove = move |_| keep(&|all| all.retain(|known| known.key() != key));
            view! { <li>{text} " " <button class="aside" on:click=remove>{words::REMOVE}</button></li> }
        };
        all.get().into_iter().map(line).collect_view()
    };
    let choice = move |event| {
        let code = event_target_value(&event);
        if let Some(found) = Instrument::ALL.into_iter().find(|known| known.code() == code) {
            kind.set(found);
        }
    };
    let kinds = Instrument::ALL.into_iter().filter(|known| *known != Instrument::ContinuityTester);
    let kinds = kinds.map(|known| view! { <option value=known.code() selected=move || kind.get() == known>{instrument::name(known)}</option> });
    view! {
        <main class="page study">
            <p class="way"><a href=Way::AllSamples.path()>{words::START}</a></p>
            <h1>{words::INSTRUMENTS}</h1>
            <p>{words::INSTRUMENTS_ARE}</p>
            <ul>{lines}</ul>
            <Line id="instrument-name" label=words::INSTRUMENT_NAME text=name />
            <label class="line">{words::INSTRUMENT_TYPE} <select on:change=choice>{kinds.collect_view()}</select></label>
            <Line label=words::PERCENT text=percent keyboard="decimal" />
            <Line label=words::DIGITS text=digits keyboard="decimal" />
            <Line label=words::FIXED text=fixed keyboard="decimal" />
            <p class="small">{move || instrument::says(kind.get())}</p>
            <p class="small">{words::TWO_LEADS}</p>
            <div class="thumb">
                <button class="decisive" id="add-instrument" disabled=move || entered.with(Option::is_none) on:click=add>{words::ADD}</button>
            </div>
        </main>
    }
}
