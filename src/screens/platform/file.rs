//! Files that come in and go out.

use std::ops::Range;
use std::time::Duration;

use js_sys::{Array, Object, Promise, Reflect, Uint8Array};
use leptos::prelude::set_timeout;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, Event, FilePropertyBag, HtmlAnchorElement, HtmlInputElement, Url};

use super::function;

/// The most that is read into memory at once, in bytes.
const AT_MOST: f64 = 64.0 * MEBIBYTE;
const MEBIBYTE: f64 = 1024.0 * 1024.0;
/// So many bytes of a large file are handed over to the browser at once.
const PIECE: usize = 4 * 1024 * 1024;
/// How long a browser may take to begin a download: the address of the data must live until then.
const DOWNLOAD_BEGINS_WITHIN: Duration = Duration::from_secs(30);

/// Why a file could not be taken in or handed on.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum Fault {
    /// It is larger than the app reads.
    #[error("file must be at most 64 MiB, got {mebibytes:.0} MiB")]
    TooLarge {
        /// Its size in mebibytes.
        mebibytes: f64,
    },
    /// The browser cannot read it any more.
    #[error("file cannot be read")]
    Unreadable,
    /// The browser let no file be made.
    #[error("file cannot be saved")]
    NotSaved,
}

/// What is put into a file. It stays with the browser, as it may be large.
#[derive(Debug, Clone)]
pub struct Content(Array);

impl From<&str> for Content {
    fn from(text: &str) -> Self {
        Self(Array::of1(&text.into()))
    }
}

impl From<Uint8Array> for Content {
    fn from(bytes: Uint8Array) -> Self {
        Self(Array::of1(&bytes))
    }
}

/// A file that somebody picked.
#[derive(Debug, Clone)]
pub struct Picked(web_sys::File);

impl Picked {
    /// Its content.
    pub(super) fn blob(&self) -> &Blob {
        &self.0
    }

    /// How many bytes it has.
    pub fn size(&self) -> u64 {
        whole(self.0.size())
    }

    /// Some of its bytes.
    ///
    /// # Errors
    /// [`Fault::TooLarge`] for more than 64 MiB at once, [`Fault::Unreadable`] where the browser cannot read it.
    pub async fn bytes(&self, span: Range<u64>) -> Result<Vec<u8>, Fault> {
        let (start, end) = (place(span.start), place(span.end));
        if end - start > AT_MOST {
            return Err(Fault::TooLarge { mebibytes: (end - start) / MEBIBYTE });
        }
        let slice = self.0.slice_with_f64_and_f64(start, end).map_err(|_refused| Fault::Unreadable)?;
        let buffer = JsFuture::from(slice.array_buffer()).await.map_err(|_refused| Fault::Unreadable)?;
        Ok(Uint8Array::new(&buffer).to_vec())
    }
}

/// A size as the browser tells it, which is a whole number below 2^53.
#[expect(
    clippy::as_conversions,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the number is whole and not negative"
)]
fn whole(size: f64) -> u64 {
    size as u64
}

/// A place in a file as the browser wants it told.
#[expect(clippy::as_conversions, clippy::cast_precision_loss, reason = "no file has 2^53 bytes")]
fn place(at: u64) -> f64 {
    at as f64
}

/// A large file in the making. What was added goes over to the browser, which keeps it where it has room.
#[derive(Debug, Default)]
pub struct Pieces {
    /// What the browser has taken over.
    taken: Array,
    waiting: Vec<u8>,
}

impl Pieces {
    /// Adds bytes at the end.
    pub fn add(&mut self, bytes: &[u8]) {
        self.waiting.extend_from_slice(bytes);
        if self.waiting.len() > PIECE {
            self.hand_over();
        }
    }

    fn hand_over(&mut self) {
        let bytes = Uint8Array::from(self.waiting.as_slice());
        self.waiting.clear();
        // Where the browser makes no blob of it, the bytes themselves do.
        let piece = Blob::new_with_u8_array_sequence(&Array::of1(&bytes)).map_or(bytes.into(), JsValue::from);
        self.taken.push(&piece);
    }

