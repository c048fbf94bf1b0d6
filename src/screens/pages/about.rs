//! What the app is and what it is not.

use leptos::prelude::*;

use crate::domain::assess::RuleBook;
use crate::screens::way::{Link, Way};
use crate::words::screens as words;

/// The page.
#[component]
pub fn About() -> impl IntoView {
    view! {
        <main class="page">
            <p class="way"><Link to=Way::AllSamples>{words::ALL_SAMPLES}</Link></p>
            <h1>{words::ABOUT}</h1>
            {words::ABOUT_PARAGRAPHS.iter().map(|text| view! { <p>{*text}</p> }).collect_view()}
            <p class="way"><a href="limits.html">{words::LIMITS}</a></p>
            <p class="small">{format!("Rule book {}, edition {}.", RuleBook::CURRENT.edition, env!("CARGO_PKG_VERSION"))}</p>
        </main>
    }
}
