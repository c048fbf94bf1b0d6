//! The examination that a file carries: the bare JSON, or the page to show with the examination and its photos inside.
//!
//! A page has `<script type="application/json" id="plugwary-examination">` once, with JSON that [`embed`] has made safe to stand
//! there, and each photo as `<img data-sha256="…" src="data:image/jpeg;base64,…">`. All other text in a page must have its `<`
//! escaped, so that neither can occur but as itself.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use super::{LARGEST, Photo, Record, RecordFault, digest, read};

/// What stands before the examination in a page.
pub const OPENING: &str = "<script type=\"application/json\" id=\"plugwary-examination\">";
/// What ends it.
pub const CLOSING: &str = "</script>";

/// What a file brought.
#[derive(Debug, Clone, PartialEq)]
pub struct Carried {
    /// The examination.
    pub record: Record,
    /// The photos that were in the file, each once. The bare examination brings none, and a page may be made without some.
    pub photos: Vec<CarriedPhoto>,
}

/// A photo with its bytes, which have the digest that names it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CarriedPhoto {
    /// SHA-256 of the bytes, 64 lower-case hexadecimal digits.
    pub sha256: String,
    /// Media type, `image/jpeg` or `image/webp`.
    pub media_type: String,
    /// The bytes.
    pub bytes: Vec<u8>,
}

/// Takes back a page to show, or a bare examination.
///
/// # Errors
///
/// What [`read`] refuses; a page with several examinations or half of one; a page that shows a photo which its examination does not
/// speak of, or other bytes than were hashed.
pub fn from_file(text: &str) -> Result<Carried, RecordFault> {
    if text.len() > LARGEST {
        return Err(RecordFault::TooLarge);
    }
    let Some((before, after)) = text.split_once(OPENING) else {
        return Ok(Carried { record: read(text)?, photos: Vec::new() });
    };
    let (json, rest) = after.split_once(CLOSING).ok_or(RecordFault::CutShort)?;
    if after.contains(OPENING) {
        return Err(RecordFault::SeveralExaminations);
    }
    let record = read(json)?;
    let shown: Vec<Shown> = images(before).chain(images(rest)).filter_map(Shown::of).collect();
    if shown.iter().any(|shown| record.photos.iter().all(|photo| photo.sha256 != shown.sha256)) {
        return Err(RecordFault::PhotoAdded);
    }
    let photos = photos(&record.photos, &shown)?;
    Ok(Carried { record, photos })
}

/// JSON that can stand inside a `script` element: nothing in it opens or closes markup, nor ends a line in a script.
pub fn embed(json: &str) -> String {
    let mut safe = String::with_capacity(json.len());
    for c in json.chars() {
        match c {
            // Outside strings JSON has none of these, and inside them an escape means the same.
            '<' => safe.push_str("\\u003c"),
            '>' => safe.push_str("\\u003e"),
            '&' => safe.push_str("\\u0026"),
            '\u{2028}' => safe.push_str("\\u2028"),
            '\u{2029}' => safe.push_str("\\u2029"),
            _ => safe.push(c),
        }
    }
    safe
}

/// What [`embed`] made safe, as it was.
pub fn unembed(safe: &str) -> String {
    let mut json = String::with_capacity(safe.len());
    let mut rest = safe;
    while let Some((before, after)) = rest.split_once('\\') {
        json.push_str(before);
        let known = [("u003c", '<'), ("u003e", '>'), ("u0026", '&'), ("u2028", '\u{2028}'), ("u2029", '\u{2029}')];
        let made_safe = known.iter().find_map(|(escape, c)| Some((*c, after.strip_prefix(escape)?)));
        if let Some((c, after)) = made_safe {
            json.push(c);
            rest = after;
        } else {
            // A backslash and what it escapes, be it another backslash.
            let escaped = after.chars().next().map_or(0, char::len_utf8);
            let (escaped, after) = after.split_at_checked(escaped).unwrap_or_default();
            json.push('\\');
            json.push_str(escaped);
            rest = after;
        }
    }
    json.push_str(rest);
    json
}

/// The bytes of every photo that is shown, each once; every showing is held against the digest on record.
fn photos(on_record: &[Photo], shown: &[Shown]) -> Result<Vec<CarriedPhoto>, RecordFault> {
    let mut photos: Vec<CarriedPhoto> = Vec::new();
    for (number, photo) in (1..).zip(on_record) {
        if photos.iter().any(|taken| taken.sha256 == photo.sha256) {
            continue;
        }
        let mut intact = None;
        for showing in shown.iter().filter(|shown| shown.sha256 == photo.sha256) {
            intact = Some(showing.bytes(photo).ok_or(RecordFault::PhotoChanged { number })?);
        }
        photos.extend(intact.map(|bytes| CarriedPhoto {
            sha256: photo.sha256.clone(),
            media_type: photo.media_type.clone(),
            bytes,
        }));
    }
    Ok(photos)
}

/// An image that says which photo it is.
struct Shown<'a> {
    sha256: &'a str,
    source: &'a str,
}

impl<'a> Shown<'a> {
    fn of(image: &'a str) -> Option<Self> {
        let attribute = |name: &str| attributes(image).find(|(known, _)| *known == name).map(|(_, value)| value);
        Some(Self { sha256: attribute("data-sha256")?, source: attribute("src").unwrap_or_default() })
    }

    /// The bytes shown, if they are those of the photo.
    fn bytes(&self, photo: &Photo) -> Option<Vec<u8>> {
        let source = self.source.strip_prefix("data:")?.strip_prefix(photo.media_type.as_str())?;
        let bytes = STANDARD.decode(source.strip_prefix(";base64,")?).ok()?;
        (digest::sha256(&bytes) == photo.sha256).then_some(bytes)
    }
}

/// What follows each `<img`.
fn images(page: &str) -> impl Iterator<Item = &str> {
    page.split("<img").skip(1)
}

/// The attributes of a tag, as far as it goes: every `name="value"` before the `>` that ends it.
fn attributes(tag: &str) -> impl Iterator<Item = (&str, &str)> {
    let mut rest = tag;
    core::iter::from_fn(move || {
        let (name, after) = rest.split_once("=\"").filter(|(name, _)| !name.contains('>'))?;
        let (value, after) = after.split_once('"')?;
        rest = after;
        Some((name.trim(), value))
    })
}
