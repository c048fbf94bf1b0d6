//! What is said when storage, camera or a file failed: what happened, and what can be done.

use core::fmt::Display;

use crate::record::RecordFault;

/// Storage failed.
pub fn store(fault: &impl Display) -> String {
    format!(
        "Not saved: {fault}. What you see is still here, and nowhere else: save the examination alone, under “more” or where its file is made, before you leave."
    )
}

/// A photo could not be taken in.
pub fn photo(fault: &impl Display) -> String {
    format!("The photo was not taken in: {fault}.")
}

/// A file could not be read or handed on.
pub fn file(fault: &impl Display) -> String {
    format!("That did not work: {fault}.")
}

/// A file could not be looked at.
pub fn not_checked(fault: &impl Display) -> String {
    format!("Whether the file was changed could not be looked at: {fault}.")
}

/// What a file carries could not be kept.
pub fn not_kept(fault: &impl Display) -> String {
    format!("Not kept: {fault}. The file itself is as it was.")
}

/// A custody entry could not be added.
pub fn not_added(fault: &impl Display) -> String {
    format!("The entry was not added: {fault}.")
}

/// A file could not be made.
pub fn press(fault: &impl Display) -> String {
    format!("The file was not made: {fault}. Nothing is lost; try again.")
}

/// A stored sample cannot be read; it stays where it is.
pub fn unreadable_sample(fault: &RecordFault) -> String {
    format!("A stored sample cannot be shown: {fault}. It is kept as it is.")
}

/// The examination of a file that is checked cannot be read.
pub fn not_read(fault: &RecordFault) -> String {
    format!("The examination in it cannot be read: {fault}.")
}

/// A file that was to be taken back is refused.
pub fn taken_back(fault: &RecordFault) -> String {
    format!("Nothing was taken back: {fault}. {}", fault.hint())
}
