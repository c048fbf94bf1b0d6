//! How what is on the screens gets into the store and out of it: nothing that is not written yet is overtaken by what is.

use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::{Samples, Unreadable};
use crate::domain::order::greatest_first;
use crate::domain::question::{Question, Target};
use crate::record::{self, Photo, Record};
use crate::screens::platform::{file, lifecycle, tabs};
use crate::store::{self, Draft, IndexedDb, Store};
use crate::words::{faults, mark};

impl Samples {
    /// Reads what is stored: at the start, and when another window has changed it.
    pub(super) async fn load(self) {
        let since = self.writes.with_value(|writes| writes.begun);
        match self.read_all().await {
            Ok((stored, drafts)) => {
                self.take_in(stored, since);
                if self.is_loading.get_untracked() {
                    self.take_in_drafts(drafts);
                }
            }
            Err(fault) => self.tell_fault(&fault),
        }
        self.show_example_at_first_start();
        self.is_loading.set(false);
    }

    async fn read_all(self) -> Result<(Vec<(String, String)>, Vec<(String, String)>), store::Fault> {
        let database = self.database().await?;
        Ok((database.all().await?, database.drafts().await?))
    }

    /// The store, opened where it is not open yet: whoever could not save once may be able to later.
    pub(super) async fn database(self) -> Result<Rc<IndexedDb>, store::Fault> {
        if let Some(database) = self.database.get_value() {
            return Ok(database);
        }
        let opened = Rc::new(IndexedDb::open().await?);
        self.database.set_value(Some(opened.clone()));
        Ok(opened)
    }

    /// Shows what was stored when so many writes were begun. Of a sample that was written since, or is not written yet, this window
    /// knows better.
    fn take_in(self, stored: Vec<(String, String)>, since: u64) {
        let here = self.records.get_untracked();
        let is_newer = |id: &str| self.writes.with_value(|writes| writes.is_newer(id, since));
        let mut records: Vec<Record> = here.iter().filter(|known| is_newer(&known.id)).cloned().collect();
        let mut known: BTreeMap<&str, &Record> = BTreeMap::new();
        for record in &here {
            known.insert(&record.id, record);
        }
        let mut unreadable = Vec::new();
        for (id, json) in stored.into_iter().filter(|(id, _)| !is_newer(id)) {
            match record::read(&json) {
                Ok(record) => {
                    if known.get(record.id.as_str()).is_some_and(|known| **known != record) {
                        self.forget_steps(&record.id);
                    }
                    records.push(record);
                }
                Err(fault) => unreadable.push(Unreadable { id, why: faults::unreadable_sample(&fault), json }),
            }
        }
        self.records.set(greatest_first(records, |record| mark::moment(&record.changed)));
        self.unreadable.set(unreadable);
    }

    fn take_in_drafts(self, kept: Vec<(String, String)>) {
        let is_known = |key: &str| {
            let id = Draft::sample_of(key);
            self.records.with_untracked(|records| records.iter().any(|record| record.id == id))
        };
        let (of_samples, orphans): (Vec<_>, Vec<_>) = kept.into_iter().partition(|(key, _)| is_known(key));
        self.drafts.update_value(|drafts| {
            for (key, text) in of_samples {
                drafts.entry(key).or_insert_with(|| Draft::from_text(&text));
            }
        });
        for (key, _) in orphans {
            self.write(Write::DeleteDraft { at: key }, None);
        }
    }

    /// What was typed for a question and not put down yet.
    pub fn draft(self, id: &str, question: &Question, target: Target) -> Option<Draft> {
        self.drafts.with_value(|drafts| drafts.get(&Draft::key(id, question, target)).cloned())
    }

    /// Keeps what is being typed: even a killed browser loses nothing.
    pub fn keep_draft(self, id: &str, question: &Question, target: Target, draft: Draft) {
        let key = Draft::key(id, question, target);
        let text = draft.to_text();
        self.drafts.update_value(|drafts| {
            drafts.insert(key.clone(), draft);
        });
        self.write(Write::PutDraft { at: key, typed: text }, None);
    }

    /// Forgets what was typed: it has been put down.
    pub fn forget_draft(self, id: &str, question: &Question, target: Target) {
        let key = Draft::key(id, question, target);
        let had_one = self.drafts.try_update_value(|drafts| drafts.remove(&key).is_some());
        if had_one == Some(true) {
            self.write(Write::DeleteDraft { at: key }, None);
        }
    }

