//! Plugwary examines cheap mains products and says what it saw.
#[cfg(feature = "app")]
pub mod screens;
