//! Marks of conformity, class and management: each a claim, and none of them evidence.

use super::identity::{IDENTITY, unless_package_gone};
use crate::domain::check::plug::print::PLUG_PRINT;
use crate::domain::check::sockets::connector::{self, has_no_earth_by_design};
use crate::domain::check::{Check, Judge, Prospect, always, on_leads, ruling};
use crate::domain::facts::{EXTRAS, has_uk_plug};
use crate::domain::finding::Severity::{BadSign, Breach, Danger};
use crate::domain::finding::{Conformity, Judgement};
use crate::domain::instrument::Instrument::{DigitalCalliper, Rule, VernierCalliper};
use crate::domain::quantity::{Length, QuantityKind, Unit};
use crate::domain::question::{Ask, Question, Target};
use crate::domain::reading::Reading;
use crate::domain::sample::{Equipment, Market, Place};
use crate::domain::standard::{law_gb, law_ni, marks};
use crate::domain::view::View;

/// Which marks stand on the sample, its package or its papers.
pub const MARKS: &Question = &Question::any(
    "marks",
    Place::WhatItSays,
    Equipment::Eyes,
    &["double-square", "functional-earth", "ce", "ukca", "odd-ce-or-ukca", "iso-9001"],
);

/// How high the CE or UKCA mark is.
pub const MARK_HEIGHT: &Question = &Question::asking(
    "mark-height",
    Place::WhatItSays,
    Equipment::HandTools,
    Ask::Measure {
        kind: QuantityKind::Length,
        units: &[Unit::Millimetre],
        instruments: &[DigitalCalliper, VernierCalliper, Rule],
    },
)
.when(has_mark);

/// Extras that bring a lead under the rules for electrical equipment.
const ELECTRONICS: [&str; 4] = ["usb", "timer", "rcd", "electronics"];

/// **Finds** the double square of class II on goods that need an earth.
///
/// **Why it matters** it says that no earth is needed. Whoever believes it leaves the earth out, or does not test it.
///
/// **Source** IEC 60417-5172 (memory-high); UK leads are earthed (read).
///
/// **Decision** the mark itself is the danger: no reading lifts it, and it closes no earth check. With the sign of a functional earth
/// beside it, or before a connector that takes no earth, it cannot be told.
///
/// **Example**
/// ```
/// use plugwary::domain::check::what_it_says::marks::CLASS_MARK_CONTRADICTED;
/// use plugwary::domain::finding::Severity;
/// assert_eq!(CLASS_MARK_CONTRADICTED.severity, Severity::Danger);
/// ```
pub const CLASS_MARK_CONTRADICTED: &Check = &Check {
    code: "class-mark-contradicted",
    place: Place::WhatItSays,
    needs: Equipment::Eyes,
    severity: Danger,
    applies: |view| view.needs_earth(),
    judge: Judge::Reckoned(class_mark),
    asks: &[MARKS, connector::PATTERN],
    against: &[marks::DOUBLE_SQUARE],
    prospect: Prospect { minutes: 0.3, percent: 3 },
};

/// **Finds** electrical equipment without the mark that the law wants: CE or UKCA in Great Britain, CE in Northern Ireland.
///
/// **Why it matters** without it nobody even claims that the goods keep the law.
///
/// **Source** SI 2016/1101, regulation 6 (read); Directive 2014/35/EU (memory-high). A plain lead or plug needs none.
///
/// **Decision** goods with USB, timer, RCD or other electronics; the mark may stand on package or papers.
pub const CONFORMITY_MARK_MISSING: &Check = &Check {
    code: "conformity-mark-missing",
    place: Place::WhatItSays,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: |view| is_electrical_equipment(view) != Some(false),
    judge: Judge::Reckoned(mark_missing),
    asks: &[MARKS, EXTRAS, IDENTITY],
    against: &[law_gb::EQUIPMENT_MARK, law_ni::EQUIPMENT_MARK],
    prospect: Prospect { minutes: 0.3, percent: 20 },
};

/// **Finds** CE or UKCA on a plug or a plain lead, which bear neither.
///
/// **Why it matters** whoever put it there does not know the rules, or hopes that nobody does.
///
/// **Source** SI 2016/1101, scope (read).
///
/// **Decision** on the plug always, elsewhere on leads known to have no electronics; a bad sign. On a connector the mark may be right.
pub const MARK_NOT_APPLICABLE: &Check = &Check {
    code: "mark-not-applicable",
    place: Place::WhatItSays,
    needs: Equipment::Eyes,
    severity: BadSign,
    applies: |view| on_leads(view) || has_uk_plug(view),
    judge: Judge::Reckoned(mark_not_applicable),
    asks: &[PLUG_PRINT, MARKS, EXTRAS],
    against: &[law_gb::EQUIPMENT_SCOPE],
    prospect: Prospect { minutes: 0.3, percent: 40 },
};

