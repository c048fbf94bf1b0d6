//! What is printed on products, read as the trade prints it.

mod barcode;
mod claims;
mod flex;
mod gauge;
mod properties;
mod rating;
