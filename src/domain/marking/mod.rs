//! What is printed on a product, read as the trade prints it. Parsing is total: what cannot be read is kept and said back.

mod claims;
mod cord_name;
mod cores;
mod designation;
mod figure;
mod flex;
mod flex_reader;
mod ingress;
mod measure;
mod piece;
mod rating;
mod rating_group;
mod rating_reader;
mod rating_word;
mod stated;
mod token;

pub use claims::{Claimed, Claims, Disagreement};
pub use designation::Designation;
pub use flex::{FlexPrint, Oddity};
pub use ingress::Ingress;
pub use piece::{Meaning, Piece};
pub use rating::{Hertz, Output, Rating};
pub use stated::Stated;
