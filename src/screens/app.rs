//! The frame around every page: where one is, notices, faults.

use leptos::prelude::*;

use super::pages::{About, AllSamples, NewSample, ThisSample};
use super::state::Samples;
use super::way::{Way, Ways};
use super::widgets::Notices;

/// The whole app.
#[component]
pub fn App() -> impl IntoView {
    provide_context(Samples::open());
    let ways = Ways::open();
    provide_context(ways);
    let here = Memo::new(move |_| ways.here());
    view! {
        <Notices />
        {move || match here.get() {
            Way::AllSamples => view! { <AllSamples /> }.into_any(),
            Way::NewSample => view! { <NewSample /> }.into_any(),
            Way::Sample(id) => view! { <ThisSample id /> }.into_any(),
            Way::About => view! { <About /> }.into_any(),
        }}
    }
}
