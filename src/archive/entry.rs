//! One file of an archive: which bytes it spans, and what they hold.

use core::ops::Range;

use miniz_oxide::inflate::decompress_to_vec_with_limit;

use super::directory::{File, Numbers};
use super::zip::{DEFLATED, LOCAL, STORED};
use super::{ArchiveFault, Name};
use crate::record::{self, CarriedPhoto, Record, RecordFault, digest};

/// The longest that a header may be beyond its name: fixed fields and extras (APPNOTE 4.3.7).
const LONGEST_HEADER: u64 = 30 + 0xffff;
/// Flags that say that a file is encrypted (APPNOTE 4.4.4: bits 0, 6 and 13).
const ENCRYPTED: u16 = 1 | 1 << 6 | 1 << 13;

/// A file of an archive, as the list has it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Entry {
    /// What it is.
    pub name: Name,
    /// How many bytes it holds, as the list says.
    pub size: usize,
    method: u16,
    crc: u32,
    packed: usize,
    span: Range<u64>,
}

impl Entry {
    /// What the list says; `next` is where the next file begins.
    pub(super) fn new(name: Name, file: &File, next: u64) -> Result<Self, ArchiveFault> {
        if file.flags & ENCRYPTED != 0 || !matches!(file.method, STORED | DEFLATED) {
            return Err(ArchiveFault::EntryLocked(name));
        }
        let (size, packed) = (usize::try_from(file.size), usize::try_from(file.packed));
        let (Ok(size), Ok(packed)) = (size, packed) else { return Err(ArchiveFault::EntryTooLarge(name)) };
        if size > name.most() || packed > name.most() {
            return Err(ArchiveFault::EntryTooLarge(name));
        }
        let (offset, name_length) = (u64::from(file.offset), u64::try_from(file.name.len()).unwrap_or(u64::MAX));
        let most = offset + LONGEST_HEADER + name_length + u64::from(file.packed);
        Ok(Self { name, size, method: file.method, crc: file.crc, packed, span: offset..most.min(next) })
    }

    /// Which bytes of the archive [`Entry::open`] wants.
    pub fn span(&self) -> Range<u64> {
        self.span.clone()
    }

    /// What it holds, given the bytes it [spans](Entry::span).
    ///
    /// # Errors
    /// When they are not those that were put in.
    pub fn open(&self, bytes: &[u8]) -> Result<Vec<u8>, ArchiveFault> {
        let damaged = || ArchiveFault::EntryDamaged(self.name.clone());
        let data = self.data(bytes).ok_or_else(damaged)?;
        let held = if self.method == STORED {
            data.to_vec()
        } else {
            decompress_to_vec_with_limit(data, self.size).ok().ok_or_else(damaged)?
        };
        if held.len() == self.size && crc32fast::hash(&held) == self.crc { Ok(held) } else { Err(damaged()) }
    }

    /// What follows the local header (APPNOTE 4.3.7). Its sizes are not believed: they may stand behind the file instead.
    fn data<'a>(&self, bytes: &'a [u8]) -> Option<&'a [u8]> {
        let mut numbers = Numbers(bytes);
        (numbers.long()? == LOCAL).then_some(())?;
        // Version needed, flags.
        numbers.take(4)?;
        (numbers.short()? == self.method).then_some(())?;
        // Time, date, checksum, sizes.
        numbers.take(16)?;
        let (name, extras) = (numbers.length()?, numbers.length()?);
        (numbers.take(name)? == self.name.to_string().as_bytes()).then_some(())?;
        numbers.take(extras)?;
        numbers.take(self.packed)
    }
}

/// The record of an entry that is an examination, given the bytes that it [spans](Entry::span).
///
/// # Errors
/// When they are damaged, when they hold no examination, or another one than the name says.
pub fn examination(entry: &Entry, bytes: &[u8]) -> Result<Record, ArchiveFault> {
    let name = || entry.name.clone();
    let unread = |fault| ArchiveFault::Examination { name: name(), fault };
    let text = String::from_utf8(entry.open(bytes)?).ok().ok_or_else(|| unread(RecordFault::Foreign))?;
    let record = record::read(&text).map_err(unread)?;
    if entry.name == Name::Examination(record.id.clone()) { Ok(record) } else { Err(ArchiveFault::Misnamed(name())) }
}

/// The photo of an entry that is one, given the bytes that it [spans](Entry::span).
///
/// # Errors
/// When they are damaged, or not the photo that the name says.
pub fn photo(entry: &Entry, bytes: &[u8]) -> Result<CarriedPhoto, ArchiveFault> {
    let bytes = entry.open(bytes)?;
    let changed = || ArchiveFault::PhotoChanged(entry.name.clone());
    let Name::Photo(sha256, kind) = &entry.name else { return Err(changed()) };
    if digest::sha256(&bytes) != *sha256 {
        return Err(changed());
    }
    Ok(CarriedPhoto { sha256: sha256.clone(), media_type: kind.media_type().to_owned(), bytes })
}
