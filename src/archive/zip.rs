//! The bytes of a zip archive as they are made, one file after the other, with no way back (PKWARE APPNOTE 6.3.10).
//!
//! Sizes and checksums stand before the bytes they speak of, where every program finds them. The plain form holds 4 GiB and 65,534
//! files; more is refused.

use super::deflated::{Deflated, Packed};
use super::{ArchiveFault, Name, moment};

/// Local file header (APPNOTE 4.3.7).
pub const LOCAL: u32 = 0x0403_4b50;
/// Central directory header (APPNOTE 4.3.12).
pub const CENTRAL: u32 = 0x0201_4b50;
/// End of central directory record (APPNOTE 4.3.16).
pub const END: u32 = 0x0605_4b50;
/// Compression method: as it is (APPNOTE 4.4.5).
pub const STORED: u16 = 0;
/// Compression method: deflated.
pub const DEFLATED: u16 = 8;
/// The most files; one more would mean that the number stands elsewhere (APPNOTE 4.4.1.4).
pub const MOST: usize = 65_534;
/// What a program must know to take a file out: deflate (APPNOTE 4.4.3.2).
const NEEDED: u16 = 20;

/// A zip archive in the making.
#[derive(Debug, Default)]
pub struct Writer {
    directory: Vec<u8>,
    files: u16,
    at: u64,
}

impl Writer {
    /// An empty archive.
    pub fn new() -> Self {
        Self::default()
    }

    /// The next bytes of the archive: a file as it is.
    ///
    /// # Errors
    /// When the archive would become too large; it stands as it was before.
    pub fn add(&mut self, name: &Name, changed: &str, bytes: &[u8]) -> Result<Vec<u8>, ArchiveFault> {
        self.put(name, changed, Content { method: STORED, bytes, crc: crc32fast::hash(bytes), size: bytes.len() })
    }

    /// The next bytes of the archive: a text, packed.
    ///
    /// # Errors
    /// As [`Writer::add`].
    pub fn add_text(&mut self, name: &Name, changed: &str, text: &str) -> Result<Vec<u8>, ArchiveFault> {
        let mut deflated = Deflated::new();
        deflated.add(text.as_bytes());
        self.add_packed(name, changed, &deflated.finish())
    }

    /// The next bytes of the archive: a file that is packed already.
    pub(super) fn add_packed(&mut self, name: &Name, changed: &str, packed: &Packed) -> Result<Vec<u8>, ArchiveFault> {
        let Packed { bytes, crc, size } = packed;
        self.put(name, changed, Content { method: DEFLATED, bytes, crc: *crc, size: *size })
    }

    /// The last bytes of the archive: the list of its files.
    ///
    /// # Errors
    /// As [`Writer::add`].
    pub fn finish(self) -> Result<Vec<u8>, ArchiveFault> {
        let (at, length) = (small(self.at)?, small(u64_of(self.directory.len()))?);
        let mut bytes = self.directory;
        bytes.extend(END.to_le_bytes());
        // This part of the archive, and the one where the list begins.
        bytes.extend([0; 4]);
        bytes.extend(self.files.to_le_bytes());
        bytes.extend(self.files.to_le_bytes());
        bytes.extend(length.to_le_bytes());
        bytes.extend(at.to_le_bytes());
        // No comment.
        bytes.extend([0; 2]);
        Ok(bytes)
    }

    fn put(&mut self, name: &Name, changed: &str, content: Content) -> Result<Vec<u8>, ArchiveFault> {
        let spelled = name.to_string();
        let (time, date) = moment::dos(changed);
        let at = small(self.at)?;
        let name_length = u16::try_from(spelled.len()).ok().ok_or(ArchiveFault::TooLarge)?;
        // What both headers have in common: version needed, flags, method, time, date, checksum, sizes, length of name and of extras.
        let mut common = Vec::new();
        for number in [NEEDED, 0, content.method, time, date] {
            common.extend(number.to_le_bytes());
        }
        for number in [content.crc, small(u64_of(content.bytes.len()))?, small(u64_of(content.size))?] {
            common.extend(number.to_le_bytes());
        }
        common.extend(name_length.to_le_bytes());
        common.extend([0; 2]);

        let mut bytes = Vec::with_capacity(content.bytes.len() + 128);
        bytes.extend(LOCAL.to_le_bytes());
        bytes.extend(&common);
        bytes.extend(spelled.as_bytes());
        bytes.extend(content.bytes);
        let end = self.at + u64_of(bytes.len());
        let files = self.files.checked_add(1).filter(|files| usize::from(*files) <= MOST);
        small(end)?;
        self.files = files.ok_or(ArchiveFault::TooLarge)?;
        self.at = end;

        self.directory.extend(CENTRAL.to_le_bytes());
        self.directory.extend(NEEDED.to_le_bytes());
        self.directory.extend(&common);
        // No comment, first part of the archive, no attributes of any system.
        self.directory.extend([0; 10]);
        self.directory.extend(at.to_le_bytes());
        self.directory.extend(spelled.as_bytes());
        Ok(bytes)
    }
}

/// What is put in, as it is put in.
#[derive(Clone, Copy)]
struct Content<'a> {
    method: u16,
    bytes: &'a [u8],
    crc: u32,
    size: usize,
}

/// A number that the plain form holds; its largest one means that the number stands elsewhere (APPNOTE 4.4.1.4).
fn small(number: u64) -> Result<u32, ArchiveFault> {
    u32::try_from(number).ok().filter(|number| *number < u32::MAX).ok_or(ArchiveFault::TooLarge)
}

fn u64_of(length: usize) -> u64 {
    u64::try_from(length).unwrap_or(u64::MAX)
}
