//! Values of the fact sheets that no limit shows: numbers of models, and what stands beside a limit in its table.

use plugwary::domain::decision::Limit;
use plugwary::domain::quantity::{Measurand, degrees_celsius};
use plugwary::domain::quantity::{amperes, metres, millimetres, ohms, square_millimetres, volts};
use plugwary::domain::standard::adiabatic::{Melts, Withstand};
use plugwary::domain::standard::cord_type::RatedVoltage;
use plugwary::domain::standard::{
    Provenance, awg, bs1362, bs7671_shock, en50678, gtin, hd361, iec60228, iec60320, iec60335_1, iec60479, iso13528,
    marks, practice,
};
use uom::si::ratio::ratio;

#[track_caller]
fn near(found: f64, wanted: f64, within: f64) {
    assert!((found - wanted).abs() <= within, "expected {wanted}, got {found}");
}

/// What is only weakly remembered is shown and decides nothing; every other way that a value came to us may.
#[test]
fn a_weak_memory_decides_nothing() {
    use Provenance::{CommonPractice, Derived, MemoryHigh, MemoryLow, MemoryMedium, Read, ReadNominal};
    assert!(!MemoryLow.may_decide());
    assert!(
        [Read, ReadNominal, Derived, MemoryHigh, MemoryMedium, CommonPractice].into_iter().all(Provenance::may_decide)
    );
}

/// BS 1362, time and current (read): A, s, s. Of a 3 A fuse the last two only say by when it has opened. A reader of the standard says
/// that other ratings have zones too and that drawn curves are examples.
#[test]
fn gates_of_a_fuse_are_as_printed() {
    assert_eq!(bs1362::GATES_OF_3_A, [(9.0, 0.02, 80.0), (20.0, 0.0, 0.1), (30.0, 0.0, 0.03)]);
    assert_eq!(bs1362::GATES_OF_13_A, [(30.0, 1.0, 400.0), (50.0, 0.1, 20.0), (100.0, 0.01, 0.2)]);
}

/// ISO 13528 (read in secondary copies): beyond 1, a difference is more than the doubt of both results explains.
#[test]
fn the_line_of_the_normalised_error_is_one() {
    near(iso13528::LINE, 1.0, 0.0);
    assert_eq!(iso13528::NORMALISED_ERROR.provenance, Provenance::Read);
}

/// Ours: what a display without a number is taken to be at least, where two are compared.
#[test]
fn no_path_is_a_megohm_or_more() {
    assert_eq!(practice::no_path(), ohms(1_000_000.0));
}

/// BS 1362 (read): 1.9 times its rating opens a fuse, 5.7 A and 24.7 A.
#[test]
fn a_fuse_opens_at_nineteen_tenths_of_its_rating() {
    assert_eq!(bs1362::fusing_current(amperes(3.0)), amperes(5.7));
    assert_eq!(bs1362::fusing_current(amperes(13.0)), amperes(24.7));
}

/// BS 1362 (read): links of 3 A, 5 A, 10 A and 13 A are in use; each carries its own rating, and more than 13 A has none.
#[test]
fn the_smallest_fuse_for_a_current_is_the_next_rating() {
    for (current, fuse) in [
        (0.5, 3.0),
        (3.0, 3.0),
        (3.01, 5.0),
        (5.0, 5.0),
        (5.01, 10.0),
        (10.0, 10.0),
        (10.01, 13.0),
        (13.0, 13.0),
        (16.0, 13.0),
    ] {
        assert_eq!(bs1362::smallest_rating_for(amperes(current)), amperes(fuse), "{current} A");
    }
}

/// BS 7671 Tables 41.2(d) and 41.4(d) (read). The currents that follow, 218.5 V over the loop, are 14.0 A and 9.93 A, 95.0 A and 60.0 A
/// (derived).
#[test]
fn loops_of_a_fuse_are_as_printed() {
    for (fuse, soon, late, soon_current, late_current) in
        [(3.0, 15.6, 22.0, 14.0, 9.93), (13.0, 2.30, 3.64, 95.0, 60.0)]
    {
        assert_eq!(bs7671_shock::loop_for_0_4_s(amperes(fuse)), Some(ohms(soon)));
        assert_eq!(bs7671_shock::loop_for_5_s(amperes(fuse)), Some(ohms(late)));
        let current = |of: f64| 0.95 * bs7671_shock::nominal_voltage().base() / of;
        near(current(soon), soon_current, 0.05);
        near(current(late), late_current, 0.05);
    }
    assert_eq!(bs7671_shock::loop_for_5_s(amperes(5.0)), None);
    assert_eq!(bs7671_shock::largest_loop(), ohms(22.0));
}

