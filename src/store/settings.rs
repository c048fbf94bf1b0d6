//! Small things the app remembers on this device. Where the browser forbids storage or has no room, it remembers nothing and nobody is told.

use std::collections::BTreeMap;

use gloo_storage::{LocalStorage, Storage};
use serde::Serialize;
use serde::de::DeserializeOwned;

use crate::domain::instrument::Instrument;
use crate::domain::question::Question;
use crate::domain::sample::Equipment;

const EQUIPMENT: &str = "plugwary.equipment";
const INSTRUMENTS: &str = "plugwary.instruments";
const EXAMPLE_DISMISSED: &str = "plugwary.example-dismissed";
const OFFLINE_READY_SAID: &str = "plugwary.offline-ready-said";

/// What was at hand last.
pub fn equipment() -> Option<Equipment> {
    let code: String = read(EQUIPMENT)?;
    Equipment::ALL.into_iter().find(|known| known.code() == code)
}

/// Remembers what is at hand.
pub fn set_equipment(equipment: Equipment) {
    write(EQUIPMENT, &equipment.code());
}

/// What a question was last answered with.
pub fn instrument(question: &Question) -> Option<Instrument> {
    let code = instruments().remove(question.id)?;
    Instrument::ALL.into_iter().find(|known| known.code() == code)
}

/// Remembers what a question was answered with. Another question may want another instrument: nothing carries over.
pub fn remember_instrument(question: &Question, instrument: Instrument) {
    let mut codes = instruments();
    codes.insert(question.id.to_owned(), instrument.code().to_owned());
    write(INSTRUMENTS, &codes);
}

/// The codes of instruments by question.
fn instruments() -> BTreeMap<String, String> {
    read(INSTRUMENTS).unwrap_or_default()
}

/// Whether the example was thrown away.
pub fn example_dismissed() -> bool {
    read(EXAMPLE_DISMISSED).unwrap_or(false)
}

/// Remembers that the example was thrown away.
pub fn dismiss_example() {
    write(EXAMPLE_DISMISSED, &true);
}

/// Whether to say that no network is needed any more: `true` once on a device, never where that cannot be remembered.
pub fn say_offline_ready_once() -> bool {
    !read(OFFLINE_READY_SAID).unwrap_or(false) && write(OFFLINE_READY_SAID, &true) == Written::Yes
}

/// Whether a setting was kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Written {
    Yes,
    No,
}

/// Whether there is a storage to use: gloo-storage stops the program where there is none.
fn is_allowed() -> bool {
    web_sys::window().and_then(|window| window.local_storage().ok().flatten()).is_some()
}

fn read<T: DeserializeOwned>(key: &str) -> Option<T> {
    if is_allowed() { LocalStorage::get(key).ok() } else { None }
}

fn write<T: Serialize>(key: &str, value: &T) -> Written {
    if is_allowed() && LocalStorage::set(key, value).is_ok() { Written::Yes } else { Written::No }
}
