//! What is kept at hand for the worst case.

use std::cell::RefCell;

thread_local! {
    static LAST_SAVED: RefCell<String> = const { RefCell::new(String::new()) };
}

/// Keeps a record's JSON at hand, so that the crash page can offer it.
pub fn remember_for_crash(json: &str) {
    LAST_SAVED.with_borrow_mut(|last| json.clone_into(last));
}

/// The JSON kept at hand, empty where there is none. It stops nothing, even in the middle of a crash.
pub(super) fn remembered() -> String {
    LAST_SAVED.with(|last| last.try_borrow().map(|last| last.clone()).unwrap_or_default())
}
