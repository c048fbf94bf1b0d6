//! Marks on product, package or papers: those that must be there, and those that must not.

use super::identity::{STATED, is_electrical_equipment};
use crate::domain::check::plug::print::PLUG_PRINT;
use crate::domain::check::sockets::connector::has_no_earth_by_design;
use crate::domain::check::{Check, Judge, Prospect, Ruling, always, on_leads};
use crate::domain::examination::Answer;
use crate::domain::facts;
use crate::domain::finding::Severity::{BadSign, Breach, Danger};
use crate::domain::finding::{Basis, Conformity, Judgement, Reason};
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Market, Place};
use crate::domain::standard::{law_gb, law_ni, marks};
use crate::domain::view::View;

/// Which marks are there.
pub const SEEN: &Question = &Question::any(
    "marks",
    Place::WhatItSays,
    Equipment::Eyes,
    &["ce", "ukca", "mark-malformed", "double-square", "functional-earth", "wheeled-bin", "iso-9001"],
);

/// **Finds** goods without the mark that the electrical equipment rules ask for.
///
/// **Why it matters** its maker has not even claimed that it is safe.
///
/// **Source** SI 2016/1101, regulation 6 (read): CE or UKCA in Great Britain; Directive 2014/35/EU (memory-high): CE in Northern Ireland.
///
/// **Decision** by eye, on product, package or papers; with the package gone it cannot be told. Asked only of goods with USB or
/// electronics: a plain lead needs none.
///
/// **Example**
/// ```
/// use plugwary::domain::check::{by_code, what_it_says::marks};
/// assert_eq!(by_code("waste-mark-missing").map(|check| check.place), Some(marks::WASTE_MARK_MISSING.place));
/// ```
pub const CONFORMITY_MARK_MISSING: &Check = &Check {
    severity: Breach,
    applies: |view| is_electrical_equipment(view) != Some(false),
    judge: Judge::Reckoned(conformity_mark),
    asks: &[SEEN, facts::EXTRAS],
    against: &[law_gb::EQUIPMENT_MARK, law_ni::EQUIPMENT_MARK],
    prospect: Prospect { minutes: 0.3, percent: 20 },
    ..seen("conformity-mark-missing", "ce")
};

/// **Finds** CE or UKCA on a plug or a plain lead.
///
/// **Why it matters** neither belongs there: whoever prints it does not know the rules.
///
/// **Source** SI 2016/1101 (read), Directive 2014/35/EU, Annex II (memory-high): domestic plugs and sockets are outside.
///
/// **Decision** by eye; on the plug itself neither mark is ever right, elsewhere on a lead only where it has USB or electronics.
pub const MARK_NOT_APPLICABLE: &Check = &Check {
    judge: Judge::Reckoned(not_applicable),
    asks: &[SEEN, PLUG_PRINT, facts::EXTRAS],
    against: &[law_gb::EQUIPMENT_SCOPE, law_ni::EQUIPMENT_SCOPE],
    prospect: Prospect { minutes: 0.2, percent: 30 },
    ..seen("mark-not-applicable", "ce")
};

/// **Finds** a CE or UKCA mark under 5 mm, or of odd shape.
///
/// **Why it matters** a mark drawn by hand was not taken from the rules it stands for.
///
/// **Source** Regulation (EC) 765/2008, Annex II (read; UKCA memory-high): at least 5 mm high, in the drawing's proportions.
///
/// **Decision** by eye; a hint only.
pub const CONFORMITY_MARK_MALFORMED: &Check = &Check {
    against: &[marks::CE_SIZE, marks::CE_AND_UKCA_SIZE],
    prospect: Prospect { minutes: 0.3, percent: 20 },
    ..seen("conformity-mark-malformed", "mark-malformed")
};

/// **Finds** a double square on a product that needs an earth.
///
/// **Why it matters** it says that no earth is needed: whoever believes it trusts a lead without one.
///
/// **Source** IEC 60417-5172 (memory-high); leads and cord sets are earthed in the United Kingdom (read).
///
/// **Decision** by eye. The mark never closes an earth check. A cord set whose connector has no earth by design leaves it open, and so
/// does the sign of a functional earth in or beside the square.
pub const CLASS_MARK_CONTRADICTED: &Check = &Check {
    severity: Danger,
    applies: |view| view.needs_earth(),
    judge: Judge::Reckoned(class_mark),
    against: &[marks::DOUBLE_SQUARE],
    prospect: Prospect { minutes: 0.2, percent: 5 },
    ..seen("class-mark-contradicted", "double-square")
};

