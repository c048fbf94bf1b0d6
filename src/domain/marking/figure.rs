//! Digits as they are printed: their value, their last step, and the second reading that a separator or trailing zeros allow.

use super::Stated;
use crate::domain::quantity::{Amount, Measurand, Unit};

/// More digits than any rating has; a longer run is a serial number.
const MOST_DIGITS: usize = 12;

/// One printed number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Figure {
    value: f64,
    step: f64,
    coarse_step: Option<f64>,
    /// Value of the same print where its one separator groups thousands: `3,250`.
    grouped: Option<f64>,
}

impl Figure {
    /// Reads digits with points or commas. `None` where the separators make no sense or there are too many digits.
    pub(super) fn read(printed: &str) -> Option<Self> {
        let is_separator = |c| matches!(c, '.' | ',');
        let groups: Vec<&str> = printed.split(is_separator).collect();
        let separators: Vec<char> = printed.chars().filter(|&c| is_separator(c)).collect();
        let digits: String = groups.concat();
        if digits.is_empty() || digits.len() > MOST_DIGITS || !digits.bytes().all(|b| b.is_ascii_digit()) {
            return None;
        }
        match (separators.as_slice(), groups.as_slice()) {
            ([], _) => Self::whole(&digits),
            ([_], [whole, decimals]) => {
                let grouped = is_grouping(&[whole, decimals]).then(|| digits.parse().ok()).flatten();
                Some(Self { grouped, ..Self::decimal(whole, decimals)? })
            }
            ([first, middle @ .., last], [thousands @ .., decimals]) if middle.iter().all(|c| c == first) => {
                if first == last {
                    is_grouping(&groups).then(|| Self::whole(&digits)).flatten()
                } else {
                    is_grouping(thousands).then(|| Self::decimal(&thousands.concat(), decimals)).flatten()
                }
            }
            _ => None,
        }
    }

    fn whole(digits: &str) -> Option<Self> {
        let significant = digits.trim_start_matches('0');
        let zeros = significant.len() - significant.trim_end_matches('0').len();
        let coarse = zeros.min(significant.len().saturating_sub(2));
        let coarse_step = if coarse > 0 { Some(power_of_ten(coarse, '+')?) } else { None };
        Some(Self { value: digits.parse().ok()?, step: 1.0, coarse_step, grouped: None })
    }

    fn decimal(whole: &str, decimals: &str) -> Option<Self> {
        let value = format!("{whole}.{decimals}").parse().ok()?;
        Some(Self { value, step: power_of_ten(decimals.len(), '-')?, coarse_step: None, grouped: None })
    }

    /// The reading in which a single separator before three digits groups thousands, if there is one.
    pub(super) fn as_grouped(self) -> Self {
        self.grouped.and_then(|value| Self::whole(&format!("{value:.0}"))).unwrap_or(self)
    }

    /// The number as a whole number from 1 to 99; `None` for any other.
    pub(super) fn small_count(self) -> Option<u8> {
        (1..=99).find(|&n| self.value.total_cmp(&f64::from(n)).is_eq())
    }

    /// The number as a whole number, such as the number of a publication; `None` for any other.
    pub(super) fn whole_number(self) -> Option<u32> {
        (self.step >= 1.0).then(|| format!("{:.0}", self.value).parse().ok())?
    }

    /// So many of a unit.
    pub(super) fn stated<Q: Measurand>(self, unit: Unit) -> Option<Stated<Q>> {
        let of = |number| Amount::new(number, unit).to::<Q>();
        Some(Stated { value: of(self.value)?, step: of(self.step)?, coarse_step: self.coarse_step.and_then(of) })
    }
}

/// Whether groups of digits look like thousands: one to three digits, not beginning with zero, then threes.
fn is_grouping(groups: &[&str]) -> bool {
    match groups {
        [first, rest @ ..] => {
            (1..=3).contains(&first.len()) && !first.starts_with('0') && rest.iter().all(|group| group.len() == 3)
        }
        [] => false,
    }
}

fn power_of_ten(exponent: usize, sign: char) -> Option<f64> {
    format!("1e{sign}{exponent}").parse().ok()
}
