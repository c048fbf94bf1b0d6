//! What metal the cores are, and the hints around it: strands, mass, volt drop, readings that agree.

use plugwary::domain::check::cable::copper::{metal, strands, volt_drop};
use plugwary::domain::examination::Answer;
use plugwary::domain::facts;
use plugwary::domain::finding::{Bearing, Conformity, Needed, Reason, Severity};
use plugwary::domain::instrument::Instrument::{DigitalCalliper, FourWireMeter, HandMeter, Scale, Tape};
use plugwary::domain::physics::metal::Metal;
use plugwary::domain::physics::signs::Look;
use plugwary::domain::quantity::{Unit, metres, square_millimetres};
use plugwary::domain::question::Target;
use plugwary::domain::uncertainty::Measured;
use plugwary::domain::view::View;

use super::{amounts_to, bench, breaks, cores, piece, with};
use crate::bench::Bench;

#[test]
fn a_strong_pull_alone_means_steel() {
    bench().one(metal::MAGNET, "strong").expect_break("metal-not-copper", Severity::Breach);
    for answer in ["weak", "none"] {
        let finding = bench().one(metal::MAGNET, answer).finding("metal-not-copper").unwrap();
        assert_eq!(finding.outcome(), Conformity::Inconclusive, "{answer}");
        assert_eq!(finding.judgement.bearing, Bearing::IsOnlyTold, "{answer}");
    }
}

/// Trade knowledge: tinned copper scrapes silver then red, clad aluminium red then silver.
#[test]
fn a_scrape_tells_clad_from_tinned() {
    let scraped = |answer: &str| bench().one(metal::MAGNET, "none").one(metal::SCRAPE, answer);
    scraped("red-then-silver").expect_break("metal-not-copper", Severity::Breach);
    for answer in ["silver-then-red", "red"] {
        let finding = scraped(answer).finding("metal-not-copper").unwrap();
        assert_eq!(finding.judgement.bearing, Bearing::IsOnlyTold, "{answer} does not speak against copper");
        assert_eq!(finding.outcome(), Conformity::Inconclusive, "{answer} does not prove copper");
    }
    let silver = scraped("silver").finding("metal-not-copper").unwrap();
    assert_eq!(silver.outcome(), Conformity::Inconclusive, "tin may not have been scraped through");
    assert_eq!(silver.judgement.bearing, Bearing::Decides);
}

/// 30 strands of 0.25 mm are 1.473 mm². At 10 m they read 117.8 mΩ of copper and 186.7 mΩ of clad aluminium.
#[test]
fn strands_and_resistance_name_the_metal() {
    let of = |milliohms: f64| {
        cores(piece(10.0), [milliohms; 3], FourWireMeter)
            .one(metal::MAGNET, "none")
            .answer(strands::STRAND_COUNT, Target::Sample, Answer::Count(30))
            .reads(strands::TEN_STRANDS, Target::Sample, (2.5, 0.01, Unit::Millimetre), DigitalCalliper)
    };
    of(117.8).expect("metal-not-copper", Conformity::Conforms);
    let clad = of(186.7);
    clad.expect_break("metal-not-copper", Severity::Breach);
    let Reason::Metals { candidates: likely, contradict: false, .. } =
        clad.finding("metal-not-copper").unwrap().judgement.reason
    else {
        panic!("metals are named")
    };
    let metals: Vec<Metal> = likely.iter().map(|candidate| candidate.metal).collect();
    assert!(metals.contains(&Metal::CladAluminium10) && metals.contains(&Metal::CladAluminium15), "{metals:?}");
}

