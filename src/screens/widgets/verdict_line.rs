//! The verdict so far: always in sight, the first line of the statement.

use leptos::prelude::*;

use crate::domain::assess::Assessment;
use crate::words::verdict as words;

/// The verdict, how far it reaches, and what follows.
#[component]
pub fn VerdictLine(
    /// What the answers amount to.
    assessment: Memo<Assessment>,
) -> impl IntoView {
    view! {
        <header class="verdict" data-verdict=move || assessment.with(|a| a.verdict.code()) role="status">
            <h1 class="verdict-word">{move || assessment.with(words::headline)}</h1>
            <p class="verdict-reach">{move || assessment.with(words::reach)}</p>
        </header>
    }
}
