//! Scrolling a part of the page.

/// Scrolls the first element of a selector to its end, once what was just changed is painted.
pub fn to_end_of(selector: &'static str) {
    let scroll = move || {
        let found = web_sys::window().and_then(|window| window.document()).map(|page| page.query_selector(selector));
        if let Some(Ok(Some(element))) = found {
            element.set_scroll_top(element.scroll_height());
        }
    };
    leptos::prelude::set_timeout(scroll, core::time::Duration::from_millis(30));
}
