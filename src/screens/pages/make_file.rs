//! Make a file to show: what is in it, and how to hand it on.

use leptos::prelude::*;
use leptos::task::spawn_local;
use leptos_router::components::A;
use leptos_router::hooks::use_params_map;

use crate::domain::assess::{RuleBook, assess};
use crate::record;
use crate::report;
use crate::screens::platform::file;
use crate::screens::state::Samples;
use crate::words::{faults, mark, screens as words, verdict};

/// How the file leaves the device.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Way {
    Share,
    Save,
    SaveExamination,
}

/// The page.
#[component]
pub fn MakeFile() -> impl IntoView {
    let samples = expect_context::<Samples>();
    let params = use_params_map();
    let id = Memo::new(move |_| params.read().get("id").unwrap_or_default());
    let found = Memo::new(move |_| samples.get(&id.read()));
    let hand_on = move |way: Way| {
        let Some(record) = found.get_untracked() else { return };
        spawn_local(async move {
            let name = mark::file_name(&record);
            let handed = if way == Way::SaveExamination {
                file::save(&format!("{name}.json"), "application/json", &record::write(&record))
            } else {
                let photos = samples.photo_bytes(&record).await;
                let page = report::page(&record, &photos);
                let name = format!("{name}.html");
                if way == Way::Share {
                    file::share_or_save(&name, "text/html", &page).await
                } else {
                    file::save(&name, "text/html", &page)
                }
            };
            if let Err(fault) = handed {
                samples.tell_text(faults::file(&fault));
            }
        });
    };
    view! {
        <main class="page">
            <p class="way">
                <A href="/">{words::ALL_SAMPLES}</A>
                {move || view! { <A href=format!("/sample/{}", id.get())>{words::CARRY_ON_LOOKING}</A> }}
            </p>
            <h1>{words::MAKE_FILE}</h1>
            {move || {
                found.get().map(|record| {
                    let assessment = assess(&record.examination, &RuleBook::CURRENT);
                    view! {
                        <p class="subject">{mark::subject(&record)}</p>
                        <p class="verdict-word">{verdict::headline(&assessment)}</p>
                        <p>{verdict::reach(&assessment)}</p>
                        <p class="small">{words::photos(record.photos.len())}</p>
                    }
                })
            }}
            <p>{words::FILE_IS}</p>
            <div class="thumb column">
                <button class="decisive" id="share" on:click=move |_| hand_on(Way::Share)>{words::SHARE}</button>
                <button class="decisive quiet" id="save" on:click=move |_| hand_on(Way::Save)>{words::SAVE}</button>
                <button class="aside" id="save-json" on:click=move |_| hand_on(Way::SaveExamination)>{words::SAVE_JSON}</button>
            </div>
        </main>
    }
}
