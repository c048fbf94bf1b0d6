//! What can be done with one sample once it has been looked at.

use leptos::prelude::*;

use crate::domain::assess::{RuleBook, assess};
use crate::screens::state::Samples;
use crate::screens::way::Way;
use crate::words::{mark, screens, study as words, verdict};

/// The page.
#[component]
pub fn Afterwards(
    /// The sample's id.
    id: String,
) -> impl IntoView {
    let samples = expect_context::<Samples>();
    let back = Way::Sample(id.clone()).path();
    let file = Way::File(id.clone()).path();
    let found = Memo::new(move |_| samples.get(&id));
    view! {
        <main class="page">
            <p class="way">
                <a href=Way::AllSamples.path()>{words::ALL_SAMPLES}</a>
                <a href=back>{words::BACK_TO_SAMPLE}</a>
            </p>
            <h1>{words::AFTERWARDS}</h1>
            {move || {
                let Some(record) = found.get() else {
                    let text = if samples.is_loading() { screens::READING } else { screens::NOT_HERE };
                    return view! { <p>{text}</p> }.into_any();
                };
                let assessment = assess(&record.examination, &RuleBook::CURRENT);
                view! {
                    <p class="subject">{mark::subject(&record)}</p>
                    <p class="verdict-word">{verdict::headline(&assessment)}</p>
                    <p>{verdict::reach(&assessment)}</p>
                    <ul class="rooms">
                        <li><a href=file.clone()>{screens::MAKE_FILE}</a></li>
                    </ul>
                }
                .into_any()
            }}
        </main>
    }
}
