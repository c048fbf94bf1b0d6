//! The app's other windows on this device: each tells the others when it has changed what is kept. A browser without the means is no fault.

use std::cell::OnceCell;

use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::BroadcastChannel;

const NAME: &str = "plugwary";

thread_local! {
    // One for both directions: a channel does not hear itself, but would hear a second one of the same window.
    static CHANNEL: OnceCell<Option<BroadcastChannel>> = const { OnceCell::new() };
}

fn with_channel(act: impl FnOnce(&BroadcastChannel)) {
    CHANNEL.with(|channel| {
        if let Some(channel) = channel.get_or_init(|| BroadcastChannel::new(NAME).ok()) {
            act(channel);
        }
    });
}

/// Calls back when another window has changed what is kept. Only the last call counts.
pub fn on_change(call: impl Fn() + 'static) {
    with_channel(|channel| {
        let listener = Closure::<dyn Fn()>::new(call).into_js_value();
        channel.set_onmessage(Some(listener.unchecked_ref()));
    });
}

/// Tells the other windows that what is kept has changed.
pub fn tell_change() {
    // A window that does not hear of it shows the older state until it is loaded anew.
    with_channel(|channel| drop(channel.post_message(&"changed".into())));
}
