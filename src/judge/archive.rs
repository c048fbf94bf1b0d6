//! Reads examinations out of an archive on this machine, one at a time.

use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom};
use std::ops::Range;

use super::texts::one_too_many;
use crate::archive::{ArchiveFault, Entry, directory, entries, examination, tail_length};
use crate::record::Record;

/// What a zip file begins with: its first file, or its end where it has none (APPNOTE 4.3.7 and 4.3.16).
const ZIP: [&[u8]; 2] = [b"PK\x03\x04", b"PK\x05\x06"];

/// An archive in a file.
pub struct Archive(File);

/// Takes a file for an archive if it begins like one; of any other the bytes are read, one more than any examination has at the most.
///
/// # Errors
/// When the file cannot be read.
pub fn open(file: File, bytes: &mut Vec<u8>) -> io::Result<Option<Archive>> {
    let mut file = file;
    file.by_ref().take(4).read_to_end(bytes)?;
    if ZIP.contains(&bytes.as_slice()) {
        return Ok(Some(Archive(file)));
    }
    file.take(one_too_many().saturating_sub(4)).read_to_end(bytes)?;
    Ok(None)
}

impl Archive {
    /// Every examination of it.
    ///
    /// # Errors
    /// When it cannot be read or its list is not believed.
    pub fn examinations(&mut self) -> io::Result<Vec<Entry>> {
        let size = self.0.seek(SeekFrom::End(0))?;
        let tail = self.bytes(size - tail_length(size)..size)?;
        let directory = directory(&tail, size).map_err(said)?;
        let list = self.bytes(directory.offset..directory.offset + directory.length)?;
        let found: Vec<Entry> = entries(&directory, &list).map_err(said)?.examinations().cloned().collect();
        if found.is_empty() { Err(said(ArchiveFault::Empty)) } else { Ok(found) }
    }

    /// One of them.
    ///
    /// # Errors
    /// When it cannot be read.
    pub fn examination(&mut self, entry: &Entry) -> io::Result<Record> {
        let bytes = self.bytes(entry.span())?;
        examination(entry, &bytes).map_err(said)
    }

    fn bytes(&mut self, range: Range<u64>) -> io::Result<Vec<u8>> {
        self.0.seek(SeekFrom::Start(range.start))?;
        let mut bytes = Vec::new();
        self.0.by_ref().take(range.end.saturating_sub(range.start)).read_to_end(&mut bytes)?;
        Ok(bytes)
    }
}

#[expect(clippy::needless_pass_by_value, reason = "it stands where a fault is handed on")]
fn said(fault: ArchiveFault) -> io::Error {
    io::Error::other(format!("{fault}. {}", fault.hint()))
}
