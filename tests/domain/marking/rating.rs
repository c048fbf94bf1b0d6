//! Ratings as labels print them.

use plugwary::domain::marking::{Hertz, Ingress, Rating, Stated};
use plugwary::domain::quantity::{Measurand, Unit, volts, watts};

/// A stated value and its step in a unit, rounded so that they can be compared.
fn seen<Q: Measurand>(stated: Option<Stated<Q>>, unit: Unit) -> Option<(String, String)> {
    let number = |quantity: Q| quantity.amount().in_unit(unit).map(|number| format!("{number:.6}"));
    stated.and_then(|stated| number(stated.value).zip(number(stated.step)))
}

fn expected(value: f64, step: f64) -> (String, String) {
    (format!("{value:.6}"), format!("{step:.6}"))
}

#[track_caller]
fn expect_amperes(print: &str, value: f64, step: f64) {
    assert_eq!(seen(Rating::parse(print).current, Unit::Ampere), Some(expected(value, step)), "{print}");
}

#[track_caller]
fn expect_watts(print: &str, value: f64, step: f64) {
    assert_eq!(seen(Rating::parse(print).power, Unit::Watt), Some(expected(value, step)), "{print}");
}

#[track_caller]
fn expect_volts(print: &str, lowest: f64, highest: f64) {
    let voltage = Rating::parse(print).voltage.map(|(low, high)| (low.value, high.value));
    assert_eq!(voltage, Some((volts(lowest), volts(highest))), "{print}");
}

#[test]
fn current_is_read_however_it_is_spelt() {
    for print in [
        "13A 250V~",
        "13 A 250V~",
        "250V~ 13A",
        "13Amp",
        "13 amps",
        "13A/250V",
        "250V-13A",
        "MAX13A",
        "MAX. 13 A",
        "１３Ａ",
        "AC250V 13A",
    ] {
        expect_amperes(print, 13.0, 1.0);
    }
    expect_amperes("2.5A 250V", 2.5, 0.1);
    expect_amperes("2,5 A", 2.5, 0.1);
}

#[test]
fn voltage_is_one_value_or_a_range() {
    expect_volts("13A 250V~", 250.0, 250.0);
    expect_volts("250V AC", 250.0, 250.0);
    for print in ["220-240V 50/60Hz", "220–240 V~", "220V-240V", "220~240V 50Hz", "220/240V", "AC220-240V", "240-220V"]
    {
        expect_volts(print, 220.0, 240.0);
    }
}

#[test]
fn power_is_read_however_it_is_spelt() {
    for print in [
        "2500W MAX",
        "MAX 2500W",
        "Max. load: 2500 Watts",
        "2,500W",
        "2.500W",
        "2 500 W",
        "10A 250V~ 2500W MAX",
        "2500VA",
    ] {
        expect_watts(print, 2500.0, 1.0);
    }
    expect_watts("3.12kW", 3120.0, 10.0);
    expect_watts("3,12 kW", 3120.0, 10.0);
}

#[test]
fn power_is_a_maximum_where_the_print_says_so() {
    for print in
        ["MAX 3120W", "3120W MAX", "10A 250V~ 2500W MAX. 2m", "total load 3120W", "≤3120W", "MAXIMUM POWER 3120 W"]
    {
        assert!(Rating::parse(print).power_is_maximum, "{print}");
    }
    assert!(!Rating::parse("13A 250V~ 3120W").power_is_maximum);
}

#[test]
fn frequency_is_no_rating() {
    let rating = Rating::parse("220-240V 50/60Hz");
    assert_eq!(rating.frequencies, [Hertz(50), Hertz(60)]);
    assert_eq!(rating.unread, Vec::<String>::new());
}

#[test]
fn maximum_goes_before_higher_figures() {
    expect_amperes("13A 250V; MAX 10A", 10.0, 1.0);
    expect_amperes("10A 250V~ 13A 250V~", 13.0, 1.0);
}

#[test]
fn total_goes_before_each_socket() {
    expect_amperes("each socket 13A, total 10A", 10.0, 1.0);
    expect_amperes("4 x 13A sockets, total 10A", 10.0, 1.0);
    expect_amperes("total 13A", 13.0, 1.0);
    expect_amperes("13A per socket", 13.0, 1.0);
}

#[test]
fn fuse_is_not_the_current() {
    for print in ["Fuse 13A BS1362", "fuse: BS 1362 13A", "13A fuse", "FUSED 13A"] {
        let rating = Rating::parse(print);
        assert_eq!(seen(rating.fuse, Unit::Ampere), Some(expected(13.0, 1.0)), "{print}");
        assert_eq!(rating.current, None, "{print}");
    }
    let both = Rating::parse("10A 250V~ FUSE 13A");
    assert_eq!(seen(both.fuse, Unit::Ampere), Some(expected(13.0, 1.0)));
    assert_eq!(seen(both.current, Unit::Ampere), Some(expected(10.0, 1.0)));
    let other_way_round = Rating::parse("13A fuse fitted. MAX 10A 250V~");
    assert_eq!(seen(other_way_round.fuse, Unit::Ampere), Some(expected(13.0, 1.0)));
    assert_eq!(seen(other_way_round.current, Unit::Ampere), Some(expected(10.0, 1.0)));
}

