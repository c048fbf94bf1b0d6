//! Pages that nobody changed: they are told to be so, they say which key sealed them, and the app takes them back.

use plugwary::record::digest::sha256;
use plugwary::record::{fingerprint, from_file, judged_line};
use plugwary::report::{page, page_sealed_by};
use plugwary::seal::{self, Again, PublicKey, SealFault, State, attach, checked_line, sign, statement};
use serde_json::Value;

use crate::{ABC, SEALED, SECRET, key, looked, page as unsealed, record, sealed, sealed_with};

#[test]
fn a_sealed_page_is_untouched_and_says_by_which_key_and_when() {
    let checked = looked(&sealed(&unsealed()));
    assert_eq!(checked.state, State::Untouched);
    assert_eq!(checked.key, Some(key()));
    assert_eq!(checked.sealed, SEALED);
    assert_eq!(checked.record, Ok(record()));
    assert_eq!(checked.again, Some(Again::Same));
    assert!(checked.is_sound());
}

#[test]
fn every_case_can_be_sealed() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/examinations/cases");
    for file in std::fs::read_dir(folder).expect("the cases are there") {
        let path = file.expect("the entry can be read").path();
        let text = std::fs::read_to_string(&path).expect("the case is text");
        let record = plugwary::record::read(&text).expect("the case is an examination");
        let checked = looked(&sealed(&page_sealed_by(&record, &[], &key())));
        assert!(checked.is_sound(), "{}: {:?}", path.display(), checked.state);
        assert_eq!(checked.again, Some(Again::Same), "{}", path.display());
    }
}

#[test]
fn the_page_tells_its_reader_the_key_how_to_check_and_what_is_not_claimed() {
    let page = unsealed();
    assert!(page.matches(&seal::fingerprint(&key())).count() >= 2, "near the top and at the end");
    assert!(page.contains("plugwary judge --check FILE"));
    assert!(page.contains("The seal says nothing about who the examiner is"));
    assert!(page.contains("clock, which anybody can set"));
    let head = page.split("<body>").next().expect("there is a head");
    assert!(head.contains(&format!("<meta name=\"plugwary-sealed-by\" content=\"{}\">", key().hexadecimal())));
    assert!(!page_without_key().contains("plugwary-sealed-by"));
}

fn page_without_key() -> String {
    page(&record(), &[(ABC.0.to_owned(), ABC.1.to_vec())])
}

#[test]
fn a_sealed_page_is_taken_back_as_the_one_that_was_not_sealed() {
    let (without, with) = (from_file(&page_without_key()), from_file(&sealed(&unsealed())));
    assert!(with.is_ok());
    assert_eq!(without, with);
}

#[test]
fn the_statement_has_the_digests_of_each_part() {
    let page = unsealed();
    let bytes = statement(&page, &key(), SEALED).expect("the page is made for the key");
    let text = String::from_utf8(bytes).expect("it is text");
    let (prefix, json) = text.split_once('\n').expect("a line stands before it");
    assert_eq!(prefix, "plugwary-seal 1");
    let says: Value = serde_json::from_str(json).expect("it is JSON");
    assert_eq!(says["format"], "plugwary-seal");
    assert_eq!(says["version"], 1);
    assert_eq!(says["key"], key().hexadecimal());
    assert_eq!(says["sealed"], SEALED);
    // The same as on paper.
    assert_eq!(says["examination"], fingerprint(&record()));
    assert_eq!(says["verdict"], sha256(judged_line(&record()).as_bytes()));
    assert_eq!(says["photos"], serde_json::json!([ABC.0]));
    let body = page.strip_suffix("</body>\n</html>\n").expect("the page ends so");
    assert_eq!(says["page"], sha256(body.as_bytes()));
    assert_eq!(says["rule_book"]["edition"], plugwary::domain::assess::RuleBook::CURRENT.edition);
    assert_eq!(says["rule_book"]["sha256"], sha256(plugwary::report::limits().as_bytes()));
}

#[test]
fn the_same_page_key_and_time_give_the_same_seal() {
    assert_eq!(sealed(&unsealed()), sealed(&unsealed()));
}

#[test]
fn another_key_shows_another_fingerprint() {
    let secret = [8; 32];
    let other = PublicKey::of(&secret);
    let page = sealed_with(&secret, &page_sealed_by(&record(), &[], &other));
    let checked = looked(&page);
    assert_eq!(checked.state, State::Untouched);
    assert_eq!(checked.key, Some(other));
    assert_ne!(seal::fingerprint(&other), seal::fingerprint(&key()));
    assert!(checked_line(&checked, None).contains(&seal::fingerprint(&other)));
}

#[test]
fn only_a_page_that_names_the_key_gets_its_seal() {
    let page = unsealed();
    assert_eq!(statement(&page_without_key(), &key(), SEALED), Err(SealFault::OtherKey));
    assert_eq!(statement(&page, &PublicKey::of(&[8; 32]), SEALED), Err(SealFault::OtherKey));
    assert_eq!(statement(&page, &key(), "yesterday"), Err(SealFault::Moment));
    let key_alone = format!("{}</body>\n</html>\n", seal::mention(&key()));
    for none in ["", &key_alone, &sealed(&page), page.trim_end()] {
        assert_eq!(statement(none, &key(), SEALED), Err(SealFault::NotAPage));
    }
}

#[test]
fn only_what_belongs_together_is_put_together() {
    let page = unsealed();
    let said = statement(&page, &key(), SEALED).expect("the page is made for the key");
    let signature = sign(&SECRET, &said);
    let attached = |page: &str, said: &[u8], signature: &[u8]| attach(page, said, signature);
    assert!(attached(&page, &said, &signature).is_ok());
    assert_eq!(attached(&page, &said, &sign(&[8; 32], &said)), Err(SealFault::Signature));
    assert_eq!(attached(&page, &said, &signature[..63]), Err(SealFault::Signature));
    assert_eq!(attached(&page, &said[1..], &signature), Err(SealFault::OtherPage));
    assert_eq!(attached(&page, b"", &signature), Err(SealFault::OtherPage));
    let changed = page.replacen("<h1>", "<h1>!", 1);
    assert_eq!(attached(&changed, &said, &signature), Err(SealFault::OtherPage));
    assert_eq!(attached(page.trim_end(), &said, &signature), Err(SealFault::NotAPage));
}

#[test]
fn a_page_without_a_seal_and_a_bare_examination_are_told_to_have_none() {
    for text in [page_without_key(), plugwary::record::write(&record())] {
        let checked = looked(&text);
        assert_eq!(checked.state, State::NotSealed);
        assert_eq!((checked.key, checked.record), (None, Ok(record())));
    }
}
