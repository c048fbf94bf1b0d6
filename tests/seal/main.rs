//! The seal: an untouched page is told from a changed one, wherever it was changed, and what was changed is named.

#![expect(clippy::expect_used, reason = "a test that cannot lay out its page must stop")]

mod again;
mod changed;
mod exchanged;
mod keys;
mod long;
mod untouched;

use std::fs;
use std::path::Path;

use plugwary::record::{Record, read};
use plugwary::report::page_sealed_by;
use plugwary::seal::{Checked, Part, PublicKey, State, attach, check, sign, statement};

/// A secret key that is none: everybody can read it here.
const SECRET: [u8; 32] = [7; 32];

/// When the pages here are sealed.
const SEALED: &str = "2026-11-24T10:30:00Z";

/// The message "abc" and its digest (FIPS 180-4, example of SHA-256 with one block) stand in for a photo.
const ABC: (&str, &[u8]) = ("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", b"abc");

fn key() -> PublicKey {
    PublicKey::of(&SECRET)
}

/// A lead that came in a parcel, with a chain of three entries and a photo of the parcel.
fn record() -> Record {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/record/cases/parcel-lead.json");
    read(&fs::read_to_string(path).expect("the case is there")).expect("the case is an examination")
}

/// Its page, made for the key and not sealed yet.
fn page() -> String {
    page_sealed_by(&record(), &[(ABC.0.to_owned(), ABC.1.to_vec())], &key())
}

/// A page sealed with a secret key.
fn sealed_with(secret: &[u8; 32], page: &str) -> String {
    let statement = statement(page, &PublicKey::of(secret), SEALED).expect("the page is made for the key");
    attach(page, &statement, &sign(secret, &statement)).expect("they belong together")
}

/// A page made for the key, sealed.
fn sealed(page: &str) -> String {
    sealed_with(&SECRET, page)
}

/// What a look at a text finds.
fn looked(text: &str) -> Checked {
    check(text.as_bytes())
}

/// The parts that are not as they were sealed.
#[track_caller]
fn parts(checked: &Checked) -> &[Part] {
    let State::Altered(parts) = &checked.state else { unreachable!("{:?}", checked.state) };
    assert!(!parts.is_empty());
    parts
}
