//! The photos that belong to a sentence, each named by its digest.

use super::document::{Block, Tone};
use crate::record::{Attached, Photo};
use crate::words::custody;
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
        let answer = Attached::Answer { question: sentence.question.id, target: sentence.target };
        self.attached(answer, sentence.text.clone())
    }

    /// The photos of the listing and of the parcel before it was opened.
    pub fn of_origin(self) -> impl Iterator<Item = Block<'a>> {
        self.attached(Attached::Origin, custody::PHOTO_SHOWS.to_owned())
    }

    fn attached(self, to: Attached, shows: String) -> impl Iterator<Item = Block<'a>> {
        self.of_record.iter().filter(move |photo| photo.attached == to).map(move |photo| {
            match self.bytes.iter().find(|(sha256, _)| *sha256 == photo.sha256) {
                Some((_, bytes)) => Block::Photo(photo, bytes, shows.clone()),
                None => Block::Text(Tone::Small, words::PHOTO_MISSING.to_owned()),
            }
        })
    }
}
