//! Everything the screens ask of the browser, and nothing of the app: no module here knows a record or a sample.

pub mod address;
pub mod clipboard;
pub mod clock;
pub mod crash;
pub mod file;
pub mod help;
pub mod ids;
pub mod lifecycle;
pub mod persist;
pub mod photo;
pub mod press;
pub mod scroll;
pub mod shell;
pub mod tabs;

use js_sys::{Function, Reflect};
use wasm_bindgen::{JsCast, JsValue};

/// A function by name, or `None` where this browser has none.
fn function(of: &JsValue, name: &str) -> Option<Function> {
    Reflect::get(of, &name.into()).ok()?.dyn_into().ok()
}
