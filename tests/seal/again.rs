//! The examination of a file judged again: the same, or what has changed, in codes and in sentences.

use plugwary::seal::{Again, Change, State, checked_line};
use serde_json::Value;

use crate::{looked, page, sealed};

/// What judging a page again finds whose verdict line was written by other rules, or by somebody else; it is sealed with that line.
fn again(from: &str, to: &str) -> (Vec<Change>, String) {
    let page = page();
    let (before, line) = page.split_once("id=\"plugwary-verdict\">").expect("the page carries a verdict");
    assert!(line.contains(from), "{from} in {line}");
    let checked = looked(&sealed(&format!("{before}id=\"plugwary-verdict\">{}", line.replacen(from, to, 1))));
    assert_eq!(checked.state, State::Untouched, "it was sealed so");
    let line = checked_line(&checked, None);
    match checked.again {
        Some(Again::Changed { changes, .. }) => (changes, line),
        again => unreachable!("{again:?}"),
    }
}

#[test]
fn another_verdict_is_told() {
    let (changes, line) = again("\"verdict\":\"keep-away\"", "\"verdict\":\"nothing-wrong-seen\"");
    assert_eq!(changes, [Change::Verdict { was: "nothing-wrong-seen".to_owned(), now: "keep-away".to_owned() }]);
    assert!(line.contains("The verdict was “nothing wrong seen”, and is now “keep away”."), "{line}");
    assert!(line.contains("\"judged_again\":\"changed\""), "{line}");
}

#[test]
fn another_outcome_is_told_by_what_the_check_looks_for() {
    let found = "{\"code\":\"fuse-missing\",\"outcome\":\"nonconforming\"";
    let (changes, line) = again(found, &found.replace("nonconforming", "conforms"));
    let (was, now) = ("conforms".to_owned(), "nonconforming".to_owned());
    assert_eq!(changes, [Change::Outcome { code: "fuse-missing".to_owned(), was, now }]);
    assert!(line.contains(": keeps the rule in the file, now breaks the rule."), "{line}");
}

#[test]
fn a_check_that_is_new_or_not_made_any_more_is_told() {
    let (changes, line) = again("\"code\":\"fuse-missing\"", "\"code\":\"fuse-smells\"");
    let (added, gone) = ("fuse-missing".to_owned(), "fuse-smells".to_owned());
    let outcome = "nonconforming".to_owned();
    assert_eq!(
        changes,
        [Change::Added { code: added, now: outcome.clone() }, Change::Gone { code: gone, was: outcome }]
    );
    assert!(line.contains("“fuse-smells”: breaks the rule in the file, not judged any more."), "{line}");
}

#[test]
fn a_check_that_nobody_made_then_and_somebody_made_now_is_told() {
    let (changes, _) = again("\"not_looked_at\":[", "\"not_looked_at\":[\"not-a-check\",");
    assert_eq!(changes, [Change::Gone { code: "not-a-check".to_owned(), was: "not-examined".to_owned() }]);
}

#[test]
fn other_numbers_and_all_that_stands_beside_the_findings_are_told() {
    let found = "{\"code\":\"fuse-missing\",\"outcome\":\"nonconforming\",\"severity\":\"danger\"";
    let (changes, _) = again(found, &found.replace("danger", "breach"));
    assert_eq!(changes, [Change::Numbers { code: "fuse-missing".to_owned() }]);
    let (changes, line) = again("\"outside_only\":", "\"inside_only\":");
    assert_eq!(changes, [Change::Rest]);
    assert!(line.contains("such as what to look at next"), "{line}");
}

#[test]
fn a_line_that_is_none_is_told_to_be_none() {
    let page = page();
    let (before, rest) = page.split_once("id=\"plugwary-verdict\">").expect("the page carries a verdict");
    let (_, behind) = rest.split_once("</script>").expect("it ends");
    let deep = "[".repeat(100_000);
    let long = format!("{{\"rule_book\":\"{}\"}}", "x".repeat(2_000_000));
    for line in ["", "{}", "null", "[]", "\\u003c", deep.as_str(), long.as_str()] {
        let checked = looked(&sealed(&format!("{before}id=\"plugwary-verdict\">{line}</script>{behind}")));
        assert_eq!(checked.again, Some(Again::NoVerdict));
        assert!(checked_line(&checked, None).contains("carries no verdict"));
    }
}

#[test]
fn what_a_file_says_is_cut_and_shown_as_something_said() {
    let hostile = format!("\"verdict\":\"\\u001b[2J\\u202e{}\"", "x".repeat(5000));
    let (changes, line) = again("\"verdict\":\"keep-away\"", &hostile);
    let [Change::Verdict { was, .. }] = changes.as_slice() else { unreachable!("{changes:?}") };
    assert!(was.chars().count() <= 40);
    let said: Value = serde_json::from_str(&line).expect("the line is JSON");
    let said = said["said"].to_string();
    assert!(said.contains("The verdict was “") && !said.contains('\u{202e}') && !said.contains("\\u001b"), "{said}");
}
