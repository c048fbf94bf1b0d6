//! The saved form: what is written is read back the same, what somebody writes by hand is read, all else is refused in one sentence.

#![expect(clippy::expect_used, reason = "a test that cannot lay out its examination must stop")]

mod by_hand;
mod carried;
mod custody;
mod generated;
mod judged;
mod refused;
mod round_trip;
#[cfg(feature = "schema")]
mod schema;
#[cfg(feature = "schema")]
mod validator;
