//! Sheets, faces and photos bound into one PDF file.

use miniz_oxide::deflate::compress_to_vec_zlib;
use pdf_writer::{Filter, Finish, Name, Pdf, Rect, Ref, TextStr};

use super::face::{COMPRESSION, Weight};
use super::layout::Taken;
use super::sheet::{self, Faces, Sheet};

/// Gives objects their numbers, one after the other.
struct Numbers(i32);

impl Numbers {
    const fn next(&mut self) -> Ref {
        self.0 += 1;
        Ref::new(self.0)
    }
}

/// The file; `size` is that of every sheet.
pub fn bind(title: &str, size: (f32, f32), faces: &Faces, sheets: Vec<Sheet>, photos: &[Taken]) -> Vec<u8> {
    let mut pdf = Pdf::new();
    let mut numbers = Numbers(0);
    let (catalog, tree, info) = (numbers.next(), numbers.next(), numbers.next());
    let weights = [Weight::Regular, Weight::Strong].map(|weight| (weight, numbers.next()));
    let shown: Vec<Ref> = photos.iter().map(|&photo| embed(&mut pdf, numbers.next(), photo)).collect();
    let mut pages = Vec::new();
    for sheet in sheets {
        let (id, content) = (numbers.next(), numbers.next());
        let mut page = pdf.page(id);
        page.parent(tree).media_box(Rect::new(0.0, 0.0, size.0, size.1)).contents(content);
        let mut resources = page.resources();
        resources.fonts().pairs(weights.map(|(weight, font)| (sheet::name(weight), font)));
        let mut objects = resources.x_objects();
        for &number in &sheet.photos {
            if let Some(shown) = shown.get(number) {
                objects.pair(Name(sheet::photo_name(number).as_bytes()), *shown);
            }
        }
        objects.finish();
        resources.finish();
        page.finish();
        let drawn = compress_to_vec_zlib(&sheet.into_content(), COMPRESSION);
        pdf.stream(content, &drawn).filter(Filter::FlateDecode);
        pages.push(id);
    }
    let count = i32::try_from(pages.len()).unwrap_or(i32::MAX);
    pdf.pages(tree).kids(pages).count(count);
    for (weight, font) in weights {
        faces.of(weight).embed(&mut pdf, font, &mut || numbers.next());
    }
    pdf.document_info(info).title(TextStr(title)).creator(TextStr("Plugwary"));
    let mut root = pdf.catalog(catalog);
    root.pages(tree).lang(TextStr("en-GB"));
    root.viewer_preferences().display_doc_title(true);
    root.finish();
    pdf.finish()
}

/// A photo, byte for byte as it is kept.
fn embed(pdf: &mut Pdf, id: Ref, photo: Taken) -> Ref {
    let mut image = pdf.image_xobject(id, photo.bytes);
    image.filter(Filter::DctDecode);
    image.width(photo.jpeg.width.into()).height(photo.jpeg.height.into()).bits_per_component(8);
    if photo.jpeg.is_grey {
        image.color_space().device_gray();
    } else {
        image.color_space().device_rgb();
    }
    id
}
