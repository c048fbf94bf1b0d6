//! Begins an examination: what it is, where it is sold, what is at hand.

use leptos::prelude::*;

use crate::domain::sample::{Equipment, Kind, Market, Sample};
use crate::screens::state::Samples;
use crate::screens::way::{Link, Way, Ways};
use crate::screens::widgets::Line;
use crate::store::settings;
use crate::words::{screens as words, verdict};

/// The page.
#[component]
pub fn NewSample() -> impl IntoView {
    let samples = expect_context::<Samples>();
    let ways = expect_context::<Ways>();
    let kind = RwSignal::new(Kind::ExtensionLead);
    let market = RwSignal::new(Market::GreatBritain);
    let equipment = RwSignal::new(settings::equipment().unwrap_or(Equipment::Eyes));
    let title = RwSignal::new(String::new());
    let number = RwSignal::new(String::new());
    let origin = RwSignal::new(String::new());
    let begin = move |_| {
        let sample = Sample {
            number: number.get_untracked().trim().to_owned(),
            title: title.get_untracked().trim().to_owned(),
            kind: kind.get_untracked(),
            market: market.get_untracked(),
        };
        let id = samples.begin(sample, equipment.get_untracked(), origin.get_untracked().trim().to_owned());
        ways.go(Way::Sample(id));
    };
    view! {
        <main class="page">
            <p class="way"><Link to=Way::AllSamples>{words::ALL_SAMPLES}</Link></p>
            <h1>{words::START_LOOKING}</h1>
            <Choice heading=words::WHAT_IS_IT chosen=kind among=Kind::ALL.to_vec() name=verdict::kind code=Kind::code />
            <Choice heading=words::WHERE_SOLD chosen=market among=Market::ALL.to_vec() name=verdict::market code=Market::code />
            <Choice heading=words::WHAT_WITH_YOU chosen=equipment among=Equipment::ALL.to_vec() name=verdict::equipment code=Equipment::code />
            <p class="small">{move || verdict::equipment_means(equipment.get())}</p>
            <Line label=words::TITLE text=title />
            <Line label=words::NUMBER text=number />
            <Line label=words::ORIGIN text=origin />
            <div class="thumb">
                <button class="decisive" id="begin" on:click=begin>{words::START_LOOKING}</button>
            </div>
        </main>
    }
}

/// One choice among a few, as words.
#[component]
fn Choice<T>(
    /// What is asked.
    heading: &'static str,
    /// The choice.
    chosen: RwSignal<T>,
    /// What there is to choose from.
    among: Vec<T>,
    /// The words of each.
    name: fn(T) -> &'static str,
    /// The code of each.
    code: fn(T) -> &'static str,
) -> impl IntoView
where
    T: Copy + PartialEq + Send + Sync + 'static,
{
    view! {
        <fieldset class="choice">
            <legend>{heading}</legend>
            {among
                .into_iter()
                .map(|one| {
                    view! {
                        <button
                            class="word"
                            data-choice=code(one)
                            aria-pressed=move || (chosen.get() == one).to_string()
                            on:click=move |_| chosen.set(one)
                        >
                            {name(one)}
                        </button>
                    }
                })
                .collect_view()}
        </fieldset>
    }
}
