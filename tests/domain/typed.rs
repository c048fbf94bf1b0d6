//! Tests of typed.
