//! Print along flexes.
//!
//! What the letters mean is from HD 361 S3 (read in secondary tables), what the numbers mean from IEC 60227 (read) and IEC 60245
//! (memory-high).

use plugwary::domain::marking::{FlexPrint, Meaning, Oddity};
use plugwary::domain::quantity::{square_millimetres, volts};
use plugwary::domain::standard::cord_type::{Duty, Family};
use plugwary::domain::standard::hd361::{Compound, ConductorForm, Construction, Harmonisation, VoltageCode};
use plugwary::words::flex_print;

#[track_caller]
fn expect_size(print: &str, cores: Option<u8>, has_earth: Option<bool>, area: Option<f64>) {
    let flex = FlexPrint::parse(print);
    assert_eq!(
        (flex.cores, flex.has_earth, flex.area),
        (cores, has_earth, area.map(square_millimetres)),
        "{print}: {flex:?}"
    );
}

/// Examples of HD 361 S3: H05VV-F 3G1.5, H03VV-F 2x0.75, H03VVH2-F and H05VVH2-F 2x0.75 flat.
#[test]
fn examples_of_the_code_are_understood() {
    expect_size("H05VV-F 3G1.5", Some(3), Some(true), Some(1.5));
    expect_size("H03VV-F 2x0.75", Some(2), Some(false), Some(0.75));
    expect_size("H03VVH2-F 2X0.75", Some(2), Some(false), Some(0.75));
    expect_size("H05VVH2-F 2x0.75", Some(2), Some(false), Some(0.75));
    let flat = FlexPrint::parse("H03VVH2-F 2X0.75").designation.expect("a designation");
    assert_eq!(flat.construction, [Construction::Flat]);
    assert_eq!((flat.voltage, flat.conductor), (VoltageCode::V300V300, ConductorForm::Flexible));
}

#[test]
fn designation_is_read_letter_by_letter() {
    let flex = FlexPrint::parse("H07RN-F 3G2.5");
    let designation = flex.designation.as_ref().expect("a designation");
    assert_eq!(designation.harmonisation, Harmonisation::Harmonised);
    assert_eq!((designation.insulation, designation.sheath()), (Compound::Rubber, Some(Compound::Polychloroprene)));
    assert_eq!(flex.voltage(), Some((volts(450.0), volts(750.0))));
    assert_eq!((flex.duty(), flex.is_for_outdoors()), (Some(Duty::Heavy), Some(true)));
    let national = FlexPrint::parse("A05VV-F 3G1.0").designation.expect("a designation");
    assert_eq!(national.harmonisation, Harmonisation::RecognisedNational);
    let oil = FlexPrint::parse("H05VVC4V5-K 4G1.5").designation.expect("a designation");
    assert_eq!((oil.insulation, oil.sheath()), (Compound::Pvc, Some(Compound::PvcForOil)));
    let tinsel = FlexPrint::parse("H03VH-Y").designation.expect("a designation");
    assert_eq!((tinsel.sheath(), tinsel.conductor), (None, ConductorForm::Tinsel));
    assert_eq!(tinsel.construction, [Construction::FlatDivisible]);
}

#[test]
fn every_part_of_the_code_survives_being_written() {
    for text in ["H05VV-F", "H03VVH2-F", "H07RN-F", "A05VV-F", "H05V-K", "H03VH-H", "H01N2-D", "H05VVD3H6-F", "H07V-AR"]
    {
        assert_eq!(FlexPrint::parse(text).name().as_deref(), Some(text));
    }
}

/// A size that nobody should make is the one that must not be lost.
#[test]
fn sizes_that_are_not_sold_are_read_too() {
    expect_size("H03VV-F 3G0.4", Some(3), Some(true), Some(0.4));
    expect_size("RVV 3X0.3", Some(3), None, Some(0.3));
    expect_size("RVV 3X20", None, None, None);
    expect_size("H05VV-F 3G0", Some(3), Some(true), None);
}

#[test]
fn print_is_read_as_people_copy_it() {
    for print in [
        "h05vv-f 3g1.5mm²",
        "H05VV-F3G1.5",
        "H05 VV-F 3 G 1,5",
        "H05VV–F 3G1,5 mm2",
        "H05VVF 3G1.5",
        "◁HAR▷ H05VV-F 3G 1.5",
        "BASEC <HAR> ALDERMOOR CABLES H05VV-F 3G1.5 mm²",
    ] {
        let flex = FlexPrint::parse(print);
        assert_eq!(flex.name().as_deref(), Some("H05VV-F"), "{print}");
        expect_size(print, Some(3), Some(true), Some(1.5));
        assert!(flex.oddities().is_empty(), "{print}: {:?}", flex.oddities());
    }
}

