//! End-to-end stories in a real browser.
