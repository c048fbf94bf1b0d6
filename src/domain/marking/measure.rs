//! Units as they are printed behind a number.

use super::token::{Token, TokenKind};

/// A unit that ratings are printed in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Measure {
    Ampere,
    Centimetre,
    Foot,
    Hertz,
    Kilowatt,
    Metre,
    Milliampere,
    Millimetre,
    SquareMillimetre,
    Volt,
    Watt,
}

impl Measure {
    /// Whether it belongs to an electrical rating.
    pub(super) const fn is_electrical(self) -> bool {
        matches!(self, Self::Ampere | Self::Kilowatt | Self::Volt | Self::Watt)
    }
}

/// The unit that begins at a token, and how many tokens it takes. Apparent power counts as power: VA are volts times amperes.
pub(super) fn measure(tokens: &[Token], at: usize) -> Option<(Measure, usize)> {
    let measure = match tokens.get(at)?.word()? {
        "A" | "AMP" | "AMPERE" | "AMPERES" | "AMPS" => Measure::Ampere,
        "CM" => Measure::Centimetre,
        "FEET" | "FOOT" | "FT" => Measure::Foot,
        "HZ" => Measure::Hertz,
        "KVA" | "KW" => Measure::Kilowatt,
        "M" | "METER" | "METERS" | "METRE" | "METRES" | "MTR" | "MTRS" => Measure::Metre,
        "MA" => Measure::Milliampere,
        "MM" => Measure::Millimetre,
        "MM2" | "MMQ" | "SQMM" => Measure::SquareMillimetre,
        "SQ" => {
            let dot = usize::from(tokens.get(at + 1).is_some_and(|next| next.is_sign('.') || next.is_sign('-')));
            let is_mm = tokens.get(at + 1 + dot).and_then(Token::word) == Some("MM");
            return Some((Measure::SquareMillimetre, if is_mm { 2 + dot } else { 1 }));
        }
        "V" | "VAC" | "VDC" | "VOLT" | "VOLTS" => Measure::Volt,
        "VA" | "W" | "WATT" | "WATTS" => Measure::Watt,
        _ => return None,
    };
    Some((measure, 1))
}

/// The unit of the next number within the same thought, whatever words stand before it; a bare number is passed over.
pub(super) fn next_measure(tokens: &[Token], after: usize) -> Option<Measure> {
    const REACH: usize = 8;
    let ahead = tokens.iter().enumerate().skip(after + 1).take(REACH);
    ahead
        .take_while(|(_, token)| token.kind != TokenKind::Break)
        .filter(|(_, token)| token.number().is_some())
        .find_map(|(at, _)| measure(tokens, at + 1).map(|(measure, _)| measure))
}
