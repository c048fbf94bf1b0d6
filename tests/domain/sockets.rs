//! Tests of sockets.
