//! Reads a printed rating from left to right.

use super::Stated;
use super::cord_name::{national_type, numbered_type_at, standard_at};
use super::cores::{Cores, Joint, area_of_gauge, cores, gauge_at, named_size};
use super::designation::designation;
use super::figure::Figure;
use super::ingress::ingress_at;
use super::measure::{Measure, measure, next_measure};
use super::rating::{Hertz, Rating};
use super::rating_group::{Circuit, Group, Item, Weight, choose};
use super::rating_word::{COUNTED, FLEXES, PLAIN_WORDS};
use super::token::{Token, TokenKind, tokens};
use crate::domain::quantity::{ElectricPotential, Length, Measurand, Unit, metres};

/// Rated voltages that only a flex has, core to earth and core to core.
const FLEX_VOLTAGES: [(u32, u32); 4] = [(100, 100), (300, 300), (300, 500), (450, 750)];

/// Reads one print.
pub(super) struct RatingReader<'a> {
    print: &'a str,
    tokens: Vec<Token>,
    at: usize,
    rating: Rating,
    groups: Vec<Group>,
    ahead: Ahead,
    /// Whether the next item opens a group.
    begins_anew: bool,
    /// Whether what was said of outputs has ended.
    outputs_ended: bool,
    feet: Option<Stated<Length>>,
    /// Unread pieces: the last token of each, its first byte and the one after its last.
    unread: Vec<(usize, usize, usize)>,
}

/// What words said of the item to come.
#[derive(Debug, Clone, Copy, Default)]
struct Ahead {
    weight: Weight,
    is_fuse: bool,
    is_output: bool,
}

impl<'a> RatingReader<'a> {
    pub(super) fn new(print: &'a str) -> Self {
        Self {
            print,
            tokens: tokens(print),
            at: 0,
            rating: Rating::default(),
            groups: Vec::new(),
            ahead: Ahead::default(),
            begins_anew: false,
            outputs_ended: false,
            feet: None,
            unread: Vec::new(),
        }
    }

    pub(super) fn read(mut self) -> Rating {
        while let Some(token) = self.tokens.get(self.at).cloned() {
            let taken = match &token.kind {
                TokenKind::Number(figure) => self.number(*figure),
                TokenKind::Word(word) => self.word(word),
                TokenKind::Sign(sign) => self.sign(*sign),
                TokenKind::Break => {
                    self.outputs_ended = true;
                    Some(1)
                }
            };
            if taken.is_none() {
                self.keep_unread(&token);
            }
            self.at += taken.unwrap_or(1).max(1);
        }
        self.finish()
    }

    fn word_at(&self, at: usize) -> Option<&str> {
        self.tokens.get(at).and_then(Token::word)
    }

    /// A number with what stands behind it; how many tokens that is.
    fn number(&mut self, figure: Figure) -> Option<usize> {
        if let Some((_, taken)) = numbered_type_at(&self.tokens, self.at) {
            return Some(taken);
        }
        if let Some(cores) = cores(&self.tokens, self.at) {
            self.put_cores(&cores);
            return Some(cores.taken);
        }
        if self.word_at(self.at + 1) == Some("X") {
            // "4 x 13A": four of them, each with what follows; "2 x USB": two of them.
            let is_current = self.tokens.get(self.at + 2).is_some_and(|next| next.number().is_some());
            if is_current {
                self.ahead.weight = Weight::Each;
            }
            return Some(2);
        }
        if let Some(taken) = self.range(figure) {
            return Some(taken);
        }
        if let Some((unit, taken)) = measure(&self.tokens, self.at + 1) {
            return self.put(unit, figure, figure).then_some(1 + taken);
        }
        let thousands = self.tokens.get(self.at + 1).cloned().and_then(|next| {
            let rest = self.print.get(next.from..next.to)?;
            figure.followed_by(next.number()?, rest)
        });
        if let (Some(whole), Some((unit @ Measure::Watt, taken))) = (thousands, measure(&self.tokens, self.at + 2)) {
            return self.put(unit, whole, whole).then_some(2 + taken);
        }
        let behind = if self.tokens.get(self.at + 1)?.is_sign('-') { self.at + 2 } else { self.at + 1 };
        self.word_at(behind).is_some_and(|word| COUNTED.contains(&word)).then_some(1)
    }

    /// `220-240V`, `220V~240V`, `50/60Hz`.
    fn range(&mut self, lowest: Figure) -> Option<usize> {
        let first_unit = measure(&self.tokens, self.at + 1);
        let middle = self.at + 1 + first_unit.map_or(0, |(_, taken)| taken);
        let between = self.tokens.get(middle)?;
        let is_to = ['-', '~', '/'].into_iter().any(|sign| between.is_sign(sign)) || between.word() == Some("TO");
        let highest = self.tokens.get(middle + 1)?.number()?;
        let (unit, taken) = measure(&self.tokens, middle + 2)?;
        let is_range = is_to && first_unit.is_none_or(|(first, _)| first == unit);
        (is_range && self.put(unit, lowest, highest)).then_some(middle + 2 + taken - self.at)
    }

