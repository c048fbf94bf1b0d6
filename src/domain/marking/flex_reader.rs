//! Reads the print along a flex from left to right.

use super::cord_name::{national_type, numbered_type_at, standard_at};
use super::cores::{Cores, Joint, area_of_gauge, cores, gauge_at};
use super::designation::designation;
use super::figure::Figure;
use super::measure::{Measure, measure};
use super::token::{Token, TokenKind, tokens};
use super::{FlexPrint, Meaning, Piece};
use crate::domain::quantity::{ElectricPotential, Unit};
use crate::domain::standard::cord_type::{CordType, Family};

/// Marks of approval and origin that stand on flexes.
const MARKS: &[&str] = &[
    "BASEC",
    "CCC",
    "CE",
    "CEBEC",
    "CSA",
    "CUL",
    "DEMKO",
    "FIMKO",
    "HAR",
    "IMQ",
    "KEMA",
    "KEMA-KEUR",
    "KEUR",
    "NEMKO",
    "NF",
    "OVE",
    "PSE",
    "SEMKO",
    "TUV",
    "UKCA",
    "UL",
    "VDE",
];

/// Words that name no maker.
const PLAIN_WORDS: &[&str] = &[
    "AC", "AND", "C", "CABLE", "CHINA", "CO", "COPPER", "CORD", "CORD-SET", "CORE", "CORES", "FLEX", "FLEXIBLE", "FOR",
    "IN", "INC", "LIMITED", "LTD", "MADE", "MAX", "MM", "MM2", "OF", "POWER", "PVC", "ROHS", "RUBBER", "THE", "TO",
    "TYPE", "US", "WIRE", "WITH",
];

/// Reads one print.
pub(super) struct FlexReader<'a> {
    print: &'a str,
    tokens: Vec<Token>,
    at: usize,
    flex: FlexPrint,
    /// Words that may be the maker's name: the tokens, the bytes, and where the piece belongs.
    maker: Option<Run>,
    unread: Vec<Run>,
}

/// Neighbouring tokens.
#[derive(Debug, Clone, Copy)]
struct Run {
    last: usize,
    from: usize,
    to: usize,
    /// How many pieces stand before it.
    place: usize,
}

impl<'a> FlexReader<'a> {
    pub(super) fn new(print: &'a str) -> Self {
        Self { print, tokens: tokens(print), at: 0, flex: FlexPrint::default(), maker: None, unread: Vec::new() }
    }

    pub(super) fn read(mut self) -> FlexPrint {
        while let Some(token) = self.tokens.get(self.at).cloned() {
            let taken = match &token.kind {
                TokenKind::Number(figure) => self.number(*figure),
                TokenKind::Word(word) => self.word(word, token.from),
                TokenKind::Sign(sign) => (sign.is_ascii_punctuation() || matches!(sign, '®' | '™' | '°')).then_some(1),
                TokenKind::Break => Some(1),
            };
            if taken.is_none() {
                self.keep(&token);
            }
            self.at += taken.unwrap_or(1).max(1);
        }
        self.finish()
    }

    /// The print of so many tokens from here.
    fn printed(&self, count: usize) -> String {
        self.printed_from(self.at, count)
    }

    fn printed_from(&self, at: usize, count: usize) -> String {
        let from = self.tokens.get(at).map_or(0, |token| token.from);
        let to = self.tokens.get(at + count.saturating_sub(1)).map_or(from, |token| token.to);
        self.print.get(from..to).unwrap_or_default().to_owned()
    }

    fn understand(&mut self, taken: usize, means: Meaning) -> usize {
        let printed = self.printed(taken);
        self.flex.pieces.push(Piece { printed, means });
        taken
    }

