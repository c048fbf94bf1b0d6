//! How grave it is: the whole working where somebody weighed it, drafts called drafts, and nothing where nothing is dangerous.

use plugwary::domain::assess::{Assessment, RuleBook, assess};
use plugwary::domain::finding::Severity;
use plugwary::domain::risk::Standing;
use plugwary::record::Record;
use plugwary::report::page;
use plugwary::words::risk as words;

use crate::{pages, records, shown};

fn assessed(record: &Record) -> Assessment {
    assess(&record.examination, &RuleBook::CURRENT)
}

/// What a page says of risk, as it stands in the markup; empty where it says nothing.
fn part(page: &str) -> &str {
    let heading = format!("<h2>{}</h2>", words::HEADING);
    let rest = shown(page).split_once(&heading).map_or("", |(_, rest)| rest);
    rest.split("<h2>").next().unwrap_or_default()
}

#[test]
fn drafts_are_shown_where_there_is_a_danger_and_nowhere_else() {
    for (name, page) in pages() {
        let record = records().remove(&name).expect("the case is there");
        let is_danger = assessed(&record).findings.iter().any(|finding| finding.breaks(Severity::Danger));
        assert_eq!(!part(&page).is_empty(), is_danger, "{name}");
        assert_eq!(part(&page).contains(words::DRAFTS_MEAN), is_danger, "{name}");
        assert_eq!(part(&page).contains("Nobody has weighed it yet."), is_danger, "{name}");
        let counting = part(&page).matches(words::IT_COUNTS).count();
        assert_eq!(counting, usize::from(is_danger), "{name}");
    }
}

/// A case with its drafts on record, each judgement weighed.
fn weighed(name: &str) -> Record {
    let mut record = records().remove(name).expect("the case is there");
    record.scenarios = words::scenarios(&record, &assessed(&record));
    for scenario in &mut record.scenarios {
        scenario.injury_standing = Standing::Weighed;
        scenario.steps.iter_mut().for_each(|step| step.standing = Standing::Weighed);
    }
    record
}

#[test]
fn what_was_weighed_is_told_with_every_chance_and_every_reason() {
    let record = weighed("market-stall-lead");
    let page = page(&record, &[]);
    let part = part(&page);
    assert!(!part.to_lowercase().contains("draft") && !part.contains("our starting guess"), "{part}");
    for scenario in &record.scenarios {
        let mut lines = vec![words::product(scenario), words::injury_and_why(scenario), words::position(scenario)];
        lines.extend((0..).zip(&scenario.steps).map(|(place, step)| words::event(place, step)));
        lines.extend(words::hangs_on(scenario));
        for line in lines {
            assert!(part.contains(&line), "{line}\n{part}");
        }
    }
}

#[test]
fn a_danger_that_no_scenario_speaks_of_keeps_its_draft() {
    let mut record = weighed("market-stall-lead");
    let all = record.scenarios.len();
    let left_out = record.scenarios.remove(0);
    let page = page(&record, &[]);
    assert!(part(&page).contains(words::DRAFTS_MEAN));
    assert!(part(&page).contains(&words::title(&left_out)));
    assert_eq!(part(&page).matches("<h3>").count(), all);
}

#[test]
fn a_scenario_of_what_is_in_order_counts_for_nothing() {
    let scenarios = weighed("market-stall-lead").scenarios;
    let mut sound = records().remove("sound-lead-meters").expect("the case is there");
    sound.scenarios = scenarios;
    let page = page(&sound, &[]);
    assert!(part(&page).contains(words::NONE_COUNTS) && part(&page).contains(words::COUNTS_FOR_NOTHING));
    assert!(!part(&page).contains("It follows from"));
    assert!(shown(&page).contains("Nothing wrong seen in"), "the verdict stays as it is");
}

#[test]
fn hostile_words_of_a_scenario_are_only_words() {
    let mut record = weighed("market-stall-lead");
    "<script>alert(1)</script>".clone_into(&mut record.scenarios[0].title);
    "<img src=x onerror=alert(1)>".clone_into(&mut record.scenarios[0].steps[0].happens);
    let page = page(&record, &[]);
    let body = shown(&page);
    assert!(!body.contains("<script") && !body.contains("<img src=x"));
    assert!(part(&page).contains("&lt;script&gt;alert(1)"));
}
