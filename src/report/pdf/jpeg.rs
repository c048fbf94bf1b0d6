//! What a PDF has to know of a JPEG to show it as it is.

/// Size and colours of a JPEG.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Jpeg {
    /// In pixels.
    pub width: u16,
    /// In pixels.
    pub height: u16,
    /// Whether it has shades of grey only.
    pub is_grey: bool,
}

impl Jpeg {
    /// Reads the frame header; `None` where the bytes are no JPEG of one or three colours, which is all that a PDF can take as it is.
    pub fn of(bytes: &[u8]) -> Option<Self> {
        let mut rest = bytes.strip_prefix(&[0xFF, 0xD8])?;
        loop {
            let (marker, after) = segment(rest)?;
            // ITU-T T.81, table B.1: start of frame, but for the four codes among them that mean something else.
            if matches!(marker, 0xC0..=0xCF) && !matches!(marker, 0xC4 | 0xC8 | 0xCC) {
                return Self::of_frame(after);
            }
            let length = usize::from(u16::from_be_bytes(*after.first_chunk()?));
            rest = after.get(length..)?;
        }
    }

    /// ITU-T T.81, B.2.2: length, precision, lines, samples a line, components.
    fn of_frame(frame: &[u8]) -> Option<Self> {
        let [_, _, 8, h1, h0, w1, w0, components] = *frame.first_chunk()? else { return None };
        let (width, height) = (u16::from_be_bytes([w1, w0]), u16::from_be_bytes([h1, h0]));
        let is_grey = match components {
            1 => true,
            3 => false,
            _ => return None,
        };
        (width > 0 && height > 0).then_some(Self { width, height, is_grey })
    }
}

/// The next marker, and what follows it; any number of fill bytes may stand before it.
fn segment(bytes: &[u8]) -> Option<(u8, &[u8])> {
    let filled = bytes.strip_prefix(&[0xFF])?;
    let start = filled.iter().position(|byte| *byte != 0xFF)?;
    let (marker, after) = filled.get(start..)?.split_first()?;
    Some((*marker, after))
}
