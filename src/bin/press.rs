//! The press: makes files to show. It is a program of its own, so that the app loads it only when a file is asked for.
//!
//! `press-worker.js` runs it apart from the page. Records come as JSON, photos each as a pair of SHA-256 and bytes.

use core::hint::black_box;

use js_sys::{Array, Error, Uint8Array};
use plugwary::domain::assess::{RuleBook, assess};
use plugwary::record::{self, Record};
use plugwary::report;
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

/// Judges a record anew so many times, and gives the verdict line: for measuring how long that takes.
///
/// # Errors
/// As [`page`].
#[wasm_bindgen]
pub fn judge(record: &str, times: u32) -> Result<String, Error> {
    let record = read(record)?;
    for _ in 1..times {
        black_box(assess(black_box(&record.examination), &RuleBook::CURRENT));
    }
    Ok(record::judged_line(&record))
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
