//! Published numbers: one fact sheet per publication and edition, in printed order.

pub mod awg;
pub mod bs1362;
pub mod bs1363_1;
pub mod bs1363_2;
pub mod bs7671;
mod clause;
pub mod cord_type;
pub mod en50525;
pub mod hd308;
pub mod hd361;
pub mod iec60227_1;
pub mod iec60320;
pub mod iec60799;
pub mod iet_code;

pub use clause::{Clause, Provenance};
