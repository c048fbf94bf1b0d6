//! Where the sample came from, as the file says it.

use plugwary::domain::custody::{Acquisition, Handling};
use plugwary::record::{Record, append, from_file};
use plugwary::report::page;

use crate::{records, shown};

fn record() -> Record {
    records().remove("market-stall-lead").expect("the case is there")
}

fn held(mut record: Record) -> Record {
    for (who, done, seal) in [("The examiner", "Bought it", "B-0041"), ("A colleague", "Took it over", "")] {
        let handling = Handling {
            when: "2026-11-20T09:15:00Z".to_owned(),
            who: who.to_owned(),
            done: done.to_owned(),
            seal: seal.to_owned(),
        };
        append(&mut record, handling).expect("it can be saved");
    }
    record
}

#[test]
fn nothing_is_said_where_nobody_said_anything() {
    let page = page(&record(), &[]);
    assert!(!shown(&page).contains("<h2>Where it came from</h2>"));
}

#[test]
fn an_acquisition_stands_line_by_line() {
    let mut record = record();
    record.custody.acquisition = Acquisition {
        place: "A fair".to_owned(),
        when: "2026-11-20T09:15:00Z".to_owned(),
        price: "£4".to_owned(),
        ..Acquisition::default()
    };
    let page = page(&record, &[]);
    let expected = "<h2>Where it came from</h2>\n<ul><li>Place: A fair</li>\n<li>When: 20 November 2026, 09:15 UTC</li>\n<li>Price: £4</li>\n</ul>";
    assert!(shown(&page).contains(expected), "{page}");
}

#[test]
fn entries_stand_with_their_numbers_and_what_the_chain_shows_and_cannot_show() {
    let mut record = held(record());
    let page_of = |record: &Record| page(record, &[]);
    let whole = page_of(&record);
    for said in [
        "<li>Entry 1, 20 November 2026, 09:15 UTC, The examiner: Bought it [seal or bag number: B-0041]</li>",
        "<li>Entry 2, 20 November 2026, 09:15 UTC, A colleague: Took it over</li>",
        "The chain is unbroken: each of the 2 entries follows from the one before it.",
        "The chain cannot show that entries at its end were left out",
    ] {
        assert!(shown(&whole).contains(said), "{said}");
    }
    record.custody.entries.remove(0);
    assert!(shown(&page_of(&record)).contains("Entry 1 is missing."));
    record.custody.entries[0].link = None;
    assert!(shown(&page_of(&record)).contains("These entries are not chained"));
}

#[test]
fn a_photo_of_the_parcel_stands_with_the_origin() {
    let text = include_str!("../record/cases/parcel-lead.json");
    let record = plugwary::record::read(text).expect("it is an examination");
    // FIPS 180-4: the message of this digest.
    let page = page(&record, &[(record.photos[0].sha256.clone(), b"abc".to_vec())]);
    let (_, origin) = shown(&page).split_once("<h2>Where it came from</h2>").expect("it is told");
    let (origin, _) = origin.split_once("<h2>").expect("something follows");
    assert!(origin.contains("alt=\"The listing, or the parcel before it was opened.\""), "{origin}");
    let without = plugwary::report::page(&record, &[]);
    assert!(shown(&without).contains("no longer on the device that made this file"));
}

#[test]
fn markup_in_any_of_it_stays_text() {
    let mut record = held(record());
    let hostile = "</li></ul><img src=x onerror=alert(1)><script>alert(1)</script>\u{202e}";
    let text = || hostile.to_owned();
    let when = String::new();
    record.custody.acquisition = Acquisition {
        place: text(),
        when,
        seller: text(),
        price: text(),
        order: text(),
        listing: text(),
        parcel: text(),
    };
    for entry in &mut record.custody.entries {
        entry.handling = Handling { when: String::new(), who: text(), done: text(), seal: text() };
    }
    let page = page(&record, &[]);
    assert!(!page.contains("<img src=x") && !page.contains("<script>alert") && !shown(&page).contains('\u{202e}'));
    // Six texts of the acquisition and three of each entry.
    assert_eq!(shown(&page).matches("&lt;script&gt;alert(1)&lt;/script&gt;[U+202E]").count(), 12);
    assert_eq!(from_file(&page).map(|carried| carried.record), Ok(record));
}
