//! The blocks of a document, each set on paper.

use super::drawn;
use super::face::Weight;
use super::flow::{A4, Flow, PLAIN, SMALL, f32_of};
use super::jpeg::Jpeg;
use super::setting::{self, Line, Style};
use super::sheet::{Area, INK, INK_2, Ink, PAPER};
use crate::record::Photo;
use crate::report::document::{Block, Run, Tone};
use crate::words::claims::ClaimTable;
use crate::words::{paper as words, report};

const TITLE: Style = Style { weight: Weight::Strong, size: 21.0, leading: 26.0, grey: INK };
const HEADING: Style = Style { weight: Weight::Strong, size: 13.0, leading: 18.0, grey: INK };
const SUBHEADING: Style = Style { weight: Weight::Strong, ..PLAIN };
/// Between the verdict and its frame.
const INSIDE: f32 = 10.0;
/// A photo takes at most so much of a sheet, which leaves room for its sentence.
const TALLEST_PHOTO: f32 = 300.0;
const WIDEST_PHOTO: f32 = 400.0;

/// A photo as it goes into the PDF.
#[derive(Debug, Clone, Copy)]
pub struct Taken<'a> {
    /// What its header says.
    pub jpeg: Jpeg,
    /// All of it.
    pub bytes: &'a [u8],
}

/// Sets blocks one below the other, and collects the photos among them. What is not too tall stays on one sheet, a heading with what it heads.
pub fn set<'a>(flow: &mut Flow, blocks: &[Block<'a>], photos: &mut Vec<Taken<'a>>) {
    let mut rest = blocks;
    while let Some((block, following)) = rest.split_first() {
        let is_heading = matches!(block, Block::Heading(_) | Block::Subheading(_));
        let headed = following.first().filter(|_| is_heading);
        flow.keep(needed(flow, block) + headed.map_or(0.0, |next| needed(flow, next)));
        put(flow, block, photos);
        rest = following;
    }
}

/// The height that a block needs to begin on a sheet: all of it, or a few lines where it is taller than half a sheet.
fn needed(flow: &Flow, block: &Block) -> f32 {
    let mut trial = flow.trial();
    put(&mut trial, block, &mut Vec::new());
    trial.height().filter(|height| *height < A4.1 / 2.0).unwrap_or(5.0 * PLAIN.leading)
}

fn put<'a>(flow: &mut Flow, block: &Block<'a>, photos: &mut Vec<Taken<'a>>) {
    match block {
        Block::Verdict(code, headline, reach) => verdict(flow, *code == "keep-away", headline, reach),
        Block::Heading(text) => heading(flow, text),
        Block::Subheading(text) => {
            flow.skip(6.0);
            flow.paragraph(SUBHEADING, &[Run::Plain(text.clone())]);
        }
        Block::Text(tone, text) => paragraph(flow, *tone, text),
        Block::Said(bar, runs) => {
            flow.beside(*bar, |flow| flow.paragraph(PLAIN, runs));
            flow.skip(3.0);
        }
        Block::Section(bar, blocks) => {
            flow.beside(*bar, |flow| set(flow, blocks, photos));
            flow.skip(9.0);
        }
        Block::Claims(table) => claims(flow, table),
        Block::List(tone, entries) => {
            for entry in entries {
                paragraph(flow, *tone, &format!("•\u{a0}{entry}"));
            }
        }
        Block::Picture(picture) => drawn::set(flow, picture),
        Block::Photo(photo, bytes, _) => self::photo(flow, photo, bytes, photos),
    }
}

fn verdict(flow: &mut Flow, is_filled: bool, headline: &str, reach: &str) {
    let grey = if is_filled { PAPER } else { INK };
    let width = flow.width() - 2.0 * INSIDE;
    let of = |flow: &Flow, style, text: &str| {
        setting::lines(flow.faces, Style { grey, ..style }, &[Run::Plain(text.to_owned())], width)
    };
    let (title, reach) = (of(flow, TITLE, headline), of(flow, PLAIN, reach));
    let height = TITLE.leading * f32_of(title.len()) + PLAIN.leading * f32_of(reach.len()) + 2.0 * INSIDE;
    flow.skip(4.0);
    flow.area(height, |flow, area| {
        flow.sheet().rect(area, if is_filled { Ink::Fill(INK) } else { Ink::Line(1.5) });
        let mut y = area.y + INSIDE;
        for (style, lines) in [(TITLE, title), (PLAIN, reach)] {
            for line in lines {
                flow.draw(&line, (area.x + INSIDE, y + style.leading * 0.74));
                y += style.leading;
            }
        }
    });
    flow.skip(6.0);
}

