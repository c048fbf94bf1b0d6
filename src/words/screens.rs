//! The words of the screens themselves: links, buttons, notices.

use crate::domain::experience::Tried;
use crate::domain::next_check::NextCheck;

/// What the app is, in a line.
pub const TAGLINE: &str = "Look closely before you plug it in.";
/// Heading of the list of samples.
pub const ALL_SAMPLES: &str = "All samples";
/// Begins an examination.
pub const START_LOOKING: &str = "Start looking";
/// Goes on with an examination.
pub const CARRY_ON_LOOKING: &str = "Carry on looking";
/// Leads to where files are looked at and taken in.
pub const TAKE_IN: &str = "Open a saved file";
/// Leads to all samples together.
pub const COLLECTION: &str = "Sort, compare, back up all samples";
/// Leads to what can be done with a sample afterwards.
pub const AFTERWARDS: &str = "Letters, where it came from, how grave it is, beside a known good";
/// Label of the search field.
pub const SEARCH: &str = "Search all samples";
/// Nothing matches the search.
pub const NO_MATCH: &str = "No sample has these words.";
/// Said of the example.
pub const IS_EXAMPLE: &str = "an invented example: open it, change it, throw it away";
/// Said where there is no sample.
pub const NO_SAMPLES: &str = "Nothing examined yet.";
/// Deletes a sample.
pub const DELETE: &str = "Delete this sample";
/// Said after deleting.
pub const DELETED: &str = "The sample is deleted.";
/// Takes the last step back.
pub const UNDO: &str = "Undo";
/// Answer for every question.
pub const CANNOT_TELL: &str = "I can’t tell";
/// Answer for every question.
pub const REFUSED: &str = "I’m not allowed to look";
/// Answer for questions that want more than eyes.
pub const NO_TOOL: &str = "No tool for it";
/// Answer for every question.
pub const LATER: &str = "later";
/// Answer where several may fit.
pub const NONE_OF_THESE: &str = "none of these";
/// Confirms several answers.
pub const THAT_IS_ALL: &str = "that is all I see";
/// Answer where print is asked for.
pub const NOTHING_PRINTED: &str = "nothing is printed there";
/// Confirms a typed value.
pub const PUT_DOWN: &str = "Write it down";
/// Opens the help of a question.
pub const HOW_TO_LOOK: &str = "how to look, and why";
/// Said where the help cannot be had.
pub const NO_HELP: &str = "The help is not on this device yet, and there is no network to fetch it by.";
/// Attaches a photo.
pub const PHOTO: &str = "photo";
/// Makes the file.
pub const MAKE_FILE: &str = "Make a file to show";
/// Opens the list of what to look at next.
pub const LOOK_NEXT: &str = "Look next: chance that it breaks × weight × chance that a look settles it, by the minute";
/// Said when everything asked has an answer.
pub const ALL_LOOKED: &str = "That is everything there is to look at with what you have.";
/// Said when everything that may decide has an answer.
pub const ALL_DECIDING_LOOKED: &str = "That is everything that decides, with what you have.";
/// Said where a value is put down and no instrument is named.
pub const NAME_INSTRUMENT: &str = "Say what you read it with: tap it.";
/// Saves a stored sample that cannot be read.
pub const SAVE_AS_IT_IS: &str = "save it as it is";
/// Takes it away.
pub const DELETE_UNREADABLE: &str = "delete it";
/// Asks for more equipment.
pub const MORE_EQUIPMENT: &str = "I have more with me";
/// Heading of the question of equipment.
pub const WHAT_WITH_YOU: &str = "What have you got with you?";
/// Heading of the question of kind.
pub const WHAT_IS_IT: &str = "What is it?";
/// Heading of the question of market.
pub const WHERE_SOLD: &str = "Where is it sold?";
/// Label of the sample's name.
pub const TITLE: &str = "What do you call it? (may stay empty)";
/// Label of the sample's number.
pub const NUMBER: &str = "Number on its bag (may stay empty)";
/// Label of the sample's origin.
pub const ORIGIN: &str = "Where it came from (may stay empty)";
/// Saves the bare examination.
pub const SAVE_JSON: &str = "Save the examination alone (JSON)";
/// Offered when a newer edition waits.
pub const NEWER_EDITION: &str = "A newer edition of the app is here.";
/// Takes the newer edition.
pub const TAKE_NEWER: &str = "use it now";
/// Puts the newer edition off.
pub const NOT_NOW: &str = "later";
/// Said once.
pub const OFFLINE_READY: &str = "Ready: from now on this works without a network.";
/// Closes a notice.
pub const CLOSE: &str = "close";
/// Heading of how much was looked at.
pub const LOOKED_BY_PLACE: &str = "Looked at, of what can be wrong with such a sample";
/// Heading of what nobody looked at.
pub const NOT_LOOKED_AT: &str = "Nobody looked at";
/// Heading of findings with no answer to stand under.
pub const ALSO: &str = "Also";
/// Link to the page about the app.
pub const ABOUT: &str = "What this is, and what it is not";
/// Leads to the page of limits and rules.
pub const LIMITS: &str = "Every limit and rule, with its source";
/// The live place is withdrawn.
pub const LIVE_WITHDRAWN: &str = "Nothing is to be energised any more: a danger was found. The live part is withdrawn.";
/// Shown while samples are read.
pub const READING: &str = "Reading what is stored…";

/// Refers to a count of photos.
pub fn photos(n: usize) -> String {
    match n {
        0 => String::new(),
        1 => "1 photo".to_owned(),
        n => format!("{n} photos"),
    }
}

/// The line of one check in *Look next*: the numbers that rank it, and where they come from.
pub fn next_numbers(next: &NextCheck) -> String {
    let of_hundred = |chance: f64| format!("{:.0} of 100", 100.0 * chance);
    let source = match next.tried {
        Tried { of: 0, .. } => "usual practice".to_owned(),
        Tried { broke, of } => format!("usual practice, and {broke} of {of} on this device"),
    };
    let minutes =
        if next.minutes < 1.0 { "under a minute".to_owned() } else { format!("about {:.0} min", next.minutes) };
    let (breaks, tells) = (of_hundred(next.chance), of_hundred(next.tells));
    format!("breaks in about {breaks} ({source}); a look settles it in about {tells}; {minutes}")
}

/// Said where a sample's address leads nowhere.
pub const NOT_HERE: &str = "This sample is not on this device.";
/// Label of a number field.
pub const VALUE: &str = "What it reads";
/// Label of a field for print.
pub const PRINT: &str = "What is printed there, letter by letter";
/// Leads to one's own instruments.
pub const OWN_INSTRUMENT: &str = "my own…";
/// Label of the choice of instrument.
pub const READ_WITH: &str = "read with";
/// Unfolds what is seldom wanted.
pub const MORE: &str = "more: look next, letters, what nobody looked at, delete";
/// Offered with the advice to stop.
pub const STOP_HERE: &str = "Stop here: make the file";

/// How far the walk is; the second number may grow with the answers.
pub fn progress(answered: usize, of: usize) -> String {
    format!("{answered} of about {of} questions answered.")
}

/// Offers what informs bad signs only.
pub fn lesser(n: usize) -> String {
    let things = if n == 1 { "one lesser thing" } else { &format!("{n} lesser things") };
    format!("Look at {things}: hints that decide nothing")
}
