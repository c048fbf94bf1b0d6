//! How grave it is for people, with the whole working: the grade first, then each scenario, weighed ones with all reasons and drafts in short.

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
            blocks.extend(text(Tone::Advice, &words::whole(counting)));
            let asks = format!("{} {}", words::asks_for(counting.level()), words::AUTHORITY_DECIDES);
            blocks.extend(text(Tone::Plain, &asks));
        }
        None => blocks.extend(text(Tone::Plain, words::NONE_COUNTS)),
    }
    blocks.extend(text(Tone::Plain, words::WHAT_IT_IS));
    if scenarios.iter().any(|scenario| scenario.guesses() > 0) {
        blocks.extend(text(Tone::Plain, words::DRAFTS_MEAN));
    }
    for scenario in &scenarios {
        let weight = match counting {
            Some(counting) if core::ptr::eq(counting, scenario) => words::IT_COUNTS,
            _ if scenario.counts(&assessment.findings) => "",
            _ => words::COUNTS_FOR_NOTHING,
        };
        blocks.extend(told(scenario, weight, &assessment.findings));
    }
    blocks.extend(text(Tone::Source, &words::method(record.examination.sample.market)));
    blocks
}

/// One scenario. A draft that nobody has touched is told without its reasons: they are all of one kind, and it is said which.
fn told<'p>(scenario: &Scenario, weight: &str, findings: &[Finding]) -> Vec<Block<'p>> {
    let is_draft = scenario.guesses() > scenario.steps.len();
    let mut lines = vec![words::standing(scenario), weight.to_owned(), words::follows_from(scenario, findings)];
    if is_draft {
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
