//! The page that is shown when the app has a bug: what happened, and a way to get one's data out.
//!
//! No code of the app runs after the crash: the buttons call the browser's own functions.

use js_sys::Reflect;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Document, Element, HtmlElement, HtmlTextAreaElement};

use super::{function, lifecycle};

const HAPPENED: &str = "The app has made a mistake and had to stop. What you saved is still on this device.";
const COPY: &str = "copy my data";
const RELOAD: &str = "reload";
const DATA: &str = "The examination saved last";

/// Lays `style` on the page even when no style sheet was loaded.
const STYLE: [(&str, &str); 7] = [
    ("position", "fixed"),
    ("inset", "0"),
    ("z-index", "2147483647"),
    ("overflow", "auto"),
    ("padding", "1rem"),
    ("background", "Canvas"),
    ("color", "CanvasText"),
];

/// From now on, a panic is written to the console and shown to the person.
pub fn install() {
    std::panic::set_hook(Box::new(|panic| {
        console_error_panic_hook::hook(panic);
        show(&panic.to_string());
    }));
}

/// Puts the crash page over everything. `what` is for whoever mends it.
pub fn show(what: &str) {
    // Where even this fails there is nobody left to tell.
    drop(put_page(what));
}

fn put_page(what: &str) -> Result<(), JsValue> {
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    let document = window.document().ok_or(JsValue::NULL)?;
    let body = document.body().ok_or(JsValue::NULL)?;
    let below = body.children();
    for n in 0..below.length() {
        if let Some(element) = below.item(n) {
            element.set_attribute("inert", "")?;
        }
    }
    let page: HtmlElement = document.create_element("main")?.unchecked_into();
    page.set_id("crash");
    page.set_attribute("role", "alert")?;
    for (property, value) in STYLE {
        page.style().set_property(property, value)?;
    }
    add(&document, &page, "h1", "Plugwary")?;
    add(&document, &page, "p", HAPPENED)?;
    add(&document, &page, "p", &format!("{} {}", env!("CARGO_PKG_VERSION"), build(&document)))?;
    let reload = add(&document, &page, "button", RELOAD)?;
    on_click(&reload, function(&window.location(), "reload").map(|reload| reload.bind0(&window.location())))?;
    let json = lifecycle::remembered();
    if !json.is_empty() {
        add_data(&document, &page, &json)?;
    }
    add(&document, &page, "pre", what)?;
    body.append_child(&page)?;
    Ok(())
}

/// The data as text to select, and a button that copies it.
fn add_data(document: &Document, page: &Element, json: &str) -> Result<(), JsValue> {
    let copy = add(document, page, "button", COPY)?;
    let text: HtmlTextAreaElement = add(document, page, "textarea", json)?.unchecked_into();
    text.set_attribute("readonly", "")?;
    text.set_attribute("aria-label", DATA)?;
    // Selecting shows what is copied, and leaves it to be copied by hand where the browser lends no clipboard.
    on_click(&copy, function(&text, "select").map(|select| select.bind0(&text)))?;
    let clipboard = Reflect::get(&web_sys::window().ok_or(JsValue::NULL)?.navigator(), &"clipboard".into())?;
    on_click(
        &copy,
        function(&clipboard, "writeText").map(|write| write.bind1(&clipboard, &json.into()).unchecked_into()),
    )
}

fn add(document: &Document, to: &Element, tag: &str, text: &str) -> Result<Element, JsValue> {
    let element = document.create_element(tag)?;
    element.set_text_content(Some(text));
    to.append_child(&element)?;
    Ok(element)
}

fn on_click(button: &Element, act: Option<js_sys::Function>) -> Result<(), JsValue> {
    act.map_or(Ok(()), |act| button.add_event_listener_with_callback("click", &act))
}

/// The build as the page names it.
fn build(document: &Document) -> String {
    let named = document.query_selector("meta[name='plugwary-build']").ok().flatten();
    named.and_then(|meta| meta.get_attribute("content")).unwrap_or_default()
}
