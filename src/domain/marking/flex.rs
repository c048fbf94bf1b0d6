//! The print along a flex: its type, cores, size, rated voltage, origin marks, and whatever else stands there.

use super::figure::Figure;
use super::flex_type::{Family, FlexType};
use super::token::{Token, TokenKind, tokens};
use crate::domain::quantity::{Area, Measurand, Unit, square_millimetres};

/// The print on a flex as far as it could be read.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct FlexPrint {
    /// Its type.
    pub kind: Option<FlexType>,
    /// Cross-section of one core.
    pub area: Option<Area>,
    /// The size as an American wire gauge number, where it is printed so.
    pub gauge: Option<u8>,
    /// How many cores.
    pub cores: Option<u8>,
    /// Whether one of the cores is green-and-yellow: `G` says so, `X` denies it, other print says nothing.
    pub has_earth: Option<bool>,
    /// Rated voltages U0 and U in volts, as printed or as the type states them.
    pub voltages: Option<(u16, u16)>,
    /// Marks of a body that licenses or certifies flex, such as `HAR`.
    pub origin_marks: Vec<String>,
    /// Pieces that could not be read, as they were printed: a maker's name is among them.
    pub unread: Vec<String>,
}

/// Marks that stand for a licensing body (the harmonised mark and national ones beside it).
const ORIGIN_MARKS: &[&str] = &["HAR", "BASEC", "VDE", "KEMA", "NF-USE", "IMQ", "OVE", "SEMKO", "CCC", "UL", "CSA"];

/// Words that say nothing of the flex.
const IDLE: &[&str] = &[
    "AND", "BS", "C", "CABLE", "COPPER", "CU", "DIN", "EN", "GB", "GB/T", "IEC", "JB/T", "MM2", "PVC", "TYPE", "V", "E",
];

impl FlexPrint {
    /// Reads the print on a flex. Total: what cannot be read is kept in `unread`.
    pub fn parse(printed: &str) -> Self {
        // A designation may run into the number of cores: H05VV-F3G1.5.
        let spaced = printed.replace("-F", "-F ").replace("-f", "-f ");
        let pieces = tokens(&spaced);
        let mut reader = Reader { printed: &spaced, pieces: &pieces, flex: Self::default(), at: 0 };
        while reader.step() {}
        let mut flex = reader.flex;
        if flex.voltages.is_none() {
            flex.voltages = flex.kind.as_ref().and_then(|kind| kind.voltages);
        }
        flex
    }

    /// Whether anything of it was understood as a type or a size.
    pub const fn is_understood(&self) -> bool {
        self.kind.is_some() || self.area.is_some()
    }
}

struct Reader<'a> {
    printed: &'a str,
    pieces: &'a [Token],
    flex: FlexPrint,
    at: usize,
}

