//! The engine: pure. No clock, storage, locale or randomness, no serde, no sentences for people.
//!
//! The pipeline, in reading order: a [`question`] gets an answer in an [`examination`]; a [`view`] reads the answers and what is printed
//! on the sample ([`marking`]); each [`check`] makes a [`finding`] of them, with [`decision`] and [`uncertainty`] where readings are held
//! against the limits of a [`standard`]; [`assess`] puts them together to a [`verdict`] and says what to look at next.

pub mod assess;
pub mod check;
#[cfg(not(feature = "first"))]
pub mod comparison;
pub mod cross_check;
#[cfg(not(feature = "first"))]
pub mod custody;
pub mod decision;
pub mod essential;
pub mod examination;
pub mod experience;
pub mod facts;
pub mod favour;
pub mod finding;
pub mod instrument;
pub mod marking;
pub mod next_check;
pub mod order;
pub mod physics;
pub mod quantity;
pub mod question;
pub mod reading;
#[cfg(not(feature = "first"))]
pub mod risk;
pub mod sample;
pub mod standard;
pub mod uncertainty;
pub mod verdict;
pub mod view;
pub mod walk;
