//! How print, package and barcode are done: hints, never more.

use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::examination::Answer;
use crate::domain::finding::Severity::BadSign;
use crate::domain::finding::{Basis, ClaimPlace, Judgement, Reason};
use crate::domain::question::{Ask, Printed, Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, gtin};
use crate::domain::view::View;

/// What is careless about print and package.
pub const PRESENTATION: &Question =
    &Question::any("print-and-package", Place::WhatItSays, Equipment::Eyes, &["misspelt", "sharp-edges"]);

/// The number under the bars.
pub const BARCODE: &Question =
    &Question::asking("barcode", Place::WhatItSays, Equipment::Eyes, Ask::Printed(Printed::Barcode));

/// **Finds** misspelt words on the sample or its package.
///
/// **Why it matters** careful makers read their labels.
///
/// **Source** common practice.
///
/// **Decision** by eye; a bad sign.
pub const PRINT_MISSPELT: &Check = &hint(
    "print-misspelt",
    Judge::Marked(PRESENTATION, "misspelt", BadSign),
    &[PRESENTATION],
    &[Clause::common_practice()],
    30,
);

/// **Finds** a package with sharp edges or staples.
///
/// **Why it matters** it cuts fingers, and may have cut the flex.
///
/// **Source** common practice.
///
/// **Decision** by eye; a bad sign.
pub const PACKAGING_SHARP: &Check = &hint(
    "packaging-sharp",
    Judge::Marked(PRESENTATION, "sharp-edges", BadSign),
    &[PRESENTATION],
    &[Clause::common_practice()],
    5,
);

/// **Finds** a barcode whose check digit is wrong.
///
/// **Why it matters** such a number was made up.
///
/// **Source** GS1 General Specifications (read).
///
/// **Decision** by arithmetic; a bad sign. No barcode at all is noted and breaks nothing.
///
/// **Example**
/// ```
/// use plugwary::domain::standard::gtin::gtin_check_digit;
/// assert_eq!(gtin_check_digit(&[6, 2, 9, 1, 0, 4, 1, 5, 0, 0, 2, 1]), 3);
/// ```
pub const BARCODE_INVALID: &Check =
    &hint("barcode-invalid", Judge::Reckoned(barcode_invalid), &[BARCODE], &[gtin::CHECK_DIGIT], 10);

const fn hint(
    code: &'static str,
    judge: Judge,
    asks: &'static [&'static Question],
    against: &'static [Clause],
    percent: u8,
) -> Check {
    Check {
        code,
        place: Place::WhatItSays,
        needs: Equipment::Eyes,
        severity: BadSign,
        applies: always,
        judge,
        asks,
        against,
        prospect: Prospect { minutes: 0.3, percent },
    }
}

fn barcode_invalid(view: &View) -> Judgement {
    let printed = match view.answer(BARCODE, Target::Sample) {
        Some(Answer::Printed(printed)) => printed,
        Some(Answer::Nothing) => return Judgement::does_not_apply(BadSign),
        answer => return Judgement::without_choice(BadSign, answer),
    };
    match gtin::last_digit(printed) {
        Some(last) if last.printed == last.expected => Judgement::conforms(BadSign, Basis::Print, Reason::FitsTheClaim),
        Some(last) => Judgement::breaks(BadSign, Basis::Print, Reason::WrongCheckDigit(last)),
        None => Judgement::cannot_tell(BadSign, Reason::PrintNotUnderstood { place: ClaimPlace::Package }),
    }
}
