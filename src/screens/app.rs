//! The frame around every page: routes, notices, faults.

use leptos::prelude::*;
use leptos_router::components::{Route, Router, Routes};
use leptos_router::path;

use super::pages::{About, AllSamples, MakeFile, NewSample, ThisSample};
use super::state::Samples;
use super::widgets::Notices;

/// The whole app.
#[component]
pub fn App() -> impl IntoView {
    let samples = Samples::open();
    provide_context(samples);
    view! {
        <Router>
            <Notices />
            <Routes fallback=AllSamples>
                <Route path=path!("/") view=AllSamples />
                <Route path=path!("/new") view=NewSample />
                <Route path=path!("/sample/:id") view=ThisSample />
                <Route path=path!("/sample/:id/file") view=MakeFile />
                <Route path=path!("/about") view=About />
            </Routes>
        </Router>
    }
}