    /// Takes a value, or the ends of a range, in; whether it says anything of a rating.
    fn put(&mut self, unit: Measure, lowest: Figure, highest: Figure) -> bool {
        let taken = match unit {
            Measure::Ampere => highest.stated(Unit::Ampere).map(|current| self.put_item(Item::Amperes(current))),
            Measure::Milliampere => {
                let current = highest.stated(Unit::Milliampere);
                // Outside an output it is the trip current of a residual-current device.
                current.filter(|_| self.is_in_output()).map(|current| self.put_item(Item::Amperes(current)))
            }
            Measure::Volt => {
                let ends = lowest.stated(Unit::Volt).zip(highest.stated(Unit::Volt));
                ends.map(|(lowest, highest)| self.put_volts(lowest, highest))
            }
            Measure::Watt => highest.as_grouped().stated(Unit::Watt).map(|power| self.put_item(Item::Watts(power))),
            Measure::Kilowatt => highest.stated(Unit::Kilowatt).map(|power| self.put_item(Item::Watts(power))),
            Measure::Hertz => self.put_frequencies(lowest, highest),
            Measure::Metre => lowest.stated(Unit::Metre).map(|length| self.put_length(length)),
            Measure::Centimetre => lowest.stated(Unit::Centimetre).map(|length| self.put_length(length)),
            Measure::Millimetre if self.is_of_flex() => named_size(lowest).map(|area| {
                self.rating.area.get_or_insert(area);
            }),
            // Millimetres of a flex are its length only where they make one; thickness is no claim that is compared.
            Measure::Millimetre => {
                let length = lowest.as_grouped().stated(Unit::Millimetre).filter(|length| length.value >= metres(0.1));
                length.map(|length| self.put_length(length))
            }
            Measure::Foot => lowest.stated(Unit::Metre).map(|feet| {
                let in_metres = |number: Length| Length::from_base(number.base() * METRES_PER_FOOT);
                self.feet.get_or_insert(Stated::new(in_metres(feet.value), in_metres(feet.step)));
            }),
            Measure::SquareMillimetre => named_size(lowest).map(|area| {
                self.rating.area.get_or_insert(area);
            }),
        };
        taken.is_some()
    }

    /// Whether the number here, with its unit, stands before the word cable.
    fn is_of_flex(&self) -> bool {
        self.word_at(self.at + 2).is_some_and(|word| FLEXES.contains(&word))
    }

    fn put_cores(&mut self, cores: &Cores) {
        let has_earth = (cores.joint == Joint::WithEarth).then_some(true);
        self.rating.cores = self.rating.cores.or(cores.count.map(|count| (count, has_earth)));
        self.rating.area = self.rating.area.or(cores.area);
    }

    fn put_length(&mut self, length: Stated<Length>) {
        self.rating.length.get_or_insert(length);
    }

    fn put_frequencies(&mut self, lowest: Figure, highest: Figure) -> Option<()> {
        for frequency in [lowest.whole_number()?, highest.whole_number()?].map(Hertz) {
            if !self.rating.frequencies.contains(&frequency) {
                self.rating.frequencies.push(frequency);
            }
        }
        Some(())
    }

    fn put_volts(&mut self, first: Stated<ElectricPotential>, second: Stated<ElectricPotential>) {
        let is =
            |stated: Stated<ElectricPotential>, figure: u32| stated.value == Measurand::from_base(f64::from(figure));
        if FLEX_VOLTAGES.iter().any(|&(to_earth, to_core)| is(first, to_earth) && is(second, to_core)) && self.is_pair()
        {
            self.rating.flex_voltage.get_or_insert((first, second));
        } else if second.value < first.value {
            self.put_item(Item::Volts(second, first));
        } else {
            self.put_item(Item::Volts(first, second));
        }
    }

    /// Whether two figures with a stroke stand here.
    fn is_pair(&self) -> bool {
        self.tokens.iter().skip(self.at + 1).take(2).any(|token| token.is_sign('/'))
    }

    fn is_in_output(&self) -> bool {
        let continues = self.groups.last().is_some_and(|group| group.circuit == Circuit::Output);
        self.ahead.is_output || (continues && !self.outputs_ended)
    }

    fn put_item(&mut self, item: Item) {
        if let (Item::Amperes(current), true) = (item, self.ahead.is_fuse) {
            self.rating.fuse.get_or_insert(current);
            self.ahead.is_fuse = false;
            return;
        }
        let is_output = self.is_in_output();
        let joins = !self.begins_anew && self.groups.last().is_some_and(|group| group.has_room_for(&item));
        if !joins {
            let of_output = is_output && item.circuit() == Circuit::Undecided;
            let circuit = if of_output { Circuit::Output } else { Circuit::Undecided };
            self.groups.push(Group { circuit, ..Group::default() });
        }
        if let Some(group) = self.groups.last_mut() {
            group.put(item);
            if self.ahead.weight != Weight::Plain {
                group.weight = self.ahead.weight;
            }
        }
        self.ahead = Ahead { is_fuse: self.ahead.is_fuse, ..Ahead::default() };
        (self.begins_anew, self.outputs_ended) = (false, false);
    }

