//! Keeping what is stored when the device runs short of room.

use js_sys::{Promise, Reflect};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::{JsFuture, spawn_local};

use super::function;

/// Asks the browser not to clear the app's storage by itself. Some browsers ask the person first and may never answer: nothing waits for it.
pub fn ask() {
    if let Some(asked) = persist() {
        // Listened to only so that a refusal does not look like a mistake in the console.
        spawn_local(async { drop(JsFuture::from(asked).await) });
    }
}

fn persist() -> Option<Promise> {
    let navigator = web_sys::window()?.navigator();
    let storage = Reflect::get(&navigator, &"storage".into()).ok()?;
    function(&storage, "persist")?.call0(&storage).ok()?.dyn_into().ok()
}
