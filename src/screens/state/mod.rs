//! The samples on this device, as every screen sees them: each change is shown at once and saved at once.

use std::collections::BTreeMap;
use std::rc::Rc;

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::platform::{clock, file, help, ids, lifecycle, persist, photo, tabs};
use crate::domain::assess::{RuleBook, assess};
use crate::domain::examination::{Answer, Examination};
use crate::domain::experience::Experience;
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Sample};
use crate::domain::view::View;
use crate::domain::walk;
use crate::record::{self, Attached, Custody, Photo, Record, Scenarios};
use crate::store::{Draft, IndexedDb, settings};
use crate::words::{check, faults, screens as words};

#[cfg(not(feature = "first"))]
mod carrying;
mod notice;
mod saving;

pub use notice::Notice;
use saving::{Write, Writes};

/// The example that a first start shows.
const EXAMPLE: &str = include_str!("../../../tests/examinations/cases/market-stall-lead.json");

/// Every sample and what may be done with it. A handle: copies speak of the same samples.
#[derive(Debug, Clone, Copy)]
pub struct Samples {
    records: RwSignal<Vec<Record>>,
    is_loading: RwSignal<bool>,
    steps: RwSignal<BTreeMap<String, Vec<Examination>>>,
    notices: RwSignal<Vec<(usize, Notice)>, LocalStorage>,
    open_sample: RwSignal<Option<String>>,
    has_all_words: RwSignal<bool>,
    unreadable: RwSignal<Vec<Unreadable>>,
    /// What is half typed, by its key.
    drafts: StoredValue<BTreeMap<String, Draft>>,
    writes: StoredValue<Writes>,
    database: StoredValue<Option<Rc<IndexedDb>>, LocalStorage>,
}

/// A stored sample that cannot be read. It is kept as it is, until somebody takes it away.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unreadable {
    /// The key it is stored under.
    pub id: String,
    /// What is wrong with it, as a sentence.
    pub why: String,
    json: String,
}

impl Samples {
    /// Opens the store and reads what is there.
    pub fn open() -> Self {
        let samples = Self {
            records: RwSignal::new(Vec::new()),
            is_loading: RwSignal::new(true),
            steps: RwSignal::new(BTreeMap::new()),
            notices: RwSignal::new_local(Vec::new()),
            open_sample: RwSignal::new(None),
            has_all_words: RwSignal::new(false),
            unreadable: RwSignal::new(Vec::new()),
            drafts: StoredValue::default(),
            writes: StoredValue::default(),
            database: StoredValue::new_local(None),
        };
        lifecycle::ask_before_leaving(move || samples.writes.with_value(Writes::has_failed));
        spawn_local(samples.load());
        spawn_local(samples.load_words());
        tabs::on_change(move || spawn_local(samples.load()));
        samples
    }

    /// Fetches the words that the first screen does without; whatever is shown is said anew with them.
    async fn load_words(self) {
        if let Some(text) = help::text(help::CHECKS).await {
            check::provide(text);
            self.has_all_words.set(true);
        }
    }

    /// Whether the words are there that the first screen does without.
    pub fn has_all_words(self) -> bool {
        self.has_all_words.get()
    }

    fn show_example_at_first_start(self) {
        let is_first_start = self.records.with_untracked(Vec::is_empty) && !settings::example_dismissed();
        if let (true, Ok(example)) = (is_first_start, record::read(EXAMPLE)) {
            self.records.update(|records| records.push(example));
        }
    }

    /// Stored samples that cannot be read.
    pub fn unreadable(self) -> Vec<Unreadable> {
        self.unreadable.get()
    }

    /// Whether the stored samples are still being read.
    pub fn is_loading(self) -> bool {
        self.is_loading.get()
    }

    /// Every sample, the last changed first.
    pub fn all(self) -> Vec<Record> {
        self.records.get()
    }

    /// One sample.
    pub fn get(self, id: &str) -> Option<Record> {
        self.records.with(|records| records.iter().find(|record| record.id == id).cloned())
    }

    /// What the other samples on this device have taught; the example teaches nothing.
    pub fn experience(self, but: &str) -> Experience {
        self.records.with_untracked(|records| {
            let others = records.iter().filter(|record| record.id != but && !record.is_example);
            let judged: Vec<_> = others.map(|other| assess(&other.examination, &RuleBook::CURRENT)).collect();
            Experience::of(&judged)
        })
    }

    /// Says which sample is open, so that no newer edition gets in between.
    pub fn open_for_looking(self, id: Option<String>) {
        self.open_sample.set(id);
    }

    /// Whether an examination is open.
    pub fn is_examining(self) -> bool {
        self.open_sample.with(Option::is_some)
    }

