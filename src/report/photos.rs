//! The photos that belong to a sentence, each named by its digest.

use super::document::{Block, Tone};
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

impl<'a> Photos<'a> {
    /// The photos of one sentence.
    pub fn of(self, sentence: &Sentence) -> impl Iterator<Item = Block<'a>> {
        let belongs = |p: &&Photo| p.question == sentence.question.id && p.target == sentence.target;
        self.of_record.iter().filter(belongs).map(move |photo| {
            match self.bytes.iter().find(|(sha256, _)| *sha256 == photo.sha256) {
                Some((_, bytes)) => Block::Photo(photo, bytes, sentence.text.clone()),
                None => Block::Text(Tone::Small, words::PHOTO_MISSING.to_owned()),
            }
        })
    }
}
