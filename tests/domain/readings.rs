//! Tests of readings.
