//! Who made it, who answers for it here, which one it is, and how it is to be used.

use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::examination::Answer;
use crate::domain::facts;
use crate::domain::finding::Severity::{BadSign, Breach};
use crate::domain::finding::{Basis, Judgement, Reason, Severity};
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Market, Place};
use crate::domain::standard::{Clause, law_gb, law_ni};
use crate::domain::view::View;

/// What is stated on product, package or papers.
pub const STATED: &Question = &Question::any(
    "identity",
    Place::WhatItSays,
    Equipment::Eyes,
    &["maker", "local-address", "electronic-address", "seller", "type-or-batch", "instructions", "package-gone"],
);

const RULES: &[Clause] =
    &[law_gb::EQUIPMENT_IDENTITY, law_gb::GENERAL_SAFETY, law_ni::EQUIPMENT_IDENTITY, law_ni::GENERAL_SAFETY];

/// **Finds** goods that name no maker with a postal address.
///
/// **Why it matters** nobody answers for them.
///
/// **Source** SI 2016/1101, SI 2005/1803; in Northern Ireland Directive 2014/35/EU, Regulation (EU) 2023/988 (memory-high).
///
/// **Decision** every place is looked at; with the package gone it cannot be told. A breach for goods under the electrical equipment
/// rules, in Northern Ireland, and where nothing at all tells who they are; else a bad sign.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, what_it_says::identity};
/// assert_eq!(by_code("maker-not-named").map(|check| check.asks), Some([identity::STATED].as_slice()));
/// ```
pub const MAKER_NOT_NAMED: &Check = &stated("maker-not-named", Judge::Reckoned(|view| lacks(view, "maker")), 30);

/// **Finds** goods that name nobody at an address in the market.
///
/// **Why it matters** a maker abroad is out of reach of customer and authority.
///
/// **Source** SI 2016/1101, SI 2005/1803, Regulation (EU) 2023/988, 16 (memory-high).
///
/// **Decision** as for `maker-not-named`; a maker at home needs no importer.
pub const IMPORTER_NOT_NAMED: &Check =
    &stated("importer-not-named", Judge::Reckoned(|view| lacks(view, "local-address")), 35);

/// **Finds** goods that name no electronic address of their maker or importer.
///
/// **Why it matters** the law of Northern Ireland wants one, so that a complaint arrives.
///
/// **Source** Regulation (EU) 2023/988, 9 and 11 (memory-high).
///
/// **Decision** as for `maker-not-named`, in Northern Ireland only: a breach.
pub const ELECTRONIC_ADDRESS_MISSING: &Check = &Check {
    applies: |view| view.market() == Market::NorthernIreland,
    against: &[law_ni::GENERAL_SAFETY],
    ..stated("electronic-address-missing", Judge::Reckoned(|view| absent(view, "electronic-address", Breach)), 40)
};

/// **Finds** goods that state neither type nor batch.
///
/// **Why it matters** they cannot be called back.
///
/// **Source** as for `maker-not-named`.
///
/// **Decision** as for `maker-not-named`.
pub const TYPE_OR_BATCH_MISSING: &Check =
    &stated("type-or-batch-missing", Judge::Reckoned(|view| lacks(view, "type-or-batch")), 25);

/// **Finds** goods without instructions.
///
/// **Why it matters** nobody is told not to coil it, cover it or overload it.
///
/// **Source** as for `maker-not-named`.
///
/// **Decision** as for `maker-not-named`.
pub const INSTRUCTIONS_MISSING: &Check =
    &stated("instructions-missing", Judge::Reckoned(|view| lacks(view, "instructions")), 30);

/// **Finds** a seller without name and address.
///
/// **Why it matters** there is nobody to take it back.
///
/// **Source** a fact of the trade.
///
/// **Decision** by eye; a hint only.
pub const SELLER_UNTRACEABLE: &Check = &Check {
    severity: BadSign,
    against: &[Clause::common_practice()],
    ..stated("seller-untraceable", Judge::Reckoned(|view| absent(view, "seller", BadSign)), 30)
};

const fn stated(code: &'static str, judge: Judge, percent: u8) -> Check {
    Check {
        code,
        place: Place::WhatItSays,
        needs: Equipment::Eyes,
        severity: Breach,
        applies: always,
        judge,
        asks: &[STATED],
        against: RULES,
        prospect: Prospect { minutes: 0.5, percent },
    }
}

/// Whether the goods fall under the electrical equipment rules: not a plain lead, but one with USB or electronics. `None` until
/// somebody looked for these.
pub fn is_electrical_equipment(view: &View) -> Option<bool> {
    let has = |extra| view.marked(facts::EXTRAS, extra);
    Some(has("usb")? || has("electronics")?)
}

fn lacks(view: &View, what: &'static str) -> Judgement {
    let has = |code| view.marked(STATED, code) == Some(true);
    let tells_something = ["maker", "local-address", "seller", "type-or-batch"].into_iter().any(has);
    let is_plain = is_electrical_equipment(view) != Some(true) && view.market() == Market::GreatBritain;
    absent(view, what, if is_plain && tells_something { BadSign } else { Breach })
}

fn absent(view: &View, what: &'static str, severity: Severity) -> Judgement {
    match view.answer(STATED, Target::Sample) {
        Some(Answer::Any(codes)) if codes.contains(&what) => {
            Judgement::conforms(severity, Basis::Print, Reason::FitsTheClaim)
        }
        Some(Answer::Any(codes)) if codes.contains(&"package-gone") => {
            let reason = Reason::Answered { question: STATED.id, target: Target::Sample, answer: "package-gone" };
            Judgement::cannot_tell(severity, reason)
        }
        _ => Judgement::by_print(view, STATED, &[what], severity),
    }
}
