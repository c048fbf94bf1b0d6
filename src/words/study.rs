//! The words of the study: what can be done with a sample and with files once one sits down.

/// Leads back to where the app begins.
pub const START: &str = "Start";
/// Heading of what can be done with a sample afterwards.
pub const AFTERWARDS: &str = "Afterwards";
/// Heading of where files are looked at.
pub const TAKE_IN: &str = "Look at a saved file";
/// What that does.
pub const TAKE_IN_IS: &str = "Pick a file that this app has made, or an examination alone. You see first whether it was changed since it was sealed, and what it says; nothing is kept before you say so.";
/// Said while a file is looked at.
pub const LOOKING: &str = "Looking at the file…";
/// Heading of what the look at the seal found.
pub const WAS_IT_CHANGED: &str = "Was it changed?";
/// Heading of what a file says.
pub const WHAT_IT_SAYS: &str = "What it says, judged today";
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

/// Shares the file.
pub const SHARE: &str = "Share the file";
/// Saves the file.
pub const SAVE: &str = "Save the file";
/// Saves the file as a PDF.
pub const SAVE_PDF: &str = "PDF for printing";
/// Saves the label.
pub const SAVE_LABEL: &str = "Label for the kept sample (PDF)";
/// Said while the file is made.
pub const MAKING_FILE: &str = "Making the file…";
/// Said of the file.
pub const FILE_IS: &str = "One page that any browser opens without a network. It holds the statement, the numbers and limits, the photos, and the examination itself, so that this app can take it back. Where the browser keeps a key for it, it is sealed with this device’s own: a later change shows.";
/// Leads to the comparison.
pub const COMPARE: &str = "Beside a known good";
/// Leads to the pictures.
pub const DRAWN: &str = "What was measured, drawn";
/// Said where nothing can be drawn.
pub const NOTHING_MEASURED: &str = "Nothing was measured yet that could be drawn.";
/// Leads to the letters.
pub const LETTERS: &str = "Letters";
/// What letters are.
pub const LETTERS_ARE: &str = "Made from what was found, and claiming no more. Read each before you send it, and fill in what stands in square brackets. Changes made here are not kept: copy, share or save.";
/// Heading.
pub const TO_SELLER: &str = "To the seller";
/// Heading.
pub const TO_MARKETPLACE: &str = "To the marketplace";
/// Heading.
pub const TO_AUTHORITY: &str = "To the authority";
/// Copies a text.
pub const COPY: &str = "copy";
/// Said after copying.
pub const COPIED: &str = "Copied.";
/// Said where the browser lends no clipboard.
pub const NOT_COPIED: &str = "The browser does not let the app copy: mark the text and copy it by hand.";
/// Shares a text.
pub const SHARE_TEXT: &str = "share";
/// Saves a text.
pub const SAVE_TEXT: &str = "save as a text file";
/// What the page of origin is for.
pub const ORIGIN_IS: &str = "Everything may stay empty. It is saved as you type and stands in the file.";
/// Label.
pub const PLACE: &str = "Place: shop, market, website";
/// Label.
pub const WHEN: &str = "When you got it";
/// Label.
pub const SELLER: &str = "Seller";
/// Label.
pub const PRICE: &str = "Price, with its currency";
/// Label.
pub const ORDER: &str = "Order or receipt number";
/// Label.
pub const LISTING: &str = "Address of the listing";
/// Label.
pub const PARCEL: &str = "The parcel and its seals when it came";
/// Attaches photos.
pub const ADD_PHOTOS: &str = "add photos";
/// Label.
pub const WHO: &str = "Who has it now, or handed it on";
/// Label.
pub const DONE: &str = "What was done";
/// Label.
pub const SEAL_NUMBER: &str = "Seal or bag number (may stay empty)";
/// Adds a custody entry.
pub const ADD_ENTRY: &str = "Add the entry, with the time it is now";
/// What becomes of entries.
pub const ENTRIES_STAY: &str = "An entry cannot be changed or taken away afterwards: each is tied to the one before it. If one is wrong, add another that says so.";
/// Said where there is nothing to weigh.
pub const NO_RISK: &str = "No danger was found, so there is nothing to grade.";
/// Takes a draft up.
pub const WEIGH: &str = "Weigh it: make it mine and change it";
/// Label.
pub const SCENARIO: &str = "What happens in the end";
/// Label.
pub const HAPPENS: &str = "What happens";
/// Label.
pub const CHANCE: &str = "Chance, such as 1/100 or 1 %";
/// Label.
pub const WHY: &str = "Why so";
/// Label.
pub const INJURY: &str = "How bad the injury is";
/// Adds an event.
pub const ADD_EVENT: &str = "add an event";
/// Takes an event away.
pub const REMOVE_EVENT: &str = "take this event out";
/// Confirms all judgements of a scenario.
pub const STAND_BY: &str = "I stand by every chance in it";
/// Takes a scenario away.
pub const REMOVE_SCENARIO: &str = "take this scenario out";
/// Label.
pub const COMPARE_WITH: &str = "Beside which sample?";
/// The choice before one is made.
pub const CHOOSE: &str = "choose one";
/// Said where there is no other sample.
pub const NOTHING_TO_COMPARE: &str =
    "There is no other sample on this device yet. Look at one that you trust, and keep it as a known good.";
/// Takes the mark of a known good away.
pub const NO_LONGER_KNOWN_GOOD: &str = "It is kept as a known good; take that back";
/// Heading of the tables.
pub const TABLES: &str = "Tables of the samples shown";
/// Heading of the archive.
pub const ARCHIVE: &str = "Everything out, and back in";
/// Said after an archive was made.
pub const ARCHIVE_MADE: &str = "The archive is with your downloads. Keep it elsewhere than on this device.";
/// Said after somebody stopped it.
pub const STOPPED: &str = "Stopped. Nothing was changed.";
/// Said after somebody stopped taking an archive back.
pub const STOPPED_TAKING: &str = "Stopped. What was taken before that is kept.";
/// Stops what is being done.
pub const STOP: &str = "stop";

/// Said after a file was saved.
pub fn saved(name: &str) -> String {
    format!("Saved to this device’s downloads: {name}")
}

/// How far long work is.
pub fn progress(done: usize, of: usize) -> String {
    format!("{done} of {of} samples")
}

/// Reminds of what is on this device alone.
pub fn reminder(n: usize) -> String {
    format!(
        "{n} samples are new or were changed since the last archive: if this device is lost, so are they. A browser may also clear what it keeps for a page."
    )
}

/// Names the key of this device.
pub fn this_device(fingerprint: &str) -> String {
    format!(
        "Files made on this device are sealed with its own key, {fingerprint}. It was made here, and says nothing about who you are. Tell it to the receiver by another way than the file."
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
