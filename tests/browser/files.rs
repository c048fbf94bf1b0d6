//! Files are picked, read, saved and shared.

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::{Array, Uint8Array};
use plugwary::screens::platform::file::{self, Fault, Picked};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_test::wasm_bindgen_test;
use web_sys::{Blob, DataTransfer, Document, Event, File, HtmlAnchorElement, HtmlInputElement, Response};

use crate::StandIn;

fn document() -> Result<Document, JsValue> {
    web_sys::window().and_then(|window| window.document()).ok_or(JsValue::NULL)
}

fn named(name: &str, text: &str) -> Result<File, JsValue> {
    File::new_with_str_sequence(&Array::of1(&text.into()), name)
}

/// Takes note of the downloads that begin, and lets none of them through.
struct Downloads {
    begun: Rc<RefCell<Vec<(String, String)>>>,
    listener: Closure<dyn FnMut(Event)>,
}

impl Downloads {
    fn watch() -> Result<Self, JsValue> {
        let begun = Rc::new(RefCell::new(Vec::new()));
        let listener = {
            let begun = begun.clone();
            Closure::<dyn FnMut(Event)>::new(move |event: Event| {
                if let Some(link) = event.target().and_then(|target| target.dyn_into::<HtmlAnchorElement>().ok()) {
                    event.prevent_default();
                    begun.borrow_mut().push((link.download(), link.href()));
                }
            })
        };
        document()?.add_event_listener_with_callback("click", listener.as_ref().unchecked_ref())?;
        Ok(Self { begun, listener })
    }

    /// The names and texts of what began.
    async fn texts(&self) -> Result<Vec<(String, String)>, JsValue> {
        let window = web_sys::window().ok_or(JsValue::NULL)?;
        let mut texts = Vec::new();
        let begun = self.begun.borrow().clone();
        for (name, address) in begun {
            let response: Response = JsFuture::from(window.fetch_with_str(&address)).await?.dyn_into()?;
            let text = JsFuture::from(response.text()?).await?;
            texts.push((name, text.as_string().unwrap_or_default()));
        }
        Ok(texts)
    }
}

impl Drop for Downloads {
    fn drop(&mut self) {
        if let Ok(document) = document() {
            drop(document.remove_event_listener_with_callback("click", self.listener.as_ref().unchecked_ref()));
        }
    }
}

#[wasm_bindgen_test]
async fn picked_files_are_read_and_the_input_is_empty_again() -> Result<(), JsValue> {
    let input: HtmlInputElement = document()?.create_element("input")?.dyn_into()?;
    input.set_type("file");
    input.set_multiple(true);
    let transfer = DataTransfer::new()?;
    transfer.items().add_with_file(&named("one.html", "first – ω")?)?;
    transfer.items().add_with_file(&named("two.html", "second")?)?;
    input.set_files(transfer.files().as_ref());
    let got = Rc::new(RefCell::new(Vec::new()));
    let listener = {
        let got = got.clone();
        Closure::<dyn FnMut(Event)>::new(move |event: Event| got.replace(file::picked(&event)).clear())
    };
    input.add_event_listener_with_callback("change", listener.as_ref().unchecked_ref())?;
    input.dispatch_event(&Event::new("change")?)?;
    assert_eq!(input.files().map(|files| files.length()), Some(0));
    let mut texts = Vec::new();
    for picked in got.take() {
        let bytes = file::bytes(&picked).await;
        texts.push(bytes.map(|bytes| String::from_utf8_lossy(&bytes).into_owned()));
    }
    assert_eq!(texts, [Ok("first – ω".to_owned()), Ok("second".to_owned())]);
    Ok(())
}

#[wasm_bindgen_test]
fn event_of_no_input_picks_nothing() -> Result<(), JsValue> {
    assert!(file::picked(&Event::new("change")?).is_empty());
    Ok(())
}

