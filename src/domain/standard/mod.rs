//! Published numbers: one fact sheet per publication and edition, in printed order.

pub mod adiabatic;
pub mod astm_b566;
pub mod astm_b869;
pub mod awg;
pub mod bs1362;
pub mod bs1363_1;
pub mod bs1363_2;
pub mod bs7671;
pub mod bs7671_flex;
pub mod bs7671_shock;
mod clause;
pub mod cord_type;
pub mod en50525;
pub mod en50678;
pub mod eu_risk;
pub mod gtin;
pub mod hd308;
pub mod hd361;
pub mod iec60227_1;
pub mod iec60228;
pub mod iec60287;
pub mod iec60320;
pub mod iec60335_1;
pub mod iec60384_14;
pub mod iec60479;
pub mod iec60799;
pub mod iec61008;
pub mod iec62368_1;
pub mod iet_code;
pub mod iso13528;
pub mod law_gb;
pub mod law_ni;
pub mod marks;
pub mod practice;
#[cfg(not(target_arch = "wasm32"))]
pub mod registry;

pub use clause::{Clause, Provenance};
