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

/// The last digit of a printed number, and the one that the others call for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LastDigit {
    /// The digit that is printed.
    pub printed: u8,
    /// The digit that the others call for.
    pub expected: u8,
}

/// The last digit of a number as it is printed; `None` where it is no such number. Spaces and dashes do not count.
pub fn last_digit(number: &str) -> Option<LastDigit> {
    let marks = number.chars().filter(|mark| !mark.is_whitespace() && *mark != '-');
    let digits: Vec<u8> = marks.map(|mark| mark.to_digit(10)?.try_into().ok()).collect::<Option<_>>()?;
    let (&printed, others) = digits.split_last().filter(|_| LENGTHS.contains(&digits.len()))?;
    Some(LastDigit { printed, expected: gtin_check_digit(others) })
}
