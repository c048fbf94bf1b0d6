//! Published numbers: one fact sheet per publication and edition, in printed order.

pub mod bs1362;
pub mod bs1363_1;
pub mod bs1363_2_readings;
pub mod bs7671_shock;
mod clause;
pub mod flex_temperature;
pub mod iec60384_14;
pub mod iec60479;
pub mod iec61008;
pub mod iec62368_1;
pub mod iet_cop;

pub use clause::{Clause, Provenance};
