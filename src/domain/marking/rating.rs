//! Ratings as they are printed: `13A 250V~`, `10 A 250V~ 2500W MAX`, `220-240V 50/60Hz`, `3G1.5mm²`, `FUSE 13A BS1362`.

use super::Stated;
use super::figure::Figure;
use super::token::{Token, TokenKind, tokens};
use crate::domain::quantity::{Area, ElectricCurrent, ElectricPotential, Length, Measurand, Power, Unit, volts};

/// A printed rating as far as it could be read.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Rating {
    /// Mains voltage, lowest and highest (equal where one is printed).
    pub voltage: Option<(Stated<ElectricPotential>, Stated<ElectricPotential>)>,
    /// Current of the whole product: one printed as a maximum or total counts before others, else the highest.
    pub current: Option<Stated<ElectricCurrent>>,
    /// Power, chosen like the current.
    pub power: Option<Stated<Power>>,
    /// Whether the power is printed as a maximum.
    pub power_is_maximum: bool,
    /// Length of the flex.
    pub length: Option<Stated<Length>>,
    /// Cross-section of a core.
    pub area: Option<Stated<Area>>,
    /// How many cores, and whether one of them is an earth (`3G1.5` has one, `3X1.5` has none).
    pub cores: Option<(u8, Option<bool>)>,
    /// Rating of a fuse that is named: not the product's current.
    pub fuse: Option<Stated<ElectricCurrent>>,
    /// Whether an output of less than mains voltage is stated, such as USB.
    pub has_output: bool,
    /// Pieces that could not be read, as they were printed.
    pub unread: Vec<String>,
}

/// Words that say nothing of their own.
const IDLE: &[&str] = &[
    "A", "AC", "AMP", "AND", "AT", "BS", "CABLE", "CE", "CORE", "CORES", "CURRENT", "EN", "FLEX", "FOR", "HZ", "IEC",
    "INPUT", "LEAD", "LENGTH", "LOAD", "MAINS", "OF", "OR", "POWER", "PER", "RATED", "RATING", "SINGLE", "THE", "TO",
    "UP", "VOLTAGE", "WITH",
];

/// Words that make a value the most that is allowed.
const MOST: &[&str] = &["MAX", "MAXIMUM", "TOTAL", "LOAD"];

/// Below this a voltage is no mains voltage: extra-low voltage ends at 50 V a.c. (common practice).
const LOWEST_MAINS: f64 = 50.0;

impl Rating {
    /// Reads a printed rating. Total: what cannot be read is kept in `unread`.
    pub fn parse(printed: &str) -> Self {
        let pieces = tokens(printed);
        let mut reader =
            Reader { printed, pieces: &pieces, rating: Self::default(), at: 0, in_output: false, most: (false, false) };
        while reader.step() {}
        reader.rating
    }

    /// The most that volts times amperes allow, with every half step of the digits granted; `None` where one of them is not stated.
    pub fn watts_allowed(&self) -> Option<Power> {
        let (_, highest) = self.voltage.as_ref()?;
        let current = self.current.as_ref()?;
        Some(highest.highest() * current.highest())
    }
}

struct Reader<'a> {
    printed: &'a str,
    pieces: &'a [Token],
    rating: Rating,
    at: usize,
    in_output: bool,
    /// Whether the current and the power chosen so far are printed as the most.
    most: (bool, bool),
}

