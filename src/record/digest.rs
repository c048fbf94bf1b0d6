//! SHA-256 in hexadecimal digits.

use sha2::{Digest, Sha256};

/// 64 lower-case hexadecimal digits.
pub fn sha256(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().flat_map(|byte| [byte >> 4, byte & 0xf]).map(hexadecimal).collect()
}

/// Whether a text is so many lower-case hexadecimal digits.
pub fn is_hexadecimal(text: &str, digits: usize) -> bool {
    text.len() == digits && text.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'))
}

fn hexadecimal(nibble: u8) -> char {
    char::from_digit(u32::from(nibble), 16).unwrap_or_default()
}
