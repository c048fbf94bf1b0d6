//! Checks of the flex.

use plugwary::domain::check::cable::{condition, cores, length, make, print, size};
use plugwary::domain::check::sockets::connector;
use plugwary::domain::examination::Answer;
use plugwary::domain::facts;
use plugwary::domain::finding::Conformity::{Conforms, Inconclusive, Nonconforming, NotApplicable, NotExamined};
use plugwary::domain::finding::Severity::{BadSign, Breach, Danger};
use plugwary::domain::finding::{Basis, ClaimPlace, Conformity, Judgement, Needed, Reason, Severity};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::marking::FlexPrint;
use plugwary::domain::physics::heating::{Heat, Steady};
use plugwary::domain::quantity::{Measurand, Unit, amperes, millimetres, square_millimetres};
use plugwary::domain::question::Target;
use plugwary::domain::sample::Equipment::{Eyes, HandTools, Meters};
use plugwary::domain::standard::en50525::{Duty, sizes};
use plugwary::domain::standard::{bs1363_1, bs7671, iec60227_1, iec60799, iet_code};
use plugwary::domain::view::View;

use crate::bench::Bench;

type Check = fn(&View, Option<&FlexPrint>) -> Judgement;

fn flex(cores: u8, area: f64) -> FlexPrint {
    FlexPrint { cores: Some(cores), area: Some(square_millimetres(area)), ..FlexPrint::default() }
}

fn judged(bench: &Bench, check: Check, print: &FlexPrint) -> Judgement {
    check(&View::new(&bench.0), Some(print))
}

#[track_caller]
fn expect(bench: &Bench, check: Check, (cores, area): (u8, f64), outcome: Conformity) -> Judgement {
    let judgement = judged(bench, check, &flex(cores, area));
    assert_eq!(judgement.outcome, outcome, "{cores} x {area} mm²");
    judgement
}

#[track_caller]
fn expect_break(bench: &Bench, check: Check, print: (u8, f64), severity: Severity) {
    assert_eq!(expect(bench, check, print, Nonconforming).severity, severity, "{} x {} mm²", print.0, print.1);
}

fn with_fuse(rating: &str) -> Bench {
    Bench::lead(Eyes).one(facts::FUSE_RATING, rating)
}

fn measured_cord(metres: f64) -> Bench {
    Bench::cord_set(HandTools).one(connector::PATTERN, "c13").reads(
        facts::FLEX_LENGTH,
        Target::Sample,
        (metres, 0.001, Unit::Metre),
        Instrument::Tape,
    )
}

fn calliper(question: &'static plugwary::domain::question::Question, millimetres: f64) -> Bench {
    let shown = (millimetres, 0.01, Unit::Millimetre);
    Bench::lead(Meters).reads(question, Target::Sample, shown, Instrument::DigitalCalliper)
}

#[test]
fn an_inner_core_tape_or_melting_is_a_danger_and_a_scuff_a_bad_sign() {
    for (seen, severity) in [("core-shows", Danger), ("taped", Danger), ("melted", Danger), ("scuffed", BadSign)] {
        Bench::lead(Eyes).any(condition::CONDITION, &[seen]).expect_break("flex-damaged", severity);
    }
    Bench::lead(Eyes).any(condition::CONDITION, &["scuffed", "taped"]).expect_break("flex-damaged", Danger);
    Bench::lead(Eyes).any(condition::CONDITION, &["sheath-loose"]).expect("flex-damaged", Conforms);
    Bench::lead(Eyes).any(condition::CONDITION, &[]).expect("flex-damaged", Conforms);
}

#[test]
fn tape_leaves_open_whether_there_is_a_joint() {
    Bench::lead(Eyes).any(condition::CONDITION, &["joined", "taped"]).expect_break("joint-in-flex", Danger);
    Bench::lead(Eyes).any(condition::CONDITION, &["taped"]).expect("joint-in-flex", Inconclusive);
    Bench::lead(Eyes).any(condition::CONDITION, &["scuffed"]).expect("joint-in-flex", Conforms);
}

#[test]
fn a_sliding_sheath_is_a_bad_sign() {
    Bench::lead(Eyes).any(condition::CONDITION, &["sheath-loose"]).expect_break("sheath-loose", BadSign);
    Bench::lead(Eyes).any(condition::CONDITION, &["taped"]).expect("sheath-loose", Conforms);
}

