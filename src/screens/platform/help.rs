//! Texts that are fetched when they are wanted. They are among the app's files: without a network they come from the copy that is kept.

use js_sys::Promise;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use super::function;

/// What the app decides and what it does not, with the cautions: a paragraph a line.
pub const ABOUT: &str = "/about.txt";
/// How to look, and why.
pub const HELP: &str = "/help.txt";
/// Why the breaks of checks matter, and what would settle them.
pub const CHECKS: &str = "/checks.txt";

/// The text of a file; `None` where it cannot be had.
pub async fn text(file: &str) -> Option<String> {
    let window: JsValue = web_sys::window()?.into();
    let asked: Promise = function(&window, "fetch")?.call1(&window, &file.into()).ok()?.dyn_into().ok()?;
    let answer = JsFuture::from(asked).await.ok()?;
    let read: Promise = function(&answer, "text")?.call0(&answer).ok()?.dyn_into().ok()?;
    JsFuture::from(read).await.ok()?.as_string()
}
