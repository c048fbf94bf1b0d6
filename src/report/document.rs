//! What the file to show says, block by block, before it is a page or a PDF.

use crate::drawing::found::Picture;
use crate::record::Photo;
use crate::words::claims::ClaimTable;
use crate::words::statement::Bar;

/// One block.
#[derive(Debug)]
pub enum Block<'a> {
    /// The verdict: its code, its words, and what it is based on.
    Verdict(&'static str, String, String),
    /// The heading of a part.
    Heading(&'static str),
    /// A heading inside a part.
    Subheading(String),
    /// A paragraph.
    Text(Tone, String),
    /// A sentence with the bar beside it.
    Said(Bar, Vec<Run>),
    /// Blocks with one bar beside all of them.
    Section(Bar, Vec<Block<'a>>),
    /// What each place claims.
    Claims(ClaimTable),
    /// A list, an entry each.
    List(Tone, Vec<String>),
    /// What was measured, drawn.
    Picture(Picture),
    /// A photo, its bytes, and what it shows.
    Photo(&'a Photo, &'a [u8], String),
}

impl Block<'_> {
    /// A paragraph; none where there is nothing to say.
    pub fn text(tone: Tone, text: &str) -> Option<Self> {
        (!text.is_empty()).then(|| Self::Text(tone, text.to_owned()))
    }
}

/// How a paragraph is set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tone {
    /// As it is.
    Plain,
    /// Small.
    Small,
    /// What to do.
    Advice,
    /// What is examined, and where it came from.
    Subject,
    /// What was measured.
    Numbers,
    /// What it is held against.
    Source,
}

/// A stretch of a sentence.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Run {
    /// As it is.
    Plain(String),
    /// Emphasised.
    Strong(String),
    /// Small, after a space.
    Small(String),
}
