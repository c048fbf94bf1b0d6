//! Archives that somebody made to do harm, or that were damaged on the way: one sentence each, and no more.

use plugwary::archive::{ArchiveFault, Name, entries};

use crate::record;
use crate::zip::{listed, opened, packed, photographed, unpacked};

/// A small archive, in which every sort of file stands once.
fn small() -> Vec<u8> {
    let (photo, bytes) = photographed(8, 40);
    let mut record = record(9, "lead", &[]);
    record.photos = vec![photo.clone()];
    packed(&[record], &[(photo, bytes)])
}

/// A local header, a name, bytes: written here by hand, after APPNOTE 4.3.7 and 4.3.12.
struct Crafted<'a> {
    name: &'a [u8],
    bytes: &'a [u8],
    method: u16,
    flags: u16,
    packed: u32,
    size: u32,
    offset: Option<u32>,
}

impl<'a> Crafted<'a> {
    fn stored(name: &'a [u8], bytes: &'a [u8]) -> Self {
        let length = long(bytes.len());
        Self { name, bytes, method: 0, flags: 0, packed: length, size: length, offset: None }
    }
}

fn long(number: usize) -> u32 {
    u32::try_from(number).expect("it is short")
}

fn short(number: usize) -> [u8; 2] {
    u16::try_from(number).expect("it is short").to_le_bytes()
}

fn crafted(files: &[Crafted]) -> Vec<u8> {
    let (mut archive, mut list) = (Vec::new(), Vec::new());
    for file in files {
        let crc = crc32fast::hash(file.bytes);
        let offset = file.offset.unwrap_or(long(archive.len()));
        let mut common = Vec::new();
        for number in [20, file.flags, file.method, 0, 0x21] {
            common.extend(number.to_le_bytes());
        }
        for number in [crc, file.packed, file.size] {
            common.extend(number.to_le_bytes());
        }
        common.extend(short(file.name.len()));
        common.extend([0, 0]);
        archive.extend(b"PK\x03\x04");
        archive.extend(&common);
        archive.extend(file.name);
        archive.extend(file.bytes);
        list.extend(b"PK\x01\x02\x14\x00");
        list.extend(&common);
        list.extend([0; 10]);
        list.extend(offset.to_le_bytes());
        list.extend(file.name);
    }
    let at = archive.len();
    archive.extend(&list);
    archive.extend(b"PK\x05\x06\0\0\0\0");
    archive.extend([short(files.len()), short(files.len())].concat());
    archive.extend(long(list.len()).to_le_bytes());
    archive.extend(long(at).to_le_bytes());
    archive.extend([0, 0]);
    archive
}

fn photo_name() -> Vec<u8> {
    format!("photos/{}.jpg", "a".repeat(64)).into_bytes()
}

#[test]
fn an_archive_cut_short_anywhere_is_refused_in_a_sentence() {
    let archive = small();
    assert!(unpacked(&archive).is_ok());
    for length in 0..archive.len() {
        let fault = unpacked(&archive[..length]).expect_err("a part of an archive is none");
        assert!(!fault.to_string().is_empty() && fault.hint().ends_with('.'), "{length}");
    }
}

#[test]
fn a_changed_byte_is_refused_or_changes_nothing() {
    let archive = small();
    let whole = unpacked(&archive).expect("it is taken back");
    // Every byte of the list, and one in seven of what it lists.
    for at in (0..archive.len()).filter(|at| at % 7 == 0 || at + 800 > archive.len()) {
        let mut changed = archive.clone();
        changed[at] ^= 0x40;
        // A date, a version or an attribute may be any; a file under another name is not ours.
        if let Ok((records, photos)) = unpacked(&changed) {
            assert!(records.iter().all(|record| whole.0.contains(record)), "byte {at}");
            assert!(photos.iter().all(|photo| whole.1.contains(photo)), "byte {at}");
        }
    }
}

#[test]
fn what_is_no_archive_is_refused() {
    for bytes in [&b""[..], b"PK", b"PK\x05\x06", &[0; 100], &vec![b'P'; 70_000]] {
        assert_eq!(listed(bytes).map(|listing| listing.others), Err(ArchiveFault::NoDirectory));
    }
}

#[test]
fn names_that_lead_elsewhere_are_never_looked_at() {
    let json = format!("examinations/{}.json", "0".repeat(32));
    let upper = format!("examinations/{}.json", "A".repeat(32));
    let names: [&[u8]; 11] = [
        b"../readme.txt",
        b"/readme.txt",
        b"C:\\readme.txt",
        b"examinations/../readme.txt",
        b"examinations/",
        b"readme.txt\0",
        b"README.TXT",
        b"__MACOSX/readme.txt",
        b"\xff\xfe",
        b"",
        upper.as_bytes(),
    ];
    let mut files: Vec<Crafted> = names.iter().map(|name| Crafted::stored(name, b"x")).collect();
    files.push(Crafted::stored(json.as_bytes(), b"{}"));
    let listing = listed(&crafted(&files)).expect("the list is sound");
    assert_eq!(listing.others, names.len());
    assert_eq!(listing.entries.len(), 1);
}

