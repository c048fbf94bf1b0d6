//! Fingerprints of files, as the browser wants to see them.

use sha2::{Digest as _, Sha256};

/// The SHA-256 of some bytes.
pub struct Digest([u8; 32]);

impl Digest {
    /// The fingerprint of these bytes.
    pub fn of(bytes: &[u8]) -> Self {
        Self(Sha256::digest(bytes).into())
    }

    /// As the `integrity` of a request: `sha256-` and base 64 with padding.
    pub fn to_integrity(&self) -> String {
        format!("sha256-{}", base64(&self.0))
    }

    /// The first 16 digits of the number written in base 16: enough to tell builds apart.
    pub fn to_short(&self) -> String {
        let start = self.0.first_chunk().copied().map_or(0, u64::from_be_bytes);
        format!("{start:016x}")
    }
}

/// RFC 4648, section 4.
fn base64(bytes: &[u8]) -> String {
    let digits: Vec<char> = ('A'..='Z').chain('a'..='z').chain('0'..='9').chain(['+', '/']).collect();
    let mut text = String::new();
    for group in bytes.chunks(3) {
        let number = group.iter().chain([&0; 2]).take(3).fold(0, |number, byte| number << 8 | usize::from(*byte));
        for place in 0..4 {
            let digit = number >> (18 - 6 * place) & 63;
            text.push(if place <= group.len() { digits.get(digit).copied().unwrap_or('=') } else { '=' });
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The test vectors of RFC 4648, section 10.
    #[test]
    fn base64_is_that_of_the_rfc() {
        for (bytes, text) in [
            ("", ""),
            ("f", "Zg=="),
            ("fo", "Zm8="),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg=="),
            ("fooba", "Zm9vYmE="),
            ("foobar", "Zm9vYmFy"),
        ] {
            assert_eq!(base64(bytes.as_bytes()), text);
        }
    }

    /// FIPS 180-4's example "abc": ba7816bf 8f01cfea 414140de 5dae2223 b00361a3 96177a9c b410ff61 f20015ad.
    #[test]
    fn fingerprint_is_sha_256() {
        let digest = Digest::of(b"abc");
        assert_eq!(digest.to_short(), "ba7816bf8f01cfea");
        assert_eq!(digest.to_integrity(), "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0=");
    }
}
