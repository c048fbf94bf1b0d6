//! Claims of several places, side by side.

use plugwary::domain::marking::{Claims, FlexPrint};
use plugwary::domain::quantity::{Amount, QuantityKind, Unit, amperes, metres, square_millimetres};
use plugwary::domain::question::ClaimPlace::{self, Body, Flex, Listing, Package, Plug};

fn claims(printed: &[(ClaimPlace, &str)], flex: Option<&str>) -> Claims {
    Claims::new(printed.iter().copied(), flex.map(FlexPrint::parse).as_ref())
}

#[test]
fn total_is_what_the_product_claims_and_not_its_plug() {
    let total = |printed: &[(ClaimPlace, &str)]| claims(printed, None).total_current();
    assert_eq!(total(&[(Body, "MAX 10A 250V~"), (Plug, "13A 250V")]), Some(amperes(10.0)));
    assert_eq!(total(&[(Listing, "13A"), (Body, "10A")]), Some(amperes(13.0)));
    assert_eq!(total(&[(Plug, "13A 250V")]), Some(amperes(13.0)));
    assert_eq!(total(&[(Body, "4 x 13A, total 10A")]), Some(amperes(10.0)));
    assert_eq!(total(&[(Flex, "10A 250V")]), None);
}

#[test]
fn total_ignores_fuse_and_outputs() {
    let total = |print| claims(&[(Body, print)], None).total_current();
    assert_eq!(total("10A 250V~ FUSE 13A"), Some(amperes(10.0)));
    assert_eq!(total("USB 5V 2.1A"), None);
    assert_eq!(total("Fuse 13A BS1362"), None);
}

#[test]
fn watts_over_volts_give_the_total_where_no_amperes_are_printed() {
    assert_eq!(claims(&[(Package, "240V 3120W")], None).total_current(), Some(amperes(13.0)));
    assert_eq!(claims(&[(Package, "3120W")], None).total_current(), None);
}

#[test]
fn area_is_the_flexs_own_before_any_other() {
    let printed = [(Package, "3G1.5mm²"), (Plug, "3G1.25mm²")];
    assert_eq!(claims(&printed, Some("H05VV-F 3G0.75")).area(), Some(square_millimetres(0.75)));
    assert_eq!(claims(&printed, Some("nothing of use")).area(), Some(square_millimetres(1.25)));
    assert_eq!(claims(&printed, None).area(), Some(square_millimetres(1.25)));
}

#[test]
fn length_is_the_shortest_claim() {
    let length = claims(&[(Listing, "5m"), (Package, "2 metres")], None).length().expect("a length");
    assert_eq!(length.value, metres(2.0));
}

#[test]
fn places_disagree_where_their_digits_cannot_overlap() {
    let found = claims(&[(Listing, "13A 250V 3000W 2m"), (Body, "10A 250V 2500W 2m")], None).disagreements();
    let kinds: Vec<_> = found.iter().map(|one| (one.kind, one.higher.0, one.lower.0)).collect();
    assert_eq!(kinds, [(QuantityKind::Current, Listing, Body), (QuantityKind::Power, Listing, Body)]);
    let current = found.first().expect("a disagreement");
    assert_eq!(current.higher.1, Amount::new(13.0, Unit::Ampere));
    assert_eq!(current.lower.1, Amount::new(10.0, Unit::Ampere));
}

#[test]
fn flex_counts_as_a_place() {
    let found = claims(&[(Package, "3 x 1.5mm²")], Some("H05VV-F 3G0.75")).disagreements();
    let area = |number| Amount::new(number, Unit::SquareMillimetre);
    let [one] = found.as_slice() else { panic!("one disagreement, got {found:?}") };
    assert_eq!((one.higher, one.lower), ((Package, area(1.5)), (Flex, area(0.75))));
}

/// Neither a voltage within a stated range, nor a size within its gauge, nor digits cut at another place is a contradiction.
#[test]
fn places_agree_where_their_digits_overlap() {
    for (one, other) in [
        ("220-240V", "250V"),
        ("220-240V", "230V"),
        ("2m", "1.8m"),
        ("3kW", "3250W"),
        ("3G1.0", "3G1"),
        ("18AWG", "0.75mm²"),
        ("16AWG", "1.25mm²"),
        ("13A 5V 2.1A", "13A"),
    ] {
        let found = claims(&[(Package, one), (Body, other)], None).disagreements();
        assert!(found.is_empty(), "{one} and {other}: {found:?}");
    }
    for (one, other) in [("3G1", "3G0.75"), ("3G1", "3G1.25"), ("16AWG", "1.5mm²"), ("110V", "250V"), ("5m", "3m")] {
        assert_eq!(claims(&[(Package, one), (Body, other)], None).disagreements().len(), 1, "{one} and {other}");
    }
}

#[test]
fn quantities_are_those_that_any_place_states() {
    let claims = claims(&[(Plug, "13A 250V"), (Listing, "13A 2m")], Some("H05VV-F 3G1.25"));
    let stated: Vec<_> = claims
        .quantities()
        .map(|kind| (kind, claims.stated(kind).iter().map(|claimed| claimed.place).collect::<Vec<_>>()))
        .collect();
    assert_eq!(
        stated,
        [
            (QuantityKind::Potential, vec![Plug]),
            (QuantityKind::Current, vec![Listing, Plug]),
            (QuantityKind::Length, vec![Listing]),
            (QuantityKind::Area, vec![Flex]),
        ]
    );
}

#[test]
fn range_keeps_both_ends() {
    let claims = claims(&[(Body, "220-240V")], None);
    let [voltage] = claims.stated(QuantityKind::Potential)[..] else { panic!("one claim") };
    assert_eq!((voltage.from, voltage.to), (Amount::new(220.0, Unit::Volt), Amount::new(240.0, Unit::Volt)));
}
