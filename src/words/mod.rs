//! Every word a person sees: questions, answers, sentences, reasons, labels; and what a person types, read as a value.
//!
//! Sentences are whole messages, never glued from pieces, so that another language can stand beside this one.

#[cfg(not(feature = "first"))]
pub mod archive;
pub mod check;
pub mod claims;
pub mod clause;
#[cfg(not(feature = "first"))]
pub mod collection;
#[cfg(not(feature = "first"))]
pub mod comparison;
#[cfg(not(feature = "first"))]
pub mod custody;
pub mod faults;
pub mod favour;
pub mod flex_print;
pub mod help;
pub mod input_problem;
pub mod instrument;
#[cfg(not(feature = "first"))]
pub mod letters;
#[cfg(not(target_arch = "wasm32"))]
pub mod limits;
pub mod mark;
pub mod measurand;
pub mod moment;
pub mod number;
#[cfg(not(feature = "first"))]
pub mod paper;
pub mod print;
pub mod question;
pub mod reason;
#[cfg(not(feature = "first"))]
pub mod report;
#[cfg(not(feature = "first"))]
pub mod risk;
pub mod screens;
#[cfg(not(feature = "first"))]
pub mod seal;
pub mod statement;
#[cfg(not(feature = "first"))]
pub mod study;
pub mod typed;
#[cfg(not(feature = "first"))]
pub mod typed_odds;
pub mod verdict;
pub mod which;

mod cable;
mod copper;
mod copper_reason;
mod cross_check;
mod inside;
mod live;
mod plug;
mod readings;
mod sockets;
mod unit_spelling;
mod what_it_says;