#[test]
fn a_flex_nobody_looked_at_keeps_nothing() {
    let bench = Bench::lead(Meters).answer(condition::CONDITION, Target::Sample, Answer::Refused);
    bench.expect("flex-damaged", Inconclusive);
    bench.expect("joint-in-flex", Inconclusive);
    for code in ["flex-unmarked", "flex-maker-missing", "flex-unsuitable", "flex-thin-for-rating", "flex-thin-for-fuse"]
    {
        Bench::lead(Meters).expect(code, NotExamined);
    }
    for code in ["cores-too-few", "earth-colour-wrong", "line-neutral-colour-wrong", "sheath-thin", "insulation-thin"] {
        Bench::lead(Meters).expect(code, NotExamined);
    }
}

/// The print comes again within 0.55 m: IEC 60227-1:2007, 3.1.1 (memory-high).
#[test]
fn no_print_breaks_only_where_enough_of_the_flex_is_seen() {
    let bare = Bench::lead(Eyes).answer(facts::FLEX_PRINT, Target::Sample, Answer::Nothing);
    bare.expect("flex-unmarked", NotExamined);
    bare.clone().one(print::VISIBLE, "55-cm-or-more").expect_break("flex-unmarked", Breach);
    bare.clone().one(print::VISIBLE, "less").expect("flex-unmarked", Inconclusive);
    bare.expect("flex-thin-for-rating", Inconclusive);
    bare.expect("flex-unsuitable", NotApplicable);
}

#[test]
fn print_that_is_no_designation_is_said_to_be_not_understood() {
    let bench = with_fuse("13").printed(facts::FLEX_PRINT, Target::Sample, "quality flex ???");
    let not_understood = Reason::PrintNotUnderstood { place: ClaimPlace::Flex };
    for code in ["flex-unmarked", "flex-unsuitable", "flex-thin-for-rating", "flex-thin-for-fuse"] {
        bench.expect(code, Inconclusive);
        assert_eq!(bench.finding(code).map(|found| found.judgement.reason).as_ref(), Some(&not_understood), "{code}");
    }
}

#[test]
fn print_that_is_understood_is_a_claim() {
    let judgement = expect(&Bench::lead(Eyes), print::unmarked, (3, 1.5), Conforms);
    assert_eq!(judgement.basis, Basis::Print);
}

#[test]
fn a_thread_stands_in_for_the_makers_name() {
    Bench::lead(Eyes).one(print::MAKER, "name-or-mark").expect("flex-maker-missing", Conforms);
    let nameless = Bench::lead(Meters).one(print::MAKER, "none");
    nameless.expect("flex-maker-missing", Inconclusive);
    nameless.clone().one(print::MAKER_THREAD, "thread").expect("flex-maker-missing", Conforms);
    nameless.one(print::MAKER_THREAD, "no-thread").expect_break("flex-maker-missing", Breach);
}

/// UK extension sets are earthed: national note in the draft of IEC 60884-2-7; the last row of BS 1363-1 Table 2 is 1.5 mm².
#[test]
fn two_cores_do_not_suit_and_too_thick_is_a_bad_sign() {
    let lead = Bench::lead(Eyes);
    expect_break(&lead, print::unsuitable, (2, 1.5), Breach);
    expect(&lead, print::unsuitable, (3, 1.5), Conforms);
    expect_break(&lead, print::unsuitable, (3, 2.5), BadSign);
    let two_holes = Bench::cord_set(Eyes).one(connector::PATTERN, "two-holes");
    expect(&two_holes, print::unsuitable, (2, 0.75), Inconclusive);
    let without_cores = FlexPrint { cores: None, ..flex(3, 1.5) };
    assert_eq!(judged(&lead, print::unsuitable, &without_cores).outcome, Inconclusive);
}

/// Behind a 13 A fuse 1.25 mm² keeps, 1.0 mm² is a breach, 0.75 mm² a danger; no flex under 0.5 mm² for mains (usual practice).
#[test]
fn a_lead_behind_13_amperes_needs_1_25_square_millimetres() {
    let lead = with_fuse("13");
    for area in [1.5, 1.25] {
        assert_eq!(expect(&lead, size::thin_for_rating, (3, area), Conforms).basis, Basis::Print);
    }
    for (area, severity) in
        [(1.24, Breach), (1.0, Breach), (0.99, Danger), (0.75, Danger), (0.5, Danger), (0.4, Danger)]
    {
        expect_break(&lead, size::thin_for_rating, (3, area), severity);
    }
}

