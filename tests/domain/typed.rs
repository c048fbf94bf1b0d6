//! What a person types, read as a value, and values written for a person.

mod number;
mod odds;
mod properties;
mod reading;
mod refused;
mod which;
