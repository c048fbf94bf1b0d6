//! What the app has to say: faults, and offers to take something back.

use std::rc::Rc;

use leptos::prelude::*;

use super::Samples;
use crate::record::Record;
use crate::store;
use crate::words::faults;

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

impl Samples {
    /// Everything the app has to say.
    pub fn notices(self) -> Vec<(usize, Notice)> {
        self.notices.get()
    }

    /// Says something. What already stands there is not said twice.
    pub fn tell(self, notice: Notice) {
        self.notices.update(|notices| {
            if notice.undo_delete.is_none() && notices.iter().any(|(_, told)| told.text == notice.text) {
                return;
            }
            let n = notices.last().map_or(0, |(n, _)| n + 1);
            notices.push((n, notice));
        });
    }

    /// Says what was done.
    #[cfg(not(feature = "first"))]
    pub fn tell_done(self, text: String) {
        self.tell(Notice { text, is_fault: false, undo_delete: None });
    }

    /// Says what went wrong.
    pub fn tell_text(self, text: String) {
        self.tell(Notice { text, is_fault: true, undo_delete: None });
    }

    /// Says what went wrong in the store.
    pub(super) fn tell_fault(self, fault: &store::Fault) {
        self.tell_text(faults::store(fault));
    }

    /// Closes a notice. With the offer to bring a sample back go the photos that no other sample has.
    pub fn close_notice(self, n: usize) {
        let closed = self.notices.with_untracked(|notices| notices.iter().find(|(known, _)| *known == n).cloned());
        self.notices.update(|notices| notices.retain(|(known, _)| *known != n));
        if let Some(deleted) = closed.and_then(|(_, notice)| notice.undo_delete) {
            self.forget_photos(&deleted);
        }
    }
}
