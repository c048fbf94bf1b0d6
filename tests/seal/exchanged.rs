//! Seals that are whole and stand where they do not belong, and chains of custody in a sealed page.

use plugwary::record::{Chain, from_file};
use plugwary::report::{page as page_without_key, page_sealed_by};
use plugwary::seal::{Part, PublicKey, State, attach, checked_line, fingerprint, sign, statement};

use crate::{SEALED, key, looked, page, parts, record, sealed, sealed_with};

const SEAL: &str = "<script type=\"application/json\" id=\"plugwary-seal\">";

/// The page before its seal, and the seal with all that follows.
fn halves(sealed: &str) -> (&str, &str) {
    sealed.split_at(sealed.find(SEAL).expect("there is a seal"))
}

#[test]
fn a_seal_that_was_cut_off_is_missed() {
    let sealed = sealed(&page());
    let (body, _) = halves(&sealed);
    for cut in [body.to_owned(), format!("{body}</body>\n</html>\n")] {
        let checked = looked(&cut);
        assert_eq!(checked.state, State::CutOff);
        assert_eq!(checked.key, Some(key()), "the page still names the key");
        assert!(!checked.is_sound());
        assert!(checked_line(&checked, None).contains("its seal is missing"));
    }
}

#[test]
fn the_seal_of_another_file_is_not_that_of_this_one() {
    let mut other = record();
    other.examination.sample.title.push_str(", the second one");
    let other = sealed(&page_sealed_by(&other, &[], &key()));
    let this = sealed(&page());
    let checked = looked(&format!("{}{}", halves(&this).0, halves(&other).1));
    let parts = parts(&checked);
    assert!(parts.contains(&Part::Examination) && parts.contains(&Part::Text), "{parts:?}");
    assert!(checked_line(&checked, None).contains("It may be the seal of another file."));
}

#[test]
fn a_seal_made_by_another_key_over_a_page_that_names_this_one_is_told() {
    // Somebody changes the page and seals it anew with a key of their own, and leaves the mention of the first key as it is.
    let secret = [8; 32];
    let theirs = PublicKey::of(&secret);
    let mine = page();
    let page = mine.replacen(&key().hexadecimal(), &theirs.hexadecimal(), 1);
    let resealed = sealed_with(&secret, &page);
    // The reader is told one key and the seal has another: the fingerprints differ, which is what people compare.
    let checked = looked(&resealed);
    assert_eq!(checked.key, Some(theirs));
    assert!(!resealed.contains(&fingerprint(&theirs)) && resealed.contains(&fingerprint(&key())));
    // With the mention in the head as it was, no seal of theirs fits at all.
    let said = statement(&page, &theirs, SEALED).expect("the page names their key");
    assert!(attach(&mine, &said, &sign(&secret, &said)).is_err());
    let (_, seal) = halves(&resealed);
    let by_hand = format!("{}{seal}", mine.strip_suffix("</body>\n</html>\n").expect("the page ends so"));
    assert_eq!(parts(&looked(&by_hand)), [Part::Text, Part::Key]);
}

#[test]
fn two_seals_are_none() {
    let sealed = sealed(&page());
    let (body, seal) = halves(&sealed);
    let twice = format!("{body}{}{seal}", seal.strip_suffix("</body>\n</html>\n").expect("the page ends so"));
    assert_eq!(parts(&looked(&twice)), [Part::Text]);
}

#[test]
fn a_seal_of_a_later_version_is_not_called_a_forgery() {
    let newer = sealed(&page()).replacen(
        "\"format\":\"plugwary-seal\",\"version\":1",
        "\"format\":\"plugwary-seal\",\"version\":2",
        1,
    );
    let checked = looked(&newer);
    assert_eq!(checked.state, State::Newer);
    assert!(!checked.is_sound());
}

