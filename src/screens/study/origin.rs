//! Where a sample came from: how it was acquired, the parcel, and who held it since.

use leptos::prelude::*;

use super::frame::{Area, Kept, id_of};
use crate::domain::custody::{Acquisition, Handling};
use crate::record::{self, Attached, Record};
use crate::screens::platform::{clock, file};
use crate::screens::state::Samples;
use crate::screens::widgets::Line;
use crate::words::{custody as words, faults, screens, study};

/// The page.
pub fn origin(record: Memo<Record>) -> AnyView {
    view! {
        <p>{study::ORIGIN_IS}</p>
        <Acquired record />
        <Photos record />
        <Chain record />
    }
    .into_any()
}

/// A text of the acquisition, to be changed.
type Field = fn(&mut Acquisition) -> &mut String;

/// How somebody came by the sample.
#[component]
fn Acquired(
    /// The record.
    record: Memo<Record>,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let put = move |field: Field| {
        Callback::new(move |text: String| {
            let id = id_of(record);
            samples.edit(&id, |record| *field(&mut record.custody.acquisition) = text);
        })
    };
    let begun = record.with_untracked(|record| record.custody.acquisition.clone());
    let when =
        Callback::new(move |local: String| put(|a| &mut a.when).run(clock::of_local(&local).unwrap_or_default()));
    let local = begun.when.get(..16).unwrap_or_default().to_owned();
    view! {
        <Kept id="place" label=study::PLACE text=begun.place put=put(|a| &mut a.place) />
        <Kept id="when" label=study::WHEN text=local put=when sort="datetime-local" />
        <Kept id="seller" label=study::SELLER text=begun.seller put=put(|a| &mut a.seller) />
        <Kept id="price" label=study::PRICE text=begun.price put=put(|a| &mut a.price) />
        <Kept id="order" label=study::ORDER text=begun.order put=put(|a| &mut a.order) />
        <Kept id="listing" label=study::LISTING text=begun.listing put=put(|a| &mut a.listing) />
        <Area label=study::PARCEL text=begun.parcel put=put(|a| &mut a.parcel) />
    }
}

/// Photos of the listing and of the unopened parcel.
#[component]
fn Photos(
    /// The record.
    record: Memo<Record>,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let picked = move |event: leptos::ev::Event| {
        let id = id_of(record);
        for file in file::picked(&event) {
            samples.attach_photo(id.clone(), Attached::Origin, file);
        }
    };
    let count = move || {
        record.with(|record| screens::photos(record.photos.iter().filter(|p| p.attached == Attached::Origin).count()))
    };
    view! {
        <h2>{words::PHOTOS}</h2>
        <p class="small">{count}</p>
        <label class="aside">
            {study::ADD_PHOTOS}
            <input type="file" id="origin-photo" accept="image/*" multiple class="unseen" on:change=picked />
        </label>
    }
}

/// Who held it since, and what was done.
#[component]
fn Chain(
    /// The record.
    record: Memo<Record>,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let (who, done, seal) = (RwSignal::new(String::new()), RwSignal::new(String::new()), RwSignal::new(String::new()));
    let add = move |_| {
        let handling = Handling {
            when: clock::now(),
            who: who.get_untracked().trim().to_owned(),
            done: done.get_untracked().trim().to_owned(),
            seal: seal.get_untracked().trim().to_owned(),
        };
        let id = id_of(record);
        let mut refused = None;
        samples.edit(&id, |record| refused = record::append(record, handling).err());
        match refused {
            Some(fault) => samples.tell_text(faults::not_added(&fault)),
            None => [who, done, seal].into_iter().for_each(|text| text.set(String::new())),
        }
    };
    let entries = move || {
        record.with(|record| {
            let entries = (1..).zip(&record.custody.entries);
            entries.map(|(place, entry)| view! { <li>{words::entry(place, entry)}</li> }).collect_view()
        })
    };
    let state = move || {
        record.with(|record| {
            let said = words::chain(&record::chain(record));
            said.into_iter().map(|said| view! { <p class="small">{said}</p> }).collect_view()
        })
    };
    view! {
        <h2>{words::WHO_HELD_IT}</h2>
        <ul class="entries">{entries}</ul>
        {state}
        <Line id="who" label=study::WHO text=who />
        <Line id="done" label=study::DONE text=done />
        <Line id="seal" label=study::SEAL_NUMBER text=seal />
        <p class="small">{study::ENTRIES_STAY}</p>
        <button
            class="decisive quiet"
            id="add-entry"
            disabled=move || who.with(|t| t.trim().is_empty()) && done.with(|t| t.trim().is_empty())
            on:click=add
        >
            {study::ADD_ENTRY}
        </button>
        <p class="small">{words::CHAIN_CANNOT_SEE}</p>
    }
}
