//! Print as the trade prints it, and what is understood of it.

use plugwary::domain::marking::{Claims, Covering, Duty, Family, FlexPrint, Rating};
use plugwary::domain::quantity::{Amount, Measurand, QuantityKind, Unit, amperes, square_millimetres, watts};
use plugwary::domain::question::ClaimPlace;
use proptest::prelude::*;

fn value<Q: Measurand>(quantity: Q, unit: Unit) -> f64 {
    quantity.amount().in_unit(unit).expect("the unit fits the quantity")
}

/// Lowest volts, highest volts, amperes, watts: NaN stands for "not stated".
#[track_caller]
fn check_rating(printed: &str, expected: [Option<f64>; 4]) {
    let rating = Rating::parse(printed);
    let found = [
        rating.voltage.map(|(low, _)| value(low.value, Unit::Volt)),
        rating.voltage.map(|(_, high)| value(high.value, Unit::Volt)),
        rating.current.map(|c| value(c.value, Unit::Ampere)),
        rating.power.map(|p| value(p.value, Unit::Watt)),
    ];
    assert_eq!(found, expected, "{printed}");
}

#[test]
fn ratings_are_read_as_they_are_printed() {
    check_rating("13A 250V~", [Some(250.0), Some(250.0), Some(13.0), None]);
    check_rating("10 A 250V~ 2500W MAX", [Some(250.0), Some(250.0), Some(10.0), Some(2500.0)]);
    check_rating("220-240V 50/60Hz", [Some(220.0), Some(240.0), None, None]);
    check_rating("AC250V 10A", [Some(250.0), Some(250.0), Some(10.0), None]);
    check_rating("10A/250V", [Some(250.0), Some(250.0), Some(10.0), None]);
    check_rating("MAX. LOAD 3120W", [None, None, None, Some(3120.0)]);
    check_rating("3,250 W", [None, None, None, Some(3250.0)]);
    check_rating("3.25kW", [None, None, None, Some(3250.0)]);
    check_rating("Rated 13 Amp 230 volts", [Some(230.0), Some(230.0), Some(13.0), None]);
    check_rating("", [None; 4]);
}

#[test]
fn a_power_is_a_maximum_only_where_it_says_so() {
    assert!(Rating::parse("2500W MAX").power_is_maximum);
    assert!(Rating::parse("MAX 3120W").power_is_maximum);
    assert!(!Rating::parse("2500W").power_is_maximum);
}

#[test]
fn a_current_that_is_a_total_counts_before_a_higher_one() {
    let rating = Rating::parse("each socket 13A, TOTAL 10A");
    assert_eq!(rating.current.map(|c| c.value), Some(amperes(10.0)));
}

#[test]
fn the_rating_of_a_fuse_is_not_that_of_the_product() {
    let rating = Rating::parse("10A 250V~ FUSE 13A BS1362");
    assert_eq!(rating.current.map(|c| c.value), Some(amperes(10.0)));
    assert_eq!(rating.fuse.map(|c| c.value), Some(amperes(13.0)));
    let fused = Rating::parse("FUSED 13A");
    assert_eq!((fused.current, fused.fuse.map(|c| c.value)), (None, Some(amperes(13.0))));
}

#[test]
fn an_output_below_mains_voltage_is_not_the_rating() {
    let rating = Rating::parse("250V~ 13A; USB output 5V 2.1A");
    assert_eq!(rating.current.map(|c| c.value), Some(amperes(13.0)));
    assert!(rating.has_output);
    let first = Rating::parse("OUTPUT 5V 3A\n250V 10A");
    assert_eq!(first.current.map(|c| c.value), Some(amperes(10.0)));
}

#[test]
fn length_and_size_are_read_where_they_are_printed() {
    let rating = Rating::parse("2m 3G1.25mm2");
    assert_eq!(rating.length.map(|l| value(l.value, Unit::Metre)), Some(2.0));
    assert_eq!(rating.area.map(|a| a.value), Some(square_millimetres(1.25)));
    assert_eq!(rating.cores, Some((3, Some(true))));
    let other = Rating::parse("1,5 metres, 3 x 0,75 mm²");
    assert_eq!(other.length.map(|l| value(l.value, Unit::Metre)), Some(1.5));
    assert_eq!(other.area.map(|a| a.value), Some(square_millimetres(0.75)));
}

#[test]
fn what_cannot_be_read_is_kept_as_it_was_printed() {
    assert_eq!(Rating::parse("Sparkle-O 13A").unread, ["Sparkle-O"]);
    assert_eq!(Rating::parse("zzz").unread, ["zzz"]);
}

/// 250 V × 10 A = 2500 W is a maker's maximum (common practice without a published source); the digits allow a little more.
#[test]
fn a_makers_maximum_is_allowed_by_its_own_volts_and_amperes() {
    let rating = Rating::parse("10A 250V~ 2500W MAX");
    assert!(rating.watts_allowed().is_some_and(|most| most >= watts(2500.0)));
    let too_much = Rating::parse("10A 220-240V 3000W MAX");
    assert!(too_much.watts_allowed().is_some_and(|most| most < watts(3000.0)));
}

