//! The label for the sample that is kept: which one it is, and nothing of what was found.

use super::binding;
use super::face::Weight;
use super::flow::{PLAIN, SMALL};
use super::setting::{Style, lines};
use super::sheet::{Area, Faces, INK, Ink, Sheet};
use super::square;
use crate::record::{self, Record};
use crate::report::document::Run;
use crate::seal::{PublicKey, fingerprint};
use crate::words::{mark, paper as words, seal};

/// ISO 7810: ID-1, the size of a bank card, in points.
const SIZE: (f32, f32) = (242.65, 153.01);
const MARGIN: f32 = 9.0;
const CODE: f32 = 88.0;
const NUMBER: Style = Style { weight: Weight::Strong, size: 17.0, leading: 22.0, grey: INK };
const TINY: Style = Style { size: 7.0, leading: 9.0, grey: INK, ..SMALL };

/// A one-page PDF of the size of a bank card.
pub fn label(record: &Record) -> Vec<u8> {
    label_of(record, None)
}

/// The same, which names the key that files of this examination are sealed with, in words and in the square code.
pub fn label_sealed_by(record: &Record, key: &PublicKey) -> Vec<u8> {
    label_of(record, Some(&fingerprint(key)))
}

fn label_of(record: &Record, sealed_by: Option<&str>) -> Vec<u8> {
    let faces = Faces::new();
    let mut sheet = Sheet::new(SIZE.1);
    let sha256 = record::fingerprint(record);
    sheet.rect(Area { x: 1.0, y: 1.0, width: SIZE.0 - 2.0, height: SIZE.1 - 2.0 }, Ink::Line(0.5));
    square::draw(&mut sheet, &words::code(record, &sha256, sealed_by), (SIZE.0 - CODE - 3.0, 3.0), CODE);
    let beside = SIZE.0 - CODE - MARGIN - 6.0;
    let whole = SIZE.0 - 2.0 * MARGIN;
    let mut y = MARGIN;
    // A name may be long: it gets three lines, and is cut where it needs more.
    let texts = [
        (NUMBER, words::number(record), beside, 1),
        (PLAIN, mark::title(record), beside, 3),
        (TINY, words::examined(record), beside, 1),
        (TINY, words::fingerprint(&sha256), whole, 3),
        (TINY, sealed_by.map(seal::on_label).unwrap_or_default(), whole, 1),
        (TINY, words::LABEL_SAYS_NOTHING.to_owned(), whole, 2),
    ];
    for (style, text, width, most) in texts {
        if width > beside {
            y = y.max(CODE + 4.0);
        }
        for line in lines(&faces, style, &[Run::Plain(text)], width).into_iter().take(most) {
            for piece in line.pieces {
                let (weight, size) = (piece.style.weight, piece.style.size);
                let at = (MARGIN + piece.x, y + style.leading * 0.74);
                sheet.text(faces.of(weight), weight, size, piece.style.grey, at, &piece.text);
            }
            y += style.leading;
        }
        y += 3.0;
    }
    binding::bind(&words::sample_number(record), SIZE, &faces, vec![sheet], &[])
}
