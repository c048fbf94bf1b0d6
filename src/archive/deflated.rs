//! Bytes that are packed as they come, so that a long table needs no more memory than what is left of it.

use crc32fast::Hasher;
use miniz_oxide::DataFormat;
use miniz_oxide::deflate::CompressionLevel;
use miniz_oxide::deflate::core::{CompressorOxide, TDEFLFlush, compress_to_output};

/// Packed bytes in the making.
pub struct Deflated {
    compressor: Box<CompressorOxide>,
    packed: Vec<u8>,
    crc: Hasher,
    size: usize,
}

/// Packed bytes, and what a zip file says of them.
pub struct Packed {
    /// The bytes (APPNOTE 4.4.5, method 8).
    pub bytes: Vec<u8>,
    /// CRC-32 of what was packed.
    pub crc: u32,
    /// How long that was.
    pub size: usize,
}

impl Deflated {
    /// Nothing yet.
    pub fn new() -> Self {
        Self {
            compressor: Box::new(CompressorOxide::with_format_and_level(
                DataFormat::Raw,
                CompressionLevel::DefaultLevel,
            )),
            packed: Vec::new(),
            crc: Hasher::new(),
            size: 0,
        }
    }

    /// More bytes.
    pub fn add(&mut self, bytes: &[u8]) {
        self.crc.update(bytes);
        self.size += bytes.len();
        self.feed(bytes, TDEFLFlush::None);
    }

    /// The end.
    pub fn finish(mut self) -> Packed {
        self.feed(&[], TDEFLFlush::Finish);
        Packed { bytes: self.packed, crc: self.crc.finalize(), size: self.size }
    }

    fn feed(&mut self, bytes: &[u8], flush: TDEFLFlush) {
        let packed = &mut self.packed;
        // A list takes everything it is given, so all bytes are used up and nothing fails.
        compress_to_output(&mut self.compressor, bytes, flush, |more| {
            packed.extend_from_slice(more);
            true
        });
    }
}
