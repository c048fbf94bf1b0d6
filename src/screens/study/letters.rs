//! The letters about a sample: to be read, filled in where brackets stand, and copied, shared or saved.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::record::Record;
use crate::screens::platform::{clipboard, file};
use crate::screens::state::Samples;
use crate::words::letters::{self, Letter, Purpose};
use crate::words::{faults, mark, study as words};

/// What makes a letter.
type Make = fn(&Record) -> Letter;

/// Whom a letter is for: a word for names, its heading, and what makes it.
const LETTERS: [(&str, &str, Make); 3] = [
    ("seller", words::TO_SELLER, letters::seller),
    ("marketplace", words::TO_MARKETPLACE, letters::marketplace),
    ("authority", words::TO_AUTHORITY, letters::authority),
];

/// The page.
pub fn letters(record: Memo<Record>) -> AnyView {
    let all = LETTERS.map(|(to, heading, make)| view! { <OneLetter record to heading make /> });
    view! {
        <p>{words::LETTERS_ARE}</p>
        {all.collect_view()}
    }
    .into_any()
}

/// One letter, folded away.
#[component]
fn OneLetter(
    /// The record.
    record: Memo<Record>,
    /// Whom it is for, for its file's name.
    to: &'static str,
    /// Its heading.
    heading: &'static str,
    /// What makes it.
    make: Make,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let letter = record.with_untracked(make);
    let is_letter = letter.purpose != Purpose::Nothing;
    let text = RwSignal::new(if is_letter { letter.whole() } else { String::new() });
    let said = RwSignal::new("");
    let copy = move |_| {
        spawn_local(async move {
            let is_copied = clipboard::copy(&text.get_untracked()).await;
            // Whoever has left this page meanwhile has taken the signal along.
            let _ = said.try_set(if is_copied { words::COPIED } else { words::NOT_COPIED });
        });
    };
    let hand_on = move |is_shared: bool| {
        let name = format!("{}-{to}.txt", record.with_untracked(mark::file_name));
        spawn_local(async move {
            let content = text.get_untracked().as_str().into();
            let handed = if is_shared {
                file::share_or_save(&name, "text/plain", &content).await
            } else {
                file::save(&name, "text/plain", &content)
            };
            if let Err(fault) = handed {
                samples.tell_text(faults::file(&fault));
            }
        });
    };
    let body = if is_letter {
        view! {
            <textarea class="letter" id=format!("letter-{to}") rows="18" prop:value=text on:input=move |event| text.set(event_target_value(&event))></textarea>
            <p class="asides">
                <button class="aside" id=format!("copy-{to}") on:click=copy>{words::COPY}</button>
                <button class="aside" on:click=move |_| hand_on(true)>{words::SHARE_TEXT}</button>
                <button class="aside" id=format!("save-{to}") on:click=move |_| hand_on(false)>{words::SAVE_TEXT}</button>
            </p>
            <p class="small" role="status">{move || said.get()}</p>
        }
        .into_any()
    } else {
        view! { <p>{letter.body}</p> }.into_any()
    };
    view! {
        <details class="more">
            <summary><h2>{heading}</h2></summary>
            {body}
        </details>
    }
}
