//! Where the sample came from: how it was acquired, the listing and the parcel, who held it since.

use super::document::{Block, Tone};
use super::photos::Photos;
use crate::record::{self, Record};
use crate::words::custody as words;

/// The blocks of the part; none where nobody said anything.
pub fn blocks<'a>(record: &Record, photos: Photos<'a>) -> Vec<Block<'a>> {
    let acquired = words::acquisition(&record.custody.acquisition);
    let entries = &record.custody.entries;
    let mut shown = photos.of_origin().peekable();
    if acquired.is_empty() && entries.is_empty() && shown.peek().is_none() {
        return Vec::new();
    }
    let mut blocks = vec![Block::Heading(words::HEADING)];
    if !acquired.is_empty() {
        blocks.push(Block::List(Tone::Plain, acquired));
    }
    if shown.peek().is_some() {
        blocks.push(Block::Subheading(words::PHOTOS.to_owned()));
        blocks.extend(shown);
    }
    if !entries.is_empty() {
        let lines = (1..).zip(entries).map(|(place, entry)| words::entry(place, entry)).collect();
        blocks.push(Block::Subheading(words::WHO_HELD_IT.to_owned()));
        blocks.push(Block::List(Tone::Plain, lines));
        let said = words::chain(&record::chain(record)).into_iter().map(|said| Block::Text(Tone::Plain, said));
        blocks.extend(said);
        blocks.extend(Block::text(Tone::Small, words::CHAIN_CANNOT_SEE));
    }
    blocks
}
