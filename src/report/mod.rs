//! The file to show, for somebody who never saw the app: a page that stands on its own, the same as a PDF, and a label for the sample.
//!
//! [`content`] says what it says as a [`document`], once for all forms.

mod content;
mod document;
mod finding;
mod html;
mod markup;
mod pdf;
mod photos;

pub use html::page;
pub use pdf::{label, pdf};
