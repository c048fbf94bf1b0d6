//! The verdict so far: always in sight, the first line of the statement.

use leptos::prelude::*;

use crate::domain::assess::Assessment;
use crate::domain::verdict::Verdict;
use crate::domain::view::View;
use crate::domain::walk;
use crate::record::Record;
use crate::words::{screens, verdict as words};

/// The verdict, how far it reaches, and what follows.
#[component]
pub fn VerdictLine(
    /// The record.
    record: Memo<Record>,
    /// What the answers amount to.
    assessment: Memo<Assessment>,
) -> impl IntoView {
    let reach = move || assessment.with(words::reach);
    let progress = move || {
        let is_said = assessment.with(|assessment| assessment.verdict != Verdict::NothingWrongSeen);
        let (answered, of) = record.with(|record| walk::progress(&View::new(&record.examination)));
        is_said.then(|| screens::progress(answered, of))
    };
    view! {
        <header class="verdict" data-verdict=move || assessment.with(|a| a.verdict.code()) role="status">
            <h1 class="verdict-word">{move || assessment.with(words::headline)}</h1>
            <p class="verdict-reach">{reach} " " {progress}</p>
        </header>
    }
}
