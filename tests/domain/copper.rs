//! Tests of copper.
