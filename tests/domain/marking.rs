//! What is printed on products, read as the trade prints it.

mod claims;
mod flex;
mod gauge;
mod properties;
mod rating;
