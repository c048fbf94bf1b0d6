//! How what is on the screens gets into the store and out of it: nothing that is not written yet is overtaken by what is.

use std::collections::BTreeMap;
use std::rc::Rc;

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::{Samples, Unreadable};
use crate::domain::question::{Question, Target};
use crate::record::{self, Photo, Record};
use crate::screens::platform::{file, lifecycle, tabs};
use crate::store::{self, Draft, IndexedDb, Store};
use crate::words::faults;

impl Samples {
    /// Reads what is stored: at the start, and when another window has changed it.
    pub(super) async fn load(self) {
        match self.read_all().await {
            Ok((stored, drafts)) => {
                self.take_in(stored);
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
    async fn database(self) -> Result<Rc<IndexedDb>, store::Fault> {
        if let Some(database) = self.database.get_value() {
            return Ok(database);
        }
        let opened = Rc::new(IndexedDb::open().await?);
        self.database.set_value(Some(opened.clone()));
        Ok(opened)
    }

    /// Shows what is stored. Of a sample that is not saved as it stands here, this window knows better.
    fn take_in(self, stored: Vec<(String, String)>) {
        let here = self.records.get_untracked();
        let mut records: Vec<Record> = here.iter().filter(|known| self.is_unsaved(&known.id)).cloned().collect();
        let here: BTreeMap<&str, &Record> = here.iter().map(|known| (known.id.as_str(), known)).collect();
        let mut unreadable = Vec::new();
        for (id, json) in stored.into_iter().filter(|(id, _)| !self.is_unsaved(id)) {
            match record::read(&json) {
                Ok(record) => {
                    if here.get(record.id.as_str()).is_some_and(|known| **known != record) {
                        self.forget_steps(&record.id);
                    }
                    records.push(record);
                }
                Err(fault) => unreadable.push(Unreadable { id, why: faults::unreadable_sample(&fault), json }),
            }
        }
        records.sort_by(|a, b| b.changed.cmp(&a.changed));
        let again: Vec<Record> = records.iter().filter(|record| self.is_unsaved(&record.id)).cloned().collect();
        self.records.set(records);
        self.unreadable.set(unreadable);
        if self.is_loading.get_untracked() {
            // Whoever was quicker than the store at the start has a sample that it may not hold yet.
            for record in again {
                self.save(&record, None);
            }
        }
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

    /// The bytes of a record's photos, for the file. One whose bytes are not those that were taken is told and left out.
    pub async fn photo_bytes(self, record: &Record) -> Vec<(String, Vec<u8>)> {
        let mut photos = Vec::new();
        for photo in &record.photos {
            match self.photo(photo).await {
                Ok(Some(bytes)) => photos.push((photo.sha256.clone(), bytes)),
                Ok(None) => {}
                Err(fault) => self.tell_fault(&fault),
            }
        }
        photos
    }

    async fn photo(self, photo: &Photo) -> Result<Option<Vec<u8>>, store::Fault> {
        match self.database().await?.photo(&photo.sha256).await? {
            Some((_, bytes)) if !photo.is_of(&bytes) => Err(store::Fault::Damaged),
            kept => Ok(kept.map(|(_, bytes)| bytes)),
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
        let state = self.unsaved.try_update_value(|unsaved| {
            let state = unsaved.get(id).map_or(1, |state| state + 1);
            unsaved.insert(id.to_owned(), state);
            state
        });
        self.write(write, state.map(|state| (id.to_owned(), state)));
    }

    fn is_unsaved(self, id: &str) -> bool {
        self.unsaved.with_value(|unsaved| unsaved.contains_key(id))
    }

    /// Writes, and takes note of the state of a sample that is saved by it.
    fn write(self, write: Write, of: Option<(String, u64)>) {
        spawn_local(async move {
            if let Err(fault) = self.carry_out(write).await {
                self.tell_fault(&fault);
            } else if let Some((id, state)) = of {
                tabs::tell_change();
                // What came after it is still to be written.
                self.unsaved.update_value(|unsaved| {
                    if unsaved.get(&id) == Some(&state) {
                        unsaved.remove(&id);
                    }
                });
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
            Write::TakeBack { id, json, photos } => {
                for photo in photos {
                    database.put_photo(&photo.sha256, &photo.media_type, &photo.bytes).await?;
                }
                database.put(&id, &json).await
            }
        }
    }
}

/// Something to be written into the store.
pub(super) enum Write {
    Delete {
        id: String,
    },
    DeleteDraft {
        at: String,
    },
    DeletePhotos {
        names: Vec<String>,
    },
    Put {
        id: String,
        json: String,
        photo: Option<(Photo, Vec<u8>)>,
    },
    PutDraft {
        at: String,
        typed: String,
    },
    /// The photos first, so that no record is kept without them.
    TakeBack {
        id: String,
        json: String,
        photos: Vec<record::CarriedPhoto>,
    },
}
