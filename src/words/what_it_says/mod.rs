//! Words of the place: what it says.

mod checks;
mod questions;

pub use checks::CHECKS;
pub use questions::QUESTIONS;
