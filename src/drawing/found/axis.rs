//! A line of numbers: where a value stands on it, and the round numbers written under it.

use crate::drawing::svg::Svg;
use crate::words::number;

/// How far apart equal distances are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Steps {
    /// Equal differences are equally far.
    Even,
    /// Equal ratios are equally far.
    Ratios,
}

/// A line of numbers between two places of a drawing.
#[derive(Debug, Clone, Copy)]
pub struct Axis {
    from: f64,
    to: f64,
    at_from: f64,
    at_to: f64,
    steps: Steps,
}

/// The least part of the larger value that must lie between values for an axis from nought to show them apart.
const TOLD_APART: f64 = 0.15;

/// Room left beyond the outermost values, as a part of what lies between them.
const MARGIN: f64 = 0.15;

impl Axis {
    /// From `from` to `to` in even steps, drawn between two places.
    pub const fn even(from: f64, to: f64, at: (f64, f64)) -> Self {
        Self { from, to, at_from: at.0, at_to: at.1, steps: Steps::Even }
    }

    /// For values and a one-sided limit: from nought, so that lengths are in the ratio of the values; where that would show them as one,
    /// from a little below the least of them.
    pub fn around(values: &[f64], at: (f64, f64)) -> Option<Self> {
        let (low, high) = ends(values)?;
        let is_from_nought = low >= 0.0 && high - low > TOLD_APART * high;
        Some(if is_from_nought {
            Self::even(0.0, high * (1.0 + MARGIN / 2.0), at)
        } else {
            Self::close_to(values, at)?
        })
    }

    /// From a little below the least to a little above the greatest of some values.
    pub fn close_to(values: &[f64], at: (f64, f64)) -> Option<Self> {
        let (low, high) = ends(values)?;
        let span = if high > low { high - low } else { high.abs().max(1.0) };
        Some(Self::even(low - MARGIN * span, high + MARGIN * span, at))
    }

    /// In steps of equal ratios, from the power of ten below the least value to the one above the greatest.
    pub fn of_ratios(values: &[f64], at: (f64, f64)) -> Option<Self> {
        let (low, high) = ends(values).filter(|(low, _)| *low > 0.0)?;
        let (from, to) = (libm::pow(10.0, libm::log10(low).floor()), libm::pow(10.0, libm::log10(high).ceil()));
        let to = if to > from { to } else { 10.0 * from };
        Some(Self { from, to, at_from: at.0, at_to: at.1, steps: Steps::Ratios })
    }

    /// The place of a value; what lies beyond an end stands at it.
    pub fn at(&self, value: f64) -> f64 {
        let part = match self.steps {
            Steps::Even => (value - self.from) / (self.to - self.from),
            Steps::Ratios if value > 0.0 => libm::log10(value / self.from) / libm::log10(self.to / self.from),
            Steps::Ratios => 0.0,
        };
        self.at_from + part.clamp(0.0, 1.0) * (self.at_to - self.at_from)
    }

    /// The round numbers on it.
    pub fn ticks(&self) -> Vec<f64> {
        match self.steps {
            Steps::Even => {
                let step = round_step((self.to - self.from) / 4.0);
                let first = (self.from / step).ceil();
                (0..8).map(|n| (first + f64::from(n)) * step).take_while(|tick| *tick <= self.to).collect()
            }
            Steps::Ratios => {
                let decades = libm::log10(self.to / self.from).round();
                let within: &[f64] = if decades <= 2.0 { &[1.0, 2.0, 5.0] } else { &[1.0] };
                let powers = (0..12).map(|n| self.from * libm::pow(10.0, f64::from(n)));
                powers
                    .flat_map(|power| within.iter().map(move |step| step * power))
                    .take_while(|tick| *tick <= self.to * 1.000_001)
                    .collect()
            }
        }
    }

    /// Draws it as a level line at a height, its round numbers below.
    pub fn level(&self, svg: Svg, y: f64) -> Svg {
        let line = svg.line((self.at_from, y), (self.at_to, y), "h");
        self.ticks().into_iter().fold(line, |svg, tick| {
            let x = self.at(tick);
            svg.line((x, y), (x, y + 4.0), "h").words((x, y + 16.0), "middle", &number::number(tick))
        })
    }
}

fn ends(values: &[f64]) -> Option<(f64, f64)> {
    let are_numbers = !values.is_empty() && values.iter().all(|value| value.is_finite());
    let low = values.iter().copied().fold(f64::INFINITY, f64::min);
    let high = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    are_numbers.then_some((low, high))
}

/// The least of 1, 2, 5, 10, … times a power of ten that is no smaller.
fn round_step(step: f64) -> f64 {
    let power = libm::pow(10.0, libm::log10(step).floor());
    [1.0, 2.0, 5.0]
        .into_iter()
        .map(|times| times * power)
        .find(|round| *round >= step * 0.999_999)
        .unwrap_or(10.0 * power)
}
