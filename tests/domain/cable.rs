//! Tests of cable.
