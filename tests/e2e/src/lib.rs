//! What the end-to-end stories are told with: a phone that is tapped, the app's host that can be
//! switched off, and what is left of a phone whose browser was killed.
//!
//! The stories are in `tests/`, one file for each. They use the built app in `$PLUGWARY_DIST`, the
//! browser `$PLUGWARY_CHROMIUM` and its driver `$CHROMEDRIVER`; `cargo verify e2e` sets all three.
//! Pictures of the screen end up in `target/e2e/shots`, a folder for each story.

mod driver;
mod eyes;
mod hands;
mod host;
mod launch;
mod phone;
mod processes;
mod storage;

pub use host::{Build, host};
pub use phone::{Phone, Scheme};
pub use storage::Storage;
pub use xtask::{server::Server, site::Site};
