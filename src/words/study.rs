//! The words of the study: what can be done with a sample and with files once one sits down.

/// Leads back to all samples.
pub const ALL_SAMPLES: &str = "All samples";
/// Leads back to the sample.
pub const BACK_TO_SAMPLE: &str = "Carry on looking";
/// Heading of what can be done with a sample afterwards.
pub const AFTERWARDS: &str = "Afterwards";
/// Heading of where files are looked at.
pub const TAKE_IN: &str = "Look at a saved file";
/// What that does.
pub const TAKE_IN_IS: &str = "Pick a file that this app has made, or an examination alone. You see what it says first; nothing is kept before you say so.";
/// Picks a file.
pub const PICK: &str = "Pick a file";
/// Keeps what the file carries.
pub const KEEP: &str = "Keep it on this device";
/// Said where the same examination is here already.
pub const SAME_HERE: &str = "This examination is on this device already, just the same.";
/// Opens the sample of a file that is here already.
pub const OPEN_IT: &str = "Open it";
/// Puts what the file carries in the place of what is here.
pub const REPLACE: &str = "Put it in the place of the one here";
/// Keeps what the file carries beside what is here.
pub const KEEP_BOTH: &str = "Keep both";

/// Said where the examination is here in another state.
pub fn differs(here: &str, file: &str) -> String {
    let changed = |moment: &str| {
        if moment.is_empty() { "at a time it does not say".to_owned() } else { super::moment::moment(moment) }
    };
    format!(
        "This examination is on this device in another state: the one here was last changed {}, the one in the file {}.",
        changed(here),
        changed(file)
    )
}

/// Heading of one's own instruments.
pub const INSTRUMENTS: &str = "My instruments";
/// What they are for.
pub const INSTRUMENTS_ARE: &str = "Name an instrument of yours with the accuracy its maker states, and its readings carry that doubt. They stay on this device; a reading takes the numbers along.";
/// Label of an instrument’s name.
pub const INSTRUMENT_NAME: &str = "What do you call it?";
/// Label of an instrument’s type.
pub const INSTRUMENT_TYPE: &str = "What is it?";
/// Label of the part of the reading.
pub const PERCENT: &str = "Percent of the reading";
/// Label of the digits.
pub const DIGITS: &str = "Digits (steps of the last one; 0 if none)";
/// Label of the fixed amount.
pub const FIXED: &str = "A fixed amount on top (0 if none)";
/// Adds an instrument.
pub const ADD: &str = "Add it";
/// Takes an instrument away.
pub const REMOVE: &str = "remove";
/// Why a meter with two leads clears no short piece, and the ways round.
pub const TWO_LEADS: &str = "A meter with two leads reads their resistance along with the core’s. Unless it was taken off, such a reading can condemn a short piece and never clear it. \
The ways round: hold the two tips together first and take off what the meter shows then; join two cores at the far end, read through both, and take off what the first alone reads; read a longer piece of the same flex; or use a meter with four leads, whose own drop out.";
