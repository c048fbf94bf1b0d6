//! The pieces that pages are made of.

mod answers;
mod dock;
mod line;
mod notices;
mod statement;
mod typed;
mod verdict_line;

pub use dock::{At, Dock};
pub use line::Line;
pub use notices::Notices;
pub use statement::{Given, NEWEST, Statement};
pub use verdict_line::VerdictLine;