    /// Words that say what the value before or behind them is, names, and words that say nothing.
    fn word(&mut self, word: &str) -> Option<usize> {
        let is_before = next_measure(&self.tokens, self.at).is_some_and(Measure::is_electrical);
        match word {
            "COMBINED" | "EXCEED" | "MAX" | "MAXIMUM" | "TOTAL" => self.weigh(Weight::Most, is_before),
            "EACH" | "PER" => self.weigh(Weight::Each, is_before && !self.is_behind_current()),
            "FUSE" | "FUSED" | "FUSES" => self.fuse(),
            "CHARGER" | "CHARGING" | "PD" | "QC" => self.output(is_before),
            usb if usb.starts_with("USB") => self.output(is_before),
            "INPUT" | "MAINS" => (self.ahead.is_output, self.outputs_ended, self.begins_anew) = (false, true, true),
            _ => return self.name(word),
        }
        Some(1)
    }

    fn name(&mut self, word: &str) -> Option<usize> {
        if let Some((ingress, taken)) = ingress_at(self.print, &self.tokens, self.at) {
            self.rating.ingress.get_or_insert(ingress);
            return Some(taken);
        }
        if let Some(taken) = standard_at(&self.tokens, self.at) {
            let from = self.tokens.get(self.at)?.from;
            let to = self.tokens.get(self.at + taken - 1)?.to;
            self.rating.standards.push(self.print.get(from..to)?.to_owned());
            return Some(taken);
        }
        if let Some((gauge, taken)) = gauge_at(&self.tokens, self.at) {
            self.rating.area = self.rating.area.or(area_of_gauge(gauge));
            return Some(taken);
        }
        let from = self.tokens.get(self.at)?.from;
        if let Some(found) = self.print.get(from..).and_then(designation) {
            let end = from + found.taken;
            return Some(self.tokens.iter().skip(self.at).take_while(|token| token.to <= end).count());
        }
        (PLAIN_WORDS.contains(&word) || national_type(word).is_some()).then_some(1)
    }

    fn weigh(&mut self, weight: Weight, is_before: bool) {
        if is_before {
            self.ahead.weight = weight;
        } else if let Some(group) = self.groups.last_mut() {
            group.weight = weight;
        }
    }

    /// Whether nothing but signs stand between a current and this word.
    fn is_behind_current(&self) -> bool {
        let is_sign = |token: &Token| matches!(token.kind, TokenKind::Sign(_));
        let before = self.tokens.get(..self.at).unwrap_or_default();
        let unit = before.iter().rposition(|token| !is_sign(token));
        let is_unit = |unit| matches!(measure(&self.tokens, unit), Some((Measure::Ampere, _)));
        let follows_number = |unit: usize| unit.checked_sub(1).and_then(|at| before.get(at)?.number()).is_some();
        unit.is_some_and(|unit| is_unit(unit) && follows_number(unit))
    }

    /// `13A fuse` or `fuse: 13A`. A current that already has its volts is the product's, not the fuse's, if another one follows.
    fn fuse(&mut self) {
        let follows = next_measure(&self.tokens, self.at) == Some(Measure::Ampere);
        let has_volts = self.groups.last().is_some_and(|group| group.volts.is_some());
        if self.is_behind_current() && self.rating.fuse.is_none() && !(follows && has_volts) {
            self.rating.fuse = self.groups.last_mut().and_then(|group| group.amperes.take());
        } else if follows {
            self.ahead.is_fuse = true;
        }
    }

    /// `USB 5V 2.1A` or `2.4A USB`.
    fn output(&mut self, is_before: bool) {
        let last = self.groups.last_mut().filter(|group| group.circuit == Circuit::Undecided);
        if let (false, Some(group)) = (is_before, last) {
            group.circuit = Circuit::Output;
        } else {
            (self.ahead.is_output, self.begins_anew) = (true, true);
        }
    }

    /// Signs are punctuation, but for the one that says "at most".
    fn sign(&mut self, sign: char) -> Option<usize> {
        if sign == '≤' {
            self.ahead.weight = Weight::Most;
        }
        (sign.is_ascii_punctuation() || matches!(sign, '≤' | '⎓' | '®' | '™' | '©' | '≈' | '“' | '”' | '’'))
            .then_some(1)
    }

    /// Keeps what was not understood; neighbours make one piece.
    fn keep_unread(&mut self, token: &Token) {
        let at = self.at;
        match self.unread.last_mut().filter(|(last, ..)| last + 1 == at) {
            Some((last, _, to)) => (*last, *to) = (at, token.to),
            None => self.unread.push((at, token.from, token.to)),
        }
    }

    fn finish(mut self) -> Rating {
        choose(&self.groups, &mut self.rating);
        self.rating.length = self.rating.length.or(self.feet);
        let unread = self.unread.iter().filter_map(|&(_, from, to)| self.print.get(from..to));
        self.rating.unread = unread.map(str::to_owned).collect();
        self.rating
    }
}

/// One foot (exact since 1959).
const METRES_PER_FOOT: f64 = 0.3048;
