//! The file reads as a person writes: no times for machines, no straight quotation marks, no source of another market.

use plugwary::domain::examination::Answer;
use plugwary::domain::sample::Market;
use plugwary::words::statement::sentence;

use crate::{pages, records, shown};

/// A page's words, without markup.
fn words(page: &str) -> String {
    let pieces = shown(page).split('<').map(|piece| piece.split_once('>').map_or(piece, |(_, text)| text));
    pieces.collect::<Vec<_>>().join(" ")
}

#[test]
fn times_are_written_for_people() {
    for (name, page) in pages() {
        let words = words(&page);
        let is_raw = |at: usize| {
            let before = words.get(..at).and_then(|text| text.chars().next_back());
            let after = words.get(at + 1..).and_then(|text| text.chars().next());
            before.is_some_and(|c| c.is_ascii_digit()) && after.is_some_and(|c| c.is_ascii_digit())
        };
        let raw = words.match_indices('T').find(|(at, _)| is_raw(*at));
        assert_eq!(raw, None, "{name}");
        assert!(!words.contains("Begun ,") && !words.contains("changed ."), "{name}");
    }
}

#[test]
fn marks_are_those_of_a_printed_page() {
    for (name, page) in pages() {
        let words = words(&page);
        for straight in ["&#39;", "&quot;"] {
            assert!(!words.contains(straight), "{name}");
        }
    }
}

#[test]
fn a_file_names_no_law_of_another_market() {
    for (name, page) in pages() {
        let record = records().remove(&name).expect("the case is there");
        let foreign: &[&str] = match record.examination.sample.market {
            Market::GreatBritain => &["(EU)", "/EU"],
            Market::NorthernIreland => &["2016/1101", "2005/1803"],
        };
        for law in foreign {
            assert!(!words(&page).contains(law), "{name} names {law}");
        }
    }
}

#[test]
fn what_was_not_told_is_a_whole_sentence() {
    for record in records().values() {
        for answered in &record.examination.answers {
            for answer in [Answer::CannotTell, Answer::Refused, Answer::NoTool] {
                let answered = plugwary::domain::examination::Answered { answer, ..answered.clone() };
                let said = sentence(&answered, record.examination.sample.kind);
                assert!(said.ends_with('.') && !said.contains([':', '?', '{']), "{said}");
            }
        }
    }
}

#[test]
fn claims_that_cannot_both_be_true_are_named_in_the_table() {
    let pages = pages();
    let says_so = |name: &str| pages.get(name).expect("the case is there").contains(plugwary::words::report::DISAGREE);
    assert!(says_so("dishonest-lead-breach"), "it states 3500 W, 3000 W and 2500 W");
    assert!(!says_so("sound-lead-meters"));
}

#[test]
fn nobody_is_told_of_the_tools_that_made_it() {
    for (name, page) in pages() {
        for word in ["EOF", "serde", "nonconforming", "Some(", "NaN", "inf "] {
            assert!(!words(&page).contains(word), "{name} says {word}");
        }
    }
}
