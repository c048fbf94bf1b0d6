//! What must hold for any print whatever.

use plugwary::domain::marking::{Claims, FlexPrint, Rating};
use plugwary::domain::quantity::Measurand;
use plugwary::domain::question::ClaimPlace;
use proptest::prelude::*;

/// Print-like text: more of what prints are made of than pure chance would give.
fn print() -> impl Strategy<Value = String> {
    prop_oneof![
        any::<String>(),
        "[HAN0-9VRQZCGX.,/~ ×xFmm²WAVkKBSIECUL<>()°-]{0,60}",
        "([0-9]{1,4}[.,]?[0-9]{0,4} ?(A|V|W|kW|Hz|m|mm|mm²|AWG|G|x|USB|MAX|FUSE|EACH|IEC|BS|H05VV-F|RVV)[ /~;-]?){0,8}",
    ]
}

proptest! {
    #[test]
    fn any_print_is_read_without_trouble(print in print()) {
        let rating = Rating::parse(&print);
        let flex = FlexPrint::parse(&print);
        for piece in rating.unread.iter().chain(&flex.unread).chain(&rating.standards).chain(&flex.maker) {
            prop_assert!(!piece.is_empty() && print.contains(piece.as_str()));
        }
        for piece in flex.pieces() {
            prop_assert!(print.contains(piece.printed.as_str()), "{:?} is not in {:?}", piece.printed, print);
        }
        flex.oddities();
        let claims = Claims::new([(ClaimPlace::Body, print.as_str()), (ClaimPlace::Plug, "13A 250V")].into_iter(), Some(&flex));
        for kind in claims.quantities() {
            prop_assert!(!claims.stated(kind).is_empty());
        }
        claims.disagreements();
    }

    #[test]
    fn places_that_print_the_same_never_disagree(print in print()) {
        let places = [(ClaimPlace::Package, print.as_str()), (ClaimPlace::Body, print.as_str())];
        prop_assert!(Claims::new(places.into_iter(), None).disagreements().is_empty());
    }

    #[test]
    fn disagreements_do_not_depend_on_the_order_of_places(one in print(), other in print()) {
        let places = [(ClaimPlace::Package, one.as_str()), (ClaimPlace::Body, other.as_str())];
        let turned = places.into_iter().rev();
        prop_assert_eq!(Claims::new(places.into_iter(), None).disagreements(), Claims::new(turned, None).disagreements());
    }

    #[test]
    fn amperes_are_read_whatever_stands_around_them(amperes in 1_u32..=63, gap in " {0,2}", unit in "A|Amp|amps|AMPS") {
        let rating = Rating::parse(&format!("BS1363/A {amperes}{gap}{unit} 250V~ 50Hz"));
        let read = rating.current.map(|current| current.value.base());
        prop_assert_eq!(read, Some(f64::from(amperes)));
    }

    #[test]
    fn a_harmonised_flex_is_read_back(cores in 2_u8..=5, size in 0_usize..6, joint in "G|X|x| G | x ") {
        let sizes = ["0.5", "0.75", "1", "1.5", "2.5", "4"];
        let size = sizes.get(size).copied().unwrap_or_default();
        let flex = FlexPrint::parse(&format!("H05VV-F {cores}{joint}{size}"));
        prop_assert_eq!(flex.cores, Some(cores));
        prop_assert_eq!(flex.has_earth, Some(joint.trim() == "G"));
        let area = flex.area.map(|area| area.base() * 1e6);
        prop_assert!(area.is_some_and(|area| (area - size.parse::<f64>().unwrap_or_default()).abs() < 1e-9));
    }
}
