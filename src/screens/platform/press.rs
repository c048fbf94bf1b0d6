//! The press, which makes the files to show: a program of its own, run apart from the page. `press-worker.js` is the other end.

use js_sys::{Array, Promise, Reflect, Uint8Array};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{MessageEvent, Worker};

use super::file::Content;

const WORKER: &str = "/press-worker.js";
/// What `press-worker.js` answers when it could not load the press.
const NOT_LOADED: &str = "not-loaded";

/// What the press makes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// The page that stands on its own.
    Page,
    /// The same for printing.
    Pdf,
    /// The label for the sample, a PDF too.
    Label,
}

impl Form {
    /// The press's own name for it.
    const fn order(self) -> &'static str {
        match self {
            Self::Page => "page",
            Self::Pdf => "pdf",
            Self::Label => "label",
        }
    }

    /// The media type of what is made.
    pub const fn media_type(self) -> &'static str {
        match self {
            Self::Page => "text/html",
            Self::Pdf | Self::Label => "application/pdf",
        }
    }

    /// How the name of such a file ends.
    pub const fn ending(self) -> &'static str {
        match self {
            Self::Page => ".html",
            Self::Pdf => ".pdf",
            Self::Label => "-label.pdf",
        }
    }
}

/// Why no file was made. Asking again starts everything anew.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Fault {
    /// It is not on this device yet and there is no network, or the browser has no room for it.
    #[error("the part of the app that makes files could not be loaded")]
    NotLoaded,
    /// It made a mistake, or ran out of memory.
    #[error("the part of the app that makes files had to stop")]
    Stopped,
}

/// A file, made of a record as JSON and of its photos, each with the name it goes by in the record.
///
/// Every file has a worker to itself, which takes its memory with it.
///
/// # Errors
/// See [`Fault`].
pub async fn make(form: Form, record: &str, photos: &[(String, Vec<u8>)]) -> Result<Content, Fault> {
    let (pairs, buffers) = (Array::new(), Array::new());
    for (sha256, bytes) in photos {
        let bytes = Uint8Array::from(bytes.as_slice());
        buffers.push(&bytes.buffer());
        pairs.push(&Array::of2(&sha256.into(), &bytes));
    }
    order(&Array::of3(&form.order().into(), &record.into(), &pairs), &buffers).await.map(Content::from)
}

/// What a look at a file found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Found {
    /// Whether it is as it was sealed, as a code: `untouched`, `altered`, `seal-missing`, `not-sealed`, `newer-seal`.
    pub state: String,
    /// All that there is to say, in sentences.
    pub said: Vec<String>,
}

/// Has a file looked at: whether it is as it was sealed, and what judging it again changes.
///
/// # Errors
/// See [`Fault`].
pub async fn check(file: &[u8]) -> Result<Found, Fault> {
    let bytes = Uint8Array::from(file);
    let found = order(&Array::of2(&"check".into(), &bytes), &Array::of1(&bytes.buffer())).await?;
    String::from_utf8(found.to_vec()).ok().and_then(|line| found_of(&line)).ok_or(Fault::Stopped)
}

fn found_of(line: &str) -> Option<Found> {
    let line = js_sys::JSON::parse(line).ok()?;
    let field = |name: &str| Reflect::get(&line, &name.into()).ok();
    let said = field("said")?.dyn_into::<Array>().ok()?;
    Some(Found { state: field("state")?.as_string()?, said: said.iter().filter_map(|said| said.as_string()).collect() })
}

/// What people compare of this device's key.
///
/// # Errors
/// See [`Fault`]; [`Fault::Stopped`] also where the browser keeps no key.
pub async fn fingerprint() -> Result<String, Fault> {
    let found = order(&Array::of1(&"device".into()), &Array::new()).await?;
    String::from_utf8(found.to_vec()).map_err(|_no_text| Fault::Stopped)
}

/// Has a worker of its own carry out an order, and ends it.
async fn order(order: &Array, buffers: &Array) -> Result<Uint8Array, Fault> {
    let worker = Worker::new(WORKER).map_err(|_refused| Fault::NotLoaded)?;
    let answer = answer(&worker, order, buffers).await;
    worker.terminate();
    answer
}

async fn answer(worker: &Worker, order: &Array, buffers: &Array) -> Result<Uint8Array, Fault> {
    let answer = Promise::new(&mut |done, failed| {
        worker.set_onmessage(Some(&done));
        worker.set_onerror(Some(&failed));
    });
    worker.post_message_with_transfer(order, buffers).map_err(|_refused| Fault::Stopped)?;
    let answer: MessageEvent = JsFuture::from(answer).await.map_err(|_event| Fault::NotLoaded)?.unchecked_into();
    match answer.data().dyn_into::<Uint8Array>() {
        Ok(file) => Ok(file),
        Err(fault) if fault == NOT_LOADED => Err(Fault::NotLoaded),
        Err(_stopped) => Err(Fault::Stopped),
    }
}
