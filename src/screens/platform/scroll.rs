//! Scrolling a part of the page.

/// Scrolls the first element of a selector to its beginning, once what was just changed is painted.
pub fn to_start_of(selector: &'static str) {
    later(selector, |element| element.set_scroll_top(0));
}

/// Scrolls the first element of a selector to its end, once what was just changed is painted.
pub fn to_end_of(selector: &'static str) {
    later(selector, |element| element.set_scroll_top(element.scroll_height()));
}

/// Scrolls no further than until the first element of a selector can be seen: whole, or from its beginning where it is too long for that;
/// once what was just changed is painted.
pub fn into_view(selector: &'static str) {
    later(selector, |element| {
        let how = web_sys::ScrollIntoViewOptions::new();
        how.set_inline(web_sys::ScrollLogicalPosition::Center);
        how.set_block(web_sys::ScrollLogicalPosition::Nearest);
        element.scroll_into_view_with_scroll_into_view_options(&how);
    });
}

fn later(selector: &'static str, scroll: impl Fn(&web_sys::Element) + 'static) {
    let found = move || {
        let found = web_sys::window().and_then(|window| window.document()).map(|page| page.query_selector(selector));
        if let Some(Ok(Some(element))) = found {
            scroll(&element);
        }
    };
    leptos::prelude::set_timeout(found, core::time::Duration::from_millis(30));
}
