//! The study: what can be done with samples and files once one sits down. A program of its own beside the app, over the same store.

mod archive;
mod collection;
mod compare;
mod drawn;
mod frame;
mod instruments;
mod letters;
mod make_file;
mod origin;
mod risk;
mod sample;
mod take_in;
mod way;

use leptos::prelude::*;

use super::platform::address;
use super::state::Samples;
use super::widgets::Notices;
use crate::words::{custody, risk as risk_words, screens as screen_words, study as words};
use collection::Collection;
use frame::OfSample;
use instruments::Instruments;
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
            Room::Collection => view! { <Collection /> }.into_any(),
            Room::Instruments => view! { <Instruments /> }.into_any(),
            Room::Sample(id) => view! { <OfSample id heading=words::AFTERWARDS page=sample::afterwards /> }.into_any(),
            Room::File(id) => view! { <OfSample id heading=screen_words::MAKE_FILE page=make_file::make_file /> }.into_any(),
            Room::Drawn(id) => view! { <OfSample id heading=words::DRAWN page=drawn::drawn /> }.into_any(),
            Room::Origin(id) => view! { <OfSample id heading=custody::HEADING page=origin::origin /> }.into_any(),
            Room::Risk(id) => view! { <OfSample id heading=risk_words::HEADING page=risk::weighed /> }.into_any(),
            Room::Letters(id) => view! { <OfSample id heading=words::LETTERS page=letters::letters /> }.into_any(),
            Room::Compare(id) => view! { <OfSample id heading=words::COMPARE page=compare::compared /> }.into_any(),
        }}
    }
}
