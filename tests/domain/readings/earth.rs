//! The earth path by the meter, at, inside and outside its limits.

use plugwary::domain::check::readings::{earth, earth_resistance::EARTH_RESISTANCE};
use plugwary::domain::check::sockets::connector;
use plugwary::domain::examination::Answer;
use plugwary::domain::facts;
use plugwary::domain::finding::Conformity::{Conforms, Inconclusive, NotExamined};
use plugwary::domain::finding::Severity::Danger;
use plugwary::domain::finding::{Basis, Bound, Needed, Reason};
use plugwary::domain::instrument::Instrument::{
    self, EarthPathTester, FourWireMeter, HandMeter, HandMeterNulled, Tape,
};
use plugwary::domain::quantity::Unit::{Metre, Milliohm, Ohm};
use plugwary::domain::quantity::{Amount, Unit};
use plugwary::domain::question::{ClaimPlace, Core, Target};
use plugwary::domain::reading::Shown;
use plugwary::domain::sample::Equipment::{HandTools, Meters};
use plugwary::domain::view::View;
use plugwary::domain::walk;

use super::{PREPARED, ready, reason, shows};
use crate::bench::Bench;

const SOCKETS: [Target; 2] = [Target::Socket(1), Target::Socket(2)];

/// A lead with 3 m of flex that says 1.0 mm².
fn lead() -> Bench {
    ready(Meters).printed(facts::FLEX_PRINT, Target::Sample, "H05VV-F 3G1.0").reads(
        facts::FLEX_LENGTH,
        Target::Sample,
        (3.0, 0.001, Metre),
        Tape,
    )
}

fn both_read(bench: &Bench, reading: (f64, f64, Unit), instrument: Instrument) -> Bench {
    SOCKETS.into_iter().fold(bench.clone(), |bench, socket| bench.reads(EARTH_RESISTANCE, socket, reading, instrument))
}

fn both_read_four_wire(bench: &Bench, milliohms: f64) -> Bench {
    both_read(bench, (milliohms, 0.1, Milliohm), FourWireMeter)
}

/// IET Code of Practice, Table 15.1 (read), worked: 3 m of 1.0 mm² at 19.5 mΩ/m is 0.0585 Ω; the limit is 0.1585 Ω.
#[test]
fn the_earth_may_read_a_tenth_of_an_ohm_beyond_its_flex() {
    both_read_four_wire(&lead(), 157.5).expect("earth-resistance-high", Conforms);
    both_read_four_wire(&lead(), 158.5).expect("earth-resistance-high", Inconclusive);
    both_read_four_wire(&lead(), 159.5).expect_break("earth-resistance-high", Danger);
    let finding = both_read_four_wire(&lead(), 157.5).finding("earth-resistance-high").expect("it applies");
    let limits: Vec<Option<f64>> = finding
        .judgement
        .evidence
        .iter()
        .map(|evidence| match evidence.limit {
            Bound::AtMost(most) => most.in_unit(Milliohm),
            Bound::AtLeast(_) | Bound::Between(..) => None,
        })
        .collect();
    assert!(limits.iter().all(|most| most.is_some_and(|most| (most - 158.5).abs() < 1e-9)), "{limits:?}");
    assert_eq!(limits.len(), 2);
}

/// IEC 60228 Table 3, plain (read; 1.25 mm² memory-medium): 39.0, 26.0, 19.5, 15.6, 13.3, 7.98 mΩ/m; ten metres and 0.1 Ω.
#[test]
fn each_size_has_its_own_limit() {
    for (print, limit) in [
        ("H03VV-F 3G0.5", 490.0),
        ("H05VV-F 3G0.75", 360.0),
        ("H05VV-F 3G1.0", 295.0),
        ("H05VV-F 3G1.25", 256.0),
        ("H05VV-F 3G1.5", 233.0),
        ("H05VV-F 3G2.5", 179.8),
    ] {
        let lead = ready(Meters).printed(facts::FLEX_PRINT, Target::Sample, print).reads(
            facts::FLEX_LENGTH,
            Target::Sample,
            (10.0, 0.001, Metre),
            Tape,
        );
        both_read_four_wire(&lead, limit - 3.0).expect("earth-resistance-high", Conforms);
        both_read_four_wire(&lead, limit).expect("earth-resistance-high", Inconclusive);
        both_read_four_wire(&lead, limit + 3.0).expect_break("earth-resistance-high", Danger);
    }
}

