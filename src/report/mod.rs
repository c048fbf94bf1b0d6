//! The file to show, for somebody who never saw the app: a page that stands on its own, the same as a PDF, and a label for the sample.
//!
//! `content` says what it says as a `document`, once for all forms. And the page of limits that the app links to.

mod content;
mod document;
mod finding;
mod html;
#[cfg(not(target_arch = "wasm32"))]
mod limits;
mod markup;
mod origin;
mod pdf;
mod photos;
mod risk;

pub use html::{page, page_sealed_by};
#[cfg(not(target_arch = "wasm32"))]
pub use limits::limits;
pub use pdf::{label, label_sealed_by, pdf, pdf_sealed_by};
