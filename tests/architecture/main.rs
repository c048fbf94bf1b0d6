//! The rules of the house as tests: layers, headers, lengths, and a registry in which nothing is missing.

#![expect(clippy::expect_used, reason = "a test that cannot read the sources must stop")]

mod files;
mod registry;
