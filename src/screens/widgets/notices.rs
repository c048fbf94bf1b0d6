//! What the app itself has to say: faults, ready without a network, a newer edition.

use leptos::prelude::*;

use crate::screens::platform::shell;
use crate::screens::state::{Notice, Samples};
use crate::words::screens as words;

/// All notices, at the top of every page.
#[component]
pub fn Notices() -> impl IntoView {
    let samples = expect_context::<Samples>();
    let newer = RwSignal::new(shell::is_update_waiting());
    shell::on_update_waiting(move || newer.set(true));
    shell::on_offline_ready(move || samples.tell_once_offline_ready());
    let in_examination = move || samples.is_examining();
    view! {
        <div class="notices" role="status">
            {move || {
                samples
                    .notices()
                    .into_iter()
                    .map(|(n, notice)| view! { <NoticeLine n notice /> })
                    .collect_view()
            }}
            <Show when=move || newer.get() && !in_examination()>
                <p class="notice">
                    {words::NEWER_EDITION}
                    <button class="aside" on:click=move |_| shell::apply_update()>{words::TAKE_NEWER}</button>
                    <button class="aside" on:click=move |_| newer.set(false)>{words::NOT_NOW}</button>
                </p>
            </Show>
        </div>
    }
}

/// One notice.
#[component]
fn NoticeLine(
    /// Its number.
    n: usize,
    /// What it says.
    notice: Notice,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let undo = notice.undo_delete.map(|record| {
        view! {
            <button class="aside" id="undo-delete" on:click=move |_| samples.restore(n, &record)>{words::UNDO}</button>
        }
    });
    view! {
        <p class="notice" role=if notice.is_fault { "alert" } else { "status" }>
            {notice.text}
            {undo}
            <button class="aside" on:click=move |_| samples.close_notice(n)>{words::CLOSE}</button>
        </p>
    }
}
