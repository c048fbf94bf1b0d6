//! The face of the plug in true proportion: every size that was measured, drawn over the outline that the limits allow, with lettered
//! notes.

use super::Picture;
use crate::domain::decision::Limit;
use crate::domain::finding::{Evidence, Finding};
use crate::domain::quantity::{Amount, Length, Unit};
use crate::domain::question::Core;
use crate::domain::standard::bs1363_1;
use crate::drawing::plug::nominal;
use crate::drawing::svg::{Svg, WIDEST};
use crate::words::{measurand::measurand, number, reason};

/// The checks whose values stand on the face.
pub const CODES: [&str; 4] = ["pin-near-edge", "pin-width-off", "pin-thickness-off", "pin-spacing-off"];

/// Pixels of a millimetre, where the plug is not too wide for it.
pub(super) const SCALE: f64 = 5.0;

/// Room for the letters on each side, pixels.
pub(super) const MARGIN: f64 = 30.0;

/// What was measured, and what it is taken to be where it was not.
pub(super) struct Sizes<'a> {
    pub(super) values: Vec<(&'static str, &'a Evidence)>,
}

impl<'a> Sizes<'a> {
    pub(super) fn of(findings: &'a [Finding]) -> Self {
        let on_face = findings.iter().filter(|finding| CODES.contains(&finding.code));
        let values =
            on_face.flat_map(|finding| finding.judgement.evidence.iter().map(|evidence| (finding.code, evidence)));
        Self { values: values.collect() }
    }

    /// A measured size in millimetres.
    pub(super) fn measured(&self, id: &str) -> Option<f64> {
        let is_it =
            |(code, evidence): &&(&str, &Evidence)| evidence.question.map_or(*code, |question| question.id) == id;
        self.values.iter().find(is_it)?.1.value.in_unit(Unit::Millimetre).filter(|value| (0.0..100.0).contains(value))
    }

    pub(super) fn or_nominal(&self, id: &str, limit: &Limit<Length>) -> f64 {
        self.measured(id).unwrap_or_else(|| nominal(limit))
    }

    /// Half way between line and neutral to the edge beside them, and to where a pin's outer side is.
    pub(super) fn edge(&self) -> (f64, f64) {
        let outer =
            self.or_nominal("across-live-pins", &bs1363_1::pin_spacing()) / 2.0 + self.pin(Core::Neutral).0 / 2.0;
        (outer + self.or_nominal("pin-near-edge", &bs1363_1::pin_to_edge()), outer)
    }

    /// The size of a pin, across and up.
    pub(super) fn pin(&self, core: Core) -> (f64, f64) {
        let thick = self.or_nominal("pin-thickness", &bs1363_1::pin_thickness());
        match core {
            Core::Earth => (thick, self.or_nominal("earth-pin-width", &bs1363_1::pin_width(core))),
            Core::Line | Core::Neutral => (self.or_nominal("live-pin-width", &bs1363_1::pin_width(core)), thick),
        }
    }
}

/// The middle of a pin, millimetres right of and below the point half way between the pins of a plug as it should be.
pub(super) fn middle(core: Core, between_live: f64, to_earth: f64) -> (f64, f64) {
    // The lower pins stand where they should; a wrong distance shows at the earth pin.
    let low = low();
    match core {
        Core::Earth => (0.0, low - to_earth),
        Core::Line => (-between_live / 2.0, low),
        Core::Neutral => (between_live / 2.0, low),
    }
}

/// How far below the drawing's middle the lower pins stand, millimetres.
fn low() -> f64 {
    nominal(&bs1363_1::pin_spacing()) / 2.0
}

/// The picture; `None` where nothing on the face was measured.
pub fn draw(findings: &[Finding]) -> Option<Picture> {
    let sizes = Sizes::of(findings);
    if sizes.values.is_empty() {
        return None;
    }
    let spacing = nominal(&bs1363_1::pin_spacing());
    let between_live = sizes.or_nominal("across-live-pins", &bs1363_1::pin_spacing());
    let to_earth = sizes.or_nominal("earth-pin-to-far-side", &bs1363_1::pin_spacing());
    let least = nominal(&bs1363_1::pin_to_edge());
    let (edge, outer) = sizes.edge();
    let half = edge.max(outer + least);
    let scale = SCALE.min((WIDEST - 2.0 * MARGIN) / (2.0 * half));
    let place = |(x, y): (f64, f64)| (WIDEST / 2.0 + scale * x, scale * (y + 23.0) + 6.0);
    let scaled = |(across, up): (f64, f64)| (scale * across, scale * up);

    let notes = notes(&sizes);
    let mut svg = Svg::new(
        WIDEST,
        scale * 46.0 + 26.0,
        format!("The pin side of the plug, earth pin up, with what was measured. {}", notes.join(" ")),
    )
    .path(&outline(edge, place), if sizes.measured("pin-near-edge").is_some() { "s" } else { "h" });
    for core in Core::ALL {
        let at = middle(core, between_live, to_earth);
        svg = svg.rect(place(at), scaled(sizes.pin(core)), 1.0, "pin");
        let wanted = middle(core, spacing, spacing);
        for size in allowed(core) {
            svg = svg.rect(place(wanted), scaled(size), 1.0, "allowed-line");
        }
    }
    let letters = lettered(&sizes);
    for (letter, id) in letters {
        svg = pointed(svg, letter, id, &Face { sizes: &sizes, between_live, to_earth, edge, outer, least }, &place);
    }
    Some(Picture { svg: svg.into_figure(), notes })
}

