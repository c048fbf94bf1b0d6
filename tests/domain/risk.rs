//! The level of risk of a scenario, against the published examples and every cell of the published matrix.

use plugwary::domain::decision::Probability;
use plugwary::domain::risk::{Factor, Scenario, Sensitivity, Standing, Step, highest};
use plugwary::domain::standard::Provenance;
use plugwary::domain::standard::eu_risk::{self, Band, Injury, RiskLevel, level};
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::select;

use Injury::{Fatal, FirstAid, HospitalVisit};
use RiskLevel::{High, Low, Medium, Serious};

fn scenario(steps: &[(&str, f64)], injury: Injury) -> Scenario {
    let step = |&(happens, value): &(&str, f64)| Step {
        happens: happens.to_owned(),
        probability: Probability::new(value),
        reason: String::new(),
        standing: Standing::Weighed,
    };
    Scenario {
        title: "invented".to_owned(),
        steps: steps.iter().map(step).collect(),
        injury,
        injury_reason: String::new(),
        injury_standing: Standing::Weighed,
        of: Vec::new(),
    }
}

/// Folding chair of 2010/15 and 2019/417 (read): a finger is pinched, severity 1; 1 × 1/50 × 1/10 × 1 = 1/500, over 1/1 000: low.
fn chair() -> Scenario {
    scenario(&[("sat-on", 1.0), ("shifted", 1.0 / 50.0), ("finger-in-gap", 1.0 / 10.0), ("pinched", 1.0)], FirstAid)
}

#[test]
fn a_chair_that_pinches_is_a_low_risk() {
    assert!((chair().probability().value() - 1.0 / 500.0).abs() < 1e-15);
    assert_eq!(chair().band(), Band::OverThousandth);
    assert_eq!(chair().level(), Low);
}

/// Moved by one band each, after the matrix: 1/50 beyond to over 1/100 is medium, so the low level hangs on both guesses and on the
/// injury, and not on what is certain already.
#[test]
fn what_the_level_of_the_chair_hangs_on() {
    let of = |factor, graver| Sensitivity { factor, milder: Low, graver };
    let expected = [
        of(Factor::Step(0), Low),
        of(Factor::Step(1), Medium),
        of(Factor::Step(2), Medium),
        of(Factor::Step(3), Low),
        of(Factor::Injury, High),
    ];
    assert_eq!(chair().sensitivity(), expected);
    assert_eq!(expected.map(|one| one.changes()), [false, true, true, false, true]);
}

/// Socket protector of 2010/15 (memory-medium): a child is electrocuted, severity 4; 27/160 000, over 1/10 000: serious. Its single steps
/// are not known here, so that they stand as one.
#[test]
fn a_socket_protector_that_bares_live_parts_is_a_serious_risk() {
    let protector = scenario(&[("child-electrocuted", 27.0 / 160_000.0)], Fatal);
    assert_eq!(protector.band(), Band::OverTenThousandth);
    assert_eq!(protector.level(), Serious);
    let expected = [
        Sensitivity { factor: Factor::Step(0), milder: High, graver: Serious },
        Sensitivity { factor: Factor::Injury, milder: High, graver: Serious },
    ];
    assert_eq!(protector.sensitivity(), expected);
    let of_both = [chair(), protector.clone()];
    assert_eq!(highest(&of_both), Some(&protector));
}

/// 2019/417, Table 4 (cells memory-high; layout read), typed from the printed order a second time.
#[test]
fn every_cell_of_the_matrix_is_as_printed() {
    let rows = [
        (0.51, "HSSS"),
        (0.11, "MSSS"),
        (0.011, "MSSS"),
        (0.0011, "LHSS"),
        (0.000_11, "LMHS"),
        (0.000_011, "LLMH"),
        (0.000_001_1, "LLLM"),
        (0.000_000_9, "LLLL"),
    ];
    for ((probability, row), band) in rows.into_iter().zip(Band::ALL) {
        assert_eq!(Band::of(Probability::new(probability)), band, "{probability}");
        for (letter, injury) in row.chars().zip(Injury::ALL) {
            let expected = match letter {
                'S' => Serious,
                'H' => High,
                'M' => Medium,
                _ => Low,
            };
            assert_eq!(level(band, injury), expected, "{probability}, {injury:?}");
            assert_eq!(scenario(&[("all", probability)], injury).level(), expected, "{probability}, {injury:?}");
        }
    }
}

