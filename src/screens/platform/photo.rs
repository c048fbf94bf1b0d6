//! Photos, made small and stripped of everything but the picture: the browser decodes, turns, scales and encodes them.

use js_sys::Uint8Array;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, ImageBitmap, ImageBitmapOptions, ImageEncodeOptions, OffscreenCanvas, OffscreenCanvasRenderingContext2d,
    ResizeQuality, Window,
};

use super::file::Picked;
use super::ids::hexadecimal;

/// The longest side of a kept photo, in pixels: print on a flex can still be read, and a file with ten photos can still be sent.
const LONGEST_SIDE: u32 = 1600;
const MEDIA_TYPE: &str = "image/jpeg";
/// Of 1; below it the edges of small print blur.
const QUALITY: f64 = 0.82;

/// Why a photo could not be taken in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Fault {
    /// The browser finds no picture in the file.
    #[error("file is no picture that this browser can show")]
    NoPicture,
    /// The browser could not make the small one, mostly for want of memory.
    #[error("picture cannot be made smaller")]
    NotScaled,
    /// The browser gives no SHA-256, which it does only on a secure page.
    #[error("picture cannot be given a name")]
    NotNamed,
}

/// A photo as it is kept.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Taken {
    /// SHA-256 of the bytes, 64 lower-case hexadecimal digits.
    pub sha256: String,
    /// Media type of the bytes.
    pub media_type: String,
    /// Width in pixels.
    pub width: u32,
    /// Height in pixels.
    pub height: u32,
    /// The picture.
    pub bytes: Vec<u8>,
}

/// Makes a JPEG of a picked picture, its longest side at most 1600 pixels; place, time and camera stay behind. A smaller picture is not
/// made larger.
///
/// # Errors
/// See [`Fault`].
pub async fn take(picked: &Picked) -> Result<Taken, Fault> {
    let window = web_sys::window().ok_or(Fault::NotScaled)?;
    let picture = decode(&window, picked.blob()).await.ok_or(Fault::NoPicture)?;
    let (width, height) = fitted(picture.width(), picture.height());
    let small = scale(&window, picture, width, height).await.ok_or(Fault::NotScaled)?;
    let bytes = encode(&small, width, height).await.ok_or(Fault::NotScaled)?;
    small.close();
    Ok(Taken { sha256: sha256(&bytes).await?, media_type: MEDIA_TYPE.to_owned(), width, height, bytes })
}

/// SHA-256 of some bytes, 64 lower-case hexadecimal digits.
///
/// # Errors
/// [`Fault::NotNamed`] where the browser gives none.
pub async fn sha256(bytes: &[u8]) -> Result<String, Fault> {
    let digest = async {
        let subtle = web_sys::window()?.crypto().ok()?.subtle();
        // A copy: bytes in the program's own memory may move while the browser reads them.
        let digest = subtle.digest_with_str_and_js_u8_array("SHA-256", &Uint8Array::from(bytes)).ok()?;
        JsFuture::from(digest).await.ok()
    };
    let digest = digest.await.ok_or(Fault::NotNamed)?;
    Ok(hexadecimal(&Uint8Array::new(&digest).to_vec()))
}

/// The size of a picture whose longest side is cut to the limit.
fn fitted(width: u32, height: u32) -> (u32, u32) {
    let longest = width.max(height);
    if longest <= LONGEST_SIDE {
        return (width, height);
    }
    let fit = |side: u32| {
        let scaled = (u64::from(side) * u64::from(LONGEST_SIDE) + u64::from(longest) / 2) / u64::from(longest);
        u32::try_from(scaled).unwrap_or(LONGEST_SIDE).max(1)
    };
    (fit(width), fit(height))
}

async fn decode(window: &Window, blob: &Blob) -> Option<ImageBitmap> {
    let picture = window.create_image_bitmap_with_blob(blob).ok()?;
    JsFuture::from(picture).await.ok()?.dyn_into().ok()
}

async fn scale(window: &Window, picture: ImageBitmap, width: u32, height: u32) -> Option<ImageBitmap> {
    if (picture.width(), picture.height()) == (width, height) {
        return Some(picture);
    }
    let size = ImageBitmapOptions::new();
    // With one side alone, browsers round the other differently.
    size.set_resize_width(width);
    size.set_resize_height(height);
    size.set_resize_quality(ResizeQuality::High);
    let small = window.create_image_bitmap_with_image_bitmap_and_image_bitmap_options(&picture, &size).ok()?;
    let small = JsFuture::from(small).await.ok()?.dyn_into().ok();
    picture.close();
    small
}

async fn encode(picture: &ImageBitmap, width: u32, height: u32) -> Option<Vec<u8>> {
    let canvas = OffscreenCanvas::new(width, height).ok()?;
    let context: OffscreenCanvasRenderingContext2d = canvas.get_context("2d").ok()??.unchecked_into();
    // A JPEG has no see-through parts: they would come out black.
    context.set_fill_style_str("white");
    context.fill_rect(0.0, 0.0, f64::from(width), f64::from(height));
    context.draw_image_with_image_bitmap(picture, 0.0, 0.0).ok()?;
    let options = ImageEncodeOptions::new();
    options.set_type(MEDIA_TYPE);
    options.set_quality(QUALITY);
    let blob: Blob = JsFuture::from(canvas.convert_to_blob_with_options(&options).ok()?).await.ok()?.dyn_into().ok()?;
    let bytes = JsFuture::from(blob.array_buffer()).await.ok()?;
    Some(Uint8Array::new(&bytes).to_vec())
}
