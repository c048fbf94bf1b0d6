//! Published numbers: one fact sheet per publication and edition, in printed order.

pub mod adiabatic;
pub mod bs1362;
pub mod bs1363_1;
pub mod bs7671_flex;
mod clause;
pub mod iec60228;
pub mod iec60287;

pub use clause::{Clause, Provenance};
