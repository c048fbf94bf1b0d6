//! A page to show, taken apart into what a seal speaks of: the examination, the verdict, each photo, and all the rest.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use super::carried::{CLOSING, OPENING, embed, unembed};
use super::digest;

/// What stands before the verdict line in a page.
const VERDICT: &str = "<script type=\"application/json\" id=\"plugwary-verdict\">";

/// A page, taken apart. What is not as the report makes it belongs to the text.
#[derive(Debug)]
pub struct Pieces<'a> {
    examination: Option<&'a str>,
    verdict: Option<&'a str>,
    photos: Vec<Photo<'a>>,
    text: Vec<&'a str>,
}

/// A photo in a page.
#[derive(Debug)]
struct Photo<'a> {
    sha256: &'a str,
    source: &'a str,
}

impl<'a> Pieces<'a> {
    /// Takes a page apart, in one walk along it.
    pub fn of(page: &'a str) -> Self {
        let mut pieces = Self { examination: None, verdict: None, photos: Vec::new(), text: Vec::new() };
        let rest = pieces.carried(page, OPENING, |pieces, json| pieces.examination = Some(json));
        let rest = pieces.carried(rest, VERDICT, |pieces, json| pieces.verdict = Some(json));
        pieces.shown(rest);
        pieces
    }

    /// Takes the text up to some data, and the data; gives what is behind it.
    fn carried(&mut self, page: &'a str, opening: &str, put: impl FnOnce(&mut Self, &'a str)) -> &'a str {
        let Some((before, after)) = page.split_once(opening) else { return page };
        let Some((json, rest)) = after.split_once(CLOSING) else { return page };
        self.shown(before);
        put(self, json);
        rest
    }

    /// Takes the photos out of a stretch of text.
    fn shown(&mut self, text: &'a str) {
        for (place, piece) in text.split("<img alt=\"").enumerate() {
            match photo(piece).filter(|_| place > 0) {
                Some((before, photo, after)) => {
                    self.photos.push(photo);
                    self.text.extend([before, after]);
                }
                None => self.text.push(piece),
            }
        }
    }

    /// The examination, as it was before it was made safe to stand in a page.
    pub fn examination(&self) -> Option<String> {
        self.examination.map(unembed)
    }

    /// The verdict line, likewise.
    pub fn verdict(&self) -> Option<String> {
        self.verdict.map(unembed)
    }

    /// The digest of the examination, which is its fingerprint on paper too.
    pub fn examination_sha256(&self) -> Option<String> {
        self.examination.map(carried_sha256)
    }

    /// The digest of the verdict line.
    pub fn verdict_sha256(&self) -> Option<String> {
        self.verdict.map(carried_sha256)
    }

    /// The digest of each photo in the order of the page, where its bytes are those that it says.
    pub fn photos(&self) -> impl Iterator<Item = Option<String>> {
        self.photos.iter().map(|photo| {
            let (_, base64) = photo.source.split_once(";base64,")?;
            let sha256 = digest::sha256(&STANDARD.decode(base64).ok()?);
            (sha256 == photo.sha256).then_some(sha256)
        })
    }

    /// The digest of all the rest.
    pub fn text_sha256(&self) -> String {
        // A page has no such character, so nothing can move from one stretch to the next unseen.
        digest::sha256(self.text.join("\0").as_bytes())
    }
}

/// What stands before the data of a photo, the photo, and what stands behind it.
fn photo(piece: &str) -> Option<(&str, Photo<'_>, &str)> {
    let (before, rest) = piece.split_once("\" src=\"data:")?;
    let (_, sha256) = before.split_once("\" data-sha256=\"")?;
    let (source, after) = rest.split_once('"')?;
    Some((before, Photo { sha256, source }, after))
}

/// Of what the page carries, or, where the report would not have written it so, of what stands there.
fn carried_sha256(embedded: &str) -> String {
    let plain = unembed(embedded);
    if embed(&plain) == embedded { digest::sha256(plain.as_bytes()) } else { digest::sha256(embedded.as_bytes()) }
}
