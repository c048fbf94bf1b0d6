//! Names for new records.

use std::fmt::Write;

/// An id that no other device has made: 32 hexadecimal digits.
pub fn fresh() -> String {
    let mut bytes = [0_u8; 16];
    let filled = web_sys::window()
        .and_then(|window| window.crypto().ok())
        .and_then(|crypto| crypto.get_random_values_with_u8_array(&mut bytes).ok());
    if filled.is_some() {
        return hexadecimal(&bytes);
    }
    // An id keeps records apart and no secret: without the better source the plain one does.
    format!("{:016x}{:016x}", js_sys::Math::random().to_bits(), js_sys::Math::random().to_bits())
}

/// Bytes as lower-case hexadecimal digits.
pub(super) fn hexadecimal(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |mut digits, byte| {
        // Writing to a String never fails.
        write!(digits, "{byte:02x}").ok();
        digits
    })
}
