//! The address of the page: read, changed without loading anything, and followed when somebody goes back.

use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;

/// The path of the page, such as `/new`.
pub fn path() -> String {
    web_sys::window().and_then(|window| window.location().pathname().ok()).unwrap_or_default()
}

/// Puts a path into the address line, as a new step of the browser's history.
pub fn go(path: &str) {
    let history = web_sys::window().and_then(|window| window.history().ok());
    if let Some(history) = history {
        // A browser that refuses leaves the old address standing; the page itself has changed all the same.
        let _ = history.push_state_with_url(&JsValue::NULL, "", Some(path));
    }
}

/// What stands behind the `#` of the address, with it; empty where nothing does.
pub fn hash() -> String {
    web_sys::window().and_then(|window| window.location().hash().ok()).unwrap_or_default()
}

/// Leaves for another page of the app, which is loaded anew.
pub fn leave_for(path: &str) {
    if let Some(window) = web_sys::window() {
        // A browser that refuses stays where it is: nothing is lost.
        let _ = window.location().assign(path);
    }
}

/// Calls back when somebody goes back or forth in the browser's history.
pub fn on_back(called: impl Fn() + 'static) {
    let called = Closure::<dyn Fn()>::new(called);
    if let Some(window) = web_sys::window() {
        // Without the listener the way back leads out of the app; nothing stored depends on it.
        let _ = window.add_event_listener_with_callback("popstate", called.as_ref().unchecked_ref());
    }
    called.forget();
}
