//! The file to show: one page that stands on its own, for somebody who never saw the app.

mod finding;
mod markup;
mod page;
mod photos;

pub use page::page;
