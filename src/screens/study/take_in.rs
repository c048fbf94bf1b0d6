//! Looking at a file that somebody brought, and keeping what it carries.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::domain::assess::{RuleBook, assess};
use crate::record::{self, Carried, Record};
use crate::screens::platform::{address, file, ids};
use crate::screens::state::Samples;
use crate::screens::way::Way;
use crate::words::{faults, mark, study as words, verdict};

/// The page.
#[component]
pub fn TakeIn() -> impl IntoView {
    let samples = expect_context::<Samples>();
    let looked_at = RwSignal::new_local(None::<Carried>);
    let picked = move |event: leptos::ev::Event| {
        let Some(picked) = file::picked(&event).into_iter().next() else { return };
        looked_at.set(None);
        spawn_local(async move {
            let text = match file::text(&picked).await {
                Ok(text) => text,
                Err(fault) => return samples.tell_text(faults::file(&fault)),
            };
            match record::from_file(&text) {
                Ok(carried) => looked_at.set(Some(carried)),
                Err(fault) => samples.tell_text(faults::taken_back(&fault)),
            }
        });
    };
    view! {
        <main class="page study">
            <p class="way"><a href=Way::AllSamples.path()>{words::START}</a></p>
            <h1>{words::TAKE_IN}</h1>
            <p>{words::TAKE_IN_IS}</p>
            {move || looked_at.get().map(|carried| view! { <Brought carried /> })}
            <div class="thumb">
                <label class="decisive quiet">
                    {words::PICK}
                    <input type="file" id="take-back" accept=".html,.json,text/html,application/json" class="unseen" on:change=picked />
                </label>
            </div>
        </main>
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
                Err(fault) => samples.tell_text(faults::store(&fault)),
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
            <p class="subject">{mark::subject(&record)}</p>
            <p class="verdict-word">{verdict::headline(&assessment)}</p>
            <p>{verdict::reach(&assessment)}</p>
            {ways}
        </section>
    }
}
