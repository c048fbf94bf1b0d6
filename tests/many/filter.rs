//! Which samples are meant: words, verdict, kind, market, seller and what is wrong.

use plugwary::collection::{Filter, breaks, seller, sellers, text};
use plugwary::domain::examination::Answer;
use plugwary::domain::finding::Conformity;
use plugwary::domain::sample::Kind;
use plugwary::domain::verdict::Verdict;

use crate::{Shelf, cases, record};

fn kept(shelf: &Shelf, filter: &Filter) -> Vec<String> {
    let seen = shelf.seen();
    seen.into_iter().filter(|seen| filter.keeps(*seen)).map(|seen| seen.record.id.clone()).collect()
}

fn words(words: &str) -> Filter {
    Filter { words: words.to_owned(), ..Filter::default() }
}

fn shelf() -> Shelf {
    let mut first = record(1, "White Lead", &[("fuse-in-the-holder", Answer::One("empty"))]);
    "2026-014".clone_into(&mut first.examination.sample.number);
    " Saturday market, stall by the bridge ".clone_into(&mut first.origin);
    let mut second = record(2, "Grey lead", &[("flex-print", Answer::Printed("H05VV-F 3G1.25 ÄRGER".to_owned()))]);
    second.examination.sample.kind = Kind::CordSet;
    "parcel".clone_into(&mut second.origin);
    Shelf::of([first, second, record(3, "", &[])])
}

#[test]
fn every_word_must_occur_somewhere_in_large_or_small_letters() {
    let shelf = shelf();
    let id = |number: u8| format!("{number:032x}");
    for (wanted, found) in [
        ("lead", vec![1, 2]),
        ("LEAD white", vec![1]),
        ("bridge 2026-014", vec![1]),
        ("h05vv-f", vec![2]),
        ("ärger", vec![2]),
        // What is wrong is found by its words and by its code; what nobody looked at is not.
        ("fuse-missing", vec![1]),
        ("white parcel", vec![]),
        ("   ", vec![1, 2, 3]),
        ("00000000000000000000000000000003", vec![3]),
    ] {
        // Every lead is a lead: the kind's own words are text too.
        let mut found: Vec<String> = found.into_iter().map(id).collect();
        if wanted == "lead" {
            found.push(id(3));
        }
        assert_eq!(kept(&shelf, &words(wanted)), found, "{wanted}");
    }
}

#[test]
fn what_is_left_open_is_anything_and_all_that_is_said_must_hold() {
    let shelf = shelf();
    assert_eq!(kept(&shelf, &Filter::default()).len(), 3);
    let keep_away = Filter { verdict: Some(Verdict::KeepAway), ..Filter::default() };
    assert_eq!(kept(&shelf, &keep_away).len(), 1);
    assert_eq!(kept(&shelf, &Filter { kind: Some(Kind::CordSet), ..keep_away.clone() }).len(), 0);
    let seller = Filter { seller: Some("parcel".to_owned()), ..Filter::default() };
    assert_eq!(kept(&shelf, &seller), [format!("{:032x}", 2)]);
    assert_eq!(kept(&shelf, &Filter { breaks: Some("fuse-missing".to_owned()), ..Filter::default() }).len(), 1);
    assert_eq!(kept(&shelf, &Filter { breaks: Some("no-such-thing".to_owned()), ..Filter::default() }).len(), 0);
}

#[test]
fn sellers_and_faults_are_counted() {
    let shelf = shelf();
    let seen = shelf.seen();
    assert_eq!(sellers(&seen), [("Saturday market, stall by the bridge", 1), ("parcel", 1)]);
    assert_eq!(seller(seen[0].record), "Saturday market, stall by the bridge");
    assert!(breaks(&seen).contains(&("fuse-missing", 1)));
}

#[test]
fn a_sample_is_found_by_what_is_wrong_with_it_alone() {
    let shelf = Shelf::of(cases().into_values());
    for seen in shelf.seen() {
        let text = text(seen);
        assert_eq!(text, text.to_lowercase());
        for finding in &seen.assessment.findings {
            let filter = Filter { breaks: Some(finding.code.to_owned()), ..Filter::default() };
            assert_eq!(filter.keeps(seen), finding.outcome() == Conformity::Nonconforming, "{}", finding.code);
        }
    }
}
