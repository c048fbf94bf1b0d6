//! The number under a barcode (GTIN): its last digit follows from the others (GS1 General Specifications, check digit).

/// What a number under a barcode is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Gtin {
    /// A GTIN with the right check digit.
    Valid,
    /// As long as a GTIN, but its check digit is wrong.
    WrongDigit {
        /// The digit printed.
        printed: u8,
        /// The digit that the others call for.
        expected: u8,
    },
    /// No GTIN: another length, or something else than digits.
    NotAGtin,
}

/// Reads the number under a barcode. Spaces and dashes do not count.
pub fn gtin(printed: &str) -> Gtin {
    let digit = |c: char| c.to_digit(10).and_then(|digit| u8::try_from(digit).ok());
    let marks = printed.chars().filter(|c| !c.is_whitespace() && *c != '-');
    let Some(digits) = marks.map(digit).collect::<Option<Vec<u8>>>() else { return Gtin::NotAGtin };
    match digits.split_last() {
        Some((&printed, payload)) if matches!(digits.len(), 8 | 12 | 13 | 14) => {
            let expected = check_digit(payload);
            if printed == expected { Gtin::Valid } else { Gtin::WrongDigit { printed, expected } }
        }
        _ => Gtin::NotAGtin,
    }
}

/// From the right the digits weigh 3, 1, 3, 1 …; the check digit brings their sum to a full ten.
fn check_digit(payload: &[u8]) -> u8 {
    let weights = [3_u8, 1].into_iter().cycle();
    let sum = payload.iter().rev().zip(weights).fold(0_u8, |sum, (digit, weight)| (sum + digit * weight) % 10);
    (10 - sum) % 10
}
