//! Plugwary examines cheap mains products and says what it saw.
//!
//! An [`Examination`](domain::examination::Examination) is a list of answers. [`assess`](domain::assess::assess) makes an
//! [`Assessment`](domain::assess::Assessment) of it: a verdict and the findings that make it. `words` turn findings into sentences,
//! `record` saves and reads examinations, `store` keeps them, and, behind the feature `app`, `screens` show them.

pub mod domain;
pub mod record;
#[cfg(feature = "app")]
pub mod screens;
pub mod store;
pub mod words;