/// **Finds** CE or UKCA under 5 mm, or drawn out of proportion.
///
/// **Why it matters** the mark is often imitated, and seldom carefully.
///
/// **Source** Regulation (EC) 765/2008, Annex II (height read, proportions memory-high).
///
/// **Decision** by eye, and by calliper against 5 mm; a bad sign.
pub const CONFORMITY_MARK_MALFORMED: &Check = &Check {
    code: "conformity-mark-malformed",
    place: Place::WhatItSays,
    needs: Equipment::Eyes,
    severity: BadSign,
    applies: |view| view.marked(MARKS, "ce").is_none() || has_mark(view),
    judge: Judge::Reckoned(malformed),
    asks: &[MARKS, MARK_HEIGHT],
    against: &[marks::CE_SIZE],
    prospect: Prospect { minutes: 0.3, percent: 25 },
};

/// **Finds** ISO 9001 shown as if it certified the product.
///
/// **Why it matters** it certifies an office, not a lead.
///
/// **Source** ISO's own rules for the use of its name (read).
///
/// **Decision** by eye; a bad sign.
pub const MANAGEMENT_MARK_AS_PRODUCT_MARK: &Check = &Check {
    code: "management-mark-as-product-mark",
    place: Place::WhatItSays,
    needs: Equipment::Eyes,
    severity: BadSign,
    applies: always,
    judge: Judge::Marked(MARKS, "iso-9001", BadSign),
    asks: &[MARKS],
    against: &[marks::MANAGEMENT_SYSTEM],
    prospect: Prospect { minutes: 0.2, percent: 10 },
};

/// Whether the rules for electrical equipment hold: they do for electronics, and a stated output is the same; `None` where nobody
/// looked what the body has.
pub fn is_electrical_equipment(view: &View) -> Option<bool> {
    if view.claims().ratings().iter().any(|(_, rating)| rating.has_output) {
        return Some(true);
    }
    let marked = ELECTRONICS.map(|extra| view.marked(EXTRAS, extra));
    if marked.contains(&None) { None } else { Some(marked.contains(&Some(true))) }
}

fn has(view: &View, mark: &str) -> bool {
    view.marked(MARKS, mark) == Some(true)
}

fn has_mark(view: &View) -> bool {
    ["ce", "ukca", "odd-ce-or-ukca"].iter().any(|mark| has(view, mark))
}

fn class_mark(view: &View) -> Judgement {
    let with_earth_sign = Judgement::by_mark(view, MARKS, "functional-earth", Danger, Danger);
    if with_earth_sign.outcome == Conformity::Nonconforming {
        return Judgement::cannot_tell(Danger, with_earth_sign.reason);
    }
    let judgement = Judgement::by_mark(view, MARKS, "double-square", Danger, Danger);
    if judgement.outcome == Conformity::Nonconforming && has_no_earth_by_design(view) {
        return Judgement::cannot_tell(Danger, judgement.reason);
    }
    judgement
}

fn mark_missing(view: &View) -> Judgement {
    if is_electrical_equipment(view).is_none() {
        return Judgement::not_examined(Breach);
    }
    let needed = match view.market() {
        Market::GreatBritain if has(view, "ukca") => "ukca",
        Market::GreatBritain | Market::NorthernIreland => "ce",
    };
    unless_package_gone(view, Judgement::by_print(view, MARKS, &[needed], Breach))
}

fn mark_not_applicable(view: &View) -> Judgement {
    let on_plug = Judgement::by_mark(view, PLUG_PRINT, "ce-or-ukca", BadSign, BadSign);
    if on_plug.outcome == Conformity::Nonconforming || !on_leads(view) || is_electrical_equipment(view) == Some(true) {
        return on_plug;
    }
    if is_electrical_equipment(view).is_none() {
        return Judgement::not_examined(BadSign);
    }
    let mark = if has(view, "ukca") { "ukca" } else { "ce" };
    Judgement::by_mark(view, MARKS, mark, BadSign, BadSign)
}

fn malformed(view: &View) -> Judgement {
    let by_eye = Judgement::by_mark(view, MARKS, "odd-ce-or-ukca", BadSign, BadSign);
    let height = view.reading(MARK_HEIGHT, Target::Sample).and_then(Reading::measured::<Length>);
    match height {
        Some(height) if by_eye.outcome == Conformity::Conforms => {
            let evidence = ruling::against(Target::Sample, &height, &marks::mark_height());
            Judgement::by_readings(BadSign, vec![evidence], 1)
        }
        _ => by_eye,
    }
}
