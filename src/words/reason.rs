//! Why a finding is what it is: its reason, its numbers, and what would settle it.

use crate::domain::finding::{Bearing, Bound, ClaimPlace, Conformity, Evidence, Finding, Needed, Reason};
use crate::domain::quantity::Unit;
use crate::domain::question::Target;
use crate::domain::sample::Kind;

use super::measurand::measurand;
use super::number::Grounds;
use super::{check, copper_reason, cross_check, number, question, verdict, which};

/// The reason of a finding, one or two sentences.
pub fn reason(finding: &Finding, kind: Kind) -> String {
    let words = check::of(finding.code);
    let place = |place: ClaimPlace| which::which(Target::Claim(place), kind);
    match &finding.judgement.reason {
        Reason::Answered { .. } | Reason::Measured | Reason::NothingWrongAnswered | Reason::FitsTheClaim => {
            words.why().to_owned()
        }
        Reason::NotAsked => "Nobody looked.".to_owned(),
        Reason::CouldNotTell => "Somebody looked and could not tell.".to_owned(),
        Reason::Refused => "Looking was refused.".to_owned(),
        Reason::DoesNotApply => "This does not apply here.".to_owned(),
        Reason::OnlySomeRead { read, of } => format!("Only {read} of {of} were looked at."),
        Reason::LeadsNotTakenOff => {
            "The meter’s own leads are in this reading: it can condemn so short a piece, never clear it. Hold the two tips together, \
             take off what the meter shows then, and write the rest down as leads subtracted. Or join two cores at the far end, read \
             through both, and take off what the first alone reads: what is left is the second. Or read a longer piece, or use a \
             meter with four leads."
                .to_owned()
        }
        Reason::PrintNotUnderstood { place: at } => {
            format!("The print on {} could not be read as a known marking.", place(*at))
        }
        Reason::Needs(needed) => format!("To tell, {} must be known.", self::needed(*needed)),
        Reason::ClaimsDisagree { higher, lower } => format!(
            "{} states {}, {} states {}.",
            capital(&place(higher.0)),
            number::amount(higher.1),
            place(lower.0),
            number::amount(lower.1)
        ),
        Reason::WattsAboveVoltsTimesAmperes { place: at, watts, at_most } => format!(
            "{} states {}; its own volts and amperes make {} at the most, with every last digit rounded in its favour.",
            capital(&place(*at)),
            number::amount(*watts),
            number::amount(*at_most)
        ),
        Reason::ClaimAgainst { place: at, claim, limit } => format!(
            "{} states {}; it should be no more than {}. {}",
            capital(&place(*at)),
            number::amount(*claim),
            number::amount(*limit),
            words.why()
        ),
        Reason::FlexShort { place: at, claim, limit, warmth } => format!(
            "{} states {}; it should be at least {}. {}{}",
            capital(&place(*at)),
            number::amount(*claim),
            number::amount(*limit),
            words.why(),
            copper_reason::warmth(warmth)
        ),
        Reason::NowhereStated => format!("It is stated nowhere that was looked at. {}", words.why()),
        Reason::FlexType { designation } => format!("The flex says it is {designation}. {}", words.why()),
        Reason::OutOfRange if finding.outcome() == Conformity::Nonconforming => {
            format!("The instrument showed no path at all. {}", words.why())
        }
        Reason::OutOfRange => "The reading is outside what the instrument can show.".to_owned(),
        Reason::CoresMeasured { room, explanation, danger, fault } => {
            copper_reason::cores_measured(&finding.judgement.evidence, *room, *explanation, *danger, *fault)
        }
        Reason::CoreOpen { core } => format!("{} has no path from end to end.", capital(which::core(*core))),
        Reason::HeatBalance { current, conductor, between, carries } => {
            let open = (finding.outcome() == Conformity::Inconclusive).then_some(*between);
            copper_reason::heat_balance(*current, *conductor, open, *carries)
        }
        Reason::Metals { candidates, contradict, next, stands } => {
            copper_reason::metals(candidates, *contradict, *next, *stands)
        }
        Reason::NotAmong { question, answer } => match question::by_id(question).and_then(|q| q.answer(answer)) {
            Some(missing) => format!("Missing: {}. {}", missing.answer, words.why()),
            None => words.why().to_owned(),
        },
        Reason::FuseAgainst { fuse: Some(fuse), limit } => format!(
            "The fuse is rated {}; it should be no more than {}. {}",
            number::amount(*fuse),
            number::amount(*limit),
            words.why()
        ),
        Reason::FuseAgainst { fuse: None, limit } => {
            format!("The fuse should be rated no more than {}. {}", number::amount(*limit), words.why())
        }
        Reason::Reads { print } => format!("It reads “{print}”. {}", words.why()),
        Reason::CrossChecked(checks) => cross_check::said(checks),
        Reason::PolesOpenWhenDead => {
            "An RCD, a timer or electronics may keep the lead’s poles open while it is dead. Silence then proves nothing."
                .to_owned()
        }
        Reason::WrongTestVoltage => {
            "It was not tested with the voltage that decides: 500 V d.c., or 250 V d.c. where surge parts are fitted.".to_owned()
        }
        Reason::ClearsOnlyWithCores => {
            "It is inside the limit. So is a short lead with far too little copper: it counts only together with the resistance of the cores."
                .to_owned()
        }
        Reason::CrossCheckFailed => {
            "The readings do not agree with each other, so they cannot clear the flex.".to_owned()
        }
    }
}

