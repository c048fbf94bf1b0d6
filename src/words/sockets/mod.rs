//! Words of the place: sockets.

mod checks;
mod questions;

pub use checks::CHECKS;
pub use questions::QUESTIONS;
