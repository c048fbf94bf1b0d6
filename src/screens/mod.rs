//! The screens: Leptos components. No arithmetic, no limits, no rounding; every word comes from `words`.

mod app;
mod pages;
pub mod platform;
mod state;
#[cfg(not(feature = "first"))]
mod study;
mod way;
mod widgets;

/// Mounts the app on the page's body.
pub fn mount() {
    platform::crash::install();
    leptos::mount::mount_to_body(app::App);
}

/// Mounts the study on the page's body.
#[cfg(not(feature = "first"))]
pub fn mount_study() {
    platform::crash::install();
    leptos::mount::mount_to_body(study::Study);
}
