//! Taking a file back: the bare examination, or the page that carries it with its photos.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

use super::envelope::LARGEST;
use super::fault::RecordFault;
use super::to_domain::hexadecimal;
use super::{Record, read};

/// What opens the examination inside a page.
const OPENING: &str = "<script type=\"application/json\" id=\"plugwary-examination\">";

/// What ends it.
const CLOSING: &str = "</script>";

/// What a file carried.
#[derive(Debug, Clone, PartialEq)]
pub struct Carried {
    /// The examination.
    pub record: Record,
    /// The photos whose bytes were in the file.
    pub photos: Vec<CarriedPhoto>,
}

/// A photo's bytes, as they were hashed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CarriedPhoto {
    /// SHA-256 of the bytes, 64 lower-case hexadecimal digits.
    pub sha256: String,
    /// Media type.
    pub media_type: String,
    /// The bytes.
    pub bytes: Vec<u8>,
}

/// JSON that may stand inside a page: no character in it can end the element or begin another.
pub fn embed(json: &str) -> String {
    json.replace('<', "\\u003c")
        .replace('>', "\\u003e")
        .replace('&', "\\u0026")
        .replace('\u{2028}', "\\u2028")
        .replace('\u{2029}', "\\u2029")
}

/// Reads a file: an examination's JSON, or a page made by this program.
///
/// # Errors
///
/// The first [`RecordFault`] met; a photo whose bytes do not match their hash is one.
pub fn from_file(text: &str) -> Result<Carried, RecordFault> {
    if text.len() > LARGEST {
        return Err(RecordFault::TooLarge);
    }
    let text = text.trim_start_matches('\u{feff}');
    if text.trim_start().starts_with('{') {
        return Ok(Carried { record: read(text)?, photos: Vec::new() });
    }
    let mut parts = text.split(OPENING);
    let (_, inside, further) = (parts.next(), parts.next(), parts.next());
    let inside = inside.ok_or(RecordFault::Foreign)?;
    if further.is_some() {
        return Err(RecordFault::Damaged("it carries two examinations".to_owned()));
    }
    let (json, _) = inside
        .split_once(CLOSING)
        .ok_or_else(|| RecordFault::Damaged("the examination in it is cut off".to_owned()))?;
    let record = read(json)?;
    let photos = photos(text, &record)?;
    Ok(Carried { record, photos })
}

/// The photos of a page. Each is hashed again; a photo that the examination does not name is left where it is.
fn photos(page: &str, record: &Record) -> Result<Vec<CarriedPhoto>, RecordFault> {
    let mut photos = Vec::new();
    for (n, piece) in page.split("data-sha256=\"").skip(1).enumerate() {
        let damaged = || RecordFault::PhotoDamaged(n + 1);
        let (sha256, rest) = piece.split_once('"').ok_or_else(damaged)?;
        let (_, rest) = rest.split_once("src=\"data:").ok_or_else(damaged)?;
        let (media_type, rest) = rest.split_once(";base64,").ok_or_else(damaged)?;
        let (encoded, _) = rest.split_once('"').ok_or_else(damaged)?;
        let bytes = STANDARD.decode(encoded).map_err(|_error| damaged())?;
        if hexadecimal(&Sha256::digest(&bytes)) != sha256 {
            return Err(RecordFault::PhotoChanged(n + 1));
        }
        if let Some(named) = record.photos.iter().find(|photo| photo.sha256 == sha256) {
            if named.media_type != media_type {
                return Err(RecordFault::PhotoChanged(n + 1));
            }
            photos.push(CarriedPhoto { sha256: sha256.to_owned(), media_type: media_type.to_owned(), bytes });
        }
    }
    Ok(photos)
}
