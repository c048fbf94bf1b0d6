//! What findings come to together: each row is a rule of the verdict, worked out by hand.

use plugwary::domain::finding::Bearing::{self, Decides, IsOnlyTold};
use plugwary::domain::finding::Conformity::{self, Conforms, Inconclusive, Nonconforming, NotApplicable, NotExamined};
use plugwary::domain::finding::Severity::{self, BadSign, Breach, Danger};
use plugwary::domain::finding::{Basis, Finding, Judgement, Reason};
use plugwary::domain::sample::Place;
use plugwary::domain::verdict::Verdict::{self, DoNotAccept, KeepAway, NotDecided, NothingWrongSeen};

type Row = (Conformity, Severity, Bearing);

fn finding(code: &'static str, (outcome, severity, bearing): Row) -> Finding {
    let reason = Reason::CouldNotTell;
    let judgement = Judgement { outcome, severity, basis: Basis::Sight, bearing, reason, evidence: Vec::new() };
    Finding { code, place: Place::Plug, judgement, against: Vec::new(), asks: &[] }
}

/// The verdict on findings, of which no check is essential.
fn verdict(rows: &[Row]) -> Verdict {
    let findings: Vec<Finding> = rows.iter().map(|row| finding("any", *row)).collect();
    Verdict::of(&findings, |_| false)
}

#[test]
fn each_finding_by_itself_comes_to_its_verdict() {
    let rows = [
        (Nonconforming, Danger, KeepAway),
        (Nonconforming, Breach, DoNotAccept),
        (Nonconforming, BadSign, NothingWrongSeen),
        (Inconclusive, Danger, NotDecided),
        (Inconclusive, Breach, NotDecided),
        (Inconclusive, BadSign, NothingWrongSeen),
        (Conforms, Danger, NothingWrongSeen),
        (NotApplicable, Danger, NothingWrongSeen),
        (NotExamined, Danger, NothingWrongSeen),
    ];
    for (outcome, severity, wanted) in rows {
        assert_eq!(verdict(&[(outcome, severity, Decides)]), wanted, "{outcome:?} {severity:?}");
        let told = verdict(&[(outcome, severity, IsOnlyTold)]);
        assert_eq!(told, NothingWrongSeen, "{outcome:?} {severity:?}, only told");
    }
    assert_eq!(verdict(&[]), NothingWrongSeen);
}

#[test]
fn the_gravest_finding_decides_wherever_it_stands() {
    let (sound, sign) = ((Conforms, Danger, Decides), (Nonconforming, BadSign, Decides));
    let doubt = (Inconclusive, Danger, Decides);
    let breach = (Nonconforming, Breach, Decides);
    let danger = (Nonconforming, Danger, Decides);
    assert_eq!(verdict(&[sound, danger, breach, doubt, sign]), KeepAway);
    assert_eq!(verdict(&[doubt, sound, breach, sign]), DoNotAccept);
    assert_eq!(verdict(&[sound, sign, doubt]), NotDecided);
    assert_eq!(verdict(&[sound, sign]), NothingWrongSeen);
}

#[test]
fn an_essential_check_that_nobody_made_leaves_it_undecided() {
    let of = |outcome, code| {
        Verdict::of(&[finding(code, (outcome, BadSign, Decides))], |essential| essential == "fuse-missing")
    };
    assert_eq!(of(NotExamined, "fuse-missing"), NotDecided);
    assert_eq!(of(NotExamined, "print-misspelt"), NothingWrongSeen);
    assert_eq!(of(Conforms, "fuse-missing"), NothingWrongSeen);
    assert_eq!(of(NotApplicable, "fuse-missing"), NothingWrongSeen);
}

#[test]
fn verdicts_have_their_codes() {
    let codes = [KeepAway, DoNotAccept, NotDecided, NothingWrongSeen].map(Verdict::code);
    assert_eq!(codes, ["keep-away", "do-not-accept", "not-decided", "nothing-wrong-seen"]);
}
