//! All samples on this device: search, open, begin a new one.

use leptos::prelude::*;

use crate::domain::assess::{RuleBook, assess};
use crate::record::Record;
use crate::screens::state::{Samples, Unreadable};
use crate::screens::way::{COLLECTION, Link, TAKE_IN, Way};
use crate::words::{mark, screens as words, verdict};

/// The page.
#[component]
pub fn AllSamples() -> impl IntoView {
    let samples = expect_context::<Samples>();
    samples.open_for_looking(None);
    let search = RwSignal::new(String::new());
    let found = Memo::new(move |_| {
        let wanted = search.read().to_lowercase();
        samples.all().into_iter().filter(|record| mark::has_words(record, &wanted)).collect::<Vec<_>>()
    });
    view! {
        <main class="page">
            <h1 class="name">"Plugwary"</h1>
            <p class="tagline">{words::TAGLINE}</p>
            <h2>{words::ALL_SAMPLES}</h2>
            <input
                class="search"
                type="search"
                aria-label=words::SEARCH
                placeholder=words::SEARCH
                prop:value=search
                on:input=move |event| search.set(event_target_value(&event))
            />
            <ul class="samples">
                <For each=move || found.get() key=|record| (record.id.clone(), record.changed.clone()) children=|record| view! { <SampleLine record /> } />
            </ul>
            {move || samples.unreadable().into_iter().map(|one| view! { <UnreadableLine one /> }).collect_view()}
            {move || {
                let text = match (samples.is_loading(), found.with(Vec::is_empty), search.read().is_empty()) {
                    (true, _, _) => words::READING,
                    (false, true, true) if samples.unreadable().is_empty() => words::NO_SAMPLES,
                    (false, true, false) => words::NO_MATCH,
                    (false, ..) => "",
                };
                view! { <p class="small">{text}</p> }
            }}
            <p class="way">
                <a href=COLLECTION id="collection">{words::COLLECTION}</a>
                <Link to=Way::About>{words::ABOUT}</Link>
            </p>
            <div class="thumb">
                <a href=TAKE_IN class="aside" id="take-in">{words::TAKE_IN}</a>
                <Link to=Way::NewSample class="decisive" id="start">{words::START_LOOKING}</Link>
            </div>
        </main>
    }
}

/// One sample: what it is called, and the verdict so far.
#[component]
fn SampleLine(
    /// The record.
    record: Record,
) -> impl IntoView {
    let assessment = assess(&record.examination, &RuleBook::CURRENT);
    let bar = mark::of_verdict(assessment.verdict);
    let to = Way::Sample(record.id.clone());
    view! {
        <li class=format!("said bar-{}", bar.code())>
            <Link to class="sample">
                <b>{mark::title(&record)}</b>
                <span class="verdict-so-far">{verdict::headline(&assessment)}</span>
                {record.is_example.then(|| view! { <span class="small">{words::IS_EXAMPLE}</span> })}
            </Link>
        </li>
    }
}

/// A stored sample that cannot be read: what is wrong, and what can be done with it.
#[component]
fn UnreadableLine(
    /// The sample.
    one: Unreadable,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let (why, id) = (one.why.clone(), one.id.clone());
    view! {
        <p class="notice" role="alert">
            {why}
            <button class="aside" on:click=move |_| samples.save_unreadable(&one)>{words::SAVE_AS_IT_IS}</button>
            <button class="aside" on:click=move |_| samples.delete_unreadable(id.clone())>{words::DELETE_UNREADABLE}</button>
        </p>
    }
}
