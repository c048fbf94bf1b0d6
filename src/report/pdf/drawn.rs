//! A picture that was drawn for the page, read back from its SVG and drawn on paper, so that both show the same.
//!
//! It knows what `drawing` makes pictures of: rectangles, circles, paths of straight lines, and words, each of a class.

use super::face::Weight;
use super::flow::{Flow, SMALL};
use super::sheet::{Area, Faces, Ink, Point, Sheet};
use crate::drawing::found::Picture;
use crate::report::document::Run;

/// A picture takes at most so much of a sheet's width; its letters would be too large otherwise.
const WIDEST: f32 = 330.0;
/// Height of letters in the picture's own units: the face is wider than that of a screen.
const LETTERS: f32 = 10.2;

/// Puts a picture down with its notes below.
pub fn set(flow: &mut Flow, picture: &Picture) {
    let Some([_, _, width, height]) = view(&picture.svg) else { return };
    let scale = flow.width().min(WIDEST) / width;
    flow.skip(4.0);
    let faces = flow.faces;
    flow.area(height * scale, |flow, area| {
        for element in picture.svg.split('<') {
            draw(flow.sheet(), faces, element, &|(x, y)| (area.x + scale * x, area.y + scale * y), scale);
        }
    });
    for note in &picture.notes {
        flow.paragraph(SMALL, &[Run::Plain(note.clone())]);
    }
    flow.skip(4.0);
}

/// The part of the world that the picture shows: left, top, width, height.
fn view(svg: &str) -> Option<[f32; 4]> {
    let numbers: Vec<f32> = attribute(svg, "viewBox")?.split(' ').filter_map(|number| number.parse().ok()).collect();
    numbers.try_into().ok().filter(|[_, _, width, height]: &[f32; 4]| *width > 0.0 && *height > 0.0)
}

/// One element, written as what follows its `<`.
fn draw(sheet: &mut Sheet, faces: &Faces, element: &str, place: &impl Fn(Point) -> Point, scale: f32) -> Option<()> {
    let number = |name: &str| attribute(element, name)?.parse::<f32>().ok();
    let ink = || ink(attribute(element, "class").unwrap_or_default(), scale);
    match element.split(' ').next()? {
        "rect" => {
            let (at, width, height) = (place((number("x")?, number("y")?)), number("width")?, number("height")?);
            sheet.rect(Area { x: at.0, y: at.1, width: width * scale, height: height * scale }, ink());
        }
        "circle" => sheet.circle(place((number("cx")?, number("cy")?)), number("r")? * scale, ink()),
        "line" => {
            let ends = [(number("x1")?, number("y1")?), (number("x2")?, number("y2")?)];
            sheet.path(&ends.map(place), false, ink());
        }
        "path" => {
            let d = attribute(element, "d")?;
            let numbers: Vec<f32> = d.split(['M', 'L', 'z', ' ']).filter_map(|number| number.parse().ok()).collect();
            let points: Vec<Point> = numbers.as_chunks::<2>().0.iter().map(|[x, y]| place((*x, *y))).collect();
            sheet.path(&points, d.ends_with('z'), ink());
        }
        "text" => {
            let words = plain(element.split_once('>')?.1);
            let (face, size) = (faces.of(Weight::Regular), LETTERS * scale);
            let at = place((number("x")?, number("y")?));
            let back = match attribute(element, "text-anchor")? {
                "middle" => face.width(&words, size) / 2.0,
                "end" => face.width(&words, size),
                _ => 0.0,
            };
            sheet.text(face, Weight::Regular, size, 0.0, (at.0 - back, at.1), &words);
        }
        _ => {}
    }
    Some(())
}

/// The value of an attribute.
fn attribute<'a>(element: &'a str, name: &str) -> Option<&'a str> {
    let tag = element.split('>').next()?;
    tag.split_once(&format!(" {name}=\""))?.1.split('"').next()
}

/// Words without the escapes of markup.
fn plain(words: &str) -> String {
    words.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&")
}

/// The ink of a class, as `page.css` has it.
fn ink(class: &str, scale: f32) -> Ink {
    match class {
        "limit" | "curve" => Ink::Line(1.8 * scale),
        "mark" => Ink::Line(2.4 * scale),
        "h" | "allowed-line" => Ink::Line(0.7 * scale),
        "s" => Ink::Line(1.2 * scale),
        "dash" => Ink::Dashes(1.2 * scale, [4.0 * scale, 3.0 * scale]),
        "pin" => Ink::Fill(0.55),
        "doubt" => Ink::Fill(0.45),
        "allowed" => Ink::Fill(0.88),
        // "dot", and whatever a later drawing may bring: rather too black than not seen.
        _ => Ink::Fill(0.0),
    }
}
