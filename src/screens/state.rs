//! The samples on this device, as every screen sees them: each change is shown at once and saved at once.

use std::collections::BTreeMap;
use std::rc::Rc;

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::platform::{clock, file, ids, lifecycle, persist, photo, tabs};
use crate::domain::assess::RuleBook;
use crate::domain::examination::{Answer, Examination};
use crate::domain::question::{Question, Target};
use crate::domain::sample::{Equipment, Sample};
use crate::record::{self, Photo, Record};
use crate::store::{self, IndexedDb, Store, settings};
use crate::words::{faults, screens as words};

/// The example that a first start shows.
const EXAMPLE: &str = include_str!("../../tests/examinations/cases/market-stall-lead.json");

/// Something the app has to say.
#[derive(Debug, Clone)]
pub struct Notice {
    /// What it says.
    pub text: String,
    /// Whether something went wrong.
    pub is_fault: bool,
    /// The sample that may be brought back.
    pub undo_delete: Option<Rc<Record>>,
}

/// Every sample and what may be done with it. A handle: copies speak of the same samples.
#[derive(Debug, Clone, Copy)]
pub struct Samples {
    records: RwSignal<Vec<Record>>,
    is_loading: RwSignal<bool>,
    steps: RwSignal<BTreeMap<String, Vec<Examination>>>,
    notices: RwSignal<Vec<(usize, Notice)>, LocalStorage>,
    open_sample: RwSignal<Option<String>>,
    database: StoredValue<Option<Rc<IndexedDb>>, LocalStorage>,
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
            database: StoredValue::new_local(None),
        };
        spawn_local(samples.load());
        tabs::on_change(move || spawn_local(samples.load()));
        samples
    }

    async fn load(self) {
        if self.database.with_value(Option::is_none) {
            match IndexedDb::open().await {
                Ok(database) => self.database.set_value(Some(Rc::new(database))),
                Err(fault) => self.tell_fault(&fault),
            }
        }
        if let Some(database) = self.database.get_value() {
            match database.all().await {
                Ok(stored) => self.take_in(&stored),
                Err(fault) => self.tell_fault(&fault),
            }
        }
        let is_first_start = self.records.with_untracked(Vec::is_empty) && !settings::example_dismissed();
        if let (true, Ok(example)) = (is_first_start, record::read(EXAMPLE)) {
            self.records.update(|records| records.push(example));
        }
        self.is_loading.set(false);
    }

    fn take_in(self, stored: &[String]) {
        let (read, unread): (Vec<_>, Vec<_>) = stored.iter().map(|json| record::read(json)).partition(Result::is_ok);
        for fault in unread.into_iter().filter_map(Result::err) {
            self.tell(Notice { text: faults::unreadable_sample(&fault), is_fault: true, undo_delete: None });
        }
        let mut records: Vec<Record> = read.into_iter().filter_map(Result::ok).collect();
        // Whoever is quicker than the store is at the start has a sample that it does not hold yet.
        let begun = if self.is_loading.get_untracked() { self.records.get_untracked() } else { Vec::new() };
        records.retain(|record| begun.iter().all(|begun| begun.id != record.id));
        records.extend(begun.iter().cloned());
        records.sort_by(|a, b| b.changed.cmp(&a.changed));
        self.records.set(records);
        for record in begun {
            self.save(record, None);
        }
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
            is_example: false,
            examination: Examination::new(sample, equipment),
            photos: Vec::new(),
        };
        let id = record.id.clone();
        settings::set_equipment(equipment);
        persist::ask();
        self.insert(record);
        id
    }

    /// Puts a record among the samples, in the place of one with its id.
    pub fn insert(self, record: Record) {
        self.show(&record);
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
        self.change(id, |examination| {
            examination.record(question, target, answer);
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
        self.update(id, |record| match step {
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
        let id = id.to_owned();
        self.write(move |database| async move { database.delete(&id).await });
        self.tell(Notice { text: words::DELETED.to_owned(), is_fault: false, undo_delete: Some(Rc::new(record)) });
    }

    /// Brings a deleted sample back and takes the notice away that offered it.
    pub fn restore(self, notice: usize, record: Record) {
        self.insert(record);
        self.close_notice(notice);
    }

    /// Scales a picked photo down, strips it of everything but the picture, and attaches it.
    pub fn attach_photo(self, id: String, question: &'static Question, target: Target, file: file::Picked) {
        spawn_local(async move {
            let taken = match photo::take(&file).await {
                Ok(taken) => taken,
                Err(fault) => return self.tell_text(faults::photo(&fault)),
            };
            let attached = Photo {
                sha256: taken.sha256.clone(),
                media_type: taken.media_type.clone(),
                width: taken.width,
                height: taken.height,
                taken: clock::now(),
                question: question.id,
                target,
            };
            self.update_with_photo(&id, attached, taken.bytes);
        });
    }

    /// The bytes of a record's photos, for the file.
    pub async fn photo_bytes(self, record: &Record) -> Vec<(String, Vec<u8>)> {
        let Some(database) = self.database.get_value() else { return Vec::new() };
        let mut photos = Vec::new();
        for photo in &record.photos {
            match database.photo(&photo.sha256).await {
                Ok(Some((_, bytes))) => photos.push((photo.sha256.clone(), bytes)),
                Ok(None) => {}
                Err(fault) => self.tell_fault(&fault),
            }
        }
        photos
    }

    /// Takes a file back: the photos first, so that no record is kept without them.
    pub fn take_back(self, carried: record::Carried) -> String {
        let record::Carried { record, photos } = carried;
        let id = record.id.clone();
        let json = record::write(&record);
        self.show(&record);
        self.write(move |database| async move {
            for photo in photos {
                database.put_photo(&photo.sha256, &photo.media_type, &photo.bytes).await?;
            }
            database.put(&record.id, &json).await
        });
        id
    }

    /// Everything the app has to say.
    pub fn notices(self) -> Vec<(usize, Notice)> {
        self.notices.get()
    }

    /// Says something.
    pub fn tell(self, notice: Notice) {
        self.notices.update(|notices| {
            let n = notices.last().map_or(0, |(n, _)| n + 1);
            notices.push((n, notice));
        });
    }

    /// Says what went wrong.
    pub fn tell_text(self, text: String) {
        self.tell(Notice { text, is_fault: true, undo_delete: None });
    }

    /// Says, once on this device, that no network is needed any more.
    pub fn tell_once_offline_ready(self) {
        if settings::say_offline_ready_once() {
            let text = words::OFFLINE_READY.to_owned();
            self.tell(Notice { text: text.clone(), is_fault: false, undo_delete: None });
            let close = move || self.notices.update(|notices| notices.retain(|(_, notice)| notice.text != text));
            set_timeout(close, core::time::Duration::from_secs(8));
        }
    }

    /// Closes a notice. With the offer to bring a sample back go the photos that no other sample has.
    pub fn close_notice(self, n: usize) {
        let closed = self.notices.with_untracked(|notices| notices.iter().find(|(known, _)| *known == n).cloned());
        self.notices.update(|notices| notices.retain(|(known, _)| *known != n));
        let Some(deleted) = closed.and_then(|(_, notice)| notice.undo_delete) else { return };
        let is_used = |sha256: &str| {
            self.records.with_untracked(|all| all.iter().any(|one| one.photos.iter().any(|p| p.sha256 == sha256)))
        };
        let orphans: Vec<String> =
            deleted.photos.iter().map(|photo| photo.sha256.clone()).filter(|sha256| !is_used(sha256)).collect();
        self.write(move |database| async move {
            for sha256 in orphans {
                database.delete_photo(&sha256).await?;
            }
            Ok(())
        });
    }

    fn tell_fault(self, fault: &store::Fault) {
        self.tell_text(faults::store(fault));
    }

    fn change(self, id: &str, change: impl FnOnce(&mut Examination)) {
        let Some(before) = self.get_untracked(id).map(|record| record.examination) else { return };
        self.steps.update(|steps| steps.entry(id.to_owned()).or_default().push(before));
        self.update(id, |record| change(&mut record.examination));
    }

    fn update(self, id: &str, change: impl FnOnce(&mut Record)) {
        if let Some(record) = self.update_unsaved(id, change) {
            self.save(record, None);
        }
    }

    fn update_with_photo(self, id: &str, photo: Photo, bytes: Vec<u8>) {
        if let Some(record) = self.update_unsaved(id, |record| record.photos.push(photo.clone())) {
            self.save(record, Some((photo, bytes)));
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

    fn get_untracked(self, id: &str) -> Option<Record> {
        self.records.with_untracked(|records| records.iter().find(|record| record.id == id).cloned())
    }

    fn save(self, record: Record, photo: Option<(Photo, Vec<u8>)>) {
        let json = record::write(&record);
        lifecycle::remember_for_crash(&json);
        self.write(move |database| async move {
            match photo {
                Some((photo, bytes)) => {
                    database.put_with_photo(&record.id, &json, &photo.sha256, &photo.media_type, &bytes).await
                }
                None => database.put(&record.id, &json).await,
            }
        });
    }

    fn write<W>(self, write: impl FnOnce(Rc<IndexedDb>) -> W + 'static)
    where
        W: Future<Output = Result<(), store::Fault>> + 'static,
    {
        let Some(database) = self.database.get_value() else { return };
        spawn_local(async move {
            match write(database).await {
                Ok(()) => tabs::tell_change(),
                Err(fault) => self.tell_fault(&fault),
            }
        });
    }
}
