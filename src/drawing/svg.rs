//! Inline SVG in the making: lines in the ink of the page, a text alternative always.
//!
//! Coordinates are millimetres of the thing drawn, or pixels of a phone's width for what is no thing; proportions are true in both.

use core::fmt::Write;
use std::borrow::Cow;

/// The most pixels that a drawing takes of a phone's height; the answers need the rest.
const TALLEST: f64 = 112.0;

/// The pixels of a phone's width.
pub const WIDEST: f64 = 358.0;

/// Height of letters in pixels.
const LETTERS: f64 = 12.0;

/// A drawing of a part of the world `width` by `height` large.
#[derive(Debug)]
pub struct Svg {
    body: String,
    width: f64,
    height: f64,
    title: Cow<'static, str>,
}

impl Svg {
    /// An empty drawing; `title` says in words what it shows.
    pub fn new(width: f64, height: f64, title: impl Into<Cow<'static, str>>) -> Self {
        Self { body: String::new(), width, height, title: title.into() }
    }

    /// A rectangle by its centre, with rounded corners.
    #[must_use]
    pub fn rect(self, centre: (f64, f64), size: (f64, f64), corner: f64, class: &str) -> Self {
        let (x, y) = (centre.0 - size.0 / 2.0, centre.1 - size.1 / 2.0);
        self.push(format_args!(
            r#"<rect class="{class}" x="{x:.2}" y="{y:.2}" width="{:.2}" height="{:.2}" rx="{corner:.2}"/>"#,
            size.0, size.1
        ))
    }

    /// A circle.
    #[must_use]
    pub fn circle(self, centre: (f64, f64), radius: f64, class: &str) -> Self {
        self.push(format_args!(
            r#"<circle class="{class}" cx="{:.2}" cy="{:.2}" r="{radius:.2}"/>"#,
            centre.0, centre.1
        ))
    }

    /// A straight line.
    #[must_use]
    pub fn line(self, from: (f64, f64), to: (f64, f64), class: &str) -> Self {
        self.push(format_args!(
            r#"<line class="{class}" x1="{:.2}" y1="{:.2}" x2="{:.2}" y2="{:.2}"/>"#,
            from.0, from.1, to.0, to.1
        ))
    }

    /// A path in SVG's own notation.
    #[must_use]
    pub fn path(self, d: &str, class: &str) -> Self {
        self.push(format_args!(r#"<path class="{class}" d="{d}"/>"#))
    }

    /// A dimension: a hairline with end strokes between two points, and its words above the middle.
    #[must_use]
    pub fn dimension(self, from: (f64, f64), to: (f64, f64), words: &str) -> Self {
        let is_level = (from.1 - to.1).abs() < (from.0 - to.0).abs();
        let (dx, dy) = if is_level { (0.0, 1.2) } else { (1.2, 0.0) };
        let middle = (f64::midpoint(from.0, to.0), f64::midpoint(from.1, to.1));
        let at = if is_level { (middle.0, middle.1 - 1.4) } else { (middle.0 + 1.6, middle.1 + 1.0) };
        let anchor = if is_level { "middle" } else { "start" };
        self.line(from, to, "h")
            .line((from.0 - dx, from.1 - dy), (from.0 + dx, from.1 + dy), "h")
            .line((to.0 - dx, to.1 - dy), (to.0 + dx, to.1 + dy), "h")
            .words(at, anchor, words)
    }

    /// A pointer: a hairline from what is meant to its words in the margin.
    #[must_use]
    pub fn pointer(self, to: (f64, f64), words_at: (f64, f64), anchor: &str, words: &str) -> Self {
        self.line(to, words_at, "h").circle(to, 0.6, "dot").words(
            (words_at.0 + if anchor == "start" { 0.8 } else { -0.8 }, words_at.1 + 1.0),
            anchor,
            words,
        )
    }

    /// Words.
    #[must_use]
    pub fn words(self, at: (f64, f64), anchor: &str, words: &str) -> Self {
        self.push(format_args!(r#"<text x="{:.2}" y="{:.2}" text-anchor="{anchor}">{words}</text>"#, at.0, at.1))
    }

    /// The finished drawing, widened on both sides to the width of a phone, so that words have room and are large enough to read.
    pub fn into_string(self) -> String {
        let Self { body, width, height, title } = self;
        let scale = (TALLEST / height).min(WIDEST / width);
        let (shown, letters) = (WIDEST / scale, LETTERS / scale);
        let left = (width - shown) / 2.0;
        format!(
            r#"<svg class="drawn" viewBox="{left:.1} 0 {shown:.1} {height:.0}" font-size="{letters:.2}" role="img" aria-label="{title}" xmlns="http://www.w3.org/2000/svg">{body}</svg>"#
        )
    }

    /// The finished drawing of what was laid out in pixels: as high as it needs.
    #[cfg(not(feature = "first"))]
    pub fn into_figure(self) -> String {
        let Self { body, width, height, title } = self;
        format!(
            r#"<svg class="drawn" viewBox="0 0 {width:.0} {height:.0}" font-size="{LETTERS}" role="img" aria-label="{title}" xmlns="http://www.w3.org/2000/svg">{body}</svg>"#
        )
    }

    fn push(mut self, shape: core::fmt::Arguments) -> Self {
        // Writing to a string cannot fail.
        let _ = self.body.write_fmt(shape);
        self
    }
}
