//! What must hold for every examination that the app could make.

use plugwary::domain::assess::{Assessment, RuleBook, assess};
use plugwary::domain::check;
use plugwary::domain::decision::{Limit, Thresholds};
use plugwary::domain::essential;
use plugwary::domain::examination::{Answer, Examination};
use plugwary::domain::finding::{Basis, Conformity};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::{Amount, Length, Measurand, QuantityKind, Unit};
use plugwary::domain::question::{Ask, ClaimPlace, Core, Per, Question, Target};
use plugwary::domain::reading::{Reading, Shown};
use plugwary::domain::sample::{Equipment, Kind, Market, Sample};
use plugwary::domain::uncertainty::Measured;
use plugwary::domain::verdict::Verdict;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::{select, subsequence};

/// Checks of which no mark may decide anything.
const EARTH: &[&str] = &[
    "cores-too-few",
    "connector-earth-open",
    "earth-colour-wrong",
    "earth-contact-absent",
    "earth-intermittent",
    "earth-not-connected",
    "earth-open",
    "earth-pin-not-first",
    "earth-pin-plastic",
    "earth-resistance-high",
    "neutral-earth-joined",
    "socket-without-earth",
];

fn target(per: Per) -> BoxedStrategy<Target> {
    match per {
        Per::Sample => Just(Target::Sample).boxed(),
        Per::Socket => (1_u8..=4).prop_map(Target::Socket).boxed(),
        Per::Core => select(&Core::ALL[..]).prop_map(Target::Core).boxed(),
        Per::Claim => select(&ClaimPlace::ALL[..]).prop_map(Target::Claim).boxed(),
    }
}

/// A reading near what the units and instruments of a question are for.
fn reading(kind: QuantityKind, units: &'static [Unit], instruments: &'static [Instrument]) -> BoxedStrategy<Answer> {
    let steps = select(vec![0.001, 0.01, 0.1, 1.0]);
    (1_u32..3000, steps, select(units), select(instruments), 0..8)
        .prop_map(move |(steps, step, unit, instrument, side)| {
            let amount = Amount::new(f64::from(steps) * step, unit);
            let shown = match side {
                0 => Shown::Above(amount),
                1 => Shown::Below(amount),
                2 if kind == QuantityKind::Resistance => Shown::Open,
                _ => Shown::Value(amount),
            };
            Answer::Reading(Reading {
                shown,
                step: Amount::new(step, unit),
                unit,
                instrument,
                own: None,
                typed: String::new(),
            })
        })
        .boxed()
}

fn print() -> impl Strategy<Value = String> {
    prop_oneof![
        "(H05VV-F|H03VV-F|RVV|H05RR-F) [23][GX](0.5|0.75|1|1.25|1.5)",
        "(3|10|13|16)A (240|250)V~( MAX [1-5]000W)?( [1-9]m)?",
        "[A-Z0-9 .,~]{0,20}",
    ]
}

fn answer(ask: Ask) -> BoxedStrategy<Answer> {
    let own = match ask {
        Ask::One(codes) => select(codes).prop_map(Answer::One).boxed(),
        // The first code is as a rule the gravest, so that no code at all must be likely.
        Ask::Any(codes) => {
            prop_oneof![Just(Answer::Any(Vec::new())), subsequence(codes, 0..=codes.len()).prop_map(Answer::Any)]
                .boxed()
        }
        Ask::Measure { kind, units, instruments } => reading(kind, units, instruments),
        Ask::Printed(_) => print().prop_map(Answer::Printed).boxed(),
        Ask::Count(least, most) => (least..=most.min(40)).prop_map(Answer::Count).boxed(),
    };
    let flags = select(vec![Answer::Nothing, Answer::CannotTell, Answer::Refused, Answer::NoTool, Answer::Later]);
    prop_oneof![9 => own, 1 => flags].boxed()
}

fn answered() -> impl Strategy<Value = (&'static Question, Target, Answer)> {
    select(check::questions().collect::<Vec<_>>())
        .prop_flat_map(|question| (Just(question), target(question.per), answer(question.ask)))
}

