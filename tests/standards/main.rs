//! Every published limit held to its source: a case at it, one step inside and one step outside, judged as a sample would be.

#![cfg(not(target_arch = "wasm32"))]
#![expect(clippy::expect_used, clippy::panic, reason = "a test that cannot read its cases must stop and say which")]

mod cases;
mod complete;
mod facts;
mod judged;
mod page;