/// BS 7671 Table 54.3 (copper read, the others memory-high), from 70 °C to 160 °C; the closed form gives 114.8, 76.1 and 41.8 (derived).
#[test]
fn constants_of_a_core_inside_a_flex_agree_with_the_closed_form() {
    for (metal, printed, wanted, exact) in [
        (Melts::Copper, Withstand::COPPER_IN_FLEX, 115.0, 114.8),
        (Melts::Aluminium, Withstand::ALUMINIUM_IN_FLEX, 76.0, 76.1),
        (Melts::Steel, Withstand::STEEL_IN_FLEX, 42.0, 41.8),
    ] {
        near(printed.in_printed_unit(), wanted, 0.0);
        let between = Withstand::between(metal, degrees_celsius(70.0), degrees_celsius(160.0));
        near(between.in_printed_unit(), exact, 0.05);
    }
}

/// EN 50678 (read): 0.3 Ω up to 5 m, 0.1 Ω more for each 7.5 m or part of them, 1 Ω at the most; 3 m is 0.3 Ω.
#[test]
fn the_earth_limit_of_the_continent_goes_up_in_steps() {
    for (length, limit) in [(3.0, 0.3), (5.0, 0.3), (5.01, 0.4), (12.5, 0.4), (12.51, 0.5), (57.5, 1.0), (90.0, 1.0)] {
        near(en50678::protective_conductor(metres(length)).base(), limit, 1e-12);
    }
}

/// IEC 60335-1 Table 11 (read): up to so many A, mm² up to 2 m, mm² at any length. 0.5 mm² is for 2 m at the most.
#[test]
fn supply_cords_of_appliances_are_as_printed() {
    for (current, short, any) in
        [(3.0, 0.5, 0.75), (6.0, 0.75, 0.75), (10.0, 0.75, 1.0), (16.0, 1.0, 1.5), (25.0, 2.5, 2.5)]
    {
        let least = iec60335_1::least_area(amperes(current)).expect("the table has the row");
        assert_eq!((least.short, least.any_length), (square_millimetres(short), square_millimetres(any)));
    }
    for (beyond, short, any) in [(3.01, 0.75, 0.75), (6.01, 0.75, 1.0), (10.01, 1.0, 1.5), (16.01, 2.5, 2.5)] {
        let least = iec60335_1::least_area(amperes(beyond)).expect("the next row");
        assert_eq!((least.short, least.any_length), (square_millimetres(short), square_millimetres(any)));
    }
    assert_eq!(iec60335_1::least_area(amperes(25.01)), None);
}

/// IEC 60320-1 (read): the number of a connector is that of its inlet less one.
#[test]
fn connectors_carry_what_their_sheets_say() {
    let sheets = [
        (1, 0.2),
        (5, 2.5),
        (7, 2.5),
        (9, 6.0),
        (13, 10.0),
        (15, 10.0),
        (17, 10.0),
        (19, 16.0),
        (21, 16.0),
        (23, 16.0),
    ];
    for (sheet, current) in sheets {
        assert_eq!(iec60320::rating(sheet), Some(amperes(current)), "C{sheet}");
        assert_eq!(iec60320::rating(sheet + 1), None, "C{} is an inlet", sheet + 1);
    }
}

/// IEC 60479-1: line a 0.5 mA (read); line b 5 mA after ten seconds and line c1 about 40 mA (memory-medium).
#[test]
fn lines_of_current_lie_in_their_order() {
    assert_eq!(iec60479::line_a(), amperes(0.5e-3));
    assert_eq!(iec60479::line_b(), amperes(5e-3));
    assert_eq!(iec60479::line_c1(), amperes(40e-3));
}

