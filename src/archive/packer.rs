//! Everything out: examinations and photos one after the other, then the tables and what the archive is.

use std::collections::BTreeSet;

use super::deflated::Deflated;
use super::{ArchiveFault, Name, Writer};
use crate::collection::{Seen, Table};
use crate::record::{self, Photo};
use crate::words::archive as words;

/// An archive in the making. Each call gives the next bytes; the same samples in the same order give the same bytes.
///
/// What is kept meanwhile is the list of files and the tables, packed.
pub struct Packer {
    zip: Writer,
    tables: [(Table, Deflated); 3],
    samples: usize,
    wanted: BTreeSet<String>,
    packed: BTreeSet<String>,
    latest: String,
}

impl Default for Packer {
    fn default() -> Self {
        Self::new()
    }
}

impl Packer {
    /// An empty archive.
    pub fn new() -> Self {
        let tables = [Table::Samples, Table::Readings, Table::Findings].map(|table| {
            let mut deflated = Deflated::new();
            deflated.add(table.head().as_bytes());
            (table, deflated)
        });
        Self {
            zip: Writer::new(),
            tables,
            samples: 0,
            wanted: BTreeSet::new(),
            packed: BTreeSet::new(),
            latest: String::new(),
        }
    }

    /// The next bytes: an examination. Each is put in once.
    ///
    /// # Errors
    /// When the archive would become too large.
    pub fn examination(&mut self, seen: Seen) -> Result<Vec<u8>, ArchiveFault> {
        let record = seen.record;
        let bytes =
            self.zip.add_text(&Name::Examination(record.id.clone()), &record.changed, &record::write(record))?;
        for (table, deflated) in &mut self.tables {
            deflated.add(table.rows(seen).as_bytes());
        }
        self.samples += 1;
        self.wanted.extend(record.photos.iter().map(|photo| photo.sha256.clone()));
        if record.changed > self.latest {
            self.latest.clone_from(&record.changed);
        }
        Ok(bytes)
    }

    /// The next bytes: a photo; none where it is in the archive already, since several samples may share one.
    ///
    /// # Errors
    /// When the bytes are not those of the photo, or the archive would become too large.
    pub fn photo(&mut self, photo: &Photo, bytes: &[u8]) -> Result<Vec<u8>, ArchiveFault> {
        if self.packed.contains(&photo.sha256) {
            return Ok(Vec::new());
        }
        let name = Name::of_photo(photo);
        if !photo.is_of(bytes) {
            return Err(ArchiveFault::PhotoChanged(name));
        }
        let written = self.zip.add(&name, &photo.taken, bytes)?;
        self.packed.insert(photo.sha256.clone());
        Ok(written)
    }

    /// The last bytes: the tables, what the archive is, and the list of its files.
    ///
    /// # Errors
    /// When the archive would become too large.
    pub fn finish(mut self) -> Result<Vec<u8>, ArchiveFault> {
        let missing = self.wanted.difference(&self.packed).count();
        let mut bytes = Vec::new();
        for (table, deflated) in self.tables {
            bytes.extend(self.zip.add_packed(&Name::of_table(table), &self.latest, &deflated.finish())?);
        }
        let readme = words::readme(self.samples, self.packed.len(), missing);
        bytes.extend(self.zip.add_text(&Name::Readme, &self.latest, &readme)?);
        bytes.extend(self.zip.finish()?);
        Ok(bytes)
    }
}
