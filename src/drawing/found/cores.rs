//! The cores against what IEC 60228 allows of class 5, on a line of equal ratios: twice the resistance is always as far to the right.

use super::Picture;
use super::axis::Axis;
use super::band::{ACROSS, Band, TRACK, allowed, limits};
use crate::domain::finding::{Evidence, Finding};
use crate::domain::quantity::Unit;
use crate::domain::question::Target;
use crate::domain::sample::Kind;
use crate::drawing::svg::{Svg, WIDEST};
use crate::words::{number, reason, which};

/// Height of one core.
const ROW: f64 = 34.0;

/// The picture; `None` where no core has a number.
pub fn draw(finding: &Finding) -> Option<Picture> {
    const UNIT: Unit = Unit::OhmPerKilometre;
    let (danger, cores): (Vec<&Evidence>, Vec<&Evidence>) =
        finding.judgement.evidence.iter().partition(|evidence| reason::is_danger_line(finding, evidence));
    let line = |evidence: &&Evidence| {
        let amount = limits(&evidence.limit).first().copied()?;
        Some((amount.in_unit(UNIT)?, amount))
    };
    let limit = cores.first().and_then(line)?;
    let danger = danger.first().and_then(line);
    let at_most = [limit.0];
    let bands = cores.iter().map(|evidence| Band::of(evidence, UNIT)).collect::<Option<Vec<_>>>()?;
    let values: Vec<f64> =
        bands.iter().map(|band| band.value).chain([limit.0]).chain(danger.map(|(at, _)| at)).collect();
    let axis = Axis::of_ratios(&values, ACROSS)?;

    let mut foot = 0.0;
    let lines = if danger.is_some() { 60.0 } else { 44.0 };
    let mut svg =
        Svg::new(WIDEST, ROW * count(cores.len()) + lines, reason::numbers(finding, Kind::ExtensionLead).join(" "));
    for (band, evidence) in bands.iter().zip(&cores) {
        let Target::Core(core) = evidence.target else { continue };
        let track = (foot + ROW - TRACK, foot + ROW);
        svg = allowed(svg, &evidence.limit, &axis, &at_most, track)
            .words((ACROSS.0, foot + 12.0), "start", &reason::capital(which::core_in_short(core)))
            .words((ACROSS.1, foot + 12.0), "end", &number::measured(evidence.value, evidence.u));
        if let Some((at, _)) = danger {
            svg = svg.line((axis.at(at), track.0), (axis.at(at), track.1), "dash");
        }
        svg = band.draw(svg, &axis, f64::midpoint(track.0, track.1));
        foot += ROW;
    }
    let at = axis.at(limit.0);
    svg = svg.line((at, foot), (at, foot + 22.0), "limit").words(
        (at - 4.0, foot + 34.0),
        "start",
        &format!("at most {} (class 5)", number::amount(limit.1)),
    );
    if let Some((value, danger)) = danger {
        let at = axis.at(value);
        svg = svg.line((at, foot), (at, foot + 38.0), "dash").words(
            (at - 4.0, foot + 50.0),
            "start",
            &format!("a danger beyond {}", number::amount(danger)),
        );
    }
    let svg = axis.level(svg, foot);
    Some(Picture {
        svg: svg.into_figure(),
        notes: vec!["Ω/km at 20 °C; each step to the right is a multiple.".to_owned()],
    })
}

/// So many, as a number to reckon with.
fn count(n: usize) -> f64 {
    f64::from(u8::try_from(n).unwrap_or(u8::MAX))
}