/// What a finding is called: danger, against the rules, bad sign, can't tell.
pub const fn label(finding: &Finding) -> &'static str {
    match finding.judgement.outcome {
        Conformity::Nonconforming => verdict::severity(finding.judgement.severity),
        Conformity::Inconclusive => "can’t tell",
        Conformity::NotExamined => "not looked at",
        Conformity::Conforms => "keeps the rule",
        Conformity::NotApplicable => "doesn’t apply",
    }
}

/// What would settle a finding that could not be told; empty for the others.
pub fn settles(finding: &Finding) -> &'static str {
    if finding.outcome() == Conformity::Inconclusive { check::of(finding.code).settles() } else { "" }
}

/// What was found, its doubt, the limit, and the chance that it keeps it; values of which the same is to be said share a line.
pub fn numbers(finding: &Finding, kind: Kind) -> Vec<String> {
    let mut lines: Vec<(Vec<String>, Outcome)> = Vec::new();
    for evidence in &finding.judgement.evidence {
        let outcome = Outcome::of(finding, evidence);
        let (subject, value) = (subject(finding, evidence, kind), number::measured(evidence.value, evidence.u));
        let named = match (outcome.line, subject.is_empty()) {
            // Its value stands in the line before.
            (Line::Danger, false) => subject,
            (Line::Limit, false) => format!("{subject}: {value}"),
            (_, true) => value,
        };
        match lines.last_mut().filter(|(_, last)| *last == outcome) {
            Some((values, _)) => values.push(named),
            None => lines.push((vec![named], outcome)),
        }
    }
    lines.iter().map(|(values, outcome)| outcome.of_values(values)).collect()
}

/// What a value is held against.
#[derive(Clone, Copy, PartialEq)]
enum Line {
    /// The limit.
    Limit,
    /// The line beyond which a break is a danger.
    Danger,
}

/// What is to be said of a value.
#[derive(PartialEq)]
struct Outcome {
    line: Line,
    limit: String,
    keeps: &'static str,
    /// Empty where the margin of a model decides and not the chance.
    chance: String,
}

impl Outcome {
    fn of(finding: &Finding, evidence: &Evidence) -> Self {
        let is_danger = is_danger_line(finding, evidence);
        Self {
            line: if is_danger { Line::Danger } else { Line::Limit },
            limit: if is_danger { bound_value(&evidence.limit) } else { bound(&evidence.limit) },
            keeps: match evidence.outcome {
                Conformity::Conforms => "inside the limit",
                Conformity::Nonconforming => "outside the limit",
                Conformity::Inconclusive => "can’t tell",
                Conformity::NotExamined => "not looked at",
                Conformity::NotApplicable => "doesn’t apply",
            },
            chance: if finding.code == "overheats-at-claim" {
                String::new()
            } else {
                number::chance(evidence.probability, grounds(evidence))
            },
        }
    }

