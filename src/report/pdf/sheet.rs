//! One sheet of paper being drawn on, measured in points from its upper left corner.

use pdf_writer::types::LineCapStyle;
use pdf_writer::{Content, Name, Str};

use super::face::{Face, Weight};
use crate::words::statement::Bar;

/// A place.
pub type Point = (f32, f32);

/// A rectangle: its upper left corner, and how wide and high it is.
#[derive(Debug, Clone, Copy)]
pub struct Area {
    /// The left side.
    pub x: f32,
    /// The upper side.
    pub y: f32,
    /// How wide.
    pub width: f32,
    /// How high.
    pub height: f32,
}

/// The grey of what is written and drawn.
pub const INK: f32 = 0.0;
/// Of what matters less: dark enough to be read from cheap paper.
pub const INK_2: f32 = 0.3;
/// Of the paper.
pub const PAPER: f32 = 1.0;

/// How a shape is drawn.
#[derive(Debug, Clone, Copy)]
pub enum Ink {
    /// Filled with a grey.
    Fill(f32),
    /// A black line of a width.
    Line(f32),
    /// A line of a width, with dashes and gaps of a length.
    Dashes(f32, [f32; 2]),
    /// Dots of a width, with so much from middle to middle.
    Dots(f32, f32),
}

/// The outline of a bar.
const OUTLINE: Ink = Ink::Line(0.7);

/// The faces of a document.
#[derive(Debug)]
pub struct Faces {
    regular: Face,
    strong: Face,
}

impl Faces {
    /// Reads both.
    pub fn new() -> Self {
        Self { regular: Face::of(Weight::Regular), strong: Face::of(Weight::Strong) }
    }

    /// The face of a weight.
    pub const fn of(&self, weight: Weight) -> &Face {
        match weight {
            Weight::Regular => &self.regular,
            Weight::Strong => &self.strong,
        }
    }
}

/// The name of a face on every sheet.
pub const fn name(weight: Weight) -> Name<'static> {
    match weight {
        Weight::Regular => Name(b"R"),
        Weight::Strong => Name(b"S"),
    }
}

/// The name of a photo on every sheet.
pub fn photo_name(number: usize) -> String {
    format!("P{number}")
}

/// A sheet.
pub struct Sheet {
    content: Content,
    height: f32,
    /// The photos on it, by their numbers.
    pub photos: Vec<usize>,
}

impl Sheet {
    /// An empty sheet.
    pub fn new(height: f32) -> Self {
        Self { content: Content::new(), height, photos: Vec::new() }
    }

    /// All that was drawn.
    pub fn into_content(self) -> Vec<u8> {
        self.content.finish().to_vec()
    }

    /// Text, its baseline beginning at a place.
    pub fn text(&mut self, face: &Face, weight: Weight, size: f32, grey: f32, at: Point, text: &str) {
        self.content.set_fill_gray(grey).begin_text().set_font(name(weight), size);
        self.content.next_line(at.0, self.height - at.1).show(Str(&face.encode(text))).end_text();
    }

    /// A line through points, or the shape that it closes.
    pub fn path(&mut self, points: &[Point], is_closed: bool, ink: Ink) {
        let Some((first, rest)) = points.split_first() else { return };
        let height = self.height;
        self.shape(ink, |content| {
            content.move_to(first.0, height - first.1);
            for point in rest {
                content.line_to(point.0, height - point.1);
            }
            if is_closed {
                content.close_path();
            }
        });
    }

    /// A rectangle.
    pub fn rect(&mut self, area: Area, ink: Ink) {
        let y = self.height - area.y - area.height;
        self.shape(ink, |content| {
            content.rect(area.x, y, area.width, area.height);
        });
    }

    /// A circle, of four curves that stay within a thousandth of its radius.
    pub fn circle(&mut self, centre: Point, radius: f32, ink: Ink) {
        let (x, y, bend) = (centre.0, self.height - centre.1, 0.5523 * radius);
        self.shape(ink, |content| {
            content
                .move_to(x + radius, y)
                .cubic_to(x + radius, y + bend, x + bend, y + radius, x, y + radius)
                .cubic_to(x - bend, y + radius, x - radius, y + bend, x - radius, y)
                .cubic_to(x - radius, y - bend, x - bend, y - radius, x, y - radius)
                .cubic_to(x + bend, y - radius, x + radius, y - bend, x + radius, y)
                .close_path();
        });
    }

    fn shape(&mut self, ink: Ink, trace: impl FnOnce(&mut Content)) {
        let content = self.content.save_state();
        match ink {
            Ink::Fill(grey) => content.set_fill_gray(grey),
            Ink::Line(width) => content.set_line_width(width),
            Ink::Dashes(width, dashes) => content.set_line_width(width).set_dash_pattern(dashes, 0.0),
            // Dashes of no length with round ends.
            Ink::Dots(width, step) => {
                content.set_line_width(width).set_line_cap(LineCapStyle::RoundCap).set_dash_pattern([0.0, step], 0.0)
            }
        };
        trace(content);
        match ink {
            Ink::Fill(_) => content.fill_nonzero(),
            Ink::Line(_) | Ink::Dashes(..) | Ink::Dots(..) => content.stroke(),
        };
        content.restore_state();
    }

    /// The bar beside a sentence: its pattern says what no colour has to.
    pub fn bar(&mut self, bar: Bar, area: Area) {
        let (top, bottom) = (area.y, area.y + area.height);
        let upright = |x: f32, inset: f32| [(x, top + inset), (x, bottom - inset)];
        match bar {
            Bar::Solid => self.rect(area, Ink::Fill(INK)),
            Bar::Hatched => self.hatch(area),
            Bar::Dotted => self.path(&upright(area.x + area.width / 2.0, 2.0), false, Ink::Dots(2.2, 4.0)),
            Bar::Empty => self.rect(area, OUTLINE),
            Bar::Double => {
                self.path(&upright(area.x + 0.5, 0.0), false, OUTLINE);
                self.path(&upright(area.x + 3.0, 0.0), false, OUTLINE);
            }
            Bar::Thin => self.path(&upright(area.x + 0.5, 0.0), false, OUTLINE),
        }
    }

    fn hatch(&mut self, area: Area) {
        let bottom = self.height - area.y - area.height;
        self.content.save_state().rect(area.x, bottom, area.width, area.height).clip_nonzero().end_path();
        let mut y = area.y;
        while y < area.y + area.height + area.width {
            self.path(&[(area.x, y), (area.x + area.width, y - area.width)], false, Ink::Line(1.2));
            y += 3.4;
        }
        self.content.restore_state();
        self.rect(area, OUTLINE);
    }

    /// A photo by its number, filling an area.
    pub fn photo(&mut self, number: usize, area: Area) {
        self.content
            .save_state()
            .transform([area.width, 0.0, 0.0, area.height, area.x, self.height - area.y - area.height])
            .x_object(Name(photo_name(number).as_bytes()))
            .restore_state();
        self.photos.push(number);
    }
}
