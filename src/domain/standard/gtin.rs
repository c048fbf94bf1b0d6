//! The number under a barcode (GS1 General Specifications): its last digit follows from the others.

use super::{Clause, Provenance};

/// The check digit.
pub const CHECK_DIGIT: Clause = Clause::new("GS1 General Specifications", "", "check digit", Provenance::Read);

/// How many digits a number may have.
pub const LENGTHS: [usize; 4] = [8, 12, 13, 14];

/// The check digit of the digits before it: counted from the right they weigh 3, 1, 3, 1 …, and it brings the sum to a whole ten.
pub fn gtin_check_digit(digits: &[u8]) -> u8 {
    let weights = [3, 1].into_iter().cycle();
    let sum: u32 = digits.iter().rev().zip(weights).map(|(&digit, weight)| u32::from(digit) * weight).sum();
    u8::try_from((10 - sum % 10) % 10).unwrap_or_default()
}

/// Whether the last digit of a printed number follows from the others, spaces left out; `None` for anything but such a number.
pub fn is_valid(printed: &str) -> Option<bool> {
    let digits: Option<Vec<u8>> = printed
        .chars()
        .filter(|c| !c.is_whitespace())
        .map(|c| c.to_digit(10).and_then(|d| u8::try_from(d).ok()))
        .collect();
    let digits = digits.filter(|digits| LENGTHS.contains(&digits.len()))?;
    let (last, others) = digits.split_last()?;
    Some(gtin_check_digit(others) == *last)
}