#[test]
fn without_a_claimed_size_the_flex_is_held_to_what_its_current_needs() {
    // BS 1363-1 Table 2: 13 A needs 1.25 mm²; 3 m of it and 0.1 Ω are 146.8 mΩ.
    let lead = ready(Meters).printed(facts::RATING, Target::Claim(ClaimPlace::Body), "13A 250V~").reads(
        facts::FLEX_LENGTH,
        Target::Sample,
        (3.0, 0.001, Metre),
        Tape,
    );
    both_read_four_wire(&lead, 145.0).expect("earth-resistance-high", Conforms);
    both_read_four_wire(&lead, 149.0).expect_break("earth-resistance-high", Danger);
}

/// The limit of this lead is 0.1585 Ω. Leads of a hand meter are up to 0.3 Ω (usual practice): 0.40 Ω may be theirs and are told to be, 0.60 Ω
/// cannot be. Without leads the doubt is the reading's own, and of two sockets both are wanted first.
#[test]
fn leads_are_granted_and_said_to_be_on() {
    let reads = |ohms| both_read(&lead(), (ohms, 0.001, Ohm), HandMeter);
    reads(0.40).expect("earth-resistance-high", Inconclusive);
    assert_eq!(reason(&reads(0.40), "earth-resistance-high"), Some(Reason::LeadsNotTakenOff));
    reads(0.60).expect_break("earth-resistance-high", Danger);
    let at_the_limit = both_read_four_wire(&lead(), 158.5);
    assert_eq!(reason(&at_the_limit, "earth-resistance-high"), Some(Reason::Measured));
    let one_socket = lead().reads(EARTH_RESISTANCE, SOCKETS[0], (0.40, 0.001, Ohm), HandMeter);
    assert_eq!(reason(&one_socket, "earth-resistance-high"), Some(Reason::OnlySomeRead { read: 1, of: 2 }));
}

/// What was said of a connector's earth counts while the connector has one: two holes have none.
#[test]
fn a_connector_without_earth_has_no_earth_path_to_break() {
    let open =
        Bench::cord_set(HandTools).any(facts::READINGS_PREPARED, &PREPARED).one(connector::EARTH_PATH, "no-path");
    open.clone().one(connector::PATTERN, "c13").expect_break("earth-open", Danger);
    open.one(connector::PATTERN, "two-holes").expect("earth-open", NotExamined);
}

#[test]
fn what_the_limit_needs_is_asked_for() {
    let no_size = ready(Meters).reads(facts::FLEX_LENGTH, Target::Sample, (3.0, 0.001, Metre), Tape);
    let no_length = ready(Meters).printed(facts::FLEX_PRINT, Target::Sample, "H05VV-F 3G1.0");
    for (lead, needed) in [(no_size, Needed::ClaimedArea), (no_length, Needed::FlexLength)] {
        let read = both_read_four_wire(&lead, 100.0);
        read.expect("earth-resistance-high", Inconclusive);
        assert_eq!(reason(&read, "earth-resistance-high"), Some(Reason::Needs(needed)));
    }
}

#[test]
fn a_thin_core_that_was_measured_excuses_nothing() {
    let thin = Core::ALL.into_iter().fold(lead(), |bench, core| {
        bench.reads(facts::CORE_RESISTANCE, Target::Core(core), (3.7, 0.01, Ohm), FourWireMeter)
    });
    both_read_four_wire(&thin, 3700.0).expect_break("earth-resistance-high", Danger);
}

