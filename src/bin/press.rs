//! The press: makes files to show. It is a program of its own, so that the app loads it only when a file is asked for.
//!
//! `press-worker.js` runs it apart from the page. Records come as JSON, photos each as a pair of SHA-256 and bytes.

use js_sys::{Array, Error, Uint8Array};
use plugwary::record::{self, Record};
use plugwary::report;
use plugwary::words::{letters, risk};
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::wasm_bindgen;

fn main() {
    console_error_panic_hook::set_once();
}

/// The page that stands on its own.
///
/// # Errors
/// When the record or a photo is not what the app sends.
#[wasm_bindgen]
pub fn page(record: &str, photos: &Array) -> Result<Uint8Array, Error> {
    Ok(report::page(&read(record)?, &taken(photos)?).as_bytes().into())
}

/// The same as a PDF for printing.
///
/// # Errors
/// As [`page`].
#[wasm_bindgen]
pub fn pdf(record: &str, photos: &Array) -> Result<Uint8Array, Error> {
    Ok(report::pdf(&read(record)?, &taken(photos)?).as_slice().into())
}

/// The label for the sample, as a PDF.
///
/// # Errors
/// When the record is not what the app sends.
#[wasm_bindgen]
pub fn label(record: &str) -> Result<Uint8Array, Error> {
    Ok(report::label(&read(record)?).as_slice().into())
}

/// A letter as plain text: to `seller`, `marketplace` or `authority`.
///
/// # Errors
/// When the record is not what the app sends, or nobody of that name is written to.
#[wasm_bindgen]
pub fn letter(record: &str, to: &str) -> Result<Uint8Array, Error> {
    let record = read(record)?;
    let letter = match to {
        "seller" => letters::seller(&record),
        "marketplace" => letters::marketplace(&record),
        "authority" => letters::authority(&record),
        _ => return Err(Error::new("a letter goes to the seller, the marketplace or the authority")),
    };
    Ok(letter.whole().as_bytes().into())
}

/// The record as JSON, with a draft of each scenario that it lacks.
///
/// # Errors
/// When the record is not what the app sends.
#[wasm_bindgen]
pub fn drafts(record: &str) -> Result<Uint8Array, Error> {
    Ok(record::write(&risk::with_drafts(&read(record)?)).as_bytes().into())
}

fn read(record: &str) -> Result<Record, Error> {
    record::read(record).map_err(|fault| Error::new(&fault.to_string()))
}

fn taken(photos: &Array) -> Result<Vec<(String, Vec<u8>)>, Error> {
    let pairs: Option<Vec<_>> = photos.iter().map(|photo| pair(&photo.dyn_into().ok()?)).collect();
    pairs.ok_or_else(|| Error::new("a photo must be a pair of SHA-256 and bytes"))
}

fn pair(photo: &Array) -> Option<(String, Vec<u8>)> {
    Some((photo.get(0).as_string()?, photo.get(1).dyn_into::<Uint8Array>().ok()?.to_vec()))
}
