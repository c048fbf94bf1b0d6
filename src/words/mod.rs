//! Every word a person sees: questions, answers, sentences, reasons, labels; and what a person types, read as a value.
//!
//! Sentences are whole messages, never glued from pieces, so that another language can stand beside this one.

pub mod archive;
pub mod check;
pub mod claims;
pub mod clause;
pub mod collection;
pub mod comparison;
pub mod custody;
pub mod faults;
pub mod favour;
pub mod flex_print;
pub mod help;
pub mod input_problem;
pub mod instrument;
pub mod letters;
#[cfg(not(target_arch = "wasm32"))]
pub mod limits;
pub mod mark;
pub mod measurand;
pub mod moment;
pub mod number;
pub mod paper;
pub mod print;
pub mod question;
pub mod reason;
pub mod report;
pub mod risk;
pub mod screens;
pub mod seal;
pub mod statement;
pub mod study;
pub mod typed;
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