/// Worked currents that bring class 5 cores to 60 °C in 30 °C: 0.5 mm² 9.4 A, 0.75 mm² 11.9 A, 1.0 mm² 14.0 A. The table decides that it
/// breaks, heat how gravely: a danger where 1.3 times the rise may be 70 °C, at a rise of 30.8 K: 1.5 % more current than for 30 K.
#[test]
fn heat_grades_a_flex_that_is_above_its_table() {
    for (area, current) in [(0.5, 9.4), (0.75, 11.9), (1.0, 14.0)] {
        for (part, severity) in [(0.98, Breach), (1.04, Danger)] {
            let claim = format!("{:.2} A 250 V~", current * part);
            let lead = Bench::lead(Eyes).printed(facts::RATING, Target::Claim(ClaimPlace::Body), &claim);
            expect_break(&lead, size::thin_for_rating, (3, area), severity);
        }
    }
}

/// 0.75 mm² behind 13 A: above its table, and at 13 A within the model's doubt of 70 °C; at the 20.8 A that the fuse never opens (1.6 times,
/// BS 1362) beyond it. Wound up it is hotter.
#[test]
fn being_above_the_table_and_overheating_are_two_statements() {
    let Reason::FlexShort { warmth, .. } =
        expect(&with_fuse("13"), size::thin_for_rating, (3, 0.75), Nonconforming).reason
    else {
        panic!("the flex is short")
    };
    let [rated, lasting] = warmth.as_slice() else { panic!("{warmth:?}") };
    assert_eq!((rated.current, lasting.current), (amperes(13.0), amperes(20.8)));
    assert_eq!((rated.heat, lasting.heat), (Heat::CannotTell, Heat::Overheats));
    for at in [rated, lasting] {
        let (Steady::At(straight), Steady::At(wound)) = (at.straight, at.wound) else { panic!("{at:?}") };
        assert!(wound > straight);
    }
}

/// Table 4F3A of BS 7671: 0.5 mm² 3 A, 0.75 mm² 6 A, 1.0 mm² 10 A, 1.25 mm² 13 A.
#[test]
fn a_smaller_fuse_makes_a_thinner_lead_good() {
    expect(&with_fuse("10"), size::thin_for_rating, (3, 1.0), Conforms);
    expect_break(&with_fuse("10"), size::thin_for_rating, (3, 0.75), Breach);
    expect_break(&with_fuse("10"), size::thin_for_rating, (3, 0.5), Danger);
    expect(&with_fuse("5"), size::thin_for_rating, (3, 0.75), Conforms);
    expect_break(&with_fuse("5"), size::thin_for_rating, (3, 0.5), Breach);
    expect(&with_fuse("3"), size::thin_for_rating, (3, 0.5), Conforms);
    expect_break(&with_fuse("3"), size::thin_for_rating, (3, 0.49), Danger);
}

#[test]
fn a_fuse_that_is_not_known_leaves_a_thin_lead_open() {
    let lead = with_fuse("other-up-to-13");
    expect(&lead, size::thin_for_rating, (3, 1.25), Conforms);
    let open = expect(&lead, size::thin_for_rating, (3, 0.75), Inconclusive);
    assert_eq!(open.reason, Reason::Needs(Needed::FuseRating));
    expect(&with_fuse("not-printed"), size::thin_for_rating, (3, 1.5), Inconclusive);
    expect_break(&with_fuse("above-13"), size::thin_for_rating, (3, 1.0), Breach);
    expect(&with_fuse("above-13"), size::thin_for_rating, (3, 1.5), Inconclusive);
    expect(&Bench::lead(Eyes), size::thin_for_rating, (3, 1.5), NotExamined);
    expect_break(&Bench::lead(Eyes), size::thin_for_rating, (3, 0.4), Danger);
}

/// IEC 60799 (memory-medium) and BS 1363-1 Table 2 (read): 10 A needs 1.0 mm², 0.75 mm² up to 2 m.
#[test]
fn a_short_cord_set_may_be_thinner() {
    let checks: [Check; 2] = [size::thin_for_rating, connector::above_flex];
    for check in checks {
        expect(&measured_cord(1.8), check, (3, 0.75), Conforms);
        expect(&measured_cord(2.0), check, (3, 0.75), Inconclusive);
        expect_break(&measured_cord(2.2), check, (3, 0.75), Breach);
        expect(&measured_cord(5.0), check, (3, 1.0), Conforms);
        expect_break(&measured_cord(1.8), check, (3, 0.74), Danger);
    }
}

