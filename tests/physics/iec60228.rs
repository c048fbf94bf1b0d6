//! IEC 60228: the printed limits, the size that is not in them, and the temperature factors.

use plugwary::domain::quantity::{Measurand, degrees_celsius, metres, ohms, square_millimetres};
use plugwary::domain::standard::bs7671_flex;
use plugwary::domain::standard::iec60228::{
    Coating, class1_and_2_maximum, class5_maximum, class5_thickest_strand, class6_thickest_strand, factor,
    printed_factor,
};
use uom::si::ratio::ratio;

use crate::near::{near, near_part, prints};

/// mm², class 1 and 2 plain and coated, class 5 plain and coated.
type Row = (f64, Option<(f64, f64)>, (f64, f64));

/// IEC 60228 Tables 1 to 3 (read; 1.25 mm² memory-medium).
const MAXIMA: [Row; 7] = [
    (0.5, Some((36.0, 36.7)), (39.0, 40.1)),
    (0.75, Some((24.5, 24.8)), (26.0, 26.7)),
    (1.0, Some((18.1, 18.2)), (19.5, 20.0)),
    (1.25, None, (15.6, 16.1)),
    (1.5, Some((12.1, 12.2)), (13.3, 13.7)),
    (2.5, Some((7.41, 7.56)), (7.98, 8.21)),
    (4.0, Some((4.61, 4.70)), (4.95, 5.09)),
];

#[test]
fn every_printed_maximum_is_found() {
    let per_km = |maximum: Option<plugwary::domain::quantity::ResistancePerLength>| maximum.map(|r| r.base() * 1e3);
    for (area, solid, (plain, coated)) in MAXIMA {
        let size = square_millimetres(area);
        near("class 5 plain", per_km(class5_maximum(size, Coating::Plain)).unwrap(), plain, 1e-9);
        near("class 5 coated", per_km(class5_maximum(size, Coating::Coated)).unwrap(), coated, 1e-9);
        let found = [Coating::Plain, Coating::Coated].map(|coating| per_km(class1_and_2_maximum(size, coating)));
        match solid {
            Some((plain, coated)) => {
                near("class 1 and 2 plain", found[0].unwrap(), plain, 1e-9);
                near("class 1 and 2 coated", found[1].unwrap(), coated, 1e-9);
            }
            None => assert_eq!(found, [None, None], "1.25 mm² is no size of classes 1 and 2"),
        }
    }
}

#[test]
fn a_size_that_is_not_printed_has_no_maximum() {
    for area in [0.4, 0.82, 1.252, 16.0, 0.0, -1.5, f64::NAN] {
        assert_eq!(class5_maximum(square_millimetres(area), Coating::Coated), None, "{area} mm²");
    }
}

/// The rule behind 1.25 mm² (derived): 19.5 Ω·mm²/km from 0.5 mm² to 1.25 mm².
#[test]
fn the_british_size_follows_the_rule_of_its_neighbours() {
    for (area, _, (plain, _)) in MAXIMA.into_iter().filter(|row| row.0 <= 1.25) {
        near_part("resistance times area", area * plain, 19.5, 1e-9);
    }
}

/// A conductor that just keeps its limit has less copper than its name says: class 5 maximum times nominal over 0.017241 is 1.131
/// to 1.25 mm² and 1.157 at 1.5 mm² and 2.5 mm² (derived).
#[test]
fn the_limit_carries_an_allowance_of_13_to_16_percent() {
    for (area, _, (plain, _)) in MAXIMA.into_iter().filter(|row| row.0 <= 2.5) {
        let allowance = plain * area / 17.241;
        near("allowance", allowance, if area <= 1.25 { 1.131 } else { 1.157 }, 0.0007);
    }
}

/// IEC 60228 Tables 3 and 4: thickest strands (class 5 read, class 6 memory-high).
#[test]
fn thickest_strands_are_as_printed() {
    let sizes = [(0.5, 0.21), (0.75, 0.21), (1.0, 0.21), (1.25, 0.21), (1.5, 0.26), (2.5, 0.26), (4.0, 0.31)];
    for (area, class_5) in sizes {
        let size = square_millimetres(area);
        near("class 5", class5_thickest_strand(size).unwrap().base() * 1e3, class_5, 1e-9);
        near("class 6", class6_thickest_strand(size).unwrap().base() * 1e3, 0.16, 1e-9);
    }
}

