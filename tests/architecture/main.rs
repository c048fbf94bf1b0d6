//! The rules of the house as tests: layers, headers, lengths, and a registry in which nothing is missing.

mod files;
mod registry;
