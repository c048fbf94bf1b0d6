//! American wire gauge against the formula of ASTM B258 and published areas.

use plugwary::domain::quantity::{Amount, Measurand, Unit};
use plugwary::domain::standard::awg;

/// 18 AWG = 0.823 mm² is published; the others follow from d = 0.127 mm × 92^((36-n)/39) and were worked out apart from this code.
#[test]
fn gauges_have_their_published_areas() {
    for (gauge, square_millimetres) in [(20, 0.518), (18, 0.823), (17, 1.038), (16, 1.309), (14, 2.081)] {
        let area =
            awg::area(gauge).and_then(|area| area.amount().in_unit(Unit::SquareMillimetre)).expect("a gauge of flexes");
        assert!((area - square_millimetres).abs() < 0.0005, "{gauge} AWG: expected {square_millimetres}, got {area}");
    }
}

/// By definition No. 36 is 0.005 inch thick and No. 0000, outside our gauges, 0.46 inch: 39 steps of one ratio.
#[test]
fn number_36_is_five_thousandths_of_an_inch() {
    let expected = Amount::new(core::f64::consts::PI / 4.0 * 0.127 * 0.127, Unit::SquareMillimetre);
    let area = awg::area(36).expect("a gauge of wires").amount();
    let difference =
        area.in_unit(Unit::SquareMillimetre).zip(expected.in_unit(Unit::SquareMillimetre)).map(|(a, b)| a - b);
    assert!(difference.is_some_and(|difference| difference.abs() < 1e-9));
}

/// A step of the gauge is a factor of 92^(2/39) = 1.261 in area; from half a step thinner to half a step thicker 18 AWG spans
/// 0.823 mm² × (1.261^½ - 1.261^-½) = 0.191 mm².
#[test]
fn a_gauge_is_known_to_half_a_step() {
    let step = awg::step(18).and_then(|step| step.amount().in_unit(Unit::SquareMillimetre)).expect("a gauge of flexes");
    assert!((step - 0.1913).abs() < 0.0002, "{step}");
    assert_eq!((awg::step(3), awg::step(41)), (None, None));
}

#[test]
fn gauges_of_no_flex_have_no_area() {
    assert_eq!((awg::area(3), awg::area(41)), (None, None));
}
