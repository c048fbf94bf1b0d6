//! Make a file to show: what is in it, and how to hand it on.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::domain::assess::{RuleBook, assess};
use crate::record::{self, Record};
use crate::screens::platform::file;
use crate::screens::platform::press::{self, Form};
use crate::screens::state::Samples;
use crate::screens::way::{Link, Way};
use crate::words::{faults, mark, screens as words, verdict};

/// How the file leaves the device.
#[derive(Debug, Clone, Copy)]
enum HandOn {
    Share,
    Save,
}

/// The page.
#[component]
pub fn MakeFile(
    /// The sample's id.
    id: String,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let back = Way::Sample(id.clone());
    let study = format!("/study.html#/sample/{id}");
    let found = Memo::new(move |_| samples.get(&id));
    let is_making = RwSignal::new(false);
    let hand_on = move |form: Form, way: HandOn| {
        let Some(record) = found.get_untracked() else { return };
        is_making.set(true);
        spawn_local(async move {
            make_and_hand_on(samples, &record, form, way).await;
            // Whoever has left this page meanwhile has taken the signal along.
            let _ = is_making.try_set(false);
        });
    };
    let save_examination = move |_| {
        let Some(record) = found.get_untracked() else { return };
        let name = format!("{}.json", mark::file_name(&record));
        if let Err(fault) = file::save(&name, "application/json", &record::write(&record).as_str().into()) {
            samples.tell_text(faults::file(&fault));
        }
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
            <p><a href=study id="afterwards">{words::AFTERWARDS}</a></p>
            <p class="small" role="status">{move || is_making.get().then_some(words::MAKING_FILE)}</p>
            <div class="thumb column">
                <button class="decisive" id="share" disabled=is_making on:click=move |_| hand_on(Form::Page, HandOn::Share)>{words::SHARE}</button>
                <button class="decisive quiet" id="save" disabled=is_making on:click=move |_| hand_on(Form::Page, HandOn::Save)>{words::SAVE}</button>
                <button class="decisive quiet" id="save-pdf" disabled=is_making on:click=move |_| hand_on(Form::Pdf, HandOn::Save)>{words::SAVE_PDF}</button>
                <button class="aside" id="save-label" disabled=is_making on:click=move |_| hand_on(Form::Label, HandOn::Save)>{words::SAVE_LABEL}</button>
                <button class="aside" id="save-json" on:click=save_examination>{words::SAVE_JSON}</button>
            </div>
        </main>
    }
}

async fn make_and_hand_on(samples: Samples, record: &Record, form: Form, way: HandOn) {
    let photos = if form == Form::Label { Vec::new() } else { samples.photo_bytes(record).await };
    let made = match press::make(form, &record::write(record), &photos).await {
        Ok(made) => made,
        Err(fault) => return samples.tell_text(faults::press(&fault)),
    };
    let name = format!("{}{}", mark::file_name(record), form.ending());
    let handed = match way {
        HandOn::Share => file::share_or_save(&name, form.media_type(), &made).await,
        HandOn::Save => file::save(&name, form.media_type(), &made),
    };
    if let Err(fault) = handed {
        samples.tell_text(faults::file(&fault));
    }
}
