//! The adiabatic law: printed constants, closed form, melting.

use plugwary::domain::quantity::{Measurand, amperes, degrees_celsius, square_millimetres};
use plugwary::domain::standard::adiabatic::{Melts, Withstand};
use uom::si::f64::Time;
use uom::si::time::second;

use crate::near::{near, prints};

/// BS 7671 Tables 43.1 and 54.2 to 54.4: metal, start and end in °C, printed constant (read, but 76 and 42 memory-high), and the closed
/// form's value (derived). The closed form meets every printed constant within 0.6.
#[test]
fn the_closed_form_gives_the_printed_constants() {
    let rows = [
        (Melts::Copper, 70.0, 160.0, 115.0, "114.8"),
        (Melts::Copper, 30.0, 160.0, 143.0, "142.7"),
        (Melts::Copper, 60.0, 200.0, 141.0, "140.7"),
        (Melts::Copper, 90.0, 250.0, 143.0, "142.9"),
        (Melts::Copper, 90.0, 160.0, 100.0, "99.7"),
        (Melts::Aluminium, 70.0, 160.0, 76.0, "76.1"),
        (Melts::Aluminium, 30.0, 160.0, 95.0, "94.6"),
        (Melts::Steel, 30.0, 160.0, 52.0, "52.2"),
        (Melts::Steel, 70.0, 160.0, 42.0, "41.8"),
    ];
    for (metal, start, end, printed, derived) in rows {
        let k = Withstand::between(metal, degrees_celsius(start), degrees_celsius(end)).in_printed_unit();
        near("printed constant", k, printed, 0.6);
        prints("closed form", k, 1, derived);
    }
}

/// From 20 °C to melting: copper 289, aluminium 167, steel 111 (derived; steel's melting point is memory-medium).
#[test]
fn constants_up_to_melting() {
    for (metal, expected) in [(Melts::Copper, 289.0), (Melts::Aluminium, 167.0), (Melts::Steel, 111.0)] {
        let k = Withstand::between(metal, degrees_celsius(20.0), metal.melts_at()).in_printed_unit();
        near("to melting", k, expected, 0.5);
    }
}

/// Worked answers of the wiring rules' guides (read): amperes, seconds, constant, mm².
#[test]
fn least_areas_are_as_worked() {
    let rows = [
        (3000.0, 0.4, 115.0, 3, "16.499"),
        (3200.0, 0.1, 115.0, 3, "8.799"),
        (100.0, 0.2, 115.0, 3, "0.389"),
        (95.0, 0.4, 115.0, 3, "0.522"),
        (95.0, 0.4, 143.0, 3, "0.420"),
        // By hand: 100 A × √0.01 s / 115 = 10/115; and no time at all asks for no area.
        (100.0, 0.01, 115.0, 3, "0.087"),
        (100.0, 0.0, 115.0, 3, "0.000"),
        (100.0, -1.0, 115.0, 3, "0.000"),
    ];
    for (current, time, k, digits, printed) in rows {
        let area = Withstand::printed(k).least_area(amperes(current), Time::new::<second>(time));
        prints("mm²", area.base() * 1e6, digits, printed);
    }
    let with_tenth_more = 1.1 * Withstand::printed(115.0).least_area(amperes(3200.0), Time::new::<second>(0.1));
    prints("with 10 % more current", with_tenth_more.base() * 1e6, 3, "9.679");
}

#[test]
fn time_and_area_belong_together() {
    let k = Withstand::printed(115.0);
    let time = k.time(square_millimetres(1.5), amperes(200.0));
    near("mm²", k.least_area(amperes(200.0), time).base() * 1e6, 1.5, 1e-9);
}

#[test]
fn cooling_down_takes_no_energy() {
    let k = Withstand::between(Melts::Copper, degrees_celsius(160.0), degrees_celsius(70.0));
    near("k", k.in_printed_unit(), 0.0, 1e-12);
}
