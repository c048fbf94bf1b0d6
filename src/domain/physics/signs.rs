//! The signs of a metal weighed together: how likely each metal is, whether the signs contradict each other, and which look would tell
//! most.
//!
//! Signs contradict each other where no metal explains them all. Then one of them is taken to be a slip, any of them, and each metal
//! is weighed by what the others say. Which sign was the slip cannot be known from the signs.

use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

use super::metal::{Candidate, Metal, Properties, Pull, Scrape, Signs, Within};
use crate::domain::decision::{Probability, Thresholds};
use crate::domain::finding::Conformity;

/// A sign that a metal shows so seldom is not explained by it.
const SELDOM: f64 = 0.05;

/// A number so many standard deviations away is not explained either.
const FAR: f64 = 3.0;

/// What a slip shows: each pull or colour as often as another, and a resistivity anywhere between copper and stainless steel, which
/// lie 3.7 apart in logarithms (√2π/3.7: the normal law is taken without its 1/√2π). Three values make a resistivity, and each may
/// be the slip (usual practice): three times as much.
const SLIPS: [f64; 3] = [1.0 / 3.0, 1.0 / 5.0, 3.0 * 0.68];

/// Relative standard uncertainty of a mass resistivity, where the bare metal of a core is weighed on a scale with fine steps.
const BY_MASS: f64 = 0.025;

/// How often a look must settle whether it is copper, to be worth naming.
const WORTH_NAMING: f64 = 0.1;

/// Something that could be looked at next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Look {
    /// A magnet.
    Magnet,
    /// A scraped strand.
    Scrape,
    /// The mass of the bare metal of one core.
    Mass,
    /// All of it once more.
    Again,
}

impl Signs {
    /// Every metal, the likeliest first.
    pub fn ranked(&self) -> Vec<Candidate> {
        let contradict = self.contradict();
        let weights = Metal::ALL.map(|metal| (metal, libm::exp(self.log_weight(metal, contradict))));
        let total: f64 = weights.iter().map(|(_, weight)| weight).sum();
        let mut ranked: Vec<Candidate> = weights
            .into_iter()
            .map(|(metal, weight)| Candidate { metal, share: Probability::new(weight / total) })
            .collect();
        likeliest_first(&mut ranked, |candidate| candidate.share.value());
        ranked
    }

    /// Whether no metal explains every sign.
    pub fn contradict(&self) -> bool {
        let explains = |metal: &Metal| {
            let properties = metal.properties();
            self.chance_of_pull(&properties) >= SELDOM
                && self.chance_of_scrape(&properties) >= SELDOM
                && self.distance(*metal).is_none_or(|(z, _)| z.abs() <= FAR)
        };
        !Metal::ALL.iter().any(explains)
    }

    /// The look that would settle most often whether it is copper; all of it once more where signs contradict each other and nothing
    /// else is left.
    pub fn best_look(&self) -> Option<Look> {
        let looks = [(Look::Magnet, self.pull.is_none()), (Look::Scrape, self.scrape.is_none())];
        let open = looks.into_iter().chain([(Look::Mass, self.mass_resistivity.is_none())]);
        let by_worth = |a: &(Look, f64), b: &(Look, f64)| a.1.total_cmp(&b.1);
        let best = open.filter(|look| look.1).map(|(look, _)| (look, self.settled_by(look))).max_by(by_worth);
        let again = || self.contradict().then_some(Look::Again);
        best.filter(|best| best.1 >= WORTH_NAMING).map(|best| best.0).or_else(again)
    }

    /// How often a look settles whether it is copper, over all metals and all that it may show.
    fn settled_by(&self, look: Look) -> f64 {
        let each = |candidate: &Candidate| {
            let settling = self.after(look, candidate.metal).into_iter().filter(|(_, signs)| signs.is_settled());
            candidate.share.value() * settling.map(|(chance, _)| chance).sum::<f64>()
        };
        self.ranked().iter().map(each).sum()
    }