#[test]
fn a_kept_limit_clears_only_with_the_cores() {
    let read = both_read_four_wire(&lead(), 130.0);
    assert_eq!(reason(&read, "earth-resistance-high"), Some(Reason::ClearsOnlyWithCores));
    let with_cores = Core::ALL.into_iter().fold(read, |bench, core| {
        bench.reads(facts::CORE_RESISTANCE, Target::Core(core), (0.0585, 0.0001, Ohm), FourWireMeter)
    });
    assert_eq!(reason(&with_cores, "earth-resistance-high"), Some(Reason::Measured));
}

#[test]
fn a_claimed_length_leaves_the_earth_among_the_untested_dangers() {
    let claimed = ready(Meters).printed(facts::FLEX_PRINT, Target::Sample, "H05VV-F 3G1.0").printed(
        facts::RATING,
        Target::Claim(ClaimPlace::Package),
        "10A 250V~ 3.00m",
    );
    let read = both_read_four_wire(&claimed, 130.0);
    let finding = read.finding("earth-resistance-high").expect("it applies");
    assert_eq!((finding.outcome(), finding.judgement.basis), (Conforms, Basis::Print));
    assert!(read.assessed().dangers_not_tested.contains(&"earth-resistance-high"));
    assert!(!both_read_four_wire(&lead(), 130.0).assessed().dangers_not_tested.contains(&"earth-resistance-high"));
}

#[test]
fn the_doubt_of_the_length_counts() {
    let claimed = |print| {
        let lead = ready(Meters).printed(facts::FLEX_PRINT, Target::Sample, "H05VV-F 3G0.5").printed(
            facts::RATING,
            Target::Claim(ClaimPlace::Package),
            print,
        );
        both_read_four_wire(&lead, 490.0 + 12.0)
    };
    // 10.00 m is known to 5 mm, 10 m to half a metre: 39 mΩ/m make 20 mΩ of that.
    claimed("10A 250V~ 10.00m").expect_break("earth-resistance-high", Danger);
    claimed("10A 250V~ 10m").expect("earth-resistance-high", Inconclusive);
}

#[test]
fn a_meter_with_its_leads_in_the_reading_condemns_only_beyond_them_and_never_clears() {
    let reads = |value| both_read(&lead(), (value, 0.001, Ohm), HandMeter);
    for value in [0.05, 0.158, 0.3, 0.458] {
        reads(value).expect("earth-resistance-high", Inconclusive);
        assert_eq!(reason(&reads(value), "earth-resistance-high"), Some(Reason::LeadsNotTakenOff));
    }
    // 0.1585 Ω and the leads' 0.3 Ω are 0.4585 Ω.
    reads(0.48).expect_break("earth-resistance-high", Danger);
    both_read(&lead(), (0.14, 0.001, Ohm), HandMeterNulled).expect("earth-resistance-high", Conforms);
    both_read(&lead(), (0.14, 0.001, Ohm), EarthPathTester).expect("earth-resistance-high", Conforms);
}

#[test]
fn a_coarse_meter_cannot_clear_a_short_lead() {
    both_read(&lead(), (0.1, 0.1, Ohm), HandMeterNulled).expect("earth-resistance-high", Inconclusive);
}

#[test]
fn one_bad_socket_is_enough_and_one_good_socket_is_not() {
    let one = |milliohms| lead().reads(EARTH_RESISTANCE, Target::Socket(1), (milliohms, 0.1, Milliohm), FourWireMeter);
    one(130.0).expect("earth-resistance-high", Inconclusive);
    assert_eq!(reason(&one(130.0), "earth-resistance-high"), Some(Reason::OnlySomeRead { read: 1, of: 2 }));
    one(300.0).expect_break("earth-resistance-high", Danger);
    let refused = one(130.0).answer(EARTH_RESISTANCE, Target::Socket(2), Answer::Refused);
    refused.expect("earth-resistance-high", Inconclusive);
    lead().expect("earth-resistance-high", NotExamined);
}

