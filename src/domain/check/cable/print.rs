//! What is printed along the flex: that there is print, who made it, and whether such a flex suits the product.

use crate::domain::check::sockets::connector::has_no_earth_by_design;
use crate::domain::check::{Check, Judge, Prospect, Ruling, always};
use crate::domain::examination::Answer;
use crate::domain::facts::{FLEX_PRINT, may_be_cut};
use crate::domain::finding::Severity::{BadSign, Breach};
use crate::domain::finding::{Basis, ClaimPlace, Judgement, Needed, Reason, Severity};
use crate::domain::marking::FlexPrint;
use crate::domain::quantity::Area;
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Place};
use crate::domain::standard::{bs1363_1, bs1363_2, iec60227_1};
use crate::domain::view::View;

/// How much of a flex without print can be seen: the print may come again only every 0.55 m.
pub const VISIBLE: &Question =
    &Question::one("flex-visible", Place::Cable, Equipment::Eyes, &["55-cm-or-more", "less"]).when(bears_no_print);

/// Whether the flex names its maker on the outside.
pub const MAKER: &Question =
    &Question::one("flex-maker", Place::Cable, Equipment::Eyes, &["name-or-mark", "none"]).when(may_bear_print);

/// Whether a thread among the cores stands for the maker's name.
pub const MAKER_THREAD: &Question =
    &Question::one("maker-thread", Place::Cable, Equipment::Meters, &["thread", "no-thread"])
        .after_cutting()
        .when(|view| may_be_cut(view) && names_no_maker(view));

/// **Finds** a flex that does not say what it is.
///
/// **Why it matters** nobody can know what such a flex may carry; honest makers print it.
///
/// **Source** IEC 60227-1:2007, 3.1.1 (memory-high): the print comes again within 0.55 m.
///
/// **Decision** breaks only where at least 0.55 m is visible; print that cannot be read as a designation leaves it open.
pub const FLEX_UNMARKED: &Check = &Check {
    code: "flex-unmarked",
    place: Place::Cable,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: always,
    judge: Judge::Reckoned(|view| unmarked(view, view.flex())),
    asks: &[FLEX_PRINT, VISIBLE],
    against: &[iec60227_1::MARK_REPEATS],
    prospect: Prospect { minutes: 0.5, percent: 25 },
};

/// **Finds** a flex whose print names no maker.
///
/// **Why it matters** nobody stands behind its sizes.
///
/// **Source** IEC 60227-1:2007, 3.1 (memory-high): a name, a mark, or a thread among the cores.
///
/// **Decision** by eye; no name outside leaves it open until the flex is opened, for a thread inside would do as well.
pub const FLEX_MAKER_MISSING: &Check = &Check {
    code: "flex-maker-missing",
    place: Place::Cable,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: may_bear_print,
    judge: Judge::Reckoned(maker),
    asks: &[MAKER, MAKER_THREAD],
    against: &[iec60227_1::MAKER],
    prospect: Prospect { minutes: 0.3, percent: 25 },
};

/// **Finds** a flex whose print says that it was not made for such a product: a core too few, or too thick for a 13 A plug.
///
/// **Why it matters** with two cores there is no earth; a flex too thick for its plug is not held by the cord grip.
///
/// **Source** national note in the draft of IEC 60884-2-7, BS 1363-1 Table 2 (both read).
///
/// **Decision** by print: it can break the rule and at best fits the claim. Too thick is a bad sign only.
pub const FLEX_UNSUITABLE: &Check = &Check {
    code: "flex-unsuitable",
    place: Place::Cable,
    needs: Equipment::Eyes,
    severity: Breach,
    applies: may_bear_print,
    judge: Judge::Reckoned(|view| unsuitable(view, view.flex())),
    asks: &[FLEX_PRINT],
    against: &[bs1363_2::EXTENSION_SETS_ARE_EARTHED, bs1363_1::TABLE_2],
    prospect: Prospect { minutes: 0.5, percent: 15 },
};

/// Whether the flex was looked at and bears no print.
pub fn bears_no_print(view: &View) -> bool {
    matches!(view.answer(FLEX_PRINT, Target::Sample), Some(Answer::Nothing))
}

fn may_bear_print(view: &View) -> bool {
    !bears_no_print(view)
}

