//! Scrolling a part of the page.

/// Scrolls the first element of a selector to its beginning, once what was just changed is painted.
pub fn to_start_of(selector: &'static str) {
    later(selector, |element| element.set_scroll_top(0));
}

/// Scrolls the first element of a selector to its end, yet no further than to where the last element of another one begins, once what
/// was just changed is painted.
pub fn to_end_of(selector: &'static str, last: &'static str) {
    later(selector, move |element| {
        element.set_scroll_top(element.scroll_height());
        let lasts = element.query_selector_all(last).ok();
        let found = lasts.and_then(|all| all.item(all.length().checked_sub(1)?));
        if let Some(Ok(found)) = found.map(wasm_bindgen::JsCast::dyn_into::<web_sys::Element>) {
            let above = element.get_bounding_client_rect().top() - found.get_bounding_client_rect().top();
            if above > 0.0 {
                element.scroll_by_with_x_and_y(0.0, -above);
            }
        }
    });
}

/// Scrolls sideways until the first element of a selector can be seen whole, once what was just changed is painted.
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
