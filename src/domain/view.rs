//! The answers of one examination, ready to be asked about: the only thing a check sees.

use std::collections::BTreeMap;

use super::examination::{Answer, Examination};
use super::facts;
use super::marking::{Claims, FlexPrint};
use super::quantity::{Area, ElectricCurrent, Length};
use super::question::{ClaimPlace, Core, Key, Question, Target};
use super::reading::Reading;
use super::sample::{Equipment, Kind, Market};
use super::standard::bs1363_1;
use super::uncertainty::Measured;

/// One examination, indexed.
#[derive(Debug)]
pub struct View<'a> {
    examination: &'a Examination,
    answers: BTreeMap<(Key, Target), &'a Answer>,
    claims: Claims,
    flex: Option<FlexPrint>,
}

impl<'a> View<'a> {
    /// Indexes an examination and reads what is printed on the sample.
    pub fn new(examination: &'a Examination) -> Self {
        let mut answers = BTreeMap::new();
        for answered in &examination.answers {
            answers.insert((answered.question.key, answered.target), &answered.answer);
        }
        let printed = |question: &Question, target| match answers.get(&(question.key, target)) {
            Some(Answer::Printed(print)) => Some(print.as_str()),
            _ => None,
        };
        let flex = printed(facts::FLEX_PRINT, Target::Sample).map(FlexPrint::parse);
        let ratings = ClaimPlace::ALL
            .into_iter()
            .filter_map(|place| printed(facts::RATING, Target::Claim(place)).map(|print| (place, print)));
        let claims = Claims::new(ratings, flex.as_ref());
        Self { examination, answers, claims, flex }
    }

    /// The kind of product.
    pub const fn kind(&self) -> Kind {
        self.examination.sample.kind
    }

    /// Where it is sold.
    pub const fn market(&self) -> Market {
        self.examination.sample.market
    }

    /// What is at hand.
    pub const fn equipment(&self) -> Equipment {
        self.examination.equipment
    }

    /// Whether the sample needs an earth. Decided by its kind and never by a mark or by the user: both UK kinds always do.
    pub const fn needs_earth(&self) -> bool {
        match self.kind() {
            Kind::ExtensionLead | Kind::CordSet => true,
        }
    }

    /// How many sockets there are to examine; 0 until somebody counted them.
    pub fn sockets(&self) -> u8 {
        match (self.kind(), self.answer(facts::SOCKET_COUNT, Target::Sample)) {
            (Kind::CordSet, _) => 1,
            (Kind::ExtensionLead, Some(Answer::Count(n))) => *n,
            (Kind::ExtensionLead, _) => 0,
        }
    }

    /// The cores there are to examine: three, until somebody saw fewer.
    pub fn cores(&self) -> &'static [Core] {
        match self.one(facts::CORE_COUNT) {
            Some("two") => &[Core::Line, Core::Neutral],
            _ => &Core::ALL,
        }
    }

    /// The answer to a question for a target, given or implied by another.
    pub fn answer(&self, question: &Question, target: Target) -> Option<&'a Answer> {
        self.answers.get(&(question.key, target)).copied().or_else(|| (question.implied)(self))
    }

    /// The one answer chosen, by code.
    pub fn one(&self, question: &Question) -> Option<&'static str> {
        self.one_of(question, Target::Sample)
    }

    /// The one answer chosen for a target, by code.
    pub fn one_of(&self, question: &Question, target: Target) -> Option<&'static str> {
        match self.answer(question, target) {
            Some(Answer::One(code)) => Some(code),
            _ => None,
        }
    }

    /// Whether an answer is among those that fit; `None` where the question was not answered.
    pub fn marked(&self, question: &Question, code: &str) -> Option<bool> {
        match self.answer(question, Target::Sample) {
            Some(Answer::Any(codes)) => Some(codes.contains(&code)),
            _ => None,
        }
    }

    /// The reading for a target.
    pub fn reading(&self, question: &Question, target: Target) -> Option<&'a Reading> {
        match self.answer(question, target) {
            Some(Answer::Reading(reading)) => Some(reading),
            _ => None,
        }
    }

    /// What every place states of ratings and sizes.
    pub const fn claims(&self) -> &Claims {
        &self.claims
    }

    /// The print on the flex as understood.
    pub const fn flex(&self) -> Option<&FlexPrint> {
        self.flex.as_ref()
    }

    /// The cross-section that the flex claims: its own print first, then any other place.
    pub fn claimed_area(&self) -> Option<Area> {
        self.claims.area()
    }

    /// The cross-section to hold the product to: what it claims, else what its claimed current needs (BS 1363-1 Table 2).
    pub fn area_to_hold_to(&self) -> Option<Area> {
        self.claimed_area().or_else(|| self.claimed_current().and_then(bs1363_1::area_for_current))
    }

    /// The highest current that the product as a whole claims.
    pub fn claimed_current(&self) -> Option<ElectricCurrent> {
        self.claims.total_current()
    }

    /// Length of the flex: measured, else claimed.
    pub fn flex_length(&self) -> Option<Measured<Length>> {
        self.reading(facts::FLEX_LENGTH, Target::Sample).and_then(Reading::measured).or_else(|| self.claims.length())
    }
}
