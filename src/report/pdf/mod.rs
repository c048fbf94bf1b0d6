//! The document as a PDF for printing, and the label that goes on the sample.
//!
//! [`setting`] breaks text into lines by the widths that a [`face`] has, [`flow`] puts lines and [`layout`] blocks on [`sheet`]s, and
//! [`binding`] makes a file of the sheets. Nothing in it depends on when or where it is made.

mod binding;
mod drawn;
mod face;
mod flow;
mod jpeg;
mod label;
mod layout;
mod setting;
mod sheet;
mod square;

use self::flow::{A4, Flow, MARGIN, SMALL};
use self::setting::lines;
use self::sheet::{Faces, Sheet};
use super::content::Content;
use super::document::Run;
use crate::record::{self, Record};
use crate::seal::{PublicKey, fingerprint};
use crate::words::{paper as words, seal};

pub use label::{label, label_sealed_by};

/// The side of the square code, in points.
const CODE: f32 = 84.0;

/// The record as a PDF of A4 sheets, with the same content as the page. `photos` are the stored bytes by SHA-256.
pub fn pdf(record: &Record, photos: &[(String, Vec<u8>)]) -> Vec<u8> {
    pdf_of(record, photos, None)
}

/// The same, which names the key that files of this examination are sealed with, in words and in the square code. Paper bears no seal.
pub fn pdf_sealed_by(record: &Record, photos: &[(String, Vec<u8>)], key: &PublicKey) -> Vec<u8> {
    pdf_of(record, photos, Some(&fingerprint(key)))
}

fn pdf_of(record: &Record, photos: &[(String, Vec<u8>)], sealed_by: Option<&str>) -> Vec<u8> {
    let content = Content::of(record, photos, None);
    let faces = Faces::new();
    let mut flow = Flow::new(&faces);
    let mut photos_on_paper = Vec::new();
    identify(&mut flow, record, sealed_by);
    layout::set(&mut flow, &content.blocks, &mut photos_on_paper);
    let mut sheets = flow.finish();
    let count = sheets.len();
    for (number, sheet) in (1..).zip(&mut sheets) {
        foot(sheet, &faces, record, (number, count));
    }
    binding::bind(&content.title, A4, &faces, sheets, &photos_on_paper)
}

/// Which sample and which examination this paper belongs to, in words and as a square code.
fn identify(flow: &mut Flow, record: &Record, sealed_by: Option<&str>) {
    let sha256 = record::fingerprint(record);
    let said = [words::sample_number(record), words::fingerprint(&sha256), words::FINGERPRINT_MEANS.to_owned()];
    let said = said.into_iter().chain(sealed_by.map(seal::on_paper));
    flow.area(CODE, |flow, area| {
        let mut y = area.y + 8.0;
        for text in said {
            for line in lines(flow.faces, SMALL, &[Run::Plain(text)], area.width - CODE - 12.0) {
                flow.draw(&line, (area.x, y + SMALL.leading * 0.74));
                y += SMALL.leading;
            }
        }
        let at = (area.x + area.width - CODE, area.y - 8.0);
        square::draw(flow.sheet(), &words::code(record, &sha256, sealed_by), at, CODE);
    });
}

/// At the foot of a sheet: whose it is, and which of how many.
fn foot(sheet: &mut Sheet, faces: &Faces, record: &Record, (number, count): (usize, usize)) {
    let (size, y) = (SMALL.size, A4.1 - 36.0);
    let face = faces.of(SMALL.weight);
    let page = words::sheet(number, count);
    sheet.text(face, SMALL.weight, size, SMALL.grey, (MARGIN, y), &words::sample_number(record));
    sheet.text(face, SMALL.weight, size, SMALL.grey, (A4.0 - MARGIN - face.width(&page, size), y), &page);
}
