//! Makes an archive of 1,000 examinations with 2,000 invented photos of some 150 kB each, reads it back file by file, and says how large it
//! is. How much memory that takes is measured from outside:
//!
//! `cargo build --release --no-default-features --example archive-of-many`, then `/usr/bin/time -v target/release/examples/archive-of-many FILE`.

#![expect(clippy::print_stdout, reason = "what it prints is its result")]

use std::env;
use std::error::Error;
use std::fs::{self, File};
use std::io::{Read, Seek, SeekFrom, Write};
use std::ops::Range;
use std::path::Path;

use plugwary::archive::{Name, Packer, directory, entries, examination, photo, tail_length};
use plugwary::collection::Seen;
use plugwary::domain::assess::{RuleBook, assess};
use plugwary::domain::question::Target;
use plugwary::record::{Attached, Photo, read};
use sha2::{Digest, Sha256};

const SAMPLES: u32 = 1_000;
const PHOTOS_EACH: u32 = 2;
const PHOTO: usize = 150_000;

fn main() -> Result<(), Box<dyn Error>> {
    let path = env::args().nth(1).ok_or("name the file to be written")?;
    make(&path)?;
    let (records, photos) = take(&path)?;
    println!("{records} examinations and {photos} photos in {} bytes", fs::metadata(&path)?.len());
    Ok(())
}

fn make(path: &str) -> Result<(), Box<dyn Error>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/examinations/cases");
    let mut cases: Vec<_> = fs::read_dir(folder)?.map(|case| case.map(|case| case.path())).collect::<Result<_, _>>()?;
    cases.sort();
    let mut file = File::create(path)?;
    let mut packer = Packer::new();
    for (number, case) in (0..SAMPLES).zip(cases.iter().cycle()) {
        let mut record = read(&fs::read_to_string(case)?)?;
        record.id = format!("{number:032x}");
        let mut held = Vec::new();
        record.photos.clear();
        for at in 0..PHOTOS_EACH {
            let bytes = noise(number * PHOTOS_EACH + at);
            record.photos.push(Photo {
                sha256: Sha256::digest(&bytes).iter().fold(String::new(), |digits, byte| format!("{digits}{byte:02x}")),
                media_type: "image/jpeg".to_owned(),
                width: 1600,
                height: 1200,
                taken: record.changed.clone(),
                attached: Attached::Answer { question: "plug-pattern", target: Target::Sample },
            });
            held.push(bytes);
        }
        let assessment = assess(&record.examination, &RuleBook::CURRENT);
        file.write_all(&packer.examination(Seen { record: &record, assessment: &assessment })?)?;
        for (photo, bytes) in record.photos.iter().zip(&held) {
            file.write_all(&packer.photo(photo, bytes)?)?;
        }
    }
    file.write_all(&packer.finish()?)?;
    Ok(())
}

/// Bytes that no packing makes smaller, as those of a photo are.
fn noise(seed: u32) -> Vec<u8> {
    let mut state = seed.wrapping_mul(2_654_435_761) | 1;
    let step = |_| {
        // Marsaglia's xorshift of 32 bits.
        state ^= state << 13;
        state ^= state >> 17;
        state ^= state << 5;
        state.to_le_bytes()
    };
    (0..PHOTO / 4).flat_map(step).collect()
}

fn take(path: &str) -> Result<(usize, usize), Box<dyn Error>> {
    let mut file = File::open(path)?;
    let size = file.metadata()?.len();
    let tail = slice(&mut file, size - tail_length(size)..size)?;
    let found = directory(&tail, size)?;
    let list = slice(&mut file, found.offset..found.offset + found.length)?;
    let (mut records, mut photos) = (0, 0);
    for entry in entries(&found, &list)?.entries {
        match entry.name {
            Name::Examination(_) => {
                examination(&entry, &slice(&mut file, entry.span())?)?;
                records += 1;
            }
            Name::Photo(..) => {
                photo(&entry, &slice(&mut file, entry.span())?)?;
                photos += 1;
            }
            Name::Readme | Name::Index | Name::Readings | Name::Findings => {}
        }
    }
    Ok((records, photos))
}

fn slice(file: &mut File, range: Range<u64>) -> std::io::Result<Vec<u8>> {
    file.seek(SeekFrom::Start(range.start))?;
    let mut bytes = Vec::new();
    file.take(range.end - range.start).read_to_end(&mut bytes)?;
    Ok(bytes)
}