#[test]
fn a_cord_set_behind_13_amperes_may_have_0_75_square_millimetres() {
    let set = measured_cord(1.8).one(facts::FUSE_RATING, "13");
    expect(&set, size::thin_for_rating, (3, 0.75), Conforms);
    expect(&set, size::thin_for_fuse, (3, 0.75), Conforms);
}

/// A 3 A fuse lets 4.8 A flow (BS 1362), less than three times the 3 A of 0.5 mm²: a breach, no danger.
#[test]
fn a_small_fuse_lessens_what_a_thin_cord_set_can_do() {
    let set = measured_cord(1.8).one(facts::FUSE_RATING, "3");
    expect_break(&set, connector::above_flex, (3, 0.5), Breach);
    expect_break(&measured_cord(1.8), connector::above_flex, (3, 0.5), Danger);
}

#[test]
fn what_a_cord_set_lacks_leaves_it_open() {
    let set = Bench::cord_set(Eyes);
    expect(&set, connector::above_flex, (3, 0.75), NotExamined);
    let length = expect(&set.clone().one(connector::PATTERN, "c13"), connector::above_flex, (3, 0.75), Inconclusive);
    assert_eq!(length.reason, Reason::Needs(Needed::FlexLength));
    let current = expect(&set.one(connector::PATTERN, "other"), connector::above_flex, (3, 0.75), Inconclusive);
    assert_eq!(current.reason, Reason::Needs(Needed::ClaimedCurrent));
}

/// BS 1363-1:1995 Table 2 (read): 0.5 mm² behind 3 A, from 0.75 mm² behind 13 A; 5 A before 0.5 mm² only for inrush.
#[test]
fn the_fuse_is_held_against_the_flex() {
    expect(&with_fuse("13"), size::thin_for_fuse, (3, 0.75), Conforms);
    expect_break(&with_fuse("13"), size::thin_for_fuse, (3, 0.74), Danger);
    expect_break(&with_fuse("13"), size::thin_for_fuse, (3, 0.5), Danger);
    expect(&with_fuse("3"), size::thin_for_fuse, (3, 0.5), Conforms);
    expect_break(&with_fuse("3"), size::thin_for_fuse, (3, 0.49), Danger);
    expect_break(&with_fuse("5"), size::thin_for_fuse, (3, 0.5), Breach);
    expect(&Bench::cord_set(Eyes).one(facts::FUSE_RATING, "5"), size::thin_for_fuse, (3, 0.5), Inconclusive);
    expect_break(&with_fuse("above-13"), size::thin_for_fuse, (3, 1.5), Danger);
    expect(&with_fuse("not-printed"), size::thin_for_fuse, (3, 1.5), Inconclusive);
    expect(&with_fuse("other-up-to-13"), size::thin_for_fuse, (3, 0.5), Inconclusive);
}

#[test]
fn two_cores_are_a_danger_and_print_of_three_closes_nothing() {
    Bench::lead(Meters).one(facts::CORE_COUNT, "three").expect("cores-too-few", Conforms);
    Bench::lead(Meters).one(facts::CORE_COUNT, "two").expect_break("cores-too-few", Danger);
    Bench::lead(Meters).one(facts::CORE_COUNT, "other").expect("cores-too-few", Inconclusive);
    let printed = Bench::lead(Eyes).printed(facts::FLEX_PRINT, Target::Sample, "as passed beside it");
    expect(&printed, cores::too_few, (3, 1.5), NotExamined);
    expect_break(&printed, cores::too_few, (2, 1.5), Danger);
    expect(&printed.one(facts::CORE_COUNT, "three"), cores::too_few, (2, 1.5), Conforms);
}

