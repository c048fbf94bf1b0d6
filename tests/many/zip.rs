//! Archives in the making for the tests, and read back here the way the app does it: by slices.

use plugwary::archive::{
    ArchiveFault, Entry, Listing, Name, Packer, directory, entries, examination, photo, tail_length,
};
use plugwary::domain::question::Target;
use plugwary::record::{Attached, CarriedPhoto, Photo, Record};
use sha2::{Digest, Sha256};

use crate::Shelf;

/// Bytes for a photo, invented, and its entry in a record.
pub fn photographed(seed: u8, length: usize) -> (Photo, Vec<u8>) {
    let bytes: Vec<u8> = (0..251).cycle().take(length).map(|at: u8| seed.wrapping_mul(31).wrapping_add(at)).collect();
    let photo = Photo {
        sha256: digest(&bytes),
        media_type: if seed.is_multiple_of(2) { "image/jpeg" } else { "image/webp" }.to_owned(),
        width: 4,
        height: 3,
        taken: "2026-11-24T10:15:00Z".to_owned(),
        attached: Attached::Answer { question: "plug-pattern", target: Target::Sample },
    };
    (photo, bytes)
}

/// SHA-256 in hexadecimal digits.
pub fn digest(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().fold(String::new(), |digits, byte| format!("{digits}{byte:02x}"))
}

/// An archive of these, with these photos.
pub fn packed(records: &[Record], photos: &[(Photo, Vec<u8>)]) -> Vec<u8> {
    let shelf = Shelf::of(records.to_vec());
    let mut packer = Packer::new();
    let mut bytes = Vec::new();
    for seen in shelf.seen() {
        bytes.extend(packer.examination(seen).expect("there is room"));
        for photo in &seen.record.photos {
            if let Some((photo, held)) = photos.iter().find(|(known, _)| known.sha256 == photo.sha256) {
                bytes.extend(packer.photo(photo, held).expect("the photo is what it says"));
            }
        }
    }
    bytes.extend(packer.finish().expect("there is room"));
    bytes
}

fn slice(archive: &[u8], from: u64, to: u64) -> &[u8] {
    let place = |at: u64| usize::try_from(at).expect("a place in memory").min(archive.len());
    archive.get(place(from)..place(to)).unwrap_or_default()
}

/// What an archive lists.
pub fn listed(archive: &[u8]) -> Result<Listing, ArchiveFault> {
    let size = u64::try_from(archive.len()).expect("it is in memory");
    let directory = directory(slice(archive, size - tail_length(size), size), size)?;
    entries(&directory, slice(archive, directory.offset, directory.offset + directory.length))
}

/// What an entry holds.
pub fn opened(archive: &[u8], entry: &Entry) -> Result<Vec<u8>, ArchiveFault> {
    entry.open(slice(archive, entry.span().start, entry.span().end))
}

/// Every examination and photo.
pub fn unpacked(archive: &[u8]) -> Result<(Vec<Record>, Vec<CarriedPhoto>), ArchiveFault> {
    let (mut records, mut photos) = (Vec::new(), Vec::new());
    for entry in listed(archive)?.entries {
        let bytes = slice(archive, entry.span().start, entry.span().end);
        match &entry.name {
            Name::Examination(_) => records.push(examination(&entry, bytes)?),
            Name::Photo(..) => photos.push(photo(&entry, bytes)?),
            Name::Readme | Name::Index | Name::Readings | Name::Findings => drop(opened(archive, &entry)?),
        }
    }
    Ok((records, photos))
}