/// CE (Regulation 765/2008 Annex II, memory-high): 2.8 wide and 2.0 high, 1.40; the gap is 30 % of the height.
#[test]
fn the_drawing_of_ce_has_its_proportions() {
    let drawn = marks::ce_proportions();
    let parts = [drawn.inner_radius, drawn.between_centres, drawn.gap, drawn.width, drawn.height];
    for (part, wanted) in parts.into_iter().zip([0.7, 1.7, 0.6, 2.8, 2.0]) {
        near(part.get::<ratio>(), wanted, 1e-12);
    }
    near((drawn.width / drawn.height).get::<ratio>(), 1.40, 1e-12);
    near((drawn.gap / drawn.height).get::<ratio>(), 0.30, 1e-12);
    // The circle of C, made whole, touches E's inner circle: 1.7 - 0.7 is C's outer radius.
    near((drawn.between_centres - drawn.inner_radius).get::<ratio>(), 1.0, 1e-12);
    assert_eq!(marks::bin_height(), Limit::AtLeast(millimetres(5.0)));
}

/// IEC 60228, usual builds of class 5 (read): their area is near the nominal one.
#[test]
fn usual_builds_of_flex_have_about_their_area() {
    for (area, wires, wire) in
        [(0.5, 16, 0.20), (0.75, 24, 0.20), (1.0, 32, 0.20), (1.5, 30, 0.25), (2.5, 50, 0.25), (4.0, 56, 0.30)]
    {
        assert_eq!(iec60228::class5_usual_build(square_millimetres(area)), Some((wires, millimetres(wire))));
        near(f64::from(wires) * wire * wire * core::f64::consts::FRAC_PI_4 / area, 1.0, 0.02);
    }
    assert_eq!(iec60228::class5_usual_build(square_millimetres(1.25)), None);
}

/// ASTM B258: 20 AWG 0.518 mm², 18 AWG 0.823 mm² (read), 17 1.038, 16 1.309, 14 2.081 (derived).
#[test]
fn wire_gauges_have_their_areas() {
    for (gauge, area) in [(20, 0.518), (18, 0.823), (17, 1.038), (16, 1.309), (14, 2.081)] {
        near(awg::area(gauge).expect("the gauge is one of flex").base() * 1e6, area, 0.0005);
    }
}

/// GS1 (read): the check digit of 629104150021 is 3; 890400021003 gives 7, 730001100001 gives 7, 03600024145 gives 7.
#[test]
fn check_digits_are_those_of_the_published_examples() {
    for (digits, check) in [("629104150021", 3), ("890400021003", 7), ("730001100001", 7), ("03600024145", 7)] {
        let digits: Vec<u8> = digits.bytes().map(|digit| digit - b'0').collect();
        assert_eq!(gtin::gtin_check_digit(&digits), check);
    }
}

/// A letter is no digit, whatever it is worth in other systems of numbers; 4006381333931 is the usual example of GS1 (read).
#[test]
fn a_number_with_a_letter_is_no_number() {
    assert_eq!(gtin::is_valid("4 006381 333931"), Some(true));
    for printed in ["400638133393a", "40063813339A1", "400638133393", "40063813339312"] {
        assert_ne!(gtin::is_valid(printed), Some(true), "{printed}");
    }
    assert_eq!(gtin::is_valid("400638133393a"), None);
}

/// HD 361, rated voltages (read; 600/1000 V memory-medium): core to earth, core to core. UL 62 gives one figure, 300 V (read).
#[test]
fn codes_of_voltage_have_their_two_figures() {
    use hd361::VoltageCode::{Below300, V300V300, V300V500, V450V750, V600V1000};
    for (code, to_earth, to_core) in
        [(V300V300, 300.0, 300.0), (V300V500, 300.0, 500.0), (V450V750, 450.0, 750.0), (V600V1000, 600.0, 1000.0)]
    {
        assert_eq!(code.voltages(), Some((volts(to_earth), volts(to_core))));
    }
    assert_eq!(Below300.voltages(), None);
    assert_eq!(RatedVoltage::V300.voltages(), Some((volts(300.0), volts(300.0))));
}

/// IEC 60228 Table 3 (read) begins at 0.5 mm², and the law of Annex A would cross nought at -230 °C: what is colder than -100 °C counts as
/// that, 1/(1 - 0.004 × 120) = 1.923.
#[test]
fn the_smallest_flex_and_the_coldest_room_are_where_the_law_ends() {
    assert_eq!(iec60228::class5_smallest(), square_millimetres(0.5));
    assert_eq!(iec60228::class5_sizes().next(), Some(iec60228::class5_smallest()));
    for celsius in [-100.0, -150.0, -270.0] {
        near(iec60228::factor(degrees_celsius(celsius)).get::<ratio>(), 1.923, 0.0005);
    }
}
