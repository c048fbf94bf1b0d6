//! Why an archive, or one file of it, is not taken: one sentence, and a hint where one helps.

use std::borrow::Cow;

use thiserror::Error;

use super::Name;
use crate::record::RecordFault;

/// Why an archive is not made or not read.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum ArchiveFault {
    /// No list of files at its end.
    #[error("this is no zip archive, or it is cut short")]
    NoDirectory,
    /// The list of files contradicts itself or the file it stands in.
    #[error("the archive is damaged at its list of files")]
    DirectoryDamaged,
    /// Nothing in it that the app has made.
    #[error("there is no examination in the archive")]
    Empty,
    /// More than the plain form of a zip archive holds.
    #[error("an archive holds up to 4 GiB and 65,534 files, and this one would be larger")]
    TooLarge,
    /// A name that was there before.
    #[error("“{0}” stands twice in the archive")]
    Twice(Name),
    /// Files that lie over each other, or over the list.
    #[error("files of the archive lie over each other")]
    Overlap,
    /// Larger than any file of its sort.
    #[error("“{0}” is larger than {most} MiB", most = .0.most() >> 20)]
    EntryTooLarge(Name),
    /// Locked or packed in a way that is not read.
    #[error("“{0}” is locked, or packed in a way that is not read here")]
    EntryLocked(Name),
    /// Not the bytes that were put in.
    #[error("“{0}” is damaged")]
    EntryDamaged(Name),
    /// A photo with other bytes than its name says.
    #[error("“{0}” is not the photo that its name says")]
    PhotoChanged(Name),
    /// An examination under the name of another.
    #[error("“{0}” holds another examination than its name says")]
    Misnamed(Name),
    /// No examination, or one that cannot be read.
    #[error("“{name}”: {fault}")]
    Examination {
        /// The file.
        name: Name,
        /// What is wrong with it.
        fault: RecordFault,
    },
}

impl ArchiveFault {
    /// What can be done about it, as a sentence.
    pub fn hint(&self) -> Cow<'static, str> {
        match self {
            Self::NoDirectory | Self::DirectoryDamaged | Self::Overlap | Self::Twice(_) | Self::EntryDamaged(_) => {
                "Ask for the archive again.".into()
            }
            Self::Empty => "An archive made here has a folder “examinations” at its top.".into(),
            Self::TooLarge => "Make several archives, each of some of the samples.".into(),
            Self::EntryTooLarge(_) | Self::EntryLocked(_) => {
                "If somebody packed it anew, ask for it as it was made.".into()
            }
            Self::PhotoChanged(_) | Self::Misnamed(_) => "Everything else in the archive can be taken.".into(),
            Self::Examination { fault, .. } => fault.hint(),
        }
    }
}
