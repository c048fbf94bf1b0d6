//! Pictures in true proportion: where their marks stand, held against values worked out by hand.

use plugwary::domain::assess::{RuleBook, assess};
use plugwary::domain::decision::Probability;
use plugwary::domain::examination::Examination;
use plugwary::domain::finding::{
    Basis, Bearing, Bound, Conformity, Evidence, Favour, Finding, Judgement, Reason, RoomTemperature, Severity,
};
use plugwary::domain::physics::heating::Steady;
use plugwary::domain::quantity::{Amount, Measurand, Unit};
use plugwary::domain::question::{Core, Target};
use plugwary::domain::sample::{Equipment, Kind, Market, Place, Sample};
use plugwary::domain::view::View;
use plugwary::drawing::found::{self, Picture};

use crate::{pages, records, shown};

/// The values of an attribute of every shape of a class, in the order in which they are drawn.
pub fn all(svg: &str, class: &str, attribute: &str) -> Vec<f64> {
    let shapes = svg.split('<').filter(|shape| shape.contains(&format!("class=\"{class}\"")));
    let value = |shape: &str| {
        let (_, after) = shape.split_once(&format!(" {attribute}=\""))?;
        after.split('"').next()?.parse().ok()
    };
    shapes.filter_map(value).collect()
}

/// The first of them.
#[track_caller]
pub fn first(svg: &str, class: &str, attribute: &str) -> f64 {
    *all(svg, class, attribute).first().unwrap_or_else(|| unreachable!("no {class} with {attribute} in {svg}"))
}

/// Within a hundredth of a pixel, rounded twice.
#[track_caller]
pub fn near(what: &str, got: f64, wanted: f64) {
    assert!((got - wanted).abs() < 0.03, "{what}: {got}, wanted {wanted}");
}

pub fn evidence(target: Target, value: f64, u: f64, unit: Unit, limit: Bound) -> Evidence {
    // A difference knows no zero point, an amount in degrees does.
    let zero = if unit == Unit::DegreeCelsius { 273.15 } else { 0.0 };
    let u = Amount::new(u - zero, unit);
    Evidence {
        target,
        question: None,
        value: Amount::new(value, unit),
        u,
        limit,
        probability: Probability::ZERO,
        outcome: Conformity::Nonconforming,
        favour: Favour { value: Amount::new(value, unit), holds: false, granted: Vec::new() },
    }
}

pub fn finding(code: &'static str, reason: Reason, evidence: Vec<Evidence>) -> Finding {
    let judgement = Judgement {
        outcome: Conformity::Nonconforming,
        severity: Severity::Danger,
        basis: Basis::Reading,
        bearing: Bearing::Decides,
        reason,
        evidence,
    };
    Finding { code, place: Place::Readings, judgement, against: Vec::new(), asks: &[] }
}

fn drawn(finding: &Finding) -> Vec<Picture> {
    let sample =
        Sample { number: String::new(), title: String::new(), kind: Kind::ExtensionLead, market: Market::GreatBritain };
    found::of(finding, &View::new(&Examination::new(sample, Equipment::Meters)))
}

/// The one picture of values against a limit.
#[track_caller]
fn one(values: &[(f64, f64)], unit: Unit, limit: Bound) -> String {
    let evidence = values
        .iter()
        .enumerate()
        .map(|(n, (value, u))| evidence(Target::Socket(u8::try_from(n + 1).expect("few")), *value, *u, unit, limit));
    let pictures = drawn(&finding("earth-resistance-high", Reason::Measured, evidence.collect()));
    assert_eq!(pictures.len(), 1);
    pictures.into_iter().map(|picture| picture.svg).collect()
}

/// Where the line of numbers begins and ends.
const LEFT: f64 = 10.0;
const RIGHT: f64 = 348.0;

#[test]
fn a_mark_stands_as_far_from_nought_as_its_value_is_times_the_limit() {
    let limit = Bound::AtMost(Amount::new(0.125, Unit::Ohm));
    let svg = one(&[(0.25, 0.025), (0.5, 0.025)], Unit::Ohm, limit);
    let at_limit = first(&svg, "limit", "x1") - LEFT;
    let marks = all(&svg, "mark", "x1");
    near("twice the limit", marks.first().expect("two marks") - LEFT, 2.0 * at_limit);
    near("four times the limit", marks.get(1).expect("two marks") - LEFT, 4.0 * at_limit);
    // The axis ends 7.5 % beyond the largest value, 0.5 Ω and its doubt of 0.05 Ω.
    near("the limit itself", at_limit, 338.0 * 0.125 / (0.55 * 1.075));
    near("the band, 0.1 Ω wide", first(&svg, "doubt", "width"), 338.0 * 0.1 / (0.55 * 1.075));
    near("the band begins at 0.20 Ω", first(&svg, "doubt", "x") - LEFT, 338.0 * 0.2 / (0.55 * 1.075));
    near("what is allowed begins at nought", first(&svg, "allowed", "x"), LEFT);
    near("what is allowed ends at the limit", first(&svg, "allowed", "width"), at_limit);
}

