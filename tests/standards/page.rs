//! The published page of limits: that of the code, whole, and with nothing in it that the content policy forbids.

use std::fs;
use std::path::Path;

use plugwary::domain::check;
use plugwary::report::limits;
use plugwary::words::check as words;

#[test]
fn the_published_page_is_that_of_the_code() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("public/limits.html");
    let published = fs::read_to_string(path).expect("the page is published");
    let how = "cargo run --no-default-features --features schema -- limits > public/limits.html";
    assert!(published == limits(), "limits or rules have changed; publish their page with: {how}");
}

/// A check that rests on nothing would stand on no line of the page.
#[test]
fn every_fault_is_on_the_page() {
    let page = limits();
    for check in check::all() {
        let fault = words::of(check.code).wrong.replace('\'', "&#39;");
        let (first, rest) = fault.split_at(fault.chars().next().map_or(0, char::len_utf8));
        let capital = first.to_uppercase() + rest;
        assert!(page.contains(&fault) || page.contains(&capital), "{}: {fault}", check.code);
    }
}

#[test]
fn nothing_on_the_page_runs_or_comes_from_elsewhere() {
    let page = limits();
    for foreign in ["<script", "http://", "https://", "onclick", "<table", "<img"] {
        assert!(!page.contains(foreign), "the page has {foreign}");
    }
    assert!(page.contains(r#"<a href="./">"#), "the page leads back to the app");
}