/// Mass resistivity of copper is 0.154 Ω·g/m² (derived): 11.75 mΩ and 13.1 g over 1 m. A strong pull (2 in 1000 copper cores, usual
/// practice) or a scrape of red then silver (1 in 100) stands against it; no metal has both.
#[test]
fn a_reading_of_copper_and_a_pull_or_scrape_of_another_metal_cannot_be_told() {
    let read = |milliohms: f64| {
        cores(piece(1.0), [milliohms; 3], FourWireMeter).reads(
            strands::CORE_MASS,
            Target::Sample,
            (13.1, 0.01, Unit::Gram),
            Scale,
        )
    };
    for contradicted in [
        read(11.75).one(metal::MAGNET, "strong"),
        read(11.75).one(metal::MAGNET, "strong").one(metal::SCRAPE, "red"),
        read(11.75).one(metal::SCRAPE, "red-then-silver"),
        read(11.75).one(metal::MAGNET, "none").one(metal::SCRAPE, "red-then-silver"),
        read(11.75).one(metal::MAGNET, "none").one(metal::SCRAPE, "yellow"),
    ] {
        let judgement = contradicted.finding("metal-not-copper").unwrap().judgement;
        amounts_to(&judgement, Conformity::Inconclusive);
        assert_eq!(judgement.bearing, Bearing::Decides, "the doubt counts");
        let Reason::Metals { candidates, contradict: true, next, .. } = judgement.reason else {
            panic!("they contradict each other")
        };
        assert_eq!(candidates.first().map(|best| best.metal), Some(Metal::Copper));
        assert!(candidates.len() > 1, "{candidates:?}");
        assert!(next.is_some());
    }
    read(11.75).one(metal::MAGNET, "none").expect("metal-not-copper", Conformity::Conforms);
}

/// Clad aluminium of 0.098 Ω·g/m² (derived) that is pulled strongly: whichever is wrong, it is not copper.
#[test]
fn signs_that_contradict_each_other_about_two_other_metals_still_break() {
    let bench = cores(piece(1.0), [20.0; 3], FourWireMeter)
        .reads(strands::CORE_MASS, Target::Sample, (4.9, 0.01, Unit::Gram), Scale)
        .one(metal::MAGNET, "strong");
    bench.expect_break("metal-not-copper", Severity::Breach);
    let reason = bench.finding("metal-not-copper").unwrap().judgement.reason;
    assert!(matches!(reason, Reason::Metals { contradict: true, .. }), "{reason:?}");
}

/// Twisted strands are some 2 % longer than their core (usual practice). 28.95 mΩ and 21.5 g over 1.93 m make 0.1671 Ω·g/m², 8 % above
/// copper's 0.154 (derived); over the strands' own 1.969 m 0.1606, 4 % above it, which drawing and tinning explain.
#[test]
fn the_length_of_twisted_strands_is_granted() {
    let sound = cores(piece(1.93), [28.95; 3], FourWireMeter).one(metal::MAGNET, "none").one(metal::SCRAPE, "red");
    let sound = sound.reads(strands::CORE_MASS, Target::Sample, (21.5, 0.01, Unit::Gram), Scale);
    sound.expect("metal-not-copper", Conformity::Conforms);
}

/// 0.0215 Ω·mm²/m is a quarter above copper and a fifth under clad aluminium (0.01735 and 0.0270): no metal has it.
#[test]
fn a_number_that_no_metal_has_names_none() {
    let bench = cores(piece(10.0), [146.0; 3], FourWireMeter)
        .answer(strands::STRAND_COUNT, Target::Sample, Answer::Count(30))
        .reads(strands::TEN_STRANDS, Target::Sample, (2.5, 0.001, Unit::Millimetre), FourWireMeter);
    let judgement = bench.finding("metal-not-copper").unwrap().judgement;
    amounts_to(&judgement, Conformity::Inconclusive);
    assert!(matches!(judgement.reason, Reason::Metals { contradict: true, .. }), "{:?}", judgement.reason);
}

/// With a magnet that found nothing, mass and resistance decide oftenest (worked: always for copper and clad aluminium). Once it is
/// settled no look is named; where signs contradict each other and none is left, all of them are.
#[test]
fn the_look_that_would_tell_most_is_named() {
    let next = |bench: &Bench| {
        let Reason::Metals { next, .. } = bench.finding("metal-not-copper").unwrap().judgement.reason else {
            panic!("metals are named")
        };
        next
    };
    assert_eq!(next(&bench().one(metal::MAGNET, "none")), Some(Look::Mass));
    let of_copper = cores(piece(1.0), [11.75; 3], FourWireMeter).reads(
        strands::CORE_MASS,
        Target::Sample,
        (13.1, 0.01, Unit::Gram),
        Scale,
    );
    assert_eq!(next(&of_copper), None, "settled");
    let all = of_copper.one(metal::MAGNET, "strong").one(metal::SCRAPE, "red");
    assert_eq!(next(&all), Some(Look::Again));
}

