//! The faces a PDF is set in: which glyph a character has, how wide it is, and the face as it stands inside the PDF.
//!
//! Both are our own subsets of Literata with a thousand units to the em, so that widths need no scaling.

use std::collections::BTreeMap;

use miniz_oxide::deflate::compress_to_vec_zlib;
use pdf_writer::types::{CidFontType, FontFlags, SystemInfo, UnicodeCmap};
use pdf_writer::{Filter, Name, Pdf, Rect, Ref, Str};

/// How hard streams are pressed; more gains little and takes long on a phone.
pub const COMPRESSION: u8 = 6;

const IDENTITY: SystemInfo = SystemInfo { registry: Str(b"Adobe"), ordering: Str(b"Identity"), supplement: 0 };

/// How heavy text is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Weight {
    /// Running text.
    Regular,
    /// Headings, and what matters most.
    Strong,
}

/// One face.
#[derive(Debug)]
pub struct Face {
    file: &'static [u8],
    name: Name<'static>,
    glyphs: BTreeMap<char, u16>,
    widths: Vec<u16>,
}

impl Face {
    /// The face of a weight.
    pub fn of(weight: Weight) -> Self {
        let (file, name): (&'static [u8], _) = match weight {
            Weight::Regular => (include_bytes!("literata-400.ttf"), Name(b"PLUGWA+Literata-Regular")),
            Weight::Strong => (include_bytes!("literata-600.ttf"), Name(b"PLUGWA+Literata-SemiBold")),
        };
        // The files are part of the program: a test sees to it that they can be read.
        Self { file, name, glyphs: glyphs(file).unwrap_or_default(), widths: widths(file).unwrap_or_default() }
    }

    /// Whether a character can be set.
    pub fn has(&self, c: char) -> bool {
        self.glyphs.contains_key(&c)
    }

    /// How wide a text is at a size.
    pub fn width(&self, text: &str, size: f32) -> f32 {
        let units: f32 = text.chars().map(|c| f32::from(self.advance(self.glyph(c)))).sum();
        units * size / 1000.0
    }

    /// A text as the numbers of its glyphs, two bytes each.
    pub fn encode(&self, text: &str) -> Vec<u8> {
        text.chars().flat_map(|c| self.glyph(c).to_be_bytes()).collect()
    }

    fn glyph(&self, c: char) -> u16 {
        self.glyphs.get(&c).copied().unwrap_or_default()
    }

    fn advance(&self, glyph: u16) -> u16 {
        // Where many glyphs in a row are of one width, the table stops at the first of them.
        self.widths.get(usize::from(glyph)).or(self.widths.last()).copied().unwrap_or_default()
    }

    /// Writes the face into a PDF, as the object `id`; `next` gives numbers for its parts.
    pub fn embed(&self, pdf: &mut Pdf, id: Ref, next: &mut impl FnMut() -> Ref) {
        let (descendant, descriptor, file, unicode) = (next(), next(), next(), next());
        pdf.type0_font(id)
            .base_font(self.name)
            .encoding_predefined(Name(b"Identity-H"))
            .descendant_font(descendant)
            .to_unicode(unicode);
        let mut font = pdf.cid_font(descendant);
        font.subtype(CidFontType::Type2)
            .base_font(self.name)
            .system_info(IDENTITY)
            .font_descriptor(descriptor)
            .default_width(0.0)
            .cid_to_gid_map_predefined(Name(b"Identity"));
        font.widths().consecutive(0, self.widths.iter().map(|&width| f32::from(width)));
        drop(font);
        pdf.font_descriptor(descriptor)
            .name(self.name)
            .flags(FontFlags::SYMBOLIC | FontFlags::SERIF)
            .bbox(Rect::new(-164.0, -293.0, 1086.0, 996.0))
            .italic_angle(0.0)
            .ascent(1177.0)
            .descent(-308.0)
            .cap_height(701.0)
            .stem_v(90.0)
            .font_file2(file);
        let small = compress_to_vec_zlib(self.file, COMPRESSION);
        pdf.stream(file, &small)
            .filter(Filter::FlateDecode)
            .pair(Name(b"Length1"), i32::try_from(self.file.len()).unwrap_or_default());
        let mut map = UnicodeCmap::new(Name(b"Plugwary"), IDENTITY);
        for (&c, &glyph) in &self.glyphs {
            map.pair(glyph, c);
        }
        pdf.cmap(unicode, &compress_to_vec_zlib(&map.finish(), COMPRESSION)).filter(Filter::FlateDecode);
    }
}

/// A table of a TrueType file.
fn table<'a>(file: &'a [u8], tag: &str) -> Option<&'a [u8]> {
    let count = usize::from(u16_at(file, 4)?);
    let entries = file.get(12..)?.chunks_exact(16).take(count);
    let entry = entries.into_iter().find(|entry| entry.starts_with(tag.as_bytes()))?;
    let place = |at| u32_at(entry, at).and_then(|place| usize::try_from(place).ok());
    let from = place(8)?;
    file.get(from..from.checked_add(place(12)?)?)
}

/// Which glyph each character has: the table `cmap` in its format 4, the only one that our files have.
fn glyphs(file: &[u8]) -> Option<BTreeMap<char, u16>> {
    let map = table(file, "cmap")?;
    let map = map.get(usize::try_from(u32_at(map, 8)?).ok()?..)?;
    let segments = usize::from(u16_at(map, 6)?) / 2;
    let mut glyphs = BTreeMap::new();
    for segment in 0..segments {
        // Four lists of as many numbers, with two bytes of nothing after the first.
        let entry = |list: usize| 14 + 2 * (list * segments + segment) + if list > 0 { 2 } else { 0 };
        let (last, first) = (u16_at(map, entry(0))?, u16_at(map, entry(1))?);
        let (step, distance) = (u16_at(map, entry(2))?, usize::from(u16_at(map, entry(3))?));
        for code in first..=last {
            let glyph = match distance {
                0 => code.wrapping_add(step),
                _ => u16_at(map, entry(3) + distance + 2 * usize::from(code - first)).unwrap_or_default(),
            };
            if let (Some(c), 1..) = (char::from_u32(code.into()), glyph) {
                glyphs.insert(c, glyph);
            }
        }
    }
    Some(glyphs)
}

/// How far each glyph advances: the tables `hhea` and `hmtx`.
fn widths(file: &[u8]) -> Option<Vec<u16>> {
    let count = usize::from(u16_at(table(file, "hhea")?, 34)?);
    let metrics = table(file, "hmtx")?;
    (0..count).map(|glyph| u16_at(metrics, 4 * glyph)).collect()
}

fn u16_at(bytes: &[u8], at: usize) -> Option<u16> {
    bytes.get(at..)?.first_chunk().copied().map(u16::from_be_bytes)
}

fn u32_at(bytes: &[u8], at: usize) -> Option<u32> {
    bytes.get(at..)?.first_chunk().copied().map(u32::from_be_bytes)
}
