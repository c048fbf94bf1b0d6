//! How grave it is for people, in words: a chain of events with its reasons, what they come to, and which judgements that hangs on.

pub mod draft;

pub use draft::scenarios;

use crate::domain::decision::Probability;
use crate::domain::finding::Finding;
use crate::domain::risk::{Factor, Scenario, Sensitivity, Standing, Step, highest};
use crate::domain::sample::Market;
use crate::domain::standard::eu_risk::{Band, Injury, RiskLevel, SOURCES};

use super::{check, clause, number, reason};

/// Heading of the working.
pub const HEADING: &str = "How grave it is for people";

/// What the working is, before the first scenario.
pub const WHAT_IT_IS: &str = "A scenario is one way in which what is wrong may hurt somebody. Each event has a chance, taken once all earlier ones have happened and over the whole life of the product; all of them together give the chance of the injury. These chances are judgements: nobody measured them. The scenario with the highest level counts. It says how grave a fault is and never whether there is one: the verdict does not hang on it.";

/// What drafts are, said once before them.
pub const DRAFTS_MEAN: &str = "Drafts, and the guesses that are left of them, are where weighing begins: round numbers of ours, usual practice, with no published source. Nobody has weighed these for this product, and none of them should be quoted as a result.";

/// Said where no scenario counts.
pub const NONE_COUNTS: &str =
    "None of these scenarios speaks of something that was found wrong, so no level of risk is given.";

/// Said of the scenario that makes the level of the whole.
pub const IT_COUNTS: &str = "This is the scenario that counts.";

/// Said of a scenario that counts for nothing.
pub const COUNTS_FOR_NOTHING: &str =
    "It speaks of nothing that was found to be dangerous or against the rules. It is told, and counts for nothing.";

/// A level of risk.
pub const fn level(level: RiskLevel) -> &'static str {
    match level {
        RiskLevel::Low => "low",
        RiskLevel::Medium => "medium",
        RiskLevel::High => "high",
        RiskLevel::Serious => "serious",
    }
}

/// What a level asks for: our reading, for an authority decides by itself.
pub const fn asks_for(level: RiskLevel) -> &'static str {
    match level {
        RiskLevel::Low => {
            "A low risk as a rule asks for nothing at once; whatever breaks a rule is to be put right all the same."
        }
        RiskLevel::Medium => "A medium risk as a rule asks for it to be put right before more of it is sold.",
        RiskLevel::High => {
            "A high risk as a rule asks for sale and use to stop soon, and for those who have one to be told."
        }
        RiskLevel::Serious => {
            "A serious risk as a rule asks for sale and use to stop at once, and for the authority to be told without delay."
        }
    }
}

/// Said after what a level asks for.
pub const AUTHORITY_DECIDES: &str = "That is our reading, usual practice; what follows is for the authority to decide.";

/// A severity in our own words.
pub const fn severity(injury: Injury) -> &'static str {
    match injury {
        Injury::FirstAid => "severity 1 of 4: first aid is enough, no doctor is needed, and all of it passes",
        Injury::HospitalVisit => {
            "severity 2 of 4: a visit to a hospital, and for up to about six months some things cannot be done"
        }
        Injury::HospitalStay => {
            "severity 3 of 4: a stay in hospital, or something that cannot be done for more than about six months or ever again"
        }
        Injury::Fatal => "severity 4 of 4: death, or a limb or more than a tenth of what the body can do lost for ever",
    }
}

/// A band of probability.
pub const fn band(band: Band) -> &'static str {
    match band {
        Band::OverHalf => "more than 1 in 2",
        Band::OverTenth => "more than 1 in 10, up to 1 in 2",
        Band::OverHundredth => "more than 1 in 100, up to 1 in 10",
        Band::OverThousandth => "more than 1 in 1000, up to 1 in 100",
        Band::OverTenThousandth => "more than 1 in 10\u{a0}000, up to 1 in 1000",
        Band::OverHundredThousandth => "more than 1 in 100\u{a0}000, up to 1 in 10\u{a0}000",
        Band::OverMillionth => "more than 1 in 1\u{a0}000\u{a0}000, up to 1 in 100\u{a0}000",
        Band::Rarer => "no more than 1 in 1\u{a0}000\u{a0}000",
    }
}

