//! The chain of custody entries: made by the engine, walked along by the engine, and each thing that is wrong with it named.

use plugwary::domain::custody::{Custody, Handling};
use plugwary::record::{Break, Chain, MOST_HANDLINGS, Record, RecordFault, append, chain, read, write};
use plugwary::words::custody as words;
use proptest::prelude::*;

use crate::by_hand::case;
use crate::generated;

fn handling(when: &str, who: &str, done: &str, seal: &str) -> Handling {
    Handling { when: when.to_owned(), who: who.to_owned(), done: done.to_owned(), seal: seal.to_owned() }
}

/// A record with so many entries.
fn held(times: usize) -> Record {
    let mut record = case("smallest.json");
    for time in 1..=times {
        let done = format!("Put it away, time {time}");
        append(&mut record, handling("2026-11-20T09:15:00Z", "The examiner", &done, "B-0041"))
            .expect("it can be saved");
    }
    record
}

#[track_caller]
fn finds(record: &Record, breaks: &[Break]) {
    assert_eq!(chain(record), Chain::Broken(breaks.to_vec()));
    // A file says the same as the record in memory.
    assert_eq!(chain(&read(&write(record)).expect("it is read back")), Chain::Broken(breaks.to_vec()));
}

#[test]
fn a_link_is_the_digest_of_the_link_before_and_of_the_entry() {
    let mut record = case("smallest.json");
    "2026-11-20T08:00:00Z".clone_into(&mut record.begun);
    let bought =
        handling("2026-11-20T09:15:00Z", "The examiner", "Bought it over the counter; put it into a bag", "B-0041");
    append(&mut record, bought).expect("it can be saved");
    append(&mut record, handling("2026-11-21T14:00:00+00:00", "A colleague", "Took it “as it was”", ""))
        .expect("it can be saved");
    let links: Vec<_> = record.custody.entries.iter().filter_map(|entry| entry.link.clone()).collect();
    // Reckoned with Python's hashlib and json from the same values.
    let expected = [
        "04aaad89e763a79b2910d3b6dd2936bff70fd3df62539062ef176936a5227ab7",
        "634abbaaa7b61c402e5191abeab270d0295d8e9831e51b453f30793e0df03a37",
    ];
    assert_eq!(links.iter().map(|link| link.sha256.as_str()).collect::<Vec<_>>(), expected);
    assert_eq!(links.iter().map(|link| link.number).collect::<Vec<_>>(), [1, 2]);
    assert_eq!(chain(&record), Chain::Unbroken(2));
}

#[test]
fn a_removed_entry_is_named_by_its_number() {
    for (from, to) in [(1, 1), (3, 3), (2, 4)] {
        let mut record = held(5);
        record.custody.entries.drain(from - 1..to);
        let number = |n: usize| u32::try_from(n).expect("it is small");
        finds(&record, &[Break::Missing { first: number(from), last: number(to) }]);
    }
    assert_eq!(
        words::broken(Break::Missing { first: 3, last: 3 }),
        "Entry 3 is missing. So it cannot be told whether entry 4 is as it was written."
    );
}

#[test]
fn entries_that_changed_places_are_named() {
    let mut record = held(4);
    record.custody.entries.swap(1, 2);
    finds(&record, &[Break::Misplaced { number: 2, after: 3 }]);
    let mut record = held(5);
    record.custody.entries.swap(0, 4);
    finds(&record, &[Break::Misplaced { number: 2, after: 5 }, Break::Misplaced { number: 1, after: 4 }]);
}

#[test]
fn an_altered_entry_is_named_whatever_was_altered_in_it() {
    let alter: [fn(&mut Handling); 4] = [
        |handling| handling.when = "2026-11-20T09:15:01Z".to_owned(),
        |handling| handling.who.push('s'),
        |handling| handling.done.clear(),
        |handling| handling.seal = "B-0042".to_owned(),
    ];
    for alter in alter {
        for (place, number) in [(0, 1), (1, 2), (2, 3)] {
            let mut record = held(3);
            alter(&mut record.custody.entries[place].handling);
            finds(&record, &[Break::Altered { number }]);
        }
    }
}

#[test]
fn an_entry_that_was_exchanged_and_linked_anew_shows_at_the_next() {
    let mut record = held(3);
    let mut anew = held(1);
    append(&mut anew, handling("", "Somebody else", "Opened the bag", "")).expect("it can be saved");
    record.custody.entries[1] = anew.custody.entries[1].clone();
    finds(&record, &[Break::Altered { number: 3 }]);
    assert!(words::broken(Break::Altered { number: 3 }).contains("or the one before it was exchanged"));
}

