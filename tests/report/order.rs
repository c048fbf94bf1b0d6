//! The order of the file: the problem first.

use plugwary::domain::assess::{RuleBook, assess};
use plugwary::domain::sample::Equipment;
use plugwary::words::report as words;

use crate::{pages, records, shown};

/// Headings in the order in which they have to stand.
const ORDER: [&str; 11] = [
    words::WHAT_IS_WRONG,
    words::BAD_SIGNS,
    words::COULD_NOT_BE_TOLD,
    words::ONLY_PRINT,
    words::NOBODY_LOOKED_AT,
    words::WHAT_IT_CLAIMS,
    words::WHAT_WAS_SEEN,
    plugwary::words::risk::HEADING,
    words::HOW_TO_READ,
    words::SOURCES,
    words::CAUTIONS_HEADING,
];

#[test]
fn the_verdict_comes_first_and_the_headings_in_the_order_of_need() {
    for (name, page) in pages() {
        let body = shown(&page);
        let headings: Vec<&str> =
            body.split("<h2>").skip(1).map(|rest| rest.split("</h2>").next().unwrap_or_default()).collect();
        let places: Vec<_> = headings.iter().map(|heading| ORDER.iter().position(|known| known == heading)).collect();
        assert!(places.iter().all(Option::is_some) && places.is_sorted(), "{name}: {headings:?}");
        let verdict = body.find("<h1>").expect("a page has a verdict");
        assert!(verdict < body.find("<h2>").expect("a page has headings"), "{name}");
        let before_what_is_wrong = body.split("<h2>").next().unwrap_or_default();
        assert!(before_what_is_wrong.contains("Looked at by eye"), "{name} does not say how it was looked at");
    }
}

#[test]
fn a_danger_stands_before_a_breach_and_a_breach_before_a_bad_sign() {
    for (name, page) in pages() {
        let weights: Vec<_> = shown(&page)
            .split("<section class=\"said bar-")
            .skip(1)
            .filter_map(|rest| ["solid", "hatched", "double", "dotted"].iter().position(|bar| rest.starts_with(bar)))
            .collect();
        assert!(weights.is_sorted(), "{name}: {weights:?}");
    }
}

#[test]
fn every_break_and_doubt_is_told_once() {
    for (name, page) in pages() {
        let record = records().remove(&name).expect("the case is there");
        let told = assess(&record.examination, &RuleBook::CURRENT);
        let until = shown(&page).find(words::NOBODY_LOOKED_AT).unwrap_or(shown(&page).len());
        let sections = shown(&page).get(..until).unwrap_or_default();
        let told = told.findings.iter().filter(|finding| {
            use plugwary::domain::finding::Conformity::{Inconclusive, Nonconforming};
            matches!(finding.outcome(), Nonconforming | Inconclusive)
        });
        for finding in told {
            let alone = format!("<h3>{}</h3>", words::heading(finding));
            let among_others = format!("<li>{}</li>", words::doubt(finding));
            let times = sections.matches(&alone).count() + sections.matches(&among_others).count();
            assert_eq!(times, 1, "{name}: {}", finding.code);
        }
    }
}

#[test]
fn the_coverage_adds_up_and_names_what_needs_more_tools() {
    for (name, record) in records() {
        let assessment = assess(&record.examination, &RuleBook::CURRENT);
        for equipment in Equipment::ALL {
            let places = assessment.within_reach(equipment);
            let made: usize = places.iter().map(|(_, tally)| tally.made).sum();
            let of: usize = places.iter().map(|(_, tally)| tally.of).sum();
            assert_eq!(made, assessment.looked.made, "{name}: all that was made is within reach");
            assert!(made <= of && of <= assessment.looked.of, "{name}");
            let said = words::coverage(&assessment, &record.examination.sample, equipment);
            assert!(said.starts_with(&format!("Looked at {made} of the {of} things")), "{name}: {said}");
            let beyond = assessment.looked.of - of;
            assert_eq!(said.contains(&format!("Another {beyond} need more tools.")), beyond > 0, "{name}: {said}");
        }
    }
}
