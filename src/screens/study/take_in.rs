//! Looking at a file that somebody brought: whether it was changed, what it says today, and keeping what it carries.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::domain::assess::{RuleBook, assess};
use crate::record::{self, Carried, Record};
use crate::screens::platform::press::{self, Found};
use crate::screens::platform::{address, file, ids};
use crate::screens::state::Samples;
use crate::screens::way::Way;
use crate::words::{faults, mark, study as words, verdict};

/// The page.
#[component]
pub fn TakeIn() -> impl IntoView {
    let samples = expect_context::<Samples>();
    let found = RwSignal::new(None::<Found>);
    let carried = RwSignal::new_local(None::<Carried>);
    let is_looking = RwSignal::new(false);
    let picked = move |event: leptos::ev::Event| {
        let Some(picked) = file::picked(&event).into_iter().next() else { return };
        found.set(None);
        carried.set(None);
        is_looking.set(true);
        // Whoever has left this page meanwhile has taken its signals along.
        spawn_local(async move {
            match file::bytes(&picked).await {
                Ok(bytes) => {
                    match press::check(&bytes).await {
                        Ok(looked) => drop(found.try_set(Some(looked))),
                        Err(fault) => samples.tell_text(faults::not_checked(&fault)),
                    }
                    match record::from_file(&String::from_utf8_lossy(&bytes)) {
                        Ok(brought) => drop(carried.try_set(Some(brought))),
                        Err(fault) => samples.tell_text(faults::taken_back(&fault)),
                    }
                }
                Err(fault) => samples.tell_text(faults::file(&fault)),
            }
            let _ = is_looking.try_set(false);
        });
    };
    view! {
        <main class="page study">
            <p class="way"><a href=Way::AllSamples.path()>{words::START}</a></p>
            <h1>{words::TAKE_IN}</h1>
            <p>{words::TAKE_IN_IS}</p>
            <p class="small" role="status">{move || is_looking.get().then_some(words::LOOKING)}</p>
            {move || found.get().map(|found| view! { <Unchanged found /> })}
            {move || carried.get().map(|carried| view! { <Brought carried /> })}
            <div class="thumb">
                <label class="decisive quiet">
                    {words::PICK}
                    <input type="file" id="take-back" accept=".html,.json,text/html,application/json" class="unseen" on:change=picked />
                </label>
            </div>
        </main>
    }
}

/// Whether the file is as it was sealed, and what judging it again found.
#[component]
fn Unchanged(
    /// What the look found.
    found: Found,
) -> impl IntoView {
    let mut said = found.said.into_iter();
    let first = said.next().map(|first| view! { <p><b>{first}</b></p> });
    view! {
        <section id="seal" data-seal=found.state>
            <h2>{words::WAS_IT_CHANGED}</h2>
            {first}
            {said.map(|said| view! { <p class="small">{said}</p> }).collect_view()}
        </section>
    }
}

/// What a file carries, and what can be done with it.
#[component]
fn Brought(
    /// What it carries.
    carried: Carried,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let record = carried.record.clone();
    let assessment = assess(&record.examination, &RuleBook::CURRENT);
    let here = samples.get(&record.id);
    let keep = move |carried: Carried| {
        spawn_local(async move {
            let way = Way::Sample(carried.record.id.clone());
            match samples.keep_carried(carried).await {
                Ok(()) => address::leave_for(&way.path()),
                Err(fault) => samples.tell_text(faults::not_kept(&fault)),
            }
        });
    };
    let carried = StoredValue::new_local(carried);
    let keep_it = move |_| keep(carried.get_value());
    let keep_beside = move |_| {
        let Carried { record, photos } = carried.get_value();
        keep(Carried { record: Record { id: ids::fresh(), ..record }, photos });
    };
    let ways = match here {
        None => view! { <button class="decisive" id="keep" on:click=keep_it>{words::KEEP}</button> }.into_any(),
        Some(known) if known == record => {
            let to = Way::Sample(record.id.clone()).path();
            view! { <p>{words::SAME_HERE} " " <a href=to id="open">{words::OPEN_IT}</a></p> }.into_any()
        }
        Some(known) => view! {
            <p>{words::differs(&known.changed, &record.changed)}</p>
            <button class="decisive" id="keep-both" on:click=keep_beside>{words::KEEP_BOTH}</button>
            <button class="aside" id="replace" on:click=keep_it>{words::REPLACE}</button>
        }
        .into_any(),
    };
    view! {
        <section class="brought">
            <h2>{words::WHAT_IT_SAYS}</h2>
            <p class="subject">{mark::subject(&record)}</p>
            <p class="verdict-word">{verdict::headline(&assessment)}</p>
            <p>{verdict::reach(&assessment)}</p>
            {ways}
        </section>
    }
}
