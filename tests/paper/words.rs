//! A PDF says what the page says, in letters that can be searched and copied, on numbered sheets.

use std::collections::BTreeMap;

use plugwary::record::fingerprint;
use plugwary::report::{page, pdf};

use crate::reader::{about, code, file, run, text};
use crate::{record, records};

/// The words that a page shows, and how often.
fn shown(page: &str) -> BTreeMap<String, usize> {
    let from = page.find("<body>").expect("the page has a body");
    let to = page.find("<script").expect("the page carries the examination");
    let body = page.get(from..to).expect("the body comes first");
    let pieces = body.split('<').map(|piece| piece.split_once('>').map_or(piece, |(_, text)| text));
    let text = pieces.collect::<Vec<_>>().join(" ");
    count(
        &text
            .replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&quot;", "\"")
            .replace("&#39;", "'")
            .replace("&amp;", "&"),
    )
}

fn count(text: &str) -> BTreeMap<String, usize> {
    let mut words = BTreeMap::new();
    for word in text.split_whitespace() {
        *words.entry(word.to_owned()).or_default() += 1;
    }
    words
}

#[test]
fn every_word_of_the_page_is_on_paper_as_often() {
    for (name, record) in records() {
        let made = file("words", &format!("{name}.pdf"), &pdf(&record, &[]));
        let on_paper = count(&text(&made));
        for (word, times) in shown(&page(&record, &[])) {
            let found = on_paper.get(&word).copied().unwrap_or_default();
            assert!(found >= times, "{name}: {word:?} is {times} times on the page and {found} times on paper");
        }
    }
}

#[test]
fn sheets_are_numbered_and_bear_the_number_of_the_sample() {
    for (name, record) in records() {
        let made = file("sheets", &format!("{name}.pdf"), &pdf(&record, &[]));
        let pages: usize = about(&made, "Pages").parse().expect("it is a number");
        let text = text(&made);
        assert!(pages > 1, "{name}");
        for (number, sheet) in (1..=pages).zip(text.split('\u{c}')) {
            assert!(sheet.contains(&format!("Page {number} of {pages}")), "{name}: {sheet}");
            assert!(sheet.contains("Sample number"), "{name}: {sheet}");
        }
    }
}

#[test]
fn letters_and_signs_of_print_are_set_and_all_else_is_shown_by_its_number() {
    let mut record = record("market-stall-lead");
    // What print on a product has, what an address may have, and what no face of ours has.
    "10 Ω 1,5 mm² 4 µF ±5 % 230×2 a–b ’x’ “y” 20 °C Łódź Größe".clone_into(&mut record.examination.sample.title);
    "中 \u{202e}gpj\u{202c} \u{1f50c} \u{7}".clone_into(&mut record.origin);
    let made = file("signs", "signs.pdf", &pdf(&record, &[]));
    let text = text(&made);
    assert!(text.contains("10 Ω 1,5 mm² 4 µF ±5 % 230×2 a–b ’x’ “y” 20 °C Łódź Größe"), "{text}");
    assert!(text.contains("[U+4E2D] [U+202E]gpj[U+202C] [U+1F50C] [U+0007]"), "{text}");
}

#[test]
fn faces_stand_inside_and_say_which_letters_they_show() {
    let made = file("faces", "faces.pdf", &pdf(&record("worn-lead-opened"), &[]));
    let fonts = run("pdffonts", &[], &made);
    let fonts: Vec<&str> = fonts.lines().skip(2).collect();
    assert_eq!(fonts.len(), 2, "{fonts:?}");
    for font in fonts {
        // Embedded, a subset, with a map to letters.
        assert!(font.contains("Literata") && font.contains(" yes yes yes "), "{font}");
    }
}

#[test]
fn square_code_says_number_and_fingerprint() {
    let record = record("market-stall-lead");
    let made = file("code", "code.pdf", &pdf(&record, &[]));
    let json = file("code", "examination.json", plugwary::record::write(&record).as_bytes());
    let outside = run("sha256sum", &[], &json);
    let sha256 = outside.split(' ').next().expect("it begins with the digits");
    assert_eq!(sha256, fingerprint(&record));
    assert_eq!(code(&made), format!("Plugwary sample 0000-E0A1, SHA-256 of the examination {sha256}"));
}
