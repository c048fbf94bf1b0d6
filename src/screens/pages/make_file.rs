//! Make a file to show: what is in it, and how to hand it on.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::domain::assess::{RuleBook, assess};
use crate::record;
use crate::report;
use crate::screens::platform::file;
use crate::screens::state::Samples;
use crate::screens::way::{Link, Way};
use crate::words::{faults, mark, screens as words, verdict};

/// How the file leaves the device.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum HandOn {
    Share,
    Save,
    SaveExamination,
}

/// The page.
#[component]
pub fn MakeFile(
    /// The sample's id.
    id: String,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let back = Way::Sample(id.clone());
    let found = Memo::new(move |_| samples.get(&id));
    let hand_on = move |way: HandOn| {
        let Some(record) = found.get_untracked() else { return };
        spawn_local(async move {
            let name = mark::file_name(&record);
            let handed = if way == HandOn::SaveExamination {
                file::save(&format!("{name}.json"), "application/json", &record::write(&record))
            } else {
                let photos = samples.photo_bytes(&record).await;
                let page = report::page(&record, &photos);
                let name = format!("{name}.html");
                if way == HandOn::Share {
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
                <Link to=Way::AllSamples>{words::ALL_SAMPLES}</Link>
                <Link to=back>{words::CARRY_ON_LOOKING}</Link>
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
                <button class="decisive" id="share" on:click=move |_| hand_on(HandOn::Share)>{words::SHARE}</button>
                <button class="decisive quiet" id="save" on:click=move |_| hand_on(HandOn::Save)>{words::SAVE}</button>
                <button class="aside" id="save-json" on:click=move |_| hand_on(HandOn::SaveExamination)>{words::SAVE_JSON}</button>
            </div>
        </main>
    }
}