/// Who answers for the judgements of a scenario.
pub fn standing(scenario: &Scenario) -> String {
    let all = scenario.steps.len() + 1;
    match scenario.guesses() {
        0 => "Weighed by the examiner.".to_owned(),
        guesses if guesses == all => "Draft: nobody has weighed it yet.".to_owned(),
        1 => format!("Weighed in part: 1 of its {all} judgements is still our starting guess."),
        guesses => format!("Weighed in part: {guesses} of its {all} judgements are still our starting guesses."),
    }
}

/// What was found wrong that a scenario follows from; empty where nothing was.
pub fn follows_from(scenario: &Scenario, findings: &[Finding]) -> String {
    let names: Vec<&str> = scenario.found_wrong(findings).into_iter().map(|code| check::of(code).wrong).collect();
    if names.is_empty() { String::new() } else { format!("It follows from: {}.", names.join("; ")) }
}

/// An event as a link of the chain, by its place from 0, with its reason: "Then: the flex overheats (1 in 10). Why so: ..."
pub fn event(place: usize, step: &Step) -> String {
    format!("{}{}", link(place, step), why(&step.reason, step.standing))
}

fn link(place: usize, step: &Step) -> String {
    let begins = if place == 0 { "First" } else { "Then" };
    format!("{begins}: {} ({}).", sentence_part(&step.happens), number::odds(step.probability))
}

/// The injury.
pub fn injury(scenario: &Scenario) -> String {
    format!("The injury is of {}.", severity(scenario.injury))
}

/// The injury with its reason.
pub fn injury_and_why(scenario: &Scenario) -> String {
    format!("{}{}", injury(scenario), why(&scenario.injury_reason, scenario.injury_standing))
}

fn why(reason: &str, standing: Standing) -> String {
    let reason = reason.trim();
    let reason = match reason {
        "" => " No reason is given.".to_owned(),
        reason if reason.ends_with(['.', '!', '?']) => format!(" Why so: {reason}"),
        reason => format!(" Why so: {reason}."),
    };
    match standing {
        Standing::Guess => format!("{reason} {}", draft::GUESSED),
        Standing::Weighed => reason,
    }
}

/// What somebody wrote, as it stands inside a sentence.
fn sentence_part(text: &str) -> String {
    let text = text.trim().trim_end_matches('.');
    if text.is_empty() { "something that nobody has put into words".to_owned() } else { text.to_owned() }
}

/// Heading of the drafts that do not make the level of the whole.
pub const OTHER_DRAFTS: &str = "Other drafts, which come to no more";

/// A draft in a line: what happens, how likely the injury is, and the level.
pub fn in_a_line(scenario: &Scenario) -> String {
    let (title, odds) = (title(scenario), number::odds(scenario.probability()));
    format!("{title}: {odds}, {}; the risk is {}.", severity_in_short(scenario.injury), level(scenario.level()))
}

/// A severity by its number.
const fn severity_in_short(injury: Injury) -> &'static str {
    match injury {
        Injury::FirstAid => "severity 1 of 4",
        Injury::HospitalVisit => "severity 2 of 4",
        Injury::HospitalStay => "severity 3 of 4",
        Injury::Fatal => "severity 4 of 4",
    }
}

/// The chain without its reasons.
pub fn in_short(scenario: &Scenario) -> String {
    (0..).zip(&scenario.steps).map(|(place, step)| link(place, step)).collect::<Vec<_>>().join(" ")
}

/// What the chances come to.
pub fn product(scenario: &Scenario) -> String {
    let together = number::odds(scenario.probability());
    match scenario.steps.as_slice() {
        [] => "No event is named, so the injury is taken to be certain.".to_owned(),
        [_] => format!("The chance of the injury in the life of the product: {together}."),
        steps => {
            let factors: Vec<String> = steps.iter().map(|step| number::odds(step.probability)).collect();
            format!("All of them together: {} = {together}, in the life of the product.", factors.join(" × "))
        }
    }
}

/// Where a scenario stands in the matrix, and the level that is.
pub fn position(scenario: &Scenario) -> String {
    let (band, level) = (band(scenario.band()), level(scenario.level()));
    let severity = severity(scenario.injury).split(':').next().unwrap_or_default();
    format!("In the matrix: a chance of {band}, and {severity}. The risk is {level}.")
}