#[test]
fn usb_output_is_not_the_mains_rating() {
    for print in [
        "13A 250V~ USB 5V 2.1A",
        "USB: 5V⎓2.1A; 13A 250V~",
        "5V 2.1A 13A 250V",
        "13A 250V 2.1A USB",
        "13A 250V 5V/2.1A",
        "4 sockets 13A 250V, 2 x USB 2.1A",
        "USB 2100mA. Mains 13A 250V",
    ] {
        let rating = Rating::parse(print);
        assert_eq!(seen(rating.current, Unit::Ampere).map(|(value, _)| value), Some("13.000000".to_owned()), "{print}");
        assert_eq!(rating.voltage.map(|(low, _)| low.value), Some(volts(250.0)), "{print}");
        let outputs: Vec<_> = rating.outputs.iter().filter_map(|output| seen(output.current, Unit::Ampere)).collect();
        assert_eq!(outputs.iter().map(|(value, _)| value.as_str()).collect::<Vec<_>>(), ["2.100000"], "{print}");
    }
    assert_eq!(Rating::parse("5V 2.1A").current, None);
}

#[test]
fn cores_and_size_are_read_together() {
    for print in [
        "3G1.5mm²",
        "3 x 1.5 mm2",
        "3×1,5mm²",
        "3*1.5mm^2",
        "3 core 1.5mm",
        "3-core 1.5 sq mm",
        "3G1.5",
        "H05VV-F 3G1.5",
    ] {
        let rating = Rating::parse(print);
        assert_eq!(rating.cores.map(|(count, _)| count), Some(3), "{print}");
        assert_eq!(seen(rating.area, Unit::SquareMillimetre), Some(expected(1.5, 0.01)), "{print}");
        assert_eq!(rating.length, None, "{print}");
    }
    assert_eq!(seen(Rating::parse("3x0.75mm2").area, Unit::SquareMillimetre), Some(expected(0.75, 0.01)));
}

/// HD 361 prints 1.0 mm² as `1`: the size cannot stand for its neighbours 0.75 and 1.25.
#[test]
fn size_of_one_digit_keeps_away_from_its_neighbours() {
    assert_eq!(seen(Rating::parse("3G1").area, Unit::SquareMillimetre), Some(expected(1.0, 0.01)));
}

#[test]
fn letter_g_promises_an_earth_core_and_other_print_does_not_tell() {
    assert_eq!(Rating::parse("3G1.25mm2").cores, Some((3, Some(true))));
    assert_eq!(Rating::parse("3x1.25mm2").cores, Some((3, None)));
}

#[test]
fn many_sockets_of_so_many_amperes_are_no_size_of_a_flex() {
    let rating = Rating::parse("4x13A sockets 3G1.25");
    assert_eq!(seen(rating.area, Unit::SquareMillimetre), Some(expected(1.25, 0.01)));
    assert_eq!(Rating::parse("4 x 13A").area, None);
}

/// Lowest and highest volts, amperes, watts of whole labels.
#[test]
fn labels_are_read_whole() {
    for (print, volts, amperes, watts) in [
        ("13A 250V~", Some((250.0, 250.0)), Some(13.0), None),
        ("10 A 250V~ 2500W MAX", Some((250.0, 250.0)), Some(10.0), Some(2500.0)),
        ("Rated 13 Amp 230 volts", Some((230.0, 230.0)), Some(13.0), None),
        ("MAX. LOAD 3120W", None, None, Some(3120.0)),
        ("OUTPUT 5V 3A\n250V 10A", Some((250.0, 250.0)), Some(10.0), None),
        (
            "Input: AC 100-250V 50/60Hz 10A 2500W  Output: USB-A 5V/3A, USB-C PD 20W",
            Some((100.0, 250.0)),
            Some(10.0),
            Some(2500.0),
        ),
        ("13A 250V~\nMAX 3250W\nFUSED\nBS1363/A", Some((250.0, 250.0)), Some(13.0), Some(3250.0)),
        ("UNWOUND 13A 3120W / WOUND 5A 1200W", None, Some(13.0), Some(3120.0)),
        ("", None, None, None),
    ] {
        let rating = Rating::parse(print);
        let found = (
            rating.voltage.map(|(low, high)| (low.value.base(), high.value.base())),
            rating.current.map(|current| current.value.base()),
            rating.power.map(|power| power.value.base()),
        );
        assert_eq!(found, (volts, amperes, watts), "{print}");
        assert_eq!(rating.unread, Vec::<String>::new(), "{print}");
    }
}

#[test]
fn plain_millimetres_are_a_size_only_before_the_word_cable() {
    assert_eq!(seen(Rating::parse("1.5mm cable").area, Unit::SquareMillimetre), Some(expected(1.5, 0.01)));
    assert_eq!(Rating::parse("1.5mm").area, None);
    assert_eq!(Rating::parse("1.5mm cable").length, None);
}

