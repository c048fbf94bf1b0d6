//! An archive of all samples in words: what stands in it, and what became of it when it was taken back.

use core::fmt::Display;

use crate::archive::Tally;

/// Makes the archive.
pub const MAKE: &str = "Everything out as one archive";
/// Said of it.
pub const IS: &str = "One zip file with every examination, every photo and three tables. This app takes it back on any device; nothing that is here already comes twice.";
/// Takes an archive back.
pub const TAKE_BACK: &str = "Take an archive back";
/// The file’s name, before its ending.
pub const FILE_NAME: &str = "plugwary-archive";

/// What an archive is, for somebody who finds the file and has never seen the app.
pub fn readme(samples: usize, photos: usize, missing: usize) -> String {
    let samples = counted(samples, "sample that was examined", "samples that were examined");
    let photos = counted(photos, "photo", "photos");
    let missing = match missing {
        0 => String::new(),
        1 => "One photo that an examination speaks of was not on the device any more.\n".to_owned(),
        n => format!("{n} photos that examinations speak of were not on the device any more.\n"),
    };
    format!(
        "This is an archive made by Plugwary: {samples}, with {photos}.\n{missing}
What is in it
  examinations/  an examination each, as JSON; any text editor shows it
  photos/        the photos; the name of each is the SHA-256 of its bytes
  index.csv      a table of the samples with the verdict on each
  readings.csv   a table of every reading
  findings.csv   a table of every finding

How to take it back
  Open Plugwary, go to all samples, and take an archive back. No network is needed.
  What is on the device already does not come twice, and nothing there is lost.
  The tables are for reading elsewhere; the app does not read them.

What it says and does not say
  Every examination speaks of the one sample that was looked at, and not of others of
  the same product. It certifies nothing.
"
    )
}

/// What became of an archive that was taken back, a line each.
pub fn taken_back(tally: &Tally) -> Vec<String> {
    let Tally { new, same, less, more, beside, unread, photos, photos_lost, others } = *tally;
    let lines = [
        (new, format!("New here: {}.", counted(new, "sample", "samples"))),
        (same, format!("Here already, letter for letter: {}.", counted(same, "sample", "samples"))),
        (less, format!("Left out, because everything in it is here: {}.", counted(less, "sample", "samples"))),
        (
            more,
            format!(
                "Brought up to a later state that says all that ours said: {}.",
                counted(more, "sample", "samples")
            ),
        ),
        (
            beside,
            format!(
                "Kept beside ours, because each says something that the other does not: {}. Look at the two and delete one, or keep both.",
                counted(beside, "sample", "samples")
            ),
        ),
        (unread, format!("Could not be read and was not taken: {}.", counted(unread, "examination", "examinations"))),
        (photos, format!("Photos taken: {photos}.")),
        (
            photos_lost,
            format!(
                "Not in the archive, or changed after it was made, and not taken: {}.",
                counted(photos_lost, "photo", "photos")
            ),
        ),
        (others, format!("Not from this app, and not looked at: {}.", counted(others, "file", "files"))),
    ];
    lines.into_iter().filter(|(count, _)| *count > 0).map(|(_, line)| line).collect()
}

/// An archive that is refused.
pub fn refused(fault: &impl Display, hint: &str) -> String {
    format!("Nothing was taken back: {fault}. {hint}")
}

/// An archive that was not made.
pub fn not_made(fault: &impl Display, hint: &str) -> String {
    format!("The archive was not made: {fault}. {hint}")
}

fn counted(n: usize, one: &str, many: &str) -> String {
    if n == 1 { format!("1 {one}") } else { format!("{n} {many}") }
}
