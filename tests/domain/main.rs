//! The engine held against published limits: at, inside and outside each, and what must hold for every examination.

#![expect(clippy::expect_used, reason = "a test that cannot lay its bench must stop")]

mod assess;
mod bench;
mod cable;
mod copper;
mod draft;
mod inside;
mod live;
mod marking;
mod next;
mod plug;
mod properties;
mod readings;
mod risk;
mod sockets;
mod sources;
mod typed;
mod verdict;
mod walk;
mod what_it_says;
