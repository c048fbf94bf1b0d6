//! What only a real browser can show: the store, the settings, photos, files, other windows. Empty on a desk.
#![cfg(all(target_arch = "wasm32", feature = "app"))]

mod files;
mod page;
mod photos;
mod settings;
mod shapes;
mod store;

use js_sys::{Function, Object, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

wasm_bindgen_test::wasm_bindgen_test_configure!(run_in_browser);

/// Lets the browser do what it has to do for a while.
async fn wait(milliseconds: i32) -> Result<(), JsValue> {
    let mut failed = None;
    let timer = Promise::new(&mut |done, _| {
        let window = web_sys::window().ok_or(JsValue::NULL);
        let set = window.and_then(|w| w.set_timeout_with_callback_and_timeout_and_arguments_0(&done, milliseconds));
        failed = set.err();
    });
    failed.map_or(Ok(()), Err)?;
    JsFuture::from(timer).await.map(drop)
}

/// A stand-in for a property of a browser object: a getter, until it is dropped.
struct StandIn {
    of: Object,
    name: &'static str,
    before: JsValue,
}

impl StandIn {
    /// Has a property answer with what a function body in JavaScript returns.
    fn new(of: &Object, name: &'static str, getter: &str) -> Result<Self, JsValue> {
        let before = Object::get_own_property_descriptor(of, &name.into());
        let property = Object::new();
        Reflect::set(&property, &"configurable".into(), &true.into())?;
        Reflect::set(&property, &"get".into(), &Function::new_no_args(getter))?;
        Object::define_property(of, &name.into(), &property);
        Ok(Self { of: of.clone(), name, before })
    }
}

impl Drop for StandIn {
    fn drop(&mut self) {
        match self.before.dyn_ref::<Object>() {
            Some(before) => drop(Object::define_property(&self.of, &self.name.into(), before)),
            None => drop(Reflect::delete_property(&self.of, &self.name.into())),
        }
    }
}
