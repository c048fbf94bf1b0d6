//! Pages that carry an examination and its photos: taken back whole, or refused when they were tampered with.

use plugwary::record::{CarriedPhoto, RecordFault, embed, from_file, write};
use plugwary::report::page;

use crate::by_hand::{case, cases};

/// The message "abc" and its digest (FIPS 180-4, example of SHA-256 with one block) stand in for a photo.
const ABC: (&[u8], &str, &str) = (b"abc", "YWJj", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");

fn carrying(json: &str, body: &str) -> String {
    let json = embed(json);
    format!(
        "<!DOCTYPE html><html><body>{body}\
         <script type=\"application/json\" id=\"plugwary-examination\">{json}</script></body></html>"
    )
}

fn image(sha256: &str, media_type: &str, base64: &str) -> String {
    format!(
        "<figure><img alt=\"a &gt; b\" data-sha256=\"{sha256}\" src=\"data:{media_type};base64,{base64}\"></figure>"
    )
}

/// The lead whose only photo is [`ABC`].
fn with_photo(body: &str) -> Result<Vec<CarriedPhoto>, RecordFault> {
    from_file(&carrying(&write(&case("cut-open-lead.json")), body)).map(|carried| carried.photos)
}

fn abc() -> CarriedPhoto {
    CarriedPhoto { sha256: ABC.2.to_owned(), media_type: "image/jpeg".to_owned(), bytes: ABC.0.to_vec() }
}

#[test]
fn a_bare_examination_is_taken_and_brings_no_photos() {
    for (name, text) in cases() {
        let carried = from_file(&text).unwrap_or_else(|fault| panic!("{name}: {fault}"));
        assert!(carried.photos.is_empty());
    }
}

#[test]
fn a_page_made_by_the_report_brings_its_photos_back() {
    let record = case("cut-open-lead.json");
    let carried = from_file(&page(&record, &[(ABC.2.to_owned(), ABC.0.to_vec())])).expect("the page is taken back");
    assert_eq!(carried.record, record);
    assert_eq!(carried.photos, [abc()]);
}

#[test]
fn a_photo_with_the_bytes_that_were_hashed_comes_along() {
    assert_eq!(with_photo(&image(ABC.2, "image/jpeg", ABC.1)), Ok(vec![abc()]));
}

#[test]
fn a_photo_shown_twice_comes_along_once() {
    let image = image(ABC.2, "image/jpeg", ABC.1);
    assert_eq!(with_photo(&format!("{image}{image}")), Ok(vec![abc()]));
}

#[test]
fn a_photo_behind_the_examination_comes_along_too() {
    let page = carrying(&write(&case("cut-open-lead.json")), "") + &image(ABC.2, "image/jpeg", ABC.1);
    assert_eq!(from_file(&page).map(|carried| carried.photos), Ok(vec![abc()]));
}

#[test]
fn a_page_may_be_made_without_a_photo() {
    assert_eq!(with_photo(""), Ok(Vec::new()));
}

#[test]
fn other_bytes_than_were_hashed_are_refused() {
    let fault = with_photo(&image(ABC.2, "image/jpeg", "YWJk")).expect_err("the photo was changed");
    assert_eq!(fault.to_string(), "photo 1 was changed after the file was made");
}

#[test]
fn one_true_showing_does_not_excuse_a_false_one() {
    let (right, wrong) = (image(ABC.2, "image/jpeg", ABC.1), image(ABC.2, "image/jpeg", "YWJk"));
    for body in [format!("{right}{wrong}"), format!("{wrong}{right}")] {
        assert_eq!(with_photo(&body), Err(RecordFault::PhotoChanged { number: 1 }));
    }
}

#[test]
fn a_photo_of_another_media_type_or_without_bytes_is_refused() {
    for body in [
        image(ABC.2, "image/webp", ABC.1),
        image(ABC.2, "image/svg+xml", ABC.1),
        image(ABC.2, "image/jpeg", "not base64!"),
        format!("<img data-sha256=\"{}\" src=\"elsewhere.jpeg\">", ABC.2),
        format!("<img data-sha256=\"{}\">", ABC.2),
    ] {
        assert_eq!(with_photo(&body), Err(RecordFault::PhotoChanged { number: 1 }), "{body}");
    }
}

#[test]
fn bytes_and_digest_changed_together_are_no_photo_of_this_examination() {
    // SHA-256 of the empty message, as published beside that of "abc".
    let empty = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
    let fault = with_photo(&image(empty, "image/jpeg", "")).expect_err("the photo is not on record");
    assert_eq!(fault.to_string(), "a photo was added after the file was made");
}

#[test]
fn words_that_look_like_a_photo_are_words() {
    let body = format!("<p>data-sha256=\"{}\" src=\"data:image/jpeg;base64,YWJk\"</p><img alt=\"x\">", ABC.2);
    assert_eq!(with_photo(&body), Ok(Vec::new()));
}

#[test]
fn markup_in_every_text_leaves_the_page_with_one_examination() {
    let record = case("markup-in-text.json");
    let page = page(&record, &[]);
    assert_eq!(page.matches("id=\"plugwary-examination\"").count(), 1);
    assert_eq!(from_file(&page).map(|carried| carried.record), Ok(record));
}

#[test]
fn two_examinations_in_a_page_are_refused() {
    let json = write(&case("smallest.json"));
    let page = carrying(&json, &carrying(&json, ""));
    let fault = from_file(&page).expect_err("there are two");
    assert_eq!(fault.to_string(), "the file has more than one examination in it");
}

#[test]
fn a_page_that_ends_inside_its_examination_is_cut_short() {
    let page = carrying(&write(&case("smallest.json")), "");
    let (kept, _) = page.split_once("</script>").expect("the page has an examination");
    for cut in [kept, kept.get(..kept.len() - 40).expect("the cut is in plain text")] {
        assert_eq!(from_file(cut).map_err(|fault| fault.to_string()), Err("the file is cut short".to_owned()));
    }
}

#[test]
fn another_page_is_no_examination() {
    for page in
        ["<html><body>Hello</body></html>", "<script id=\"plugwary-examination\">{}</script>", "", "PK\u{3}\u{4}"]
    {
        assert_eq!(from_file(page), Err(RecordFault::Foreign), "{page}");
    }
}
