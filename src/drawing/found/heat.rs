//! Where the cores settle against the current they carry: the model's curve with its margin, the claim, and the current that the table of
//! flexible cords allows.

use super::Picture;
use super::axis::Axis;
use crate::domain::check::cable::copper::cut_flex::CutFlex;
use crate::domain::check::cable::copper::heat::{Loaded, loaded};
use crate::domain::physics::heating::{self, LoadedFlex, Steady};
use crate::domain::quantity::{Measurand, ThermodynamicTemperature, degrees_celsius};
use crate::domain::standard::{bs7671, bs7671_flex, en50525};
use crate::domain::view::View;
use crate::drawing::svg::{Svg, WIDEST};
use crate::words::number;

/// Above this a temperature only means "destroyed", °C.
const HOTTEST: f64 = 160.0;

/// Where the plot stands.
const LEFT: f64 = 34.0;
const RIGHT: f64 = WIDEST - 10.0;
const TOP: f64 = 10.0;
const FOOT: f64 = 190.0;

/// Points of a curve.
const POINTS: u8 = 64;

/// The picture; `None` where line, neutral or the claim is not known.
pub fn draw(view: &View) -> Option<Picture> {
    let flex = CutFlex::of(view);
    let (loaded, claim) = (loaded(&flex)?, flex.current?);
    let table = flex.area.and_then(bs7671::cord_rating);
    let room = celsius(bs7671_flex::surroundings());
    let limit = celsius(en50525::hottest_conductor());
    let cool = celsius(bs7671_flex::conductor());
    let widest = [Some(claim), table].into_iter().flatten().map(Measurand::base).fold(0.0, f64::max) * 1.2;
    let across = Axis::even(0.0, widest, (LEFT, RIGHT));
    let up = Axis::even(room, HOTTEST, (FOOT, TOP));
    let place = |(current, celsius): (f64, f64)| (across.at(current), up.at(celsius));

    let curve = |flex: &LoadedFlex, stretched: f64| -> Vec<(f64, f64)> {
        let shown = (0..=POINTS).map(|n| room + (HOTTEST - room) * f64::from(n) / f64::from(POINTS));
        let points: Vec<_> = shown.map(|shown| (current_for(flex, room + (shown - room) / stretched), shown)).collect();
        up_to(widest, &points).into_iter().map(place).collect()
    };
    let Loaded { coolest, likely, hottest } = &loaded;
    let margin = heating::margin_of_rise();
    let upper = curve(hottest, 1.0 + margin);
    let lower = curve(coolest, 1.0 - margin);
    let band: Vec<_> = upper.into_iter().chain(lower.into_iter().rev()).collect();

    let (settles, ends) = match likely.steady(claim, bs7671_flex::surroundings()) {
        Steady::At(hot) if celsius(hot) <= HOTTEST => (celsius(hot), number::rounded(hot.amount())),
        Steady::At(_) | Steady::Never => (HOTTEST, "hotter than 160 °C: destroyed".to_owned()),
    };
    let claimed = number::amount(claim.amount());
    let title = format!(
        "The temperature of the cores against the current they carry, with the margin of the model. At {claimed}: {ends}."
    );
    let at = place((claim.base(), settles));
    let mut svg = Svg::new(WIDEST, 240.0, title)
        .path(&path(&band, "z"), "allowed")
        .path(&path(&curve(likely, 1.0), ""), "curve")
        .line((LEFT, up.at(limit)), (RIGHT, up.at(limit)), "limit")
        .line((LEFT, up.at(cool)), (RIGHT, up.at(cool)), "h")
        .words((LEFT + 4.0, up.at(limit) - 4.0), "start", "70 °C: the plastic softens above it")
        .line((at.0, TOP), (at.0, FOOT + 22.0), "dash")
        .circle(at, 4.0, "dot");
    svg = beside(svg, (at.0, at.1 + 4.0), &ends);
    svg = beside(svg, (at.0, FOOT + 34.0), &format!("claimed: {claimed}"));
    if let Some(table) = table {
        let x = across.at(table.base());
        let said = format!("the table for its size allows {}", number::amount(table.amount()));
        svg = beside(svg.line((x, TOP), (x, FOOT + 36.0), "h"), (x, FOOT + 48.0), &said);
    }
    for celsius in [40.0, 100.0, 130.0, 160.0] {
        svg = svg.line((LEFT - 4.0, up.at(celsius)), (LEFT, up.at(celsius)), "h").words(
            (LEFT - 6.0, up.at(celsius) + 4.0),
            "end",
            &number::number(celsius),
        );
    }
    let svg = across.level(svg.line((LEFT, TOP), (LEFT, FOOT), "h"), FOOT);
    let notes = vec![
        "°C up, amperes across. The tinted band is the margin of the model and of the readings: at the claimed current it is too hot if all of the band lies above 70 °C, and cool enough if all of it lies below the thin line at 60 °C.".to_owned(),
        "Lying straight, alone, in still air at 30 °C. Coiled or covered, a flex gets much hotter; that is not modelled.".to_owned(),
    ];
    Some(Picture { svg: svg.into_figure(), notes })
}

/// Words beside an upright line, on the side that has room.
fn beside(svg: Svg, at: (f64, f64), words: &str) -> Svg {
    if at.0 < WIDEST / 2.0 {
        svg.words((at.0 + 8.0, at.1), "start", words)
    } else {
        svg.words((at.0 - 8.0, at.1), "end", words)
    }
}

fn celsius(temperature: ThermodynamicTemperature) -> f64 {
    temperature.base() - degrees_celsius(0.0).base()
}

/// The points of a rising curve as far as a current, at which it ends.
fn up_to(widest: f64, points: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let mut kept: Vec<(f64, f64)> = Vec::new();
    for &(current, celsius) in points {
        match kept.last().copied() {
            Some((before, cooler)) if current > widest => {
                let part = (widest - before) / (current - before);
                kept.push((widest, cooler + part * (celsius - cooler)));
                break;
            }
            _ => kept.push((current, celsius)),
        }
    }
    kept
}

fn current_for(flex: &LoadedFlex, conductor: f64) -> f64 {
    flex.current_for(degrees_celsius(conductor), bs7671_flex::surroundings()).base()
}

/// A line through places.
fn path(places: &[(f64, f64)], end: &str) -> String {
    let steps = places.iter().filter(|(x, y)| x.is_finite() && y.is_finite());
    let steps: Vec<String> = steps.map(|(x, y)| format!("{x:.1} {y:.1}")).collect();
    format!("M{}{end}", steps.join(" L"))
}