#[test]
fn a_display_without_a_number_settles_one_side_only() {
    let shown = |shown, instrument| {
        SOCKETS
            .into_iter()
            .fold(lead(), |bench, socket| bench.answer(EARTH_RESISTANCE, socket, shows(shown, instrument)))
    };
    let above = |ohms| Shown::Above(Amount::new(ohms, Ohm));
    let below = |ohms| Shown::Below(Amount::new(ohms, Ohm));
    shown(above(20.0), FourWireMeter).expect_break("earth-resistance-high", Danger);
    shown(above(20.0), HandMeter).expect_break("earth-resistance-high", Danger);
    shown(above(0.1), FourWireMeter).expect("earth-resistance-high", Inconclusive);
    shown(below(0.01), FourWireMeter).expect("earth-resistance-high", Conforms);
    shown(below(0.01), HandMeter).expect("earth-resistance-high", Inconclusive);
    shown(Shown::Open, HandMeter).expect_break("earth-resistance-high", Danger);
    shown(Shown::Open, HandMeter).expect_break("earth-open", Danger);
}

/// BS 7671 Table 41.4(d) (read): 22.0 Ω is the largest loop behind which a 3 A plug fuse opens within 5 s.
#[test]
fn an_earth_behind_which_no_fuse_opens_is_open() {
    let reads = |value| both_read(&ready(Meters), (value, 0.1, Ohm), HandMeter);
    reads(21.0).expect("earth-open", Conforms);
    reads(22.0).expect("earth-open", Inconclusive);
    reads(23.0).expect_break("earth-open", Danger);
}

#[test]
fn with_a_meter_the_beep_is_not_asked_for() {
    let asked = |bench: &Bench| {
        walk::asked(&View::new(&bench.0)).into_iter().map(|(question, _)| question.id).collect::<Vec<_>>()
    };
    let (by_meter, by_tester) = (asked(&ready(Meters)), asked(&ready(HandTools)));
    assert!(by_meter.contains(&EARTH_RESISTANCE.id) && !by_meter.contains(&earth::EARTH_PATH.id));
    assert!(!by_tester.contains(&EARTH_RESISTANCE.id) && by_tester.contains(&earth::EARTH_PATH.id));
}

#[test]
fn only_a_meter_that_stays_steady_clears_a_bent_flex() {
    for (answer, outcome) in [("steady", Conforms), ("open-all-the-while", NotExamined)] {
        ready(Meters).one(earth::EARTH_WHILE_BENT, answer).expect("earth-intermittent", outcome);
    }
    ready(Meters).one(earth::EARTH_WHILE_BENT, "jumps").expect_break("earth-intermittent", Danger);
    let heard = ready(Meters).one_of(earth::EARTH_PATH, Target::Socket(1), "comes-and-goes");
    heard.clone().expect_break("earth-intermittent", Danger);
    heard.one(earth::EARTH_WHILE_BENT, "steady").expect_break("earth-intermittent", Danger);
}

#[test]
fn the_earth_of_a_connector_is_asked_for_once() {
    let set = Bench::cord_set(HandTools).any(facts::READINGS_PREPARED, &PREPARED).one(connector::PATTERN, "c13");
    let ids: Vec<&str> = walk::asked(&View::new(&set.0)).into_iter().map(|(question, _)| question.id).collect();
    assert!(ids.contains(&connector::EARTH_PATH.id) && !ids.contains(&earth::EARTH_PATH.id));
    set.expect("earth-open", NotExamined);
    set.clone().one(connector::EARTH_PATH, "path").expect("earth-open", Conforms);
    set.one(connector::EARTH_PATH, "no-path").expect_break("earth-open", Danger);
}
