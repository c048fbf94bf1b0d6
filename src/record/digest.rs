//! SHA-256 and hexadecimal digits.

use sha2::{Digest, Sha256};

/// 64 lower-case hexadecimal digits.
pub fn sha256(bytes: &[u8]) -> String {
    hexadecimal(&Sha256::digest(bytes))
}

/// Bytes as lower-case hexadecimal digits.
pub fn hexadecimal(bytes: &[u8]) -> String {
    bytes.iter().flat_map(|byte| [byte >> 4, byte & 0xf]).map(digit).collect()
}

/// The bytes that lower-case hexadecimal digits stand for.
pub fn from_hexadecimal(digits: &str) -> Option<Vec<u8>> {
    if !is_hexadecimal(digits, digits.len()) {
        return None;
    }
    let pairs = digits.as_bytes().chunks(2);
    pairs.map(|pair| u8::from_str_radix(str::from_utf8(pair).ok().filter(|pair| pair.len() == 2)?, 16).ok()).collect()
}

/// Whether a text is so many lower-case hexadecimal digits.
pub fn is_hexadecimal(text: &str, digits: usize) -> bool {
    text.len() == digits && text.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'))
}

fn digit(nibble: u8) -> char {
    char::from_digit(u32::from(nibble), 16).unwrap_or_default()
}
