//! How the print is made: its standards, its barcode, its spelling, and the package itself.

use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::examination::Answer;
use crate::domain::finding::Severity::BadSign;
use crate::domain::finding::{Basis, Judgement, Reason};
use crate::domain::question::{Ask, Printed, Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{Clause, gtin, marks};
use crate::domain::view::View;

/// What is poor about print and package.
pub const FAULTS: &Question =
    &Question::any("print-faults", Place::WhatItSays, Equipment::Eyes, &["misspelt", "sharp"]).lesser();

/// The numbers of the standards that are named.
pub const STANDARDS: &Question =
    &Question::asking("standards-named", Place::WhatItSays, Equipment::Eyes, Ask::Printed(Printed::Words)).lesser();

/// The number under the bars.
pub const BARCODE: &Question =
    &Question::asking("barcode", Place::WhatItSays, Equipment::Eyes, Ask::Printed(Printed::Barcode)).lesser();

const USUAL: &[Clause] = &[Clause::common_practice()];

/// **Finds** a standard that is not one for such a product: of another thing, withdrawn, foreign or made up.
///
/// **Why it matters** whoever quotes a wrong standard has tested to none.
///
/// **Source** the list of standards that belong on plugs, leads and cord sets (usual practice).
///
/// **Decision** by number, where BS, EN or IEC or the like stands before it; a hint only.
///
/// **Example**
/// ```
/// use plugwary::domain::check::what_it_says::print::misquoted;
/// assert_eq!(misquoted("BS 1363-2 and EN 99999"), ["EN 99999"]);
/// ```
pub const STANDARD_MISQUOTED: &Check = &Check {
    needs: Equipment::HandTools,
    judge: Judge::Reckoned(standards),
    asks: &[STANDARDS],
    against: &[marks::STANDARDS_THAT_BELONG],
    prospect: Prospect { minutes: 0.5, percent: 20 },
    ..hint("standard-misquoted", "misspelt")
};

/// **Finds** a barcode number whose last digit does not follow from the others.
///
/// **Why it matters** such a number was never given to anybody.
///
/// **Source** GS1 General Specifications (read).
///
/// **Decision** by reckoning; a number of another length cannot be told. No barcode is no fault. A hint only.
pub const BARCODE_INVALID: &Check = &Check {
    needs: Equipment::HandTools,
    judge: Judge::Reckoned(barcode),
    asks: &[BARCODE],
    against: &[gtin::CHECK_DIGIT],
    prospect: Prospect { minutes: 0.5, percent: 5 },
    ..hint("barcode-invalid", "misspelt")
};

/// **Finds** misspelt or garbled print.
///
/// **Why it matters** nobody who knows the market read it.
///
/// **Source** a fact of the trade.
///
/// **Decision** by eye; a hint only.
pub const PRINT_MISSPELT: &Check = &hint("print-misspelt", "misspelt");

/// **Finds** a package with sharp edges or staples.
///
/// **Why it matters** it cuts fingers, and flex.
///
/// **Source** a fact of the trade.
///
/// **Decision** by eye; a hint only.
pub const PACKAGING_SHARP: &Check = &hint("packaging-sharp", "sharp");

const fn hint(code: &'static str, answer: &'static str) -> Check {
    Check {
        code,
        place: Place::WhatItSays,
        needs: Equipment::Eyes,
        severity: BadSign,
        applies: always,
        judge: Judge::Marked(FAULTS, answer, BadSign),
        asks: &[FAULTS],
        against: USUAL,
        prospect: Prospect { minutes: 0.3, percent: 20 },
    }
}

/// Letters that stand before the number of a standard.
const ISSUERS: &[&str] = &["AS", "AS/NZS", "BS", "DIN", "EN", "GB", "GB/T", "IEC", "IS", "ISO", "NBR", "UL", "VDE"];

/// The standards in a print that do not belong on a plug, a lead or a cord set, as they are named.
///
/// A number counts where the letters of an issuer stand before it. ISO 9001 and its like are another check.
pub fn misquoted(print: &str) -> Vec<String> {
    let parts = print.to_uppercase();
    let words = parts.split(|c: char| c.is_whitespace() || ",;:()".contains(c)).filter(|word| !word.is_empty());
    let mut before: Vec<&str> = Vec::new();
    let mut found = Vec::new();
    for word in words {
        let (letters, number) = word.split_at(word.find(|c: char| c.is_ascii_digit()).unwrap_or(word.len()));
        let is_issuer = ISSUERS.contains(&letters);
        if is_issuer && number.is_empty() {
            before.push(word);
            continue;
        }
        let is_named = is_issuer || (letters.is_empty() && !before.is_empty());
        let digits: String = number.chars().take_while(char::is_ascii_digit).collect();
        if is_named && !marks::may_be_named(&digits) {
            before.push(word);
            found.push(before.join(" "));
        }
        before.clear();
    }
    found
}

fn standards(view: &View) -> Judgement {
    match view.answer(STANDARDS, Target::Sample) {
        Some(Answer::Printed(print)) => match misquoted(print).into_iter().next() {
            Some(print) => Judgement::breaks(BadSign, Basis::Print, Reason::Reads { print }),
            None => Judgement::conforms(BadSign, Basis::Print, Reason::FitsTheClaim),
        },
        Some(Answer::Nothing) => Judgement::does_not_apply(BadSign),
        answer => Judgement::without_choice(BadSign, answer),
    }
}

fn barcode(view: &View) -> Judgement {
    match view.answer(BARCODE, Target::Sample) {
        Some(Answer::Printed(print)) => match gtin::is_valid(print) {
            Some(true) => Judgement::conforms(BadSign, Basis::Print, Reason::FitsTheClaim),
            Some(false) => Judgement::breaks(BadSign, Basis::Print, Reason::Reads { print: print.clone() }),
            None => Judgement::cannot_tell(BadSign, Reason::Reads { print: print.clone() }),
        },
        Some(Answer::Nothing) => Judgement::does_not_apply(BadSign),
        answer => Judgement::without_choice(BadSign, answer),
    }
}
