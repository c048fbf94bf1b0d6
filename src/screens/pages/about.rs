//! What the app is and what it is not.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::domain::assess::RuleBook;
use crate::screens::platform::help;
use crate::screens::way::{Link, Way};
use crate::words::screens as words;

/// The page.
#[component]
pub fn About() -> impl IntoView {
    let told = RwSignal::new(String::new());
    spawn_local(async move { told.set(help::text(help::ABOUT).await.unwrap_or_else(|| words::NO_HELP.to_owned())) });
    let paragraphs =
        move || told.with(|told| told.lines().map(|line| view! { <p>{line.to_owned()}</p> }).collect_view());
    view! {
        <main class="page">
            <p class="way"><Link to=Way::AllSamples>{words::ALL_SAMPLES}</Link></p>
            <h1>{words::ABOUT}</h1>
            {paragraphs}
            <p class="way"><a href="limits.html">{words::LIMITS}</a></p>
            <p class="small">{format!("Rule book {}, edition {}.", RuleBook::CURRENT.edition, env!("CARGO_PKG_VERSION"))}</p>
        </main>
    }
}
