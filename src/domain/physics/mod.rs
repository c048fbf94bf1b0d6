//! Models: from readings to what they mean. A model a file, its source and its limits at the top.

pub mod conductor;
pub mod fault;
pub mod heating;
pub mod metal;
pub mod reference;
pub mod signs;
