//! What the app is and what it is not.

use leptos::prelude::*;
use leptos_router::components::A;

use crate::domain::assess::RuleBook;
use crate::words::screens as words;

/// The page.
#[component]
pub fn About() -> impl IntoView {
    view! {
        <main class="page">
            <p class="way"><A href="/">{words::ALL_SAMPLES}</A></p>
            <h1>{words::ABOUT}</h1>
            {words::ABOUT_PARAGRAPHS.iter().map(|text| view! { <p>{*text}</p> }).collect_view()}
            <p class="small">{format!("Rule book {}, edition {}.", RuleBook::CURRENT.edition, env!("CARGO_PKG_VERSION"))}</p>
        </main>
    }
}