/// The least and the largest that a pin may be, across and up.
fn allowed(core: Core) -> [(f64, f64); 2] {
    let ends = |limit: &Limit<Length>| match *limit {
        Limit::Between(low, high) => (nominal(&Limit::AtLeast(low)), nominal(&Limit::AtMost(high))),
        Limit::AtLeast(_) | Limit::AtMost(_) => (nominal(limit), nominal(limit)),
    };
    let (width, thick) = (ends(&bs1363_1::pin_width(core)), ends(&bs1363_1::pin_thickness()));
    match core {
        Core::Earth => [(thick.0, width.0), (thick.1, width.1)],
        Core::Line | Core::Neutral => [(width.0, thick.0), (width.1, thick.1)],
    }
}

/// The plug's edge: beside the lower pins it stands where it was measured, elsewhere it is only usual.
pub(super) fn outline(edge: f64, place: impl Fn((f64, f64)) -> (f64, f64)) -> String {
    let top = (edge * 0.75, -22.5);
    let corners = [
        (-top.0, top.1),
        (top.0, top.1),
        (edge, 4.0),
        (edge, 17.0),
        (edge * 0.7, 22.5),
        (-edge * 0.7, 22.5),
        (-edge, 17.0),
        (-edge, 4.0),
    ];
    let steps: Vec<String> = corners.into_iter().map(&place).map(|(x, y)| format!("{x:.1} {y:.1}")).collect();
    format!("M{}z", steps.join(" L"))
}

/// Where everything stands, in millimetres.
struct Face<'a> {
    sizes: &'a Sizes<'a>,
    between_live: f64,
    to_earth: f64,
    edge: f64,
    outer: f64,
    least: f64,
}

/// A letter at what it speaks of.
fn pointed(svg: Svg, letter: char, id: &str, face: &Face, place: &impl Fn((f64, f64)) -> (f64, f64)) -> Svg {
    let letter = letter.to_string();
    let low = low();
    let side = |svg: Svg, from: (f64, f64), to: (f64, f64)| {
        let (from, to) = (place(from), place(to));
        let stands = (from.0 - to.0).abs() < (from.1 - to.1).abs();
        let (at, anchor) = if stands {
            ((from.0 - 5.0, f64::midpoint(from.1, to.1) + 4.0), "end")
        } else {
            ((f64::midpoint(from.0, to.0), from.1 + 14.0), "middle")
        };
        let (dx, dy) = if stands { (3.0, 0.0) } else { (0.0, 3.0) };
        svg.line(from, to, "h")
            .line((from.0 - dx, from.1 - dy), (from.0 + dx, from.1 + dy), "h")
            .line((to.0 - dx, to.1 - dy), (to.0 + dx, to.1 + dy), "h")
            .words(at, anchor, &letter)
    };
    match id {
        "live-pin-width" => {
            let (wide, thick) = face.sizes.pin(Core::Line);
            let (x, y) = (-face.between_live / 2.0, low + thick / 2.0 + 1.4);
            side(svg, (x - wide / 2.0, y), (x + wide / 2.0, y))
        }
        "earth-pin-width" => {
            let (thick, wide) = face.sizes.pin(Core::Earth);
            let (x, y) = (-thick / 2.0 - 1.4, low - face.to_earth);
            side(svg, (x, y - wide / 2.0), (x, y + wide / 2.0))
        }
        "pin-thickness" => {
            let (wide, thick) = face.sizes.pin(Core::Line);
            let x = -face.between_live / 2.0 - wide / 2.0 - 1.4;
            side(svg, (x, low - thick / 2.0), (x, low + thick / 2.0))
        }
        "across-live-pins" => side(svg, (-face.between_live / 2.0, low), (face.between_live / 2.0, low)),
        "earth-pin-to-far-side" => side(svg, (0.0, low), (0.0, low - face.to_earth)),
        _ => {
            let y = low - 4.0;
            let dashed = (place((face.outer + face.least, low - 7.0)), place((face.outer + face.least, low + 5.0)));
            let least = number::amount(Amount::new(face.least, Unit::Millimetre));
            side(svg, (face.outer, y), (face.edge, y)).line(dashed.0, dashed.1, "dash").words(
                (dashed.1.0, dashed.1.1 + 14.0),
                "middle",
                &least,
            )
        }
    }
}

/// A letter for each size that was measured.
fn lettered<'a>(sizes: &'a Sizes<'a>) -> impl Iterator<Item = (char, &'static str)> + 'a {
    ('a'..='z').zip(sizes.values.iter().map(|(code, evidence)| evidence.question.map_or(*code, |question| question.id)))
}

/// "a: width of the earth pin 7.93 mm ± 0.024 mm, 7.8 mm to 8.05 mm allowed".
fn notes(sizes: &Sizes) -> Vec<String> {
    let lines = ('a'..='z').zip(&sizes.values).map(|(letter, (code, evidence))| {
        let (value, limit) = (number::measured(evidence.value, evidence.u), reason::bound(&evidence.limit));
        format!("{letter}: {}: {value}, {limit}.", measurand(code, evidence))
    });
    let drawn = "Filled: as measured. Fine lines: as the limits allow. Sizes that nobody measured are drawn as they should be, and of the outline only the distance to a lower pin counts.";
    lines.chain([drawn.to_owned()]).collect()
}
