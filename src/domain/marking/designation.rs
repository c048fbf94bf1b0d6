//! Designations of HD 361, such as `H05VV-F`, read letter by letter.

use super::piece::{Meaning, Piece};
use crate::domain::standard::hd361::{Compound, ConductorForm, Construction, Harmonisation, Metallic, VoltageCode};

/// A designation as understood; cores and size stand behind it and are read apart.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Designation {
    /// Relation to the harmonised standards.
    pub harmonisation: Harmonisation,
    /// Rated voltage.
    pub voltage: VoltageCode,
    /// Material of the insulation.
    pub insulation: Compound,
    /// Materials over it, from inside to outside; none where the flex has no sheath.
    pub sheaths: Vec<Compound>,
    /// Metal around the cores.
    pub metallic: Vec<Metallic>,
    /// How it is built; round where nothing is said.
    pub construction: Vec<Construction>,
    /// Whether the conductor is aluminium.
    pub is_aluminium: bool,
    /// Make of the conductor.
    pub conductor: ConductorForm,
}

/// A designation found in print.
pub(super) struct Found {
    pub(super) designation: Designation,
    pub(super) pieces: Vec<Piece>,
    /// How many bytes of the print it takes.
    pub(super) taken: usize,
    /// Whether it only made sense with `O` read as a zero or `W` as two V.
    pub(super) look_alike: bool,
}

impl Designation {
    /// The outer sheath; `None` where there is none.
    pub fn sheath(&self) -> Option<Compound> {
        self.sheaths.last().copied()
    }

    /// As it is written: `H05VV-F`.
    pub fn text(&self) -> String {
        let mut text = format!("{}{}{}", self.harmonisation.code(), self.voltage.code(), self.insulation.code());
        self.metallic.iter().for_each(|metal| text.push_str(metal.code()));
        self.sheaths.iter().for_each(|sheath| text.push_str(sheath.code()));
        self.construction.iter().for_each(|part| text.push_str(part.code()));
        text.push('-');
        if self.is_aluminium {
            text.push('A');
        }
        text.push_str(self.conductor.code());
        text
    }
}

/// Reads a designation at the beginning of print. Spaces may stand between its parts and the dash may be missing.
pub(super) fn designation(print: &str) -> Option<Found> {
    let mut letters = Letters::new(print);
    let harmonisation = letters.take(Harmonisation::leading, Harmonisation::code, Meaning::Harmonisation)?;
    letters.skip_space();
    let voltage = letters.take(VoltageCode::leading, VoltageCode::code, Meaning::Voltage)?;
    letters.skip_space();
    let start = letters.at;
    let insulation = letters.take(Compound::leading, Compound::code, Meaning::Insulation)?;
    let (mut sheaths, mut metallic) = (Vec::new(), Vec::new());
    loop {
        if let Some(metal) = letters.take(Metallic::leading, Metallic::code, Meaning::Metallic) {
            metallic.push(metal);
        } else if let Some(sheath) = letters.take(Compound::leading, Compound::code, Meaning::Sheath) {
            sheaths.push(sheath);
        } else {
            break;
        }
    }
    if let ([sheath], []) = (sheaths.as_slice(), metallic.as_slice()) {
        letters.join(start, Meaning::InsulationAndSheath(insulation, *sheath));
    }
    let mut construction = Vec::new();
    // Without a dash the last letter is the conductor's, not a construction.
    while let Some(part) = letters.take_unless_last(Construction::leading, Construction::code, Meaning::Construction) {
        construction.push(part);
    }
    letters.skip_space();
    letters.skip_dash();
    letters.skip_space();
    let is_aluminium = letters.rest().starts_with('A');
    if is_aluminium {
        letters.take_letters(1, Meaning::Aluminium);
    }
    let conductor = letters.take(ConductorForm::leading, ConductorForm::code, Meaning::Conductor)?;
    if letters.rest().starts_with(|next: char| next.is_alphabetic()) {
        return None;
    }
    Some(Found {
        designation: Designation {
            harmonisation,
            voltage,
            insulation,
            sheaths,
            metallic,
            construction,
            is_aluminium,
            conductor,
        },
        taken: letters.taken(),
        look_alike: letters.look_alikes.iter().any(|&place| place < letters.at),
        pieces: letters.pieces,
    })
}

