//! Two faces over each other in true proportion, told apart without colour.

use plugwary::domain::check::plug::pin_size;
use plugwary::domain::finding::{Bound, Finding, Reason};
use plugwary::domain::quantity::{Amount, Unit};
use plugwary::domain::question::{Question, Target};
use plugwary::drawing::found::plug_faces;

use crate::pictures::{all, evidence, finding, near};

fn width(question: &'static Question, value: f64) -> Vec<Finding> {
    let limit = Bound::AtLeast(Amount::new(1.0, Unit::Millimetre));
    let evidence = evidence(Target::Sample, value, 0.01, Unit::Millimetre, limit).of(question);
    vec![finding("pin-width-off", Reason::Measured, vec![evidence])]
}

#[test]
fn the_sample_is_drawn_through_and_the_known_good_dashed_each_with_its_own_sizes() {
    let (sample, known_good) = (width(pin_size::EARTH_WIDTH, 7.0), width(pin_size::EARTH_WIDTH, 8.0));
    let picture = plug_faces(&sample, &known_good).expect("both were measured");
    // Line, neutral, earth, five pixels to the millimetre.
    near("the sample’s earth pin", all(&picture.svg, "s", "height")[2], 7.0 * 5.0);
    near("the known good’s", all(&picture.svg, "dash", "height")[2], 8.0 * 5.0);
    let middle = |class| all(&picture.svg, class, "y")[2] + all(&picture.svg, class, "height")[2] / 2.0;
    near("their middles", middle("s"), middle("dash"));
    assert_eq!(picture.svg.matches("<path class=\"s\"").count(), 1);
    assert_eq!(picture.svg.matches("<path class=\"dash\"").count(), 1);
}

#[test]
fn a_text_says_what_is_drawn_with_every_size_of_either() {
    let (sample, known_good) = (width(pin_size::EARTH_WIDTH, 7.0), width(pin_size::LIVE_WIDTH, 6.3));
    let picture = plug_faces(&sample, &known_good).expect("both were measured");
    let notes = picture.notes.join("\n").replace('\u{a0}', " ");
    assert!(
        notes.contains("Width of the earth pin: the sample 7.000 mm ± 0.020 mm, the known good not measured."),
        "{notes}"
    );
    assert!(notes.contains("Width of the lower pins: the sample not measured, the known good 6.300 mm"), "{notes}");
    assert!(picture.svg.contains("aria-label=\"The pin sides of two plugs over each other"), "{}", picture.svg);
}

#[test]
fn where_one_was_not_measured_there_is_nothing_to_hold_against_each_other() {
    let measured = width(pin_size::EARTH_WIDTH, 7.0);
    assert_eq!(plug_faces(&measured, &[]), None);
    assert_eq!(plug_faces(&[], &measured), None);
}