#[test]
fn a_live_green_and_yellow_core_is_a_danger_and_any_other_earth_colour_a_breach() {
    Bench::lead(Meters).one(cores::EARTH_COLOUR, "green-and-yellow").expect("earth-colour-wrong", Conforms);
    for colour in ["nearly-one-colour", "green", "yellow", "other"] {
        Bench::lead(Meters).one(cores::EARTH_COLOUR, colour).expect_break("earth-colour-wrong", Breach);
    }
    let live = Bench::lead(Meters).one(cores::EARTH_COLOUR, "green-and-yellow-is-live");
    live.expect_break("earth-colour-wrong", Danger);
    Bench::lead(Meters).one(facts::CORE_COUNT, "two").expect("earth-colour-wrong", NotApplicable);
}

#[test]
fn only_brown_and_blue_the_right_way_round_keeps_the_rule() {
    Bench::lead(Meters)
        .one(cores::LINE_NEUTRAL_COLOURS, "brown-and-blue")
        .expect("line-neutral-colour-wrong", Conforms);
    for colours in ["swapped", "red-and-black", "black-and-white", "other"] {
        let bench = Bench::lead(Meters).one(cores::LINE_NEUTRAL_COLOURS, colours);
        bench.expect_break("line-neutral-colour-wrong", Breach);
    }
}

/// Sheath of 3 x 1.0 mm² is 0.8 mm: 0.85 x 0.8 - 0.1 = 0.58 mm at its thinnest (IEC 60227-1, 5.5.3, memory-high).
#[test]
fn the_sheath_is_held_against_its_thinnest_point() {
    for (reading, outcome) in [(0.54, Nonconforming), (0.58, Inconclusive), (0.62, Conforms)] {
        expect(&calliper(make::SHEATH_THICKNESS, reading), make::sheath, (3, 1.0), outcome);
    }
    expect_break(&calliper(make::SHEATH_THICKNESS, 0.3), make::sheath, (3, 1.0), Breach);
    expect(&calliper(make::SHEATH_THICKNESS, 0.3), make::sheath, (3, 1.25), NotApplicable);
}

/// Insulation of 3 x 1.5 mm² is 0.7 mm: 0.9 x 0.7 - 0.1 = 0.53 mm at its thinnest (IEC 60227-1, 5.2.3, memory-high).
#[test]
fn the_insulation_is_held_against_its_thinnest_point() {
    for (reading, outcome) in [(0.49, Nonconforming), (0.53, Inconclusive), (0.57, Conforms)] {
        expect(&calliper(make::INSULATION_THICKNESS, reading), make::insulation, (3, 1.5), outcome);
    }
}

/// 3 x 1.5 mm²: 7.4 mm to 9.4 mm. 3 x 0.75 mm², duty not named: from 5.2 mm (light) to 7.6 mm (ordinary).
#[test]
fn a_diameter_off_the_table_is_a_bad_sign() {
    for (reading, outcome) in [(7.35, Nonconforming), (7.4, Inconclusive), (7.45, Conforms), (9.35, Conforms)] {
        expect(&calliper(facts::FLEX_DIAMETER, reading), make::diameter, (3, 1.5), outcome);
    }
    expect_break(&calliper(facts::FLEX_DIAMETER, 9.45), make::diameter, (3, 1.5), BadSign);
    for (reading, outcome) in [(5.1, Nonconforming), (5.3, Conforms), (7.5, Conforms), (7.7, Nonconforming)] {
        expect(&calliper(facts::FLEX_DIAMETER, reading), make::diameter, (3, 0.75), outcome);
    }
}

/// EN 50525-2-11: the sheath of H05VV-F 3G0.75 is 0.8 mm, so 0.58 mm at its thinnest; that of H03VV-F 0.6 mm, so 0.41 mm. Its sizes
/// are those of round PVC cords: a rubber or flat cord is not held to them.
#[test]
fn sizes_are_those_of_the_cord_that_the_print_names() {
    let read = |print: &str| {
        let bench = calliper(make::SHEATH_THICKNESS, 0.5).printed(facts::FLEX_PRINT, Target::Sample, print);
        bench.outcome("sheath-thin")
    };
    assert_eq!(read("H05VV-F 3G0.75"), Nonconforming);
    assert_eq!(read("H03VV-F 3G0.75"), Conforms);
    assert_eq!(read("3G0.75"), Conforms);
    assert_eq!(read("H07RN-F 3G1.5"), NotApplicable);
    assert_eq!(read("H05VVH2-F 3G0.75"), NotApplicable);
}

