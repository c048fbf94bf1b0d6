//! How grave it is for people: each scenario with its events, their chances and the reasons for them, to be weighed.

use leptos::prelude::*;

use super::frame::{Area, Kept, id_of};
use crate::domain::assess::{RuleBook, assess};
use crate::domain::decision::Probability;
use crate::domain::finding::Finding;
use crate::domain::risk::{Scenario, Standing, Step};
use crate::domain::standard::eu_risk::Injury;
use crate::record::{MOST_EVENTS, MOST_SCENARIOS, Record};
use crate::screens::state::Samples;
use crate::words::typed_odds::parse_odds;
use crate::words::{number, risk as words, study};

/// The page.
pub fn weighed(record: Memo<Record>) -> AnyView {
    let shape = Memo::new(move |_| {
        record.with(|record| record.scenarios.iter().map(|one| one.steps.len()).collect::<Vec<_>>())
    });
    let own = move || {
        let lengths = shape.get();
        lengths.into_iter().enumerate().map(|(n, steps)| view! { <Own record n steps /> }).collect_view()
    };
    view! {
        <Whole record />
        <p>{words::WHAT_IT_IS}</p>
        {own}
        <Drafts record />
        <p class="source">{move || record.with(|record| words::method(record.examination.sample.market))}</p>
    }
    .into_any()
}

