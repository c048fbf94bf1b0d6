//! Tests of inside.
