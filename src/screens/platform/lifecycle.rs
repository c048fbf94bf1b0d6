//! The page's life: hidden, and what to keep at hand for the worst case.

use std::cell::RefCell;

use leptos::prelude::window_event_listener_untyped;
use web_sys::VisibilityState;

thread_local! {
    static LAST_SAVED: RefCell<String> = const { RefCell::new(String::new()) };
}

/// Calls back when the page goes out of sight, which may be the last thing it hears.
pub fn on_hide(call: impl Fn() + Clone + 'static) {
    let hidden = call.clone();
    window_event_listener_untyped("pagehide", move |_| call());
    // The event is the document's, and comes up to the window.
    window_event_listener_untyped("visibilitychange", move |_| {
        let state = web_sys::window().and_then(|window| window.document()).map(|document| document.visibility_state());
        if state == Some(VisibilityState::Hidden) {
            hidden();
        }
    });
}

/// Keeps a record's JSON at hand, so that the crash page can offer it.
pub fn remember_for_crash(json: &str) {
    LAST_SAVED.with_borrow_mut(|last| json.clone_into(last));
}

/// The JSON kept at hand, empty where there is none. It stops nothing, even in the middle of a crash.
pub(super) fn remembered() -> String {
    LAST_SAVED.with(|last| last.try_borrow().map(|last| last.clone()).unwrap_or_default())
}