#[test]
fn a_value_short_of_what_is_wanted_stands_left_of_what_is_allowed() {
    let svg = one(&[(0.3, 0.01)], Unit::Megohm, Bound::AtLeast(Amount::new(1.0, Unit::Megohm)));
    let at_limit = first(&svg, "limit", "x1") - LEFT;
    near("three tenths of the limit", first(&svg, "mark", "x1") - LEFT, 0.3 * at_limit);
    near("what is allowed begins at the limit", first(&svg, "allowed", "x") - LEFT, at_limit);
    near("what is allowed ends with the line", first(&svg, "allowed", "x") + first(&svg, "allowed", "width"), RIGHT);
}

#[test]
fn a_value_close_to_its_limit_is_told_apart_from_it() {
    let svg = one(&[(9.45, 0.01)], Unit::Millimetre, Bound::AtLeast(Amount::new(9.5, Unit::Millimetre)));
    let (limit, mark) = (first(&svg, "limit", "x1"), first(&svg, "mark", "x1"));
    assert!(limit - mark > 100.0, "{limit} and {mark} can be told apart");
    // The doubt reaches 0.02 mm to each side, two fifths of the way to the limit.
    near("the band", first(&svg, "doubt", "width"), 0.8 * (limit - mark));
}

#[test]
fn a_size_half_way_between_its_limits_stands_half_way() {
    let limit = Bound::Between(Amount::new(6.0, Unit::Millimetre), Amount::new(6.4, Unit::Millimetre));
    let svg = one(&[(6.2, 0.01), (6.3, 0.01), (6.7, 0.01)], Unit::Millimetre, limit);
    let limits = all(&svg, "limit", "x1");
    let (low, high) = (limits.first().expect("two"), limits.get(1).expect("two"));
    for (mark, part) in all(&svg, "mark", "x1").into_iter().zip([0.5, 0.75, 1.75]) {
        near("part of the way", mark, low + part * (high - low));
    }
}

#[test]
fn a_doubt_too_small_to_see_still_leaves_a_mark() {
    let svg = one(&[(0.8, 1e-9)], Unit::Ohm, Bound::AtMost(Amount::new(0.1, Unit::Ohm)));
    assert!(first(&svg, "doubt", "width") >= 1.0);
    assert_eq!(all(&svg, "mark", "x1").len(), 1);
}

#[test]
fn degrees_are_drawn_from_no_nought() {
    let limit = Bound::AtMost(Amount::new(70.0, Unit::DegreeCelsius));
    let svg = one(&[(96.0, 1.0)], Unit::DegreeCelsius, limit);
    // From 70 °C to 98 °C are 28 K; 15 % of it stay free at each end.
    near("the limit", first(&svg, "limit", "x1"), LEFT + 338.0 * 0.15 / 1.3);
    near("the mark", first(&svg, "mark", "x1"), LEFT + 338.0 * (0.15 + 26.0 / 28.0) / 1.3);
}

#[test]
fn cores_stand_on_a_line_of_equal_ratios() {
    const UNIT: Unit = Unit::OhmPerKilometre;
    let core = |core, value, limit: f64| {
        evidence(Target::Core(core), value, value / 100.0, UNIT, Bound::AtMost(Amount::new(limit, UNIT)))
    };
    let cores = [core(Core::Line, 100.0, 16.0), core(Core::Neutral, 50.0, 16.0), core(Core::Earth, 500.0, 16.0)];
    let dangers = [core(Core::Line, 100.0, 24.0), core(Core::Neutral, 50.0, 24.0), core(Core::Earth, 500.0, 24.0)];
    let reason = Reason::CoresMeasured { room: RoomTemperature::Read, explanation: None, danger: None, fault: None };
    let pictures = drawn(&finding("core-resistance-high", reason, [cores, dangers].concat()));
    let [Picture { svg, .. }] = pictures.as_slice() else { unreachable!("one picture, got {}", pictures.len()) };
    // From 10 Ω/km to 1000 Ω/km: two decades over 338 pixels, 169 each. lg 1.6 = 0.2041, lg 2.4 = 0.3802, lg 5 = 0.6990.
    near("the limit of 16", first(svg, "limit", "x1"), LEFT + 169.0 * 0.204_12);
    near("the danger line of 24", first(svg, "dash", "x1"), LEFT + 169.0 * 0.380_21);
    for (mark, decades) in all(svg, "mark", "x1").into_iter().zip([1.0, 0.698_97, 1.698_97]) {
        near("a core", mark, LEFT + 169.0 * decades);
    }
    assert_eq!(all(svg, "mark", "x1").len(), 3, "a core is drawn once, whatever it is held against");
    for named in ["(class 5)", "Brown (line)", "Blue (neutral)", "Green-and-yellow (earth)"] {
        assert!(svg.contains(named), "{named} is not named");
    }
}