#[test]
fn numbers_of_the_iec_are_understood() {
    for (print, name, voltage, duty) in [
        ("60227 IEC 53 3x1.5", "60227 IEC 53", (300.0, 500.0), Duty::Ordinary),
        ("227 IEC 52(RVV) 300/300V 3X0.75mm²", "60227 IEC 52", (300.0, 300.0), Duty::Light),
        ("227IEC53(RVV) 300/500V 3*1.0", "60227 IEC 53", (300.0, 500.0), Duty::Ordinary),
        ("245 IEC 57 (YZW) 3G1.5", "60245 IEC 57", (300.0, 500.0), Duty::Ordinary),
        ("60245 IEC 66 3G2.5", "60245 IEC 66", (450.0, 750.0), Duty::Heavy),
    ] {
        let flex = FlexPrint::parse(print);
        assert_eq!(flex.name().as_deref(), Some(name), "{print}");
        assert_eq!(flex.voltage(), Some((volts(voltage.0), volts(voltage.1))), "{print}");
        assert_eq!(flex.duty(), Some(duty), "{print}");
        assert_eq!(flex.unread, Vec::<String>::new(), "{print}");
    }
    assert_eq!(FlexPrint::parse("245 IEC 57").is_for_outdoors(), Some(true));
    assert_eq!(FlexPrint::parse("60227 IEC 01").is_flexible(), Some(false));
}

/// HD 361, the conductor's letter (read): D and E of welding cable, F, H and Y of flexes bend; K, R and U are wires for walls.
#[test]
fn the_conductors_letter_says_whether_it_is_a_flex() {
    for (letter, is_flexible) in
        [('D', true), ('E', true), ('F', true), ('H', true), ('Y', true), ('K', false), ('R', false), ('U', false)]
    {
        assert_eq!(FlexPrint::parse(&format!("H05VV-{letter} 3G1.5")).is_flexible(), Some(is_flexible), "{letter}");
    }
}

#[test]
fn national_names_are_understood() {
    let chinese = FlexPrint::parse("RVV 300/500V 3×0.75mm² GB/T 5023.5-2008");
    assert_eq!((chinese.family(), chinese.duty()), (Some(Family::Chinese), Some(Duty::Ordinary)));
    assert_eq!((chinese.cores, chinese.has_earth, chinese.area), (Some(3), None, Some(square_millimetres(0.75))));
    assert_eq!(chinese.standards, ["GB/T 5023.5-2008"]);
    let american = FlexPrint::parse("SJT 18/3 300V");
    assert_eq!((american.family(), american.cores, american.gauge), (Some(Family::American), Some(3), Some(18)));
    assert_eq!(american.voltage(), Some((volts(300.0), volts(300.0))));
    assert_eq!(FlexPrint::parse("SPT-2 2X18AWG").name().as_deref(), Some("SPT-2"));
    assert_eq!(FlexPrint::parse("SJTW 16AWG/3C").is_for_outdoors(), Some(true));
    assert_eq!(FlexPrint::parse("VCTF 2X0.75").family(), Some(Family::Japanese));
}

/// "18 AWG" is sold as 0.75 mm² but is 0.823 mm² (ASTM B258).
#[test]
fn gauge_becomes_a_cross_section() {
    for print in ["18AWG", "AWG 18", "AWG18", "3x18AWG", "3C×18AWG", "18 AWG/3C"] {
        let flex = FlexPrint::parse(print);
        assert_eq!(flex.gauge, Some(18), "{print}");
        let area = flex.stated_area().expect("an area");
        assert!(area.lowest() < square_millimetres(0.75) && area.highest() < square_millimetres(1.0), "{print}");
        assert!(area.lowest() > square_millimetres(0.52), "{print}");
    }
    let both = FlexPrint::parse("SVT 18AWG(0.824mm²)X3C");
    assert_eq!((both.gauge, both.area, both.cores), (None, Some(square_millimetres(0.824)), Some(3)));
    assert!(both.oddities().is_empty());
}

#[test]
fn british_standards_and_words_are_understood() {
    let flex = FlexPrint::parse("3 CORE 1.25mm² BS 6500 ALDERMOOR");
    assert_eq!((flex.cores, flex.area), (Some(3), Some(square_millimetres(1.25))));
    assert_eq!(
        (flex.standards.as_slice(), flex.maker.as_deref()),
        (["BS 6500".to_owned()].as_slice(), Some("ALDERMOOR"))
    );
    assert_eq!(FlexPrint::parse("BS EN 50525-2-11 H05VV-F 3G1.25").standards, ["BS EN 50525-2-11"]);
}

