//! All samples at once: found by words, sorted out by what they are, put together by product, and written as tables.
//!
//! Pure functions over records and what was made of them. Nothing here is in the app's first program.

mod csv;
mod filter;
mod product;
mod table;

pub use filter::{Filter, breaks, sellers, text};
pub use product::{Broken, Product, SameBy, products};
pub use table::{Table, csv};

use crate::domain::assess::Assessment;
use crate::record::Record;

/// One sample among others: its record, and what was made of it.
#[derive(Debug, Clone, Copy)]
pub struct Seen<'a> {
    /// The record.
    pub record: &'a Record,
    /// What its examination amounts to.
    pub assessment: &'a Assessment,
}

/// Whom the sample is from, as far as its record says: its seller, or else what was said of its origin; may be empty.
pub fn seller(record: &Record) -> &str {
    let seller = record.custody.acquisition.seller.trim();
    if seller.is_empty() { record.origin.trim() } else { seller }
}
