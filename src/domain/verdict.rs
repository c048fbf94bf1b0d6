//! The verdict: what all findings together amount to (the rule is in [`Verdict::of`]).

use super::finding::{Bearing, Conformity, Finding, Severity};

/// What to do with the sample.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Something can hurt or kill, or set fire.
    KeepAway,
    /// Something breaks a law or standard.
    DoNotAccept,
    /// A danger or breach could not be told, or an essential check was not made: don't use it yet.
    NotDecided,
    /// Nothing wrong seen in what was looked at.
    NothingWrongSeen,
}

impl Verdict {
    /// Every verdict, the gravest first.
    pub const ALL: [Self; 4] = [Self::KeepAway, Self::DoNotAccept, Self::NotDecided, Self::NothingWrongSeen];

    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::KeepAway => "keep-away",
            Self::DoNotAccept => "do-not-accept",
            Self::NotDecided => "not-decided",
            Self::NothingWrongSeen => "nothing-wrong-seen",
        }
    }

    /// Any danger: keep away; else any breach: don't accept it; else anything grave that could not be told, or an essential check
    /// not made: not decided; else nothing wrong seen. Bad signs never decide.
    pub fn of(findings: &[Finding], is_essential: impl Fn(&str) -> bool) -> Self {
        let undecided = |f: &Finding| {
            let grave = f.judgement.severity > Severity::BadSign && f.judgement.bearing == Bearing::Decides;
            match f.outcome() {
                Conformity::Inconclusive => grave,
                Conformity::NotExamined => is_essential(f.code),
                Conformity::Conforms | Conformity::NotApplicable | Conformity::Nonconforming => false,
            }
        };
        if findings.iter().any(|f| f.breaks(Severity::Danger)) {
            Self::KeepAway
        } else if findings.iter().any(|f| f.breaks(Severity::Breach)) {
            Self::DoNotAccept
        } else if findings.iter().any(undecided) {
            Self::NotDecided
        } else {
            Self::NothingWrongSeen
        }
    }
}