#[test]
fn a_name_that_stands_twice_is_refused() {
    let files = [Crafted::stored(b"readme.txt", b"one"), Crafted::stored(b"readme.txt", b"two")];
    assert_eq!(listed(&crafted(&files)), Err(ArchiveFault::Twice(Name::Readme)));
}

#[test]
fn files_that_lie_over_each_other_are_refused() {
    let name = photo_name();
    let over = |offset| {
        let first = Crafted::stored(b"readme.txt", b"some bytes that both would like to have");
        let second = Crafted { offset: Some(offset), ..Crafted::stored(&name, b"x") };
        listed(&crafted(&[first, second]))
    };
    assert_eq!(over(0), Err(ArchiveFault::Overlap));
    assert_eq!(over(40), Err(ArchiveFault::Overlap));
    // Into the list, and beyond the end.
    assert_eq!(over(190), Err(ArchiveFault::Overlap));
    assert_eq!(over(0xffff_fff0), Err(ArchiveFault::Overlap));
}

#[test]
fn a_size_that_no_file_has_is_refused_before_anything_is_unpacked() {
    let name = photo_name();
    let (Some(parsed), deflated) = (Name::parse(&name), 8) else { unreachable!("it is a name of ours") };
    let huge = Crafted { method: deflated, size: 0xffff_fffe, ..Crafted::stored(&name, b"x") };
    assert_eq!(listed(&crafted(&[huge])), Err(ArchiveFault::EntryTooLarge(parsed)));
}

#[test]
fn bytes_that_unpack_to_more_than_the_list_says_are_damaged() {
    let name = photo_name();
    let bomb = miniz_oxide::deflate::compress_to_vec(&vec![0; 10_000_000], 9);
    let packed = long(bomb.len());
    let file = Crafted { method: 8, packed, size: 1000, ..Crafted::stored(&name, &bomb) };
    let archive = crafted(&[file]);
    let entry = listed(&archive).expect("the list is sound").entries.remove(0);
    assert_eq!(opened(&archive, &entry), Err(ArchiveFault::EntryDamaged(entry.name.clone())));
}

#[test]
fn a_wrong_checksum_and_a_locked_file_are_refused() {
    let name = photo_name();
    let mut archive = crafted(&[Crafted::stored(&name, b"bytes")]);
    let at = archive.windows(5).position(|window| window == b"bytes").expect("the bytes are there");
    archive[at] = b'B';
    let entry = listed(&archive).expect("the list is sound").entries.remove(0);
    assert_eq!(opened(&archive, &entry), Err(ArchiveFault::EntryDamaged(entry.name.clone())));
    for (flags, method) in [(1, 0), (0, 12), (0x2000, 0)] {
        let locked = Crafted { method, flags, ..Crafted::stored(&name, b"bytes") };
        assert_eq!(listed(&crafted(&[locked])), Err(ArchiveFault::EntryLocked(entry.name.clone())));
    }
}

#[test]
fn a_photo_and_an_examination_must_be_what_their_names_say() {
    let name = photo_name();
    let parsed = Name::parse(&name).expect("it is a name of ours");
    assert_eq!(unpacked(&crafted(&[Crafted::stored(&name, b"bytes")])), Err(ArchiveFault::PhotoChanged(parsed)));
    let json = plugwary::record::write(&record(1, "", &[]));
    let other = format!("examinations/{:032x}.json", 2);
    let parsed = Name::parse(other.as_bytes()).expect("it is a name of ours");
    let archive = crafted(&[Crafted::stored(other.as_bytes(), json.as_bytes())]);
    assert_eq!(unpacked(&archive), Err(ArchiveFault::Misnamed(parsed)));
    let archive = crafted(&[Crafted::stored(other.as_bytes(), b"\xff")]);
    assert!(matches!(unpacked(&archive), Err(ArchiveFault::Examination { .. })));
}

#[test]
fn a_list_that_says_more_or_less_than_there_is_is_refused() {
    let archive = crafted(&[Crafted::stored(b"readme.txt", b"x")]);
    let end = archive.len() - 22;
    // Number of files, length of the list, where it begins, number of this part.
    for (at, value) in [(8, 2), (10, 2), (12, 1), (16, 1), (4, 1)] {
        let mut changed = archive.clone();
        changed[end + at] ^= value;
        assert!(listed(&changed).is_err(), "byte {at}");
    }
    let mut large = archive.clone();
    large[end + 8..end + 12].fill(0xff);
    assert_eq!(listed(&large), Err(ArchiveFault::TooLarge));
    let directory = plugwary::archive::directory(&archive, u64::try_from(archive.len()).expect("it is short"))
        .expect("the list is there");
    assert_eq!(entries(&directory, b""), Err(ArchiveFault::DirectoryDamaged));
}

#[test]
fn a_comment_at_the_end_is_passed_over() {
    let mut archive = small();
    let end = archive.len();
    archive[end - 2..].copy_from_slice(&5_u16.to_le_bytes());
    archive.extend(b"hello");
    assert!(unpacked(&archive).is_ok());
}