#[test]
fn every_change_of_how_a_seal_is_written_is_seen() {
    let sealed = sealed(&page());
    let (body, seal) = halves(&sealed);
    for (from, to) in [
        ("\"version\":1", "\"version\": 1"),
        ("\"version\":1", "\"version\":1.0"),
        ("\"photos\":[", "\"photos\":[\n"),
        ("\"format\":\"plugwary-seal\"", "\"format\":\"\\u0070lugwary-seal\""),
        ("{\"format\"", "{\"more\":1,\"format\""),
        ("\"sealed\":\"2026-11-24T10:30:00Z\"", "\"sealed\":\"2026-11-24T10:30:01Z\""),
        ("\"}</script>", "\" }</script>"),
        ("\"}</script>", "\",\"signature\":\"\"}</script>"),
    ] {
        assert!(seal.contains(from), "{from}");
        let changed = format!("{body}{}", seal.replacen(from, to, 1));
        assert_eq!(parts(&looked(&changed)), [Part::Seal], "{to}");
    }
}

#[test]
fn a_page_sealed_with_a_broken_chain_is_untouched_and_not_sound() {
    let mut record = record();
    record.custody.entries.remove(1);
    let checked = looked(&sealed(&page_sealed_by(&record, &[], &key())));
    assert_eq!(checked.state, State::Untouched);
    assert!(matches!(checked.chain, Some(Chain::Broken(_))) && !checked.is_sound());
    let line = checked_line(&checked, None);
    assert!(line.contains("\"chain\":\"broken\"") && line.contains("Entry 2 is missing."), "{line}");
}

#[test]
fn entries_cut_off_the_end_are_seen_by_the_seal_and_not_by_the_chain() {
    let mut shorter = record();
    shorter.custody.entries.pop();
    let whole = sealed(&page());
    // Exactly what somebody would do who cuts the last entry off: the examination inside is exchanged.
    let cut = page_sealed_by(&shorter, &[], &key());
    let json = |page: &str| {
        let (_, after) = page.split_once("id=\"plugwary-examination\">").expect("there is one");
        after.split_once("</script>").expect("it ends").0.to_owned()
    };
    let checked = looked(&whole.replacen(&json(&whole), &json(&cut), 1));
    assert_eq!(parts(&checked), [Part::Examination]);
    assert_eq!(checked.chain, Some(Chain::Unbroken(2)));
}

#[test]
fn hostile_text_can_neither_bring_a_seal_nor_break_one() {
    let mut record = record();
    let hostile = format!(
        "\\u003c \\\\u003c \u{2028} &amp; </script>{SEAL}{{}}</script>\n</body>\n</html>\n<meta name=\"plugwary-sealed-by\" content=\"{}\"><img alt=\"\" data-sha256=\"0\" src=\"data:image/jpeg;base64,AA==\">",
        "0".repeat(64)
    );
    let acquisition = &mut record.custody.acquisition;
    for text in [
        &mut record.origin,
        &mut record.examination.sample.title,
        &mut acquisition.place,
        &mut acquisition.seller,
        &mut acquisition.price,
        &mut acquisition.order,
        &mut acquisition.listing,
        &mut acquisition.parcel,
    ] {
        text.clone_from(&hostile);
    }
    for entry in &mut record.custody.entries {
        let handling = &mut entry.handling;
        (handling.who, handling.done, handling.seal) = (hostile.clone(), hostile.clone(), hostile.clone());
    }
    let plain = looked(&page_without_key(&record, &[]));
    assert_eq!(plain.state, State::NotSealed);
    let sealed = sealed(&page_sealed_by(&record, &[], &key()));
    assert_eq!(sealed.matches(SEAL).count(), 1);
    assert_eq!(looked(&sealed).state, State::Untouched);
    // What was made safe to stand in the page is hashed as it was before.
    assert!(sealed.contains(&format!("\"examination\":\"{}\"", plugwary::record::fingerprint(&record))));
    assert_eq!(from_file(&sealed).map(|carried| carried.record), Ok(record));
}
