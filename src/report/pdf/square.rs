//! A QR code (ISO/IEC 18004), drawn as squares.

use qrcodegen::{QrCode, QrCodeEcc};

use super::sheet::{Area, INK, Ink, Point, Sheet};

/// The quiet zone that the standard asks for around it, in modules.
const QUIET: i32 = 4;

/// Draws a text as a QR code into a square, with its quiet zone inside. A text too long for any code is left out, as it stands beside in words.
pub fn draw(sheet: &mut Sheet, text: &str, at: Point, side: f32) {
    let Ok(code) = QrCode::encode_text(text, QrCodeEcc::Medium) else { return };
    let modules = code.size() + 2 * QUIET;
    let module = side / f32_of(modules);
    for row in 0..code.size() {
        let mut column = 0;
        while column < code.size() {
            // Neighbours are drawn in one piece, so that no printer leaves a gap between them.
            let length = (column..code.size()).take_while(|&x| code.get_module(x, row)).count();
            let length = i32::try_from(length).unwrap_or_default();
            if length > 0 {
                let (x, y) = (f32_of(column + QUIET) * module, f32_of(row + QUIET) * module);
                let area = Area { x: at.0 + x, y: at.1 + y, width: f32_of(length) * module, height: module };
                sheet.rect(area, Ink::Fill(INK));
            }
            column += length.max(1);
        }
    }
}

/// A count of modules; the largest code has 177.
fn f32_of(modules: i32) -> f32 {
    i16::try_from(modules).map_or(f32::INFINITY, f32::from)
}
