//! Make a file to show: what is in it, and how to hand it on.

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::frame::id_of;
use super::way::Room;
use crate::domain::assess::{RuleBook, assess};
use crate::record::{self, Record};
use crate::screens::platform::file;
use crate::screens::platform::press::{self, Form};
use crate::screens::state::Samples;
use crate::words::{faults, mark, screens, study as words, verdict};

/// How the file leaves the device.
#[derive(Debug, Clone, Copy)]
enum HandOn {
    Share,
    Save,
}

/// The page.
pub fn make_file(record: Memo<Record>) -> AnyView {
    let samples = expect_context::<Samples>();
    let afterwards = Room::Sample(id_of(record)).href();
    let is_making = RwSignal::new(false);
    let hand_on = move |form: Form, way: HandOn| {
        let record = record.get_untracked();
        is_making.set(true);
        spawn_local(async move {
            make_and_hand_on(samples, &record, form, way).await;
            // Whoever has left this page meanwhile has taken the signal along.
            let _ = is_making.try_set(false);
        });
    };
    let save_examination = move |_| samples.save_alone(&record.get_untracked());
    let judged = move || {
        record.with(|record| {
            let assessment = assess(&record.examination, &RuleBook::CURRENT);
            view! {
                <p class="verdict-word">{verdict::headline(&assessment)}</p>
                <p>{verdict::reach(&assessment)}</p>
                <p class="small">{screens::photos(record.photos.len())}</p>
            }
        })
    };
    view! {
        {judged}
        <p>{words::FILE_IS}</p>
        <p class="small" role="status">{move || is_making.get().then_some(words::MAKING_FILE)}</p>
        <p><a href=afterwards id="afterwards">{screens::AFTERWARDS}</a></p>
        <div class="thumb column">
            <button class="decisive" id="share" disabled=is_making on:click=move |_| hand_on(Form::Page, HandOn::Share)>{words::SHARE}</button>
            <button class="decisive quiet" id="save" disabled=is_making on:click=move |_| hand_on(Form::Page, HandOn::Save)>{words::SAVE}</button>
            <button class="decisive quiet" id="save-pdf" disabled=is_making on:click=move |_| hand_on(Form::Pdf, HandOn::Save)>{words::SAVE_PDF}</button>
            <button class="aside" id="save-label" disabled=is_making on:click=move |_| hand_on(Form::Label, HandOn::Save)>{words::SAVE_LABEL}</button>
            <button class="aside" id="save-json" on:click=save_examination>{screens::SAVE_JSON}</button>
        </div>
    }
    .into_any()
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
    match (handed, way) {
        (Err(fault), _) => samples.tell_text(faults::file(&fault)),
        (Ok(()), HandOn::Save) => samples.tell_done(words::saved(&name)),
        // The device itself shows what becomes of what is shared.
        (Ok(()), HandOn::Share) => {}
    }
}
