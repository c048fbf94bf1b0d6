//! The faces of two plugs over each other in true proportion: the sample's outline drawn through, the known good's dashed.

use super::Picture;
use super::pins::{MARGIN, SCALE, Sizes, middle, outline};
use crate::domain::finding::{Evidence, Finding};
use crate::domain::question::Core;
use crate::domain::standard::bs1363_1;
use crate::drawing::svg::{Svg, WIDEST};
use crate::words::{comparison, measurand::measurand, number};

/// The picture; `None` where one of the two was not measured.
pub fn draw(sample: &[Finding], known_good: &[Finding]) -> Option<Picture> {
    let (sample, known_good) = (Sizes::of(sample), Sizes::of(known_good));
    if sample.values.is_empty() || known_good.values.is_empty() {
        return None;
    }
    let half = sample.edge().0.max(known_good.edge().0);
    let scale = SCALE.min((WIDEST - 2.0 * MARGIN) / (2.0 * half));
    let notes = notes(&sample, &known_good);
    let title = format!("{} {}", comparison::FACES, notes.join(" "));
    let svg = Svg::new(WIDEST, scale * 46.0 + 12.0, title);
    let svg = face(face(svg, &sample, scale, "s"), &known_good, scale, "dash");
    Some(Picture { svg: svg.into_figure(), notes })
}

/// One face in lines of a class. Both stand with the middle between their pins on the same point.
fn face(svg: Svg, sizes: &Sizes, scale: f64, class: &str) -> Svg {
    let place = |(x, y): (f64, f64)| (WIDEST / 2.0 + scale * x, scale * (y + 23.0) + 6.0);
    let between_live = sizes.or_nominal("across-live-pins", &bs1363_1::pin_spacing());
    let to_earth = sizes.or_nominal("earth-pin-to-far-side", &bs1363_1::pin_spacing());
    let svg = svg.path(&outline(sizes.edge().0, place), class);
    Core::ALL.into_iter().fold(svg, |svg, core| {
        let (across, up) = sizes.pin(core);
        svg.rect(place(middle(core, between_live, to_earth)), (scale * across, scale * up), 1.0, class)
    })
}

/// A line for each size that was measured on either: what it is on the one and on the other.
fn notes(sample: &Sizes, known_good: &Sizes) -> Vec<String> {
    let is_same = |one: &(&str, &Evidence), other: &(&str, &Evidence)| {
        one.0 == other.0 && one.1.question.map(|question| question.id) == other.1.question.map(|question| question.id)
    };
    let found = |sizes: &Sizes, wanted: &(&'static str, &Evidence)| {
        let evidence = sizes.values.iter().find(|one| is_same(one, wanted))?.1;
        Some(number::measured(evidence.value, evidence.u))
    };
    let only_known_good = known_good.values.iter().filter(|one| !sample.values.iter().any(|other| is_same(one, other)));
    let sizes = sample.values.iter().chain(only_known_good);
    let lines = sizes.map(|one| {
        comparison::size(measurand(one.0, one.1), found(sample, one).as_deref(), found(known_good, one).as_deref())
    });
    lines.chain([comparison::HOW_DRAWN.to_owned()]).collect()
}