impl Reader<'_> {
    /// Reads one group of pieces; false at the end.
    fn step(&mut self) -> bool {
        let Some(piece) = self.pieces.get(self.at) else { return false };
        let taken = match &piece.kind {
            TokenKind::Number(first) => self.number(*first),
            TokenKind::Word(word) => self.word(word),
            TokenKind::Break => {
                self.in_output = false;
                1
            }
            TokenKind::Sign(_) => 1,
        };
        self.at += taken;
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

    fn is_sign_ahead(&self, ahead: usize, signs: &[char]) -> bool {
        self.piece(ahead).is_some_and(|piece| signs.iter().any(|&sign| piece.is_sign(sign)))
    }

    /// One of the two words before this piece, or the word right behind `taken` pieces, is among `words`.
    fn has_near(&self, taken: usize, words: &[&str]) -> bool {
        let is_among = |piece: Option<&Token>| piece.and_then(Token::word).is_some_and(|word| words.contains(&word));
        let before = |back: usize| self.at.checked_sub(back).and_then(|at| self.pieces.get(at));
        is_among(before(1)) || is_among(before(2)) || is_among(self.piece(taken))
    }

    fn number(&mut self, first: Figure) -> usize {
        let range = self.is_sign_ahead(1, &['-', '/', '~']).then(|| self.number_ahead(2)).flatten();
        let (second, unit_at) = range.map_or((first, 1), |second| (second, 3));
        let Some(unit) = self.word_ahead(unit_at).map(str::to_owned) else { return self.keep(1) };
        let taken = unit_at + 1;
        match unit.as_str() {
            "V" | "VAC" | "VDC" | "VOLT" | "VOLTS" => self.volts(first, second),
            "A" | "AMP" | "AMPS" | "AMPERE" | "AMPERES" => self.current(second, Unit::Ampere, taken),
            "MA" => self.current(second, Unit::Milliampere, taken),
            "W" | "WATT" | "WATTS" => self.power(second.as_grouped(), Unit::Watt, taken),
            "KW" => self.power(second, Unit::Kilowatt, taken),
            "HZ" | "WAY" | "GANG" | "SOCKETS" | "SOCKET" | "OUTLETS" | "JOULES" | "J" => {}
            "M" | "METRE" | "METRES" | "METER" | "METERS" | "MTR" => self.length(second, Unit::Metre),
            "CM" => self.length(second, Unit::Centimetre),
            "MM2" | "SQMM" => self.rating.area = second.stated(Unit::SquareMillimetre),
            "G" | "X" | "C" | "CORE" | "CORES" if range.is_none() => return self.cores(first, &unit),
            _ => return self.keep(1),
        }
        taken
    }

    /// `3G1.5`, `3x0.75mm²`, `3 core 1.25 mm²`.
    fn cores(&mut self, count: Figure, letter: &str) -> usize {
        let Some(cores) = count.small_count() else { return self.keep(2) };
        let earth = (letter == "G").then_some(true);
        self.rating.cores = Some((cores, earth));
        let Some(area) = self.number_ahead(2) else { return 2 };
        let has_unit = matches!(self.word_ahead(3), Some("MM2" | "SQMM" | "MM"));
        if has_unit || matches!(letter, "G" | "X") {
            self.rating.area = area.stated(Unit::SquareMillimetre);
            return if has_unit { 4 } else { 3 };
        }
        2
    }

    fn volts(&mut self, first: Figure, second: Figure) {
        let stated = |figure: Figure| figure.stated::<ElectricPotential>(Unit::Volt);
        let (Some(low), Some(high)) = (stated(first), stated(second)) else { return };
        if high.value < volts(LOWEST_MAINS) {
            self.rating.has_output = true;
            self.in_output = true;
        } else {
            self.in_output = false;
            self.rating.voltage = Some((low, high));
        }
    }

    fn current(&mut self, figure: Figure, unit: Unit, taken: usize) {
        let Some(stated) = figure.stated(unit) else { return };
        if self.in_output {
            return;
        }
        if self.has_near(taken, &["FUSE", "FUSED"]) {
            self.rating.fuse = Some(stated);
            return;
        }
        let is_most = self.has_near(taken, MOST);
        choose(&mut self.rating.current, &mut self.most.0, stated, is_most);
    }

    fn power(&mut self, figure: Figure, unit: Unit, taken: usize) {
        let Some(stated) = figure.stated(unit) else { return };
        if self.in_output {
            return;
        }
        let is_most = self.has_near(taken, MOST);
        choose(&mut self.rating.power, &mut self.most.1, stated, is_most);
        self.rating.power_is_maximum = self.most.1;
    }

    fn length(&mut self, figure: Figure, unit: Unit) {
        self.rating.length = figure.stated(unit);
    }

    fn word(&mut self, word: &str) -> usize {
        match word {
            "OUTPUT" | "USB" => self.in_output = true,
            "INPUT" => self.in_output = false,
            "BS" | "EN" | "IEC" if self.number_ahead(1).is_some() => return 2,
            "FUSE" | "FUSED" => {}
            _ if IDLE.contains(&word) || MOST.contains(&word) || is_reference(word) => {}
            _ => return self.keep(1),
        }
        1
    }

    /// Keeps pieces that say nothing that is known.
    fn keep(&mut self, taken: usize) -> usize {
        let from = self.piece(0).map_or(0, |piece| piece.from);
        let to = self.piece(taken - 1).or_else(|| self.piece(0)).map_or(from, |piece| piece.to);
        self.rating.unread.push(self.printed.get(from..to).unwrap_or_default().to_owned());
        taken
    }
}

/// Number of a standard or an ingress code: `BS1363`, `BS1363/A`, `IP44`.
fn is_reference(word: &str) -> bool {
    ["BS", "EN", "IEC", "IP"]
        .iter()
        .any(|start| word.strip_prefix(start).is_some_and(|rest| rest.starts_with(|c: char| c.is_ascii_digit())))
}

/// The one printed as the most counts before others; of equals the higher.
fn choose<Q: Measurand>(
    chosen: &mut Option<Stated<Q>>,
    chosen_is_most: &mut bool,
    other: Stated<Q>,
    other_is_most: bool,
) {
    let is_better = chosen.as_ref().is_none_or(|chosen| {
        (other_is_most, *chosen_is_most) == (true, false)
            || other_is_most == *chosen_is_most && other.value > chosen.value
    });
    if is_better {
        *chosen = Some(other);
        *chosen_is_most = other_is_most;
    }
}
