//! Everything out as one archive, and back in: piece by piece, with its progress shown, to be stopped at any time.

use std::collections::BTreeMap;

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::archive::{self, ArchiveFault, Entry, Name, Packer, Tally};
use crate::collection::Seen;
use crate::domain::assess::{RuleBook, assess};
use crate::record::Record;
use crate::screens::platform::file::{self, Picked, Pieces};
use crate::screens::platform::{clock, persist};
use crate::screens::state::Samples;
use crate::store::{self, settings};
use crate::words::{archive as words, faults, study};

/// What is being done, and how far.
#[derive(Debug, Clone, Copy)]
struct Work {
    /// Samples done, and of how many; `None` while nothing is done.
    progress: RwSignal<Option<(usize, usize)>>,
    is_stopped: RwSignal<bool>,
    said: RwSignal<Vec<String>>,
}

impl Work {
    fn begin(self, of: usize) {
        self.is_stopped.try_set(false);
        self.said.try_set(Vec::new());
        self.progress.try_set(Some((0, of)));
    }

    /// Takes note of how far it is; whether to go on. Whoever has left the page wants nothing more.
    fn step(self, done: usize, of: usize) -> bool {
        self.progress.try_set(Some((done, of))).is_none() && self.is_stopped.try_get_untracked() == Some(false)
    }

    fn end(self, said: Vec<String>) {
        self.progress.try_set(None);
        self.said.try_set(said);
    }
}

/// The part of the page.
#[component]
pub fn Archive() -> impl IntoView {
    let samples = expect_context::<Samples>();
    let work =
        Work { progress: RwSignal::new(None), is_stopped: RwSignal::new(false), said: RwSignal::new(Vec::new()) };
    let archived = RwSignal::new(settings::archived());
    let make = move |_| {
        spawn_local(async move {
            let records: Vec<Record> =
                samples.all_untracked().into_iter().filter(|record| !record.is_example).collect();
            work.begin(records.len());
            let said = match pack(samples, &records, work).await {
                Ok(Some(pieces)) => {
                    match file::save(&format!("{}.zip", words::FILE_NAME), "application/zip", &pieces.finish()) {
                        Ok(()) => {
                            settings::set_archived(&clock::now());
                            archived.try_set(settings::archived());
                            vec![study::ARCHIVE_MADE.to_owned()]
                        }
                        Err(fault) => vec![faults::file(&fault)],
                    }
                }
                Ok(None) => vec![study::STOPPED.to_owned()],
                Err(fault) => vec![words::not_made(&fault, &fault.hint())],
            };
            work.end(said);
        });
    };
    let picked = move |event: leptos::ev::Event| {
        let Some(picked) = file::picked(&event).into_iter().next() else { return };
        persist::ask();
        spawn_local(async move {
            let mut tally = Tally::default();
            let ended = take_back(samples, &picked, work, &mut tally).await;
            let said = words::taken_back(&tally).into_iter().chain(ended.err()).collect();
            samples.read_again().await;
            work.end(said);
        });
    };
    let unsaved = Memo::new(move |_| archive::many_since(&samples.all(), archived.read().as_deref()));
    let is_working = move || work.progress.get().is_some();
    view! {
        <section id="archive">
            <h2>{study::ARCHIVE}</h2>
            {move || unsaved.get().map(|n| view! { <p class="notice" id="reminder">{study::reminder(n)}</p> })}
            <p>{words::IS}</p>
            <p class="asides">
                <button class="aside" id="make-archive" disabled=is_working on:click=make>{words::MAKE}</button>
                <label class="aside">
                    {words::TAKE_BACK}
                    <input type="file" id="take-archive" accept=".zip,application/zip" class="unseen" disabled=is_working on:change=picked />
                </label>
            </p>
            {move || {
                work.progress.get().map(|(done, of)| {
                    view! {
                        <p role="status">
                            <progress max=of.to_string() value=done.to_string()></progress>
                            " "
                            {study::progress(done, of)}
                            " "
                            <button class="aside" id="stop" on:click=move |_| work.is_stopped.set(true)>{study::STOP}</button>
                        </p>
                    }
                })
            }}
            <div id="archive-said" role="status">
                {move || work.said.get().into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
            </div>
        </section>
    }
}

/// Packs every sample and its photos; `None` where it was stopped. Only one photo is in memory at a time.
async fn pack(samples: Samples, records: &[Record], work: Work) -> Result<Option<Pieces>, ArchiveFault> {
    let mut packer = Packer::new();
    let mut pieces = Pieces::default();
    for (done, record) in records.iter().enumerate() {
        if !work.step(done, records.len()) {
            return Ok(None);
        }
        let assessment = assess(&record.examination, &RuleBook::CURRENT);
        pieces.add(&packer.examination(Seen { record, assessment: &assessment })?);
        for photo in &record.photos {
            // A photo that is gone or damaged was told; the archive says how many are missing.
            if let Some(bytes) = samples.photo_or_tell(photo).await {
                pieces.add(&packer.photo(photo, &bytes)?);
            }
        }
        // Lets the screen show how far it is.
        clock::breathe().await;
    }
    pieces.add(&packer.finish()?);
    Ok(Some(pieces))
}

/// Takes everything of an archive that is not here yet, and counts it; what is said if it ends before that.
async fn take_back(samples: Samples, picked: &Picked, work: Work, tally: &mut Tally) -> Result<(), String> {
    let refused = |fault: &ArchiveFault| words::refused(fault, &fault.hint());
    let unread = |fault: file::Fault| faults::file(&fault);
    let not_kept = |fault: store::Fault| faults::not_kept(&fault);
    let size = picked.size();
    let tail = picked.bytes(size - archive::tail_length(size)..size).await.map_err(unread)?;
    let directory = archive::directory(&tail, size).map_err(|fault| refused(&fault))?;
    let list = picked.bytes(directory.offset..directory.offset + directory.length).await.map_err(unread)?;
    let listing = archive::entries(&directory, &list).map_err(|fault| refused(&fault))?;
    let mut photos: BTreeMap<&str, &Entry> = BTreeMap::new();
    for entry in &listing.entries {
        if let Name::Photo(sha256, _) = &entry.name {
            photos.insert(sha256, entry);
        }
    }
    let examinations: Vec<&Entry> =
        listing.entries.iter().filter(|entry| matches!(entry.name, Name::Examination(_))).collect();
    tally.others = listing.others;
    work.begin(examinations.len());
    for (done, entry) in examinations.iter().enumerate() {
        if !work.step(done, examinations.len()) {
            return Err(study::STOPPED_TAKING.to_owned());
        }
        let bytes = picked.bytes(entry.span()).await.map_err(unread)?;
        let taken =
            archive::examination(entry, &bytes).map(|record| archive::take(&record, |id| samples.get_untracked(id)));
        tally.count(&taken);
        let Ok(taken) = taken else { continue };
        if !taken.is_kept() {
            continue;
        }
        for photo in &taken.record.photos {
            let Some(entry) = photos.get(photo.sha256.as_str()) else {
                tally.photos_lost += 1;
                continue;
            };
            let bytes = picked.bytes(entry.span()).await.map_err(unread)?;
            match archive::photo(entry, &bytes) {
                Ok(carried) => {
                    samples.keep_photo(&carried).await.map_err(not_kept)?;
                    tally.photos += 1;
                }
                Err(_damaged) => tally.photos_lost += 1,
            }
        }
        samples.keep_record(&taken.record).await.map_err(not_kept)?;
    }
    Ok(())
}
