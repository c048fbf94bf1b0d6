//! Blocks one below the other on as many sheets as they need.

use super::face::Weight;
use super::setting::{self, Line, Style};
use super::sheet::{Area, Faces, INK, INK_2, Point, Sheet};
use crate::report::document::Run;
use crate::words::statement::Bar;

/// ISO 216: A4, in points.
pub const A4: (f32, f32) = (595.28, 841.89);
/// Room for a hole punch, and for printers that cannot reach the edge.
pub const MARGIN: f32 = 56.0;
/// Where text ends: below it stands the number of the sheet.
const BOTTOM: f32 = A4.1 - 60.0;
/// From the left side of a bar to the sentence beside it, and how wide the bar is.
const INDENT: f32 = 13.0;
const BAR: f32 = 5.5;

/// Running text.
pub const PLAIN: Style = Style { weight: Weight::Regular, size: 10.5, leading: 14.5, grey: INK };
/// What matters less.
pub const SMALL: Style = Style { weight: Weight::Regular, size: 8.5, leading: 11.5, grey: INK_2 };

/// Text flowing over sheets.
pub struct Flow<'f> {
    /// The faces.
    pub faces: &'f Faces,
    sheets: Vec<Sheet>,
    sheet: Sheet,
    y: f32,
    left: f32,
    /// A bar that has begun, and where on this sheet.
    bar: Option<(Bar, f32)>,
}

impl<'f> Flow<'f> {
    /// At the top of the first sheet.
    pub fn new(faces: &'f Faces) -> Self {
        Self { faces, sheets: Vec::new(), sheet: Sheet::new(A4.1), y: MARGIN, left: MARGIN, bar: None }
    }

    /// An empty sheet with lines as wide as here, to see how high something is.
    pub fn trial(&self) -> Self {
        Self { left: self.left, ..Self::new(self.faces) }
    }

    /// How much of the first sheet is taken; `None` where there is a second one.
    pub fn height(&self) -> Option<f32> {
        self.sheets.is_empty().then_some(self.y - MARGIN)
    }

    /// All sheets.
    pub fn finish(mut self) -> Vec<Sheet> {
        self.sheets.push(self.sheet);
        self.sheets
    }

    /// How wide text may be here.
    pub const fn width(&self) -> f32 {
        A4.0 - MARGIN - self.left
    }

    /// Breaks runs into lines that fit here.
    pub fn lines(&self, style: Style, runs: &[Run]) -> Vec<Line> {
        setting::lines(self.faces, style, runs, self.width())
    }

    /// A paragraph, which keeps its first lines together.
    pub fn paragraph(&mut self, style: Style, runs: &[Run]) {
        let lines = self.lines(style, runs);
        self.keep(style.leading * f32_of(lines.len().min(3)));
        for line in lines {
            self.line(style.leading, &line);
        }
    }

    /// One line.
    fn line(&mut self, leading: f32, line: &Line) {
        self.keep(leading);
        let baseline = (self.left, self.y + leading * 0.74);
        self.draw(line, baseline);
        self.y += leading;
    }

    /// Draws a line with its baseline beginning at a place.
    pub fn draw(&mut self, line: &Line, at: Point) {
        for piece in &line.pieces {
            let (weight, size, grey) = (piece.style.weight, piece.style.size, piece.style.grey);
            self.sheet.text(self.faces.of(weight), weight, size, grey, (at.0 + piece.x, at.1), &piece.text);
        }
    }

    /// Leaves room, but none at the top of a sheet or of a bar.
    pub fn skip(&mut self, height: f32) {
        if self.y > self.bar.map_or(MARGIN, |(_, from)| from) {
            self.y += height;
        }
    }

    /// Goes on at the top of the next sheet where so much height is not left on this one.
    pub fn keep(&mut self, height: f32) {
        if self.y + height <= BOTTOM || self.y <= MARGIN {
            return;
        }
        self.draw_bar();
        self.sheets.push(std::mem::replace(&mut self.sheet, Sheet::new(A4.1)));
        self.y = MARGIN;
        self.bar = self.bar.map(|(bar, _)| (bar, MARGIN));
    }

    /// Has a bar stand beside all that is put down meanwhile.
    pub fn beside(&mut self, bar: Bar, put: impl FnOnce(&mut Self)) {
        self.bar = Some((bar, self.y));
        self.left += INDENT;
        put(self);
        self.left -= INDENT;
        self.draw_bar();
        self.bar = None;
    }

    fn draw_bar(&mut self) {
        if let Some((bar, from)) = self.bar.filter(|(_, from)| *from < self.y) {
            let area = Area { x: MARGIN, y: from + 1.5, width: BAR, height: self.y - from - 2.5 };
            self.sheet.bar(bar, area);
        }
    }

    /// Takes an area of this height from side to side, on one sheet, and lets it be drawn on.
    pub fn area(&mut self, height: f32, draw: impl FnOnce(&mut Self, Area)) {
        self.keep(height);
        let area = Area { x: self.left, y: self.y, width: self.width(), height };
        draw(self, area);
        self.y += height;
    }

    /// The sheet that is being drawn on.
    pub const fn sheet(&mut self) -> &mut Sheet {
        &mut self.sheet
    }
}

/// A count of lines or columns.
pub fn f32_of(count: usize) -> f32 {
    u16::try_from(count).map_or(f32::INFINITY, f32::from)
}
