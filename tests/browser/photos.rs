//! Photos are scaled, turned, stripped and named by what they are.

use js_sys::{Array, Uint8Array};
use plugwary::screens::platform::file::Picked;
use plugwary::screens::platform::photo::{self, Fault};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_test::wasm_bindgen_test;
use web_sys::{Blob, File, ImageBitmap, ImageEncodeOptions, OffscreenCanvas, OffscreenCanvasRenderingContext2d};

/// A picture of a size, with a slope across it so that it is no single colour.
async fn picture(width: u32, height: u32, mime: &str) -> Result<Vec<u8>, JsValue> {
    let canvas = OffscreenCanvas::new(width, height)?;
    let context: OffscreenCanvasRenderingContext2d = canvas.get_context("2d")?.ok_or(JsValue::NULL)?.dyn_into()?;
    let slope = context.create_linear_gradient(0.0, 0.0, f64::from(width), f64::from(height));
    slope.add_color_stop(0.0, "navy")?;
    slope.add_color_stop(1.0, "orange")?;
    context.set_fill_style_canvas_gradient(&slope);
    context.fill_rect(0.0, 0.0, f64::from(width), f64::from(height));
    let options = ImageEncodeOptions::new();
    options.set_type(mime);
    let blob: Blob = JsFuture::from(canvas.convert_to_blob_with_options(&options)?).await?.dyn_into()?;
    Ok(Uint8Array::new(&JsFuture::from(blob.array_buffer()).await?).to_vec())
}

fn picked(bytes: &[u8]) -> Result<Picked, JsValue> {
    Ok(File::new_with_u8_array_sequence(&Array::of1(&Uint8Array::from(bytes)), "picture")?.into())
}

/// The size that the browser sees in some bytes.
async fn size(bytes: &[u8]) -> Result<(u32, u32), JsValue> {
    let blob = Blob::new_with_u8_array_sequence(&Array::of1(&Uint8Array::from(bytes)))?;
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    let seen: ImageBitmap = JsFuture::from(window.create_image_bitmap_with_blob(&blob)?).await?.dyn_into()?;
    Ok((seen.width(), seen.height()))
}

#[track_caller]
fn has(bytes: &[u8], wanted: &[u8]) -> bool {
    bytes.windows(wanted.len()).any(|window| window == wanted)
}

#[wasm_bindgen_test]
async fn sha_256_of_abc_is_that_of_fips_180_4() -> Result<(), Fault> {
    // FIPS 180-4, worked example of SHA-256 for the message "abc" (published by NIST beside the standard).
    assert_eq!(photo::sha256(b"abc").await?, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    Ok(())
}

#[wasm_bindgen_test]
async fn longest_side_is_cut_to_1600_pixels_and_no_picture_grows() -> Result<(), JsValue> {
    let cases = [
        ((3200, 2400), (1600, 1200)),
        ((1000, 3000), (533, 1600)),
        ((1601, 1601), (1600, 1600)),
        ((4000, 1), (1600, 1)),
        ((1600, 900), (1600, 900)),
        ((320, 240), (320, 240)),
    ];
    for ((width, height), expected) in cases {
        let picture = picture(width, height, "image/png").await?;
        let taken = photo::take(&picked(&picture)?).await.map_err(|fault| fault.to_string())?;
        assert_eq!((taken.width, taken.height), expected, "{width} x {height}");
        assert_eq!(size(&taken.bytes).await?, expected, "{width} x {height}");
        assert_eq!(taken.media_type, "image/jpeg");
        assert!(taken.bytes.starts_with(&[0xff, 0xd8, 0xff]));
        let named = photo::sha256(&taken.bytes).await.map_err(|fault| fault.to_string())?;
        assert_eq!(taken.sha256, named);
    }
    Ok(())
}

#[wasm_bindgen_test]
async fn what_a_camera_writes_beside_the_picture_stays_behind() -> Result<(), JsValue> {
    // A segment of a camera (Exif 2.32, little endian): orientation 6, "turn a quarter to the right".
    const CAMERA: [u8; 36] = [
        0xff, 0xe1, 0, 34, b'E', b'x', b'i', b'f', 0, 0, b'I', b'I', 42, 0, 8, 0, 0, 0, 1, 0, 0x12, 0x01, 3, 0, 1, 0,
        0, 0, 6, 0, 0, 0, 0, 0, 0, 0,
    ];
    let plain = picture(2000, 1000, "image/jpeg").await?;
    let (start, rest) = plain.split_at(2);
    let from_camera = [start, &CAMERA, rest].concat();
    assert!(has(&from_camera, b"Exif"));
    let taken = photo::take(&picked(&from_camera)?).await.map_err(|fault| fault.to_string())?;
    assert_eq!((taken.width, taken.height), (800, 1600));
    assert_eq!(size(&taken.bytes).await?, (800, 1600));
    assert!(!has(&taken.bytes, b"Exif"));
    Ok(())
}

#[wasm_bindgen_test]
async fn file_that_is_no_picture_is_a_fault() -> Result<(), JsValue> {
    assert_eq!(photo::take(&picked(b"no picture")?).await, Err(Fault::NoPicture));
    Ok(())
}
