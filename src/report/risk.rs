//! How grave it is for people: the grade first, then with the whole working each scenario that was weighed and the one that counts; other
//! drafts in a line each.

use super::document::{Block, Tone};
use crate::domain::assess::Assessment;
use crate::domain::finding::Finding;
use crate::domain::risk::Scenario;
use crate::record::Record;
use crate::words::risk as words;

/// The part about risk; nothing where the record has no scenario and no danger was found.
pub fn blocks<'p>(record: &Record, assessment: &Assessment) -> Vec<Block<'p>> {
    let scenarios = words::scenarios(record, assessment);
    if scenarios.is_empty() {
        return Vec::new();
    }
    let text = |tone, text: &str| Block::text(tone, text);
    let mut blocks = vec![Block::Heading(words::HEADING)];
    let counting = words::counting(&scenarios, &assessment.findings);
    match counting {
        Some(counting) => {
            let tone = if is_draft(counting) { Tone::Plain } else { Tone::Advice };
            blocks.extend(text(tone, &words::whole(counting)));
            let asks = format!("{} {}", words::asks_for(counting.level()), words::AUTHORITY_DECIDES);
            blocks.extend(text(Tone::Plain, &asks));
        }
        None => blocks.extend(text(Tone::Plain, words::NONE_COUNTS)),
    }
    blocks.extend(text(Tone::Plain, words::WHAT_IT_IS));
    if scenarios.iter().any(|scenario| scenario.guesses() > 0) {
        blocks.extend(text(Tone::Plain, words::DRAFTS_MEAN));
    }
    let counts = |scenario: &Scenario| counting.is_some_and(|counting| core::ptr::eq(counting, scenario));
    let (short, whole): (Vec<&Scenario>, Vec<&Scenario>) =
        scenarios.iter().partition(|scenario| is_draft(scenario) && !counts(scenario));
    for scenario in whole {
        let weight = match counting {
            Some(counting) if core::ptr::eq(counting, scenario) => words::IT_COUNTS,
            _ if scenario.counts(&assessment.findings) => "",
            _ => words::COUNTS_FOR_NOTHING,
        };
        blocks.extend(told(scenario, weight, &assessment.findings));
    }
    if !short.is_empty() {
        blocks.push(Block::Subheading(words::OTHER_DRAFTS.to_owned()));
        blocks.push(Block::List(Tone::Plain, short.into_iter().map(words::in_a_line).collect()));
    }
    blocks.extend(text(Tone::Source, &words::method(record.examination.sample.market)));
    blocks
}

/// Whether nobody has touched it.
fn is_draft(scenario: &Scenario) -> bool {
    scenario.guesses() > scenario.steps.len()
}

/// One scenario. A draft that nobody has touched is told without its reasons: they are all of one kind, and it is said which.
fn told<'p>(scenario: &Scenario, weight: &str, findings: &[Finding]) -> Vec<Block<'p>> {
    let mut lines = vec![words::standing(scenario), weight.to_owned(), words::follows_from(scenario, findings)];
    if is_draft(scenario) {
        lines.extend([words::in_short(scenario), words::product(scenario), words::injury(scenario)]);
    } else {
        lines.extend((0..).zip(&scenario.steps).map(|(place, step)| words::event(place, step)));
        lines.extend([words::product(scenario), words::injury_and_why(scenario)]);
    }
    lines.push(words::position(scenario));
    let told = lines.iter().filter_map(|line| Block::text(Tone::Plain, line));
    let hangs_on = Block::List(Tone::Plain, words::hangs_on(scenario));
    [Block::Subheading(words::title(scenario))].into_iter().chain(told).chain([hangs_on]).collect()
}
