//! Plugwary examines cheap mains products and says what it saw.
//!
//! An [`Examination`](domain::examination::Examination) is a list of answers. [`assess`](domain::assess::assess) makes an
//! [`Assessment`](domain::assess::Assessment) of it: a verdict and the findings that make it. [`words`] turn findings into sentences,
//! [`record`] saves and reads examinations, [`collection`] looks at many at once, [`archive`] takes them out and back, [`drawing`] shows
//! what to look at, [`report`] makes the file to show, [`seal`] tells whether it was changed, and, behind the
//! feature `app`, `store` keeps everything in the browser and `screens` show it.

#[cfg(not(feature = "first"))]
pub mod archive;
#[cfg(not(feature = "first"))]
pub mod collection;
pub mod domain;
pub mod drawing;
#[cfg(not(target_arch = "wasm32"))]
pub mod judge;
pub mod record;
#[cfg(not(feature = "first"))]
pub mod report;
#[cfg(feature = "app")]
pub mod screens;
#[cfg(not(feature = "first"))]
pub mod seal;
#[cfg(feature = "app")]
pub mod store;
pub mod words;
