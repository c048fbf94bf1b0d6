//! What the app itself has to say: faults, ready without a network, a newer edition.

use core::time::Duration;

use leptos::prelude::*;

use crate::screens::platform::shell;
use crate::screens::state::{Notice, Samples};
use crate::store::settings;
use crate::words::screens as words;

/// How long something is said that nobody has to act on.
const PASSING: Duration = Duration::from_secs(8);

/// All notices, at the top of every page. What nobody has to act on waits until no sample is looked at, and moves nothing: a thumb may
/// be on its way.
#[component]
pub fn Notices() -> impl IntoView {
    let samples = expect_context::<Samples>();
    let newer = RwSignal::new(shell::is_update_waiting());
    shell::on_update_waiting(move || newer.set(true));
    let in_examination = move || samples.is_examining();
    let ready = RwSignal::new(false);
    let ready_is_told = RwSignal::new(false);
    shell::on_offline_ready(move || ready.set(true));
    Effect::new(move |_| {
        if ready.get() && !in_examination() && settings::say_offline_ready_once() {
            ready_is_told.set(true);
            set_timeout(move || ready_is_told.set(false), PASSING);
        }
    });
    view! {
        <div class="notices" role="status">
            <Show when=move || ready_is_told.get() && !in_examination()>
                <p class="notice passing">
                    {words::OFFLINE_READY}
                    <button class="aside" on:click=move |_| ready_is_told.set(false)>{words::CLOSE}</button>
                </p>
            </Show>
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