fn examination() -> impl Strategy<Value = Examination> {
    let sample = (select(&Kind::ALL[..]), select(&Market::ALL[..]));
    (sample, select(&Equipment::ALL[..]), vec(answered(), 0..90)).prop_map(|((kind, market), equipment, answers)| {
        let sample = Sample { number: String::new(), title: String::new(), kind, market };
        let mut examination = Examination::new(sample, equipment);
        for (question, target, answer) in answers {
            examination.record(question, target, answer);
        }
        examination
    })
}

fn judged(examination: &Examination) -> Assessment {
    assess(examination, &RuleBook::CURRENT)
}

fn outcome(assessment: &Assessment, code: &str) -> Conformity {
    let found = assessment.findings.iter().find(|finding| finding.code == code);
    found.map_or(Conformity::NotApplicable, plugwary::domain::finding::Finding::outcome)
}

fn length(base: f64) -> Length {
    Length::from_base(base)
}

/// Any limit, and the same with less room.
fn limits() -> impl Strategy<Value = (Limit<Length>, Limit<Length>)> {
    (0.0..50.0_f64, 0.0..50.0_f64, 0.0..5.0_f64, 0..3).prop_map(|(low, room, tighter, side)| match side {
        0 => (Limit::AtLeast(length(low)), Limit::AtLeast(length(low + tighter))),
        1 => (Limit::AtMost(length(low)), Limit::AtMost(length(low - tighter))),
        _ => {
            let wide = room + 2.0 * tighter;
            let narrow = Limit::Between(length(low + tighter), length(low + wide - tighter));
            (Limit::Between(length(low), length(low + wide)), narrow)
        }
    })
}

/// The same value in another unit of its kind.
fn in_unit(amount: Amount, unit: Unit) -> Amount {
    amount.in_unit(unit).map_or(amount, |number| Amount::new(number, unit))
}

