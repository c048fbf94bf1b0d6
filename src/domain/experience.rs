//! What the samples on this device teach about the next one: how often a check that was made found something.

use std::collections::BTreeMap;

use super::assess::Assessment;
use super::finding::Conformity;

/// How often each check was decided, and how often it broke.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Experience {
    decided: BTreeMap<&'static str, Tried>,
}

/// How often a check broke, of the times it was decided.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Tried {
    /// Times it broke.
    pub broke: u32,
    /// Times it was decided: broke or kept.
    pub of: u32,
}

/// The weight of the stated default, in samples: so many samples of one's own count as much as usual practice (our own choice).
pub const WEIGHT_OF_DEFAULT: f64 = 4.0;

impl Experience {
    /// What other samples have taught. What could not be told and what nobody looked at teach nothing.
    pub fn of<'a>(others: impl IntoIterator<Item = &'a Assessment>) -> Self {
        let mut decided: BTreeMap<&'static str, Tried> = BTreeMap::new();
        for finding in others.into_iter().flat_map(|other| &other.findings) {
            let broke = match finding.outcome() {
                Conformity::Nonconforming => 1,
                Conformity::Conforms => 0,
                Conformity::Inconclusive | Conformity::NotApplicable | Conformity::NotExamined => continue,
            };
            let tried = decided.entry(finding.code).or_default();
            *tried = Tried { broke: tried.broke + broke, of: tried.of + 1 };
        }
        Self { decided }
    }

    /// What is known of a check.
    pub fn tried(&self, code: &str) -> Tried {
        self.decided.get(code).copied().unwrap_or_default()
    }

    /// The chance, from 0 to 1, that a check breaks the next time: the mean of a beta distribution that begins with the default chance and
    /// is moved by each sample (beta-binomial model, conjugate prior).
    pub fn chance(&self, code: &str, default: f64) -> f64 {
        let Tried { broke, of } = self.tried(code);
        (default * WEIGHT_OF_DEFAULT + f64::from(broke)) / (WEIGHT_OF_DEFAULT + f64::from(of))
    }
}
