//! The text of all help, fetched when somebody asks for it. It is one of the app's files: without a network it comes from the copy that is kept.

use js_sys::Promise;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use super::function;

const FILE: &str = "/help.txt";

/// The text; `None` where it cannot be had.
pub async fn text() -> Option<String> {
    let window: JsValue = web_sys::window()?.into();
    let asked: Promise = function(&window, "fetch")?.call1(&window, &FILE.into()).ok()?.dyn_into().ok()?;
    let answer = JsFuture::from(asked).await.ok()?;
    let read: Promise = function(&answer, "text")?.call0(&answer).ok()?.dyn_into().ok()?;
    JsFuture::from(read).await.ok()?.as_string()
}
