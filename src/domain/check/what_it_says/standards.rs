//! The standards that print names.

use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::examination::Answer;
use crate::domain::finding::Severity::BadSign;
use crate::domain::finding::{Basis, ClaimPlace, Judgement, Reason};
use crate::domain::question::{Ask, Printed, Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::Clause;
use crate::domain::view::View;

/// The standards named on sample, package or listing, as they are printed.
pub const STANDARDS_NAMED: &Question =
    &Question::asking("standards-named", Place::WhatItSays, Equipment::Eyes, Ask::Printed(Printed::Words));

/// **Finds** a standard that was withdrawn, or that belongs to another country's plugs.
///
/// **Why it matters** a number was copied from somewhere, and nothing was tested to it.
///
/// **Source** common practice.
///
/// **Decision** by the number; a bad sign. One that is not known here cannot be told.
///
/// **Example**
/// ```
/// use plugwary::domain::check::what_it_says::standards::{Standing, standing};
/// assert_eq!(standing("IS 1293"), Standing::Foreign);
/// ```
pub const STANDARD_MISQUOTED: &Check = &Check {
    code: "standard-misquoted",
    place: Place::WhatItSays,
    needs: Equipment::Eyes,
    severity: BadSign,
    applies: always,
    judge: Judge::Reckoned(misquoted),
    asks: &[STANDARDS_NAMED],
    against: &[Clause::common_practice()],
    prospect: Prospect { minutes: 1.0, percent: 15 },
};

/// How a named standard stands to a UK lead or cord set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// It may be named.
    Fits,
    /// It was withdrawn.
    Withdrawn,
    /// It is for the plugs or goods of another country.
    Foreign,
    /// Not known here.
    Unknown,
}

/// Numbers without spaces, dashes and slashes.
const KNOWN: &[(&str, Standing)] = &[
    ("BS1362", Standing::Fits),
    ("BS1363", Standing::Fits),
    ("BS5733", Standing::Fits),
    ("BSEN50525", Standing::Fits),
    ("BSEN60320", Standing::Fits),
    ("BSEN60799", Standing::Fits),
    ("BSEN61242", Standing::Fits),
    ("BSEN62368", Standing::Fits),
    ("EN50525", Standing::Fits),
    ("EN60320", Standing::Fits),
    ("EN60799", Standing::Fits),
    ("EN61242", Standing::Fits),
    ("EN62368", Standing::Fits),
    ("IEC60227", Standing::Fits),
    ("IEC60320", Standing::Fits),
    ("IEC60799", Standing::Fits),
    ("BS6500", Standing::Withdrawn),
    ("AS3112", Standing::Foreign),
    ("ASNZS3112", Standing::Foreign),
    ("CEE7", Standing::Foreign),
    ("EN60884", Standing::Foreign),
    ("GB1002", Standing::Foreign),
    ("GB2099", Standing::Foreign),
    ("IEC60884", Standing::Foreign),
    ("IEC60906", Standing::Foreign),
    ("IS1293", Standing::Foreign),
    ("NBR14136", Standing::Foreign),
    ("SI32", Standing::Foreign),
    ("UL817", Standing::Foreign),
    ("VDE0620", Standing::Foreign),
];

/// How one named standard stands.
pub fn standing(named: &str) -> Standing {
    let bare: String = named.chars().filter(char::is_ascii_alphanumeric).collect::<String>().to_ascii_uppercase();
    KNOWN.iter().find(|(number, _)| bare.starts_with(number)).map_or(Standing::Unknown, |row| row.1)
}

fn misquoted(view: &View) -> Judgement {
    let printed = match view.answer(STANDARDS_NAMED, Target::Sample) {
        Some(Answer::Printed(printed)) => printed,
        Some(Answer::Nothing) => return Judgement::does_not_apply(BadSign),
        answer => return Judgement::without_choice(BadSign, answer),
    };
    let named = || printed.split([',', ';', '\n']).map(str::trim).filter(|one| !one.is_empty());
    let wrong = named().find(|one| matches!(standing(one), Standing::Withdrawn | Standing::Foreign));
    if let Some(number) = wrong {
        return Judgement::breaks(BadSign, Basis::Print, Reason::StandardNamed { number: number.to_owned() });
    }
    if named().any(|one| standing(one) == Standing::Unknown) {
        return Judgement::cannot_tell(BadSign, Reason::PrintNotUnderstood { place: ClaimPlace::Package });
    }
    Judgement::conforms(BadSign, Basis::Print, Reason::FitsTheClaim)
}
