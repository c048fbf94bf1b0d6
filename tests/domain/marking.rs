//! Tests of marking.