#[wasm_bindgen_test]
async fn file_over_64_mebibytes_is_not_read() -> Result<(), JsValue> {
    let mebibyte = Blob::new_with_u8_array_sequence(&Array::of1(&Uint8Array::new_with_length(1024 * 1024)))?;
    let parts: Array = std::iter::repeat_n(mebibyte, 64).collect();
    let just_fits: Picked = File::new_with_blob_sequence(&parts, "fits")?.into();
    assert_eq!(file::bytes(&just_fits).await.map(|bytes| bytes.len()), Ok(64 * 1024 * 1024));
    let one_more = Blob::new_with_str_sequence(&Array::of1(&"x".into()))?;
    parts.push(&one_more);
    let too_large: Picked = File::new_with_blob_sequence(&parts, "too-large")?.into();
    assert!(matches!(file::bytes(&too_large).await, Err(Fault::TooLarge { .. })));
    Ok(())
}

#[wasm_bindgen_test]
async fn saving_begins_a_download_with_name_and_text() -> Result<(), JsValue> {
    let downloads = Downloads::watch()?;
    assert_eq!(file::save("one.html", "text/html", &"<p>ω".into()), Ok(()));
    assert_eq!(downloads.texts().await?, [("one.html".to_owned(), "<p>ω".to_owned())]);
    assert_eq!(document()?.query_selector("a[download]")?, None);
    Ok(())
}

#[wasm_bindgen_test]
async fn bytes_are_saved_as_they_are() -> Result<(), JsValue> {
    let downloads = Downloads::watch()?;
    let bytes: &[u8] = "<p>ω".as_bytes();
    assert_eq!(file::save("two.html", "text/html", &Uint8Array::from(bytes).into()), Ok(()));
    assert_eq!(downloads.texts().await?, [("two.html".to_owned(), "<p>ω".to_owned())]);
    Ok(())
}

/// Shares with a browser whose `share` does what a function body in JavaScript does, and returns the names that were saved instead.
async fn saved_instead(can_share: &str, share: &str) -> Result<Vec<String>, JsValue> {
    let navigator = web_sys::window().ok_or(JsValue::NULL)?.navigator();
    let _can_share = StandIn::new(&navigator, "canShare", can_share)?;
    let _share = StandIn::new(&navigator, "share", share)?;
    let downloads = Downloads::watch()?;
    assert_eq!(file::share_or_save("one.html", "text/html", &"<p>".into()).await, Ok(()));
    Ok(downloads.texts().await?.into_iter().map(|(name, _)| name).collect())
}

const CAN: &str = "return (data) => data.files[0].name === 'one.html' && data.files[0].type === 'text/html'";
const NONE: [String; 0] = [];

#[wasm_bindgen_test]
async fn file_is_shared_where_the_browser_can() -> Result<(), JsValue> {
    let share = "return async (data) => { window.shared = await data.files[0].text() }";
    assert_eq!(saved_instead(CAN, share).await?, NONE);
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    assert_eq!(js_sys::Reflect::get(&window, &"shared".into())?.as_string().as_deref(), Some("<p>"));
    Ok(())
}

#[wasm_bindgen_test]
async fn sharing_that_is_closed_by_the_person_saves_nothing() -> Result<(), JsValue> {
    let share = "return async () => { throw new DOMException('closed', 'AbortError') }";
    assert_eq!(saved_instead(CAN, share).await?, NONE);
    Ok(())
}

#[wasm_bindgen_test]
async fn file_is_saved_where_sharing_is_missing_or_fails() -> Result<(), JsValue> {
    let fails = "return async () => { throw new DOMException('no', 'NotAllowedError') }";
    assert_eq!(saved_instead(CAN, fails).await?, ["one.html"]);
    let throws = "return () => { throw new TypeError('no') }";
    assert_eq!(saved_instead(CAN, throws).await?, ["one.html"]);
    assert_eq!(saved_instead("return () => false", fails).await?, ["one.html"]);
    assert_eq!(saved_instead("return undefined", "return undefined").await?, ["one.html"]);
    Ok(())
}
