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

#[test]
fn gauges_of_no_flex_have_no_area() {
    assert_eq!((awg::area(3), awg::area(41)), (None, None));
}
