//! The device's clipboard.

use js_sys::{Promise, Reflect};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;

use super::function;

/// Puts a text on the clipboard; whether the browser let it.
pub async fn copy(text: &str) -> bool {
    let Some(copying) = begin(text) else { return false };
    JsFuture::from(copying).await.is_ok()
}

fn begin(text: &str) -> Option<Promise> {
    let navigator = web_sys::window()?.navigator();
    let clipboard = Reflect::get(&navigator, &"clipboard".into()).ok()?;
    function(&clipboard, "writeText")?.call1(&clipboard, &text.into()).ok()?.dyn_into().ok()
}