    /// Begins an examination and returns its id.
    pub fn begin(self, sample: Sample, equipment: Equipment, origin: String) -> String {
        let now = clock::now();
        let record = Record {
            id: ids::fresh(),
            begun: now.clone(),
            changed: now,
            edition: RuleBook::CURRENT.edition.to_owned(),
            origin,
            custody: Custody::default(),
            is_example: false,
            is_known_good: false,
            examination: Examination::new(sample, equipment),
            photos: Vec::new(),
            scenarios: Scenarios::default(),
        };
        let id = record.id.clone();
        settings::set_equipment(equipment);
        persist::ask();
        self.insert(&record);
        id
    }

    /// Puts a record among the samples, in the place of one with its id.
    pub fn insert(self, record: &Record) {
        self.show(record);
        self.save(record, None);
    }

    fn show(self, record: &Record) {
        self.records.update(|records| {
            records.retain(|known| known.id != record.id);
            records.insert(0, record.clone());
        });
    }

    /// Puts an answer down.
    pub fn answer(self, id: &str, question: &'static Question, target: Target, answer: Answer) {
        self.forget_draft(id, question, target);
        self.change(id, |examination| {
            examination.record(question, target, answer);
        });
    }

    /// Puts down that a tool is not at hand, for the question and all others that want no other.
    pub fn lack_tool(self, id: &str, question: &'static Question, target: Target) {
        self.change(id, |examination| {
            examination.record(question, target, Answer::NoTool);
            let aside = walk::wanting_the_same_tool(&View::new(examination), question);
            for (question, target) in aside {
                examination.record(question, target, Answer::NoTool);
            }
        });
    }

    /// Says what is at hand now.
    pub fn equip(self, id: &str, equipment: Equipment) {
        self.change(id, |examination| examination.equipment = equipment);
    }

    /// Whether there is a step to take back.
    pub fn can_undo(self, id: &str) -> bool {
        let has_step = self.steps.with(|steps| steps.get(id).is_some_and(|steps| !steps.is_empty()));
        has_step || self.get(id).is_some_and(|record| !record.examination.answers.is_empty())
    }

    /// Takes the last step back; after a restart, the last answer.
    pub fn undo(self, id: &str) {
        let step = self.steps.try_update(|steps| steps.get_mut(id).and_then(Vec::pop)).flatten();
        self.edit(id, |record| match step {
            Some(examination) => record.examination = examination,
            None => {
                record.examination.answers.pop();
            }
        });
    }

    /// Takes a sample away; a notice offers it back.
    pub fn delete(self, id: &str) {
        let Some(record) = self.get(id) else { return };
        self.records.update(|records| records.retain(|known| known.id != id));
        if record.is_example {
            settings::dismiss_example();
        }
        self.write_of(id, Write::Delete { id: id.to_owned() });
        self.tell(Notice { text: words::DELETED.to_owned(), is_fault: false, undo_delete: Some(Rc::new(record)) });
    }

    /// Brings a deleted sample back and takes the notice away that offered it.
    pub fn restore(self, notice: usize, record: &Record) {
        self.insert(record);
        self.close_notice(notice);
    }

    /// Scales a picked photo down, strips it of everything but the picture, and attaches it.
    pub fn attach_photo(self, id: String, attached: Attached, file: file::Picked) {
        spawn_local(async move {
            let taken = match photo::take(&file).await {
                Ok(taken) => taken,
                Err(fault) => return self.tell_text(faults::photo(&fault)),
            };
            let photo = Photo {
                sha256: taken.sha256.clone(),
                media_type: taken.media_type.clone(),
                width: taken.width,
                height: taken.height,
                taken: clock::now(),
                attached,
            };
            self.update_with_photo(&id, photo, taken.bytes);
        });
    }

    fn forget_steps(self, id: &str) {
        self.steps.update(|steps| {
            steps.remove(id);
        });
    }

    fn change(self, id: &str, change: impl FnOnce(&mut Examination)) {
        let Some(before) = self.get_untracked(id).map(|record| record.examination) else { return };
        self.steps.update(|steps| steps.entry(id.to_owned()).or_default().push(before));
        self.edit(id, |record| change(&mut record.examination));
    }

    /// Changes a sample in any way that leaves no step to be taken back.
    pub fn edit(self, id: &str, change: impl FnOnce(&mut Record)) {
        if let Some(record) = self.update_unsaved(id, change) {
            self.save(&record, None);
        }
    }

    fn update_with_photo(self, id: &str, photo: Photo, bytes: Vec<u8>) {
        if let Some(record) = self.update_unsaved(id, |record| record.photos.push(photo.clone())) {
            self.save(&record, Some((photo, bytes)));
        }
    }

    fn update_unsaved(self, id: &str, change: impl FnOnce(&mut Record)) -> Option<Record> {
        self.records
            .try_update(|records| {
                let record = records.iter_mut().find(|record| record.id == id)?;
                change(record);
                record.changed = clock::now();
                RuleBook::CURRENT.edition.clone_into(&mut record.edition);
                Some(record.clone())
            })
            .flatten()
    }

    /// One sample, as it is now.
    pub fn get_untracked(self, id: &str) -> Option<Record> {
        self.records.with_untracked(|records| records.iter().find(|record| record.id == id).cloned())
    }
}