proptest! {
    #[test]
    fn more_doubt_never_turns_a_break_into_keeping(
        (limit, _) in limits(), value in 0.0..60.0_f64, u in 0.0..5.0_f64, more in 0.0..50.0_f64,
    ) {
        let conformity = |u| Thresholds::USUAL.conformity(limit.conformance(&Measured::new(length(value), length(u))));
        if conformity(u) == Conformity::Nonconforming {
            prop_assert_ne!(conformity(u + more), Conformity::Conforms);
        }
    }

    #[test]
    fn a_tighter_limit_never_helps((limit, tighter) in limits(), value in 0.0..60.0_f64, u in 0.0..5.0_f64) {
        let measured = Measured::new(length(value), length(u));
        prop_assert!(tighter.conformance(&measured).value() <= limit.conformance(&measured).value() + 1e-12);
    }

    #[test]
    fn everything_is_judged_and_twice_the_same(examination in examination()) {
        let assessment = judged(&examination);
        prop_assert_eq!(&assessment, &judged(&examination));
        prop_assert!(assessment.looked.made <= assessment.looked.of);
        for finding in &assessment.findings {
            prop_assert!(check::by_code(finding.code).is_some());
            for evidence in &finding.judgement.evidence {
                prop_assert!((0.0..=1.0).contains(&evidence.probability.value()), "{} {:?}", finding.code, evidence);
            }
        }
    }

    #[test]
    fn the_order_of_answers_changes_nothing(examination in examination(), by in 0_usize..90) {
        let mut turned = examination.clone();
        let by = by.min(turned.answers.len());
        turned.answers.rotate_left(by);
        turned.answers.reverse();
        prop_assert_eq!(judged(&examination), judged(&turned));
    }

    #[test]
    fn putting_off_is_the_same_as_not_answering(examination in examination()) {
        let mut off = examination.clone();
        for answered in &mut off.answers {
            answered.answer = Answer::Later;
        }
        let assessment = judged(&off);
        let kept: Vec<_> = assessment.findings.iter().filter(|f| check::was_made(f.outcome())).map(|f| f.code).collect();
        prop_assert!(kept.is_empty(), "{:?}", kept);
        prop_assert_eq!(assessment.verdict, Verdict::NotDecided);
        let mut fresh = examination;
        fresh.answers.clear();
        prop_assert_eq!(judged(&fresh), assessment);
    }

    #[test]
    fn nothing_wrong_is_never_said_while_an_essential_check_is_open(examination in examination()) {
        let assessment = judged(&examination);
        let is_open = |code: &str| outcome(&assessment, code) == Conformity::NotExamined;
        let open: Vec<_> = essential::codes(examination.equipment).filter(|code| is_open(code)).collect();
        prop_assert!(open.is_empty() || assessment.verdict != Verdict::NothingWrongSeen, "{:?}", open);
    }

    #[test]
    fn no_mark_changes_an_earth_check(examination in examination(), codes in subsequence(
        check::question("marks").map_or(&[][..], Question::answers), 0..=7)
    ) {
        let marks = check::question("marks").expect("marks are asked about");
        let mut marked = examination.clone();
        marked.record(marks, Target::Sample, Answer::Any(codes));
        let mut bare = examination;
        bare.withdraw(marks, Target::Sample);
        let (marked, bare) = (judged(&marked), judged(&bare));
        for code in EARTH {
            prop_assert!(check::by_code(code).is_some(), "there is no check {}", code);
            let of = |assessment: &Assessment| assessment.findings.iter().find(|f| f.code == *code).cloned();
            prop_assert_eq!(of(&marked), of(&bare), "{}", code);
        }
        prop_assert_eq!(marked.outside_only, bare.outside_only);
    }

    #[test]
    fn what_only_print_speaks_of_stays_untested(examination in examination()) {
        let assessment = judged(&examination);
        for finding in &assessment.findings {
            let judgement = &finding.judgement;
            let is_danger = judgement.severity == plugwary::domain::finding::Severity::Danger;
            let is_claim = judgement.outcome == Conformity::Conforms && judgement.basis == Basis::Print;
            let is_unmade = judgement.outcome == Conformity::NotExamined;
            if is_danger && (is_claim || is_unmade) {
                prop_assert!(assessment.dangers_not_tested.contains(&finding.code), "{}", finding.code);
            }
        }
    }

    #[test]
    fn print_alone_clears_no_danger(examination in examination()) {
        let mut printed = examination;
        printed.answers.retain(|answered| matches!(answered.question.ask, Ask::Printed(_)));
        let assessment = judged(&printed);
        for finding in &assessment.findings {
            let is_danger = finding.judgement.severity == plugwary::domain::finding::Severity::Danger;
            if is_danger && finding.outcome() == Conformity::Conforms {
                prop_assert_eq!(finding.judgement.basis, Basis::Print, "{}", finding.code);
            }
        }
    }

    #[test]
    fn the_unit_of_a_reading_changes_no_outcome(examination in examination(), pick in 0_usize..10) {
        let mut other = examination.clone();
        for answered in &mut other.answers {
            let Answer::Reading(reading) = &mut answered.answer else { continue };
            let units: Vec<Unit> = Unit::ALL.into_iter().filter(|unit| unit.kind() == reading.unit.kind()).collect();
            let Some(unit) = units.get(pick % units.len()).copied() else { continue };
            reading.shown = match reading.shown {
                Shown::Value(amount) => Shown::Value(in_unit(amount, unit)),
                Shown::Above(amount) => Shown::Above(in_unit(amount, unit)),
                Shown::Below(amount) => Shown::Below(in_unit(amount, unit)),
                Shown::Open => Shown::Open,
            };
            reading.step = in_unit(reading.step, unit);
            reading.unit = unit;
        }
        let (one, another) = (judged(&examination), judged(&other));
        prop_assert_eq!(one.verdict, another.verdict);
        for finding in &one.findings {
            prop_assert_eq!(finding.outcome(), outcome(&another, finding.code), "{}", finding.code);
        }
    }
}