/// What all scenarios come to.
#[component]
fn Whole(
    /// The record.
    record: Memo<Record>,
) -> impl IntoView {
    let lines = move || {
        record.with(|record| {
            let assessment = assess(&record.examination, &RuleBook::CURRENT);
            let scenarios = words::scenarios(record, &assessment);
            if scenarios.is_empty() {
                return vec![study::NO_RISK.to_owned()];
            }
            match words::counting(&scenarios, &assessment.findings) {
                Some(counting) => vec![
                    words::whole(counting),
                    format!("{} {}", words::asks_for(counting.level()), words::AUTHORITY_DECIDES),
                ],
                None => vec![words::NONE_COUNTS.to_owned()],
            }
        })
    };
    view! {
        <div id="grade" role="status">
            {move || lines().into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
        </div>
    }
}

/// The drafts that nobody has taken up yet.
#[component]
fn Drafts(
    /// The record.
    record: Memo<Record>,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let drafts = move || {
        record.with(|record| {
            let assessment = assess(&record.examination, &RuleBook::CURRENT);
            (words::scenarios(record, &assessment).split_off(record.scenarios.len()), assessment.findings)
        })
    };
    let draft = move |scenario: Scenario, findings: &[Finding]| {
        let told = told(&scenario, findings);
        let title = words::title(&scenario);
        let short = words::in_short(&scenario);
        let weigh = move |_| {
            samples.edit(&id_of(record), |record| {
                if record.scenarios.len() < MOST_SCENARIOS {
                    record.scenarios.push(scenario.clone());
                }
            });
        };
        view! {
            <section class="scenario">
                <h2>{title}</h2>
                <p>{short}</p>
                {told}
                <button class="aside weigh" on:click=weigh>{study::WEIGH}</button>
            </section>
        }
    };
    let all = move || {
        let (drafts, findings) = drafts();
        (!drafts.is_empty()).then(|| {
            view! {
                <p class="small">{words::DRAFTS_MEAN}</p>
                {drafts.into_iter().map(|one| draft(one, &findings)).collect_view()}
            }
        })
    };
    view! { {all} }
}

/// What a scenario comes to and hangs on.
fn told(scenario: &Scenario, findings: &[Finding]) -> impl IntoView + use<> {
    let lines = [
        words::standing(scenario),
        words::follows_from(scenario, findings),
        words::product(scenario),
        words::position(scenario),
    ];
    let lines = lines.into_iter().filter(|line| !line.is_empty());
    let hangs_on = words::hangs_on(scenario).into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
    view! {
        {lines.map(|line| view! { <p class="small">{line}</p> }).collect_view()}
        <ul class="small hangs-on">{hangs_on}</ul>
    }
}

/// A scenario of one's own: everything in it may be changed.
#[component]
fn Own(
    /// The record.
    record: Memo<Record>,
    /// Its place among the scenarios.
    n: usize,
    /// How many events it has.
    steps: usize,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let begun = record.with_untracked(|record| record.scenarios.get(n).cloned());
    let Some(begun) = begun else { return ().into_any() };
    let change = move |change: Box<dyn FnOnce(&mut Scenario)>| {
        let id = id_of(record);
        samples.edit(&id, |record| {
            if let Some(scenario) = record.scenarios.get_mut(n) {
                change(scenario);
            }
        });
    };
    let title = Callback::new(move |text: String| change(Box::new(|scenario| scenario.title = text)));
    let reason = Callback::new(move |text: String| {
        change(Box::new(|scenario| {
            scenario.injury_reason = text;
            scenario.injury_standing = Standing::Weighed;
        }));
    });
    let injured = move |event| {
        let code = event_target_value(&event);
        let chosen = Injury::ALL.into_iter().find(|known| known.code() == code);
        change(Box::new(move |scenario| {
            scenario.injury = chosen.unwrap_or(scenario.injury);
            scenario.injury_standing = Standing::Weighed;
        }));
    };
    let add = move |_| {
        change(Box::new(|scenario| {
            if scenario.steps.len() < MOST_EVENTS {
                let (happens, reason) = (String::new(), String::new());
                scenario.steps.push(Step { happens, probability: Probability::ONE, reason, standing: Standing::Guess });
            }
        }));
    };
    let stand_by = move |_| {
        change(Box::new(|scenario| {
            scenario.injury_standing = Standing::Weighed;
            scenario.steps.iter_mut().for_each(|step| step.standing = Standing::Weighed);
        }));
    };
    let remove = move |_| {
        let id = id_of(record);
        samples.edit(&id, |record| {
            if n < record.scenarios.len() {
                record.scenarios.remove(n);
            }
        });
    };
    let injuries = Injury::ALL.map(|known| {
        let is_chosen = known == begun.injury;
        view! { <option value=known.code() selected=is_chosen>{words::severity(known)}</option> }
    });
    let now = move || {
        record.with(|record| {
            let findings = assess(&record.examination, &RuleBook::CURRENT).findings;
            record.scenarios.get(n).map(|scenario| told(scenario, &findings))
        })
    };
    let events = (0..steps).zip(begun.steps).map(|(at, step)| view! { <Event at step change=Callback::new(change) /> });
    view! {
        <section class="scenario own">
            <Kept label=study::SCENARIO text=begun.title put=title />
            <ol>{events.collect_view()}</ol>
            <button class="aside" on:click=add>{study::ADD_EVENT}</button>
            <label class="line">{study::INJURY} <select on:change=injured>{injuries.into_iter().collect_view()}</select></label>
            <Area label=study::WHY text=begun.injury_reason put=reason />
            {now}
            <p class="asides">
                <button class="aside stand-by" on:click=stand_by>{study::STAND_BY}</button>
                <button class="aside" on:click=remove>{study::REMOVE_SCENARIO}</button>
            </p>
        </section>
    }
    .into_any()
}

/// What changes a scenario.
type Change = Callback<Box<dyn FnOnce(&mut Scenario)>>;

/// One event, its chance and the reason for it. Whoever writes here answers for it.
#[component]
fn Event(
    /// Its place among the events.
    at: usize,
    /// What it is to begin with.
    step: Step,
    /// Changes the scenario.
    change: Change,
) -> impl IntoView {
    let odds = RwSignal::new(number::odds(step.probability));
    let put = move |put: Box<dyn FnOnce(&mut Step)>| {
        change.run(Box::new(move |scenario: &mut Scenario| {
            if let Some(step) = scenario.steps.get_mut(at) {
                put(step);
                step.standing = Standing::Weighed;
            }
        }));
    };
    let happens = Callback::new(move |text: String| put(Box::new(|step| step.happens = text)));
    let reason = Callback::new(move |text: String| put(Box::new(|step| step.reason = text)));
    let typed = move |event| {
        let text = event_target_value(&event);
        if let Ok(probability) = parse_odds(&text) {
            put(Box::new(move |step| step.probability = probability));
        }
        odds.set(text);
    };
    let remove = move |_| {
        change.run(Box::new(move |scenario: &mut Scenario| {
            if at < scenario.steps.len() {
                scenario.steps.remove(at);
            }
        }));
    };
    let problem = move || {
        let problem = parse_odds(&odds.read()).err()?;
        Some(
            view! { <p class="problem" role="alert">{problem.message()} " " <span class="hint">{problem.hint()}</span></p> },
        )
    };
    view! {
        <li class="event">
            <Kept label=study::HAPPENS text=step.happens put=happens />
            <label class="line odds">
                {study::CHANCE}
                <input type="text" maxlength="40" prop:value=odds on:input=typed />
            </label>
            {problem}
            <Area label=study::WHY text=step.reason put=reason />
            <button class="aside" on:click=remove>{study::REMOVE_EVENT}</button>
        </li>
    }
}
