//! Words of the place: readings.

mod checks;
mod questions;

pub use checks::CHECKS;
pub use questions::QUESTIONS;
