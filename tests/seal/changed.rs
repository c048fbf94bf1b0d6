//! One byte of a sealed page changed, put in or taken out, anywhere: it is never untouched, and the part is named.

use std::ops::Range;
use std::sync::LazyLock;

use plugwary::seal::{Part, State, check, checked_line};
use proptest::prelude::*;
use proptest::sample::Index;

use crate::{page, sealed};

/// The page that is changed here.
static SEALED: LazyLock<String> = LazyLock::new(|| sealed(&page()));

/// What is done to a byte.
#[derive(Debug, Clone, Copy)]
enum Deed {
    Flip(u8),
    Insert(u8),
    Delete,
}

fn deed() -> impl Strategy<Value = Deed> {
    // Bytes that mean something to one of the readers come up more often.
    let byte = prop_oneof![any::<u8>(), proptest::sample::select(b"\"\\<>&{}[],:= \n0aA\xff".to_vec())];
    prop_oneof![(1_u8..).prop_map(Deed::Flip), byte.prop_map(Deed::Insert), Just(Deed::Delete)]
}

fn done(page: &str, at: usize, deed: Deed) -> Vec<u8> {
    let mut bytes = page.as_bytes().to_vec();
    match deed {
        Deed::Flip(bits) => *bytes.get_mut(at).expect("the byte is there") ^= bits,
        Deed::Insert(byte) => bytes.insert(at, byte),
        Deed::Delete => drop(bytes.remove(at)),
    }
    bytes
}

/// From behind some text to before another.
#[track_caller]
fn between(page: &str, from: &str, to: &str) -> Range<usize> {
    let start = page.find(from).expect("it stands there") + from.len();
    let length = page[start..].find(to).expect("it ends");
    start..start + length
}

/// A stretch of a page, and whether some parts are the right ones to name for it.
type Region = (&'static str, Range<usize>, fn(&State) -> bool);

fn named(state: &State, must: Part, may: &[Part]) -> bool {
    matches!(state, State::Altered(parts)
        if parts.contains(&must) && parts.iter().all(|part| *part == must || may.contains(part)))
}

fn regions(page: &str) -> Vec<Region> {
    let text = |state: &State| named(state, Part::Text, &[Part::Key]);
    let seal = |state: &State| named(state, Part::Seal, &[]) || *state == State::Newer;
    let of_seal = |field: &str| {
        let block = between(page, "id=\"plugwary-seal\">", "</script>");
        let inside = between(&page[block.clone()], &format!("\"{field}\":\""), "\"");
        block.start + inside.start..block.start + inside.end
    };
    let examination = between(page, "id=\"plugwary-examination\">", "</script>");
    let verdict = between(page, "id=\"plugwary-verdict\">", "</script>");
    let opening = page.find("<script type=\"application/json\" id=\"plugwary-seal\">").expect("there is a seal");
    let ending = page.rfind("</script>").expect("the seal ends") + "</script>\n".len();
    vec![
        ("head", 0..page.find("<body>").expect("there is a body"), text),
        ("text", between(page, "<h1>", "</h1>"), |state| named(state, Part::Text, &[])),
        ("photo", between(page, ";base64,", "\""), |state| named(state, Part::Photo(1), &[Part::Text])),
        ("photo’s name", between(page, "data-sha256=\"", "\""), |state| named(state, Part::Photo(1), &[Part::Text])),
        ("examination", examination, |state| named(state, Part::Examination, &[])),
        ("verdict", verdict, |state| named(state, Part::Verdict, &[])),
        ("before the seal", opening - 10..opening, |state| {
            named(state, Part::Text, &[]) || named(state, Part::Verdict, &[Part::Text])
        }),
        ("opening of the seal", opening + 1..opening + 50, |state| *state == State::CutOff),
        ("seal", between(page, "id=\"plugwary-seal\">", "</script>"), seal),
        ("seal’s key", of_seal("key"), seal),
        ("seal’s time", of_seal("sealed"), seal),
        ("seal’s digest of the examination", of_seal("examination"), seal),
        ("seal’s digest of the page", of_seal("page"), seal),
        ("signature", of_seal("signature"), seal),
        ("ending", ending - 1..page.len(), |state| named(state, Part::Behind, &[]) || named(state, Part::Seal, &[])),
    ]
}

#[test]
fn a_byte_behind_the_end_is_named() {
    let page = SEALED.as_str();
    for more in [" ", "\n", "<", "\0", "</html>\n", "<script>alert(1)</script>"] {
        let state = check(format!("{page}{more}").as_bytes()).state;
        assert_eq!(state, State::Altered(vec![Part::Behind]), "{more:?}");
    }
}

#[test]
fn a_page_cut_anywhere_in_its_seal_is_not_untouched() {
    let page = SEALED.as_str();
    let seal = page.find("<script type=\"application/json\" id=\"plugwary-seal\">").expect("there is a seal");
    for cut in seal - 2..page.len() {
        let state = check(&page.as_bytes()[..cut]).state;
        assert!(!matches!(state, State::Untouched | State::NotSealed), "{cut}: {state:?}");
    }
}

#[test]
fn both_a_photo_and_the_text_are_named_where_both_were_changed() {
    let page = SEALED.as_str();
    let photo = between(page, ";base64,", "\"").start;
    let bytes = done(page, photo, Deed::Flip(1));
    let changed = String::from_utf8(bytes).expect("it is text").replacen("<h1>", "<h1>Not ", 1);
    let State::Altered(parts) = check(changed.as_bytes()).state else { unreachable!("it was changed") };
    assert_eq!(parts, [Part::Photo(1), Part::Text]);
}

#[test]
fn a_photo_taken_out_is_named_with_the_text_around_it() {
    let page = SEALED.as_str();
    let figure = page.find("<figure><img alt").expect("there is a photo");
    let end = figure + page[figure..].find("</figure>\n").expect("it ends") + "</figure>\n".len();
    let State::Altered(parts) = check([&page[..figure], &page[end..]].concat().as_bytes()).state else {
        unreachable!("it was changed")
    };
    assert_eq!(parts, [Part::Photo(1), Part::Text]);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn a_byte_changed_anywhere_is_noticed(at in any::<Index>(), deed in deed()) {
        let page = SEALED.as_str();
        let bytes = done(page, at.index(page.len()), deed);
        // A byte put beside its like gives the same bytes as one put on its other side, but never the page itself.
        let checked = check(&bytes);
        prop_assert_ne!(&checked.state, &State::Untouched);
        prop_assert!(!checked.is_sound());
        let line = checked_line(&checked, None);
        prop_assert!(line.starts_with("{\"state\":"), "{}", line);
    }

    #[test]
    fn what_was_changed_is_named(which in any::<Index>(), at in any::<Index>(), deed in deed()) {
        let page = SEALED.as_str();
        let regions = regions(page);
        let (name, range, is_right) = &regions[which.index(regions.len())];
        let at = range.start + at.index(range.len());
        let state = check(&done(page, at, deed)).state;
        prop_assert!(is_right(&state), "{name}, byte {at}: {state:?}");
    }

    #[test]
    fn bytes_of_any_sort_are_looked_at(before in any::<Vec<u8>>(), inside in ".{0,200}", behind in any::<Vec<u8>>()) {
        let seal = format!("<script type=\"application/json\" id=\"plugwary-seal\">{inside}</script>\n</body>\n</html>\n");
        let checked = check(&[before.as_slice(), seal.as_bytes(), &behind].concat());
        prop_assert_ne!(&checked.state, &State::Untouched);
        prop_assert!(!checked_line(&checked, Some("file")).contains('\n'));
    }
}