/// A bare copper core of 1.5 mm² and 1 m weighs 13.1 g at 1.473 mm²; the same core of clad aluminium some 4.9 g.
#[test]
fn mass_and_resistance_name_the_metal() {
    let of = |milliohms: f64, grams: f64| {
        cores(piece(1.0), [milliohms; 3], FourWireMeter).reads(
            strands::CORE_MASS,
            Target::Sample,
            (grams, 0.01, Unit::Gram),
            Scale,
        )
    };
    of(11.8, 13.1).expect("metal-not-copper", Conformity::Conforms);
    of(18.7, 4.9).expect_break("metal-not-copper", Severity::Breach);
}

#[test]
fn a_reading_with_its_leads_names_no_metal() {
    let bench = cores(piece(1.0), [340.0; 3], HandMeter).reads(
        strands::CORE_MASS,
        Target::Sample,
        (13.1, 0.01, Unit::Gram),
        Scale,
    );
    bench.expect("metal-not-copper", Conformity::NotExamined);
}

/// Least copper for 1.5 mm²: 17.241/13.3 = 1.296 mm² (derived).
#[test]
fn strands_short_of_their_copper_are_a_bad_sign() {
    let of = |count: u8| {
        let bench = bench().answer(strands::STRAND_COUNT, Target::Sample, Answer::Count(count)).reads(
            strands::TEN_STRANDS,
            Target::Sample,
            (2.5, 0.01, Unit::Millimetre),
            DigitalCalliper,
        );
        strands::area_judgement(&View::new(&bench.0), Some(square_millimetres(1.5)))
    };
    amounts_to(&of(30), Conformity::Conforms);
    amounts_to(&of(26), Conformity::Inconclusive);
    breaks(&of(20), Severity::BadSign);
}

/// Ten strands of 2.5 mm are read to 0.0119 mm and lie 2 % loose (usual practice), 2.06 % together, which counts twice in the area; one in
/// fifty may be missed: √(4.11² + 2²) = 4.57 %.
#[test]
fn strands_laid_side_by_side_lie_a_little_loose() {
    let bench = bench().answer(strands::STRAND_COUNT, Target::Sample, Answer::Count(30)).reads(
        strands::TEN_STRANDS,
        Target::Sample,
        (2.5, 0.01, Unit::Millimetre),
        DigitalCalliper,
    );
    let area = strands::strands(&View::new(&bench.0)).unwrap().area();
    let relative = area.u.value / area.value.value;
    assert!((relative - 0.0457).abs() < 0.0002, "{relative}");
}

/// A metre of core, known to 4 mm, has 1.02 m of strands, give or take 1 % (usual practice): √(4.08² + 10.2²) = 10.99 mm.
#[test]
fn strands_are_longer_than_their_core() {
    let found = strands::length_of_strands(Measured::new(metres(1.0), metres(0.004)));
    assert!((found.value.value - 1.02).abs() < 1e-12 && (found.u.value - 0.010_99).abs() < 1e-5, "{found:?}");
}

/// What a strand shows, with a magnet that found nothing (usual practice): red all the way or under silver is copper's, silver under red clad
/// aluminium's, silver all the way aluminium's, yellow brass's.
#[test]
fn every_colour_of_a_scrape_speaks_for_its_metal() {
    for (colour, likeliest) in [
        ("red", Metal::Copper),
        ("silver-then-red", Metal::Copper),
        ("red-then-silver", Metal::CladAluminium15),
        ("silver", Metal::Aluminium),
        ("yellow", Metal::Brass),
    ] {
        let scraped = bench().one(metal::MAGNET, "none").one(metal::SCRAPE, colour);
        let Reason::Metals { candidates, .. } = scraped.finding("metal-not-copper").unwrap().judgement.reason else {
            panic!("metals are named")
        };
        assert_eq!(candidates.first().map(|best| best.metal), Some(likeliest), "{colour}");
    }
}

/// No strand, no width and no mass are slips of the pen; one strand is a wire.
#[test]
fn nothing_counted_or_weighed_is_no_core() {
    let counted = |count, millimetres| {
        let bench = bench().answer(strands::STRAND_COUNT, Target::Sample, Answer::Count(count)).reads(
            strands::ONE_STRAND,
            Target::Sample,
            (millimetres, 0.01, Unit::Millimetre),
            DigitalCalliper,
        );
        strands::strands(&View::new(&bench.0)).is_some()
    };
    assert_eq!((counted(0, 0.2), counted(1, 1.38), counted(7, 0.0)), (false, true, false));
    let weighed = |grams| {
        let bench = bench().reads(strands::CORE_MASS, Target::Sample, (grams, 0.01, Unit::Gram), Scale);
        strands::mass(&View::new(&bench.0)).is_some()
    };
    assert_eq!((weighed(0.0), weighed(0.01)), (false, true));
}