/// HD 361 S3 as read in secondary copies: code, duty, sheath, U0/U, cores, earth, size.
#[test]
fn harmonised_designations_are_read() {
    let flex = FlexPrint::parse("H05VV-F 3G1.5 mm² <HAR>");
    let kind = flex.kind.clone().expect("the type is known");
    assert_eq!((kind.family, kind.duty, kind.sheath), (Family::Hd361, Duty::Ordinary, Covering::Pvc));
    assert_eq!((flex.cores, flex.has_earth, flex.voltages), (Some(3), Some(true), Some((300, 500))));
    assert_eq!(flex.area, Some(square_millimetres(1.5)));
    assert_eq!(flex.origin_marks, ["HAR"]);

    let flat = FlexPrint::parse("H03VVH2-F 2X0.75");
    let kind = flat.kind.expect("the type is known");
    assert_eq!((kind.duty, kind.is_flat, flat.has_earth), (Duty::Light, true, Some(false)));

    let rubber = FlexPrint::parse("H07RN-F 3G2.5");
    let kind = rubber.kind.expect("the type is known");
    assert_eq!((kind.duty, kind.sheath), (Duty::Heavy, Covering::Rubber));

    let wire = FlexPrint::parse("H07V-K 1.5mm2");
    assert_eq!(wire.kind.map(|kind| kind.duty), Some(Duty::NoFlex));
    assert_eq!(FlexPrint::parse("H05VV-F3G0.75").area, Some(square_millimetres(0.75)));
}

/// IEC 60227 numbers (read): 52 is light, 53 ordinary PVC flex; IEC 60245-57 (memory-high) ordinary rubber.
#[test]
fn iec_numbers_are_read() {
    let ordinary = FlexPrint::parse("60227 IEC 53 (RVV) 300/500V 3X1.0mm2");
    let kind = ordinary.kind.expect("the type is known");
    assert_eq!((kind.family, kind.duty), (Family::Iec60227, Duty::Ordinary));
    assert_eq!((ordinary.voltages, ordinary.area), (Some((300, 500)), Some(square_millimetres(1.0))));
    let light = FlexPrint::parse("227 IEC 52(RVV) 3*0.75");
    assert_eq!(light.kind.map(|kind| kind.duty), Some(Duty::Light));
    assert_eq!(light.area, Some(square_millimetres(0.75)));
    let rubber = FlexPrint::parse("245 IEC 57 YZW 3x1.5");
    assert_eq!(rubber.kind.map(|kind| kind.family), Some(Family::Iec60245));
}

/// AWG by ASTM B258's formula: 18 is 0.823 mm², 16 is 1.309 mm², 20 is 0.518 mm² (derived; 18 also read).
#[test]
fn american_sizes_become_areas() {
    for (printed, expected) in
        [("SVT 18AWG/3", 0.823), ("SJT 3x16AWG", 1.309), ("SPT-2 AWG 20", 0.518), ("3X18AWG SVT", 0.823)]
    {
        let area = FlexPrint::parse(printed).area.expect("the size is known");
        assert!((value(area, Unit::SquareMillimetre) - expected).abs() < 0.0006, "{printed}");
    }
    assert_eq!(FlexPrint::parse("SVT 18AWG/3").cores, Some(3));
}

#[test]
fn print_that_is_no_designation_is_kept() {
    let flex = FlexPrint::parse("GLIMMER WIRE TOP QUALITY");
    assert!(!flex.is_understood());
    assert_eq!(flex.unread.len(), 4);
}

#[test]
fn places_disagree_only_beyond_their_digits() {
    let claims = |package: &'static str, body: &'static str| {
        Claims::new([(ClaimPlace::Package, package), (ClaimPlace::Body, body)].into_iter(), None).disagreements()
    };
    let found = claims("13A 250V 3m", "10A 250V");
    assert_eq!(found.len(), 1);
    let only = found.first().expect("one disagreement");
    assert_eq!(
        (only.kind, only.higher.0, only.lower.0),
        (QuantityKind::Current, ClaimPlace::Package, ClaimPlace::Body)
    );
    assert_eq!(only.higher.1, Amount::new(13.0, Unit::Ampere));
    assert_eq!(claims("13A 220-240V", "13A 230V"), []);
    assert_eq!(claims("2m", "2.0m"), []);
}

#[test]
fn the_flex_itself_speaks_before_any_other_place_of_its_size() {
    let flex = FlexPrint::parse("H05VV-F 3G0.75");
    let claims = Claims::new([(ClaimPlace::Package, "3G1.5mm2 13A")].into_iter(), Some(&flex));
    assert_eq!(claims.area(), Some(square_millimetres(0.75)));
    assert_eq!(claims.disagreements().len(), 1);
}

proptest! {
    #[test]
    fn any_print_is_read_without_a_panic(printed in "\\PC{0,80}") {
        Rating::parse(&printed);
        FlexPrint::parse(&printed);
    }

    #[test]
    fn print_made_of_the_usual_pieces_is_read_without_a_panic(pieces in proptest::collection::vec("[0-9]{1,4}|V|A|W|x|G|-|/|~|mm²|H05VV-F|IEC|AWG|,|\\.| |FUSE|MAX", 0..24)) {
        let printed = pieces.concat();
        Rating::parse(&printed);
        FlexPrint::parse(&printed);
    }
}
