//! What goes out: the same bytes each time, read back whole by ourselves and by another program's reader.

use std::collections::BTreeMap;

use miniz_oxide::inflate::decompress_to_vec;
use plugwary::archive::{ArchiveFault, Name, Packer};
use plugwary::collection::{Table, csv};
use plugwary::record::{Record, write};
use proptest::prelude::*;
use rawzip::{CompressionMethod, ZipArchive};

use crate::zip::{digest, listed, packed, photographed, unpacked};
use crate::{Shelf, cases, record};

/// What somebody else's reader makes of an archive: bytes by name, each with its checksum verified.
fn read_by_others(archive: &[u8]) -> BTreeMap<String, Vec<u8>> {
    let zip = ZipArchive::from_slice(archive).expect("it is a zip archive");
    let mut files = BTreeMap::new();
    for entry in zip.entries() {
        let entry = entry.expect("the list can be read");
        let name = String::from_utf8(entry.file_path().as_ref().to_vec()).expect("the name is text");
        let packed = zip.get_entry(entry.wayfinder()).expect("the file is there");
        let bytes = match entry.compression_method() {
            CompressionMethod::STORE => packed.data().to_vec(),
            CompressionMethod::DEFLATE => decompress_to_vec(packed.data()).expect("it can be unpacked"),
            other => unreachable!("{other:?}"),
        };
        let verified = packed.verifying_reader(bytes.as_slice());
        std::io::copy(&mut { verified }, &mut std::io::sink()).expect("size and checksum are right");
        assert!(files.insert(name, bytes).is_none(), "a name stands twice");
    }
    files
}

fn all() -> (Vec<Record>, Vec<(plugwary::record::Photo, Vec<u8>)>) {
    let photos = vec![photographed(1, 3000), photographed(2, 70_000), photographed(3, 1)];
    let mut records: Vec<Record> = cases().into_values().collect();
    for (record, (photo, _)) in records.iter_mut().zip(photos.iter().cycle()) {
        record.photos = vec![photo.clone()];
    }
    (records, photos)
}

#[test]
fn another_reader_finds_every_file_whole() {
    let (records, photos) = all();
    let archive = packed(&records, &photos);
    let files = read_by_others(&archive);
    assert_eq!(files.len(), records.len() + 3 + 4);
    for record in &records {
        assert_eq!(files[&format!("examinations/{}.json", record.id)], write(record).as_bytes());
    }
    for (photo, bytes) in &photos {
        assert_eq!(&files[&Name::of_photo(photo).to_string()], bytes);
    }
    let shelf = Shelf::of(records);
    for (name, table) in
        [("index.csv", Table::Samples), ("readings.csv", Table::Readings), ("findings.csv", Table::Findings)]
    {
        assert_eq!(files[name], csv(table, &shelf.seen()).as_bytes(), "{name}");
    }
    let readme = String::from_utf8(files["readme.txt"].clone()).expect("it is text");
    assert!(readme.contains(&format!("{} samples that were examined, with 3 photos", shelf.seen().len())), "{readme}");
}

#[test]
fn what_went_out_comes_back() {
    let (records, photos) = all();
    let (back, carried) = unpacked(&packed(&records, &photos)).expect("it is taken back");
    assert_eq!(back, records);
    let listing = listed(&packed(&records, &photos)).expect("its list is sound");
    assert_eq!(listing.examinations().count(), records.len());
    assert_eq!(listing.photo(&photographed(9, 9).0), None);
    for (photo, bytes) in &photos {
        assert_eq!(listing.photo(photo).map(|entry| entry.name.clone()), Some(Name::of_photo(photo)));
        let found = carried.iter().find(|carried| carried.sha256 == photo.sha256).expect("the photo is there");
        assert_eq!((&found.media_type, &found.bytes), (&photo.media_type, bytes));
    }
}

#[test]
fn the_same_samples_give_the_same_bytes() {
    let (records, photos) = all();
    assert_eq!(packed(&records, &photos), packed(&records, &photos));
}

#[test]
fn a_photo_that_several_samples_share_is_packed_once_and_a_missing_one_is_told() {
    let (photo, bytes) = photographed(4, 500);
    let (gone, _) = photographed(5, 500);
    let [mut first, mut second] = [record(1, "", &[]), record(2, "", &[])];
    first.photos = vec![photo.clone(), gone];
    second.photos = vec![photo.clone()];
    let files = read_by_others(&packed(&[first, second], &[(photo, bytes)]));
    assert_eq!(files.keys().filter(|name| name.starts_with("photos/")).count(), 1);
    let readme = String::from_utf8(files["readme.txt"].clone()).expect("it is text");
    assert!(readme.contains("One photo that an examination speaks of was not on the device any more."), "{readme}");
}

#[test]
fn bytes_that_are_not_the_photo_are_not_packed() {
    let (photo, mut bytes) = photographed(6, 100);
    bytes[50] ^= 1;
    let fault = Packer::new().photo(&photo, &bytes);
    assert_eq!(fault, Err(ArchiveFault::PhotoChanged(Name::of_photo(&photo))));
}

#[test]
fn an_archive_of_nothing_is_an_archive() {
    let archive = packed(&[], &[]);
    assert_eq!(read_by_others(&archive).len(), 4);
    assert_eq!(unpacked(&archive), Ok((Vec::new(), Vec::new())));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn anything_that_somebody_typed_goes_out_and_comes_back(
        texts in proptest::collection::vec(any::<String>(), 0..6),
        photo in proptest::collection::vec(any::<u8>(), 0..300),
    ) {
        let (mut entry, _) = photographed(0, 0);
        entry.sha256 = digest(&photo);
        let mut records: Vec<Record> = texts.iter().zip(0_u8..).map(|(text, at)| record(at, text, &[])).collect();
        if let Some(first) = records.first_mut() {
            first.photos = vec![entry.clone()];
        }
        let archive = packed(&records, &[(entry, photo.clone())]);
        let (back, photos) = unpacked(&archive).expect("it is taken back");
        prop_assert!(photos.iter().all(|carried| carried.bytes == photo) && photos.len() == usize::from(!records.is_empty()));
        prop_assert_eq!(back, records);
    }
}
