//! A picture as a phone's camera makes it: with the place where it was taken.

use std::{fs, path::PathBuf};

use anyhow::{Context as _, Result};
use e2e::Phone;
use serde_json::Value;

/// What a JPEG has at the head of the block that tells of the camera and the place.
pub const EXIF: &[u8] = b"Exif\0\0";

/// A picture drawn by the browser, as bytes.
const DRAWN: &str = "new Promise((tell) => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 320, height: 240 });
    const pen = canvas.getContext('2d');
    pen.fillStyle = '#863';
    pen.fillRect(40, 40, 160, 120);
    canvas.toBlob((blob) => blob.arrayBuffer().then((bytes) => tell(Array.from(new Uint8Array(bytes)))), 'image/jpeg');
})";

/// A block that says "north 51 degrees 30 minutes": one directory with a pointer to the second, which has the latitude.
const LATITUDE: &[&[u8]] = &[
    EXIF,
    b"MM\0*\0\0\0\x08",
    b"\0\x01\x88\x25\0\x04\0\0\0\x01\0\0\0\x1a\0\0\0\0",
    b"\0\x02\0\x01\0\x02\0\0\0\x02N\0\0\0\0\x02\0\x05\0\0\0\x03\0\0\0\x38\0\0\0\0",
    b"\0\0\0\x33\0\0\0\x01\0\0\0\x1e\0\0\0\x01\0\0\0\0\0\0\0\x01",
];

/// Puts a JPEG that says where it was taken among the phone's files.
pub async fn with_location(phone: &Phone) -> Result<PathBuf> {
    let drawn = phone.eval(DRAWN).await?;
    let byte = |value: &Value| value.as_u64().and_then(|value| u8::try_from(value).ok());
    let drawn: Vec<u8> = drawn.as_array().context("no picture")?.iter().filter_map(byte).collect();
    let (start, rest) = drawn.split_at_checked(2).context("no picture")?;
    let block = LATITUDE.concat();
    let length = u16::try_from(block.len() + 2)?.to_be_bytes();
    let path = phone.storage().folder("files")?.join("camera.jpg");
    fs::write(&path, [start, &[0xff, 0xe1], &length, &block, rest].concat())?;
    Ok(path)
}