    fn of_values(&self, values: &[String]) -> String {
        let Self { line, limit, keeps, chance } = self;
        let all = capital(&values.join("; "));
        match (line, values.len()) {
            (Line::Danger, _) => format!(
                "Beyond {limit} it is a danger. Beyond it: {}. Chance that it is not: {chance}.",
                values.join("; ")
            ),
            (Line::Limit, _) if chance.is_empty() => format!("{all}, {limit}: {keeps}."),
            (Line::Limit, 1) => format!("{all}, {limit}: {keeps}. Chance that it keeps the limit: {chance}."),
            (Line::Limit, _) => {
                format!("{all}. {}: each {keeps}. Chance that it keeps the limit: {chance}.", capital(limit))
            }
        }
    }
}

/// What a value is a value of: "socket 2", "width of the earth pin".
pub fn subject(finding: &Finding, evidence: &Evidence, kind: Kind) -> String {
    let measured = measurand(finding.code, evidence);
    match evidence.target {
        Target::Sample => measured.to_owned(),
        Target::Socket(_) | Target::Core(_) => which::which(evidence.target, kind),
        Target::Claim(place) => format!("{measured}, against {}", which::claim(place, kind)),
    }
}

/// Whether a value is held against the line beyond which a break is a danger, after it was held against the limit itself.
pub fn is_danger_line(finding: &Finding, evidence: &Evidence) -> bool {
    let of_same = finding.judgement.evidence.iter().find(|first| first.target == evidence.target);
    matches!(finding.judgement.reason, Reason::CoresMeasured { .. })
        && of_same.is_some_and(|of| of.limit != evidence.limit)
}

/// A number on a display always has a doubt; "more than" and "less than" have none.
fn grounds(evidence: &Evidence) -> Grounds {
    let has_doubt = Unit::ALL.iter().any(|unit| evidence.u.difference_in(*unit).is_some_and(|u| u > 0.0));
    if has_doubt { Grounds::Number } else { Grounds::BeyondRange }
}

/// A limit in words: "at most 16.1 Ω/km allowed".
pub fn bound(bound: &Bound) -> String {
    match bound {
        Bound::AtLeast(low) => format!("at least {} wanted", number::amount(*low)),
        Bound::AtMost(high) => format!("at most {} allowed", number::amount(*high)),
        Bound::Between(low, high) => format!("{} to {} allowed", number::amount(*low), number::amount(*high)),
    }
}

/// Said of a finding that decides nothing; empty for the others.
pub fn bearing(finding: &Finding) -> &'static str {
    match finding.judgement.bearing {
        Bearing::Decides => "",
        Bearing::IsOnlyTold => "This is told and decides nothing.",
    }
}

fn bound_value(bound: &Bound) -> String {
    match *bound {
        Bound::AtLeast(only) | Bound::AtMost(only) => number::amount(only),
        Bound::Between(low, high) => format!("{} to {}", number::amount(low), number::amount(high)),
    }
}

const fn needed(needed: Needed) -> &'static str {
    match needed {
        Needed::ClaimedArea => "the size of the cores that the flex claims",
        Needed::ClaimedCurrent => "the current that the product claims",
        Needed::FlexLength => "the length of the flex",
        Needed::FuseRating => "the rating on the fuse",
        Needed::FlexDiameter => "the diameter of the flex",
        Needed::CoreResistance => "the resistance of the cores",
        Needed::PieceLength => "the length of the piece whose cores were read",
        Needed::KnownWire => "the size and the length of the known wire",
        Needed::ReadingsPrepared => "that everything was switched on, the fuse good and nothing connected",
    }
}

/// A text as it begins a sentence.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}