fn names_no_maker(view: &View) -> bool {
    view.one(MAKER) == Some("none")
}

/// The cross-section to go by and who states it: the flex's own print, or any other place where the flex bears none.
pub fn stated_area(view: &View, print: Option<&FlexPrint>) -> Option<(ClaimPlace, Area)> {
    let printed = print.and_then(|print| print.area).map(|area| (ClaimPlace::Flex, area));
    let elsewhere = || {
        let mut nearest_first = view.claims().ratings().iter().rev();
        nearest_first.find_map(|(place, rating)| rating.area.map(|area| (*place, area.value)))
    };
    printed.or_else(|| if bears_no_print(view) { elsewhere() } else { None })
}

/// What is left to say where no cross-section is stated.
pub fn without_area(view: &View, severity: Severity) -> Judgement {
    match view.answer(FLEX_PRINT, Target::Sample) {
        Some(Answer::Printed(_)) => not_understood(severity),
        Some(Answer::Nothing) => Judgement::cannot_tell(severity, Reason::Needs(Needed::ClaimedArea)),
        answer => Judgement::without_choice(severity, answer),
    }
}

fn not_understood(severity: Severity) -> Judgement {
    Judgement::cannot_tell(severity, Reason::PrintNotUnderstood { place: ClaimPlace::Flex })
}

/// Whether the flex says what it is.
pub fn unmarked(view: &View, print: Option<&FlexPrint>) -> Judgement {
    if let Some(print) = print {
        return match (print.area, print.cores) {
            (None, None) => not_understood(Breach),
            _ => Judgement::conforms(Breach, Basis::Print, Reason::FitsTheClaim),
        };
    }
    if !bears_no_print(view) {
        return Judgement::without_choice(Breach, view.answer(FLEX_PRINT, Target::Sample));
    }
    let Some(answer) = view.one(VISIBLE) else {
        return Judgement::without_choice(Breach, view.answer(VISIBLE, Target::Sample));
    };
    let reason = Reason::Answered { question: VISIBLE.id, target: Target::Sample, answer };
    let ruling = if answer == "55-cm-or-more" { Ruling::Breaks(Breach) } else { Ruling::CannotTell };
    ruling.judgement(view, Breach, reason)
}

fn maker(view: &View) -> Judgement {
    let answered =
        |question: &Question, answer| Reason::Answered { question: question.id, target: Target::Sample, answer };
    match (view.one(MAKER), view.one(MAKER_THREAD)) {
        (Some(answer @ "name-or-mark"), _) => Judgement::conforms(Breach, Basis::Print, answered(MAKER, answer)),
        (Some(_), Some(answer @ "thread")) => Judgement::conforms(Breach, Basis::Sight, answered(MAKER_THREAD, answer)),
        (Some(_), Some(answer)) => Judgement::breaks(Breach, Basis::Sight, answered(MAKER_THREAD, answer)),
        (Some(answer), None) => Judgement::cannot_tell(Breach, answered(MAKER, answer)),
        (None, _) => Judgement::without_choice(Breach, view.answer(MAKER, Target::Sample)),
    }
}

/// Whether such a flex suits the product, as far as its print tells.
pub fn unsuitable(view: &View, print: Option<&FlexPrint>) -> Judgement {
    let Some(print) = print else {
        return Judgement::without_choice(Breach, view.answer(FLEX_PRINT, Target::Sample));
    };
    let designation = match view.answer(FLEX_PRINT, Target::Sample) {
        Some(Answer::Printed(printed)) => printed.clone(),
        _ => String::new(),
    };
    let flex_type = Reason::FlexType { designation };
    match (print.cores, print.area) {
        (Some(0..=2), _) if has_no_earth_by_design(view) => Judgement::cannot_tell(Breach, flex_type),
        (Some(0..=2), _) => Judgement::breaks(Breach, Basis::Print, flex_type),
        (_, Some(area)) if area > bs1363_1::thickest_flex() => Judgement::breaks(BadSign, Basis::Print, flex_type),
        (Some(_), Some(_)) => Judgement::conforms(Breach, Basis::Print, Reason::FitsTheClaim),
        (None, _) | (_, None) => not_understood(Breach),
    }
}
