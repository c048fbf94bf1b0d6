//! Words of the place: inside.

mod checks;
mod questions;

pub use checks::CHECKS;
pub use questions::QUESTIONS;
