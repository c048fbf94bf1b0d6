//! Published numbers: one fact sheet per publication and edition, in printed order.

pub mod bs1362;
pub mod bs1363_1;
mod clause;
pub mod gtin;
pub mod law_gb;
pub mod law_ni;
pub mod marks;

pub use clause::{Clause, Provenance};
