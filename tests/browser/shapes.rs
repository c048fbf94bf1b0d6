//! Times and ids have the shape that a record asks for.

use std::collections::BTreeSet;

use js_sys::Date;
use plugwary::screens::platform::{clock, ids};
use wasm_bindgen_test::wasm_bindgen_test;

#[wasm_bindgen_test]
fn now_is_the_browsers_now_to_the_second() {
    let before = Date::now();
    let now = clock::now();
    let after = Date::now();
    let read = Date::parse(&now);
    assert!(before - 1000.0 < read && read <= after, "{now}");
    assert_eq!(now.len(), "2026-03-01T09:30:00+00:00".len(), "{now}");
}

#[wasm_bindgen_test]
fn clock_shows_its_zone() {
    // A JavaScript offset counts minutes behind UTC: India -330, Newfoundland in winter 210, Britain in summer -60.
    assert_eq!(clock::rfc_3339(0.0, 0.0), "1970-01-01T00:00:00+00:00");
    assert_eq!(clock::rfc_3339(0.0, -330.0), "1970-01-01T05:30:00+05:30");
    assert_eq!(clock::rfc_3339(0.0, 210.0), "1969-12-31T20:30:00-03:30");
    assert_eq!(clock::rfc_3339(999.0, -60.0), "1970-01-01T01:00:00+01:00");
}

#[wasm_bindgen_test]
fn ids_are_hexadecimal_and_differ() {
    let ids: BTreeSet<String> = std::iter::repeat_with(ids::fresh).take(1000).collect();
    assert_eq!(ids.len(), 1000);
    for id in ids {
        assert_eq!(id.len(), 32, "{id}");
        assert!(id.bytes().all(|digit| matches!(digit, b'0'..=b'9' | b'a'..=b'f')), "{id}");
    }
}
