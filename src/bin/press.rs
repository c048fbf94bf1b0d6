//! The press: makes files to show, seals and checks them. It is a program of its own, so that the app loads it only when a file is asked for.
//!
//! `press-worker.js` runs it apart from the page. Records come as JSON, photos each as a pair of SHA-256 and bytes; every answer is bytes.

use core::hint::black_box;

use js_sys::{Array, Error, Uint8Array};
use plugwary::domain::assess::{RuleBook, assess};
use plugwary::record::{self, Record};
use plugwary::report;
use plugwary::seal::{self, PublicKey};
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

/// The page, to be sealed with a key of 32 bytes.
///
/// # Errors
/// As [`page`], and when the key is none.
#[wasm_bindgen]
pub fn page_sealed_by(record: &str, photos: &Array, key: &[u8]) -> Result<Uint8Array, Error> {
    Ok(report::page_sealed_by(&read(record)?, &taken(photos)?, &public(key)?).as_bytes().into())
}

/// The PDF that names the key.
///
/// # Errors
/// As [`page_sealed_by`].
#[wasm_bindgen]
pub fn pdf_sealed_by(record: &str, photos: &Array, key: &[u8]) -> Result<Uint8Array, Error> {
    Ok(report::pdf_sealed_by(&read(record)?, &taken(photos)?, &public(key)?).as_slice().into())
}

/// The label that names the key.
///
/// # Errors
/// When the record or the key is not what the app sends.
#[wasm_bindgen]
pub fn label_sealed_by(record: &str, key: &[u8]) -> Result<Uint8Array, Error> {
    Ok(report::label_sealed_by(&read(record)?, &public(key)?).as_slice().into())
}

/// The bytes to be signed for a page of [`page_sealed_by`]; `sealed` is the time, RFC 3339 with zone.
///
/// # Errors
/// When the page does not belong to the key, or the time is none.
#[wasm_bindgen]
pub fn statement(page: &[u8], key: &[u8], sealed: &str) -> Result<Uint8Array, Error> {
    let statement = seal::statement(text(page)?, &public(key)?, sealed).map_err(|fault| Error::new(&fault.to_string()));
    Ok(statement?.as_slice().into())
}

/// The sealed page, from the page, its statement and the signature over that.
///
/// # Errors
/// When the three do not belong together.
#[wasm_bindgen]
pub fn attach(page: &[u8], statement: &[u8], signature: &[u8]) -> Result<Uint8Array, Error> {
    let sealed = seal::attach(text(page)?, statement, signature).map_err(|fault| Error::new(&fault.to_string()));
    Ok(sealed?.as_bytes().into())
}

/// What a look at a file found, as one line of JSON: codes, and sentences under `said`.
#[wasm_bindgen]
pub fn check(file: &[u8]) -> Uint8Array {
    seal::checked_line(&seal::check(file), None).as_bytes().into()
}

/// What people compare of a key.
///
/// # Errors
/// When the key has not 32 bytes.
#[wasm_bindgen]
pub fn fingerprint(key: &[u8]) -> Result<Uint8Array, Error> {
    Ok(seal::fingerprint(&public(key)?).as_bytes().into())
}

/// The public key of a secret key of 32 bytes, for where the browser knows no Ed25519.
///
/// # Errors
/// When it has not 32 bytes.
#[wasm_bindgen]
pub fn public_key(secret: &[u8]) -> Result<Uint8Array, Error> {
    Ok(PublicKey::of(&self::secret(secret)?).bytes().as_slice().into())
}

/// Signs a statement with a secret key, likewise.
///
/// # Errors
/// When the key has not 32 bytes.
#[wasm_bindgen]
pub fn sign(secret: &[u8], statement: &[u8]) -> Result<Uint8Array, Error> {
    Ok(seal::sign(&self::secret(secret)?, statement).as_slice().into())
}

fn public(key: &[u8]) -> Result<PublicKey, Error> {
    PublicKey::from_bytes(key).ok_or_else(|| Error::new("a public key must have 32 bytes"))
}

fn secret(key: &[u8]) -> Result<[u8; 32], Error> {
    key.try_into().ok().ok_or_else(|| Error::new("a secret key must have 32 bytes"))
}

fn text(page: &[u8]) -> Result<&str, Error> {
    str::from_utf8(page).ok().ok_or_else(|| Error::new("a page must be text"))
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