impl Reader<'_> {
    fn step(&mut self) -> bool {
        let Some(piece) = self.pieces.get(self.at) else { return false };
        self.at += match &piece.kind {
            TokenKind::Number(number) => self.number(*number),
            TokenKind::Word(word) => self.word(word),
            TokenKind::Sign(_) | TokenKind::Break => 1,
        };
        true
    }

    fn piece(&self, ahead: usize) -> Option<&Token> {
        self.pieces.get(self.at + ahead)
    }

    fn word_ahead(&self, ahead: usize) -> Option<&str> {
        self.piece(ahead).and_then(Token::word)
    }

    fn number_ahead(&self, ahead: usize) -> Option<Figure> {
        self.piece(ahead).and_then(Token::number)
    }

    fn whole_ahead(&self, ahead: usize) -> Option<u32> {
        self.number_ahead(ahead).and_then(Figure::whole_number)
    }

    fn number(&mut self, number: Figure) -> usize {
        match self.word_ahead(1) {
            Some("G") => return self.cores(number, Some(true), 2),
            Some("X") => return self.cores(number, Some(false), 2),
            Some("CORE" | "CORES" | "C") => return self.cores(number, None, 2),
            Some("AWG") => return self.gauge(number, 2),
            Some("MM2" | "SQMM") => {
                self.flex.area = number.stated::<Area>(Unit::SquareMillimetre).map(|stated| stated.value);
                return 2;
            }
            Some("IEC") => {
                let kind = number.whole_number().zip(self.whole_ahead(2)).and_then(|(p, n)| FlexType::iec(p, n));
                if kind.is_some() {
                    self.flex.kind = kind;
                    return 3;
                }
            }
            Some("V") => return 2,
            _ => {}
        }
        let is_pair = self.piece(1).is_some_and(|piece| piece.is_sign('/'));
        if let (true, Some(low), Some(high), Some("V")) =
            (is_pair, number.whole_number(), self.whole_ahead(2), self.word_ahead(3))
        {
            self.flex.voltages = u16::try_from(low).ok().zip(u16::try_from(high).ok());
            return 4;
        }
        self.keep()
    }

    /// `3G1.5`, `3X0.75 mm²`, `3 core 1.25 mm²`, `3x18AWG`.
    fn cores(&mut self, count: Figure, has_earth: Option<bool>, taken: usize) -> usize {
        let Some(cores) = count.small_count() else { return self.keep() };
        self.flex.cores = Some(cores);
        // American and Chinese print writes X for "times", with or without an earth core.
        let is_european = self.flex.kind.as_ref().is_none_or(|kind| kind.family == Family::Hd361);
        self.flex.has_earth = has_earth.filter(|earth| *earth || is_european && self.flex.kind.is_some());
        let Some(size) = self.number_ahead(taken) else { return taken };
        if self.word_ahead(taken + 1) == Some("AWG") {
            return self.gauge(size, taken + 2);
        }
        self.flex.area = size.stated::<Area>(Unit::SquareMillimetre).map(|stated| stated.value);
        let has_unit = matches!(self.word_ahead(taken + 1), Some("MM2" | "SQMM" | "MM"));
        taken + 1 + usize::from(has_unit)
    }

    /// American wire gauge: d = 0.127 mm × 92^((36 - n)/39) (ASTM B258, formula).
    fn gauge(&mut self, gauge: Figure, taken: usize) -> usize {
        let Some(number) = gauge.small_count() else { return self.keep() };
        let diameter = 0.127 * libm::pow(92.0, (36.0 - f64::from(number)) / 39.0);
        let area = square_millimetres(core::f64::consts::PI / 4.0 * diameter * diameter);
        self.flex.gauge = Some(number);
        self.flex.area = Some(area).filter(|area| area.base() > 0.0);
        // `18AWG/3` and `18 AWG x 3` add the number of cores.
        let joins = self.piece(taken).is_some_and(|p| p.is_sign('/') || p.word() == Some("X"));
        if let Some(cores) = joins.then(|| self.number_ahead(taken + 1)).flatten().and_then(Figure::small_count) {
            self.flex.cores = Some(cores);
            return taken + 2;
        }
        taken
    }

    fn word(&mut self, word: &str) -> usize {
        if let Some(kind) = FlexType::hd361(word).or_else(|| FlexType::national(word)) {
            if self.flex.kind.is_none() || kind.family == Family::Hd361 {
                self.flex.kind = Some(kind);
            }
            return 1;
        }
        match word {
            "AWG" => match self.number_ahead(1) {
                Some(number) => return self.gauge(number, 2),
                None => return self.keep(),
            },
            "IEC" | "BS" | "EN" | "GB" | "GB/T" | "JB/T" => {
                let has_number = self.number_ahead(1).is_some();
                let is_type = self.word_ahead(2) == Some("IEC");
                return if has_number && !is_type { 2 } else { 1 };
            }
            _ if ORIGIN_MARKS.contains(&word) => self.flex.origin_marks.push(word.to_owned()),
            _ if IDLE.contains(&word) || is_reference(word) => {}
            _ => return self.keep(),
        }
        1
    }

    fn keep(&mut self) -> usize {
        if let Some(piece) = self.piece(0) {
            let printed = self.printed.get(piece.from..piece.to).unwrap_or_default().to_owned();
            self.flex.unread.push(printed);
        }
        1
    }
}

/// Number of a standard: `BS6500`, `EN50525-2-11`, `60227-5`.
fn is_reference(word: &str) -> bool {
    ["BS", "EN", "IEC", "GB", "GB/T", "JB/T"]
        .iter()
        .any(|start| word.strip_prefix(start).is_some_and(|rest| rest.starts_with(|c: char| c.is_ascii_digit())))
}
