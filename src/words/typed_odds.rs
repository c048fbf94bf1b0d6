//! How likely somebody takes an event to be, read as they type it: "1/100", "1 in 100", "0.01", "1 %", "certain".

use super::input_problem::InputProblem;
use super::typed::{Decimal, THOUSANDS_SPACE, plain};
use crate::domain::decision::Probability;

/// More characters than any chance has.
const MOST_CHARACTERS: usize = 40;

/// Reads a typed chance. Nought is refused: what cannot happen is no event on the way to an injury.
///
/// ```
/// use plugwary::words::typed_odds::parse_odds;
/// assert_eq!(parse_odds("1 in 100"), parse_odds("1 %"));
/// assert!(parse_odds("2/1").is_err());
/// ```
///
/// # Errors
/// [`InputProblem`] where the text is no chance above nought and at most certain, or could be two.
pub fn parse_odds(typed: &str) -> Result<Probability, InputProblem> {
    if typed.trim().is_empty() {
        return Err(InputProblem::Empty);
    }
    if typed.chars().count() > MOST_CHARACTERS {
        return Err(InputProblem::TooLong { typed: typed.to_owned() });
    }
    let text = plain(typed).to_lowercase();
    let text = text.strip_prefix("about ").unwrap_or(&text);
    if text == "certain" {
        return Ok(Probability::ONE);
    }
    let value = if let Some((part, whole)) = parts(text) {
        decimal(typed, part)? / decimal(typed, whole)?
    } else if let Some(percent) = text.strip_suffix('%').or_else(|| text.strip_suffix("percent")) {
        // Divided and not multiplied: 1 % is then the same number as 1/100.
        decimal(typed, percent)? / 100.0
    } else {
        decimal(typed, text)?
    };
    let is_chance = value > 0.0 && value <= 1.0;
    if is_chance { Ok(Probability::new(value)) } else { Err(InputProblem::NoChance { typed: typed.to_owned() }) }
}

/// The two numbers of "1/100", "1 in 100" and "1 out of 100".
fn parts(text: &str) -> Option<(&str, &str)> {
    ["/", " in ", " out of ", " of "].into_iter().find_map(|between| text.split_once(between))
}

fn decimal(typed: &str, text: &str) -> Result<f64, InputProblem> {
    let text = text.trim();
    let is_of_number = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | THOUSANDS_SPACE);
    if text.chars().all(is_of_number) {
        Decimal::read(typed, text).map(|decimal| decimal.value(0))
    } else {
        Err(InputProblem::NoChance { typed: typed.to_owned() })
    }
}