/// What the level hangs on: a sentence for each change that would move it, with the judgements of which that is so.
pub fn hangs_on(scenario: &Scenario) -> Vec<String> {
    let mut changes: Vec<(Change, Vec<usize>)> = Vec::new();
    for moved in scenario.sensitivity() {
        for (change, place) in self::changes(scenario, &moved) {
            match changes.iter_mut().find(|(known, _)| *known == change) {
                Some((_, places)) => places.push(place),
                None => changes.push((change, vec![place])),
            }
        }
    }
    if changes.is_empty() {
        return vec![HANGS_ON_NONE.to_owned()];
    }
    changes.iter().map(|(change, places)| hangs(scenario, change, places)).collect()
}

const HANGS_ON_NONE: &str = "The level hangs on no single judgement: each event may be ten times more or less likely, or the injury one severity milder or worse.";

/// A change of one judgement, and the level it makes.
#[derive(PartialEq)]
struct Change {
    is_of_injury: bool,
    how: &'static str,
    level: RiskLevel,
}

/// The changes of one judgement that move the level, with its place among the events.
fn changes(scenario: &Scenario, moved: &Sensitivity) -> impl Iterator<Item = (Change, usize)> {
    let (is_of_injury, place, less, more) = match moved.factor {
        Factor::Step(place) => (false, place, "ten times less likely", more_likely(scenario.steps.get(place))),
        Factor::Injury => (true, 0, "one severity milder", "one severity worse"),
    };
    let now = scenario.level();
    [(moved.milder, less), (moved.graver, more)]
        .into_iter()
        .filter(move |(level, _)| *level != now)
        .map(move |(level, how)| (Change { is_of_injury, how, level }, place))
}

fn hangs(scenario: &Scenario, change: &Change, places: &[usize]) -> String {
    let (how, level, now) = (change.how, level(change.level), level(scenario.level()));
    let would = format!("the risk would be {level} instead of {now}");
    let names: Vec<String> = places
        .iter()
        .filter_map(|place| scenario.steps.get(*place))
        .map(|step| format!("“{}”", sentence_part(&step.happens)))
        .collect();
    match names.as_slice() {
        _ if change.is_of_injury => format!("If the injury were {how}, {would}."),
        [only] => format!("If {only} were {how}, {would}."),
        all if all.len() == scenario.steps.len() => format!("If any one of these events were {how}, {would}."),
        some => format!("If one of {} were {how}, {would}.", some.join(", ")),
    }
}

/// No event gets likelier than certain.
fn more_likely(step: Option<&Step>) -> &'static str {
    let is_capped = step.is_some_and(|step| step.probability > Probability::new(0.1));
    if is_capped { "certain" } else { "ten times as likely" }
}

/// The scenario that counts, the gravest of those that speak of something that was found wrong.
pub fn counting<'a>(scenarios: &'a [Scenario], findings: &[Finding]) -> Option<&'a Scenario> {
    highest(scenarios.iter().filter(|scenario| scenario.counts(findings)))
}

/// The level of the whole, which scenario makes it, and who answers for it.
pub fn whole(counting: &Scenario) -> String {
    let said = level(counting.level());
    let title = title(counting);
    match counting.guesses() {
        0 => format!("The risk is graded {said}, by the scenario “{title}”."),
        guesses if guesses > counting.steps.len() => {
            format!("The draft grade is {said}, by the scenario “{title}”. Nobody has weighed it yet.")
        }
        _ => format!("The grade so far is {said}, by the scenario “{title}”, which is weighed in part only."),
    }
}

/// What a scenario is called.
pub fn title(scenario: &Scenario) -> String {
    match scenario.title.trim() {
        "" => "A scenario without a name".to_owned(),
        title => reason::capital(title.trim_end_matches('.')),
    }
}

/// Where the method is published, for a market.
pub fn method(market: Market) -> String {
    let citations: Vec<String> =
        SOURCES.iter().filter(|source| source.holds_in(market)).map(clause::citation).collect();
    let same = match market {
        Market::GreatBritain => " Its severities, bands and matrix are those of the European Union’s method.",
        Market::NorthernIreland => "",
    };
    format!("Method: {}.{same}", citations.join("; "))
}
