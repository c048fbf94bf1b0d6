//! The models held against published tables and worked answers; where a figure could not be met, both stand beside the test.

#![expect(
    clippy::disallowed_methods,
    reason = "a second opinion may use the platform's own functions: no digit of it is shown"
)]
#![expect(clippy::unwrap_used, clippy::panic, reason = "a test that cannot reach its figure must stop")]

mod adiabatic;
mod conductor;
mod conformance;
mod example;
mod fault;
mod gum;
mod heating;
mod iec60228;
mod instrument;
mod metal;
mod near;
mod reference;
mod signs;
