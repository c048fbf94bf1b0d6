//! Checks of what the sample, its package, its papers and its seller say.

mod identity;
mod ratings;
mod signs;
