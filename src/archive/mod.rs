//! Everything out as one archive, and back in without doubles.
//!
//! An archive is a zip file (PKWARE APPNOTE 6.3.10) of examinations, photos and tables. Both ways go piece by piece, so that a thousand
//! samples need no more memory than one: [`Packer`] gives out bytes as they are made, and the reader asks for the bytes of one file at a
//! time: the [tail](tail_length), the [directory], its [list](entries), then what each [entry](Entry) spans. Nothing here reads or writes
//! anything itself, and no name in an archive is ever used as a path.

mod deflated;
mod directory;
mod entry;
mod fault;
mod moment;
mod name;
mod packer;
mod taking;
mod zip;

pub use directory::{Directory, Listing, directory, entries, tail_length};
pub use entry::{Entry, examination, photo};
pub use fault::ArchiveFault;
pub use name::{Name, PhotoKind};
pub use packer::Packer;
pub use taking::{Fate, Taken, Tally, many_since, take};
pub use zip::Writer;
