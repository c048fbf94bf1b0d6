//! The words about the seal: what a sealed page says of itself, and what a look at a file found.

use super::check;
use super::moment::moment;
use crate::domain::verdict::Verdict;
use crate::record::Said;
use crate::seal::{Again, Change, Part, State};

/// Heading of the part of a page that speaks of its seal.
pub const HEADING: &str = "How to check that nobody changed it";

/// How somebody who got the page checks it.
pub const HOW_TO_CHECK: &str = "At the end of this file stands a seal over every byte of it. Plugwary, and the command “plugwary judge --check FILE”, tell whether anything was changed since it was sealed, and where. Looking at this page shows nothing: whoever changes a file can leave these words as they are.";

/// What the fingerprint is good for.
pub const COMPARE: &str = "Ask the examiner for the fingerprint of the key by another way than the one this file came by, such as by telephone or from the label on the sample. Only then does the seal show that the file is theirs: anybody can seal a file with a key of their own.";

/// What a seal is not.
pub const CLAIMS_NOTHING: &str = "The seal says nothing about who the examiner is, nor that what they wrote is true. The time of sealing is that of the device’s clock, which anybody can set.";

/// Near the top of a sealed page.
pub fn sealed_with(fingerprint: &str) -> String {
    format!("Sealed with the key {fingerprint}; how to check that stands at the end.")
}

/// At the end of a sealed page.
pub fn key(fingerprint: &str) -> String {
    format!("The fingerprint of the key is {fingerprint}.")
}

/// On paper: the page itself cannot be sealed there.
pub fn on_paper(fingerprint: &str) -> String {
    format!("Files of this examination are sealed with the key {fingerprint}.")
}

/// On the label.
pub fn on_label(fingerprint: &str) -> String {
    format!("Key of the seal: {fingerprint}")
}

/// Whether a file is as it was sealed, a sentence each; `fingerprint` is that of its key, `sealed` the time in the seal.
pub fn state(state: &State, fingerprint: &str, sealed: &str) -> Vec<String> {
    match state {
        State::Untouched => vec![
            format!("Untouched since it was sealed with the key {fingerprint}."),
            format!("Sealed {} by the clock of that device, which proves no time.", moment(sealed)),
            COMPARE.to_owned(),
        ],
        State::Altered(parts) if parts.contains(&Part::Seal) => vec![
            "Do not trust this file: it was changed.".to_owned(),
            "The seal itself is not as it was made, or another seal was put in its place. So it tells nothing about the rest of the file."
                .to_owned(),
        ],
        State::Altered(parts) => {
            let mut said = vec!["Do not trust this file: it was changed after it was sealed.".to_owned()];
            said.extend(parts.iter().copied().map(part));
            said.push(format!("The seal itself is whole; it was made with the key {fingerprint}."));
            if parts.contains(&Part::Examination) && parts.contains(&Part::Text) {
                said.push("It may be the seal of another file.".to_owned());
            }
            said
        }
        State::CutOff => vec![
            "Do not trust this file: its seal is missing.".to_owned(),
            format!("It says that it is sealed with the key {fingerprint}, and there is no such seal at its end. The end may have been cut off."),
        ],
        State::NotSealed => vec![
            "This file has no seal, so nothing shows whether it was changed. One from which the seal and every mention of it were taken looks the same."
                .to_owned(),
        ],
        State::Newer => vec![
            "The seal is of a form that this edition does not know: a newer edition made it, or it was changed. Load this app again while there is a network, then check once more."
                .to_owned(),
        ],
    }
}

/// What was changed.
pub fn part(part: Part) -> String {
    match part {
        Part::Examination => {
            "Changed: the examination, that is the answers and readings that programs take out of the file.".to_owned()
        }
        Part::Verdict => "Changed: the verdict that programs take out of the file.".to_owned(),
        Part::Photo(number) => format!("Changed or taken out: photo {number} of the page."),
        Part::Text => "Changed: the text of the page, or how it looks.".to_owned(),
        Part::Key => "Changed: the key that the page names is not the key of the seal.".to_owned(),
        Part::Seal => "Changed: the seal itself.".to_owned(),
        Part::Behind => "Changed: something was put behind the seal or taken from there.".to_owned(),
    }
}

/// What judging again found, a sentence each; `today` is the edition of today's rule book.
pub fn again(again: &Again, today: &str) -> Vec<String> {
    match again {
        Again::NoVerdict => vec!["The file carries no verdict that today’s could be held against.".to_owned()],
        Again::Same => {
            vec![format!("Judged again with edition {today} of the rules: the same verdict and the same findings.")]
        }
        Again::Changed { edition, changes } => {
            let edition = Said::from(edition.as_str());
            let said = format!(
                "Judged again with edition {today} of the rules, the verdict in the file (edition {edition}) is not the same:"
            );
            std::iter::once(said).chain(changes.iter().map(change)).collect()
        }
    }
}

/// One difference.
pub fn change(change: &Change) -> String {
    match change {
        Change::Verdict { was, now } => format!("The verdict was {}, and is now {}.", verdict(was), verdict(now)),
        Change::Added { code, now } => format!("{}: not in the file, now {}.", wrong(code), outcome(now)),
        Change::Gone { code, was } => format!("{}: {} in the file, not judged any more.", wrong(code), outcome(was)),
        Change::Outcome { code, was, now } => {
            format!("{}: {} in the file, now {}.", wrong(code), outcome(was), outcome(now))
        }
        Change::Numbers { code } => {
            format!("{}: the same outcome, with other numbers, limits or weight.", wrong(code))
        }
        Change::Rest => "Only what is told beside the findings is different, such as what to look at next.".to_owned(),
    }
}

/// Whether the rules are those that the file was sealed with.
pub const OTHER_RULES: &str = "The rules have changed since the file was sealed.";

/// What a check looks for, or its code where it is none of ours.
fn wrong(code: &str) -> String {
    let words = check::of(code);
    if words.code == code { super::reason::capital(words.wrong) } else { Said::from(code).to_string() }
}

fn verdict(code: &str) -> String {
    let known = Verdict::ALL.into_iter().find(|known| known.code() == code);
    known.map_or_else(|| Said::from(code).to_string(), |known| format!("“{}”", super::verdict::name(known)))
}

fn outcome(code: &str) -> String {
    let known = match code {
        "conforms" => "keeps the rule",
        "inconclusive" => "can’t tell",
        "nonconforming" => "breaks the rule",
        "not-examined" => "not looked at",
        _ => return Said::from(code).to_string(),
    };
    known.to_owned()
}