/// The letters of a designation in capitals, and how far they are read.
struct Letters<'a> {
    print: &'a str,
    /// Each letter with the place in the print where it ends.
    plain: Vec<(char, usize)>,
    at: usize,
    pieces: Vec<Piece>,
    /// Places of letters that were taken for others.
    look_alikes: Vec<usize>,
}

impl<'a> Letters<'a> {
    fn new(print: &'a str) -> Self {
        let mut plain: Vec<(char, usize)> = Vec::new();
        let mut look_alikes = Vec::new();
        for (from, printed) in print.char_indices().take_while(|(_, c)| c.is_alphanumeric() || is_joint(*c)) {
            let to = from + printed.len_utf8();
            match printed.to_ascii_uppercase() {
                // A zero in the voltage is often set or copied as the letter.
                'O' if plain.len() == 1 => {
                    look_alikes.push(plain.len());
                    plain.push(('0', to));
                }
                // "VV" in narrow print is often copied as a W; no code has that letter.
                'W' => {
                    look_alikes.push(plain.len());
                    plain.extend([('V', to), ('V', to)]);
                }
                '–' | '—' | '−' | '\u{2010}' | '\u{2011}' => plain.push(('-', to)),
                other => plain.push((other, to)),
            }
        }
        Self { print, plain, at: 0, pieces: Vec::new(), look_alikes }
    }

    fn rest(&self) -> String {
        self.plain.iter().skip(self.at).map(|&(letter, _)| letter).collect()
    }

    fn end_of(&self, count: usize) -> usize {
        count.checked_sub(1).and_then(|last| self.plain.get(last)).map_or(0, |&(_, to)| to)
    }

    fn taken(&self) -> usize {
        self.end_of(self.at)
    }

    fn take<T: Copy>(
        &mut self,
        leading: fn(&str) -> Option<T>,
        code: fn(T) -> &'static str,
        means: fn(T) -> Meaning,
    ) -> Option<T> {
        let one = leading(&self.rest())?;
        self.take_letters(code(one).len(), means(one));
        Some(one)
    }

    fn take_unless_last<T: Copy>(
        &mut self,
        leading: fn(&str) -> Option<T>,
        code: fn(T) -> &'static str,
        means: fn(T) -> Meaning,
    ) -> Option<T> {
        let rest = self.rest();
        let one = leading(&rest)?;
        let goes_on = rest.get(code(one).len()..)?.trim_start().starts_with(|c: char| c.is_alphabetic() || c == '-');
        goes_on.then(|| self.take(leading, code, means)).flatten()
    }

    fn take_letters(&mut self, count: usize, means: Meaning) {
        let (from, to) = (self.taken(), self.end_of(self.at + count));
        self.at += count;
        let printed = self.print.get(from..to).unwrap_or_default().trim_start_matches(is_joint).to_owned();
        self.pieces.push(Piece { printed, means });
    }

    /// Puts the two pieces read since `start` into one.
    fn join(&mut self, start: usize, means: Meaning) {
        let printed = self.print.get(self.end_of(start)..self.taken()).unwrap_or_default().trim().to_owned();
        self.pieces.truncate(self.pieces.len().saturating_sub(2));
        self.pieces.push(Piece { printed, means });
    }

    fn skip_space(&mut self) {
        while self.plain.get(self.at).is_some_and(|&(letter, _)| letter == ' ') {
            self.at += 1;
        }
    }

    fn skip_dash(&mut self) {
        if self.plain.get(self.at).is_some_and(|&(letter, _)| letter == '-') {
            self.at += 1;
        }
    }
}

fn is_joint(letter: char) -> bool {
    matches!(letter, ' ' | '-' | '–' | '—' | '−' | '\u{2010}' | '\u{2011}')
}
