//! Small things the app remembers on this device. Where the browser forbids storage or has no room, it remembers nothing and nobody is told.

use gloo_storage::{LocalStorage, Storage};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};

use crate::domain::instrument::Instrument;
use crate::domain::question::{Question, Target};
use crate::domain::sample::Equipment;

const EQUIPMENT: &str = "plugwary.equipment";
const INSTRUMENTS: &str = "plugwary.instruments";
const EXAMPLE_DISMISSED: &str = "plugwary.example-dismissed";
const OFFLINE_READY_SAID: &str = "plugwary.offline-ready-said";
const DRAFT: &str = "plugwary.draft";

/// What was at hand last.
pub fn equipment() -> Option<Equipment> {
    let code: String = read(EQUIPMENT)?;
    Equipment::ALL.into_iter().find(|known| known.code() == code)
}

/// Remembers what is at hand.
pub fn set_equipment(equipment: Equipment) {
    write(EQUIPMENT, &equipment.code());
}

/// The instruments used so far, the last used first.
pub fn instruments() -> Vec<Instrument> {
    let codes: Vec<String> = read(INSTRUMENTS).unwrap_or_default();
    codes.iter().filter_map(|code| Instrument::ALL.into_iter().find(|known| known.code() == code)).collect()
}

/// Remembers an instrument as the last used.
pub fn remember_instrument(instrument: Instrument) {
    let others = instruments().into_iter().filter(|known| *known != instrument);
    let codes: Vec<&str> = std::iter::once(instrument).chain(others).map(Instrument::code).collect();
    write(INSTRUMENTS, &codes);
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

/// What was typed and not put down yet.
pub fn draft() -> Option<Draft> {
    read(DRAFT)
}

/// Keeps what is being typed, in the place of any other draft.
pub fn set_draft(draft: &Draft) {
    write(DRAFT, draft);
}

/// Forgets what was typed.
pub fn forget_draft() {
    if is_allowed() {
        LocalStorage::delete(DRAFT);
    }
}

/// What somebody began to type for one question of one sample.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Draft {
    id: String,
    question: String,
    target: String,
    /// What was typed.
    pub text: String,
}

impl Draft {
    /// What is typed for a question of the sample with this id.
    pub fn new(id: &str, question: &Question, target: Target, text: &str) -> Self {
        Self { id: id.to_owned(), question: question.id.to_owned(), target: target_code(target), text: text.to_owned() }
    }

    /// Whether it was typed for this question of this sample.
    pub fn is_for(&self, id: &str, question: &Question, target: Target) -> bool {
        self.id == id && self.question == question.id && self.target == target_code(target)
    }
}

fn target_code(target: Target) -> String {
    match target {
        Target::Sample => "sample".to_owned(),
        Target::Socket(n) => format!("socket-{n}"),
        Target::Core(core) => format!("core-{}", core.code()),
        Target::Claim(place) => format!("claim-{}", place.code()),
    }
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
