//! The list of an archive's files: found at its end, read, and believed only where it contradicts neither itself nor the file.

use super::zip::{CENTRAL, END, MOST};
use super::{ArchiveFault, Entry, Name};
use crate::domain::order::greatest_first;
use crate::record::Photo;

/// The end record without its comment (APPNOTE 4.3.16).
const END_LENGTH: u64 = 22;
/// The longest list that is read, in bytes: twice what our longest names need for the most files.
const LONGEST: u64 = 16 * 1024 * 1024;

/// Where the list stands in the archive.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Directory {
    /// Its first byte.
    pub offset: u64,
    /// How many bytes it has.
    pub length: u64,
    /// How many files it names.
    files: usize,
}

/// What an archive holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Listing {
    /// Every file that has a name of ours, in the order of the list.
    pub entries: Vec<Entry>,
    /// How many others there are; they are never looked at.
    pub others: usize,
}

impl Listing {
    /// Every examination, in the order of the list.
    pub fn examinations(&self) -> impl Iterator<Item = &Entry> {
        self.entries.iter().filter(|entry| matches!(entry.name, Name::Examination(_)))
    }

    /// The file of a photo that an examination speaks of; `None` where it was not packed.
    pub fn photo(&self, photo: &Photo) -> Option<&Entry> {
        let is_it = |entry: &&Entry| matches!(&entry.name, Name::Photo(sha256, _) if *sha256 == photo.sha256);
        self.entries.iter().find(is_it)
    }
}

/// Little-endian numbers one after the other.
pub(super) struct Numbers<'a>(pub &'a [u8]);

impl<'a> Numbers<'a> {
    pub fn take(&mut self, length: usize) -> Option<&'a [u8]> {
        let (taken, rest) = self.0.split_at_checked(length)?;
        self.0 = rest;
        Some(taken)
    }

    pub fn short(&mut self) -> Option<u16> {
        self.take(2)?.try_into().ok().map(u16::from_le_bytes)
    }

    pub fn long(&mut self) -> Option<u32> {
        self.take(4)?.try_into().ok().map(u32::from_le_bytes)
    }

    pub fn length(&mut self) -> Option<usize> {
        self.short().map(usize::from)
    }
}

/// How many bytes of the archive's end are wanted to find its list: the end record may have a comment.
pub const fn tail_length(size: u64) -> u64 {
    let most = END_LENGTH + 0xffff;
    if size < most { size } else { most }
}

/// Finds the list, given the archive's size and its last bytes, as many as [`tail_length`] says.
///
/// # Errors
/// When there is none, when it is elsewhere than it must be, or when the archive is of the large form (APPNOTE 4.3.14).
pub fn directory(tail: &[u8], size: u64) -> Result<Directory, ArchiveFault> {
    let mark = END.to_le_bytes();
    let from_end = |at: &usize| {
        let record = tail.get(*at..)?;
        let comment = record.get(20..22)?.try_into().ok().map(u16::from_le_bytes)?;
        (record.starts_with(&mark) && record.len() == 22 + usize::from(comment)).then_some(record)
    };
    let record = (0..tail.len()).rev().find_map(|at| from_end(&at)).ok_or(ArchiveFault::NoDirectory)?;
    let end = size.checked_sub(u64::try_from(record.len()).unwrap_or(u64::MAX)).ok_or(ArchiveFault::NoDirectory)?;
    let (parts, files, length, offset) = numbers(record).ok_or(ArchiveFault::NoDirectory)?;
    if files > MOST || length == u32::MAX || offset == u32::MAX {
        return Err(ArchiveFault::TooLarge);
    }
    let (offset, length) = (u64::from(offset), u64::from(length));
    // The list ends where the record begins, and its headers have at least 46 bytes each (APPNOTE 4.3.12).
    let fits = offset + length == end && u64::try_from(files).is_ok_and(|files| files * 46 <= length);
    if parts != 0 || !fits || length > LONGEST {
        return Err(ArchiveFault::DirectoryDamaged);
    }
    Ok(Directory { offset, length, files })
}

/// Numbers of parts, number of files, length and offset of the list.
fn numbers(record: &[u8]) -> Option<(u32, usize, u32, u32)> {
    let mut numbers = Numbers(record.get(4..)?);
    let parts = numbers.long()?;
    let (here, files) = (numbers.length()?, numbers.length()?);
    (here == files).then_some(())?;
    Some((parts, files, numbers.long()?, numbers.long()?))
}

/// Reads the list, given its bytes.
///
/// # Errors
/// When it contradicts itself, names one of ours twice or a file larger than any of its sort, or when files lie over each other: a few
/// bytes that are unpacked over and over fill any memory.
pub fn entries(directory: &Directory, bytes: &[u8]) -> Result<Listing, ArchiveFault> {
    let mut numbers = Numbers(bytes);
    let files: Option<Vec<File>> = (0..directory.files).map(|_| file(&mut numbers)).collect();
    let files = files.filter(|_| numbers.0.is_empty()).ok_or(ArchiveFault::DirectoryDamaged)?;

    // From the last file to the first: each ends before the next begins, and the last before the list.
    let mut next = directory.offset;
    let mut entries = Vec::new();
    let mut others = 0;
    let at = |file: &(usize, File)| f64::from(file.1.offset);
    for (place, file) in greatest_first(files.into_iter().enumerate().collect(), at) {
        let offset = u64::from(file.offset);
        let least = offset + 30 + u64::try_from(file.name.len()).unwrap_or(u64::MAX) + u64::from(file.packed);
        if least > next {
            return Err(ArchiveFault::Overlap);
        }
        match Name::parse(file.name) {
            Some(name) => entries.push((place, Entry::new(name, &file, next)?)),
            None => others += 1,
        }
        next = offset;
    }
    let mut names: Vec<&Name> = entries.iter().map(|(_, entry)| &entry.name).collect();
    names.sort_unstable();
    if let Some((twice, _)) = names.iter().zip(names.iter().skip(1)).find(|(one, other)| one == other) {
        return Err(ArchiveFault::Twice((*twice).clone()));
    }
    entries.sort_unstable_by_key(|(place, _)| *place);
    Ok(Listing { entries: entries.into_iter().map(|(_, entry)| entry).collect(), others })
}

/// What the list says of one file.
pub(super) struct File<'a> {
    pub name: &'a [u8],
    pub flags: u16,
    pub method: u16,
    pub crc: u32,
    pub packed: u32,
    pub size: u32,
    pub offset: u32,
}

/// A central directory header (APPNOTE 4.3.12).
fn file<'a>(numbers: &mut Numbers<'a>) -> Option<File<'a>> {
    (numbers.long()? == CENTRAL).then_some(())?;
    // Version made by, version needed.
    numbers.take(4)?;
    let (flags, method) = (numbers.short()?, numbers.short()?);
    // Time and date.
    numbers.take(4)?;
    let (crc, packed, size) = (numbers.long()?, numbers.long()?, numbers.long()?);
    let (name, extras, comment) = (numbers.length()?, numbers.length()?, numbers.length()?);
    // Part of the archive, attributes.
    numbers.take(8)?;
    let offset = numbers.long()?;
    let name = numbers.take(name)?;
    numbers.take(extras + comment)?;
    Some(File { name, flags, method, crc, packed, size, offset })
}