#[test]
fn maker_marks_and_rest_are_kept_apart() {
    let flex = FlexPrint::parse("ALDERMOOR CABLE VDE <HAR> H05VV-F 3G1.0 E-77 70°C");
    assert_eq!(flex.maker.as_deref(), Some("ALDERMOOR"));
    assert_eq!(flex.origin_marks, ["VDE", "HAR"]);
    assert_eq!(flex.unread, ["E-77"]);
    assert_eq!(FlexPrint::parse("H05VV-F 3G1.0").maker, None);
    assert_eq!(FlexPrint::parse("SVT 3X18AWG c(UL)us").maker, None);
    assert_eq!(FlexPrint::parse("ALDERMOOR CABLE CO.,LTD. RVV 3X1.0").maker.as_deref(), Some("ALDERMOOR"));
    let name = FlexPrint::parse("ALDERMOOR");
    assert!(name.says_nothing() && name.maker.is_some());
}

#[test]
fn odd_prints_are_named() {
    let area = square_millimetres;
    for (print, oddity) in [
        ("H05VV-F 2G1.5", Oddity::EarthNeedsMoreCores { cores: 2 }),
        ("H03VV-F 3G1.0", Oddity::TooThickForLight { area: area(1.0), at_most: area(0.75) }),
        ("H05VV-F 3G0.5", Oddity::TooThinForOrdinary { area: area(0.5), at_least: area(0.75) }),
        ("H05VV-F 3G1.3mm²", Oddity::NoSuchSize { area: area(1.3) }),
        ("HO5VV-F 3G1.5", Oddity::LookAlike { printed: "HO5VV-F".to_owned(), taken: "H05VV-F".to_owned() }),
        ("H05W-F 3G1.5", Oddity::LookAlike { printed: "H05W-F".to_owned(), taken: "H05VV-F".to_owned() }),
        ("227 IEC 52 300/500V", Oddity::VoltagesDiffer { by_type: volts(300.0), in_figures: volts(500.0) }),
    ] {
        assert_eq!(FlexPrint::parse(print).oddities(), [oddity], "{print}");
    }
    for print in
        ["H03VV-F 3G0.75", "H05VV-F 3G0.75", "H05VV-F 3G1.5 WOODCOTE", "H07RN-F 3G1.0", "60227 IEC 53 300/500V"]
    {
        assert_eq!(FlexPrint::parse(print).oddities(), [], "{print}");
    }
}

#[test]
fn print_is_said_back_piece_by_piece() {
    let said =
        |print: &str| -> Vec<String> { FlexPrint::parse(print).pieces().iter().map(flex_print::explained).collect() };
    assert_eq!(
        said("ALDERMOOR <HAR> H05VV-F 3G1.5"),
        [
            "ALDERMOOR: perhaps the maker’s name",
            "HAR: a mark of approval or origin, as claimed",
            "H: made to a standard that the countries of Europe share",
            "05: rated 300\u{A0}V to earth and 500\u{A0}V between cores",
            "VV: insulated and sheathed in ordinary PVC",
            "F: fine strands, flexible",
            "3G: 3 cores, one of them green-and-yellow for earth",
            "1.5: 1.5\u{A0}mm² of conductor in each core",
        ]
    );
    let pieces = FlexPrint::parse("H05RN-F");
    let rubber = Meaning::InsulationAndSheath(Compound::Rubber, Compound::Polychloroprene);
    assert!(pieces.pieces().iter().any(|piece| piece.printed == "RN" && piece.means == rubber));
}

#[test]
fn words_that_are_no_designation_are_kept() {
    let flex = FlexPrint::parse("GLIMMER TOP QUALITY 900J");
    assert!(flex.says_nothing());
    assert_eq!(
        (flex.maker.as_deref(), flex.unread.as_slice()),
        (Some("GLIMMER TOP QUALITY"), ["900J".to_owned()].as_slice())
    );
}

#[test]
fn nothing_is_made_of_what_says_nothing() {
    for print in ["", "   ", "///", "12345", "◊◊◊", "H", "H05", "-F", "IEC", "AWG"] {
        let flex = FlexPrint::parse(print);
        assert!(flex.says_nothing() && flex.area.is_none() && flex.cores.is_none(), "{print}: {flex:?}");
    }
}
