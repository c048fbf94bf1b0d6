//! Any value against its limit: a mark for the value, a band for its doubt (two standard uncertainties to each side), a line for each
//! limit, and a tint over what is allowed.

use super::Picture;
use super::axis::Axis;
use crate::domain::finding::{Bound, Conformity, Evidence, Finding};
use crate::domain::quantity::{QuantityKind, Unit};
use crate::domain::sample::Kind;
use crate::drawing::svg::{Svg, WIDEST};
use crate::words::{number, reason};

/// From where to where the line of numbers goes.
pub const ACROSS: (f64, f64) = (10.0, WIDEST - 10.0);

/// So many letters stand beside each other.
const LETTERS_ACROSS: usize = 50;

/// Height of the strip in which a band lies.
pub const TRACK: f64 = 18.0;

/// Height of a band.
const BAND: f64 = 6.0;

/// Height of a line of words.
const LINE: f64 = 16.0;

/// The least that is drawn of a doubt.
const LEAST: f64 = 1.0;

/// A picture for each limit, with every value that is held against it.
pub fn draw(finding: &Finding, kind: Kind) -> Vec<Picture> {
    let mut rest: Vec<&Evidence> = finding.judgement.evidence.iter().collect();
    let mut pictures = Vec::new();
    while let Some(first) = rest.first().copied() {
        let (same, others): (Vec<_>, Vec<_>) = rest.into_iter().partition(|evidence| evidence.limit == first.limit);
        rest = others;
        // What is inside its limit needs no picture.
        if same.iter().any(|evidence| evidence.outcome != Conformity::Conforms) {
            pictures.extend(group(finding, &same, &first.limit, kind));
        }
    }
    pictures
}

fn group(finding: &Finding, rows: &[&Evidence], limit: &Bound, kind: Kind) -> Option<Picture> {
    let limits = limits(limit);
    let unit = number::suited(*limits.first()?);
    let plain = |amount: crate::domain::quantity::Amount| amount.in_unit(unit);
    let bands = rows.iter().map(|evidence| Band::of(evidence, unit)).collect::<Option<Vec<_>>>()?;
    let lines: Vec<f64> = limits.into_iter().filter_map(plain).collect();
    let values: Vec<f64> = bands.iter().flat_map(|band| [band.from, band.to]).chain(lines.iter().copied()).collect();
    let is_two_sided = matches!(limit, Bound::Between(..)) || unit.kind() == QuantityKind::Temperature;
    let axis = if is_two_sided { Axis::close_to(&values, ACROSS) } else { Axis::around(&values, ACROSS) }?;

    let named: Vec<(String, String)> = rows
        .iter()
        .map(|evidence| (reason::subject(finding, evidence, kind), number::measured(evidence.value, evidence.u)))
        .collect();
    let heights = named.iter().map(|(subject, value)| {
        let is_short = subject.chars().count() + value.chars().count() <= LETTERS_ACROSS;
        if is_short { LINE } else { 2.0 * LINE }
    });
    let heights: Vec<f64> = heights.map(|words| words + TRACK).collect();
    let foot: f64 = heights.iter().sum();
    let mut svg = Svg::new(WIDEST, foot + 42.0, said(&named, limit));
    let mut top = 0.0;
    for ((band, (subject, value)), height) in bands.iter().zip(&named).zip(&heights) {
        let bottom = top + height;
        svg = allowed(svg, limit, &axis, &lines, (bottom - TRACK, bottom))
            .words((ACROSS.0, top + 12.0), "start", &reason::capital(subject))
            .words((ACROSS.1, bottom - TRACK - 4.0), "end", value);
        svg = band.draw(svg, &axis, bottom - TRACK / 2.0);
        top = bottom;
    }
    for line in &lines {
        svg = svg.line((axis.at(*line), foot), (axis.at(*line), foot + 22.0), "limit");
    }
    let svg = axis.level(svg, foot);
    let first = axis.at(*lines.first()?);
    let (at, anchor) = if first < WIDEST / 2.0 { (first + 4.0, "start") } else { (first - 4.0, "end") };
    let svg = svg.words((at, foot + 34.0), anchor, &reason::bound(limit));
    Some(Picture { svg: svg.into_figure(), notes: Vec::new() })
}

/// The picture in words: every value, and the limit.
fn said(named: &[(String, String)], limit: &Bound) -> String {
    let values = named.iter().map(|(subject, value)| format!("{subject} {value}").trim_start().to_owned());
    format!("{}; {}.", values.collect::<Vec<_>>().join("; "), reason::bound(limit))
}

/// The tint over what is allowed and a line at each limit, between two heights.
pub fn allowed(svg: Svg, limit: &Bound, axis: &Axis, lines: &[f64], (top, bottom): (f64, f64)) -> Svg {
    let first = lines.first().map_or(ACROSS.0, |line| axis.at(*line));
    let last = lines.last().map_or(ACROSS.1, |line| axis.at(*line));
    let (from, to) = match limit {
        Bound::AtLeast(_) => (first, ACROSS.1),
        Bound::AtMost(_) => (ACROSS.0, last),
        Bound::Between(..) => (first, last),
    };
    let middle = (f64::midpoint(from, to), f64::midpoint(top, bottom));
    let tinted = svg.rect(middle, (to - from, bottom - top), 0.0, "allowed");
    lines.iter().fold(tinted, |svg, line| svg.line((axis.at(*line), top), (axis.at(*line), bottom), "limit"))
}

/// The amounts of a limit.
pub fn limits(limit: &Bound) -> Vec<crate::domain::quantity::Amount> {
    match *limit {
        Bound::AtLeast(only) | Bound::AtMost(only) => vec![only],
        Bound::Between(low, high) => vec![low, high],
    }
}

/// A value and two standard uncertainties to each side of it, as plain numbers of a unit.
#[derive(Debug, Clone, Copy)]
pub struct Band {
    /// The value.
    pub value: f64,
    /// Two standard uncertainties below; not below nought where the value is above it.
    pub from: f64,
    /// Two standard uncertainties above.
    pub to: f64,
}

impl Band {
    /// The band of a value; `None` where it is not of that unit or no number.
    pub fn of(evidence: &Evidence, unit: Unit) -> Option<Self> {
        let value = evidence.value.in_unit(unit).filter(|value| value.is_finite())?;
        let doubt = 2.0 * evidence.u.difference_in(unit).filter(|u| u.is_finite())?;
        let from = if value >= 0.0 { (value - doubt).max(0.0) } else { value - doubt };
        Some(Self { value, from, to: value + doubt })
    }

    /// Draws it at a height.
    pub fn draw(&self, svg: Svg, axis: &Axis, y: f64) -> Svg {
        let (from, to, at) = (axis.at(self.from), axis.at(self.to), axis.at(self.value));
        svg.rect((f64::midpoint(from, to), y), ((to - from).max(LEAST), BAND), 0.0, "doubt").line(
            (at, y - BAND),
            (at, y + BAND),
            "mark",
        )
    }
}
