//! The face of the plug in true proportion, held against a plug of round sizes.

use plugwary::domain::check::plug::pin_size;
use plugwary::domain::finding::{Bound, Finding, Reason};
use plugwary::domain::quantity::{Amount, Unit};
use plugwary::domain::question::{Question, Target};
use plugwary::drawing::found::{is_on_plug_face, plug_face};

use crate::pictures::{all, evidence, finding, near};

fn size(question: &'static Question, value: f64) -> plugwary::domain::finding::Evidence {
    let limit = Bound::Between(Amount::new(value - 1.0, Unit::Millimetre), Amount::new(value + 1.0, Unit::Millimetre));
    evidence(Target::Sample, value, 0.01, Unit::Millimetre, limit).of(question)
}

/// A plug with lower pins 6 mm by 3 mm, an earth pin 9 mm by 3 mm, 20 mm from middle to middle across, 24 mm up, 8 mm to the edge.
fn measured() -> Vec<Finding> {
    let edge = Bound::AtLeast(Amount::new(9.5, Unit::Millimetre));
    let of = |code, evidence| finding(code, Reason::Measured, evidence);
    vec![
        of("pin-near-edge", vec![evidence(Target::Sample, 8.0, 0.01, Unit::Millimetre, edge)]),
        of("pin-width-off", vec![size(pin_size::LIVE_WIDTH, 6.0), size(pin_size::EARTH_WIDTH, 9.0)]),
        of("pin-thickness-off", vec![size(pin_size::THICKNESS, 3.0)]),
        of("pin-spacing-off", vec![size(pin_size::ACROSS, 20.0), size(pin_size::EARTH_TO_FAR_SIDE, 24.0)]),
    ]
}

/// Pixels of a millimetre, while the plug is not too wide for it.
const SCALE: f64 = 5.0;

#[test]
fn pins_have_the_sizes_and_distances_that_were_measured() {
    let picture = plug_face(&measured()).expect("there is something to draw");
    let (x, y) = (all(&picture.svg, "pin", "x"), all(&picture.svg, "pin", "y"));
    let (wide, high) = (all(&picture.svg, "pin", "width"), all(&picture.svg, "pin", "height"));
    let pin = |n: usize| (x[n] + wide[n] / 2.0, y[n] + high[n] / 2.0, wide[n], high[n]);
    let (line, neutral, earth) = (pin(0), pin(1), pin(2));
    near("lower pins, across", line.2, 6.0 * SCALE);
    near("lower pins, up", line.3, 3.0 * SCALE);
    near("earth pin, across", earth.2, 3.0 * SCALE);
    near("earth pin, up", earth.3, 9.0 * SCALE);
    near("line to neutral", neutral.0 - line.0, 20.0 * SCALE);
    near("line and neutral on one level", line.1, neutral.1);
    near("earth above them", line.1 - earth.1, 24.0 * SCALE);
    near("earth half way between", earth.0, f64::midpoint(line.0, neutral.0));
}

#[test]
fn the_edge_stands_where_it_was_measured_and_the_limit_beyond_it() {
    let svg = plug_face(&measured()).expect("there is something to draw").svg;
    // The neutral pin ends 10 mm + 3 mm right of the middle; the edge is 8 mm further, the limit 9.5 mm.
    let middle = 358.0 / 2.0;
    let (_, outline) = svg.split_once("class=\"s\" d=\"M").expect("there is an outline");
    let outline = outline.split('z').next().unwrap_or_default();
    let rightmost = outline.split(" L").filter_map(|point| point.split_once(' ')?.0.parse().ok()).fold(0.0, f64::max);
    assert!((rightmost - (middle + 21.0 * SCALE)).abs() < 0.06, "{rightmost}");
    near("the limit", all(&svg, "dash", "x1")[0], middle + 22.5 * SCALE);
}

#[test]
fn what_the_limits_allow_is_drawn_at_its_own_place() {
    let svg = plug_face(&measured()).expect("there is something to draw").svg;
    let (x, wide) = (all(&svg, "allowed-line", "x"), all(&svg, "allowed-line", "width"));
    // The least and the largest lower pin: 6.22 mm and 6.48 mm; between middles 22.23 mm, the middle of 22.10 mm and 22.36 mm.
    near("least", wide[0], 6.22 * SCALE);
    near("largest", wide[1], 6.48 * SCALE);
    near("line", x[0] + wide[0] / 2.0, 358.0 / 2.0 - 22.23 / 2.0 * SCALE);
    near("neutral", x[2] + wide[2] / 2.0, 358.0 / 2.0 + 22.23 / 2.0 * SCALE);
}

#[test]
fn every_size_has_a_letter_and_a_note_with_its_doubt_and_its_limit() {
    let picture = plug_face(&measured()).expect("there is something to draw");
    for letter in ["a", "b", "c", "d", "e", "f"] {
        assert!(picture.svg.contains(&format!(">{letter}</text>")), "{letter} is drawn");
        let note = picture.notes.iter().find(|note| note.starts_with(&format!("{letter}: "))).expect("and noted");
        assert!(note.contains('±') && (note.contains("allowed") || note.contains("wanted")), "{note}");
    }
}

#[test]
fn a_plug_that_nobody_measured_has_no_picture() {
    assert_eq!(plug_face(&[]), None);
    let seen = finding("pin-near-edge", Reason::CouldNotTell, Vec::new());
    assert!(!is_on_plug_face(&seen));
    assert_eq!(plug_face(&[seen]), None);
}
