//! The photos that belong to a sentence, inside the page, each named by its digest.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use super::markup::Markup;
use crate::record::Photo;
use crate::words::report as words;
use crate::words::statement::Sentence;

/// The photos of a record and the bytes of those that are still there.
#[derive(Debug, Clone, Copy)]
pub struct Photos<'a> {
    /// What the record says of them.
    pub of_record: &'a [Photo],
    /// The stored bytes by SHA-256.
    pub bytes: &'a [(String, Vec<u8>)],
}

impl Photos<'_> {
    /// The photos of one sentence.
    pub fn of(&self, page: &mut Markup, sentence: &Sentence) {
        let belongs = |p: &&Photo| p.question == sentence.question.id && p.target == sentence.target;
        for photo in self.of_record.iter().filter(belongs) {
            match self.bytes.iter().find(|(sha256, _)| *sha256 == photo.sha256) {
                Some((_, bytes)) => {
                    page.raw("<figure><img alt=\"")
                        .text(&sentence.text)
                        .raw("\" data-sha256=\"")
                        .text(&photo.sha256)
                        .raw("\" src=\"data:")
                        .text(&photo.media_type)
                        .raw(";base64,")
                        .raw(&STANDARD.encode(bytes))
                        .raw("\">")
                        .element("figcaption", "small", &words::photo_of(&photo.taken, &photo.sha256))
                        .close("figure");
                }
                None => {
                    page.element("p", "small", words::PHOTO_MISSING);
                }
            }
        }
    }
}