/// Table 4F3A of BS 7671 ends with 32 A: a claim beyond it is short of every thinner flex.
#[test]
fn a_claim_beyond_the_table_does_not_fit_a_thin_flex() {
    let lead = with_fuse("3").printed(facts::RATING, Target::Claim(ClaimPlace::Body), "40A 250V");
    expect_break(&lead, size::thin_for_rating, (3, 1.5), Breach);
    expect(&lead, size::thin_for_rating, (3, 4.0), Conforms);
}

/// IET Code of Practice, 5th edition: 12 m of 1.25 mm², 15 m of 1.5 mm².
#[test]
fn a_lead_longer_than_advised_is_a_bad_sign() {
    let long = |metres| {
        let shown = (metres, 0.01, Unit::Metre);
        Bench::lead(HandTools).reads(facts::FLEX_LENGTH, Target::Sample, shown, Instrument::Tape)
    };
    expect(&long(11.9), length::too_long, (3, 1.25), Conforms);
    expect(&long(12.0), length::too_long, (3, 1.25), Inconclusive);
    expect_break(&long(12.1), length::too_long, (3, 1.25), BadSign);
    expect(&long(12.1), length::too_long, (3, 1.5), Conforms);
    expect(&long(12.1), length::too_long, (3, 1.0), NotApplicable);
    long(20.0).any(facts::EXTRAS, &["rcd"]).expect("flex-too-long", NotApplicable);
    Bench::cord_set(HandTools).expect("flex-too-long", NotApplicable);
}

/// Table 4F3A of BS 7671, Table 2 of BS 1363-1, IEC 60799 and the IET Code: each row at its size, just off it, and outside the table.
#[test]
fn tables_answer_at_between_and_outside_their_rows() {
    let rating = |area| bs7671::cord_rating(square_millimetres(area));
    let rows = [(0.5, 3.0), (0.75, 6.0), (1.0, 10.0), (1.25, 13.0), (1.5, 16.0), (2.5, 25.0), (4.0, 32.0)];
    for (area, current) in rows {
        assert_eq!(rating(area), Some(amperes(current)));
        assert_eq!(bs7671::cord_area(amperes(current)), Some(square_millimetres(area)));
        assert!(rating(area - 0.01) < Some(amperes(current)));
        assert!(bs7671::cord_area(amperes(current + 0.1)) != Some(square_millimetres(area)));
    }
    assert_eq!(bs1363_1::largest_fuse(square_millimetres(0.75)), Some(amperes(13.0)));
    assert_eq!(bs1363_1::largest_fuse(square_millimetres(0.74)), Some(amperes(3.0)));
    assert_eq!(bs1363_1::largest_fuse(square_millimetres(0.49)), None);
    assert_eq!(iet_code::longest_lead(square_millimetres(2.5)).map(Measurand::base), Some(25.0));
    assert_eq!(iet_code::longest_lead(square_millimetres(1.24)), None);
    let sets = [(2.5, 0.5, 0.75), (6.0, 0.75, 0.75), (10.0, 0.75, 1.0), (16.0, 1.0, 1.5)];
    for (current, short, any_length) in sets {
        let least = iec60799::least_area(amperes(current));
        assert_eq!(least.map(|least| least.short), Some(square_millimetres(short)));
        assert_eq!(least.map(|least| least.any_length), Some(square_millimetres(any_length)));
    }
    assert_eq!(iec60799::least_area(amperes(16.1)), None);
}

/// Type 57 rows of IEC 60227-5 Table 13: as the number of cores grows, nothing gets thinner.
#[test]
fn cords_of_more_cores_are_thicker() {
    for area in [0.75, 1.0, 1.5, 2.5] {
        let row = |cores| sizes(Duty::Ordinary, cores, square_millimetres(area)).expect("the table has the row");
        for cores in [3, 4] {
            let (fewer, more) = (row(cores), row(cores + 1));
            assert!(
                fewer.sheath <= more.sheath && fewer.diameter.0 < more.diameter.0 && fewer.diameter.1 < more.diameter.1
            );
        }
    }
    let light = sizes(Duty::Light, 3, square_millimetres(0.75)).expect("the table has the row");
    assert!(light.diameter == (millimetres(5.2), millimetres(6.7)));
    assert_eq!(sizes(Duty::Light, 3, square_millimetres(1.0)), None);
    assert!(iec60227_1::thinnest_sheath(light.sheath) < iec60227_1::thinnest_sheath(millimetres(0.8)));
}
