//! Keys and signatures: Ed25519 (RFC 8032), verified by its stricter rules.

use ed25519_dalek::{Signature, Signer, SigningKey, VerifyingKey};

use crate::record::digest;

/// The letters of base 32 (RFC 4648): none of them looks like a digit that it has.
const LETTERS: [char; 32] = [
    'A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'I', 'J', 'K', 'L', 'M', 'N', 'O', 'P', 'Q', 'R', 'S', 'T', 'U', 'V', 'W',
    'X', 'Y', 'Z', '2', '3', '4', '5', '6', '7',
];

/// The public half of a sealing key. Any 32 bytes are taken; what is no key verifies nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PublicKey([u8; 32]);

impl PublicKey {
    /// From its bytes as RFC 8032 and `WebCrypto`'s `raw` have them.
    pub const fn new(bytes: [u8; 32]) -> Self {
        Self(bytes)
    }

    /// From 32 bytes.
    pub fn from_bytes(bytes: &[u8]) -> Option<Self> {
        bytes.try_into().ok().map(Self)
    }

    /// From 64 lower-case hexadecimal digits.
    pub fn from_hexadecimal(digits: &str) -> Option<Self> {
        Self::from_bytes(&digest::from_hexadecimal(digits)?)
    }

    /// Of a secret key: the 32 bytes that RFC 8032 calls so.
    pub fn of(secret: &[u8; 32]) -> Self {
        Self(SigningKey::from_bytes(secret).verifying_key().to_bytes())
    }

    /// Its 32 bytes.
    pub const fn bytes(&self) -> [u8; 32] {
        self.0
    }

    /// 64 lower-case hexadecimal digits.
    pub fn hexadecimal(&self) -> String {
        digest::hexadecimal(&self.0)
    }

    /// Whether a signature over a message is one of this key. Keys and signatures that would fit several messages are none.
    pub fn verifies(&self, message: &[u8], signature: &[u8; 64]) -> bool {
        let signature = Signature::from_bytes(signature);
        VerifyingKey::from_bytes(&self.0).is_ok_and(|key| key.verify_strict(message, &signature).is_ok())
    }
}

/// Signs a message with a secret key, the 32 bytes that RFC 8032 calls so: for where the browser cannot.
pub fn sign(secret: &[u8; 32], message: &[u8]) -> [u8; 64] {
    SigningKey::from_bytes(secret).sign(message).to_bytes()
}

/// What people compare: the first 120 bits of the key's SHA-256 in base 32, in six groups of four.
///
/// ```
/// use plugwary::seal::{PublicKey, fingerprint};
/// // SHA-256 of 32 noughts begins with 66687aadf862bd776c8fc18b8e9f8e.
/// assert_eq!(fingerprint(&PublicKey::new([0; 32])), "MZUH-VLPY-MK6X-O3EP-YGFY-5H4O");
/// ```
pub fn fingerprint(key: &PublicKey) -> String {
    let digest = digest::sha256(&key.0);
    let bits = digest.get(..30).and_then(|digits| u128::from_str_radix(digits, 16).ok()).unwrap_or_default();
    let letter = |place: u32| usize::try_from((bits >> (5 * place)) & 31).ok().and_then(|n| LETTERS.get(n).copied());
    let letters: Vec<char> = (0..24).rev().filter_map(letter).collect();
    letters.chunks(4).map(|group| group.iter().collect::<String>()).collect::<Vec<_>>().join("-")
}
