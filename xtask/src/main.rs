//! The set-up and test commands: `cargo serve`, `cargo verify`.
fn main() {}
