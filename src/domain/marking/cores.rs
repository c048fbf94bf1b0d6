//! Number and size of cores as they are printed: `3G1.5`, `3 x 0,75 mm²`, `3 CORE 1.25mm`, `18AWG/3C`.

use super::Stated;
use super::figure::Figure;
use super::measure::{Measure, measure};
use super::token::Token;
use crate::domain::quantity::{Area, Measurand, Unit, square_millimetres};
use crate::domain::standard::awg;

/// Cores and size as far as one group of print states them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Cores {
    /// How many.
    pub(super) count: Option<u8>,
    /// What stands between number and size.
    pub(super) joint: Joint,
    /// Size of one core.
    pub(super) area: Option<Stated<Area>>,
    /// Size as a wire gauge.
    pub(super) gauge: Option<u8>,
    /// Behind how many tokens the size begins; `None` where number and size are not told apart.
    pub(super) size_behind: Option<usize>,
    /// How many tokens state it.
    pub(super) taken: usize,
}

/// What stands between the number of cores and their size.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Joint {
    /// `G`: one of them is green-and-yellow.
    WithEarth,
    /// `X`: in HD 361 none of them is green-and-yellow, elsewhere a plain "times".
    Times,
    /// The word core, or nothing.
    Word,
}

/// More cores than any flex of an accessory has.
const MOST_CORES: u8 = 61;

/// Sizes that a flex is sold in, mm² (IEC 60228, and 1.25 of the UK).
const SIZES: [f64; 11] = [0.5, 0.75, 1.0, 1.25, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0];

/// Reads cores, size or both at a number.
pub(super) fn cores(tokens: &[Token], at: usize) -> Option<Cores> {
    let figure = tokens.get(at)?.number()?;
    if let Some((gauge, taken)) = gauge_at(tokens, at) {
        return Some(Cores::of_gauge(gauge, taken));
    }
    let count = figure.small_count().filter(|&count| count <= MOST_CORES);
    if let (Some(count), Some((joint, joint_taken))) = (count, joint_at(tokens, at + 1)) {
        let size_at = at + 1 + joint_taken;
        let bare = Cores {
            count: Some(count),
            joint,
            area: None,
            gauge: None,
            size_behind: Some(1 + joint_taken),
            taken: 1 + joint_taken,
        };
        if let Some((gauge, taken)) = gauge_at(tokens, size_at) {
            let area = area_of_gauge(gauge);
            return Some(Cores { area, gauge: Some(gauge), taken: bare.taken + taken, ..bare });
        }
        if let Some((area, taken)) = size(tokens, size_at, joint) {
            return Some(Cores { area: Some(area), taken: bare.taken + taken, ..bare });
        }
        return (joint != Joint::Times).then_some(bare);
    }
    let (Measure::SquareMillimetre, unit_taken) = measure(tokens, at + 1)? else { return None };
    let taken = 1 + unit_taken;
    Some(Cores { count: None, joint: Joint::Word, area: named_size(figure), gauge: None, size_behind: Some(0), taken })
}

impl Cores {
    /// A wire gauge alone.
    pub(super) fn of_gauge(gauge: u8, taken: usize) -> Self {
        let area = area_of_gauge(gauge);
        Self { count: None, joint: Joint::Word, area, gauge: Some(gauge), size_behind: Some(0), taken }
    }
}

/// `x`, `G`, `C`, `core x` and their kin.
fn joint_at(tokens: &[Token], at: usize) -> Option<(Joint, usize)> {
    let dash = usize::from(tokens.get(at)?.is_sign('-'));
    let times = |at: usize| tokens.get(at).and_then(Token::word) == Some("X");
    match tokens.get(at + dash)?.word()? {
        "G" => Some((Joint::WithEarth, dash + 1 + usize::from(times(at + dash + 1)))),
        "X" if dash == 0 => Some((Joint::Times, 1)),
        "C" | "CORE" | "CORED" | "CORES" => Some((Joint::Word, dash + 1 + usize::from(times(at + dash + 1)))),
        "COREX" | "CX" => Some((Joint::Word, dash + 1)),
        _ => None,
    }
}

/// A size behind the number of cores; plain `mm` is what the trade prints for mm². Without a unit `x` may be a plain "times", so a whole
/// number must be a size that is sold there; `G` leaves no doubt.
fn size(tokens: &[Token], at: usize, joint: Joint) -> Option<(Stated<Area>, usize)> {
    let figure = tokens.get(at)?.number()?;
    let area = named_size(figure)?;
    match measure(tokens, at + 1) {
        Some((Measure::SquareMillimetre | Measure::Millimetre, taken)) => Some((area, 1 + taken)),
        Some(_) => None,
        None => (joint == Joint::WithEarth || figure.has_decimals() || is_sold(area.value)).then_some((area, 1)),
    }
}

/// Whether a size is one that flexes are sold in.
pub(super) fn is_sold(area: Area) -> bool {
    SIZES.iter().any(|&size| (square_millimetres(size) - area).base().abs() < square_millimetres(0.001).base())
}

/// A cross-section names a size, so `3G1` cannot stand for 0.75 or 1.25: two decimals tell all sizes apart, whatever is printed.
/// Nothing is no size.
pub(super) fn named_size(figure: Figure) -> Option<Stated<Area>> {
    let area: Stated<Area> = figure.stated(Unit::SquareMillimetre)?;
    (area.value > square_millimetres(0.0)).then(|| Stated::new(area.value, square_millimetres(0.01)))
}

/// `18AWG`, `18 AWG`, `AWG 18` or `AWG18`.
pub(super) fn gauge_at(tokens: &[Token], at: usize) -> Option<(u8, usize)> {
    let word = |at: usize| tokens.get(at).and_then(Token::word);
    let number = |at: usize| tokens.get(at).and_then(Token::number).and_then(Figure::small_count);
    let gauge = match (word(at), number(at)) {
        (Some("AWG"), None) => number(at + 1)?,
        (None, Some(gauge)) if matches!(word(at + 1), Some("AWG" | "AWGX")) => gauge,
        _ => return None,
    };
    awg::GAUGES.contains(&gauge).then_some((gauge, 2))
}

/// A gauge stands for all sizes nearer to it than to its neighbours.
pub(super) fn area_of_gauge(gauge: u8) -> Option<Stated<Area>> {
    Some(Stated::new(awg::area(gauge)?, awg::step(gauge)?))
}
