//! Words of the place: cable.

mod checks;
mod questions;

pub use checks::CHECKS;
pub use questions::QUESTIONS;
