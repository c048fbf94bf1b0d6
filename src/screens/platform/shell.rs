//! What the page around the program tells: ready without a network, a newer edition waiting. `boot.js` is the other end.

use js_sys::Reflect;
use leptos::prelude::window_event_listener_untyped;

use super::function;

/// Whether a newer edition waits to be taken.
pub fn is_update_waiting() -> bool {
    says("updateWaiting")
}

/// Calls back each time a newer edition begins to wait.
pub fn on_update_waiting(call: impl Fn() + 'static) {
    window_event_listener_untyped("plugwary-update-waiting", move |_| call());
}

/// Calls back when the app is ready to run without a network: at once where it is so already.
pub fn on_offline_ready(call: impl Fn() + 'static) {
    if says("offlineReady") {
        call();
    } else {
        window_event_listener_untyped("plugwary-offline-ready", move |_| call());
    }
}

/// Changes over to the newer edition, which loads the page anew.
pub fn apply_update() {
    let Some(window) = web_sys::window() else { return };
    if let Some(apply) = function(&window, "plugwaryApplyUpdate") {
        // What it throws stands in the console; the edition that runs goes on.
        drop(apply.call0(&window));
    }
}

fn says(what: &str) -> bool {
    let said = web_sys::window()
        .and_then(|window| Reflect::get(&window, &"plugwaryShell".into()).ok())
        .and_then(|shell| Reflect::get(&shell, &what.into()).ok());
    said.is_some_and(|said| said.is_truthy())
}