/// IEC 60228 Annex A (read).
#[test]
fn the_law_of_the_factors_gives_every_printed_digit() {
    let printed = [
        (5.0, "1.064"),
        (10.0, "1.042"),
        (15.0, "1.020"),
        (20.0, "1.000"),
        (25.0, "0.980"),
        (30.0, "0.962"),
        (35.0, "0.943"),
        (40.0, "0.926"),
        (50.0, "0.893"),
        (60.0, "0.862"),
        (70.0, "0.833"),
    ];
    for (celsius, printed) in printed {
        let at = degrees_celsius(celsius);
        prints("printed", printed_factor(at).unwrap().get::<ratio>(), 3, printed);
        prints("law", factor(at).get::<ratio>(), 3, printed);
    }
    assert_eq!(printed_factor(degrees_celsius(22.0)), None);
}

/// Worked with the printed factor (derived): 10 m of 1.0 mm² at 0.198 Ω keeps its limit at 25 °C and breaks it at 20 °C; 0.199 Ω
/// at 25 °C is 19.502 Ω/km, just over. The law gives 19.412 where the printed factor gives 19.404; the checks use the law.
#[test]
fn temperature_can_decide_a_reading() {
    let per_km = |reading: f64, celsius: f64| {
        let r20 = ohms(reading) * printed_factor(degrees_celsius(celsius)).unwrap();
        (r20 / metres(10.0)).base() * 1e3
    };
    prints("0.198 Ω at 25 °C", per_km(0.198, 25.0), 2, "19.40");
    prints("0.198 Ω at 20 °C", per_km(0.198, 20.0), 2, "19.80");
    prints("0.199 Ω at 25 °C", per_km(0.199, 25.0), 3, "19.502");
    let by_law = |reading: f64| (ohms(reading) * factor(degrees_celsius(25.0)) / metres(10.0)).base() * 1e3;
    assert!(by_law(0.198) <= 19.5 && by_law(0.199) > 19.5, "both laws decide alike");
}

/// BS 7671 Table 4F3B (read) follows from the coated maxima at 60 °C, out and back; 0.5 mm² to 4 mm², mV/A/m to the rounding of
/// the table.
#[test]
fn volt_drops_of_the_wiring_rules_follow_from_the_maxima() {
    let warm = 1.0 + 0.00393 * 40.0;
    for (area, _, (_, coated)) in MAXIMA {
        let printed = bs7671_flex::volt_drop(square_millimetres(area)).unwrap().base() * 1e3;
        near("mV/A/m", 2.0 * coated * warm, printed, 0.5);
    }
    let printed = [93.0, 62.0, 46.0, 37.0, 32.0, 19.0, 12.0];
    for ((area, _, _), printed) in MAXIMA.into_iter().zip(printed) {
        near("Table 4F3B", bs7671_flex::volt_drop(square_millimetres(area)).unwrap().base() * 1e3, printed, 1e-9);
    }
}

/// Sums of the trade (read): 3 m of 1.0 mm² and contacts of 0.1 Ω make 0.16 Ω; 50 m of 1.5 mm² flex 1.33 Ω out and back; 20 m of
/// 1.5 mm² 0.27 Ω and of 2.5 mm² 0.16 Ω. 15 m of 1.5 mm² twin and earth, 0.36 Ω out and back, is solid: 2 × 12.1 Ω/km.
#[test]
fn known_lengths_have_their_known_resistance() {
    let limit = |area: f64, length: f64| {
        (class5_maximum(square_millimetres(area), Coating::Plain).unwrap() * metres(length)).base()
    };
    prints("3 m of 1.0 mm² and 0.1 Ω", limit(1.0, 3.0) + 0.1, 2, "0.16");
    prints("50 m of 1.5 mm², two cores", 2.0 * limit(1.5, 50.0), 2, "1.33");
    let solid = class1_and_2_maximum(square_millimetres(1.5), Coating::Plain).unwrap();
    prints("15 m of solid 1.5 mm², two cores", 2.0 * (solid * metres(15.0)).base(), 2, "0.36");
    prints("20 m of 1.5 mm²", limit(1.5, 20.0), 2, "0.27");
    prints("20 m of 2.5 mm²", limit(2.5, 20.0), 2, "0.16");
}
