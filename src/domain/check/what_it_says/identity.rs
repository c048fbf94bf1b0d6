//! Who made it, who brought it here, which one it is, who sold it.

use super::marks::is_electrical_equipment;
use crate::domain::check::{Check, Judge, Prospect, always};
use crate::domain::finding::Severity::{BadSign, Breach};
use crate::domain::finding::{Conformity, Judgement, Severity};
use crate::domain::question::Question;
use crate::domain::sample::{Equipment, Market, Place};
use crate::domain::standard::{Clause, law_gb, law_ni, marks};
use crate::domain::view::View;

/// What sample, package, papers and listing together name.
pub const IDENTITY: &Question = &Question::any(
    "identity",
    Place::WhatItSays,
    Equipment::Eyes,
    &[
        "maker",
        "maker-address",
        "local-address",
        "electronic-address",
        "type-or-batch",
        "instructions",
        "wheeled-bin",
        "seller",
        "package-gone",
    ],
);

const RULES: &[Clause] =
    &[law_gb::EQUIPMENT_IDENTITY, law_gb::GENERAL_SAFETY, law_ni::EQUIPMENT_IDENTITY, law_ni::GENERAL_SAFETY];

/// **Finds** goods that name no maker; where the law wants it, no address of the maker.
///
/// **Why it matters** nobody answers for them, and nobody can call them back.
///
/// **Source** SI 2016/1101, SI 2005/1803, Directive 2014/35/EU, Regulation (EU) 2023/988 (memory-high).
///
/// **Decision** every place is looked at. Against the rules for electrical equipment, in Northern Ireland, and where nobody at all is
/// named; else a bad sign. A package that is gone may have said it: then it cannot be told.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, what_it_says::identity};
/// assert_eq!(by_code("maker-not-named").map(|check| check.asks), Some([identity::IDENTITY].as_slice()));
/// ```
pub const MAKER_NOT_NAMED: &Check = &identity("maker-not-named", Breach, maker_not_named, RULES, 25);

/// **Finds** goods with no address in the market where they are sold.
///
/// **Why it matters** a maker far away cannot be reached; the law wants somebody who can.
///
/// **Source** as for the maker.
///
/// **Decision** as for the maker. An address of the maker in the market does as well.
pub const IMPORTER_NOT_NAMED: &Check =
    &identity("importer-not-named", Breach, |view| named(view, &["local-address"]), RULES, 35);

/// **Finds** goods with neither type nor batch or serial number.
///
/// **Why it matters** a recall cannot name them.
///
/// **Source** as for the maker.
///
/// **Decision** as for the maker.
pub const TYPE_OR_BATCH_MISSING: &Check =
    &identity("type-or-batch-missing", Breach, |view| named(view, &["type-or-batch"]), RULES, 30);

/// **Finds** goods without instructions or warnings.
///
/// **Why it matters** nobody says how much may be plugged in, or that a reel must be unwound.
///
/// **Source** as for the maker.
///
/// **Decision** as for the maker.
pub const INSTRUCTIONS_MISSING: &Check =
    &identity("instructions-missing", Breach, |view| named(view, &["instructions"]), RULES, 30);

/// **Finds** goods without the crossed-out wheeled bin.
///
/// **Why it matters** a maker that leaves it out tends to leave out more.
///
/// **Source** EN 50419 (memory-medium).
///
/// **Decision** by eye; a bad sign.
pub const WASTE_MARK_MISSING: &Check = &identity(
    "waste-mark-missing",
    BadSign,
    |view| unless_package_gone(view, Judgement::by_print(view, IDENTITY, &["wheeled-bin"], BadSign)),
    &[marks::WHEELED_BIN],
    30,
);

/// **Finds** a seller without name and address.
///
/// **Why it matters** nobody takes the goods back.
///
/// **Source** common practice.
///
/// **Decision** by the listing, sign or receipt; a bad sign.
pub const SELLER_UNTRACEABLE: &Check = &identity(
    "seller-untraceable",
    BadSign,
    |view| Judgement::by_print(view, IDENTITY, &["seller"], BadSign),
    &[Clause::common_practice()],
    30,
);

const fn identity(
    code: &'static str,
    severity: Severity,
    judge: fn(&View) -> Judgement,
    against: &'static [Clause],
    percent: u8,
) -> Check {
    Check {
        code,
        place: Place::WhatItSays,
        needs: Equipment::Eyes,
        severity,
        applies: always,
        judge: Judge::Reckoned(judge),
        asks: &[IDENTITY],
        against,
        prospect: Prospect { minutes: 0.5, percent },
    }
}

/// Whether the package is gone, and with it what it may have said.
pub fn is_package_gone(view: &View) -> bool {
    view.marked(IDENTITY, "package-gone") == Some(true)
}

/// What is missing cannot be told to be missing where the package is gone.
pub fn unless_package_gone(view: &View, judgement: Judgement) -> Judgement {
    if judgement.outcome == Conformity::Nonconforming && is_package_gone(view) {
        return Judgement::cannot_tell(judgement.severity, judgement.reason);
    }
    judgement
}

fn maker_not_named(view: &View) -> Judgement {
    let needed: &[&'static str] = match view.market() {
        Market::NorthernIreland => &["maker", "maker-address", "electronic-address"],
        Market::GreatBritain if is_electrical_equipment(view) == Some(true) => &["maker", "maker-address"],
        Market::GreatBritain => &["maker"],
    };
    named(view, needed)
}

fn named(view: &View, needed: &[&'static str]) -> Judgement {
    let severity = matters(view);
    unless_package_gone(view, Judgement::by_print(view, IDENTITY, needed, severity))
}

fn matters(view: &View) -> Severity {
    let is_under_the_rules = view.market() == Market::NorthernIreland || is_electrical_equipment(view) == Some(true);
    let names = |code| view.marked(IDENTITY, code) == Some(true);
    let names_somebody = names("maker") || names("maker-address") || names("local-address");
    let names_nobody = view.marked(IDENTITY, "maker").is_some() && !names_somebody;
    if is_under_the_rules || names_nobody { Breach } else { BadSign }
}