    fn number(&mut self, figure: Figure) -> Option<usize> {
        if let Some((cord, taken)) = numbered_type_at(&self.tokens, self.at) {
            return Some(self.cord_type(cord?, taken));
        }
        if let Some(cores) = cores(&self.tokens, self.at) {
            return Some(self.put_cores(&cores));
        }
        if let Some(taken) = self.voltage(figure) {
            return Some(taken);
        }
        if let Some(taken) = self.gauge_over_cores(figure) {
            return Some(taken);
        }
        let is_degrees = |at: usize| {
            let sign = usize::from(self.tokens.get(at).is_some_and(|token| token.is_sign('°')));
            let celsius = self.tokens.get(at + sign).and_then(Token::word);
            (matches!(celsius, Some("C" | "CELSIUS" | "℃")) && figure.small_count() != Some(1)).then_some(2 + sign)
        };
        let taken = is_degrees(self.at + 1)?;
        Some(self.understand(taken, Meaning::Temperature))
    }

    fn put_cores(&mut self, cores: &Cores) -> usize {
        let Cores { count, joint, area, gauge, size_behind, taken } = *cores;
        let is_hd361 = self.flex.designation.is_some();
        let of_number = self.printed(size_behind.unwrap_or(taken));
        let of_size = self.printed_from(self.at + size_behind.unwrap_or(0), taken - size_behind.unwrap_or(0));
        if let Some(count) = count {
            let (means, has_earth) = match joint {
                Joint::WithEarth => (Meaning::CoresWithEarth(count), Some(true)),
                Joint::Times if is_hd361 => (Meaning::CoresWithoutEarth(count), Some(false)),
                Joint::Times | Joint::Word => (Meaning::Cores(count), (count < 3).then_some(false)),
            };
            self.flex.cores = self.flex.cores.or(Some(count));
            self.flex.has_earth = self.flex.has_earth.or(has_earth);
            self.flex.pieces.push(Piece { printed: of_number, means });
        }
        if let (Some(gauge), Some(area)) = (gauge, area) {
            if self.flex.area.is_none() {
                (self.flex.area, self.flex.gauge) = (Some(area.value), Some(gauge));
            }
            self.flex.pieces.push(Piece { printed: of_size, means: Meaning::Gauge(gauge, area.value) });
        } else if let Some(area) = area {
            // Square millimetres say more than a gauge beside them.
            if self.flex.area.is_none() || self.flex.gauge.is_some() {
                (self.flex.area, self.flex.gauge) = (Some(area.value), None);
            }
            self.flex.pieces.push(Piece { printed: of_size, means: Meaning::Area(area.value) });
        }
        taken
    }

    /// `300/500V`, `300/500` or `300V`.
    fn voltage(&mut self, first: Figure) -> Option<usize> {
        let volts = |figure: Figure| figure.stated::<ElectricPotential>(Unit::Volt).map(|stated| stated.value);
        let unit = |at| matches!(measure(&self.tokens, at), Some((Measure::Volt, _)));
        let own_unit = usize::from(unit(self.at + 1));
        let stroke = self.at + 1 + own_unit;
        let second = self.tokens.get(stroke).filter(|token| token.is_sign('/'));
        let second = second.and_then(|_| self.tokens.get(stroke + 1)?.number());
        let is_rated = |figure: Figure| figure.whole_number().is_some_and(|n| (100..=1000).contains(&n) && n % 50 == 0);
        let (pair, taken) = match second {
            Some(second) if is_rated(first) && is_rated(second) => {
                ((volts(first)?, volts(second)?), own_unit + 3 + usize::from(unit(stroke + 2)))
            }
            _ if own_unit == 1 => ((volts(first)?, volts(first)?), 2),
            _ => return None,
        };
        self.flex.voltage_in_figures = self.flex.voltage_in_figures.or(Some(pair));
        Some(self.understand(taken, Meaning::VoltageInFigures(pair.0, pair.1)))
    }

