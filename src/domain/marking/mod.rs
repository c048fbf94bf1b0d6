//! What is printed on a product, read as the trade prints it. Parsing is total: what cannot be read is kept and said back.

mod claims;
mod flex;
mod rating;

pub use claims::Claims;
pub use flex::FlexPrint;
pub use rating::{Rating, Stated};