    /// The whole file.
    pub fn finish(mut self) -> Content {
        self.hand_over();
        Content(self.taken)
    }
}

impl From<web_sys::File> for Picked {
    fn from(file: web_sys::File) -> Self {
        Self(file)
    }
}

/// The files picked with the input that this `change` event comes from. Empties the input, so that the same file can be picked again.
pub fn picked(event: &Event) -> Vec<Picked> {
    let input = event.target().and_then(|target| target.dyn_into::<HtmlInputElement>().ok());
    let Some(input) = input else { return Vec::new() };
    let files = input.files().map(|files| (0..files.length()).filter_map(|n| files.get(n)).map(Picked).collect());
    input.set_value("");
    files.unwrap_or_default()
}

/// All bytes of a file.
///
/// # Errors
/// [`Fault::TooLarge`] over 64 MiB, [`Fault::Unreadable`] where the browser cannot read it.
pub async fn bytes(picked: &Picked) -> Result<Vec<u8>, Fault> {
    picked.bytes(0..picked.size()).await
}

/// Saves a file where the browser keeps its downloads.
///
/// # Errors
/// [`Fault::NotSaved`] where the browser lets no file be made.
pub fn save(name: &str, mime: &str, content: &Content) -> Result<(), Fault> {
    begin_download(name, mime, content).ok_or(Fault::NotSaved)
}

fn begin_download(name: &str, mime: &str, content: &Content) -> Option<()> {
    let kind = BlobPropertyBag::new();
    kind.set_type(mime);
    let blob = Blob::new_with_str_sequence_and_options(&content.0, &kind).ok()?;
    let document = web_sys::window()?.document()?;
    let body = document.body()?;
    let link: HtmlAnchorElement = document.create_element("a").ok()?.unchecked_into();
    let address = Url::create_object_url_with_blob(&blob).ok()?;
    link.set_href(&address);
    link.set_download(name);
    // Some browsers follow only links that are on the page.
    body.append_child(&link).ok()?;
    link.click();
    link.remove();
    set_timeout(
        move || {
            // An address that is gone already needs no taking back.
            drop(Url::revoke_object_url(&address));
        },
        DOWNLOAD_BEGINS_WITHIN,
    );
    Some(())
}

/// Offers a file to the device's other apps; saves it where the browser cannot. Somebody who closes the offer wants no file.
///
/// # Errors
/// [`Fault::NotSaved`] where it could be neither shared nor saved.
pub async fn share_or_save(name: &str, mime: &str, content: &Content) -> Result<(), Fault> {
    match share(name, mime, content).await {
        Shared::Yes | Shared::Declined => Ok(()),
        Shared::No => save(name, mime, content),
    }
}

/// What became of an offer to share.
enum Shared {
    Yes,
    /// By the person asked.
    Declined,
    No,
}

async fn share(name: &str, mime: &str, content: &Content) -> Shared {
    let Some(offer) = offer(name, mime, content) else { return Shared::No };
    match JsFuture::from(offer).await {
        Ok(_) => Shared::Yes,
        Err(error) => {
            let declined = error.dyn_ref::<web_sys::DomException>().is_some_and(|error| error.name() == "AbortError");
            if declined { Shared::Declined } else { Shared::No }
        }
    }
}

/// Offers a file; `None` where the browser can share no such file.
fn offer(name: &str, mime: &str, content: &Content) -> Option<Promise> {
    let navigator = web_sys::window()?.navigator();
    let (can_share, share) = (function(&navigator, "canShare")?, function(&navigator, "share")?);
    let kind = FilePropertyBag::new();
    kind.set_type(mime);
    let file = web_sys::File::new_with_str_sequence_and_options(&content.0, name, &kind).ok()?;
    let data = Object::new();
    Reflect::set(&data, &"files".into(), &Array::of1(&file)).ok()?;
    can_share.call1(&navigator, &data).ok()?.is_truthy().then_some(())?;
    share.call1(&navigator, &data).ok()?.dyn_into().ok()
}