    /// `18/3`: American for three cores of 18 AWG; only where an American type or mark stands before it.
    fn gauge_over_cores(&mut self, figure: Figure) -> Option<usize> {
        let is_american = self.flex.cord_type.is_some_and(|cord| cord.family == Family::American);
        let stroke = self.tokens.get(self.at + 1)?.is_sign('/');
        let count = self.tokens.get(self.at + 2)?.number()?.small_count().filter(|count| (2..=5).contains(count))?;
        let gauge = figure.small_count().filter(|gauge| (10..=20).contains(gauge))?;
        if !(is_american && stroke) {
            return None;
        }
        let area = area_of_gauge(gauge);
        let joint = Joint::Word;
        Some(self.put_cores(&Cores {
            count: Some(count),
            joint,
            area,
            gauge: Some(gauge),
            size_behind: None,
            taken: 3,
        }))
    }

    fn word(&mut self, word: &str, from: usize) -> Option<usize> {
        if let Some(taken) = self.designation(from) {
            return Some(taken);
        }
        if let Some(taken) = standard_at(&self.tokens, self.at) {
            let printed = self.printed(taken);
            self.flex.standards.push(printed);
            return Some(self.understand(taken, Meaning::Standard));
        }
        if let Some(cord) = national_type(word) {
            return Some(self.cord_type(cord, 1));
        }
        if let Some((gauge, taken)) = gauge_at(&self.tokens, self.at) {
            return Some(self.put_cores(&Cores::of_gauge(gauge, taken)));
        }
        if MARKS.contains(&word) {
            let printed = self.printed(1);
            self.flex.origin_marks.push(printed);
            return Some(self.understand(1, Meaning::ApprovalMark));
        }
        (PLAIN_WORDS.contains(&word) || word == "X").then_some(1)
    }

    fn designation(&mut self, from: usize) -> Option<usize> {
        let found = designation(self.print.get(from..)?)?;
        let end = from + found.taken;
        if self.flex.designation.is_none() {
            self.flex.look_alike = found.look_alike.then(|| self.print.get(from..end).unwrap_or_default().to_owned());
            self.flex.designation = Some(found.designation);
            self.flex.pieces.extend(found.pieces);
        }
        // The designation may end inside a word, as in "H05VV-F3G1.5": what follows is cut anew.
        let rest = tokens(self.print.get(end..)?);
        self.tokens.truncate(self.at + 1);
        if let Some(last) = self.tokens.last_mut() {
            last.to = end;
        }
        self.tokens.extend(rest.into_iter().map(|token| Token { from: token.from + end, to: token.to + end, ..token }));
        Some(1)
    }

    fn cord_type(&mut self, cord: &'static CordType, taken: usize) -> usize {
        self.flex.cord_type = self.flex.cord_type.or(Some(cord));
        self.understand(taken, Meaning::Type(cord))
    }

    /// Keeps what was not understood: the first words of letters may be the maker's name.
    fn keep(&mut self, token: &Token) {
        let (at, place) = (self.at, self.flex.pieces.len());
        let run = Run { last: at, from: token.from, to: token.to, place };
        let printed = self.print.get(token.from..token.to).unwrap_or_default();
        let may_name = printed.chars().filter(|c| c.is_alphabetic()).count() >= 2
            && !printed.contains(|c: char| c.is_ascii_digit());
        let grows = |run: &Run| run.last + 1 == at;
        match (&mut self.maker, self.unread.last_mut()) {
            (Some(maker), _) if may_name && grows(maker) => (maker.last, maker.to) = (at, token.to),
            (maker @ None, _) if may_name => *maker = Some(run),
            (_, Some(last)) if grows(last) => (last.last, last.to) = (at, token.to),
            _ => self.unread.push(run),
        }
    }

    fn finish(mut self) -> FlexPrint {
        let text = |run: &Run| self.print.get(run.from..run.to).unwrap_or_default().to_owned();
        self.flex.unread = self.unread.iter().map(text).collect();
        if let Some(run) = self.maker {
            let printed = text(&run);
            self.flex.maker = Some(printed.clone());
            let place = run.place.min(self.flex.pieces.len());
            self.flex.pieces.insert(place, Piece { printed, means: Meaning::Maker });
        }
        self.flex
    }
}
