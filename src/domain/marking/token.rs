//! Print cut into numbers, words and signs, the way people copy it: full-width letters, odd dashes and squared signs included.

use super::figure::Figure;

/// One piece of print.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Token {
    /// What it is.
    pub(super) kind: TokenKind,
    /// First byte in the print.
    pub(super) from: usize,
    /// First byte after it.
    pub(super) to: usize,
}

/// What a piece of print is.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum TokenKind {
    /// A number.
    Number(Figure),
    /// Letters, in capitals, perhaps with digits, dashes and strokes inside.
    Word(String),
    /// Anything else that was printed.
    Sign(char),
    /// End of a line or of a thought: a line break, a semicolon, a bullet.
    Break,
}

impl Token {
    /// The number, if it is one.
    pub(super) const fn number(&self) -> Option<Figure> {
        match self.kind {
            TokenKind::Number(figure) => Some(figure),
            TokenKind::Word(_) | TokenKind::Sign(_) | TokenKind::Break => None,
        }
    }

    /// The word, if it is one.
    pub(super) fn word(&self) -> Option<&str> {
        match &self.kind {
            TokenKind::Word(word) => Some(word),
            TokenKind::Number(_) | TokenKind::Sign(_) | TokenKind::Break => None,
        }
    }

    /// Whether it is this sign.
    pub(super) fn is_sign(&self, sign: char) -> bool {
        self.kind == TokenKind::Sign(sign)
    }
}

/// Words that end where a digit begins: `MAX13A`, `AC250V`, `IEC53`, `RVV3X0.75`. Any other word keeps its digits: `BS1363`, `XK-13A`.
const END_AT_DIGITS: &[&str] = &[
    "AC", "AMP", "AWG", "AWGX", "CURRENT", "DC", "FUSE", "FUSED", "IEC", "INPUT", "LOAD", "MAX", "OUTPUT", "POWER",
    "RATED", "RATING", "RVB", "RVV", "RVVB", "SJT", "SJTW", "SVT", "TOTAL", "USB", "VCTF", "VOLTAGE", "YZ", "YZW",
];

/// Units that end at a dash or stroke: `10 A/250V` is no word `A/250V`.
const END_AT_DASHES: &[&str] = &["A", "AMP", "AMPS", "HZ", "KW", "M", "MM", "V", "VAC", "W"];

struct Glyph {
    plain: char,
    from: usize,
    to: usize,
}

/// Cuts print into pieces.
pub(super) fn tokens(print: &str) -> Vec<Token> {
    let glyphs = glyphs(print);
    let plain = |at: usize| glyphs.get(at).map_or('\n', |glyph| glyph.plain);
    let mut found: Vec<Token> = Vec::new();
    let mut at = 0;
    while let Some(glyph) = glyphs.get(at) {
        let glued = found.last().filter(|last| last.to == glyph.from);
        let before = at.checked_sub(1).map_or(' ', plain);
        let (kind, end) = if starts_number(glyph.plain, plain(at + 1), before) {
            let end = end_of_number(&plain, at);
            let digits: String = (at..end).map(plain).collect();
            (Figure::read(&digits).map_or(TokenKind::Word(digits), TokenKind::Number), end)
        } else if glyph.plain.is_alphabetic() {
            let is_unit = glued.is_some_and(|last| last.number().is_some() || last.is_sign(')'));
            let end = if is_unit { end_of_unit(&plain, at) } else { end_of_word(&plain, at) };
            (TokenKind::Word(capitals((at..end).map(plain))), end)
        } else if matches!(glyph.plain, '\n' | '\r' | ';' | '|' | '•') {
            (TokenKind::Break, at + 1)
        } else if glyph.plain.is_whitespace() {
            at += 1;
            continue;
        } else {
            (TokenKind::Sign(glyph.plain), at + 1)
        };
        let to = end.checked_sub(1).and_then(|last| glyphs.get(last)).map_or(glyph.to, |last| last.to);
        found.push(Token { kind, from: glyph.from, to });
        at = end;
    }
    found
}

/// The words `MM2`, `MM^2` and `MM²` are one.
fn capitals(letters: impl Iterator<Item = char>) -> String {
    letters.filter(|&c| c != '^').map(|c| if c == '²' { '2' } else { c }).flat_map(char::to_uppercase).collect()
}

fn starts_number(this: char, next: char, before: char) -> bool {
    let leads =
        matches!(this, '.' | ',') && next.is_ascii_digit() && !before.is_alphanumeric() && !matches!(before, '.' | ',');
    this.is_ascii_digit() || leads
}

fn end_of_number(plain: &impl Fn(usize) -> char, mut at: usize) -> usize {
    loop {
        let separates = matches!(plain(at), '.' | ',') && plain(at + 1).is_ascii_digit();
        if !separates && !plain(at).is_ascii_digit() {
            return at;
        }
        at += 1;
    }
}

/// Right behind a number or a bracket only letters belong to the word, so that `13A250V` and `3G1.5` fall into their pieces.
fn end_of_unit(plain: &impl Fn(usize) -> char, start: usize) -> usize {
    let mut at = start;
    while plain(at).is_alphabetic() {
        at += 1;
    }
    end_of_square(plain, start, at)
}

/// Takes the square of `mm²` along, however it is printed.
fn end_of_square(plain: &impl Fn(usize) -> char, start: usize, at: usize) -> usize {
    let is_length = at > start && matches!(plain(at - 1), 'm' | 'M');
    let goes_on = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',');
    match (plain(at), plain(at + 1)) {
        ('²', _) if is_length => at + 1,
        ('^', '2') if is_length => at + 2,
        ('2', next) if is_length && !goes_on(next) => at + 1,
        _ => at,
    }
}

fn end_of_word(plain: &impl Fn(usize) -> char, start: usize) -> usize {
    let mut at = start;
    loop {
        let (this, next) = (plain(at), plain(at + 1));
        let takes = if this.is_alphabetic() {
            true
        } else {
            let word = capitals((start..at).map(plain));
            let ends_at_digits = END_AT_DIGITS.contains(&word.as_str());
            match this {
                '-' | '/' => {
                    let unit = END_AT_DASHES.contains(&word.as_str());
                    next.is_alphanumeric() && !unit && !(ends_at_digits && next.is_ascii_digit())
                }
                digit if digit.is_ascii_digit() => !ends_at_digits,
                _ => false,
            }
        };
        if !takes {
            return end_of_square(plain, start, at);
        }
        at += 1;
    }
}

/// The print in plain characters, each with its place.
fn glyphs(print: &str) -> Vec<Glyph> {
    let mut glyphs = Vec::with_capacity(print.len());
    for (from, printed) in print.char_indices() {
        let to = from + printed.len_utf8();
        let mut push = |plain| glyphs.push(Glyph { plain, from, to });
        match printed {
            '㎟' => "mm²".chars().for_each(push),
            '㎜' => "mm".chars().for_each(push),
            '㎝' => "cm".chars().for_each(push),
            '㎾' => "kW".chars().for_each(push),
            '㎐' => "Hz".chars().for_each(push),
            '\u{200B}' | '\u{FEFF}' | '\u{AD}' => push(' '),
            '×' | '✕' | '✖' | '∗' | '*' | '\u{445}' | '\u{425}' => push('x'),
            '–' | '—' | '−' | '\u{2010}' | '\u{2011}' => push('-'),
            '∼' | '〜' => push('~'),
            '·' => push('.'),
            '、' => push(','),
            '\u{FF01}'..='\u{FF5E}' => push(char::from_u32(u32::from(printed) - 0xFEE0).unwrap_or(printed)),
            other => push(other),
        }
    }
    glyphs
}
