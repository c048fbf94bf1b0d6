//! What is made for printing, read back by programs of others: what it says, its faces, its photos, its square code.
//!
//! Those that need poppler or zbar are there with the feature `readers`, as `cargo verify paper` has it.

#![expect(clippy::expect_used, reason = "a test that cannot read its cases must stop")]

#[cfg(feature = "readers")]
mod label;
#[cfg(feature = "readers")]
mod origin;
#[cfg(feature = "readers")]
mod photos;
#[cfg(feature = "readers")]
mod reader;
mod same;
#[cfg(feature = "readers")]
mod words;

use std::fs;
use std::path::Path;

use plugwary::record::{Record, read};

/// Every case by name.
fn records() -> Vec<(String, Record)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/examinations/cases");
    let files = fs::read_dir(folder).expect("the cases are there");
    let mut paths: Vec<_> = files.map(|file| file.expect("the entry can be read").path()).collect();
    paths.sort();
    paths
        .into_iter()
        .map(|path| {
            let name = path.file_stem().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
            (name, read(&fs::read_to_string(path).expect("the case is text")).expect("the case is an examination"))
        })
        .collect()
}

/// One case.
fn record(wanted: &str) -> Record {
    records().into_iter().find(|(name, _)| name == wanted).expect("the case is there").1
}
