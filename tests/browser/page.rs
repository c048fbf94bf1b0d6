//! The page around the program: editions, other windows, going out of sight, the crash page.

use std::cell::Cell;
use std::rc::Rc;

use js_sys::Reflect;
use plugwary::screens::platform::{crash, lifecycle, persist, shell, tabs};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_test::wasm_bindgen_test;
use web_sys::{BroadcastChannel, Event, HtmlTextAreaElement, Window};

use crate::{StandIn, wait};

fn window() -> Result<Window, JsValue> {
    web_sys::window().ok_or(JsValue::NULL)
}

/// A counter, and a callback that counts.
fn counter() -> (Rc<Cell<u32>>, impl Fn() + Clone + 'static) {
    let count = Rc::new(Cell::new(0));
    let counted = count.clone();
    (count, move || counted.set(counted.get() + 1))
}

#[wasm_bindgen_test]
fn editions_are_heard_of_early_and_late() -> Result<(), JsValue> {
    let window = window()?;
    assert!(!shell::is_update_waiting());
    let (ready, on_ready) = counter();
    let (waiting, on_waiting) = counter();
    shell::on_offline_ready(on_ready);
    shell::on_update_waiting(on_waiting);
    assert_eq!((ready.get(), waiting.get()), (0, 0));
    window.dispatch_event(&Event::new("plugwary-offline-ready")?)?;
    window.dispatch_event(&Event::new("plugwary-update-waiting")?)?;
    assert_eq!((ready.get(), waiting.get()), (1, 1));

    let state = "return { offlineReady: true, updateWaiting: true }";
    let _shell = StandIn::new(&window, "plugwaryShell", state)?;
    assert!(shell::is_update_waiting());
    let (late, on_late) = counter();
    shell::on_offline_ready(on_late);
    assert_eq!(late.get(), 1);
    Ok(())
}

#[wasm_bindgen_test]
fn update_is_taken_where_there_is_one() -> Result<(), JsValue> {
    let window = window()?;
    shell::apply_update();
    let _apply = StandIn::new(&window, "plugwaryApplyUpdate", "return () => { window.taken = true }")?;
    shell::apply_update();
    assert_eq!(Reflect::get(&window, &"taken".into())?, true);
    Ok(())
}

#[wasm_bindgen_test]
async fn windows_tell_each_other_and_not_themselves() -> Result<(), JsValue> {
    let other = BroadcastChannel::new("plugwary")?;
    let (told, on_told) = counter();
    let listener = Closure::<dyn Fn()>::new(on_told);
    other.set_onmessage(Some(listener.as_ref().unchecked_ref()));
    let (heard, on_heard) = counter();
    tabs::on_change(on_heard);
    tabs::tell_change();
    wait(100).await?;
    assert_eq!((told.get(), heard.get()), (1, 0));
    other.post_message(&JsValue::from_str("changed"))?;
    wait(100).await?;
    assert_eq!((told.get(), heard.get()), (1, 1));
    other.close();
    Ok(())
}

#[wasm_bindgen_test]
fn asking_for_lasting_storage_needs_none() -> Result<(), JsValue> {
    let window = window()?;
    let navigator = window.navigator();
    let asked = "return { persist: () => { window.asked = true; return new Promise(() => {}) } }";
    let storage = StandIn::new(&navigator, "storage", asked)?;
    persist::ask();
    assert_eq!(Reflect::get(&window, &"asked".into())?, true);
    drop(storage);
    let _none = StandIn::new(&navigator, "storage", "return undefined")?;
    persist::ask();
    Ok(())
}

#[wasm_bindgen_test]
async fn crash_page_says_what_happened_and_hands_the_data_out() -> Result<(), JsValue> {
    let window = window()?;
    let document = window.document().ok_or(JsValue::NULL)?;
    let clipboard = "return { writeText(text) { window.copied = text; return Promise.resolve() } }";
    let _clipboard = StandIn::new(&window.navigator(), "clipboard", clipboard)?;
    lifecycle::remember_for_crash("{\"an\":\"examination\"}");
    crash::show("panicked at <where>");
    let page = document.get_element_by_id("crash").ok_or(JsValue::NULL)?;
    let text = page.text_content().unwrap_or_default();
    assert!(text.contains("panicked at <where>"), "{text}");
    assert!(text.contains(env!("CARGO_PKG_VERSION")), "{text}");
    let data: HtmlTextAreaElement = page.query_selector("textarea")?.ok_or(JsValue::NULL)?.dyn_into()?;
    assert_eq!(data.value(), "{\"an\":\"examination\"}");
    let buttons = page.query_selector_all("button")?;
    assert_eq!(buttons.length(), 2);
    let copy: web_sys::HtmlElement = buttons.get(1).ok_or(JsValue::NULL)?.dyn_into()?;
    copy.click();
    assert_eq!(Reflect::get(&window, &"copied".into())?.as_string().as_deref(), Some("{\"an\":\"examination\"}"));
    page.remove();
    Ok(())
}
