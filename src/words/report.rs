//! The words of the file: headings, how to read it, cautions.

use super::statement::Bar;

/// Said first, to somebody who never saw the app.
pub const WHAT_THIS_IS: &str =
    "What was found on one sample of a mains product. Made with Plugwary on the examiner’s own device.";
/// Heading.
pub const WHAT_IS_WRONG: &str = "What is wrong with it";
/// Heading.
pub const BAD_SIGNS: &str = "Bad signs, which decide nothing";
/// Heading.
pub const COULD_NOT_BE_TOLD: &str = "What could not be told";
/// Heading.
pub const ONLY_PRINT: &str = "Dangers that only print denies";
/// Said under it.
pub const ONLY_PRINT_MEANS: &str =
    "Only the maker’s own print speaks against these. Print shows nothing: they count as not tested.";
/// Said under the heading of what nobody looked at.
pub const NOT_LOOKED_MEANS: &str = "Nothing is said about these, good or bad.";
/// Begins the dangers among them.
pub const DANGERS: &str = "Dangers nobody looked for: ";
/// Begins the rest.
pub const OTHERS: &str = "Other things nobody looked for: ";
/// Heading.
pub const WHAT_WAS_SEEN: &str = "What was seen, step by step";
/// Heading.
pub const WHAT_IT_CLAIMS: &str = "What it claims, place by place";
/// Heading.
pub const NOBODY_LOOKED_AT: &str = "What nobody looked at";
/// Heading.
pub const HOW_TO_READ: &str = "How to read this";
/// Said in the place of a photo whose bytes are gone.
pub const PHOTO_MISSING: &str = "A photo was taken here; it is no longer on the device that made this file.";

/// What a bar means.
pub const fn bar(bar: Bar) -> &'static str {
    match bar {
        Bar::Solid => "Danger: it can hurt or kill, or set fire.",
        Bar::Hatched => "Against the rules: it breaks a law or a standard.",
        Bar::Dotted => "Can’t tell: it was looked at, and what was seen does not settle it.",
        Bar::Empty => "Not looked at.",
        Bar::Thin => "Keeps the rule, or is a plain fact.",
    }
}

/// Cautions at the end of every file.
pub const CAUTIONS: &[&str] = &[
    "A reading counts as inside its limit from a chance of 95 % on, and as outside it from 5 % down; between the two it is “can’t tell” (JCGM 106). The doubt shown as ± covers about 95 %.",
    "“Tried in its favour” repeats a decision with the whole doubt granted to the product. It never lifts a danger.",
    "The findings speak of this one sample. They say nothing of other samples of the same product. They certify nothing; local rules and licensed practice come first.",
    "A dangerous sample should not be posted, resold or thrown away whole. A plug cut off its flex can kill: take the fuse out and destroy it at once.",
];

/// Where the sample came from; empty where nobody said.
pub fn origin(origin: &str) -> String {
    if origin.is_empty() { String::new() } else { format!("Where it came from: {origin}") }
}

/// When it was examined, and by which edition of the rules it was judged.
pub fn when(begun: &str, changed: &str, edition: &str) -> String {
    format!("Begun {begun}, last changed {changed}. Judged by rule book {edition}.")
}

/// What a finding is held against.
pub fn held_against(citations: &str) -> String {
    if citations.is_empty() { String::new() } else { format!("Held against: {citations}.") }
}

/// The line under a photo.
pub fn photo_of(taken: &str, sha256: &str) -> String {
    format!("Photo attached {taken}. SHA-256 {sha256}")
}
