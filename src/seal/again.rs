//! The examination judged again by today's rule book, and held against the verdict that the file carries.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde_json::Value;

use crate::domain::check;
use crate::record::{self, Record};

/// No verdict line is longer.
const LONGEST: usize = 1024 * 1024;

/// How many changes are told; a file that has more was not judged by rules of ours.
const MOST_TOLD: usize = 500;

/// What judging again found.
#[derive(Debug, Clone, PartialEq)]
pub enum Again {
    /// The file carries no verdict that can be read.
    NoVerdict,
    /// The same verdict and findings.
    Same,
    /// Another verdict or other findings.
    Changed {
        /// The edition of the rule book that the file names.
        edition: String,
        /// What is different.
        changes: Vec<Change>,
    },
}

/// One difference. What the file says is cut to a length that fits a sentence.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Change {
    /// The verdict.
    Verdict {
        /// The one in the file.
        was: String,
        /// Today's.
        now: String,
    },
    /// A check that the file does not name.
    Added {
        /// The check.
        code: String,
        /// Its outcome today.
        now: String,
    },
    /// A check that is not made, or does not apply, any more.
    Gone {
        /// The check.
        code: String,
        /// Its outcome in the file.
        was: String,
    },
    /// A check with another outcome.
    Outcome {
        /// The check.
        code: String,
        /// Its outcome in the file.
        was: String,
        /// Its outcome today.
        now: String,
    },
    /// The same outcome, by another limit, or with other numbers or weight.
    Numbers {
        /// The check.
        code: String,
    },
    /// What is told beside the findings, such as what to look at next.
    Rest,
}

/// The verdict line as far as it is compared: what a later edition adds to it is passed over.
#[derive(Deserialize)]
struct Line {
    rule_book: String,
    verdict: String,
    findings: Vec<Value>,
    not_looked_at: Vec<String>,
}

impl Again {
    /// Judges a record again; `carried` is the verdict line of its file.
    pub fn of(record: &Record, carried: Option<&str>) -> Self {
        let now = record::judged_line(record);
        let Some(carried) = carried.filter(|line| line.len() <= LONGEST) else { return Self::NoVerdict };
        if carried == now {
            return Self::Same;
        }
        let read = |line| serde_json::from_str::<Line>(line).ok();
        let (Some(was), Some(now)) = (read(carried), read(&now)) else { return Self::NoVerdict };
        let changes = changes(&was, &now);
        Self::Changed { edition: short(&was.rule_book), changes }
    }
}

fn changes(was: &Line, now: &Line) -> Vec<Change> {
    let mut changes = Vec::new();
    if was.verdict != now.verdict {
        changes.push(Change::Verdict { was: short(&was.verdict), now: now.verdict.clone() });
    }
    let (before, after) = (outcomes(was), outcomes(now));
    for (code, now) in &after {
        let code = (*code).to_owned();
        match before.get(code.as_str()) {
            None => changes.push(Change::Added { code, now: outcome(*now) }),
            Some(was) if outcome(*was) != outcome(*now) => {
                changes.push(Change::Outcome { code, was: outcome(*was), now: outcome(*now) });
            }
            Some(was) if was != now => changes.push(Change::Numbers { code }),
            Some(_) => {}
        }
    }
    let gone = before.iter().filter(|(code, _)| !after.contains_key(*code));
    changes.extend(gone.map(|(code, was)| Change::Gone { code: short(code), was: outcome(*was) }));
    changes.truncate(MOST_TOLD);
    if changes.is_empty() {
        changes.push(Change::Rest);
    }
    changes
}

/// What was found, by check; nothing of a check that nobody made.
fn outcomes(line: &Line) -> BTreeMap<&str, Option<&Value>> {
    let found = line.findings.iter().filter_map(|finding| Some((finding.get("code")?.as_str()?, Some(finding))));
    found.chain(line.not_looked_at.iter().map(|code| (code.as_str(), None))).collect()
}

fn outcome(finding: Option<&Value>) -> String {
    let Some(finding) = finding else { return "not-examined".to_owned() };
    short(finding.get("outcome").and_then(Value::as_str).unwrap_or_default())
}

/// What a file says, where it may say anything: the code of a check of ours as it is, all else cut.
fn short(said: &str) -> String {
    if check::by_code(said).is_some() { said.to_owned() } else { said.chars().take(40).collect() }
}
