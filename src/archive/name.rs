//! The names that an archive may hold, and no others.

use core::fmt;

use crate::collection::Table;
use crate::record::digest::is_hexadecimal;
use crate::record::{LARGEST, Photo};

/// The largest photo that is read, in bytes; the app makes them a hundred times smaller.
const LARGEST_PHOTO: usize = 32 * 1024 * 1024;

/// What one file of an archive is.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum Name {
    /// What the archive is, in plain words.
    Readme,
    /// A table of every sample.
    Index,
    /// A table of every reading.
    Readings,
    /// A table of every finding.
    Findings,
    /// An examination, by the id of its record.
    Examination(String),
    /// A photo, by the SHA-256 of its bytes.
    Photo(String, PhotoKind),
}

/// How a photo is stored.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum PhotoKind {
    /// `image/jpeg`
    Jpeg,
    /// `image/webp`
    Webp,
}

impl PhotoKind {
    /// The media type.
    pub const fn media_type(self) -> &'static str {
        match self {
            Self::Jpeg => "image/jpeg",
            Self::Webp => "image/webp",
        }
    }
}

impl Name {
    /// The name that is spelled so; `None` for any other, such as a folder or a path that leads elsewhere.
    pub fn parse(spelled: &[u8]) -> Option<Self> {
        let spelled = str::from_utf8(spelled).ok()?;
        let of = |folder: &str, ending: &str, digits| {
            let name = spelled.strip_prefix(folder)?.strip_suffix(ending)?;
            is_hexadecimal(name, digits).then(|| name.to_owned())
        };
        [Self::Readme, Self::Index, Self::Readings, Self::Findings]
            .into_iter()
            .find(|name| name.to_string() == spelled)
            .or_else(|| of("examinations/", ".json", 32).map(Self::Examination))
            .or_else(|| of("photos/", ".jpg", 64).map(|sha256| Self::Photo(sha256, PhotoKind::Jpeg)))
            .or_else(|| of("photos/", ".webp", 64).map(|sha256| Self::Photo(sha256, PhotoKind::Webp)))
    }

    /// The name of a photo.
    pub fn of_photo(photo: &Photo) -> Self {
        let kind = if photo.media_type == PhotoKind::Webp.media_type() { PhotoKind::Webp } else { PhotoKind::Jpeg };
        Self::Photo(photo.sha256.clone(), kind)
    }

    /// The name of a table.
    pub const fn of_table(table: Table) -> Self {
        match table {
            Table::Samples => Self::Index,
            Table::Readings => Self::Readings,
            Table::Findings => Self::Findings,
        }
    }

    /// The most bytes that are read of it.
    pub const fn most(&self) -> usize {
        match self {
            Self::Photo(..) => LARGEST_PHOTO,
            Self::Readme | Self::Index | Self::Readings | Self::Findings | Self::Examination(_) => LARGEST,
        }
    }
}

impl fmt::Display for Name {
    fn fmt(&self, f: &mut fmt::Formatter) -> fmt::Result {
        match self {
            Self::Readme => f.write_str("readme.txt"),
            Self::Index => f.write_str("index.csv"),
            Self::Readings => f.write_str("readings.csv"),
            Self::Findings => f.write_str("findings.csv"),
            Self::Examination(id) => write!(f, "examinations/{id}.json"),
            Self::Photo(sha256, PhotoKind::Jpeg) => write!(f, "photos/{sha256}.jpg"),
            Self::Photo(sha256, PhotoKind::Webp) => write!(f, "photos/{sha256}.webp"),
        }
    }
}
