//! Every verdict's first line, how far it reaches and what follows from it.

use core::fmt::Write as _;

use plugwary::domain::assess::{Assessment, RuleBook, Tally, assess};
use plugwary::domain::examination::Examination;
use plugwary::domain::finding::{Basis, Bearing, Conformity, Finding, Judgement, Reason, Severity};
use plugwary::domain::sample::{Equipment, Kind, Market, Place, Sample};
use plugwary::domain::verdict::Verdict;
use plugwary::words::verdict;

use crate::accepted;

#[test]
fn every_verdict_reads_as_accepted() {
    use Conformity::{Inconclusive, Nonconforming};
    use Severity::{BadSign, Breach, Danger};
    let cases: [(&str, &[(Conformity, Severity)]); 11] = [
        ("one danger", &[(Nonconforming, Danger)]),
        ("two dangers", &[(Nonconforming, Danger); 2]),
        ("a danger and a breach", &[(Nonconforming, Danger), (Nonconforming, Breach)]),
        (
            "two dangers and two breaches",
            &[(Nonconforming, Danger), (Nonconforming, Danger), (Nonconforming, Breach), (Nonconforming, Breach)],
        ),
        ("one breach", &[(Nonconforming, Breach)]),
        ("two breaches and a bad sign", &[(Nonconforming, Breach), (Nonconforming, Breach), (Nonconforming, BadSign)]),
        ("a danger that could not be told", &[(Inconclusive, Danger)]),
        ("two grave things that could not be told", &[(Inconclusive, Danger), (Inconclusive, Breach)]),
        ("essential checks not made", &[(Conformity::NotExamined, Danger)]),
        ("a bad sign", &[(Nonconforming, BadSign)]),
        ("nothing", &[]),
    ];
    let mut told = String::new();
    for (name, found) in cases {
        for equipment in Equipment::ALL {
            let assessment = assessment(found, equipment);
            writeln!(told, "{name}, {}:", verdict::equipment(equipment).to_lowercase()).expect("a text takes any line");
            for line in [
                verdict::headline(&assessment),
                verdict::reach(&assessment),
                verdict::advice(assessment.verdict).to_owned(),
            ] {
                if !line.is_empty() {
                    writeln!(told, "  {line}").expect("a text takes any line");
                }
            }
        }
    }
    accepted("verdicts", &told);
}

/// An assessment with these findings and thirty others that keep their rules.
fn assessment(found: &[(Conformity, Severity)], equipment: Equipment) -> Assessment {
    let sample =
        Sample { number: String::new(), title: String::new(), kind: Kind::ExtensionLead, market: Market::GreatBritain };
    let fresh = assess(&Examination::new(sample, equipment), &RuleBook::CURRENT);
    let findings: Vec<Finding> = found.iter().map(|&(outcome, severity)| finding(outcome, severity)).collect();
    let is_open = |finding: &Finding| finding.outcome() == Conformity::NotExamined;
    let open = findings.iter().filter(|finding| is_open(finding)).count();
    Assessment {
        verdict: Verdict::of(&findings, |_| true),
        looked: Tally { made: 30 + found.len() - open, of: 30 + found.len() },
        findings,
        ..fresh
    }
}

fn finding(outcome: Conformity, severity: Severity) -> Finding {
    let judgement = Judgement {
        outcome,
        severity,
        basis: Basis::Sight,
        bearing: Bearing::Decides,
        reason: Reason::CouldNotTell,
        evidence: Vec::new(),
    };
    Finding { code: "any", place: Place::Plug, judgement, against: Vec::new(), asks: &[] }
}
