//! What is kept at hand for the worst case, and the question before somebody leaves.

use std::cell::RefCell;

use leptos::prelude::window_event_listener_untyped;

thread_local! {
    static LAST_SAVED: RefCell<String> = const { RefCell::new(String::new()) };
}

/// Keeps a record's JSON at hand, so that the crash page can offer it.
pub fn remember_for_crash(json: &str) {
    LAST_SAVED.with_borrow_mut(|last| json.clone_into(last));
}

/// From now on, has the browser ask before somebody leaves the page while something is unsaved.
pub fn ask_before_leaving(is_unsaved: impl Fn() -> bool + 'static) {
    window_event_listener_untyped("beforeunload", move |event| {
        if is_unsaved() {
            event.prevent_default();
        }
    });
}

/// The JSON kept at hand, empty where there is none. It stops nothing, even in the middle of a crash.
pub(super) fn remembered() -> String {
    LAST_SAVED.with(|last| last.try_borrow().map(|last| last.clone()).unwrap_or_default())
}
