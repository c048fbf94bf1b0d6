//! Tests of what it says.
