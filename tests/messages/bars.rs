//! The bar of every outcome and severity, and its word.

use plugwary::domain::finding::{Basis, Bearing, Conformity, Finding, Judgement, Reason, Severity};
use plugwary::domain::sample::Place;
use plugwary::domain::verdict::Verdict;
use plugwary::words::mark;
use plugwary::words::reason;
use plugwary::words::statement::Bar;

use Conformity::{Conforms, Inconclusive, Nonconforming, NotApplicable, NotExamined};
use Severity::{BadSign, Breach, Danger};

fn finding(outcome: Conformity, severity: Severity) -> Finding {
    let judgement = Judgement {
        outcome,
        severity,
        basis: Basis::Sight,
        bearing: Bearing::Decides,
        reason: Reason::Measured,
        evidence: Vec::new(),
    };
    Finding { code: "any", place: Place::Plug, judgement, against: Vec::new(), asks: &[] }
}

#[test]
fn every_outcome_and_severity_has_a_bar_and_the_right_word() {
    for severity in [BadSign, Breach, Danger] {
        let broken = match severity {
            BadSign => (Bar::Double, "bad sign", "bad sign"),
            Breach => (Bar::Hatched, "against the rules", "against the rules"),
            Danger => (Bar::Solid, "danger", "danger"),
        };
        for (outcome, (bar, of_bar, of_finding)) in [
            (Nonconforming, broken),
            (Inconclusive, (Bar::Dotted, "can’t tell", "can’t tell")),
            (NotExamined, (Bar::Empty, "not looked at", "not looked at")),
            (Conforms, (Bar::Thin, "nothing against it", "keeps the rule")),
            (NotApplicable, (Bar::Thin, "nothing against it", "doesn’t apply")),
        ] {
            let finding = finding(outcome, severity);
            assert_eq!(Bar::of(&finding), bar, "{outcome:?} {severity:?}");
            assert_eq!(bar.word(), of_bar, "{outcome:?} {severity:?}");
            assert_eq!(reason::label(&finding), of_finding, "{outcome:?} {severity:?}");
        }
    }
}

#[test]
fn only_what_keeps_its_rule_is_said_to_keep_it() {
    for outcome in [Nonconforming, Inconclusive, NotExamined, NotApplicable] {
        for severity in [BadSign, Breach, Danger] {
            let finding = finding(outcome, severity);
            assert!(!reason::label(&finding).contains("keeps"), "{outcome:?} {severity:?}");
            assert!(!Bar::of(&finding).word().contains("keeps"), "{outcome:?} {severity:?}");
        }
    }
}

#[test]
fn a_graver_bar_stands_before_a_milder_one() {
    let by_weight = [Bar::Solid, Bar::Hatched, Bar::Dotted, Bar::Double, Bar::Empty, Bar::Thin];
    assert!(by_weight.is_sorted_by(|graver, milder| graver > milder));
}

#[test]
fn every_verdict_has_the_bar_of_what_made_it() {
    let bars = [
        (Verdict::KeepAway, Bar::Solid),
        (Verdict::DoNotAccept, Bar::Hatched),
        (Verdict::NotDecided, Bar::Dotted),
        (Verdict::NothingWrongSeen, Bar::Thin),
    ];
    for (verdict, bar) in bars {
        assert_eq!(mark::of_verdict(verdict), bar);
    }
}