/// **Finds** a management certificate used as if it certified the product.
///
/// **Why it matters** ISO 9001 says how an office is run and nothing of this product.
///
/// **Source** ISO's rule for the use of its name (read).
///
/// **Decision** by eye, any edition; a hint only.
pub const MANAGEMENT_MARK_AS_PRODUCT_MARK: &Check = &Check {
    against: &[marks::MANAGEMENT_SYSTEM],
    prospect: Prospect { minutes: 0.2, percent: 10 },
    ..seen("management-mark-as-product-mark", "iso-9001")
};

/// **Finds** goods without the crossed-out bin.
///
/// **Why it matters** it is thrown in the household waste.
///
/// **Source** EN 50419 (memory-medium).
///
/// **Decision** by eye; with the package gone it cannot be told. A hint only.
pub const WASTE_MARK_MISSING: &Check = &Check {
    judge: Judge::Reckoned(|view| {
        unless_package_gone(view, Judgement::by_print(view, SEEN, &["wheeled-bin"], BadSign))
    }),
    asks: &[SEEN, STATED],
    against: &[marks::WHEELED_BIN],
    prospect: Prospect { minutes: 0.2, percent: 30 },
    ..seen("waste-mark-missing", "wheeled-bin")
};

const fn seen(code: &'static str, answer: &'static str) -> Check {
    Check {
        code,
        place: Place::WhatItSays,
        needs: Equipment::Eyes,
        severity: BadSign,
        applies: always,
        judge: Judge::Marked(SEEN, answer, BadSign),
        asks: &[SEEN],
        against: &[],
        prospect: Prospect { minutes: 0.2, percent: 20 },
    }
}

/// What is missing may have stood on a package that is gone.
fn unless_package_gone(view: &View, judgement: Judgement) -> Judgement {
    if judgement.outcome == Conformity::Nonconforming && view.marked(STATED, "package-gone") == Some(true) {
        return Judgement::cannot_tell(judgement.severity, judgement.reason);
    }
    judgement
}

fn conformity_mark(view: &View) -> Judgement {
    if is_electrical_equipment(view).is_none() {
        return Judgement::without_choice(Breach, view.answer(facts::EXTRAS, Target::Sample));
    }
    let bears_ukca = view.marked(SEEN, "ukca") == Some(true);
    if bears_ukca && view.market() == Market::GreatBritain {
        return Judgement::conforms(Breach, Basis::Print, Reason::FitsTheClaim);
    }
    unless_package_gone(view, Judgement::by_print(view, SEEN, &["ce"], Breach))
}

fn not_applicable(view: &View) -> Judgement {
    let answered = |question: &'static Question, answer| Reason::Answered {
        question: question.id,
        target: Target::Sample,
        answer,
    };
    if view.marked(PLUG_PRINT, "ce-or-ukca") == Some(true) {
        return Judgement::breaks(BadSign, Basis::Sight, answered(PLUG_PRINT, "ce-or-ukca"));
    }
    let Some(Answer::Any(codes)) = view.answer(SEEN, Target::Sample) else {
        return Judgement::without_choice(BadSign, view.answer(SEEN, Target::Sample));
    };
    let Some(mark) = ["ce", "ukca"].into_iter().find(|mark| codes.contains(mark)) else {
        return Judgement::conforms(BadSign, Basis::Sight, Reason::NothingWrongAnswered);
    };
    let ruling = match (is_electrical_equipment(view), on_leads(view)) {
        (Some(true), _) => Ruling::FitsTheClaim,
        (Some(false), true) => Ruling::Breaks(BadSign),
        (None, true) | (_, false) => Ruling::CannotTell,
    };
    ruling.judgement(view, BadSign, answered(SEEN, mark))
}

fn class_mark(view: &View) -> Judgement {
    let with_earth_sign = Judgement::by_mark(view, SEEN, "functional-earth", Danger, Danger);
    if with_earth_sign.outcome == Conformity::Nonconforming {
        return Judgement::cannot_tell(Danger, with_earth_sign.reason);
    }
    let judgement = Judgement::by_mark(view, SEEN, "double-square", Danger, Danger);
    if judgement.outcome == Conformity::Nonconforming && has_no_earth_by_design(view) {
        return Judgement::cannot_tell(Danger, judgement.reason);
    }
    judgement
}
