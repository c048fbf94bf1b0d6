//! The document as one page of HTML that stands on its own, with the examination inside it.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use super::content::Content;
use super::document::{Block, Run, Tone};
use super::markup::Markup;
use crate::drawing::found::Picture;
use crate::record::{self, Photo, Record};
use crate::seal::{self, PublicKey};
use crate::words::claims::ClaimTable;
use crate::words::report as words;

const STYLE: &str = include_str!("page.css");

/// The self-contained page for a record. `photos` are the stored bytes by SHA-256; a photo whose bytes are not there is named as missing.
pub fn page(record: &Record, photos: &[(String, Vec<u8>)]) -> String {
    page_of(record, photos, None)
}

/// The same page, to be sealed with a key, which it names: to those who read it and to those who check it.
pub fn page_sealed_by(record: &Record, photos: &[(String, Vec<u8>)], key: &PublicKey) -> String {
    page_of(record, photos, Some(key))
}

fn page_of(record: &Record, photos: &[(String, Vec<u8>)], key: Option<&PublicKey>) -> String {
    let content = Content::of(record, photos, key);
    let mut page = Markup::default();
    page.raw("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n")
        .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .raw("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'\">\n")
        .raw(&key.map(seal::mention).unwrap_or_default())
        .element("title", "", &content.title)
        .raw("<style>\n")
        .raw(STYLE)
        .raw("</style>\n</head>\n<body>\n<main>\n");
    put(&mut page, &content.blocks);
    page.raw("</main>\n");
    carry(&mut page, "plugwary-examination", &record::write(record));
    carry(&mut page, "plugwary-verdict", &record::judged_line(record));
    page.raw(seal::ENDING);
    page.into_string()
}

/// Puts data into the page that a program can take back; it is never run as a script.
fn carry(page: &mut Markup, id: &str, json: &str) {
    page.raw("<script type=\"application/json\" id=\"")
        .text(id)
        .raw("\">")
        .raw(&record::embed(json))
        .raw("</script>\n");
}

fn put(page: &mut Markup, blocks: &[Block]) {
    for block in blocks {
        match block {
            Block::Verdict(code, headline, reach) => {
                page.open("header", &format!("verdict {code}"))
                    .element("h1", "", headline)
                    .element("p", "", reach)
                    .close("header");
            }
            Block::Heading(text) => {
                page.element("h2", "", text);
            }
            Block::Subheading(text) => {
                page.element("h3", "", text);
            }
            Block::Text(tone, text) => {
                page.element("p", class(*tone), text);
            }
            Block::Said(bar, runs) => {
                page.open("p", &format!("said bar-{}", bar.code()));
                for run in runs {
                    said(page, run);
                }
                page.close("p");
            }
            Block::Section(bar, blocks) => {
                page.open("section", &format!("said bar-{}", bar.code()));
                put(page, blocks);
                page.close("section");
            }
            Block::Claims(table) => claims(page, table),
            Block::List(tone, lines) => {
                page.open("ul", class(*tone));
                for line in lines {
                    page.element("li", "", line);
                }
                page.close("ul");
            }
            Block::Picture(picture) => self::picture(page, picture),
            Block::Photo(photo, bytes, shows) => self::photo(page, photo, bytes, shows),
        }
    }
}

const fn class(tone: Tone) -> &'static str {
    match tone {
        Tone::Plain => "",
        Tone::Small => "small",
        Tone::Advice => "advice",
        Tone::Subject => "subject",
        Tone::Numbers => "numbers",
        Tone::Source => "source",
    }
}

fn said(page: &mut Markup, run: &Run) {
    match run {
        Run::Plain(text) => page.text(text),
        Run::Strong(text) => page.element("b", "", text),
        Run::Small(text) => page.raw(" ").element("small", "", text),
    };
}

fn claims(page: &mut Markup, table: &ClaimTable) {
    page.raw("<div class=\"wide\"><table>\n<tr><td></td>");
    for column in &table.columns {
        page.element("th", "", column);
    }
    page.raw("</tr>\n");
    for row in &table.rows {
        page.raw("<tr>").open("th", "").text(&row.name);
        if row.is_contradicted {
            page.raw("<br>").element("b", "", words::DISAGREE);
        }
        page.close("th");
        for cell in &row.cells {
            page.open("td", "").text(cell).close("td");
        }
        page.raw("</tr>\n");
    }
    page.raw("</table></div>\n");
}

/// A picture with its notes.
fn picture(page: &mut Markup, picture: &Picture) {
    page.open("figure", "").raw(&picture.svg);
    if !picture.notes.is_empty() {
        page.open("figcaption", "small");
        for note in &picture.notes {
            page.element("div", "", note);
        }
        page.close("figcaption");
    }
    page.close("figure");
}

fn photo(page: &mut Markup, photo: &Photo, bytes: &[u8], shows: &str) {
    page.raw("<figure><img alt=\"")
        .text(shows)
        .raw("\" data-sha256=\"")
        .text(&photo.sha256)
        .raw("\" src=\"data:")
        .text(&photo.media_type)
        .raw(";base64,")
        .raw(&STANDARD.encode(bytes))
        .raw("\">")
        .element("figcaption", "small", &words::photo_of(&photo.taken, &photo.sha256))
        .close("figure");
}
