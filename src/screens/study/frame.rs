//! What the pages of the study have in common: the ways back, the sample they speak of, and fields that keep what is typed at each key.

use leptos::prelude::*;

use super::way::Room;
use crate::record::Record;
use crate::screens::state::Samples;
use crate::screens::way::Way;
use crate::screens::widgets::Line;
use crate::words::{mark, screens, study as words};

/// A page of the study about one sample, once that is read.
#[component]
pub fn OfSample(
    /// The sample's id.
    id: String,
    /// What it is.
    heading: &'static str,
    /// What stands on it.
    page: fn(Memo<Record>) -> AnyView,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let (looking, afterwards) = (Way::Sample(id.clone()).path(), Room::Sample(id.clone()).href());
    let found = Memo::new(move |_| samples.get(&id));
    let is_there = Memo::new(move |_| found.with(Option::is_some));
    let last = StoredValue::new(None::<Record>);
    let record = Memo::new(move |_| {
        let record = found.get().or_else(|| last.get_value());
        last.set_value(record.clone());
        record.unwrap_or_else(mark::blank)
    });
    let body = move || {
        if is_there.get() {
            return view! {
                <p class="subject">{move || record.with(mark::what_it_is)}</p>
                {page(record)}
            }
            .into_any();
        }
        let text = if samples.is_loading() { screens::READING } else { screens::NOT_HERE };
        view! { <p>{text}</p> }.into_any()
    };
    view! {
        <main class="page study">
            <p class="way">
                <a href=Way::AllSamples.path()>{words::START}</a>
                <a href=looking>{screens::CARRY_ON_LOOKING}</a>
                <a href=afterwards>{words::AFTERWARDS}</a>
            </p>
            <h1>{heading}</h1>
            {body}
        </main>
    }
}

/// The id of a record, as it is now.
pub fn id_of(record: Memo<Record>) -> String {
    record.with_untracked(|record| record.id.clone())
}

/// A line of text that is kept at each key.
#[component]
pub fn Kept(
    /// What it is.
    label: &'static str,
    /// The text to begin with.
    text: String,
    /// Called with the text at each key.
    put: Callback<String>,
    /// Its id; none where it is empty.
    #[prop(optional)]
    id: &'static str,
    /// The sort of field, as HTML names it.
    #[prop(default = "text")]
    sort: &'static str,
) -> impl IntoView {
    view! { <Line label text=RwSignal::new(text) typed=put id sort /> }
}

/// Some lines of text that are kept at each key.
#[component]
pub fn Area(
    /// What it is.
    label: &'static str,
    /// The text to begin with.
    text: String,
    /// Called with the text at each key.
    put: Callback<String>,
) -> impl IntoView {
    view! {
        <label class="line">
            {label}
            <textarea rows="2" maxlength="4000" prop:value=text on:input=move |event| put.run(event_target_value(&event))></textarea>
        </label>
    }
}
