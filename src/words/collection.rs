//! Many samples in words: what they are sorted out by, and what those of one product have in common.

use super::{check, reason};
use crate::collection::{Broken, Product, SameBy};

/// Heading of what they are sorted out by.
pub const SORT_OUT: &str = "Show only";
/// Label.
pub const BY_VERDICT: &str = "with the verdict";
/// Label.
pub const BY_KIND: &str = "of the kind";
/// Label.
pub const BY_MARKET: &str = "sold in";
/// Label.
pub const BY_SELLER: &str = "from";
/// Label.
pub const BY_FAULT: &str = "with this wrong";
/// The choice that leaves all of them.
pub const ANY: &str = "any";
/// Heading of the products of which there are several samples.
pub const SEVERAL_OF_ONE: &str = "Several samples of one product";
/// Saves the table of samples.
pub const SAMPLES_CSV: &str = "Table of samples (CSV)";
/// Saves the table of readings.
pub const READINGS_CSV: &str = "Table of readings (CSV)";
/// Saves the table of findings.
pub const FINDINGS_CSV: &str = "Table of findings (CSV)";
/// How samples are put together.
pub const HOW_GROUPED: &str = "Samples of one kind are taken for one product if they have the same number under their barcode; where none was read, if they have the same name here.";
/// What must be said of every group.
pub const NOT_THE_BATCH: &str =
    "This speaks of the samples that were looked at. How many others of the product are like them, it cannot tell.";

/// How many samples are shown.
pub fn shown(n: usize, of: usize) -> String {
    match (n, of) {
        (n, of) if n == of => format!("All {of} samples."),
        (1, of) => format!("1 of {of} samples."),
        (n, of) => format!("{n} of {of} samples."),
    }
}

/// Why samples stand together.
pub fn same_by(product: &Product) -> String {
    let n = product.samples.len();
    match &product.same_by {
        SameBy::Barcode(number) => format!("{n} samples with the number {number} under their barcode"),
        SameBy::Title(title) => format!("{n} samples called “{title}”"),
    }
}

/// What the samples of a product have in common, a line each, with what that cannot tell.
pub fn in_common(product: &Product) -> Vec<String> {
    let n = product.samples.len();
    let all = match n {
        2 => "Both have".to_owned(),
        n => format!("All {n} have"),
    };
    let in_all = product.in_all.iter().map(|code| format!("{all}: {}.", check::of(code).wrong));
    let nothing = (product.in_all.is_empty()).then(|| "Nothing is wrong with every one of them.".to_owned());
    let in_some = product.in_some.iter().map(|broken| in_some(broken, n));
    in_all.chain(nothing).chain(in_some).chain([NOT_THE_BATCH.to_owned()]).collect()
}

fn in_some(broken: &Broken, of: usize) -> String {
    let wrong = reason::capital(check::of(broken.code).wrong);
    match of.saturating_sub(broken.looked) {
        0 => format!("{wrong}: {} of {of}.", broken.broke),
        unseen => format!(
            "{wrong}: {} of the {} where somebody looked; nobody looked at {unseen}.",
            broken.broke, broken.looked
        ),
    }
}