#[test]
fn the_heat_of_the_claim_stands_where_the_model_puts_it() {
    let record = records().remove("lethal-lead-good-print").expect("the case is there");
    let assessment = assess(&record.examination, &RuleBook::CURRENT);
    let hot = assessment.findings.iter().find(|f| f.code == "overheats-at-claim").expect("it is judged");
    let pictures = found::of(hot, &View::new(&record.examination));
    let [Picture { svg, notes }] = pictures.as_slice() else { unreachable!("one picture, got {}", pictures.len()) };
    // It claims 13 A, as much as the table allows of 1.25 mm²; the line ends at 1.2 times that, 314 pixels on.
    near("the claim", first(svg, "dash", "x1"), 34.0 + 314.0 / 1.2);
    // 30 °C stands at 190 and 160 °C at 10: 70 °C is four thirteenths of the way.
    near("70 °C", first(svg, "limit", "y1"), 190.0 - 180.0 * 4.0 / 13.0);
    // The cores settle above 160 °C, so the mark stands at the top.
    near("the mark", first(svg, "dot", "cx"), first(svg, "dash", "x1"));
    near("the mark", first(svg, "dot", "cy"), 10.0);
    assert!(notes.iter().any(|note| note.contains("Coiled")), "{notes:?}");
}

#[test]
fn a_cooler_claim_stands_on_the_curve() {
    let record = records().remove("sound-lead-meters").expect("the case is there");
    let assessment = assess(&record.examination, &RuleBook::CURRENT);
    let warm = assessment.findings.iter().find(|f| f.code == "overheats-at-claim").expect("it is judged");
    let Reason::HeatBalance { conductor: Steady::At(conductor), .. } = warm.judgement.reason else {
        unreachable!("the balance was found: {:?}", warm.judgement.reason)
    };
    let celsius = conductor.amount().in_unit(Unit::DegreeCelsius).expect("a temperature");
    let pictures = found::of(warm, &View::new(&record.examination));
    let svg = &pictures.first().expect("one picture").svg;
    near("the mark", first(svg, "dot", "cy"), 190.0 - 180.0 * (celsius - 30.0) / 130.0);
    // Somewhere along the curve lies the mark.
    let (_, curve) = svg.split_once("class=\"curve\" d=\"M").expect("there is a curve");
    let curve: Vec<(f64, f64)> = curve
        .split('"')
        .next()
        .unwrap_or_default()
        .split(" L")
        .filter_map(|point| point.split_once(' '))
        .filter_map(|(x, y)| Some((x.parse().ok()?, y.parse().ok()?)))
        .collect();
    let (x, y) = (first(svg, "dot", "cx"), first(svg, "dot", "cy"));
    let is_on_it = curve.windows(2).any(|two| {
        let [(x1, y1), (x2, y2)] = two else { return false };
        (*x1..=*x2).contains(&x) && (y - (y1 + (y2 - y1) * (x - x1) / (x2 - x1))).abs() < 1.0
    });
    assert!(is_on_it, "{x} {y} is not on {curve:?}");
}

#[test]
fn every_picture_says_in_words_what_it_shows_and_has_no_colour_of_its_own() {
    let mut seen = 0;
    for (name, page) in pages() {
        for svg in shown(&page).split("<svg").skip(1).map(|rest| rest.split("</svg>").next().unwrap_or_default()) {
            seen += 1;
            let label = svg.split_once("aria-label=\"").and_then(|(_, rest)| rest.split('"').next());
            assert!(label.is_some_and(|label| label.len() > 30), "{name}: {label:?}");
            assert!(svg.contains("role=\"img\""), "{name}");
            for colour in ["fill=", "stroke=", "style=", "#", "NaN", "inf"] {
                assert!(!svg.contains(colour), "{name} has {colour}: {svg}");
            }
        }
    }
    assert!(seen > 20, "only {seen} pictures");
}

#[test]
fn a_value_that_is_no_number_has_no_picture() {
    let limit = Bound::AtMost(Amount::new(1.0, Unit::Ohm));
    for value in [f64::INFINITY, f64::NAN] {
        let evidence = vec![evidence(Target::Socket(1), value, 0.1, Unit::Ohm, limit)];
        assert!(drawn(&finding("earth-resistance-high", Reason::Measured, evidence)).is_empty(), "{value}");
    }
}
