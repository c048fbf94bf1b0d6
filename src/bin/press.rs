//! The press: makes files to show. It is a program of its own, so that the app loads it only when a file is asked for.
//!
//! `press-worker.js` runs it apart from the page.

use js_sys::{Array, Error, Uint8Array};
use plugwary::{record, report};
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::wasm_bindgen;

fn main() {
    console_error_panic_hook::set_once();
}

/// The page for a record, given as JSON, and its photos, each a pair of SHA-256 and bytes.
///
/// # Errors
/// When the record or a photo is not what the app sends.
#[wasm_bindgen]
pub fn page(record: &str, photos: &Array) -> Result<Uint8Array, Error> {
    let record = record::read(record).map_err(|fault| Error::new(&fault.to_string()))?;
    let photos: Option<Vec<_>> = photos.iter().map(|photo| pair(&photo.dyn_into().ok()?)).collect();
    let photos = photos.ok_or_else(|| Error::new("a photo must be a pair of SHA-256 and bytes"))?;
    Ok(report::page(&record, &photos).as_bytes().into())
}

fn pair(photo: &Array) -> Option<(String, Vec<u8>)> {
    Some((photo.get(0).as_string()?, photo.get(1).dyn_into::<Uint8Array>().ok()?.to_vec()))
}