fn heading(flow: &mut Flow, text: &str) {
    flow.skip(16.0);
    flow.area(5.0, |flow, area| rule(flow, area.y, area, 1.5));
    flow.paragraph(HEADING, &[Run::Plain(text.to_owned())]);
    flow.skip(2.0);
}

fn paragraph(flow: &mut Flow, tone: Tone, text: &str) {
    let style = match tone {
        Tone::Plain | Tone::Numbers => PLAIN,
        Tone::Advice => SUBHEADING,
        Tone::Small | Tone::Source => SMALL,
        Tone::Subject => Style { grey: INK_2, ..PLAIN },
    };
    flow.paragraph(style, &[Run::Plain(text.to_owned())]);
    flow.skip(2.5);
}

/// A level line through an area.
fn rule(flow: &mut Flow, y: f32, area: Area, width: f32) {
    flow.sheet().path(&[(area.x, y), (area.x + area.width, y)], false, Ink::Line(width));
}

/// A table: a quarter of the width for names, and the places share the rest.
fn claims(flow: &mut Flow, table: &ClaimTable) {
    const GAP: f32 = 8.0;
    let plain = |text: &String| vec![Run::Plain(text.clone())];
    let head = std::iter::once(Vec::new()).chain(table.columns.iter().map(plain)).collect::<Vec<_>>();
    let body = table.rows.iter().map(|row| {
        let mut name = plain(&row.name);
        if row.is_contradicted {
            name.push(Run::Strong(format!(" {}", report::DISAGREE)));
        }
        (PLAIN, std::iter::once(name).chain(row.cells.iter().map(plain)).collect::<Vec<_>>())
    });
    let first = flow.width() / 4.0;
    let other = (flow.width() - first) / f32_of(table.columns.len());
    for (style, cells) in std::iter::once((SMALL, head)).chain(body) {
        let widths = std::iter::once(first).chain(std::iter::repeat(other)).map(|width| width - GAP);
        let lines: Vec<Vec<Line>> =
            cells.iter().zip(widths).map(|(cell, width)| setting::lines(flow.faces, style, cell, width)).collect();
        let tallest = lines.iter().map(Vec::len).max().unwrap_or_default();
        flow.area(style.leading * f32_of(tallest) + 5.0, |flow, area| row(flow, area, style, &lines, (first, other)));
    }
    flow.skip(3.0);
}

fn row(flow: &mut Flow, area: Area, style: Style, cells: &[Vec<Line>], (first, other): (f32, f32)) {
    for (column, lines) in (0..).zip(cells) {
        let x = area.x + if column == 0 { 0.0 } else { first + f32_of(column - 1) * other };
        for (number, line) in (0..).zip(lines) {
            flow.draw(line, (x, area.y + style.leading * (0.74 + f32_of(number))));
        }
    }
    rule(flow, area.y + area.height - 2.0, area, 0.4);
}

fn photo<'a>(flow: &mut Flow, photo: &Photo, bytes: &'a [u8], photos: &mut Vec<Taken<'a>>) {
    let Some(jpeg) = Jpeg::of(bytes) else {
        return flow.paragraph(SMALL, &[Run::Plain(words::PHOTO_NOT_HERE.to_owned())]);
    };
    let (width, height) = (f32::from(jpeg.width), f32::from(jpeg.height));
    let scale = (flow.width().min(WIDEST_PHOTO) / width).min(TALLEST_PHOTO / height);
    let caption = [Run::Plain(report::photo_of(&photo.taken, &photo.sha256))];
    flow.skip(4.0);
    flow.area(height * scale + 4.0, |flow, area| {
        let shown = Area { width: width * scale, height: height * scale, ..area };
        flow.sheet().photo(photos.len(), shown);
    });
    photos.push(Taken { jpeg, bytes });
    flow.paragraph(SMALL, &caption);
    flow.skip(4.0);
}
