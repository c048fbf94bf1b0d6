//! The set-up, serving and testing of this repository, behind `cargo serve` and `cargo verify`.
//!
//! Read in this order: [`shell`] runs programs, [`setup`] sees to it that they are there
//! ([`debian`], [`toolchain`], [`tools`], [`browser`], [`python`], [`spark`]), [`release`] builds the app for [`serve`]
//! to show ([`server`], [`site`]), [`stamp`] finishes each build (the page of the [`study`], too), and [`verify`] runs every test there is.

#![expect(clippy::print_stdout, reason = "what it prints is for the person at the terminal")]

pub mod browser;
pub mod budget;
pub mod debian;
pub mod digest;
pub mod python;
pub mod release;
#[cfg(test)]
mod scratch;
pub mod serve;
pub mod server;
pub mod setup;
pub mod shell;
pub mod site;
pub mod spark;
pub mod stamp;
pub mod steps;
pub mod study;
pub mod toolchain;
pub mod tools;
pub mod verify;

/// What went wrong, as one sentence for the person at the terminal.
pub type Trouble = String;
