//! Words of the place: live.

mod checks;
mod questions;

pub use checks::CHECKS;
pub use questions::QUESTIONS;
