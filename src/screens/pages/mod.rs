//! One page a file.

mod about;
mod all_samples;
mod new_sample;
mod this_sample;

pub use about::About;
pub use all_samples::AllSamples;
pub use new_sample::NewSample;
pub use this_sample::ThisSample;