    /// Takes the photos of a deleted sample away that no other one has.
    pub(super) fn forget_photos(self, deleted: &Record) {
        let is_used = |sha256: &str| {
            self.records.with_untracked(|all| all.iter().any(|one| one.photos.iter().any(|p| p.sha256 == sha256)))
        };
        let orphans: Vec<String> =
            deleted.photos.iter().map(|photo| photo.sha256.clone()).filter(|sha256| !is_used(sha256)).collect();
        self.write(Write::DeletePhotos { names: orphans }, None);
    }

    /// Saves a stored sample that cannot be read, as it is.
    pub fn save_unreadable(self, unreadable: &Unreadable) {
        let name = format!("plugwary-{}.json", unreadable.id);
        if let Err(fault) = file::save(&name, "application/json", &unreadable.json.as_str().into()) {
            self.tell_text(faults::file(&fault));
        }
    }

    /// Saves a sample's examination alone, as it is here: also where the store takes nothing.
    pub fn save_alone(self, record: &Record) {
        let name = format!("{}.json", mark::file_name(record));
        if let Err(fault) = file::save(&name, "application/json", &record::write(record).as_str().into()) {
            self.tell_text(faults::file(&fault));
        }
    }

    /// Takes a stored sample away that cannot be read.
    pub fn delete_unreadable(self, id: String) {
        self.unreadable.update(|all| all.retain(|one| one.id != id));
        self.write(Write::Delete { id }, None);
    }

    pub(super) fn save(self, record: &Record, photo: Option<(Photo, Vec<u8>)>) {
        let json = record::write(record);
        lifecycle::remember_for_crash(&json);
        let id = record.id.clone();
        self.write_of(&record.id, Write::Put { id, json, photo });
    }

    /// Writes what is new of a sample; until that is done it counts as unsaved.
    pub(super) fn write_of(self, id: &str, write: Write) {
        let number = self.writes.try_update_value(|writes| writes.begin(id));
        self.write(write, number.map(|number| (id.to_owned(), number)));
    }

    /// Writes, and takes note of the sample that is saved by it.
    fn write(self, write: Write, of: Option<(String, u64)>) {
        spawn_local(async move {
            if let Err(fault) = self.carry_out(write).await {
                if let Some((id, _)) = of {
                    self.writes.update_value(|writes| writes.fail(id));
                }
                self.tell_fault(&fault);
            } else if let Some((id, number)) = of {
                self.writes.update_value(|writes| writes.finish(&id, number));
                tabs::tell_change();
            }
        });
    }

    async fn carry_out(self, write: Write) -> Result<(), store::Fault> {
        let database = self.database().await?;
        match write {
            Write::Delete { id } => database.delete(&id).await,
            Write::DeleteDraft { at } => database.delete_draft(&at).await,
            Write::DeletePhotos { names } => {
                for sha256 in names {
                    database.delete_photo(&sha256).await?;
                }
                Ok(())
            }
            Write::Put { id, json, photo: None } => database.put(&id, &json).await,
            Write::Put { id, json, photo: Some((photo, bytes)) } => {
                database.put_with_photo(&id, &json, &photo.sha256, &photo.media_type, &bytes).await
            }
            Write::PutDraft { at, typed } => database.put_draft(&at, &typed).await,
        }
    }
}

/// Which samples were written, and which are still to be.
#[derive(Debug, Default)]
pub(super) struct Writes {
    begun: u64,
    /// The number of the newest write of each sample.
    newest: BTreeMap<String, u64>,
    /// Samples whose newest write is not finished, or failed.
    open: BTreeSet<String>,
    /// Those of them of which a write has failed.
    failed: BTreeSet<String>,
}

impl Writes {
    fn begin(&mut self, id: &str) -> u64 {
        self.begun += 1;
        self.newest.insert(id.to_owned(), self.begun);
        self.open.insert(id.to_owned());
        self.begun
    }

    /// What came after it is still to be written.
    fn finish(&mut self, id: &str, number: u64) {
        if self.newest.get(id) == Some(&number) {
            self.open.remove(id);
            self.failed.remove(id);
        }
    }

    fn fail(&mut self, id: String) {
        self.failed.insert(id);
    }

    /// Whether something stands on the screen that could not be written.
    pub(super) fn has_failed(&self) -> bool {
        !self.failed.is_empty()
    }

    /// Whether a sample was written since so many writes were begun, or is still to be.
    fn is_newer(&self, id: &str, since: u64) -> bool {
        self.open.contains(id) || self.newest.get(id).is_some_and(|number| *number > since)
    }
}

/// Something to be written into the store.
pub(super) enum Write {
    Delete { id: String },
    DeleteDraft { at: String },
    DeletePhotos { names: Vec<String> },
    Put { id: String, json: String, photo: Option<(Photo, Vec<u8>)> },
    PutDraft { at: String, typed: String },
}
