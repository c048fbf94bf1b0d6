//! The screens.

pub mod platform;

use leptos::prelude::*;

/// Mounts the app on the page's body.
pub fn mount() {
    platform::crash::install();
    leptos::mount::mount_to_body(|| view! { <h1>"Plugwary"</h1> });
}
