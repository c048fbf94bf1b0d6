//! Protection against ingress (IEC 60529): `IP44`, `IPX4`, `IP 20`.

use super::token::Token;

/// Protection against ingress; `None` where an X is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ingress {
    /// First figure: against fingers, tools and dust.
    pub solids: Option<u8>,
    /// Second figure: against water.
    pub water: Option<u8>,
}

/// Reads a code at a word, and how many tokens it takes.
pub(super) fn ingress_at(print: &str, tokens: &[Token], at: usize) -> Option<(Ingress, usize)> {
    let (figures, taken) = match tokens.get(at)?.word()?.strip_prefix("IP")? {
        "" => {
            let next = tokens.get(at + 1)?;
            (print.get(next.from..next.to)?.to_uppercase(), 2)
        }
        figures => (figures.to_owned(), 1),
    };
    let mut figures = figures.chars();
    let (solids, water) = (figures.next()?, figures.next()?);
    let is_figure = |c: char| c == 'X' || c.is_ascii_digit();
    let is_code = is_figure(solids) && is_figure(water) && figures.next().is_none_or(char::is_alphabetic);
    let figure = |c: char| c.to_digit(10).and_then(|digit| u8::try_from(digit).ok());
    is_code.then(|| (Ingress { solids: figure(solids), water: figure(water) }, taken))
}
