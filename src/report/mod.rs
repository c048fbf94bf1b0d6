//! The file to show: one page that stands on its own, for somebody who never saw the app.

mod markup;
mod page;

pub use page::page;
