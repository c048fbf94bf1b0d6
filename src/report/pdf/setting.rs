//! Text broken into lines of a width.

use core::fmt::Write;

use super::face::Weight;
use super::sheet::Faces;
use crate::report::document::Run;

/// How text is set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Style {
    /// Of running text; emphasised runs are strong in any style.
    pub weight: Weight,
    /// In points.
    pub size: f32,
    /// From baseline to baseline, in points.
    pub leading: f32,
    /// 0 is black, 1 the paper.
    pub grey: f32,
}

/// A piece of a line.
#[derive(Debug, Clone, PartialEq)]
pub struct Piece {
    /// How far from the beginning of the line.
    pub x: f32,
    /// Its style.
    pub style: Style,
    /// What it says: only characters that the faces have.
    pub text: String,
}

/// A line, and how wide it is without the space at its end.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Line {
    /// From left to right.
    pub pieces: Vec<Piece>,
    /// In points.
    pub width: f32,
}

/// Breaks runs into lines; a word too long for any line is cut where it has to be.
pub fn lines(faces: &Faces, style: Style, runs: &[Run], width: f32) -> Vec<Line> {
    let mut setter = Setter { faces, width, lines: Vec::new(), line: Line::default(), x: 0.0 };
    for run in runs {
        let (style, text, before) = match run {
            Run::Plain(text) => (style, text, ""),
            Run::Strong(text) => (Style { weight: Weight::Strong, ..style }, text, ""),
            Run::Small(text) => (Style { size: style.size * 0.85, ..style }, text, " "),
        };
        for word in format!("{before}{}", settable(faces, text)).split_inclusive(' ') {
            setter.word(style, word);
        }
    }
    setter.finish()
}

/// A text with every character that the faces do not have, or that could hide what stands there, shown by its number.
fn settable(faces: &Faces, text: &str) -> String {
    let face = faces.of(Weight::Regular);
    let mut plain = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '\u{A0}' | '\u{202F}' | '\u{2009}' => plain.push('\u{A0}'),
            c if c.is_whitespace() => plain.push(' '),
            c if face.has(c) && c != '\u{AD}' => plain.push(c),
            c => {
                // Writing to a string cannot fail.
                let _ = write!(plain, "[U+{:04X}]", u32::from(c));
            }
        }
    }
    plain
}

struct Setter<'f> {
    faces: &'f Faces,
    width: f32,
    lines: Vec<Line>,
    line: Line,
    x: f32,
}

impl Setter<'_> {
    /// A word with the space behind it, if any.
    fn word(&mut self, style: Style, word: &str) {
        let bare = self.width_of(style, word.trim_end_matches(' '));
        if self.x + bare > self.width {
            self.end_line();
        }
        if bare > self.width {
            return self.long_word(style, word);
        }
        self.put(style, word);
    }

    fn long_word(&mut self, style: Style, word: &str) {
        for c in word.chars() {
            let c = c.to_string();
            if self.x + self.width_of(style, &c) > self.width {
                self.end_line();
            }
            self.put(style, &c);
        }
    }

    fn put(&mut self, style: Style, text: &str) {
        match self.line.pieces.last_mut().filter(|piece| piece.style == style) {
            Some(piece) => piece.text.push_str(text),
            None => self.line.pieces.push(Piece { x: self.x, style, text: text.to_owned() }),
        }
        let bare = text.trim_end_matches(' ');
        if !bare.is_empty() {
            self.line.width = self.x + self.width_of(style, bare);
        }
        self.x += self.width_of(style, text);
    }

    fn end_line(&mut self) {
        if !self.line.pieces.is_empty() {
            self.lines.push(std::mem::take(&mut self.line));
        }
        self.x = 0.0;
    }

    fn finish(mut self) -> Vec<Line> {
        self.end_line();
        self.lines
    }

    fn width_of(&self, style: Style, text: &str) -> f32 {
        self.faces.of(style.weight).width(text, style.size)
    }
}