/// The bands are printed with "more than": the edge itself lies in the band below, also when it is a product of fractions.
#[test]
fn an_edge_belongs_to_the_band_below() {
    let edges = [0.5, 1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6];
    for ((edge, above), below) in edges.into_iter().zip(Band::ALL).zip(&Band::ALL[1..]) {
        assert_eq!(Band::of(Probability::new(edge)), *below, "{edge}");
        assert_eq!(Band::of(Probability::new(edge * 1.000_001)), above, "just over {edge}");
        assert_eq!(Band::of(Probability::new(edge * 0.999_999)), *below, "just under {edge}");
    }
    let product = scenario(&[("one", 0.1), ("another", 0.1)], HospitalVisit);
    assert!(product.probability().value() > 0.01, "a last digit over the edge");
    assert_eq!(product.band(), Band::OverThousandth);
}

#[test]
fn severities_and_levels_are_in_order() {
    assert!(Injury::ALL.is_sorted() && Band::ALL.iter().rev().is_sorted());
    assert!(Low < Medium && Medium < High && High < Serious);
}

#[test]
fn a_certain_event_cannot_get_likelier() {
    for injury in Injury::ALL {
        let certain = scenario(&[("certain", 1.0)], injury);
        assert_eq!(certain.sensitivity()[0].graver, certain.level());
    }
}

#[test]
fn what_needs_no_event_is_certain_and_no_scenario_is_none() {
    assert_eq!(scenario(&[], FirstAid).level(), High);
    assert_eq!(highest([]), None);
}

/// The cells were not read, and say so.
#[test]
fn the_matrix_owns_that_it_is_from_memory() {
    assert_eq!(eu_risk::MATRIX.provenance, Provenance::MemoryHigh);
    assert!(eu_risk::MATRIX.provenance.may_decide());
}

fn some_scenario() -> impl Strategy<Value = Scenario> {
    let decade = select(vec![1.0, 1e-1, 1e-2, 1e-3, 1e-4, 1e-6, 0.0]);
    let probability = (decade, 0.1..1.0).prop_map(|(decade, digit)| decade * digit);
    (vec(probability, 0..5), select(&Injury::ALL[..])).prop_map(|(values, injury)| {
        let steps: Vec<_> = ["one", "two", "three", "four"].into_iter().zip(values).collect();
        scenario(&steps, injury)
    })
}

proptest! {
    /// More likely or worse is never a lower risk, and the level itself lies between what each factor moved makes of it.
    #[test]
    fn a_factor_moved_up_never_lowers_the_level(scenario in some_scenario()) {
        let sensitivity = scenario.sensitivity();
        prop_assert_eq!(sensitivity.len(), scenario.steps.len() + 1);
        for moved in sensitivity {
            prop_assert!(moved.milder <= scenario.level() && scenario.level() <= moved.graver, "{:?}", moved);
        }
    }

    /// One more event makes an injury no likelier.
    #[test]
    fn one_more_event_never_raises_the_level(scenario in some_scenario(), value in 0.0..1.0) {
        let mut longer = scenario.clone();
        longer.steps.extend(self::scenario(&[("five", value)], FirstAid).steps);
        prop_assert!(longer.level() <= scenario.level());
    }

    /// Any event made likelier by any amount, and any worse injury.
    #[test]
    fn likelier_or_worse_is_never_a_lower_level(
        scenario in some_scenario(),
        place in 0_usize..4,
        towards_certain in 0.0..=1.0,
        injury in select(&Injury::ALL[..]),
    ) {
        let mut raised = scenario.clone();
        if let Some(step) = raised.steps.get_mut(place) {
            let value = step.probability.value();
            step.probability = Probability::new(value + (1.0 - value) * towards_certain);
        }
        prop_assert!(raised.level() >= scenario.level());
        raised.injury = raised.injury.max(injury);
        prop_assert!(raised.level() >= scenario.level());
    }

    #[test]
    fn the_highest_scenario_is_none_lower(scenarios in vec(some_scenario(), 1..6)) {
        let found = highest(&scenarios).map(Scenario::level);
        prop_assert_eq!(found, scenarios.iter().map(Scenario::level).max());
    }
}
