//! Back in without doubles: what becomes of each examination of an archive, so that nothing that anybody saw is lost.

use super::ArchiveFault;
use super::moment::is_later;
use crate::domain::examination::Examination;
use crate::record::{self, Record};

/// What becomes of an examination that comes in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fate {
    /// It was not here.
    New,
    /// It is here, letter for letter.
    Same,
    /// Ours says everything that it says: it is left out.
    Less,
    /// It says everything that ours says, and more, and was changed later: it takes the place of ours.
    More,
    /// Both say something that the other does not: ours stays, and it is kept beside ours under a name of its own.
    Beside,
}

/// An examination that comes in, and what becomes of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Taken {
    /// The record to be kept, under the id that it is to be kept under.
    pub record: Record,
    /// What becomes of it.
    pub fate: Fate,
}

impl Taken {
    /// Whether the record is to be written.
    pub const fn is_kept(&self) -> bool {
        match self.fate {
            Fate::New | Fate::More | Fate::Beside => true,
            Fate::Same | Fate::Less => false,
        }
    }
}

/// Says what becomes of a record that comes in; `here` gives the record that this device has under an id.
///
/// Nobody can see from two states whether one was made from the other, nor whether an answer is missing in one because it was given later
/// or because it was taken back. So the later one takes the place of the earlier only where it says everything that the earlier says;
/// otherwise both are kept. The one that comes in is then named by its digest, so that the same archive taken back again brings no double.
pub fn take(incoming: &Record, here: impl Fn(&str) -> Option<Record>) -> Taken {
    let mut record = incoming.clone();
    let mut fate = Fate::New;
    // Each turn goes on to a name that no other content has, so there are as many turns as there are records of it here.
    while let Some(ours) = here(&record.id) {
        match meeting(&ours, &record) {
            Fate::Beside => {
                record.id = record::fingerprint(&record).chars().take(incoming.id.len()).collect();
                fate = Fate::Beside;
            }
            settled @ (Fate::New | Fate::Same | Fate::Less | Fate::More) => return Taken { record, fate: settled },
        }
    }
    Taken { record, fate }
}

/// What becomes of a record where another one has its id.
fn meeting(ours: &Record, incoming: &Record) -> Fate {
    if record::fingerprint(ours) == record::fingerprint(incoming) {
        return Fate::Same;
    }
    let is_later = is_later(&incoming.changed, &ours.changed);
    match (says_all_of(ours, incoming), says_all_of(incoming, ours)) {
        // They differ in nothing but when they were touched and which edition judged them.
        (true, true) => Fate::Less,
        (true, false) if is_later == Some(false) => Fate::Less,
        (false, true) if is_later == Some(true) => Fate::More,
        _ => Fate::Beside,
    }
}

/// Whether a record says everything that another one says of the sample.
fn says_all_of(one: &Record, other: &Record) -> bool {
    let heads = |record: &Record| {
        let Examination { sample, equipment, .. } = &record.examination;
        let said = (record.origin.clone(), record.custody.clone(), record.scenarios.clone());
        (sample.clone(), *equipment, said, record.begun.clone(), record.is_known_good)
    };
    let answers = &one.examination.answers;
    heads(one) == heads(other)
        && other.examination.answers.iter().all(|answered| answers.contains(answered))
        && other.photos.iter().all(|photo| one.photos.contains(photo))
}

/// So many samples may have changed since the last archive before somebody is reminded.
const MANY: usize = 5;

/// How many of these are new or were changed since a moment, if they are many; without a moment, all are. The example does not count.
pub fn many_since(records: &[Record], moment: Option<&str>) -> Option<usize> {
    // What has no clock may be newer.
    let is_newer = |record: &&Record| moment.is_none_or(|moment| is_later(&record.changed, moment).unwrap_or(true));
    let newer = records.iter().filter(|record| !record.is_example).filter(is_newer).count();
    (newer >= MANY).then_some(newer)
}

/// How many of an archive's examinations and photos became what.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Tally {
    /// Examinations that were not here.
    pub new: usize,
    /// Examinations that were here letter for letter.
    pub same: usize,
    /// Examinations that were left out because ours says more.
    pub less: usize,
    /// Examinations that took the place of ours because they say more.
    pub more: usize,
    /// Examinations that are kept beside ours.
    pub beside: usize,
    /// Examinations that could not be read.
    pub unread: usize,
    /// Photos that were taken.
    pub photos: usize,
    /// Photos that were damaged or not in the archive.
    pub photos_lost: usize,
    /// Files that are not ours.
    pub others: usize,
}

impl Tally {
    /// Counts an examination.
    pub fn count(&mut self, taken: &Result<Taken, ArchiveFault>) {
        *match taken.as_ref().map(|taken| taken.fate) {
            Ok(Fate::New) => &mut self.new,
            Ok(Fate::Same) => &mut self.same,
            Ok(Fate::Less) => &mut self.less,
            Ok(Fate::More) => &mut self.more,
            Ok(Fate::Beside) => &mut self.beside,
            Err(_) => &mut self.unread,
        } += 1;
    }
}
