//! Every word a person sees: questions, answers, sentences, reasons, labels; and what a person types, read as a value.
//!
//! Sentences are whole messages, never glued from pieces, so that another language can stand beside this one.

pub mod check;
pub mod flex_print;
pub mod input_problem;
pub mod number;
pub mod question;
pub mod typed;
pub mod which;

mod cable;
mod copper;
mod inside;
mod live;
mod plug;
mod readings;
mod sockets;
mod unit_spelling;
mod what_it_says;
