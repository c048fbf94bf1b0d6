//! Words of the place: plug.

mod checks;
mod questions;
mod sizes;

pub use checks::CHECKS;
pub use questions::QUESTIONS;
pub use sizes::QUESTIONS as SIZES;
