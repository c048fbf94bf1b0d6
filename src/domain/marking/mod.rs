//! What is printed on a product, read as the trade prints it. Parsing is total: what cannot be read is kept and said back.

mod claims;
mod figure;
mod flex;
mod flex_type;
mod rating;
mod stated;
mod token;

pub use claims::{Claimed, Claims, Disagreement};
pub use flex::FlexPrint;
pub use flex_type::{Covering, Duty, Family, FlexType};
pub use rating::Rating;
pub use stated::Stated;
