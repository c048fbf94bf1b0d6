//! Whether a file is as it was sealed: every byte is held against the seal, and what does not fit is named.

use std::collections::BTreeSet;

use super::again::Again;
use super::key::PublicKey;
use super::statement::{CLOSING, ENDING, OPENING, Seal, Statement, mentioned};
use crate::record::digest::sha256;
use crate::record::{self, Chain, LARGEST, Pieces, Record, RecordFault};

/// What a look at a file found.
#[derive(Debug)]
pub struct Checked {
    /// Whether it is as it was sealed.
    pub state: State,
    /// The key: that of a whole seal, or, where the seal is missing, the one that the page names.
    pub key: Option<PublicKey>,
    /// When it was sealed, by the clock of that device; empty without a whole seal.
    pub sealed: String,
    /// The edition of the rule book and the digest of its page of limits and rules, as sealed.
    pub rule_book: Option<(String, String)>,
    /// The examination in it, or why none can be read.
    pub record: Result<Record, RecordFault>,
    /// The examination judged again, against the verdict that the file carries; nothing where it cannot be read.
    pub again: Option<Again>,
    /// What a walk along its custody entries found.
    pub chain: Option<Chain>,
}

/// Whether a file is as it was sealed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum State {
    /// Every byte of it.
    Untouched,
    /// Something was changed since; never empty.
    Altered(Vec<Part>),
    /// It says that it is sealed, and there is no seal.
    CutOff,
    /// There is no seal, and nothing says that there was one.
    NotSealed,
    /// The seal is of a version that was not known when this edition was made.
    Newer,
}

/// A part of a file that is not as it was sealed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// The examination.
    Examination,
    /// The verdict line.
    Verdict,
    /// A photo, in the order of the page, from 1.
    Photo(usize),
    /// What the page says, how it looks, and all that is none of the others.
    Text,
    /// The page names another key than the seal has.
    Key,
    /// The seal itself; then it tells nothing about the rest.
    Seal,
    /// What stands behind the seal.
    Behind,
}

/// Looks at a file: a page to show, sealed or not, or a bare examination. Never fails, whatever the bytes.
pub fn check(bytes: &[u8]) -> Checked {
    if bytes.len() > LARGEST {
        return Checked::of(State::NotSealed, Err(RecordFault::TooLarge), None);
    }
    // What is no text any more is still looked at, so that the place can be named.
    let text = String::from_utf8_lossy(bytes);
    let text = text.as_ref();
    let (body, sealed) = match text.rsplit_once(OPENING) {
        Some((body, sealed)) => (body, Some(sealed)),
        None => (text, None),
    };
    let pieces = Pieces::of(body);
    // Where the seal tells which photo was changed, the examination is judged for all that.
    let record = match pieces.examination().filter(|_| sealed.is_some()) {
        Some(json) => record::read(&json),
        None => record::from_file(text).map(|carried| carried.record),
    };
    let checked = |state| Checked::of(state, record, pieces.verdict().as_deref());
    let Some(sealed) = sealed else {
        let key = mentioned(body);
        let state = if key.is_some() { State::CutOff } else { State::NotSealed };
        return Checked { key, ..checked(state) };
    };
    let (block, behind) = sealed.split_once(CLOSING).unwrap_or((sealed, ""));
    let (statement, key) = match Seal::read(block) {
        Seal::Whole(statement, key) => (statement, key),
        Seal::Newer => return checked(State::Newer),
        Seal::Broken => return checked(State::Altered(vec![Part::Seal])),
    };
    let mut altered = altered(&statement, &key, body, &pieces);
    let is_page = bytes.starts_with(body.as_bytes()) && sha256(body.as_bytes()) == statement.page;
    if altered.is_empty() && !is_page {
        altered.push(Part::Text);
    }
    if behind != ENDING {
        altered.push(Part::Behind);
    }
    // All of it is known by now but bytes that are no text, of which the text that is looked at shows no more than that.
    if altered.is_empty() && text.as_bytes() != bytes {
        altered.push(Part::Seal);
    }
    let state = if altered.is_empty() { State::Untouched } else { State::Altered(altered) };
    let Statement { sealed, rule_book, .. } = *statement;
    Checked { key: Some(key), sealed, rule_book: Some((rule_book.edition, rule_book.sha256)), ..checked(state) }
}

impl Checked {
    fn of(state: State, record: Result<Record, RecordFault>, verdict: Option<&str>) -> Self {
        let again = record.as_ref().ok().map(|record| Again::of(record, verdict));
        let chain = record.as_ref().ok().map(record::chain);
        Self { state, key: None, sealed: String::new(), rule_book: None, record, again, chain }
    }

    /// Whether nothing was changed since it was sealed, and its custody entries, if it has any, follow from each other.
    pub fn is_sound(&self) -> bool {
        self.state == State::Untouched && matches!(self.chain, Some(Chain::Empty | Chain::Unbroken(_)))
    }
}

/// The parts that are not those of the statement.
fn altered(statement: &Statement, key: &PublicKey, body: &str, pieces: &Pieces) -> Vec<Part> {
    let mut altered = Vec::new();
    let is = |found: Option<String>, said: &str| found.as_deref() == Some(said);
    if !is(pieces.examination_sha256(), &statement.examination) {
        altered.push(Part::Examination);
    }
    if !is(pieces.verdict_sha256(), &statement.verdict) {
        altered.push(Part::Verdict);
    }
    let shown: Vec<Option<String>> = pieces.photos().collect();
    let known: BTreeSet<&str> = shown.iter().flatten().map(String::as_str).collect();
    for (number, said) in (1..).zip(&statement.photos) {
        let is_there = if shown.len() == statement.photos.len() {
            shown.get(number - 1).is_some_and(|found| found.as_ref() == Some(said))
        } else {
            known.contains(said.as_str())
        };
        if !is_there {
            altered.push(Part::Photo(number));
        }
    }
    if pieces.text_sha256() != statement.text {
        altered.push(Part::Text);
    }
    if mentioned(body) != Some(*key) {
        altered.push(Part::Key);
    }
    altered
}
