//! Names of standards and of flex types inside print, so that their figures are not taken for ratings.

use super::measure::{Measure, measure};
use super::token::Token;
use crate::domain::standard::cord_type::{self, CordType};

/// Bodies and countries that begin the number of a standard.
const PREFIXES: &[&str] = &[
    "AS", "AS/NZS", "ASTM", "BS", "BSEN", "DIN", "EN", "GB", "GB/T", "HD", "IEC", "IEC/EN", "ISO", "JB", "JB/T", "JIS",
    "NZS", "UL", "VDE",
];

/// A standard named at a token: how many tokens it takes.
pub(super) fn standard_at(tokens: &[Token], at: usize) -> Option<usize> {
    let word = tokens.get(at)?.word()?;
    let body: String = word.chars().take_while(|c| c.is_alphabetic() || *c == '/').collect();
    if !PREFIXES.contains(&body.as_str()) {
        return None;
    }
    if body != word {
        let digits = word.chars().filter(char::is_ascii_digit).count();
        return (digits >= 3).then(|| 1 + tail(tokens, at + 1));
    }
    let next = tokens.get(at + 1)?;
    if next.word().is_some() {
        return standard_at(tokens, at + 1).map(|taken| 1 + taken);
    }
    let number = next.number()?.whole_part()?;
    let is_rating = match measure(tokens, at + 2) {
        Some((Measure::Ampere, _)) => number < 1000,
        Some(_) => true,
        None => number < 60,
    };
    (!is_rating).then(|| 2 + tail(tokens, at + 2))
}

/// Parts and years behind the number: `-2-11`, `/A`, `:2015`, and the lone `A` of `BS 1363 A`.
fn tail(tokens: &[Token], start: usize) -> usize {
    let mut at = start;
    while let [sign, part, ..] = tokens.get(at..).unwrap_or_default() {
        let joins = ['-', '/', ':', '.'].into_iter().any(|joint| sign.is_sign(joint)) && part.from == sign.to;
        let is_part =
            part.number().is_some() && measure(tokens, at + 2).is_none() || part.word().is_some_and(|w| w.len() == 1);
        if !(joins && is_part) {
            break;
        }
        at += 2;
    }
    let is_letter = tokens.get(at).and_then(Token::word) == Some("A");
    at - start + usize::from(is_letter)
}

/// A type by number, `60227 IEC 53` or `227IEC52`: how many tokens it takes, and the type where the number is known.
pub(super) fn numbered_type_at(tokens: &[Token], at: usize) -> Option<(Option<&'static CordType>, usize)> {
    let publication = tokens.get(at)?.number()?;
    if tokens.get(at + 1)?.word()? != "IEC" {
        return None;
    }
    let publication = publication.whole_number().filter(|number| matches!(number, 227 | 60227 | 245 | 60245))?;
    let number = tokens.get(at + 2)?.number()?.whole_number()?;
    Some((cord_type::by_number(publication, number), 3))
}

/// A national type, `RVV` or `ZR-RVV` (a flame-retardant one).
pub(super) fn national_type(word: &str) -> Option<&'static CordType> {
    let plain = ["ZA-", "ZB-", "ZC-", "ZR-"].iter().find_map(|prefix| word.strip_prefix(prefix)).unwrap_or(word);
    cord_type::by_name(plain)
}
