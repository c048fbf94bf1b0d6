//! What is said of many samples: two beside each other, those of one product, and the archive.

use core::fmt::Write as _;

use plugwary::archive::{ArchiveFault, Name, PhotoKind, Tally};
use plugwary::collection::{Broken, Product, SameBy};
use plugwary::domain::comparison::compare;
use plugwary::domain::sample::Kind;
use plugwary::record::{RecordFault, read};
use plugwary::words::{archive, collection, comparison};

use crate::accepted;

fn put(told: &mut String, line: &str) {
    writeln!(told, "{line}").expect("a text takes any line");
}

#[test]
fn a_sample_beside_a_known_good_reads_as_accepted() {
    let case = |name: &str| {
        let file = format!("{}/tests/examinations/cases/{name}.json", env!("CARGO_MANIFEST_DIR"));
        read(&std::fs::read_to_string(file).expect("the case is there")).expect("it is an examination").examination
    };
    let (sample, reference) = (case("hair-thin-lead"), case("sound-lead-meters"));
    let compared = compare(&sample, &reference);
    let mut told = String::new();
    put(&mut told, &comparison::summary(&compared));
    put(&mut told, &comparison::how());
    for caution in comparison::cautions(&sample, &reference) {
        put(&mut told, caution);
    }
    for line in &compared {
        put(&mut told, &format!("{}: {}", line.question.id, comparison::sentence(line, Kind::ExtensionLead)));
    }
    accepted("beside", &told);
}

#[test]
fn what_samples_of_a_product_share_reads_as_accepted() {
    let mut product = Product {
        kind: Kind::ExtensionLead,
        same_by: SameBy::Barcode("2000000000015".to_owned()),
        samples: vec![0, 2, 5],
        in_all: vec!["fuse-missing"],
        in_some: vec![
            Broken { code: "sleeve-missing", broke: 1, looked: 3 },
            Broken { code: "earth-open", broke: 1, looked: 2 },
        ],
    };
    let mut told = String::new();
    let mut tell = |product: &Product| {
        put(&mut told, &collection::same_by(product));
        for line in collection::in_common(product) {
            put(&mut told, &format!("  {line}"));
        }
    };
    tell(&product);
    product.samples.truncate(2);
    product.same_by = SameBy::Title("white lead".to_owned());
    tell(&product);
    product.in_all.clear();
    product.in_some.clear();
    tell(&product);
    for (n, of) in [(3, 3), (1, 3), (2, 3)] {
        put(&mut told, &collection::shown(n, of));
    }
    accepted("products", &told);
}

#[test]
fn the_archive_reads_as_accepted() {
    let name = || Name::Photo("ab".repeat(32), PhotoKind::Jpeg);
    let mut told = archive::readme(1, 2, 0);
    told += &archive::readme(12, 1, 3);
    let tally = Tally { new: 2, same: 1, less: 1, more: 1, beside: 1, unread: 1, photos: 4, photos_lost: 1, others: 2 };
    for line in archive::taken_back(&tally) {
        put(&mut told, &line);
    }
    for fault in [
        ArchiveFault::NoDirectory,
        ArchiveFault::DirectoryDamaged,
        ArchiveFault::Empty,
        ArchiveFault::TooLarge,
        ArchiveFault::Twice(Name::Readme),
        ArchiveFault::Overlap,
        ArchiveFault::EntryTooLarge(name()),
        ArchiveFault::EntryLocked(name()),
        ArchiveFault::EntryDamaged(name()),
        ArchiveFault::PhotoChanged(name()),
        ArchiveFault::Misnamed(Name::Examination("0".repeat(32))),
        ArchiveFault::Examination { name: Name::Examination("0".repeat(32)), fault: RecordFault::Foreign },
    ] {
        put(&mut told, &archive::refused(&fault, &fault.hint()));
    }
    accepted("archive", &told);
}
