//! What a letter rests on: findings with their numbers, limits, sources and doubt, and what nobody looked at.

use super::body::Body;
use super::{Case, plain};
use crate::domain::finding::{Conformity, Finding, Reason, Severity};
use crate::words::{check, favour, reason, report, statement, verdict};

/// How much of a finding is told.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Depth {
    /// What is wrong, what was seen, and what that is held against.
    InShort,
    /// The same with its numbers.
    WithNumbers,
    /// The same with the retry in the product's favour.
    Whole,
}

/// Everything that is complained of, the gravest first.
pub fn breaks(body: &mut Body, case: &Case, depth: Depth) {
    for finding in case.breaks() {
        tell(body, case, finding, depth);
    }
}

fn tell(body: &mut Body, case: &Case, finding: &Finding, depth: Depth) {
    let kind = case.record.examination.sample.kind;
    let home = case.said.iter().find(|sentence| sentence.findings.iter().any(|f| f.code == finding.code));
    body.paragraph(&format!("{}.", report::heading(finding)))
        .line(&statement::seen(finding, home, kind))
        .line(&reason::reason(finding, kind));
    if depth != Depth::InShort {
        for numbers in reason::numbers(finding, kind) {
            body.line(&numbers);
        }
    }
    if depth == Depth::Whole {
        body.line(&favour::in_its_favour(finding, kind));
    }
    body.line(&report::held_against(&finding.against));
}

/// What could not be told, an entry each, with its numbers where something was measured.
pub fn doubts(body: &mut Body, case: &Case) {
    let kind = case.record.examination.sample.kind;
    let doubt = |finding: &Finding| {
        let refused = if finding.judgement.reason == Reason::Refused { ": looking was refused" } else { "" };
        let numbers = reason::numbers(finding, kind);
        let said = format!("{}{refused}.", reason::capital(check::of(finding.code).wrong));
        [said].into_iter().chain(numbers).collect::<Vec<_>>().join(" ")
    };
    body.list(case.doubts().map(doubt));
}

/// Bad signs by name; they are no breaks, and it is said.
pub fn bad_signs(body: &mut Body, case: &Case) {
    let is_sign = |f: &&Finding| f.outcome() == Conformity::Nonconforming && f.judgement.severity == Severity::BadSign;
    let names: Vec<&str> =
        case.assessment.findings.iter().filter(is_sign).map(|finding| check::of(finding.code).wrong).collect();
    if !names.is_empty() {
        body.heading("Bad signs")
            .line("These are hints of poor or dishonest work. They break no rule and decide nothing.")
            .list(names);
    }
}

/// How it was looked at, and what nobody looked at.
pub fn reach(body: &mut Body, case: &Case) {
    let examination = &case.record.examination;
    body.heading("How I looked, and what I did not look at")
        .line(&report::how_looked(examination))
        .line(&report::coverage(case.assessment, &examination.sample, examination.equipment));
    let untested = case.assessment.dangers_not_tested.iter().map(|code| check::of(code).wrong);
    let untested: Vec<&str> = untested.collect();
    if untested.is_empty() {
        body.line("No danger that I know to look for was left out.");
    } else {
        body.line(&format!(
            "Nobody looked for these dangers, or only print speaks of them, and nothing is said about them, good or bad: {}.",
            untested.join("; ")
        ));
    }
}

/// What the letter is not.
pub fn caution(body: &mut Body, case: &Case) {
    body.heading("What this letter is not")
        .line("It speaks of this one sample, and not of others of the same product.")
        .line("I am no authority. Plugwary, the app with which I examined it, advises and certifies nothing.");
    if body.has("quoted from memory") {
        body.line("“Quoted from memory” means that the limit or rule was not checked against the text of the standard or law.");
    }
    if body.has("usual practice") {
        body.line("“Usual practice” is what the trade does, without a published source.");
    }
    body.line(&format!("Judged by edition {} of Plugwary’s rules.", plain::line(case.assessment.edition)));
}

/// Where the sample is sold, for asking who brought it there.
pub fn market(case: &Case) -> &'static str {
    verdict::market(case.record.examination.sample.market)
}
