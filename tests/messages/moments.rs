//! Moments as a person reads them, and the names of samples that nobody named.

use plugwary::record::{Record, read};
use plugwary::words::moment::moment;
use plugwary::words::{mark, report};

#[test]
fn a_moment_names_its_month_and_its_zone() {
    for (kept, said) in [
        ("2026-11-25T02:43:00Z", "25 November 2026, 02:43 UTC"),
        ("2026-05-02T11:04:00.125Z", "2 May 2026, 11:04 UTC"),
        ("2026-10-25T01:30:00+01:00", "25 October 2026, 01:30 UTC+01:00"),
        ("2027-01-01T00:00:00-00:30", "1 January 2027, 00:00 UTC−00:30"),
        ("2026-04-06t10:05:00+00:00", "6 April 2026, 10:05 UTC"),
        ("2026-12-31T23:59:60Z", "31 December 2026, 23:59 UTC"),
    ] {
        assert_eq!(moment(kept), said);
    }
}

#[test]
fn what_is_no_moment_stays_as_it_is() {
    for text in ["", "yesterday", "2026-13-01T00:00:00Z", "2026-00-01T00:00:00Z", "2026-11-25"] {
        assert_eq!(moment(text), text);
    }
}

#[test]
fn a_file_that_says_no_times_names_none() {
    assert_eq!(report::when("", "", "2026-11"), "Judged by edition 2026-11 of Plugwary’s rules.");
    let begun = report::when("2026-11-25T02:43:00Z", "", "2026-11");
    assert_eq!(begun, "Begun 25 November 2026, 02:43 UTC. Judged by edition 2026-11 of Plugwary’s rules.");
    let changed = report::when("", "2026-11-25T02:43:00Z", "2026-11");
    assert_eq!(changed, "Last changed 25 November 2026, 02:43 UTC. Judged by edition 2026-11 of Plugwary’s rules.");
    assert_eq!(report::photo_of("", "ab"), "Photo. SHA-256 ab");
}

fn unnamed(more: &str) -> Record {
    let text = format!(
        r#"{{ "format": "plugwary-examination", "version": 1, "equipment": "eyes"{more}, "sample": {{ "kind": "cord-set", "market": "northern-ireland" }} }}"#
    );
    read(&text).expect("it is an examination")
}

#[test]
fn a_sample_that_nobody_named_is_told_from_another() {
    let from = |origin: &str| mark::title(&unnamed(&format!(r#", "origin": "{origin}""#)));
    assert_eq!(from("stall at Brackwater"), "A plug with flex (stall at Brackwater)");
    let long = from(&"é".repeat(49));
    assert_eq!(long, format!("A plug with flex ({}…)", "é".repeat(48)));
    let begun = mark::title(&unnamed(r#", "begun": "2026-11-25T02:43:00Z""#));
    assert_eq!(begun, "A plug with flex, 25 November 2026, 02:43 UTC");
    let nothing = mark::title(&unnamed(""));
    let other = mark::title(&unnamed(" "));
    assert!(nothing.starts_with("A plug with flex, ") && nothing != other, "{nothing} {other}");
    assert_eq!(
        mark::what_it_is(&unnamed(r#", "origin": "a fair""#)),
        "A plug with flex (a fair), sold in Northern Ireland."
    );
}
