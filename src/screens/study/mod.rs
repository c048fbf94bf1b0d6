//! The study: what can be done with samples and files once one sits down. A program of its own beside the app, over the same store.

mod instruments;
mod sample;
mod take_in;
mod way;

use leptos::prelude::*;

use super::platform::address;
use super::state::Samples;
use super::widgets::Notices;
use instruments::Instruments;
use sample::Afterwards;
use take_in::TakeIn;
use way::Room;

/// The whole study.
#[component]
pub fn Study() -> impl IntoView {
    provide_context(Samples::open());
    let here = RwSignal::new(Room::of_hash(&address::hash()));
    address::on_back(move || here.set(Room::of_hash(&address::hash())));
    view! {
        <Notices />
        {move || match here.get() {
            Room::TakeIn => view! { <TakeIn /> }.into_any(),
            Room::Instruments => view! { <Instruments /> }.into_any(),
            Room::Sample(id) => view! { <Afterwards id /> }.into_any(),
        }}
    }
}