#[test]
fn length_is_read_however_it_is_spelt() {
    for (print, value, step) in [
        ("2m", 2.0, 1.0),
        ("2 metres", 2.0, 1.0),
        ("1,5 m", 1.5, 0.1),
        ("5M", 5.0, 1.0),
        ("200 cm", 2.0, 0.01),
        ("1800mm", 1.8, 0.001),
        ("6FT/1.8m", 1.8, 0.1),
        ("6ft", 1.8288, 0.3048),
    ] {
        assert_eq!(seen(Rating::parse(print).length, Unit::Metre), Some(expected(value, step)), "{print}");
    }
}

#[test]
fn flex_voltage_is_not_the_products() {
    let rating = Rating::parse("13A 250V~, H05VV-F 3G1.5 300/500V");
    assert_eq!(rating.voltage.map(|(low, high)| (low.value, high.value)), Some((volts(250.0), volts(250.0))));
    assert_eq!(rating.flex_voltage.map(|(earth, core)| (earth.value, core.value)), Some((volts(300.0), volts(500.0))));
}

#[test]
fn ingress_code_is_read() {
    assert_eq!(Rating::parse("IP44").ingress, Some(Ingress { solids: Some(4), water: Some(4) }));
    assert_eq!(Rating::parse("IPX4 13A").ingress, Some(Ingress { solids: None, water: Some(4) }));
    assert_eq!(Rating::parse("IP 20").ingress, Some(Ingress { solids: Some(2), water: Some(0) }));
}

#[test]
fn number_of_a_standard_is_no_rating() {
    for print in ["BS 1363 A", "BS1363/A", "BS EN 50525-2-11", "ISO 9001:2015", "GB/T 2099.7"] {
        let rating = Rating::parse(print);
        assert_eq!(rating.standards, [print], "{print}");
        assert!(rating.says_nothing() && rating.unread.is_empty(), "{print}: {rating:?}");
    }
    expect_amperes("BS1363/A 13A 250V", 13.0, 1.0);
    expect_volts("UL 250V", 250.0, 250.0);
}

#[test]
fn what_cannot_be_read_is_kept_as_printed() {
    let rating = Rating::parse("13A 250V~ Süper Kraft 900J XK-13A");
    assert_eq!(rating.unread, ["Süper Kraft 900J XK-13A"]);
    assert_eq!(Rating::parse("RCD 30mA").unread, ["RCD 30mA"]);
    assert_eq!(Rating::parse("1.2.3 V").current, None);
    assert_eq!(Rating::parse("Sparkle-O 13A").unread, ["Sparkle-O"]);
    assert!(Rating::parse("hello").says_nothing());
}

/// 2500 may be known to half a unit or to fifty; 10 A is never meant for anything from 5 A to 15 A.
#[test]
fn trailing_zeros_have_two_readings() {
    let half_steps = |print: &str| -> Vec<f64> {
        Rating::parse(print).power.iter().flat_map(Stated::half_steps).map(Measurand::base).collect()
    };
    assert_eq!(half_steps("2500W"), [0.5, 50.0]);
    assert_eq!(half_steps("3120W"), [0.5, 5.0]);
    assert_eq!(half_steps("3125W"), [0.5]);
    let current = Rating::parse("10A").current.expect("a current");
    assert_eq!(current.half_steps().map(Measurand::base).collect::<Vec<_>>(), [0.5]);
}

#[test]
fn watts_allowed_are_volts_times_amperes_at_the_upper_ends() {
    let allowed = |print: &str| Rating::parse(print).watts_allowed();
    assert_eq!(allowed("13A 240V"), Some(watts(245.0 * 13.5)));
    assert_eq!(allowed("13A 220-240V"), Some(watts(245.0 * 13.5)));
    assert_eq!(allowed("13A"), None);
    assert_eq!(allowed("250V 3000W"), None);
}

/// 250 V × 10 A = 2500 W is how makers reckon their maximum (common practice without a published source). The impossible ones are the
/// worked answers of the coherence rule: 120 W at 20 V and 3 A, 3000 W at 220-240 V and 10 A.
#[test]
fn power_above_volts_times_amperes_is_impossible() {
    for (print, impossible) in [
        ("10A 250V~ 2500W MAX", Some(false)),
        ("13A 240V 3120W", Some(false)),
        ("13A 250V 3250W", Some(false)),
        ("220-240V 10A 2200W", Some(false)),
        ("220-240V 10A 3000W MAX", Some(true)),
        ("13A 250V 4000W", Some(true)),
        ("10A 250V", None),
    ] {
        assert_eq!(Rating::parse(print).is_impossible(), impossible, "{print}");
    }
    let supply = Rating::parse("20V 3A 120W");
    let output = supply.outputs.first().expect("an output");
    let allowed = output.voltage.zip(output.current).map(|((_, v), a)| (v.highest() * a.highest()).base());
    assert!(allowed < output.power.map(|power| power.lowest().base()));
}
