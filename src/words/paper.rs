//! The words that stand on paper only: numbers of sheets, the number and fingerprint of a sample, its label.

use crate::record::Record;

/// Said in the place of a photo that a PDF cannot show.
pub const PHOTO_NOT_HERE: &str =
    "A photo belongs here that cannot be shown on paper; it is in the page that is made from the same examination.";

/// Said on the label, so that nobody takes it for a mark of approval.
pub const LABEL_SAYS_NOTHING: &str = "Kept sample. This label says nothing about its safety.";

/// The number that a sample goes by on paper: the end of its record's name, in two groups.
pub fn number(record: &Record) -> String {
    let end = record.id.get(record.id.len().saturating_sub(8)..).unwrap_or_default().to_ascii_uppercase();
    end.split_at_checked(4).map_or(end.clone(), |(first, second)| format!("{first}-{second}"))
}

/// The line with the number.
pub fn sample_number(record: &Record) -> String {
    format!("Sample number {}", number(record))
}

/// The line with the fingerprint, in groups of eight so that two can be held against each other.
pub fn fingerprint(sha256: &str) -> String {
    format!("SHA-256 of the examination: {}", groups(sha256))
}

/// A fingerprint in groups of eight.
pub fn groups(sha256: &str) -> String {
    let digits: Vec<char> = sha256.chars().collect();
    digits.chunks(8).map(|group| group.iter().collect::<String>()).collect::<Vec<_>>().join(" ")
}

/// What the square code says: the same, for a machine, and the fingerprint of the key that seals its files.
pub fn code(record: &Record, sha256: &str, sealed_by: Option<&str>) -> String {
    let said = format!("Plugwary sample {}, SHA-256 of the examination {sha256}", number(record));
    match sealed_by {
        Some(fingerprint) => format!("{said}, key of the seal {fingerprint}"),
        None => said,
    }
}

/// What the fingerprint is good for.
pub const FINGERPRINT_MEANS: &str =
    "An examination file with this fingerprint is the one that this paper was made from.";

/// At the foot of every sheet.
pub fn sheet(number: usize, of: usize) -> String {
    format!("Page {number} of {of}")
}

/// When it was examined, for the label.
pub fn examined(record: &Record) -> String {
    let day = |moment: &str| moment.get(..10).unwrap_or_default().to_owned();
    match (day(&record.begun), day(&record.changed)) {
        (begun, _) if begun.is_empty() => String::new(),
        (begun, changed) if begun == changed => format!("Examined {begun}"),
        (begun, changed) => format!("Examined {begun} to {changed}"),
    }
}
