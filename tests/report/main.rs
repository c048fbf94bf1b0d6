//! The file to show, as a stranger gets it: every case as a page, left in the target folder to be looked at.

#![expect(clippy::expect_used, reason = "a test that cannot read its cases must stop")]

mod beside;
mod order;
mod origin;
mod pictures;
mod plug_face;
mod reading;
mod risk;

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use plugwary::record::{Record, read};
use plugwary::report::page;

/// Every case by name.
fn records() -> BTreeMap<String, Record> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/examinations/cases");
    let files = fs::read_dir(folder).expect("the cases are there");
    files
        .map(|file| {
            let path = file.expect("the entry can be read").path();
            let name = path.file_stem().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
            (name, read(&fs::read_to_string(path).expect("the case is text")).expect("the case is an examination"))
        })
        .collect()
}

/// Every case as a page, by name; each is left in the target folder, so that it can be looked at in a browser.
fn pages() -> BTreeMap<String, String> {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("files");
    fs::create_dir_all(&folder).expect("the target folder takes files");
    let pages: BTreeMap<String, String> =
        records().iter().map(|(name, record)| (name.clone(), page(record, &[]))).collect();
    for (name, page) in &pages {
        fs::write(folder.join(format!("{name}.html")), page).expect("the target folder takes files");
    }
    pages
}

/// What a page shows, without what it carries for programs.
fn shown(page: &str) -> &str {
    let from = page.find("<body>").expect("the page has a body");
    let to = page.find("<script").expect("the page carries the examination");
    page.get(from..to).expect("the body comes first")
}
