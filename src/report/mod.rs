//! The file to show: one page that stands on its own, for somebody who never saw the app. And the page of limits that the app links to.

mod finding;
#[cfg(not(target_arch = "wasm32"))]
mod limits;
mod markup;
mod page;
mod photos;

#[cfg(not(target_arch = "wasm32"))]
pub use limits::limits;
pub use page::page;
