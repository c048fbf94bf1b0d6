//! The addresses of the study. They stand behind the `#` of one page, so that any host can serve them, and a plain link leads to each.

use crate::screens::way;

/// An address of the study.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Room {
    /// Looking at a file that somebody brought.
    TakeIn,
    /// All samples, sorted out, and the archive.
    Collection,
    /// Somebody's own instruments.
    Instruments,
    /// What can be done with one sample, by id.
    Sample(String),
    /// Its file.
    File(String),
    /// What was measured, drawn.
    Drawn(String),
    /// Where it came from.
    Origin(String),
    /// How grave it is for people.
    Risk(String),
    /// The letters about it.
    Letters(String),
    /// It beside a known good.
    Compare(String),
}

impl Room {
    /// The address for a link.
    pub fn href(&self) -> String {
        let of = |id: &str, room: &str| format!("{}/{room}", way::afterwards(id));
        match self {
            Self::TakeIn => way::TAKE_IN.to_owned(),
            Self::Collection => way::COLLECTION.to_owned(),
            Self::Instruments => way::INSTRUMENTS.to_owned(),
            Self::Sample(id) => way::afterwards(id),
            Self::File(id) => way::make_file(id),
            Self::Drawn(id) => of(id, "drawn"),
            Self::Origin(id) => of(id, "origin"),
            Self::Risk(id) => of(id, "risk"),
            Self::Letters(id) => of(id, "letters"),
            Self::Compare(id) => of(id, "compare"),
        }
    }

    /// The room that a `#` leads to; an unknown one leads to where files are taken in.
    pub fn of_hash(hash: &str) -> Self {
        let parts: Vec<&str> = hash.trim_start_matches('#').split('/').filter(|part| !part.is_empty()).collect();
        match parts.as_slice() {
            ["samples"] => Self::Collection,
            ["instruments"] => Self::Instruments,
            ["sample", id] => Self::Sample((*id).to_owned()),
            ["sample", id, "file"] => Self::File((*id).to_owned()),
            ["sample", id, "drawn"] => Self::Drawn((*id).to_owned()),
            ["sample", id, "origin"] => Self::Origin((*id).to_owned()),
            ["sample", id, "risk"] => Self::Risk((*id).to_owned()),
            ["sample", id, "letters"] => Self::Letters((*id).to_owned()),
            ["sample", id, "compare"] => Self::Compare((*id).to_owned()),
            _ => Self::TakeIn,
        }
    }
}
