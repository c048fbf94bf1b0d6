//! Small things the app remembers on this device. Where the browser forbids storage or has no room, it remembers nothing and nobody is told.

use std::collections::BTreeMap;

use gloo_storage::{LocalStorage, Storage};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};

use crate::domain::instrument::{Accuracy, Instrument, OwnInstrument, ReadWith};
use crate::domain::quantity::Unit;
use crate::domain::question::Question;
use crate::domain::sample::Equipment;

const EQUIPMENT: &str = "plugwary.equipment";
const INSTRUMENTS: &str = "plugwary.instruments";
const OWN_INSTRUMENTS: &str = "plugwary.own-instruments";
const ARCHIVED: &str = "plugwary.archived";
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

/// The key of what a question was last answered with.
pub fn read_with(question: &Question) -> Option<String> {
    read_with_by_question().remove(question.id)
}

/// Remembers what a question was answered with. Another question may want another instrument: nothing carries over.
pub fn remember_read_with(question: &Question, key: String) {
    let mut keys = read_with_by_question();
    keys.insert(question.id.to_owned(), key);
    write(INSTRUMENTS, &keys);
}

fn read_with_by_question() -> BTreeMap<String, String> {
    read(INSTRUMENTS).unwrap_or_default()
}

/// Somebody's own instruments, as far as this edition knows their types and units.
pub fn own_instruments() -> Vec<ReadWith> {
    let kept: Vec<Own> = read(OWN_INSTRUMENTS).unwrap_or_default();
    kept.into_iter().filter_map(Own::read_with).collect()
}

/// Keeps somebody's own instruments.
pub fn set_own_instruments(all: &[ReadWith]) {
    let kept: Vec<Own> = all.iter().filter_map(Own::of).collect();
    write(OWN_INSTRUMENTS, &kept);
}

/// The kept form of an own instrument: type, name, part of the reading, digits, a fixed amount and its unit.
#[derive(Serialize, Deserialize)]
struct Own(String, String, f64, f64, f64, String);

impl Own {
    fn of(read_with: &ReadWith) -> Option<Self> {
        let OwnInstrument { name, accuracy } = read_with.own.clone()?;
        let (fixed, unit) = accuracy.fixed;
        let code = read_with.instrument.code().to_owned();
        Some(Self(code, name, accuracy.of_reading, accuracy.digits, fixed, unit.symbol().to_owned()))
    }

    fn read_with(self) -> Option<ReadWith> {
        let Self(code, name, of_reading, digits, fixed, unit) = self;
        let instrument = Instrument::ALL.into_iter().find(|known| known.code() == code)?;
        let unit = Unit::ALL.into_iter().find(|known| known.symbol() == unit)?;
        let accuracy = Accuracy { of_reading, digits, fixed: (fixed, unit) };
        Some(ReadWith { instrument, own: Some(OwnInstrument { name, accuracy }) })
    }
}

/// When everything was last put into an archive; `None` where it never was.
pub fn archived() -> Option<String> {
    read(ARCHIVED)
}

/// Remembers when everything was put into an archive.
pub fn set_archived(moment: &str) {
    write(ARCHIVED, &moment);
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