/// Worked: a calliper on one strand of 0.10 mm is known to 0.012 mm, 24 % in area, and cannot tell copper from clad aluminium; with a
/// strand of 0.5 mm it is 5 %. 7 strands of 0.10 mm are 0.055 mm² and 315 mΩ a metre of copper.
#[test]
fn one_strand_is_measured_where_there_are_fewer_than_ten() {
    let cut = cores(piece(1.0), [321.0; 3], FourWireMeter).one(facts::MAY_CUT, "yes").one(metal::MAGNET, "none");
    let few = cut.answer(strands::STRAND_COUNT, Target::Sample, Answer::Count(7));
    let asked = |bench: &Bench| {
        plugwary::domain::walk::asked(&View::new(&bench.0)).into_iter().map(|(q, _)| q.id).collect::<Vec<_>>()
    };
    assert!(asked(&few).contains(&"one-strand-width") && !asked(&few).contains(&"ten-strands-width"));
    let many = few.clone().answer(strands::STRAND_COUNT, Target::Sample, Answer::Count(10));
    assert!(!asked(&many).contains(&"one-strand-width") && asked(&many).contains(&"ten-strands-width"));
    let measured = few.reads(strands::ONE_STRAND, Target::Sample, (0.10, 0.01, Unit::Millimetre), DigitalCalliper);
    let area = strands::strands(&View::new(&measured.0)).unwrap().area();
    let relative = area.u.value / area.value.value;
    assert!((0.22..0.26).contains(&relative), "{relative}");
    let finding = measured.finding("metal-not-copper").unwrap();
    assert_eq!(finding.outcome(), Conformity::Inconclusive, "one hair-thin strand names no metal");
}

/// The same in mass: 1.296 mm² of copper weigh 11.5 g a metre.
#[test]
fn a_light_core_is_a_bad_sign() {
    let of = |grams: f64| {
        let bench = piece(1.0).reads(strands::CORE_MASS, Target::Sample, (grams, 0.01, Unit::Gram), Scale);
        strands::mass_judgement(&View::new(&bench.0), Some(square_millimetres(1.5)))
    };
    amounts_to(&of(13.1), Conformity::Conforms);
    amounts_to(&of(11.52), Conformity::Inconclusive);
    breaks(&of(5.0), Severity::BadSign);
    let bench = bench().reads(strands::CORE_MASS, Target::Sample, (5.0, 0.01, Unit::Gram), Scale);
    let judgement = strands::mass_judgement(&View::new(&bench.0), Some(square_millimetres(1.5)));
    assert_eq!(judgement.reason, Reason::Needs(Needed::PieceLength));
}

/// BS 7671 Table 4F3B: 1.25 mm² 37 mV/A/m. 13 A over 23.9 m lose 11.5 V, 5 % of 230 V.
#[test]
fn a_long_thin_flex_loses_too_much() {
    let of = |metres: f64| {
        let bench = bench().reads(facts::FLEX_LENGTH, Target::Sample, (metres, 0.01, Unit::Metre), Tape);
        with(&bench, Some(1.25), Some(13.0), volt_drop::judge)
    };
    amounts_to(&of(23.5), Conformity::Conforms);
    assert_eq!(of(23.5).reason, Reason::FitsTheClaim);
    amounts_to(&of(23.9), Conformity::Inconclusive);
    breaks(&of(24.3), Severity::BadSign);
    amounts_to(&with(&bench(), Some(1.25), Some(13.0), volt_drop::judge), Conformity::NotExamined);
}

/// Cores as read, warmed to 60 °C: 15.6 Ω/km out and back, 13 A, 26 m lose 12.2 V; cold they would lose 10.5 V.
#[test]
fn volt_drop_is_that_of_warm_cores() {
    let bench = cores(piece(10.0), [156.0; 3], FourWireMeter);
    let of = |metres: f64| {
        let bench = bench.clone().reads(facts::FLEX_LENGTH, Target::Sample, (metres, 0.01, Unit::Metre), Tape);
        with(&bench, Some(1.25), Some(13.0), volt_drop::judge)
    };
    breaks(&of(26.0), Severity::BadSign);
    amounts_to(&of(23.0), Conformity::Conforms);
    assert_eq!(of(23.0).reason, Reason::Measured);
}
