//! What a look at a file found as one line of JSON, with the same in sentences.

use serde::Serialize;

use super::again::{Again, Change};
use super::check::{Checked, Part, State};
use super::{fingerprint, rule_book};
use crate::domain::assess::RuleBook;
use crate::record::Chain;
use crate::words::{custody, faults, seal as words};

#[derive(Serialize)]
struct Line<'a> {
    #[serde(skip_serializing_if = "Option::is_none")]
    file: Option<&'a str>,
    state: &'static str,
    key: Option<String>,
    sealed: Option<&'a str>,
    altered: Vec<String>,
    id: Option<&'a str>,
    judged_again: Option<&'static str>,
    changes: Vec<Changed<'a>>,
    chain: Option<&'static str>,
    breaks: Vec<String>,
    said: Vec<String>,
}

#[derive(Serialize)]
struct Changed<'a> {
    what: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    check: Option<&'a str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    was: Option<&'a str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    now: Option<&'a str>,
}

/// One line of JSON with no newline at its end: codes for programs, and under `said` sentences for people. `file` names the file.
pub fn checked_line(checked: &Checked, file: Option<&str>) -> String {
    let breaks = match &checked.chain {
        Some(Chain::Broken(breaks)) => breaks.iter().copied().map(custody::broken).collect(),
        None | Some(Chain::Empty | Chain::NotChained | Chain::Unbroken(_)) => Vec::new(),
    };
    let line = Line {
        file,
        state: state(&checked.state),
        key: checked.key.as_ref().map(fingerprint),
        sealed: Some(checked.sealed.as_str()).filter(|sealed| !sealed.is_empty()),
        altered: altered(&checked.state).iter().copied().map(part).collect(),
        id: checked.record.as_ref().ok().map(|record| record.id.as_str()),
        judged_again: checked.again.as_ref().map(again),
        changes: changes(checked.again.as_ref()).iter().map(changed).collect(),
        chain: checked.chain.as_ref().map(chain),
        breaks,
        said: said(checked),
    };
    to_json(&line)
}

#[expect(clippy::expect_used, reason = "a line has nothing that JSON cannot hold")]
fn to_json(line: &Line) -> String {
    serde_json::to_string(line).expect("texts and lists are JSON")
}

/// All that there is to say, in sentences.
fn said(checked: &Checked) -> Vec<String> {
    let fingerprint = checked.key.as_ref().map(fingerprint).unwrap_or_default();
    let mut said = words::state(&checked.state, &fingerprint, &checked.sealed);
    match &checked.record {
        Ok(_) => {
            if checked.rule_book.as_ref().is_some_and(|(_, sha256)| *sha256 != rule_book()) {
                said.push(words::OTHER_RULES.to_owned());
            }
            said.extend(checked.again.iter().flat_map(|again| words::again(again, RuleBook::CURRENT.edition)));
            said.extend(checked.chain.iter().flat_map(custody::chain));
        }
        Err(fault) => said.push(faults::not_read(fault)),
    }
    said
}

const fn state(state: &State) -> &'static str {
    match state {
        State::Untouched => "untouched",
        State::Altered(_) => "altered",
        State::CutOff => "seal-missing",
        State::NotSealed => "not-sealed",
        State::Newer => "newer-seal",
    }
}

fn altered(state: &State) -> &[Part] {
    match state {
        State::Altered(parts) => parts,
        State::Untouched | State::CutOff | State::NotSealed | State::Newer => &[],
    }
}

fn part(part: Part) -> String {
    let code = match part {
        Part::Examination => "examination",
        Part::Verdict => "verdict",
        Part::Photo(number) => return format!("photo-{number}"),
        Part::Text => "text",
        Part::Key => "key",
        Part::Seal => "seal",
        Part::Behind => "behind-the-seal",
    };
    code.to_owned()
}

const fn again(again: &Again) -> &'static str {
    match again {
        Again::NoVerdict => "no-verdict",
        Again::Same => "same",
        Again::Changed { .. } => "changed",
    }
}

fn changes(again: Option<&Again>) -> &[Change] {
    match again {
        Some(Again::Changed { changes, .. }) => changes,
        None | Some(Again::NoVerdict | Again::Same) => &[],
    }
}

fn changed(change: &Change) -> Changed<'_> {
    let none = Changed { what: "rest", check: None, was: None, now: None };
    match change {
        Change::Verdict { was, now } => Changed { what: "verdict", was: Some(was), now: Some(now), ..none },
        Change::Added { code, now } => Changed { what: "added", check: Some(code), now: Some(now), ..none },
        Change::Gone { code, was } => Changed { what: "gone", check: Some(code), was: Some(was), ..none },
        Change::Outcome { code, was, now } => {
            Changed { what: "outcome", check: Some(code), was: Some(was), now: Some(now) }
        }
        Change::Numbers { code } => Changed { what: "numbers", check: Some(code), ..none },
        Change::Rest => none,
    }
}

const fn chain(chain: &Chain) -> &'static str {
    match chain {
        Chain::Empty => "empty",
        Chain::NotChained => "not-chained",
        Chain::Unbroken(_) => "unbroken",
        Chain::Broken(_) => "broken",
    }
}