    /// What the signs may be after a look at a metal, each with its chance.
    fn after(&self, look: Look, metal: Metal) -> Vec<(f64, Self)> {
        let Properties { pull, scrape, spread, .. } = metal.properties();
        let pulls = [Pull::None, Pull::Weak, Pull::Strong];
        let scrapes = [Scrape::Red, Scrape::SilverThenRed, Scrape::RedThenSilver, Scrape::Silver, Scrape::Yellow];
        let weighed = |(chance, z): (f64, f64)| {
            let value = metal.mass_resistivity() * libm::exp(z * libm::hypot(spread, BY_MASS));
            let seen = Within { value, relative: Ratio::new::<ratio>(BY_MASS) };
            (chance, Self { mass_resistivity: Some(seen), ..*self })
        };
        match look {
            Look::Magnet => pull.into_iter().zip(pulls.map(|seen| Self { pull: Some(seen), ..*self })).collect(),
            Look::Scrape => scrape.into_iter().zip(scrapes.map(|seen| Self { scrape: Some(seen), ..*self })).collect(),
            Look::Mass => [(0.25, -1.0), (0.5, 0.0), (0.25, 1.0)].map(weighed).to_vec(),
            Look::Again => Vec::new(),
        }
    }

    fn is_settled(&self) -> bool {
        !self.contradict() && Thresholds::USUAL.conformity(copper(&self.ranked())) != Conformity::Inconclusive
    }

    /// The logarithm of what the signs weigh for a metal; where they contradict each other, with each of them in turn left out.
    fn log_weight(&self, metal: Metal, contradict: bool) -> f64 {
        let properties = metal.properties();
        let log_normal = |(z, deviation): (f64, f64)| -0.5 * z * z - libm::log(deviation);
        let seen = [self.pull.is_some(), self.scrape.is_some(), self.distance(metal).is_some()];
        let logs = [
            libm::log(self.chance_of_pull(&properties)),
            libm::log(self.chance_of_scrape(&properties)),
            self.distance(metal).map_or(0.0, log_normal),
        ];
        let all: f64 = logs.iter().sum();
        if !contradict {
            return all;
        }
        let without = seen.into_iter().zip(logs).zip(SLIPS).filter(|((seen, _), _)| *seen);
        libm::log(without.map(|((_, log), slip)| slip * libm::exp(all - log)).sum())
    }

    fn chance_of_pull(&self, properties: &Properties) -> f64 {
        let [none, weak, strong] = properties.pull;
        self.pull.map_or(1.0, |pull| match pull {
            Pull::None => none,
            Pull::Weak => weak,
            Pull::Strong => strong,
        })
    }

    fn chance_of_scrape(&self, properties: &Properties) -> f64 {
        let [red, silver_then_red, red_then_silver, silver, yellow] = properties.scrape;
        self.scrape.map_or(1.0, |scrape| match scrape {
            Scrape::Red => red,
            Scrape::SilverThenRed => silver_then_red,
            Scrape::RedThenSilver => red_then_silver,
            Scrape::Silver => silver,
            Scrape::Yellow => yellow,
        })
    }

    /// How far the resistivity that was read, by mass or else by size, lies from a metal's, in standard deviations of the logarithm;
    /// and that deviation.
    fn distance(&self, metal: Metal) -> Option<(f64, f64)> {
        let by_mass = self.mass_resistivity.map(|seen| (seen.value / metal.mass_resistivity(), seen.relative));
        let by_size = self.resistivity.map(|seen| (seen.value / metal.resistivity(), seen.relative));
        let (times, relative) = by_mass.or(by_size)?;
        let deviation = libm::hypot(relative.get::<ratio>(), metal.properties().spread);
        Some((libm::log(times.get::<ratio>()) / deviation, deviation))
    }
}

/// How likely copper is among candidates.
pub fn copper(candidates: &[Candidate]) -> Probability {
    candidates.iter().find(|c| c.metal == Metal::Copper).map_or(Probability::ZERO, |c| c.share)
}

/// Puts a short list in order: what has the largest share first, and equals as they stood. The standard sort is made for long lists, and each
/// sort of thing that it sorts gets a program of its own, which a phone has to fetch.
pub fn likeliest_first<T>(list: &mut [T], share: impl Fn(&T) -> f64) {
    for end in 1..list.len() {
        for at in (1..=end).rev() {
            if let Some([before, after]) = list.get(at - 1..=at)
                && share(after) > share(before)
            {
                list.swap(at - 1, at);
            }
        }
    }
}
