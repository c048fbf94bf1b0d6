//! The screens.
use leptos::prelude::*;

/// Mounts the app on the page's body.
pub fn mount() {
    console_error_panic_hook::set_once();
    leptos::mount::mount_to_body(|| view! { <h1>"Plugwary"</h1> });
}