#[test]
fn an_entry_that_was_put_in_is_named() {
    let mut record = held(3);
    let mut other = held(1);
    append(&mut other, handling("", "Somebody else", "Opened the bag", "")).expect("it can be saved");
    for place in [1, 2] {
        let mut record = record.clone();
        record.custody.entries.insert(place, other.custody.entries[1].clone());
        finds(&record, &[Break::Twice { number: 2 }]);
    }
    let unlinked = Custody { entries: other.custody.entries.clone(), ..Custody::default() };
    record.custody.entries.insert(1, unlinked.entries[1].clone());
    record.custody.entries[1].link = None;
    finds(&record, &[Break::Unlinked { place: 2 }]);
}

#[test]
fn a_chain_of_another_examination_does_not_begin_here() {
    let mut record = held(2);
    "2026-11-19T08:00:00Z".clone_into(&mut record.begun);
    finds(&record, &[Break::Altered { number: 1 }]);
}

#[test]
fn a_copy_under_another_name_keeps_its_chain() {
    let mut record = held(2);
    record.id = "f".repeat(32);
    assert_eq!(chain(&record), Chain::Unbroken(2));
}

#[test]
fn entries_written_by_hand_are_read_and_said_to_be_without_a_chain() {
    let text = r#"{
        "format": "plugwary-examination", "version": 1, "equipment": "eyes",
        "sample": { "kind": "extension-lead", "market": "great-britain" },
        "acquired": { "place": "A fair", "when": "2026-11-20T09:15:00Z", "price": "£4" },
        "custody": [{ "who": "The examiner", "done": "Bought it" }, { "when": "2026-11-21T09:15:00Z", "seal": "B-0041" }]
    }"#;
    let mut record = read(text).expect("it is an examination");
    assert_eq!(chain(&record), Chain::NotChained);
    assert!(words::chain(&Chain::NotChained)[0].contains("not chained"));
    // The next entry links those before it, so that they cannot be changed from now on.
    append(&mut record, handling("", "A colleague", "Took it", "")).expect("it can be saved");
    assert_eq!(chain(&record), Chain::Unbroken(3));
    record.custody.entries[0].handling.done = "Found it".to_owned();
    finds(&record, &[Break::Altered { number: 1 }]);
}

#[test]
fn a_broken_chain_stays_broken_when_it_grows() {
    let mut record = held(3);
    record.custody.entries.remove(1);
    append(&mut record, handling("", "A colleague", "Took it", "")).expect("it can be saved");
    finds(&record, &[Break::Missing { first: 2, last: 2 }]);
    record.custody.entries[0].link = None;
    append(&mut record, handling("", "A colleague", "Gave it back", "")).expect("it can be saved");
    finds(&record, &[Break::Unlinked { place: 1 }, Break::Missing { first: 1, last: 2 }]);
}

#[test]
fn what_a_chain_cannot_see_is_not_claimed() {
    let mut record = held(3);
    record.custody.entries.pop();
    assert_eq!(chain(&record), Chain::Unbroken(2));
    assert!(words::CHAIN_CANNOT_SEE.contains("at its end were left out"));
}

#[test]
fn nothing_is_appended_that_could_not_be_read_back() {
    let mut record = held(1);
    let long = "x".repeat(4001);
    for (bad, sentence) in [
        (
            handling("yesterday", "", "", ""),
            "custody entry 2: “when” must be a date and time such as 2026-11-24T10:30:00Z, got “yesterday”",
        ),
        (handling("", &long, "", ""), "custody entry 2: “who” has more than 4000 characters"),
    ] {
        assert_eq!(append(&mut record, bad).map_err(|fault| fault.to_string()), Err(sentence.to_owned()));
    }
    assert_eq!(record, held(1));
    let mut record = held(MOST_HANDLINGS);
    assert_eq!(append(&mut record, Handling::default()), Err(RecordFault::TooManyHandlings));
    assert_eq!(read(&write(&record)).map(|record| record.custody.entries.len()), Ok(MOST_HANDLINGS));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn what_was_appended_is_unbroken_until_anything_but_its_end_is_touched(
        first in generated::handling(), second in generated::handling(), third in generated::handling(), which in 0_usize..2,
    ) {
        let mut record = case("smallest.json");
        for handling in [first, second, third] {
            append(&mut record, handling).expect("it can be saved");
        }
        prop_assert_eq!(chain(&record), Chain::Unbroken(3));
        let mut removed = record.clone();
        removed.custody.entries.remove(which);
        prop_assert!(matches!(chain(&removed), Chain::Broken(_)));
        let mut swapped = record.clone();
        swapped.custody.entries.swap(which, which + 1);
        prop_assert!(matches!(chain(&swapped), Chain::Broken(_)));
        record.custody.entries[which].handling.done.push('.');
        prop_assert!(matches!(chain(&record), Chain::Broken(_)));
    }
}
