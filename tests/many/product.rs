//! Samples of one product put together by a stated rule, and what they share.

use plugwary::collection::{Product, SameBy, products};
use plugwary::domain::examination::Answer;
use plugwary::domain::sample::Kind;
use plugwary::record::Record;
use plugwary::words::collection::{in_common, same_by};

use crate::{Shelf, record};

/// Invented numbers whose last digit fits (GS1), worked out by hand: 2 · 1 + 1 · 3 = 5, and 5 more make ten; 2 · 3 = 6, and 4 more.
const ONE: &str = "2000000000015";
const ANOTHER: &str = "20000004";

fn barcoded(number: u8, title: &str, barcode: &str) -> Record {
    record(number, title, &[("barcode", Answer::Printed(barcode.to_owned()))])
}

fn grouped(records: Vec<Record>) -> Vec<(SameBy, Vec<usize>)> {
    let shelf = Shelf::of(records);
    products(&shelf.seen()).into_iter().map(|product| (product.same_by, product.samples)).collect()
}

fn by_number(number: &str) -> SameBy {
    SameBy::Barcode(number.to_owned())
}

#[test]
fn one_number_is_one_product_whatever_the_samples_are_called() {
    let records =
        vec![barcoded(1, "white", ONE), barcoded(2, "grey", "2 000000 000015"), barcoded(3, "white", ANOTHER)];
    assert_eq!(grouped(records), [(by_number(ONE), vec![0, 1])]);
}

#[test]
fn a_number_whose_last_digit_does_not_fit_puts_nobody_together() {
    let wrong = "2000000000016";
    assert_eq!(grouped(vec![barcoded(1, "", wrong), barcoded(2, "", wrong)]), []);
}

#[test]
fn without_a_number_the_title_leads_to_the_only_number_that_has_it() {
    let records = vec![record(1, " White  LEAD", &[]), barcoded(2, "white lead", ONE)];
    assert_eq!(grouped(records), [(by_number(ONE), vec![0, 1])]);
}

#[test]
fn a_title_that_leads_to_two_numbers_leads_to_neither() {
    let records =
        vec![barcoded(1, "lead", ONE), barcoded(2, "lead", ANOTHER), record(3, "Lead", &[]), record(4, "lead", &[])];
    assert_eq!(grouped(records), [(SameBy::Title("lead".to_owned()), vec![2, 3])]);
}

#[test]
fn kinds_examples_and_samples_without_a_name_stay_apart() {
    let mut cord = record(2, "lead", &[]);
    cord.examination.sample.kind = Kind::CordSet;
    let mut example = record(3, "lead", &[]);
    example.is_example = true;
    assert_eq!(grouped(vec![record(1, "lead", &[]), cord, example, record(4, "", &[]), record(5, "", &[])]), []);
}

#[track_caller]
fn one_product(records: Vec<Record>) -> Product {
    let shelf = Shelf::of(records);
    let mut products = products(&shelf.seen());
    assert_eq!(products.len(), 1);
    products.remove(0)
}

#[test]
fn what_is_wrong_with_all_is_told_apart_from_what_is_wrong_with_some() {
    let fuse = |answer| ("fuse-in-the-holder", Answer::One(answer));
    let sleeves = |answers| ("pins-and-sleeves", Answer::Any(answers));
    let product = one_product(vec![
        record(1, "lead", &[fuse("empty"), sleeves(vec!["no-sleeves"])]),
        record(2, "lead", &[fuse("empty"), sleeves(vec![])]),
        record(3, "lead", &[fuse("empty")]),
    ]);
    assert!(product.in_all.contains(&"fuse-missing"), "{product:?}");
    let some = product.in_some.iter().find(|broken| broken.code == "sleeve-missing");
    assert_eq!(some.map(|broken| (broken.broke, broken.looked)), Some((1, 2)), "{product:?}");
    let lines = in_common(&product);
    assert!(lines.iter().any(|line| line.starts_with("All 3 have: ")), "{lines:?}");
    assert!(lines.last().is_some_and(|line| line.contains("cannot tell")), "{lines:?}");
    assert_eq!(same_by(&product), "3 samples called “lead”");
}
